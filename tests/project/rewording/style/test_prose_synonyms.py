"""Clauses of prose in other words. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("On the next row k12, k2tog, k to end.", "next row: k12, k2tog, k to end."),
        ("Shape neck: On next row, k11, k2tog.", "Shape neck: next row: k11, k2tog."),
        ("Row 7: Same as 3rd row.", "Row 7: rep row 3."),
        ("Work in k1, p1 rib for two inches.", "Work in k1, p1 rib for 2 inches."),
        ("K1, *yo, k2tog* k1.", "K1, *yo, k2tog; rep from *, k1."),
        ("Knit across first 12 sts, k2tog, k to end.", "Knit 12 sts, k2tog, k to end."),
    ],
)
def test_a_clause_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """What is meant is the same, however the sentence is built."""
    assert reword(made_plain(printed)).text == read


def test_a_repeat_ends_where_so_many_stitches_are_left() -> None:
    """That they are left and that they are the last of the row is one thing."""
    made = reword(made_plain("*K2, p2* repeat until 4 sts left, k2tog, p2."), spoken=True).text
    assert made == "*k2, p2; rep from * to last 4 sts, k2tog, p2."


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
    made = reword(made_plain(printed)).text
    assert "next row:" not in made
    assert "in pattern" not in made
    assert "rep from" not in made
    assert not made.startswith("Work even for 4 cm.")
    assert "60 sts." not in made


def test_what_is_left_to_her_is_said_with_the_line() -> None:
    """The printed length is worked; that she may stop earlier or later is hers to know."""
    made = reword("Work even for 9 cm or until the mitten reaches your fingertip.")
    assert made.text == "Work even for 9 cm."
    assert made.kept == ("or until the mitten reaches your fingertip",)


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Garter st, 6 rows.", "Work in Garter st for 6 rows."),
        ("Reverse St st for 4 rounds.", "Work in Reverse St st for 4 rounds."),
        ("1x1 rib for 3 cm.", "Work in 1x1 rib for 3 cm."),
        ("Rib for 8 rows.", "Work in rib for 8 rows."),
        ("Body: Stockinette stitch until piece measures 20 cm.", "Body: Work in Stockinette stitch until piece measures 20 cm."),
        ("Knit straight until piece measures 10 cm.", "Knit until piece measures 10 cm."),
        ("Knit another 3 rounds.", "Knit 3 more rounds."),
        ("Inc 8 sts evenly spaced on next rnd. 88 sts.", "Increase 8 sts evenly. 88 sts."),
        ("Break off MC, join CC.", "Break off MC. join CC."),
        ("K2 in MC, k2 in CC around.", "(K2 in MC, k2 in CC) to end."),
        ("Pm at end of rnd.", "Pm for beg of rnd."),
    ],
)
def test_what_a_knitter_adds_in_her_head_is_added(printed: str, words: str) -> None:
    """A line as short as this can mean one thing only."""
    assert " ".join(reword(made_plain(printed)).text.split()) == words


@pytest.mark.parametrize(
    "printed",
    [
        "Garter stitch: 20 sts to 10 cm.",
        "2 rounds A, 2 rounds B.",
        "Knit even.",
        "Rib until it pleases you.",
        "K20, pm at end of rnd, k5.",
        "Use Kitchener stitch to close the underarm and shoulder.",
    ],
)
def test_what_leaves_a_choice_stays_as_it_is(printed: str) -> None:
    """How long, in which stitch or where is not to be guessed."""
    assert reword(made_plain(printed)).text == made_plain(printed)
