from __future__ import annotations

import wave
from importlib.util import find_spec
from pathlib import Path

import pytest

from stepper.ears.settings import HearingSettings
from stepper.ears.wordings import Reply
from stepper.errors import SurroundingsError
from stepper.mouth.settings import SpeechSettings
from stepper.session.cues import Count, No, Yes
from stepper.sitting.preferences import Preferences
from stepper.sitting.project_file import load_project
from stepper.sitting.recogniser_wordings import list_wordings
from stepper.sitting.recognisers import OpenQuestion, Toggle, hear_recording, load_recogniser
from tests.speech import render

SAMPLE = Path(__file__).parents[1] / "fixtures" / "switchback.yaml"
CUES = ("next step", "where are we", "go back", "what can i say")


@pytest.mark.skipif(find_spec("moonshine_voice") is None, reason="the recogniser is not installed")
def test_a_recording_of_cues_is_heard_in_order(tmp_path: Path) -> None:
    """Four cues by a synthetic voice, a second apart, come out as those four.

    Of what means something else the nearest is 27 less likely by its sounds than what was said; 3 is asked for.
    """
    sound, rate = b"", 0
    for cue in CUES:
        render(cue, tmp_path / "one.wav", SpeechSettings(engine="espeak"))
        with wave.open(str(tmp_path / "one.wav"), "rb") as file:
            rate = file.getframerate()
            sound += bytes(2 * rate) + file.readframes(file.getnframes())
    with wave.open(str(tmp_path / "all.wav"), "wb") as file:
        file.setnchannels(1)
        file.setsampwidth(2)
        file.setframerate(rate)
        file.writeframes(sound)
    plan = load_project(SAMPLE).plan
    meanings = list_wordings(plan).phrases
    heard = list(hear_recording(tmp_path / "all.wav", plan))
    assert [meanings[each] for each in heard] == [meanings[each] for each in CUES]


def test_a_vosk_model_that_is_not_there_is_said_with_the_way_to_get_one(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """By name, or none at all; a folder that is no model is refused as such."""
    monkeypatch.setenv("STEPPER_DATA", str(tmp_path))
    monkeypatch.chdir(tmp_path)
    for model in ("", "small-model"):
        mine = Preferences(hearing=HearingSettings(recogniser="vosk", model=model))
        with pytest.raises(SurroundingsError, match="stepper voice install PATH-OR-ADDRESS"):
            load_recogniser(None, mine)
    mine = Preferences(hearing=HearingSettings(model=str(tmp_path)))
    with pytest.raises(SurroundingsError, match="is not a Vosk model"):
        load_recogniser(None, mine)


def test_the_ears_know_what_one_word_may_answer_and_the_conductor_whether_they_are_open() -> None:
    """Nothing is open and nobody listens before either is said."""
    question, ears = OpenQuestion(), Toggle(False)
    assert not question()
    assert not ears()
    question.ask(frozenset({Yes, No, Count}))
    assert question() == {Reply.YES_OR_NO, Reply.NUMBER, Reply.NO_ANSWER}
    question.ask(frozenset({Count}))
    assert question() == {Reply.NUMBER}
    question.ask(frozenset())
    assert not question()
    ears.turn(True)
    assert ears()
