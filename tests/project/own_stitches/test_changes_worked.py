"""Even changes worked in the stitch in which the page makes its changes."""

from __future__ import annotations

import pytest

from stepper.project.own_stitches.changes_worked import used_for_changes
from tests.project.corpus_judge import text_of, worked
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


@pytest.mark.parametrize(
    ("words", "first"),
    [
        ("Inc 10 sts evenly, using M1L. 50 sts.", "m1l"),
        ("Inc 10 sts evenly by kfb. 50 sts.", "kfb"),
        ("Knit, increasing evenly to 50 sts with make one right.", "m1r"),
        ("Inc 10 sts evenly. 50 sts.", "pfb"),
        ("Dec 10 sts evenly by ssk. 30 sts.", "ssk"),
        ("Dec 10 sts evenly. 30 sts.", "k2tog"),
    ],
)
def test_a_stitch_that_the_line_names_is_worked(words: str, first: str) -> None:
    """It wins over the page's own, which wins over the usual one."""
    lines = ["CO 40 sts. Join in the round.", "inc = purl into front and back of next st", "Knit 2 rounds.", f"Next rnd: {words}"]
    (plan,), problems = worked(text_of(lines, 1, "cm")[0], 1)
    assert problems == ()
    assert next(run.stitch for run in plan.rounds[-1].runs if run.stitch != "k") == first
