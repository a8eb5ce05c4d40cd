"""Kinds of knitting, as a knitter would call them (common practice)."""

from __future__ import annotations

import pytest

from stepper.craft.pace_by_kind import USUAL_PER_MINUTE
from stepper.plan.kinds import kind_of
from tests.plans import plan


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("k80", "plain"),
        ("p80", "plain"),
        ("(k2 p2)x20", "rib"),
        ("(k3 p1)x20", "rib"),
        ("p4 k68 p4 k4", "plain"),
        ("k5 m1 (k11 m1)x6 k9", "plain"),
        ("(k1 k2tog yo)x20 k20", "texture"),
        ("(k2:A k2)x20", "colourwork"),
        ("bo80", "edge"),
    ],
)
def test_a_round_is_called_what_most_of_it_is(text: str, kind: str) -> None:
    """A stitch or two at the seams makes no rib of a plain round, a yarn over in four makes lace of it."""
    made = plan(("body", ["co80", text]))
    assert kind_of(made.rounds[1]) == kind
    assert kind in USUAL_PER_MINUTE


def test_casting_on_is_an_edge() -> None:
    """It goes slower than knitting whatever the yarn."""
    assert kind_of(plan(("body", ["co80"])).rounds[0]) == "edge"
