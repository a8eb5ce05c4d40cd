from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from stepper.devices.played_sound import MOST_S, USUAL_S, PlayedSound

RATE_HZ = 1000
"""One sample a millisecond, so that lengths are read at once."""


def numbered(first: int, count: int) -> bytes:
    """Make sound whose samples are numbers in a row."""
    return b"".join(number.to_bytes(2, "little") for number in range(first, first + count))


def numbers(pcm: bytes) -> list[int]:
    """Read them again."""
    return [int.from_bytes(pcm[at : at + 2], "little") for at in range(0, len(pcm), 2)]


def test_what_the_loudspeaker_takes_comes_out_in_order_whatever_the_pieces() -> None:
    """The loudspeaker asks for 20 ms and the microphone brings 40 or 10; nothing may be lost or turned round."""
    played = PlayedSound()
    for at in range(0, 100, 20):
        played.put(numbered(at, 20), RATE_HZ)
    assert numbers(played.take(0.03)) == list(range(30))
    assert numbers(played.take(0.07)) == list(range(30, 100))
    assert played.rate_hz == RATE_HZ


def test_a_loudspeaker_that_is_late_leaves_silence_behind_what_there_is() -> None:
    """What is there goes on from what was taken before; a hole in front of it would tear the wave twice."""
    played = PlayedSound()
    played.put(numbered(1, 10), RATE_HZ)
    assert numbers(played.take(0.02)) == [*range(1, 11), *([0] * 10)]
    assert numbers(played.take(0.01)) == [0] * 10


def test_what_has_waited_too_long_is_dropped_so_that_it_never_comes_later_than_its_echo() -> None:
    """A canceller takes away only what it was shown before it came in through the microphone."""
    played = PlayedSound()
    played.put(numbered(0, 500), RATE_HZ)
    taken = numbers(played.take(0.04))
    assert taken[0] == 500 - round(USUAL_S * RATE_HZ) - 40
    assert len(taken) == 40


@given(st.lists(st.integers(0, 60), max_size=60), st.integers(10, 50))
def test_whatever_the_pace_not_much_waits_and_the_length_is_right(pieces: list[int], wanted_ms: int) -> None:
    """However the two devices drift and stall, each block has its equal, and what waits stays short."""
    played, at = PlayedSound(), 0
    for piece in pieces:
        played.put(numbered(at, piece), RATE_HZ)
        at += piece
        taken = played.take(wanted_ms / 1000)
        assert len(taken) == 2 * wanted_ms
        last = max([0, *numbers(taken)])
        assert last == 0 or at - last <= MOST_S * RATE_HZ + 1


def test_it_counts_how_often_it_jumped() -> None:
    """Who takes an echo away has lost it then, and has to know."""
    played = PlayedSound()
    played.put(numbered(0, 100), RATE_HZ)
    played.take(0.04)
    assert played.jumps == 0
    played.take(0.1)
    assert played.jumps == 1
    played.put(numbered(0, 500), RATE_HZ)
    played.take(0.04)
    assert played.jumps == 2


def test_it_knows_whether_a_loudspeaker_of_ours_plays_at_all() -> None:
    """A voice of the system's own plays past the program, and then nothing can be taken away."""
    played = PlayedSound()
    assert not played.was_fed
    assert played.take(0.01) == b"\0" * 320
    played.put(b"\0\0", RATE_HZ)
    assert played.was_fed


def test_another_rate_begins_anew() -> None:
    """A device that was found again may want another rate; sound of two rates is no sound."""
    played = PlayedSound()
    played.put(numbered(0, 10), RATE_HZ)
    played.put(numbered(50, 10), 2 * RATE_HZ)
    assert numbers(played.take(0.005)) == list(range(50, 60))


def test_where_nobody_listens_memory_does_not_grow() -> None:
    """A loudspeaker plays all evening, silence too."""
    played = PlayedSound()
    for _ in range(1000):
        played.put(numbered(0, 20), RATE_HZ)
    assert len(numbers(played.take(10.0))) == 10_000
    assert sum(1 for each in numbers(played.take(1.0)) if each) == 0
