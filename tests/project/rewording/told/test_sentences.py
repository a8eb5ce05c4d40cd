"""Sentences about shaping and repeats in the grammar's words. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.told.sentences import write_told
from tests.tables import each_row


def written(printed: str) -> str:
    """Return a line with what it tells in the grammar's words."""
    return write_told(as_printed(printed)).text


@each_row(
    "printed",
    [
        "Do not increase again until there are 60 sts.",
        "Decrease on every 4th round as shown in the chart.",
        "You increase 8 sts on every other round.",
        "Increase 1 st on each side of every other marker on every 4th round 3 times.",
        "Knit 2 rounds without increasing.",
        "Repeat until you have 60 sts or the piece measures 20 cm.",
        "Skip the increase round every 4th round.",
        "Decrease every 2nd round 5 times before dividing.",
        "Repeat rounds 1 and 2 until there are 60 sts, omitting the last decrease.",
        "Increase 8 sts evenly over the front and back.",
        "On the last round, do not increase.",
        "Repeat these increases every 6th round 3 more times and at the same time work 4 rounds in B.",
    ],
)
def test_what_only_looks_like_shaping_stays_as_printed(printed: str) -> None:
    """One word more makes another order of it."""
    assert written(printed) == printed


def test_each_letter_keeps_its_printed_place() -> None:
    """A problem in the second sentence is shown where that is printed."""
    printed = "Knit 2 rounds. On every 6th round, repeat the increase round 4 times in all."
    made = write_told(as_printed(printed))
    assert made.text == "Knit 2 rounds. Rep increase round on every 6th round 4 times in all."
    assert len(made.places) == len(made.text) + 1
    assert made.places[made.text.index("6th")] == printed.index("6th")
    assert made.places[made.text.index("4 times")] == printed.index("4 times")


def test_a_sentence_may_go_on_with_the_one_before_it() -> None:
    """The last round is one of those it has just told of."""
    assert written("Work in k1, p1 rib for 5 cm. On the last round, increase 4 sts evenly.") == "Work in k1, p1 rib for 5 cm, increase 4 sts evenly on last round."


@pytest.mark.parametrize(
    "printed", ["K1, p1 around. On the last round, increase 4 sts evenly.", "On the last round, increase 4 sts evenly."]
)
def test_the_last_round_of_nothing_is_not_read(printed: str) -> None:
    """It is worked already where the sentence begins."""
    assert written(printed) == printed
