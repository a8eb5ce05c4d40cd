from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.voice.likeness import Likeness, distance
from stepper.voice.pronouncing import SOUNDS, Sounds

sounds = st.lists(st.sampled_from(SOUNDS), min_size=1, max_size=8).map(tuple)


@given(sounds, sounds)
def test_a_distance_is_none_only_between_the_same_sounds(one: Sounds, other: Sounds) -> None:
    """Zero for the same, above zero and at most one for others, whichever is named first."""
    assert distance(one, one) == 0
    assert (distance(one, other) == 0) == (one == other)
    assert 0 <= distance(one, other) <= 1
    assert distance(one, other) == pytest.approx(distance(other, one))


@given(st.lists(sounds, min_size=1, max_size=6), sounds)
def test_many_rows_are_compared_as_each_alone(rows: list[Sounds], heard: Sounds) -> None:
    """The shared tree changes the speed and nothing else."""
    tree = Likeness(rows)
    costs = tree.rows(heard, tree.start(heard))[:, -1]
    for row, cost in zip(rows, costs, strict=True):
        alone = Likeness([row])
        assert cost == pytest.approx(alone.rows(heard, alone.start(heard))[0, -1])


def test_like_sounds_are_nearer_than_unlike_ones() -> None:
    """Voiced and voiceless pairs are neighbours on the phonetic chart; p and m share only the lips, p and s
    nothing."""
    assert distance(("p", "i"), ("b", "i")) < distance(("p", "i"), ("s", "i"))
    assert distance(("m",), ("n",)) < distance(("m",), ("k",))
    assert distance(("i",), ("ɪ",)) < distance(("i",), ("ɑ",))
    assert distance((), ("i",)) == 1
