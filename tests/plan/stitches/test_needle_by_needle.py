"""Rounds told needle by needle, worked out by hand. Source of the reading: sock patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.craft.stitches import stitch
from stepper.plan.model import Run
from stepper.plan.stitches.needle_by_needle import NeedleEnds
from tests.plan.fabric.test_established import knit, told
from tests.plan.test_compile import faults
from tests.project.samples import project

SOCK = "Cast on 32 sts.\nJoin in the round.\nDivide sts over 3 needles: 8 sts on N1, 16 sts on N2, 8 sts on N3.\n"
TOE = "N1: K to last 3 sts, k2tog, k1; N2: K1, ssk, k to last 3 sts, k2tog, k1; N3: K1, ssk, k to end."


def refused(work: str) -> str:
    """Return what is printed of the problems of some lines in one size."""
    return faults(project(work, sizes="S", size="S"))


def test_each_needle_is_worked_to_its_own_end() -> None:
    """ "K to last 3 sts" on needle 1 are the last 3 of that needle, not of the round."""
    plan = knit(f"{SOCK}{TOE} 28 sts.")
    assert told(plan, 1) == ["k5, k2tog, k1, k1, ssk, k10, k2tog, k1, k1, ssk, k5"]


def test_the_needles_shrink_with_the_shaping() -> None:
    """The second decrease round finds one stitch less on N1, two on N2."""
    plan = knit(f"{SOCK}Rnd 1: {TOE}\nRnd 2: Knit.\nRep rnds 1-2 2 times more. 20 sts.")
    assert [round_.after for round_ in plan.rounds[1:]] == [28, 28, 24, 24, 20, 20]
    assert plan.rounds[-2].instruction == "k3, k2tog, k1, k1, ssk, k6, k2tog, k1, k1, ssk, k3"


def test_full_stops_between_the_needles_part_no_round() -> None:
    """Old patterns end what is worked on a needle with a full stop."""
    plan = knit(f"{SOCK}Needles 1 and 3: Knit. Needle 2: Purl.")
    assert [round_.instruction for round_ in plan.rounds[1:]] == ["k8, p16, k8"]


@pytest.mark.parametrize(
    "line",
    [
        "N1: Knit; N2: knit.",
        "N1: Knit; N2: knit; N3: knit; N4: knit.",
        "N1: K5; N2: knit; N3: knit.",
        "N1: K9; N2: k15; N3: knit.",
    ],
)
def test_a_round_that_does_not_fit_the_needles_is_refused(line: str) -> None:
    """A needle left out, one too many, one worked in part or past its end."""
    assert refused(f"{SOCK}{line}")


def test_needles_nobody_has_divided_are_refused() -> None:
    """How many stitches needle 1 holds is nowhere said."""
    assert "not divided over needles" in refused("Cast on 32 sts.\nJoin in the round.\nN1: Knit; N2: purl.")


def test_stitches_on_hold_end_the_division() -> None:
    """What is on the needles then is another matter."""
    work = f"{SOCK}K16, hold 16 for instep.\nN1: Knit; N2: purl; N3: knit."
    assert "not divided over needles" in refused(work)


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("N1: K7; N2: knit; N3: knit.", "needle 1 holds 8 stitches, and the round works 7 of them"),
        ("N1: Knit; N2: k15; N3: knit.", "needle 2 holds 16 stitches, and the round works 15 of them"),
    ],
)
def test_a_needle_that_is_not_worked_to_its_end_is_told_with_its_stitches(line: str, told: str) -> None:
    """Counted from its own beginning, the first like the others."""
    assert told in refused(f"{SOCK}{line}")


def test_an_end_moves_with_the_stitches_before_it() -> None:
    """Four decreases before the end of needle 1 leave it four stitches nearer."""
    ends = NeedleEnds(waiting=[8, 24])
    ends.advance(Run("k2tog", 6, "MC"), stitch("k2tog"), 0, 0)
    ends.advance(Run("k", 20, "MC"), stitch("k"), 12, 6)
    assert ends.left(32, 26) == (4, 18)


def test_a_stitch_made_just_at_an_end_leaves_it_unsure() -> None:
    """Nobody can tell on which of the two needles it is."""
    ends = NeedleEnds(waiting=[8])
    ends.advance(Run("k", 8, "MC"), stitch("k"), 0, 0)
    ends.advance(Run("m1", 1, "MC"), stitch("m1"), 8, 8)
    ends.advance(Run("k", 8, "MC"), stitch("k"), 8, 9)
    assert ends.left(16, 17) == ()
