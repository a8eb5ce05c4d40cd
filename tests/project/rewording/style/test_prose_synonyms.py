"""Clauses of prose in other words. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import recast


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("On the next row k12, k2tog, k to end.", "next row: k12, k2tog, k to end."),
        ("Shape neck: On next row, k11, k2tog.", "Shape neck: next row: k11, k2tog."),
        ("Row 7: Same as 3rd row.", "Row 7: rep row 3."),
        ("Work in k1, p1 rib for two inches.", "Work in k1, p1 rib for 2 inches."),
        ("*K2, p2* repeat until 4 sts left, k2tog, p2.", "*K2, p2; rep from * to last 4 sts, k2tog, p2."),
        ("K1, *yo, k2tog* k1.", "K1, *yo, k2tog; rep from *, k1."),
        ("Knit across first 12 sts, k2tog, k to end.", "Knit 12 sts, k2tog, k to end."),
    ],
)
def test_a_clause_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """What is meant is the same, however the sentence is built."""
    assert recast(made_plain(printed)).text == read


@pytest.mark.parametrize(
    "printed",
    [
        "On next and every alt row dec 1 st at each end.",
        "Work across first 12 sts, place on holder.",
        "*K2, p2* k4 *p2, k2* k4.",
        "Work even for 4 cm or until 12 sts rem.",
        "Knit 2 rows. 60 sts: 15 sts each on needle 1, dec 1 st at each end.",
    ],
)
def test_what_may_mean_something_else_stays_as_it_is(printed: str) -> None:
    """Rows at intervals are no single row, stitches held are not only worked, two stars close two repeats or one."""
    made = recast(made_plain(printed)).text
    assert "next row:" not in made
    assert "in pattern" not in made
    assert "rep from" not in made
    assert not made.startswith("Work even for 4 cm.")
    assert "60 sts." not in made


def test_what_is_left_to_her_is_said_with_the_line() -> None:
    """The printed length is worked; that she may stop earlier or later is hers to know."""
    made = recast("Work even for 9 cm or until the mitten reaches your fingertip.")
    assert made.text == "Work even for 9 cm."
    assert made.kept == ("or until the mitten reaches your fingertip",)
