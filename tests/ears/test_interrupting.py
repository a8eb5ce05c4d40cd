from __future__ import annotations

import time
from array import array
from collections.abc import Callable, Iterator

import pytest

from stepper.devices.played_sound import PlayedSound
from stepper.devices.ports import HEARING_RATE_HZ
from stepper.devices.streams import BLOCK_FRAMES, GAP
from stepper.ears.fakes import PlainCanceller
from stepper.ears.interrupting import (
    GIVEN_UP,
    GOES_ON,
    HELD_BACK,
    LONGEST_WAIT_S,
    MOST_IN_VAIN,
    WAIT_S,
    Interrupting,
)
from stepper.mouth.fakes import RecordingSpeaker
from tests.waiting import wait_until

QUIET, OWN, HERS = 3, 4000, 3000
"""Loudness of a quiet room, of the program's own voice and of hers. Unit: steps of 16-bit sound."""


def wave(loudness: int) -> bytes:
    """Return a block of sound."""
    return array("h", [loudness, -loudness] * (BLOCK_FRAMES // 2)).tobytes()


def added(first: bytes, second: bytes) -> bytes:
    """Return two sounds at once."""
    return array("h", (a + b for a, b in zip(array("h", first), array("h", second), strict=True))).tobytes()


class _Canceller(PlainCanceller):
    """One that may fail."""

    fails = False

    def clean(self, near: bytes, far: bytes, far_rate_hz: int) -> bytes:
        if self.fails:
            raise RuntimeError("no more memory")
        return super().clean(near, far, far_rate_hz)


class _SittingRoom:
    """A loudspeaker and a microphone without a way between them, block by block, on a clock of the test's."""

    def __init__(self) -> None:
        self.speaker = RecordingSpeaker(seconds_per_word=100)
        self.played, self.now = PlayedSound(), 0.0
        self.told: list[str] = []
        self.wanted = self.addressed = True
        self.let_in: list[bytes] = []
        self.canceller = _Canceller(late_by=4)
        self.interrupting = Interrupting(
            self.speaker,
            self.played,
            self.canceller,
            lambda chunk: 0.9 if max(array("h", chunk)) > 1000 else 0.0,
            tell=self.told.append,
            is_wanted=lambda: self.wanted,
            is_addressed=lambda: self.addressed,
            clock=lambda: self.now,
        )
        self._late = wave(0)

    def hear(self, seconds: float, loudness: int = QUIET) -> None:
        """Let time pass in which somebody is that loud, and the program speaks if it has something to say."""
        for _ in range(round(seconds / 0.04)):
            self.now += 0.04
            given = wave(OWN) if self.speaker.speaking else wave(0)
            self.played.put(given, HEARING_RATE_HZ)
            pcm = added(wave(loudness), self._late)  # a block later, and the door adds three
            self.let_in.append(self.interrupting.door(pcm, self.speaker.speaking or any(self._late)))
            self._late = given
            time.sleep(0.004)  # the other thread's turn

    def wait_until(self, come: Callable[[], bool]) -> None:
        wait_until(come)

    def go_on_until_it_speaks(self) -> None:
        """Let a little more time pass, if the other thread was late: once more the wait and a second at most.

        It counts from when it looked at the last of her blocks, and a thread that stood still looks at it late.
        """
        for _ in range(round((WAIT_S + 1) / 0.04)):
            ends_at = time.monotonic() + 0.5
            while self.speaker.paused and time.monotonic() < ends_at:
                time.sleep(0.005)
            if not self.speaker.paused:
                return
            self.hear(0.04)
        wait_until(lambda: not self.speaker.paused)


@pytest.fixture
def room() -> Iterator[_SittingRoom]:
    """A quiet room in which a long line is being said and nobody else has spoken."""
    made = _SittingRoom()
    made.hear(1)
    made.speaker.say("round eleven knit two purl two")
    made.hear(16)
    yield made
    made.interrupting.close()


def test_the_program_alone_does_not_interrupt_itself_and_is_not_heard(room: _SittingRoom) -> None:
    """Its own voice is loud in the microphone, and none of it is anybody else's."""
    before = len(room.let_in)
    room.hear(4)
    assert not room.speaker.paused
    assert set(room.let_in[before:]) == {GAP}


def test_it_falls_silent_within_a_third_of_a_second_of_her_first_word(room: _SittingRoom) -> None:
    """She speaks and it stops: that is all a voice over a voice may do."""
    room.hear(1)
    room.hear(0.32, HERS)
    room.wait_until(lambda: room.speaker.paused)
    assert room.speaker.cut_off == []


def test_what_she_said_over_it_goes_to_the_ears_whole_and_cleaned_in_front_of_what_follows(
    room: _SittingRoom,
) -> None:
    """A cue begun while it still spoke is one piece of sound, without the program's voice in it."""
    room.hear(1)
    said_from = len(room.let_in)
    room.hear(0.6, HERS)
    room.wait_until(lambda: room.speaker.paused)
    room.hear(1, HERS + 1)
    heard = array("h", b"".join(room.let_in[said_from:]))
    assert max(heard) == HERS + 1, "nothing of the program's own voice"
    loud = [abs(each) for each in heard if abs(each) >= HERS]
    assert loud == sorted(loud), "in the order in which it was said"
    assert loud.count(HERS) == round(0.6 * HEARING_RATE_HZ)
    assert loud.count(HERS + 1) == HEARING_RATE_HZ


def test_without_the_address_word_what_was_said_over_it_is_not_heard(room: _SittingRoom) -> None:
    """Half drowned by the program's voice a cue may be another; there she says it again into the silence."""
    room.addressed = False
    room.hear(1)
    said_from = len(room.let_in)
    room.hear(0.6, HERS)
    room.wait_until(lambda: room.speaker.paused)
    room.hear(1, HERS + 1)
    assert set(room.let_in[said_from : said_from + 5]) == {GAP}
    assert {len(block) for block in room.let_in[said_from:]} == {0, len(wave(0))}
    assert room.let_in[-10:] == [wave(HERS + 1)] * 10


def test_where_nothing_is_understood_the_line_is_said_again_once_through(room: _SittingRoom) -> None:
    """Nothing is lost, and it does not stop for the same noise again and again."""
    room.hear(1)
    room.hear(0.6, HERS)
    room.wait_until(lambda: room.speaker.paused)
    room.hear(WAIT_S - 0.5)
    assert room.speaker.paused
    room.hear(1.5)
    room.go_on_until_it_speaks()
    assert room.speaker.texts[-2:] == ("round eleven knit two purl two",) * 2
    room.hear(2, HERS)
    assert not room.speaker.paused


def test_while_she_goes_on_talking_it_waits_but_not_for_ever(room: _SittingRoom) -> None:
    """A telephone call is no reason never to hear the step again."""
    room.hear(1)
    room.hear(WAIT_S + 2, HERS)
    assert room.speaker.paused
    room.hear(LONGEST_WAIT_S - WAIT_S - 1, HERS)
    room.go_on_until_it_speaks()


def test_a_cue_that_is_understood_ends_the_wait_and_its_answer_may_be_interrupted_too(room: _SittingRoom) -> None:
    """The cue has silenced the speaker, as every cue does; what was held back is gone with it."""
    room.hear(1)
    room.hear(0.6, HERS)
    room.wait_until(lambda: room.speaker.paused)
    room.hear(0.5)
    room.speaker.silence()
    room.interrupting.understood()
    room.hear(0.5)
    room.speaker.say("round twelve knit")
    room.hear(0.5)
    room.hear(0.4, HERS)
    room.wait_until(lambda: room.speaker.paused)


def test_after_some_times_in_vain_it_is_given_up_and_said_once(room: _SittingRoom) -> None:
    """Something in this room is taken for her; a voice that always stops would be worse than one that never does."""
    for time_in_vain in range(MOST_IN_VAIN + 1):
        room.hear(0.4, HERS)
        if time_in_vain == MOST_IN_VAIN:
            assert not room.speaker.paused
            break
        room.wait_until(lambda: room.speaker.paused)
        room.hear(WAIT_S + 0.5)
        room.go_on_until_it_speaks()
        room.hear(0.2)
        room.speaker.silence()
        room.hear(0.5)
        room.speaker.say("round twelve knit two purl two")
        room.hear(28)
    assert room.told == [*(HELD_BACK, GOES_ON) * (MOST_IN_VAIN - 1), HELD_BACK, GIVEN_UP]


def test_who_asked_not_to_be_listened_to_does_not_stop_it(room: _SittingRoom) -> None:
    """With the ears closed she talks to others, and the program reads on."""
    room.wanted = False
    room.hear(1)
    room.hear(1, HERS)
    assert not room.speaker.paused


def test_a_voice_that_plays_past_the_program_is_not_interrupted() -> None:
    """Nothing can be taken away there, so its own words would be hers."""
    room = _SittingRoom()
    room.played.put = lambda pcm, rate_hz: None  # type: ignore[method-assign]
    room.speaker.say("round eleven knit two")
    room.hear(16)
    room.hear(1, HERS)
    assert not room.speaker.paused
    room.interrupting.close()


def test_a_canceller_that_fails_leaves_the_ears_as_they_were(room: _SittingRoom) -> None:
    """Deaf while it speaks and open afterwards, as without it; that is told once."""
    room.canceller.fails = True
    room.hear(1, HERS)
    room.wait_until(lambda: bool(room.told))
    assert "no more memory" in room.told[0]
    room.speaker.silence()
    before = len(room.let_in)
    room.hear(0.4)
    assert room.let_in[before + 2 :] == [wave(QUIET)] * 8


def test_closing_lets_it_say_what_was_held_back(room: _SittingRoom) -> None:
    """The sitting ends while it waits for her: the last line is said, not swallowed."""
    room.hear(1)
    room.hear(0.6, HERS)
    room.wait_until(lambda: room.speaker.paused)
    room.interrupting.close()
    assert not room.speaker.paused
    assert room.speaker.texts[-1] == "round eleven knit two purl two"
