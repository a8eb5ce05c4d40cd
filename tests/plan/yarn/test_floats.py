"""Every float of a round, and where a long one is caught."""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.plan.model import Run
from stepper.plan.yarn.floats import Float, catches, floats, longest_floats, places_to_catch


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


@given(st.text("AMB", min_size=1, max_size=24), st.booleans())
def test_a_float_is_seen_by_walking_the_round_twice(text: str, flat: bool) -> None:
    """An oracle that knows no join: walk the drawing once for a row, twice for a round, and look back."""
    walked = text if flat else text * 2
    if len(set(text)) < 2:
        assert floats(row(text), flat=flat) == ()
        return
    seen = set()
    for at, sign in enumerate(walked):
        before = walked.rfind(sign, 0, at)
        if before >= 0 and at - before > 1:
            seen.add((sign, (before + 1) % len(text), at - before - 1))
    found = {(each.yarn, each.start, each.stitches) for each in floats(row(text), flat=flat)}
    assert found == seen
    assert dict(longest_floats(row(text), flat=flat)) == {
        sign: max((n for yarn, _, n in seen if yarn == sign), default=0) for sign in text
    }


def test_a_float_across_the_join_begins_before_it() -> None:
    """Six stitches from the ninth on: two before the join and four after it (check-values 5.8)."""
    assert floats(row("MMMMAAAAMM"), flat=False) == (
        Float(yarn="M", start=4, stitches=4),
        Float(yarn="A", start=8, stitches=6),
    )


@given(st.integers(0, 99), st.integers(1, 99), st.integers(1, 12), st.integers(-3, 3))
def test_no_part_of_a_caught_float_is_over_the_limit(
    start: int, stitches: int, limit: int, shift: int
) -> None:
    """Cut at the catches, also across the join of a round of a hundred, and moved or not."""
    places = catches(Float(yarn="A", start=start, stitches=stitches), limit, 100, shift)
    cuts = [0, *((place - start - 1) % 100 + 1 for place in places), stitches]
    parts = [after - before for before, after in pairwise(cuts)]
    assert all(0 < part <= limit for part in parts)
    assert len(places) == -(-stitches // limit) - 1  # and no more catches than needed


def test_a_catch_moves_off_the_one_below_where_the_limit_lets_it() -> None:
    """Eight over five: in the middle, or one beside it; ten over five have no room to move."""
    eight, ten = Float(yarn="A", start=10, stitches=8), Float(yarn="A", start=10, stitches=10)
    assert places_to_catch([eight], 5, 40) == (14,)
    assert places_to_catch([eight], 5, 40, frozenset({14})) == (15,)
    assert places_to_catch([eight], 5, 40, frozenset({14, 15})) == (13,)
    assert places_to_catch([ten], 5, 40, frozenset({15})) == (15,)


def test_catches_are_tried_nearest_first_up_to_two_stitches_away() -> None:
    """Six over five leave room on both sides: in the middle, one to the right, one to the left, two to either. The one that
    shows least is taken. By hand."""
    six = Float(yarn="A", start=10, stitches=6)
    taken, below = [], set[int]()
    for _ in range(6):
        (place,) = places_to_catch([six], 5, 40, frozenset(below))
        taken.append(place)
        below.add(place)
    assert taken == [13, 14, 12, 15, 11, 13]
