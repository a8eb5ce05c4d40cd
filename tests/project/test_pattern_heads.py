"""Headings of stitch patterns are told from lines that are worked. Wordings: common practice."""

from __future__ import annotations

import pytest

from stepper.project.pattern_heads import goes_with_head, heads_pattern, key_called, name_in_head


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
