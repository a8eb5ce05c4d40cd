from __future__ import annotations

import threading
import time
from threading import Event

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.devices.played_sound import PlayedSound
from stepper.devices.ports import Door
from stepper.devices.streams import GAP, MOST_BLOCKS, BufferedInput, BufferedOutput
from tests.waiting import PATIENCE_S, least_of


class Tap(BufferedInput):
    """A microphone stream whose device is the test."""

    def __init__(self, door: Door | None = None) -> None:
        self.is_deaf = False
        self.device_closed = False
        super().__init__(lambda: self.is_deaf, door)

    def close_device(self) -> None:
        """Remember it."""
        self.device_closed = True


def drained(tap: Tap) -> list[bytes]:
    """Take all that waits."""
    found = []
    while (block := tap.take(0)) is not None:
        found.append(block)
    return found


def test_what_came_in_while_deaf_is_one_gap_however_late_it_is_taken() -> None:
    """Whether a block is left out is settled as it comes in, not when somebody gets round to it."""
    tap = Tap()
    tap.put(b"a")
    tap.is_deaf = True
    tap.put(b"b")
    tap.put(b"c")
    tap.is_deaf = False
    tap.put(b"d")
    assert drained(tap) == [b"a", GAP, b"d"]


def test_a_door_decides_what_of_a_block_comes_in_and_may_put_something_in_front() -> None:
    """Who takes the program's voice away hands on what she said over it, in front of what she says next."""
    asked: list[tuple[bytes, bool]] = []

    def door(pcm: bytes, is_deaf: bool) -> bytes:
        asked.append((pcm, is_deaf))
        return GAP if is_deaf else b"before " + pcm

    tap = Tap(door)
    tap.put(b"a")
    tap.is_deaf = True
    tap.put(b"b")
    assert drained(tap) == [b"before a", GAP]
    assert asked == [(b"a", False), (b"b", True)]


def test_what_the_device_takes_is_told_to_who_wants_to_know() -> None:
    """Silence too, since who counts the samples would lose count without it."""
    played = PlayedSound()
    stream = _Nowhere(played=played)
    stream.play(b"\1\0" * 5, 1000)
    assert stream.samples(8, 0.0) == b"\1\0" * 5 + b"\0" * 6
    assert (played.rate_hz, played.take(0.008)) == (1000, b"\1\0" * 5 + b"\0" * 6)


@given(st.integers(0, 3 * MOST_BLOCKS))
def test_the_queue_is_bounded_and_the_newest_stay(count: int) -> None:
    """However long nobody listens, memory does not grow, and what is missing is marked once."""
    tap = Tap()
    for number in range(count):
        tap.put(number.to_bytes(2, "big"))
    found = drained(tap)
    assert len(found) == min(count, MOST_BLOCKS)
    newest = [number.to_bytes(2, "big") for number in range(count)][-MOST_BLOCKS:]
    assert found == (newest if count <= MOST_BLOCKS else [GAP, *newest[1:]])


def test_taking_waits_no_longer_than_it_is_told_and_ends_when_the_device_does() -> None:
    """Whoever waits for a block can look after other things now and then."""
    tap = Tap()

    def waited_s() -> float:
        began = time.monotonic()
        assert tap.take(0.05) is None
        return time.monotonic() - began

    assert least_of(waited_s, 0.5) < 0.5

    def told_s() -> float:
        tap = Tap()
        threading.Timer(0.05, tap.ended).start()
        began = time.monotonic()
        assert tap.take(PATIENCE_S) is None
        assert tap.lost
        return time.monotonic() - began

    assert least_of(told_s, 2) < 2


def test_a_stream_that_is_closed_is_not_lost() -> None:
    """Only a device that goes by itself is worth telling."""
    tap = Tap()
    tap.close()
    tap.ended()
    assert (tap.lost, tap.device_closed) == (False, True)


class _Nowhere(BufferedOutput):
    """A stream to a device that misbehaves when it is closed."""

    def __init__(self, misbehave: str = "", played: PlayedSound | None = None) -> None:
        super().__init__(1000, played)
        self.closes = 0
        self._misbehave = misbehave

    def close_device(self) -> None:
        self.closes += 1
        if self._misbehave == "raises":
            raise OSError("no such device")
        if self._misbehave == "hangs":
            Event().wait(PATIENCE_S)


@pytest.mark.parametrize("misbehave", ["", "raises", "hangs"])
def test_closing_is_bounded_whatever_the_device_does(misbehave: str) -> None:
    """A device that was pulled out must not keep the session from ending."""

    def closed_s() -> float:
        stream = _Nowhere(misbehave)
        began = time.monotonic()
        stream.close()
        took_s = time.monotonic() - began
        assert stream.closes == 1
        return took_s

    assert least_of(closed_s, 2) < 2


def test_a_device_that_stops_is_lost_unless_it_was_closed() -> None:
    """Every stream ends once; only an end that nobody asked for is a loss."""
    lost, closed = _Nowhere(), _Nowhere()
    lost.ended()
    closed.close()
    closed.ended()
    assert lost.lost
    assert not closed.lost


def test_the_device_is_given_what_was_played_then_silence() -> None:
    """Two samples played are two samples given, and a clear takes back the rest."""
    stream = _Nowhere()
    stream.play(b"\1\0\2\0", 1000)
    assert stream.samples(3, 0.0) == b"\1\0\2\0\0\0"
    stream.play(b"\7\0" * 500, 1000)
    stream.clear()
    assert stream.samples(50, 0.0)[10:] == b"\0" * 90
