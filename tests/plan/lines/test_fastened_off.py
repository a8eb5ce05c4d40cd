"""Fastening off: the last stitch, and all of them as another part ends."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import faults, plan_of
from tests.project.samples import HEAD, project

THUMB = """\
  - name: thumb
    work: |
      Cast on 12 sts.
      Join in the round.
      Knit 3 rnds.
      Next rnd: K2tog around.
      {end}
  - name: finger
    work: |
      Cast on 16 sts.
      Join in the round.
      Knit 2 rnds.
      Next rnd: K2tog around.
      {like}
"""
DRAWN = "Break yarn, draw through rem 6 sts and fasten off."


def two_parts(like: str, end: str = DRAWN) -> str:
    """Write a thumb with its end, and a finger that ends like it."""
    return HEAD.format(sizes="M", size="M").split("  - name")[0] + THUMB.format(end=end, like=like)


@pytest.mark.parametrize(
    "like",
    [
        "Fasten off as for thumb.", "Fasten off as thumb.", "Fasten off as before.", "Fasten off in the same way.",
        "Break yarn and fasten off as given for the thumb.", "Fasten off rem sts as on thumb.", "Fasten off all sts.",
    ],
)  # fmt: skip
def test_stitches_come_off_as_those_of_another_part_did(like: str) -> None:
    """The words were only said, and 8 stitches stayed on the needles. Source: common practice."""
    last = plan_of(two_parts(like)).rounds[-1]
    assert (last.section, last.before, last.after, {run.stitch for run in last.runs}) == ("finger", 8, 0, {"draw"})


def test_they_are_bound_off_where_those_were() -> None:
    """How the stitches of the other part came off is how these do."""
    last = plan_of(two_parts("Fasten off as for thumb.", "Bind off.")).rounds[-1]
    assert (last.after, {run.stitch for run in last.runs}) == (0, {"bo"})


@pytest.mark.parametrize(
    ("like", "end", "told"),
    [
        ("Fasten off as for thumb.", "Place sts on a holder.", "no stitches came off the needles at the end of the thumb"),
        ("Fasten off as for the ear.", DRAWN, 'no part was worked before this one that is called "ear"'),
    ],
)
def test_an_end_that_is_not_known_is_refused(like: str, end: str, told: str) -> None:
    """Where nothing came off there is no end to work again."""
    assert told in faults(two_parts(like, end))


def test_only_breaking_the_yarn_is_told_where_stitches_stay() -> None:
    """After "Bind off 10 sts, fasten off" the others may go on a holder; a colour that is fastened off is no end at all."""
    work = "Cast on 12 sts.\nJoin in the round.\nKnit 3 rnds.\nNext rnd: K2tog around.\n"
    told = [caution.text for caution in plan_of(project(f"{work}Fasten off.\nBind off.")).warnings]
    assert told == ["6 stitches stay on the needles where the line fastens off; only the yarn is broken."]
    assert not plan_of(project(f"{work}Fasten off A.\nBind off.")).warnings
