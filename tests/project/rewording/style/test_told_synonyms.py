"""Rows and pieces told in everyday words. Source: patterns that knitters write for one another; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Knit 3, purl 3 for 20 rows.", "work in k3, p3 rib for 20 rows."),
        ("Round 4: K9, k2tog, repeat around.", "Round 4: *K9, k2tog; rep from * to end."),
        ("Round 4: K2tog, k9 around.", "Round 4: *K2tog, k9; rep from * to end."),
        ("Row 6: knit all the way", "Row 6: knit to end"),
        ("Row 2: k2tog across (14)", "Row 2: k2tog across (14 sts)"),
        ("Knit another to match.", "make again 1."),
        ("Bind off in k1, p1.", "Bind off in rib."),
        ("Join into a ring.", "join in the round."),
    ],
)
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """What is meant is the same, whichever way the page says it."""
    assert reword(made_plain(printed)).text == read


@pytest.mark.parametrize(
    "printed",
    [
        "Knit 2, purl 1 for 20 rows.",
        "Row 5: k10 (12)",
        "Knit 5 sts with waste yarn.",
    ],
)
def test_what_may_mean_something_else_stays_as_it_is(printed: str) -> None:
    """Two and one in rows of any number is no rib to be sure of, and a number behind a number is of another size."""
    made = reword(made_plain(printed))
    assert "rib" not in made.text
    assert "rep from * to end" not in made.text
    assert "sts)" not in made.text
    assert made.kept == ()


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("K9, slip the next 8 sts on a thread for sleeve, cast on 3 new sts, k to end.", "K9, hold 8 sts for sleeve, cast on 3 sts, k to end."),
        ("Knit 14 sts (= front), hold 8 sts, k to end.", "Knit 14 sts, hold 8 sts, k to end."),
        ("Now the next round is worked thus: K4, k2tog, k to end.", "Next round: K4, k2tog, k to end."),
        ("Sleeve: = 31 sts.", "31 sts."),
        ("Change to circular needle 3.5 mm.", "Change to 3.5 mm circular needle."),
        ("Knit 1 row from the wrong side.", "with wrong side facing, Knit 1 row."),
        ("There are 9 sts on the front and on the back.", "9 sts each for front and back."),
        ("Knit without increasing until piece measures 7 cm.", "Knit until piece measures 7 cm."),
        ("Inc 1 st in each side on every 4th row a total of 3 times.", "Inc 1 st at each side on every 4th row 3 times in all."),
        ("Cast off in each side: 4 sts once, 2 sts 2 times.", "Cast off in each side: 4 sts once, 2 sts 2 times."),
        ("Cast off at both sides: 4 sts 1 time and 2 sts 2 times.", "Cast off 4 sts at each side 1 times. Cast off 2 sts at each side 2 times."),
    ],
)  # fmt: skip
def test_words_of_other_tongues_mean_the_same_rows(printed: str, words: str) -> None:
    """A thread is a marker or a holder, a side an end of the row."""
    assert " ".join(reword(made_plain(printed)).text.split()) == words


@pytest.mark.parametrize("printed", ["Knit 14 sts (= k2tog 3 times), k to end.", "K9 (= 2 rows), k to end."])
def test_an_instruction_behind_an_equals_sign_is_not_passed_over(printed: str) -> None:
    """What is only said may hold no work."""
    assert not reads(made_plain(printed))


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("P2tog-b, p to end", "P2tog tbl, p to end"),
        ("K to marker, k to end, leaving a total of 52 sts.", "K to marker, k to end. 52 sts."),
        ("Rep last 2 rows of (k3, p3) ribbing 4 times.", "Rep last 2 rows 4 times."),
        ("Knit until work from beg measures 30 cm.", "Knit until piece measures 30 cm from beg."),
    ],
)  # fmt: skip
def test_a_line_is_put_into_the_words_that_are_read_on_pages_typed_at_home(printed: str, read: str) -> None:
    """What is meant is the same, whichever way the page writes it."""
    assert reword(made_plain(printed)).text == read


def test_stitches_left_unworked_are_no_total() -> None:
    """Behind a turn "leaving 12 sts" says what is not worked, and that is no count of the row."""
    assert "." not in reword(made_plain("K12, turn, leaving 12 sts")).text


def test_how_far_it_should_reach_is_said_beside_the_rounds() -> None:
    """The number printed in brackets is worked; where it ought to come to is for the knitter to see."""
    made = reword(made_plain("Knit plain until sock reaches the ankle (22 rounds)."))
    assert made.text == "Knit 22 rounds."
    assert made.kept == ("until sock reaches the ankle",)
