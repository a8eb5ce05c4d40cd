from __future__ import annotations

from array import array

from hypothesis import given
from hypothesis import strategies as st

from stepper.devices.play_buffer import PlayBuffer

_RATE_HZ = 1000


def _sound(*samples: int) -> bytes:
    return array("h", samples).tobytes()


@given(
    st.lists(st.lists(st.integers(-99, 99), max_size=9), max_size=9),
    st.lists(st.integers(0, 9), max_size=30),
)
def test_sound_comes_out_in_order_then_silence(put: list[list[int]], takes: list[int]) -> None:
    """Whatever sizes go in and are asked for, no sample is lost, doubled or moved."""
    buffer = PlayBuffer(_RATE_HZ)
    for samples in put:
        buffer.put(_sound(*samples))
    everything = [sample for samples in put for sample in samples]
    out = array("h", b"".join(buffer.take(2 * count) for count in takes)).tolist()
    assert len(out) == sum(takes)
    assert out == (everything + [0] * len(out))[: len(out)]


def test_clearing_leaves_a_short_fade_and_then_silence() -> None:
    """Silence comes within five thousandths of a second, without the click of a wave cut off."""
    buffer = PlayBuffer(_RATE_HZ)
    buffer.put(_sound(*[1000] * 500))
    buffer.clear()
    assert array("h", buffer.take(20)).tolist() == [1000, 800, 600, 400, 200, 0, 0, 0, 0, 0]


def test_clearing_an_empty_one_does_nothing() -> None:
    """A key that falls silent may be pressed at any time."""
    buffer = PlayBuffer(_RATE_HZ)
    buffer.clear()
    assert buffer.pending_s == 0
    assert buffer.take(4) == b"\0" * 4


def test_what_is_in_the_device_counts_as_not_heard_yet() -> None:
    """The ears stay closed until the last sound has left the loudspeaker."""
    buffer = PlayBuffer(_RATE_HZ)
    buffer.put(_sound(*[5] * 200))
    assert buffer.pending_s == 0.2
    buffer.take(400, latency_s=0.5)
    assert 0.6 < buffer.pending_s <= 0.7
