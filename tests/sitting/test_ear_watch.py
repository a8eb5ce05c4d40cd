from __future__ import annotations

import threading
from collections.abc import Iterator

from stepper.sitting.ear_watch import EarWatch
from tests.waiting import wait_until


class _Sound:
    """A microphone that gives so many blocks."""

    def __init__(self, blocks: int) -> None:
        self._blocks = blocks

    def blocks(self) -> Iterator[bytes]:
        for number in range(self._blocks):
            yield bytes([number])

    def close(self) -> None:
        pass


def test_ears_that_hang_are_told_once_and_again_when_they_go_on() -> None:
    """She must know that nothing is heard, and from when on something is."""
    told: list[tuple[bool, str]] = []
    watch = EarWatch(_Sound(3), lambda works, say: told.append((works, say)), hangs_after_s=0.05)
    for block in watch.blocks():
        if block == b"\1":
            wait_until(lambda: bool(told))
            assert told == [(False, "The ears do not come back; the session goes on by keys and typed cues.")]
    watch.close()
    assert told[1:] == [(True, "The ears go on.")]


def test_a_silent_microphone_is_no_hanging() -> None:
    """Nobody speaks for minutes; that is an evening like any other."""
    told: list[str] = []
    quiet = threading.Event()

    class Waiting(_Sound):
        def blocks(self) -> Iterator[bytes]:
            yield b"1"
            quiet.wait(1.2)

    watch = EarWatch(Waiting(0), lambda works, say: told.append(say), hangs_after_s=0.5)
    assert list(watch.blocks()) == [b"1"]
    watch.close()
    assert told == []


def test_whoever_fails_may_take_the_sound_anew() -> None:
    """A recogniser that fails over one stretch is given the next."""
    watch = EarWatch(_Sound(2), lambda works, say: None)
    assert next(watch.blocks()) == b"\0"
    assert list(watch.blocks()) == [b"\0", b"\1"]
    watch.close()
