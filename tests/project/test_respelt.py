"""Rows that are read in other words than they are printed in."""

from __future__ import annotations

from stepper.project.problems import Span
from stepper.project.respelt import Respelt
from stepper.project.rewording.reworded import Reworded
from stepper.project.stripes.striping import StripesCalled

PRINTED = "Knit 2 rnds in stripes, SE."
PLACE = Span(line=4, column=5)
STRIPES = StripesCalled("stripes", ((1, "MC"),), PLACE)


def twice_respelt() -> tuple[Respelt, str]:
    """Take the stripes out of a row, then put the stitches of an abbreviation in."""
    made = Respelt()
    without = "Knit 2 rnds, SE."
    first = Reworded(without, (*range(11), *range(22, 28)))
    made.put((PRINTED, PLACE), first, stripes=STRIPES, at=11)
    text = "Knit 2 rnds, sl 1."
    at = without.index("SE")
    made.put((without, PLACE), Reworded(text, (*range(at), *([at] * 4), *range(at + 2, len(without) + 1))))
    return made, text


def test_a_place_is_that_of_the_printed_letters() -> None:
    """However often the row was put into other words."""
    made, text = twice_respelt()
    found = made.place(Span(line=4, column=5 + text.index("sl"), length=4))
    assert (found.column, found.line) == (5 + PRINTED.index("SE"), 4)
    other = Span(line=5, column=9)
    assert made.place(other) == other


def test_the_printed_words_come_back_for_the_row_and_for_its_parts() -> None:
    """A row that is cut in two gives each half its own."""
    made, text = twice_respelt()
    assert made.words([(text, PLACE)]) == PRINTED
    half = text.index("sl")
    second = (text[half:], Span(line=4, column=5 + half))
    assert made.words([second]) == "SE."
    assert made.words([("Knit.", Span(line=9, column=5))]) is None


def test_the_stripes_belong_to_the_part_where_their_words_stood() -> None:
    """The half behind them was not called."""
    made, text = twice_respelt()
    half = text.index("sl")
    assert made.stripes([(text[:half], PLACE)]) == STRIPES
    assert made.stripes([(text[half:], Span(line=4, column=5 + half))]) is None
