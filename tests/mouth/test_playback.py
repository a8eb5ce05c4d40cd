from __future__ import annotations

import time
from collections.abc import Iterable, Iterator
from threading import Event, Thread

import pytest

import stepper.mouth.playback as played
from stepper.devices.ports import NoOutputError
from stepper.mouth.playback import PlaybackMouth
from tests.waiting import PATIENCE_S, least_of, wait_until

_RATE_HZ = 1000


class _BeepVoice:
    """A sample for each letter, and a memory of what was asked for."""

    rate_hz = _RATE_HZ

    def __init__(self) -> None:
        self.asked: list[str] = []
        self.expected: list[tuple[str, int]] = []
        self.closed = False

    def speech(self, text: str, words_per_minute: int) -> bytes:
        self.asked.append(text)
        return b"\1\1" * len(text)

    def expect(self, pieces: Iterable[tuple[str, int]]) -> None:
        self.expected = list(pieces)

    def close(self) -> None:
        self.closed = True


class _ClockOutput:
    """Plays by the clock into nothing; can be lost or get stuck. Says how often it was asked how much is left."""

    def __init__(self) -> None:
        self.played_bytes = 0
        self.cleared = 0
        self.closed = False
        self.lost = False
        self.stuck = False
        self.looks = 0
        self.looks_when_over = 0
        self._until = 0.0

    @property
    def pending_s(self) -> float:
        self.looks += 1
        left_s = 5.0 if self.stuck else max(0.0, self._until - time.monotonic())
        self.looks_when_over += not left_s
        return left_s

    def play(self, pcm: bytes, rate_hz: int) -> None:
        self.played_bytes += len(pcm)
        self._until = max(self._until, time.monotonic()) + len(pcm) / 2 / rate_hz

    def clear(self) -> None:
        self.cleared += 1
        self._until = 0.0

    def close(self) -> None:
        self.closed = True


class _Bench:
    """A mouth with its parts to hand."""

    def __init__(self) -> None:
        self.voice = _BeepVoice()
        self.outputs = [_ClockOutput()]
        self.told: list[str] = []
        self.device_is_back = False
        self.mouth = PlaybackMouth(self.voice, self.outputs[0], reopen=self._reopen, tell=self.told.append)

    def _reopen(self) -> _ClockOutput:
        if not self.device_is_back:
            raise NoOutputError("nothing there")
        self.outputs.append(_ClockOutput())
        return self.outputs[-1]


@pytest.fixture
def bench() -> Iterator[_Bench]:
    """A mouth around a voice that beeps and a clock that plays."""
    made = _Bench()
    yield made
    made.mouth.close()


def test_a_chime_is_played_and_what_is_expected_is_handed_on_in_pieces(bench: _Bench) -> None:
    """The voice is told to make just what it will be asked for."""
    bench.mouth.chime(b"\1\1" * 10, _RATE_HZ)
    assert bench.outputs[0].played_bytes == 20
    bench.mouth.expect([("a" * 10, 150)])
    assert bench.voice.expected == [("a" * 10, 150)]


def test_it_comes_back_when_the_line_has_been_heard(bench: _Bench) -> None:
    """The next line must not run into this one."""

    def uttered_s() -> float:
        began = time.monotonic()
        bench.outputs[0].looks_when_over = 0
        bench.mouth.utter("x" * 200, 150, Event())
        assert bench.outputs[0].looks_when_over in (1, 2)  # the second for what was said a piece ahead
        assert bench.outputs[0].pending_s == 0
        took_s = time.monotonic() - began
        assert took_s > 0.19
        return took_s

    assert least_of(uttered_s, 0.6) < 0.6


def test_a_long_line_is_made_piece_by_piece_and_loses_nothing(bench: _Bench) -> None:
    """A page of text is neither refused nor made all at once."""
    bench.mouth.utter("x" * 700, 150, Event())
    assert [len(text) for text in bench.voice.asked] == [300, 300, 100]
    assert bench.outputs[0].played_bytes == 1400


def test_a_line_cut_off_before_it_began_is_not_heard(bench: _Bench) -> None:
    """Silence between two lines reaches the second one."""
    cut = Event()
    cut.set()
    bench.mouth.utter("x" * 200, 150, cut)
    assert bench.outputs[0].played_bytes == 0


def test_cutting_a_line_off_ends_it_at_once(bench: _Bench) -> None:
    """A key during a long line does not wait for its end."""

    def cut_off_s() -> float:
        cut, output = Event(), bench.outputs[0]
        output.looks = output.cleared = 0
        line = Thread(target=bench.mouth.utter, args=("x" * 500_000, 150, cut))
        line.start()
        wait_until(lambda: output.looks > 1)
        began = time.monotonic()
        cut.set()
        bench.mouth.hush()
        line.join(PATIENCE_S)
        assert not line.is_alive()
        assert output.cleared == 1
        return time.monotonic() - began

    assert least_of(cut_off_s, 0.15) < 0.15


def test_a_device_that_goes_is_told_once_and_taken_again_when_it_is_back(
    bench: _Bench, monkeypatch: pytest.MonkeyPatch
) -> None:
    """A headset that runs out costs a line, not the session; put on again, it speaks again."""
    bench.outputs[0].lost = True
    for _ in range(3):
        bench.mouth.utter("x" * 200, 150, Event())
    assert bench.told == ["The sound device has gone; the session goes on in text until it is back."]
    assert bench.outputs[0].closed
    bench.device_is_back = True
    bench.mouth.utter("x" * 100, 150, Event())
    assert len(bench.outputs) == 1, "the device is looked for only now and then"
    monkeypatch.setattr(played, "REOPEN_EVERY_S", 0.0)
    bench.mouth.utter("x" * 100, 150, Event())
    assert bench.outputs[1].played_bytes == 200
    assert len(bench.told) == 1


def test_a_device_that_plays_nothing_is_given_up(monkeypatch: pytest.MonkeyPatch) -> None:
    """Not every system says that a device has gone; one that takes no sound is as good as gone."""
    monkeypatch.setattr(played, "STALLED_S", 0.2)

    def given_up_s() -> float:
        fresh = _Bench()
        fresh.outputs[0].stuck = True
        began = time.monotonic()
        fresh.mouth.utter("x" * 100, 150, Event())
        took_s = time.monotonic() - began
        assert len(fresh.told) == 1
        fresh.mouth.close()
        return took_s

    assert least_of(given_up_s, 1) < 1


def test_closing_lets_go_of_both_and_nothing_is_played_afterwards(bench: _Bench) -> None:
    """A line that is still being made when the session ends is not heard after it."""
    bench.mouth.close()
    bench.mouth.utter("x" * 100, 150, Event())
    assert bench.voice.closed
    assert bench.outputs[0].closed
    assert bench.outputs[0].played_bytes == 0
