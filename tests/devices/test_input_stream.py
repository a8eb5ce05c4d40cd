from __future__ import annotations

import threading
import time

from hypothesis import given
from hypothesis import strategies as st

from stepper.devices.input_stream import GAP, MOST_BLOCKS, Intake


class Tap(Intake):
    """A microphone stream whose device is the test."""

    def __init__(self) -> None:
        self.is_deaf = False
        self.device_closed = False
        super().__init__(lambda: self.is_deaf)

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
    began = time.monotonic()
    assert tap.take(0.05) is None
    assert time.monotonic() - began < 0.5
    threading.Timer(0.05, tap.ended).start()
    assert tap.take(10) is None
    assert tap.lost
    assert time.monotonic() - began < 2


def test_a_stream_that_is_closed_is_not_lost() -> None:
    """Only a device that goes by itself is worth telling."""
    tap = Tap()
    tap.close()
    tap.ended()
    assert (tap.lost, tap.device_closed) == (False, True)
