from __future__ import annotations

import time
from collections.abc import Iterable, Iterator
from threading import Event

import pytest

from stepper.mouth.ports import NoVoiceError, SpokenLine, Tone
from stepper.mouth.settings import SpeechSettings
from stepper.mouth.speech_queue import QueuedSpeaker
from tests.waiting import PATIENCE_S, least_of, wait_until


class _SlowMouth:
    """Takes its time over each line and remembers what became of it."""

    def __init__(self, takes_s: float = 0.0) -> None:
        self.takes_s = takes_s
        self.begun: list[str] = []
        self.said: list[tuple[str, int]] = []
        self.cut_off: list[str] = []
        self.chimed: list[float] = []
        self.expected: list[tuple[str, int]] = []
        self.hushed = 0
        self.closed = 0
        self.fails_with: Exception | None = None

    def utter(self, text: str, words_per_minute: int, cut: Event) -> None:
        self.begun.append(text)
        if self.fails_with is not None:
            raise self.fails_with
        (self.cut_off.append(text) if cut.wait(self.takes_s) else self.said.append((text, words_per_minute)))

    def chime(self, pcm: bytes, rate_hz: int) -> None:
        self.chimed.append(len(pcm) / 2 / rate_hz)

    def expect(self, lines: Iterable[tuple[str, int]]) -> None:
        self.expected = list(lines)

    def hush(self) -> None:
        self.hushed += 1

    def close(self) -> None:
        self.closed += 1


@pytest.fixture
def mouth() -> _SlowMouth:
    """A mouth that makes no sound."""
    return _SlowMouth()


@pytest.fixture
def told() -> list[str]:
    """What the user was told."""
    return []


@pytest.fixture
def speaker(mouth: _SlowMouth, told: list[str]) -> Iterator[QueuedSpeaker]:
    """A speaker around that mouth."""
    made = QueuedSpeaker(mouth, SpeechSettings(), told.append)
    yield made
    made.close()


def test_a_tone_goes_straight_to_the_mouth_and_is_no_speech(speaker: QueuedSpeaker, mouth: _SlowMouth) -> None:
    """She hears it at once, and the ears need not be closed for it."""
    speaker.sound(Tone.HEARD)
    assert len(mouth.chimed) == 1
    assert mouth.chimed[0] < 0.2
    assert not speaker.speaking


def test_what_is_expected_is_made_ready_at_its_speed(speaker: QueuedSpeaker, mouth: _SlowMouth) -> None:
    """A line that is made at another speed than it is said at would be made in vain."""
    speaker.expect((SpokenLine(text="one  two"), SpokenLine(text=" "), SpokenLine(text="one two", slower=True)))
    assert mouth.expected == [("one two", 150), ("one two", 120)]


def test_lines_are_said_in_order_at_their_speed(speaker: QueuedSpeaker, mouth: _SlowMouth) -> None:
    """Nothing overtakes, and only the line said again is slower."""
    speaker.say("one")
    speaker.say("two", slower=True)
    speaker.say("three")
    assert speaker.wait(PATIENCE_S)
    assert mouth.said == [("one", 150), ("two", 120), ("three", 150)]


def test_silence_reaches_the_line_and_the_queue(speaker: QueuedSpeaker, mouth: _SlowMouth) -> None:
    """The line under way is cut off, those that wait are never begun, and a later one is said."""
    mouth.takes_s = 20 * PATIENCE_S
    for text in ("one", "two", "three"):
        speaker.say(text)
    wait_until(lambda: bool(mouth.begun))
    speaker.silence()
    mouth.takes_s = 0
    speaker.say("four")
    assert speaker.wait(PATIENCE_S)
    assert mouth.cut_off == ["one"]
    assert [text for text, _ in mouth.said] == ["four"]


def test_what_is_held_back_is_said_again_from_its_beginning_and_then_the_rest(
    speaker: QueuedSpeaker, mouth: _SlowMouth
) -> None:
    """She spoke over it: nothing that was told is lost, and nothing else is said meanwhile."""
    mouth.takes_s = 20 * PATIENCE_S
    speaker.say("One.")
    speaker.say("Two.")
    wait_until(lambda: mouth.begun == ["One."])
    assert speaker.pause()
    assert (speaker.paused, speaker.speaking, mouth.hushed) == (True, False, 1)
    speaker.say("Three.")
    assert not speaker.wait(0.1)
    assert mouth.begun == ["One."]
    mouth.takes_s = 0
    speaker.go_on()
    assert speaker.wait(PATIENCE_S)
    assert [text for text, _ in mouth.said] == ["One.", "Two.", "Three."]
    assert (mouth.cut_off, speaker.paused) == (["One."], False)


def test_silence_forgets_what_is_held_back(speaker: QueuedSpeaker, mouth: _SlowMouth) -> None:
    """A cue was understood: its answer comes at once, and not behind what she interrupted."""
    mouth.takes_s = 20 * PATIENCE_S
    speaker.say("One.")
    wait_until(lambda: mouth.begun == ["One."])
    assert speaker.pause()
    speaker.silence()
    mouth.takes_s = 0
    speaker.say("Two.")
    assert speaker.wait(PATIENCE_S)
    assert [text for text, _ in mouth.said] == ["Two."]


def test_where_nothing_is_said_nothing_is_held_back(speaker: QueuedSpeaker) -> None:
    """A line that is over cannot be interrupted, and what is said next must not wait for anybody."""
    assert not speaker.pause()
    assert not speaker.paused


def test_what_is_held_back_does_not_keep_the_speaker_from_closing() -> None:
    """The sitting may end while she is being listened to."""
    assert least_of(lambda: _closed_in_mid_line_s(pause=True), 1) < 1


def _closed_in_mid_line_s(mouth: _SlowMouth | None = None, *, pause: bool = False) -> float:
    """Return how long it takes to close a speaker in the middle of a long line, held back or not. Unit: s."""
    mouth = mouth or _SlowMouth(20 * PATIENCE_S)
    speaker = QueuedSpeaker(mouth, SpeechSettings(), print)
    speaker.say("One.")
    wait_until(lambda: mouth.begun == ["One."])
    assert not pause or speaker.pause()
    began = time.monotonic()
    speaker.close()
    took_s = time.monotonic() - began
    assert mouth.closed == 1
    return took_s


@pytest.mark.parametrize("fault", [NoVoiceError("its process ended"), ZeroDivisionError("a bug")])
def test_a_voice_that_stops_is_told_once_and_then_it_is_quiet(
    speaker: QueuedSpeaker, mouth: _SlowMouth, told: list[str], fault: Exception
) -> None:
    """Whatever goes wrong in the voice, the session hears of it once and never has to wait for it."""
    mouth.fails_with = fault
    for _ in range(5):
        speaker.say("one")
    assert speaker.wait(PATIENCE_S)
    speaker.say("two")
    assert not speaker.speaking
    assert len(told) == 1
    assert str(fault) in told[0]
    assert told[0].endswith("the session goes on in text.")


def test_who_is_told_may_speak_and_fall_silent(mouth: _SlowMouth) -> None:
    """The sentence is given with no lock held, so the session may do anything with it."""
    told: list[str] = []

    def tell(sentence: str) -> None:
        told.append(sentence)
        speaker.say(sentence)
        speaker.silence()

    mouth.fails_with = NoVoiceError("its process ended")
    speaker = QueuedSpeaker(mouth, SpeechSettings(), tell)
    speaker.say("one")
    wait_until(lambda: bool(told))
    assert speaker.wait(PATIENCE_S)
    speaker.close()


def test_closing_is_bounded_even_when_the_mouth_hangs() -> None:
    """A voice that does not come back must not keep the program from ending."""

    over = Event()

    class DeafMouth(_SlowMouth):
        def utter(self, text: str, words_per_minute: int, cut: Event) -> None:
            self.begun.append(text)
            over.wait()

    try:
        assert least_of(lambda: _closed_in_mid_line_s(DeafMouth()), 3) < 3
    finally:
        over.set()


def test_the_mouth_is_closed_once(speaker: QueuedSpeaker, mouth: _SlowMouth) -> None:
    """Closing twice lets go once."""
    speaker.close()
    speaker.close()
    assert mouth.closed == 1
