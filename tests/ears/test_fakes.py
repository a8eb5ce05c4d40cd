from __future__ import annotations

from stepper.ears.fakes import PlainCanceller, ScriptedRecogniser
from stepper.ears.ports import Canceller, Heard, Recogniser


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


def test_a_plain_canceller_takes_away_what_the_loudspeaker_gave_as_late_as_it_comes() -> None:
    """What interrupts a speaker is tried in a room without walls."""
    canceller: Canceller = PlainCanceller(late_by=1)
    assert canceller.clean(b"\5\0", b"\3\0", 16_000) == b"\5\0"
    assert canceller.clean(b"\5\0", b"\0\0", 16_000) == b"\2\0"
    assert canceller.clean(b"\5\0", b"\0\0", 16_000) == b"\5\0"
