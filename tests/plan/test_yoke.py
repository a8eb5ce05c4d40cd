"""The rounds of a yoke, by hand."""

from __future__ import annotations

import pytest

from stepper.plan.yoke import NARROWEST, WIDEST, yoke_of
from tests.plans import plan


def test_a_yoke_ends_where_stitches_go_on_hold() -> None:
    """Neckband and yoke, without the cast-on and the dividing round; the neck is 80 of 160 stitches."""
    made = plan(
        ("neckband", ["co80", "(k2 p2)x20"]),
        ("yoke", ["k80", "(k1 m1)x80", "k40 hold40:left k40 hold40:right"]),
        ("body", ["k80"] * 3),
    )
    yoke = yoke_of(made.rounds)
    assert yoke is not None
    assert [each.index for each in yoke.rounds] == [1, 2, 3]
    assert yoke.inner == pytest.approx(0.5)


def test_without_a_division_it_is_the_first_section() -> None:
    """A hat seen from above is drawn as well, its widest round the rim."""
    yoke = yoke_of(plan(("brim", ["co80", "k80", "k80"]), ("crown", ["k80"])).rounds)
    assert yoke is not None
    assert [each.index for each in yoke.rounds] == [1, 2]
    assert yoke.inner == WIDEST


def test_a_narrow_beginning_leaves_a_neck_to_be_seen() -> None:
    """Eight stitches in the middle of two hundred are drawn wider than they are."""
    yoke = yoke_of(plan(("shawl", ["co8", "k8", "(k1 m1)x8", "(k1 m1)x16", "(k1 m1)x32", "(k1 m1)x64"])).rounds)
    assert yoke is not None
    assert yoke.inner == NARROWEST


def test_what_is_worked_in_rows_has_no_rings() -> None:
    """Nor has an empty garment."""
    assert yoke_of(plan(("scarf", ["co20", *[("k20", {"flat": True})] * 9])).rounds) is None
    assert yoke_of(()) is None
