"""Even changes worked in the stitch in which the page makes its changes."""

from __future__ import annotations

import pytest

from stepper.project.own_stitches.changes_worked import used_for_changes
from tests.project.own_stitches.test_abbreviations import defined


@pytest.mark.parametrize(
    ("row", "names"),
    [
        ("Next row: Inc 8 sts evenly across row.", ["inc"]),
        ("Knit, increasing evenly to 96 sts.", ["inc"]),
        ("K4, evenly dec 6 sts over next 30 sts, k to end.", ["dec"]),
        ("Inc row: K1, m1, k to end.", []),
        ("Inc 1 st each end of next row.", []),
    ],
)
def test_a_row_uses_the_stitch_of_the_page_without_naming_it(row: str, names: list[str]) -> None:
    """A file begun from the page has to keep what the page says of it."""
    own = defined(inc="kfb", dec="k2tog tbl")
    assert [one.name for one in used_for_changes(row, own)] == names


def test_the_most_general_word_of_the_page_is_the_way_it_increases() -> None:
    """A page that explains both means its make one where a row prints it."""
    assert [one.name for one in used_for_changes("Inc 8 sts evenly.", defined(M1="m1p", inc="kfb"))] == ["inc"]
    assert [one.name for one in used_for_changes("Inc 8 sts evenly.", defined(M="M1 purlwise"))] == ["M"]
    assert used_for_changes("Inc 8 sts evenly.", defined(M1="(k1, yo, k1) in next st")) == []
