"""Repeats are found, and no stitch is lost by it."""

from __future__ import annotations

from itertools import pairwise

from hypothesis import given
from hypothesis import strategies as st

from stepper.plan.model import Group, Run, flatten
from stepper.plan.stitches.run_repeats import condense, join_runs, laid_flat

runs = st.lists(
    st.builds(Run, st.sampled_from(["k", "p", "m1"]), st.integers(1, 3), st.just("MC")), max_size=60
).map(tuple)


@given(runs)
def test_a_condensed_round_is_the_same_round(flat: tuple[Run, ...]) -> None:
    """Laid flat again it is what it was."""
    assert tuple(flatten(condense(flat))) == flat


@given(runs)
def test_a_condensed_round_never_takes_more_items(flat: tuple[Run, ...]) -> None:
    """Groups are written only where they save words."""

    def items(phrase: tuple[Run | Group, ...]) -> int:
        return sum(1 if isinstance(item, Run) else 1 + items(item.items) for item in phrase)

    assert items(condense(flat)) <= len(flat)


def test_an_even_increase_is_one_repeat() -> None:
    """Source: 72 to 90, half start: k2, m1, *k4, m1* x17, k2 (check-values 3.2.1, computed)."""
    flat = (Run("k", 2, "MC"), Run("m1", 1, "MC"), *(Run("k", 4, "MC"), Run("m1", 1, "MC")) * 17, Run("k", 2, "MC"))
    assert condense(flat) == (
        Run("k", 2, "MC"),
        Run("m1", 1, "MC"),
        Group((Run("k", 4, "MC"), Run("m1", 1, "MC")), 17),
        Run("k", 2, "MC"),
    )


@given(runs)
def test_joining_keeps_the_stitches(flat: tuple[Run, ...]) -> None:
    """Only the writing changes; neighbours differ afterwards."""
    short = join_runs(flat)
    assert sum(run.times for run in short) == sum(run.times for run in flat)
    assert all(a.stitch != b.stitch for a, b in pairwise(short))
    assert laid_flat(flat) == short


def test_equal_stitches_side_by_side_are_one_stretch() -> None:
    """A plain chart row is read as "knit 6", not as three times "knit 2"."""
    items = [Run("k", 2, "MC"), Run("k", 4, "MC"), Run("k", 1, "A"), Run("p", 1, "A")]
    assert join_runs(items) == (Run("k", 6, "MC"), Run("k", 1, "A"), Run("p", 1, "A"))
