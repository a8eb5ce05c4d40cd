from __future__ import annotations

import time
from threading import Event

import pytest

from stepper.devices.output_stream import Stream


class _Nowhere(Stream):
    """A stream to a device that misbehaves when it is closed."""

    def __init__(self, misbehave: str = "") -> None:
        super().__init__(1000)
        self.closes = 0
        self._misbehave = misbehave

    def close_device(self) -> None:
        self.closes += 1
        if self._misbehave == "raises":
            raise OSError("no such device")
        if self._misbehave == "hangs":
            Event().wait(20)


@pytest.mark.parametrize("misbehave", ["", "raises", "hangs"])
def test_closing_is_bounded_whatever_the_device_does(misbehave: str) -> None:
    """A device that was pulled out must not keep the session from ending."""
    stream = _Nowhere(misbehave)
    began = time.monotonic()
    stream.close()
    assert time.monotonic() - began < 2
    assert stream.closes == 1


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
