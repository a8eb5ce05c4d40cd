"""How a page names a row, its change, its repeats and its edge is put as the grammar has it. Invented examples."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from stepper.project.rewording.reworded import Reworded, as_printed
from stepper.project.rewording.voice import row_phrases as rows

Turn = Callable[[Reworded, int, int], Reworded]


def turned(turn: Turn, sentence: str) -> str:
    """Return the words of a sentence that is a line of its own, as a function writes them."""
    return turn(as_printed(sentence), 0, len(sentence)).text


@pytest.mark.parametrize(
    ("turn", "printed", "written"),
    [
        (rows.with_whole_edge, "Bind off the hem loosely.", "Bind off all sts loosely."),
        (rows.with_total, "Work this round 12 times in all.", "Repeat last round 11 times more."),
        (
            rows.with_total,
            "This row is worked a total of 8 (9, 10) times.",
            "Repeat last round 7 (8, 9) times more.",
        ),
        (
            rows.with_repeat,
            "Keep doing rows 3 and 4 until 40 sts remain.",
            "Repeat rows 3 and 4 until 40 sts remain.",
        ),
        (
            rows.with_change,
            "Knit 1 round where 6 sts are increased evenly.",
            "Knit 1 round, increasing 6 sts evenly.",
        ),
        (
            rows.with_change,
            "Purl 1 row, in which 8 (9) sts are decreased.",
            "Purl 1 row, decreasing 8 (9) sts evenly.",
        ),
        (rows.with_row_named, "Next round, decrease: K1, k2tog.", "Next round (decrease): K1, k2tog."),
        (rows.with_row_named, "Decrease on next round: K1, k2tog.", "next round (Decrease): K1, k2tog."),
        (rows.with_comma, "On needle 3 mm, from RS: K all sts.", "On needle 3 mm, from RS, K all sts."),
        (rows.with_fabric_behind, "In rib, bind off all sts.", "Bind off all sts in rib."),
    ],
)
def test_a_phrase_is_put_as_the_grammar_has_it(turn: Turn, printed: str, written: str) -> None:
    """Each is one idea in a page's words, and the number of rows and stitches is the same."""
    assert turned(turn, printed) == written


@pytest.mark.parametrize(
    ("turn", "printed"),
    [
        (rows.with_whole_edge, "Bind off the hem of the left front."),
        (rows.with_total, "Work this round 12 times."),
        (rows.with_total, "Work this round 1 times in all."),
        (rows.with_repeat, "Keep doing rows 3 and 4."),
        (rows.with_change, "Knit 1 round where 6 sts are slipped."),
        (rows.with_row_named, "Decrease on round 3: K1."),
        (rows.with_comma, "Next row: K1."),
        (rows.with_fabric_behind, "In rib, knit 4 rounds."),
        (rows.with_fabric_behind, "In rib, bind off 4 sts."),
    ],
)
def test_what_may_mean_something_else_stays(turn: Turn, printed: str) -> None:
    """Some of the stitches are not all, and "12 times" has two readings: nothing is guessed."""
    assert turned(turn, printed) == printed


def test_only_the_sentence_given_is_written_anew() -> None:
    """What stands before it on the line is another's, and the space between stays."""
    printed = "Work this round 3 times in all. Work this round 5 times in all."
    start = printed.index(" Work")
    written = rows.with_total(as_printed(printed), start, len(printed)).text
    assert written == "Work this round 3 times in all. Repeat last round 4 times more."


def test_a_sentence_begins_with_the_space_it_had() -> None:
    """Two sentences run together would be read as one."""
    line = as_printed("Knit. Purl.")
    assert (rows.lead_space(line, 0), rows.lead_space(line, 5), rows.lead_space(line, 11)) == ("", " ", "")
