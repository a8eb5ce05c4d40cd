from __future__ import annotations

from stepper.ears.fakes import ScriptedRecogniser
from stepper.ears.ports import Heard, Recogniser


def test_a_script_is_heard_line_by_line_and_the_sound_remembered() -> None:
    """In order, nothing where the script has nothing, and nothing after its end."""
    sure = Heard(text="go back", score=0.4)
    recogniser: Recogniser = ScriptedRecogniser(["next step", None, sure])
    heard = [recogniser.recognise(bytes([each])) for each in range(4)]
    assert heard == [Heard(text="next step", score=1.0), None, sure, None]
    assert isinstance(recogniser, ScriptedRecogniser)
    assert recogniser.segments == [bytes([each]) for each in range(4)]


def test_a_closed_one_hears_nothing() -> None:
    """Its script stays where it was."""
    recogniser = ScriptedRecogniser(["next step"])
    recogniser.close()
    assert recogniser.recognise(b"") is None
    assert recogniser.segments == []
