"""A row told stitch by stitch, whatever joins and repeats its stitches. Source: common practice."""

from __future__ import annotations

import pytest

from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.told.rows import write_rows


def written(line: str) -> str:
    """Return a line with its rows in the grammar's words."""
    return write_rows(as_printed(line)).text


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("*k2, p2* - repeat between the stars all the way around.", "*k2, p2; rep from * to end."),
        ("[k2, p2] all the way round.", "(k2, p2) to end."),
        ("Repeat *k1, p1* to the end of the round.", "*k1, p1; rep from * to end."),
        ("Row 1: *K1, p1*, rep from * to *.", "Row 1: *k1, p1; rep from *."),
        ("(k1, p1) around, 8 rounds.", "(k1, p1) to end. Work for 8 rounds."),
        ("*knit 3, purl 3* - 10 times.", "(k3, p3) 10 times."),
        ("Increase round: *Knit 3, M1* = 96 sts.", "Increase round: *k3, M1; rep from * to end = 96 sts."),
        ("*K2tog -6 sts.", "*k2tog; rep from * to end -6 sts."),
        ("Knit 1, purl 1, repeat these two stitches around.", "*k1, p1; rep from * to end."),
        ("Row 1: K3, *yo, k1*, k2; rep from * to * once, k3.", "Row 1: K3, yo, k1, k2, yo, k1, k3."),
        ("Row 1: K3, *yo, k2tog*, k2; rep from * to * 3 times.", "Row 1: K3, yo, k2tog, k2, (yo, k2tog) 3 times."),
        ("Row 1: *K3, p3; rep from * to last 3 sts, ending k3.", "Row 1: *k3, p3; rep from * to last 3 sts, k3."),
        ("Row 1: (K1, p1) to end, ending with k1.", "Row 1: (k1, p1) to last 1 sts, k1."),
        ("Row 1: K1, [(k1, p1) twice, k2] 3 times.", "Row 1: K1, ((k1, p1) twice, k2) 3 times."),
        ("Knit 1 rnd, then k2tog around.", "Knit 1 rnd. *k2tog; rep from * to end."),
        ("Row 1: K2tog, k until there are 18 (20) sts on right needle, turn.", "Row 1: K2tog, k17 (19), turn."),
        ("Row 1: K3 / p to last 3 / k3.", "Row 1: K3, p to last 3 sts, k3."),
    ],
)
def test_a_repeat_or_an_end_is_written_as_the_grammar_has_it(printed: str, words: str) -> None:
    """Stars, brackets, commas and dashes, with every word for "to the end"."""
    assert written(printed) == words


@pytest.mark.parametrize(
    "printed",
    [
        "*k2, p2* repeat 8 times.",
        "(see photo) all around.",
        "Work [k1, p1] to the end of the heel.",
        "K3, yo, to end.",
        "Sl 1, k7 to end.",
        "(k1, p1), k to end.",
        "*Knit to 2 sts before marker, k2tog* twice, knit to the thumb.",
        "Knit until 4 sts remain.",
        "*Inc rnd: K1, m1.",
        "K12, patt until there are 20 sts on right needle and the cable is crossed.",
        "Bind off 4 sts, k until there are 20 sts on right needle, k to end.",
        "(K1, yo) to end, ending with sl 1, k2tog, psso, m1.",
    ],
)
def test_what_leaves_a_word_or_has_two_meanings_stays(printed: str) -> None:
    """Repeated 8 times after once is nine times, or it is not; one word of no phrase may change all the others."""
    assert written(printed) == printed


def test_each_letter_keeps_a_printed_place() -> None:
    """A problem is shown where it is printed."""
    line = write_rows(as_printed("Row 1: *Slip 1 purlwise with yarn in back, knit 1*, all around."))
    assert len(line.places) == len(line.text) + 1
    assert list(line.places) == sorted(line.places)
