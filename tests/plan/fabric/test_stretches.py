"""A stretch of a row in a fabric by its name. Source: what the fabrics are, common practice."""

from __future__ import annotations

import pytest

from stepper.plan.model import flatten
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

FLAT = "Cast on 11 sts. Work flat.\n"


def stitches(text: str, index: int) -> str:
    """Return the stitches of a round, a letter each."""
    phrase = plan_of(project(f"{FLAT}{text}\nBind off in knit.")).rounds[index].phrase
    return "".join(run.stitch * run.times for run in flatten(phrase))


@pytest.mark.parametrize(
    ("fabric", "right", "wrong"),
    [
        ("garter st", "kkkkkkkkkkk", "kkkpppppkkk"),
        ("st st", "kkkkkkkkkkk", "ppppppppppp"),
        ("reverse st st", "pppkkkkkppp", "kkkpppppkkk"),
        ("seed st", "kpkkkkkkkpk", "kpkpppppkpk"),
    ],
)
def test_a_stretch_is_worked_as_its_fabric_is(fabric: str, right: str, wrong: str) -> None:
    """A border worked otherwise than it is called curls, or shows on the wrong side."""
    text = (
        f"Row 1 (RS): Work first 3 sts in {fabric}, k to last 3 sts, work last 3 sts in {fabric}.\n"
        f"Row 2: Work first 3 sts in {fabric}, p to last 3 sts, work last 3 sts in {fabric}."
    )
    assert stitches(text, 1) == right
    assert stitches(text, 2) == wrong


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("Cast on 11 sts. Join in the round.\nRnd 1: K5, work next 3 sts in garter st, k3.", "over a part of a round"),
        (f"{FLAT}Row 1: K5, work next 4 sts in seed st, k2.", "nobody can tell with which stitch it begins"),
        (f"{FLAT}Bind off 2 sts at beg of next 2 rows.\nRow 1: Moss st 3, k to end.", "another pattern on a US page"),
    ],
)
def test_what_one_row_cannot_say_is_refused(text: str, told: str) -> None:
    """A guess would be half a repeat off all the way up."""
    assert told in faults(project(text))


@pytest.mark.parametrize(
    ("line", "row"),
    [
        ("Work first 4 sts in seed st, k to end.", "kpkpkkkkkkk"),  # at the beginning of a row it begins with a knit stitch
        ("Work first 5 sts in seed st, k to end.", "kpkpkkkkkkk"),
        ("K5, work next 5 sts in seed st, k1.", "kkkkkkpkpkk"),  # an odd number begins and ends alike from either side
    ],
)
def test_seed_stitch_begins_with_a_knit_stitch_where_nothing_lies_below(line: str, row: str) -> None:
    """Source: common practice (seed stitch, k1, p1)."""
    assert stitches(f"Row 1: {line}", 1) == row


def test_a_stretch_longer_than_the_row_is_refused() -> None:
    """Eleven stitches cannot give twelve in garter stitch."""
    assert "working 12 in garter stitch" in faults(project(f"{FLAT}Row 1: Work first 12 sts in garter st.\nBind off."))


def test_the_opposite_is_of_each_stitch_as_it_shows() -> None:
    """Worked back, a knit stitch of the row below shows as a purl one, and is knitted."""
    assert stitches("Row 1 (RS): K2, p2, k7.\nRow 2: Knit the purls and purl the knits.", 2) == "kkkkkkkppkk"
    told = faults(project(f"{FLAT}Row 1 (RS): K1, *yo, k2tog; rep from * to end.\nRow 2: Knit the purls and purl the knits."))
    assert "not every stitch below is known to be a knit or a purl stitch" in told
