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


def test_without_a_division_it_is_a_first_section_called_a_yoke() -> None:
    """A yoke that is not divided yet in the file is drawn as well."""
    yoke = yoke_of(plan(("round yoke", ["co80", "k80", "k80"]), ("rest", ["k80"])).rounds)
    assert yoke is not None
    assert [each.index for each in yoke.rounds] == [1, 2]
    assert yoke.inner == WIDEST


def test_mittens_socks_and_hats_have_no_yoke() -> None:
    """A thumb or an instep on hold is no division, and a brim is no neck: a yoke drawn there would be a lie."""
    mitten = plan(("cuff", ["co8", "k8"]), ("hand", ["k2 hold2:thumb k4", "k6"]))
    hat = plan(("brim", ["co80", "k80", "k80"]), ("crown", ["k80"]))

    assert yoke_of(mitten.rounds) is None
    assert yoke_of(hat.rounds) is None


def test_a_narrow_beginning_leaves_a_neck_to_be_seen() -> None:
    """Eight stitches in the middle of two hundred are drawn wider than they are."""
    yoke = yoke_of(plan(("yoke", ["co8", "k8", "(k1 m1)x8", "(k1 m1)x16", "(k1 m1)x32", "(k1 m1)x64"])).rounds)
    assert yoke is not None
    assert yoke.inner == NARROWEST


def test_what_is_worked_in_rows_has_no_rings() -> None:
    """Nor has an empty garment."""
    assert yoke_of(plan(("scarf", ["co20", *[("k20", {"flat": True})] * 9])).rounds) is None
    assert yoke_of(()) is None
