"""Counts that would do instead, against published multiples."""

from __future__ import annotations

import pytest

from stepper.craft.gauge import Gauge
from stepper.plan.state.fitting_counts import costs, nearest_counts, price_counts
from tests.plan.test_compile import faults
from tests.project.samples import project


@pytest.mark.parametrize(
    ("count", "multiple", "plus", "near"),
    [
        (169, 4, 0, (168, 172)),  # 2x2 rib in the round: 169 fails, 168 works (check-values 6.1)
        (168, 4, 0, (168,)),
        (104, 4, 2, (102, 106)),  # 2x2 flat: 104 is not 4n + 2, use 102 or 106 (check-values 6.17)
        (209, 12, 0, (204, 216)),  # nearest multiple of 12: 204 (5 off) or 216 (7 off) (check-values 6.5)
        (18, 4, 0, (16, 20)),  # "even" is not enough for 2x2 rib (check-values 6.4)
        (3, 6, 0, (6,)),
        (0, 4, 0, (4,)),
        (5, 4, 1, (5,)),
    ],
)
def test_the_nearest_counts_are_the_published_ones(
    count: int, multiple: int, plus: int, near: tuple[int, ...]
) -> None:
    """Below and above, or the count itself."""
    assert nearest_counts(count, multiple, plus) == near


def test_what_a_count_costs_is_its_width() -> None:
    """Source: 95 cm × 2.2 stitches per cm = 209; 5 fewer are 2.3 cm, 7 more 3.2 cm (check-values 6.5)."""
    gauge = Gauge(stitches=22, rounds=30)
    assert costs(204 - 209, gauge, "cm") == "5 fewer, 2.3 cm narrower"
    assert costs(216 - 209, gauge, "cm") == "7 more, 3.2 cm wider"
    assert costs(22, Gauge.over_four_inches(stitches=22, rounds=30), "in") == "22 more, 4 in wider"
    assert costs(-1, None, "cm") == "1 fewer"


def test_a_chart_that_does_not_divide_offers_counts_with_their_cost() -> None:
    """22 stitches and a chart of 4, at 20 to 10 cm: 2 stitches are 1 cm."""
    told = faults(project("Cast on 22 sts.\nJoin in the round.\nChart peak."))
    assert "20 is 2 fewer, 1 cm narrower; 24 is 2 more, 1 cm wider." in told


def test_a_rib_that_does_not_divide_offers_counts_with_their_cost() -> None:
    """The same for ribbing."""
    told = faults(project("Cast on 22 sts.\nJoin in the round.\n*K2, p2; rep from * to end."))
    assert "20 is 2 fewer, 1 cm narrower; 24 is 2 more, 1 cm wider." in told


def test_other_hints_are_left_as_they_are() -> None:
    """Only counts have a price."""
    assert price_counts("Cast on first.", 20, None, "cm") == "Cast on first."
    for impossible in ((5, 0, 0), (-1, 4, 0), (5, 4, -1)):
        with pytest.raises(ValueError, match="multiple"):
            nearest_counts(*impossible)


def test_a_rib_named_by_its_stitches_offers_counts_too() -> None:
    """44 stitches and k3, p3 rib: 42 or 48, at 20 to 10 cm 1 cm narrower or 2 cm wider (check-values 6.3)."""
    told = faults(project("Cast on 44 sts.\nJoin in the round.\nWork in k3, p3 rib for 2 cm."))
    assert "42 is 2 fewer, 1 cm narrower; 48 is 4 more, 2 cm wider." in told


def test_a_repeat_of_one_stitch_fits_every_count() -> None:
    """Seed stitch over any number is no error: every whole number is a multiple of one."""
    assert nearest_counts(7, 1) == (7,)
