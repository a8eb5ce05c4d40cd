from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from stepper.ears.deafness import Deafness


class Clockwork:
    """A speaker and a clock that do as they are told."""

    def __init__(self) -> None:
        self.speaking = False
        self.now = 0.0


def test_deaf_while_speaking_and_for_the_tail_and_no_longer() -> None:
    """The echo of the last word is not heard, her next cue is."""
    works = Clockwork()
    deaf = Deafness(works, 0.35, lambda: works.now)
    assert not deaf()
    works.speaking, works.now = True, 1.0
    assert deaf()
    works.now = 5.0
    assert deaf()
    works.speaking, works.now = False, 5.3
    assert deaf()
    works.now = 5.36
    assert not deaf()


@given(st.lists(st.tuples(st.booleans(), st.integers(1, 200)), max_size=60), st.integers(0, 60))
def test_never_open_while_speaking_nor_within_the_tail(steps: list[tuple[bool, int]], tail: int) -> None:
    """Whatever is said when, asked at every tick the ears are closed exactly as long as they should be.

    Source: the rule itself, worked out over all ticks so far.
    """
    works = Clockwork()
    deaf = Deafness(works, tail, lambda: works.now)
    last_spoken = None
    for speaking, ticks in steps:
        works.speaking = speaking
        for _ in range(ticks):
            works.now += 1
            last_spoken = works.now if speaking else last_spoken
            assert deaf() is (speaking or (last_spoken is not None and works.now < last_spoken + tail))
