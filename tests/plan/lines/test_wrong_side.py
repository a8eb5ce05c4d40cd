"""Shaped rows on the other side than their stitches are for. Source: stockinette is shaped in knit stitches on its right
side, common practice; the sides counted by hand."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import plan_of
from tests.project.samples import project

SHAPED = "K1, ssk, k to last 3 sts, k2tog, k1."
START = "Cast on 20 sts. Work flat.\nRow 1 (RS): Knit.\nRow 2: Purl.\n"


def told(work: str) -> int:
    """Count the notes of a row on the other side."""
    return sum("side of stockinette" in warning.text for warning in plan_of(project(work)).warnings)


@pytest.mark.parametrize(
    ("between", "notes"),
    [("Work 3 rows even.\n", 1), ("Work 4 rows even.\n", 0)],
)
def test_a_knit_shaping_on_the_wrong_side_of_stockinette_is_told(between: str, notes: int) -> None:
    """All that follows is a row off, ridges and all, and only the stitches show it; it is told once for the part."""
    rows = f"Row 1: {SHAPED}\nRow 2: Purl.\nRow 3: {SHAPED}\nRow 4: Purl.\nBind off."
    assert told(f"{START}{between}{rows}") == notes


def test_a_repeat_that_ended_a_row_early_is_noticed_behind_the_rows_even() -> None:
    """A strap grows to 14, a row short of its purl row; four rows on, its decreases would come on the wrong side."""
    grown = "Row 3: K1, m1l, k to last st, m1r, k1.\nRow 4: Purl.\nRep rows 3 and 4 until there are 26 sts.\n"
    assert told(f"{START}{grown}Work 4 rows even.\nNext row: {SHAPED}\nBind off.") == 1
    assert told(f"{START}{grown}Next row (WS): Purl.\nNext row: {SHAPED}\nBind off.") == 0


@pytest.mark.parametrize(
    "row",
    [
        "Next row (WS): K1, ssk, k to last 3 sts, k2tog, k1.",
        "P1, p2tog, p to end.",
        "Knit 1 row.",
        "K10, ssk, turn.",
        "Bind off 4 sts, k to end.",
    ],
)
def test_a_row_that_is_meant_for_that_side_is_not_told(row: str) -> None:
    """Its side is named, its stitches are those of the side, or it makes no shaping in knit stitches to the end."""
    assert told(f"{START}Knit 1 row.\n{row}\nBind off.") == 0


def test_garter_stitch_is_shaped_on_either_side() -> None:
    """It looks alike from both."""
    assert told(f"Cast on 20 sts. Work flat.\nWork 5 rows in garter st.\nNext row: {SHAPED}\nBind off.") == 0


@pytest.mark.parametrize(
    ("rows", "again", "notes"),
    [
        (
            "Row 1 (RS): Knit.\nRow 2: K2, p to last 2 sts, k2.\nRow 3: K1, p to last st, k1.",
            "Rep rows 1-3 twice.",
            1,
        ),
        ("Row 1 (RS): Knit.\nRow 2: Purl.\nRow 3: Knit.", "Rep rows 1-2 twice.", 1),
        ("Row 1 (RS): Knit.\nRow 2: Purl.\nRow 3: Knit.\nRow 4: Purl.", "Rep rows 1-2 twice.", 0),
        ("Row 1: Knit.\nRow 2: Knit.\nRow 3: Knit.", "Rep rows 1-3 twice.", 0),
        ("Work 4 rows in k2, p2 rib.\nWork 2 rows in st st.", "Rep last 3 rows once.", 1),
        (
            "Rows 1 and 4: *K2, p2; rep from * to end.\nRow 2: Purl.\nRow 3: Knit.\nRow 5: Knit.",
            "Rep rows 1-5 once.",
            1,
        ),
        (
            "Row 1 and 4: *K2, p2; rep from * to end.\nRows 2 and 3: *P2, k2; rep from * to end.",
            "Rep rows 1-4 twice.",
            0,
        ),
    ],
)
def test_rows_that_come_on_the_other_side_again_are_told(rows: str, again: str, notes: int) -> None:
    """Three rows of a ridge are another fabric upside down: the page means it or has lost a row. Rows that are all
    alike are the same either way, and a line for rows of both sides has none of its own."""
    plan = plan_of(project(f"Cast on 20 sts. Work flat.\n{rows}\n{again}\nBind off."))
    assert sum("of these rows was worked on the" in warning.text for warning in plan.warnings) == notes


@pytest.mark.parametrize(
    "row",
    [
        "K5, bind off 10 sts, k to end.",
        "K5, hold 10 sts for neck, k to end.",
        "K5, turn, leaving rem sts on a holder.",
    ],
)
def test_a_row_that_parts_the_stitches_in_knit_stitches_is_told(row: str) -> None:
    """A neck that is divided a row off lies on the wrong side of all that follows."""
    assert told(f"{START}Knit 1 row.\nNext row: {row}") == 1
    assert told(f"{START}Next row: {row}") == 0


def test_a_side_said_beside_a_binding_off_is_held_against_the_rows_of_its_line() -> None:
    """Behind four rows the right side comes next, and on the wrong side the edge would look otherwise."""

    def notes(line: str) -> list[str]:
        work = project(f"Cast on 20 sts. Work flat.\n{line}")
        return [one.text for one in plan_of(work).warnings if "it is to be on the WS" in one.text]

    assert notes("Knit 4 rows. Bind off on WS.")
    assert not notes("Knit 3 rows. Bind off on WS.")
