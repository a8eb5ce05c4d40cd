from __future__ import annotations

import time

from stepper.mouth.fakes import RecordingSpeaker, SpokenLine
from tests.waiting import PATIENCE_S, least_of


def test_it_remembers_lines_in_order() -> None:
    """Tests ask the fake what was said, and how."""
    speaker = RecordingSpeaker()
    speaker.say("Round one.")
    speaker.say("Round one.", slower=True)
    assert speaker.said == [SpokenLine(text="Round one."), SpokenLine(text="Round one.", slower=True)]
    assert speaker.texts == ("Round one.", "Round one.")
    assert not speaker.speaking


def test_it_remembers_what_silence_cut_off() -> None:
    """A line that was over is not cut off; one that was not, is."""
    speaker = RecordingSpeaker(seconds_per_word=0.05)
    speaker.say("One")
    assert speaker.wait(PATIENCE_S)
    long = "two " * 2000
    speaker.say(long)
    speaker.say("eleven")
    speaker.silence()
    assert [line.text for line in speaker.cut_off] == [long, "eleven"]
    assert speaker.silenced == 1


def test_lines_take_their_time_one_after_another() -> None:
    """Two lines of two words take four times as long as one word."""
    speaker = RecordingSpeaker(seconds_per_word=0.05)

    def said_s() -> float:
        began = time.monotonic()
        speaker.say("one two")
        speaker.say("three four")
        assert speaker.wait(PATIENCE_S)
        took_s = time.monotonic() - began
        assert took_s > 0.19
        return took_s

    assert least_of(said_s, 0.6) < 0.6


def test_it_holds_lines_back_and_says_them_again() -> None:
    """What interrupts a speaker is tried with this one."""
    speaker = RecordingSpeaker(seconds_per_word=PATIENCE_S)
    assert not speaker.pause()
    speaker.say("one two")
    assert speaker.pause()
    assert (speaker.speaking, speaker.paused) == (False, True)
    speaker.say("three")
    assert speaker.texts == ("one two",)
    speaker.go_on()
    assert speaker.texts == ("one two", "one two", "three")
    assert speaker.speaking
