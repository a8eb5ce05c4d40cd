from __future__ import annotations

from stepper.mouth.silent import TextOnlySpeaker


def test_it_never_speaks_and_is_always_done() -> None:
    """A session that goes on in text never waits for its voice."""
    speaker = TextOnlySpeaker()
    speaker.say("Round one.", slower=True)
    assert not speaker.speaking
    assert speaker.wait(0.0)
