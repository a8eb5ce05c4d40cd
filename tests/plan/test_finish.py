"""Floats and places of shaping, derived from the runs."""

from __future__ import annotations

import pytest

from stepper.plan.finish import longest_floats, shaping_places
from stepper.plan.model import Run


def row(text: str) -> tuple[Run, ...]:
    """Make runs of a drawn round, in the order knitted."""
    return tuple(Run("k", 1, sign) for sign in text)


@pytest.mark.parametrize(
    ("text", "flat", "floats"),
    [
        # Source: worked by hand on the drawing; around the join by common practice (check-values 5.8).
        ("AAMMMMMMAA", False, {"A": 6, "M": 4}),
        ("AAMMMMMMAA", True, {"A": 6, "M": 0}),
        ("AMMMMM", False, {"A": 5, "M": 1}),
        ("MMMM", False, {}),
        ("BMMAMMB", False, {"B": 5, "M": 2, "A": 6}),
    ],
)
def test_the_longest_float_of_each_yarn(text: str, flat: bool, floats: dict[str, int]) -> None:
    """Stitches of other yarns between two of its own; the join joins the ends of a round."""
    assert dict(longest_floats(row(text), flat=flat)) == floats


def test_shaping_is_placed_by_the_stitches_used_before_it() -> None:
    """Stitches of the old round, as a knitter counts them on the left needle."""
    runs = (Run("k", 5, "MC"), Run("m1", 1, "MC"), Run("k", 4, "MC"), Run("k2tog", 2, "MC"), Run("k", 1, "MC"))
    assert shaping_places(runs) == (5, 9, 11)
