"""Headings of stitch patterns are told from lines that are worked. Wordings: common practice."""

from __future__ import annotations

import pytest

from stepper.project.pattern_heads import (
    as_first_row,
    as_plain_head,
    goes_with_head,
    heads_pattern,
    is_in_words,
    key_called,
    key_of,
    name_in_head,
    names_shaping_row,
    run_in_head,
    tells_pattern,
)


@pytest.mark.parametrize(
    ("row", "name"),
    [
        ("Ladder Lace (multiple of 6 sts + 1)", "ladder lace"),
        ("Basket Stitch", "basket stitch"),
        ("Seed Stitch (odd number of sts):", "seed stitch"),
        ("Cable Panel (worked over 12 sts)", "cable panel"),
        ("TWISTED RIB", "twisted rib"),
        ("Ladder (6 sts)", "ladder"),
        ("6.1 Ridge (any number of sts; 4 rnds)", "ridge"),
        ("PANEL A (worked over 12 sts)", "panel a"),
        ("RIVER LACE (24-st panel, 4 rnds)", "river lace"),
        ("Cable Panel (worked in the round over 26 sts)", "cable panel"),
        ("Panel B: worked over 6 sts.", "panel b"),
        ("Cable panel 2 is worked over 22 sts", "cable panel 2"),
    ],
)
def test_a_name_above_a_first_row_heads_a_pattern(row: str, name: str) -> None:
    """The rows below it are what the name stands for."""
    assert heads_pattern(row, "1st row (RS): Knit.")
    assert heads_pattern(row, "Rnd 1: *K1, p1; rep from * to end.")
    assert name_in_head(row) == name


@pytest.mark.parametrize(
    ("row", "below"),
    [
        ("Work in seed stitch", "Row 1: Knit."),
        ("Continue in rib", "Row 1: Knit."),
        ("Ladder Lace (multiple of 6 sts + 1)", "Cast on 24 sts."),
        ("Basket Stitch", "Row 10: Knit."),
        ("Basket Stitch", ""),
        ("Knit 4 rows.", "Row 1: Knit."),
        ("Heel flap (28 sts)", "Row 1: Knit."),
        ("Left wing (worked over 28 sts)", "Row 1: Knit."),
        ("These 2 rounds form the pattern.", "Rnds 1-2 form broken seed pattern."),
    ],
)
def test_what_is_worked_heads_none(row: str, below: str) -> None:
    """A row taken for a heading would be knitted nowhere."""
    assert not heads_pattern(row, below)


def test_a_panel_is_called_by_the_end_of_its_name_where_no_other_ends_so() -> None:
    """With two of them nobody can tell which is meant, and the name stays unknown."""
    assert key_called("panel", ["braid panel", "rope"]) == "braid panel"
    assert key_called("Panel", ["braid panel", "rope panel"]) == "panel"
    assert key_called("rope panel", ["braid panel", "rope panel"]) == "rope panel"
    assert key_called("panel a", ["panel b"]) == "panel a"


@pytest.mark.parametrize(
    ("row", "above", "goes"),
    [
        ("(multiple of 4 sts plus 2)", "BASKET STITCH", True),
        ("(over an odd number of sts)", "Seed Stitch", True),
        ("(multiple of 4 sts plus 2)", "BACK", True),
        ("(multiple of 4 sts plus 2), work 4 rows", "BASKET STITCH", False),
        ("(28 sts)", "Heel flap", False),
        ("(make 2)", "Sleeve", False),
    ],
)
def test_the_stitches_a_pattern_needs_may_stand_below_its_name(row: str, above: str, goes: bool) -> None:
    """Magazines set them in a row of their own; the sizes of a part or how often it is made are none of it."""
    assert goes_with_head(row, above) == goes


@pytest.mark.parametrize(
    ("row", "name"),
    [
        ("2x2 Rib (multiple of 4 sts)", "2x2 rib"),
        ("Chart A (multiple of 6 sts, 5 rnds)", "chart a"),
        ("CHART B", "chart b"),
        ("Twisted rib (in the rnd, even number of sts)", "twisted rib"),
        ("Lace Chart (written instructions)", "lace chart"),
        ("Slip Stitch Pattern", "slip stitch pattern"),
    ],
)
def test_a_rib_by_its_numbers_and_a_chart_in_words_are_patterns(row: str, name: str) -> None:
    """Their rows stand below, often one for all: "Every rnd:"."""
    assert heads_pattern(row, "Every rnd: *K2, p2; rep from * to end.")
    assert heads_pattern(row, "Row 1 (RS): Knit.")
    assert not heads_pattern(row, "Every other rnd: Knit.")
    assert not heads_pattern(row, "All rnds are knit.")
    assert name_in_head(row) == name


def test_the_only_row_of_a_pattern_is_its_first() -> None:
    """Each letter behind its head keeps its place, so that a problem stands under what is printed."""
    for row in ("Every rnd: *K2, p2.", "All rows: Knit.", "  Each row: Purl.", "All rows (RS & WS): Knit."):
        first = as_first_row(row)
        assert len(first) == len(row)
        assert first.split() == [row.lower().split()[1].rstrip("s:"), "1:", *row.split(":")[1].split()]
    assert as_first_row("All WS rows: Purl.") == "All WS rows: Purl."
    assert as_first_row("Every rnd 4 times: Knit.") == "Every rnd 4 times: Knit."


def test_a_rib_has_one_key() -> None:
    """However its numbers are joined."""
    assert {key_of(name) for name in ("2x2 rib", "2 x 2 ribbing", "2/2 Rib")} == {"2x2 rib"}
    assert key_of("twisted rib") == "twisted rib"


def test_a_row_only_says_that_a_chart_is_written_below() -> None:
    """Any other word makes it a row of the page."""
    assert is_in_words("In words:")
    assert is_in_words("Written instructions:")
    assert not is_in_words("Written instructions for Chart B:")


@pytest.mark.parametrize(
    ("row", "rest"),
    [
        ("Moss stitch (odd number of sts): Every row: K1, *p1, k1; rep from * to end.", "Every row: K1, *p1, k1; rep from * to end."),
        ("moss st - 1st row: K1, (p1, k1) to end.", "1st row: K1, (p1, k1) to end."),
        ("K2, P2 rib (multiple of 4 sts): Row 1: *K2, p2; rep from * to end.", "Row 1: *K2, p2; rep from * to end."),
        ("Neck: Row 1: K2, p2.", ""),
        ("Heel flap (28 sts): Row 1: Sl 1, k to end.", ""),
        ("Work in rib: Row 1: K2, p2.", ""),
    ],
)
def test_a_pattern_may_be_told_in_the_row_of_its_name(row: str, rest: str) -> None:
    """A part of the garment is worked where it stands, whatever its stitches."""
    at = run_in_head(row)
    assert (row[at:] if at else "") == rest


def test_a_row_may_name_and_tell_a_whole_pattern() -> None:
    """One row is all there is of a rib."""
    assert tells_pattern("Twisted rib (multiple of 4 sts): *(K1 tbl) twice, p2; rep from * to end.")
    assert tells_pattern("Rib pattern: K2, p2 alternately.")
    assert not tells_pattern("Rib round: *K2, p2; rep from * to end.")
    assert not tells_pattern("Cuff: K2, p2 to end.")


def test_a_heading_is_put_as_other_pages_print_it() -> None:
    """What it says of rows and rounds is no word of its name."""
    assert as_plain_head("Grain pattern: even number of sts, in rounds.") == "Grain pattern (even number of sts)"
    assert as_plain_head("Grain panel over 5 sts, worked in the rnd:") == "Grain panel (over 5 sts)"
    assert as_plain_head("K2, P2 RIB (multiple of 4 sts plus 2)") == "2x2 RIB (multiple of 4 sts plus 2)"
    assert as_first_row("Row 1 (RS) K2, p2.") == "Row 1 (RS):K2, p2."
    assert as_first_row("Row 1 (RS): K2, p2.") == "Row 1 (RS): K2, p2."


@pytest.mark.parametrize(
    ("row", "named"),
    [
        ("Raglan dec row (RS): K2, ssk, k to last 4 sts, k2tog, k2.", True),
        ("Raglan dec row (RS) K2, ssk, k to last 4 sts, k2tog, k2.", True),
        ("Inc rnd: K1, m1, k to end.", True),
        ("Next dec row: K1, k2tog, k to end.", False),
        ("Work dec row every 4th row.", False),
        ("Decrease rows are worked on the RS.", False),
    ],
)
def test_a_row_that_tells_a_shaping_by_its_name_is_known(row: str, named: bool) -> None:
    """In front of the knitting it is kept for where it is called."""
    assert names_shaping_row(row) is named


def test_a_pattern_may_say_on_which_counts_it_is_worked_without_a_bracket() -> None:
    """Over an even number of sts is no order."""
    row = "Moss st over an even number of sts: Row 1 *k1, p1; rep from *. Row 2 *p1, k1; rep from *."
    assert row[run_in_head(row) :].startswith("Row 1")
    assert run_in_head("Work over an even number of sts: Row 1 *k1, p1; rep from *.") == 0


def test_every_row_without_a_colon_is_the_first() -> None:
    """It is the whole pattern, and its letters keep their places."""
    row = "every row k1, *p1, k1; rep from *."
    assert as_first_row(row) == "row 1:    k1, *p1, k1; rep from *."
    assert len(as_first_row(row)) == len(row)


def test_a_ridge_is_a_pattern_only_in_front_of_the_knitting() -> None:
    """Further down it may head rows that are worked where they stand."""
    assert heads_pattern("Garter Ridge", "Rnd 1: Knit.")
    assert not heads_pattern("Garter Ridge", "Rnd 1: Knit.", knits=True)
    assert heads_pattern("Fern lace", "Rnd 1: Knit.", knits=True)
