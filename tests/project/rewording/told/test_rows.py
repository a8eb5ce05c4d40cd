"""A row told stitch by stitch, whatever joins and repeats its stitches. Source: common practice."""

from __future__ import annotations

from stepper.project.reading.wording import reads
from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.told.rows import write_rows
from tests.tables import each_row


def written(line: str) -> str:
    """Return a line with its rows in the grammar's words."""
    return write_rows(as_printed(line)).text


@each_row(
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
        ("Bind off first 5 sts of next rnd, k around to last 5 sts, bind off these 5 sts.", "Bind off 5 sts, k to last 5 sts, bind off 5 sts."),
        ("Next rnd: K15 (front), bind off 10 sts removing the side marker, k to end.", "Next rnd: K15, bind off 10 sts, rm, k to end."),
        ("Next rnd: K10, bind off 10, k until there are 20 sts after bound-off sts, k to end.", "Next rnd: K10, bind off 10 sts, k20, k to end."),
        ("Row 1: K2, yo, k rem sts.", "Row 1: K2, yo, k to end."),
        ("Row 1: K2tog, k until there are 18 (20) sts on right needle, turn.", "Row 1: K2tog, k17 (19), turn."),
        ("Row 1: K1, p1 to the last st, k1.", "Row 1: (k1, p1) to last st, k1."),
        ("Row 1: P2, *k2, p2; rep from * across, ending last rep p3.", "Row 1: P2, *k2, p2; rep from * to last 5 sts, k2, p3."),
        ("Row 1: K5, ssk 3 times, k5, k2tog 3 times, k5.", "Row 1: K5, (ssk) 3 times, k5, (k2tog) 3 times, k5."),
        ("Row 1: K3, *yo twice, k2tog twice, k2; rep from *.", "Row 1: K3, *yo twice, (k2tog) twice, k2; rep from *."),
        ("Row 1: K3 / p to last 3 / k3.", "Row 1: K3, p to last 3 sts, k3."),
        ("Rnd 7: with CC2 *k2, k2tog, k2, k2tog* - 186 sts", "Rnd 7: with CC2, *k2, k2tog, k2, k2tog; rep from * to end - 186 sts"),
        ("Round 3: With A, *k1, slip 1 purlwise with yarn in back; repeat from *.", "Round 3: With A, *k1, sl 1 pwise wyib; rep from *."),
        ("Rnds 9-10: knit MC", "Rnds 9-10: Knit in MC"),
        ("Row 3: knit to the stitch before the wrapped one, wrap it and turn.", "Row 3: K to 1 sts before the wrapped st, w&t."),
        ("Row 2: purl to the first wrapped stitch, purl it with its wrap, wrap the next one, turn.", "Row 2: P to the first wrapped stitch, p wrapped st with its wrap, w&t."),
        ("Knit 28, w&t, purl back to the marker and on for another 28, w&t.", "K28, w&t, p to the marker, p28, w&t."),
        ("Purl to 20 sts before the other end, turn.", "P to last 20 sts, turn."),
        ("Round 2: just knit.", "Round 2: Knit."),
        ("Round 2: purl everything", "Round 2: Purl"),
        ("2nd rnd: work without decreasing.", "2nd rnd: Work even."),
        ("Second decrease: (K2, k2tog). 141 sts.", "Second decrease: (k2, k2tog) to end. 141 sts."),
        ("1st rnd: k5, p1, these 6 sts being the back of the hand, k to end for the palm.", "1st rnd: K5, p1, k to end."),
        ("Next row: Knit 15 for the front, marker, knit 10 for the sleeve.", "Next row: K15, pm, k10."),
    ],
)
def test_a_repeat_or_an_end_is_written_as_the_grammar_has_it(printed: str, words: str) -> None:
    """Stars, brackets, commas and dashes, with every word for "to the end"."""
    assert written(printed) == words


@each_row(
    "printed",
    [
        "*k2, p2* repeat 8 times.",
        "(see photo) all around.",
        "Work [k1, p1] to the end of the heel.",
        "K3, yo, to end.",
        "K2tog, ssk 3 times.",
        "Knit everything.",
        "Row 2: plain.",
        "Row 3: K10, k2tog, marker, ssk, k to 5 sts before marker, k5.",
        "Row 1: K to last 3 sts, wrap it and turn the heel.",
        "Row 1: P10, wrap the yarn around the needle and turn.",
        "Round 2: knit all but the last st.",
        "Rnd 1: knit B and C.",
        "Rnd 1: With RS facing, *k1, p1*",
        "Rnd 1: (K2, k2tog), k3.",
        "Row 1: K1, yo, k2tog twice, k1.",
        "Rnd 1: *Yo, k2tog 3 times, k1; rep from * to end.",
        "Sl 1, k7 to end.",
        "(k1, p1), k to end.",
        "*Knit to 2 sts before marker, k2tog* twice, knit to the thumb.",
        "K3, p1 to last 3 sts, k3.",
        "*K2, yo, k1; rep from *, ending last rep p2.",
        "Knit until 4 sts remain.",
        "*Inc rnd: K1, m1.",
        "K12, patt until there are 20 sts on right needle and the cable is crossed.",
        "Bind off 4 sts, k until there are 20 sts on right needle, k to end.",
        "(K1, yo) to end, ending with a bobble.",
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


@each_row(
    "line",
    [
        "(K2, p2) repeat to last 2 sts, k2.",
        "*K 1, p 1 *, repeat between *s across row.",
        "*K 1, p 1, repeat from * to * across row.",
        "*K1, p1, repeat from * across row, end k 1.",
        "*K2, p2* repeat until 4 sts left, k2tog, p2.",
        "*K4, p1*; rep * to * to last 4 sts, k4.",
        "*K4, p1; rep from * until last 3 sts, k3.",
        "*K6, k2tog*, repeat *-* around.",
        "*K6, k2tog, repeat to marker, k to end.",
        "*Knit 4, knit 2 together*, repeat *-* all the way round.",
        "2nd row: K1, (p1, k1) across to last 4 sts, k4.",
        "K1, slip 1 stitch as if to knit, knit 1, pass the slipped stitch over, k to end.",
        "K10, [yo, k2tog] × 3, k to end.",
        "K2, *p1, k1; repeat from * across to last 6 sts, k 6.",
        "Knit 2 together all the way across.",
        "Next rnd: *K1, k2tog*, repeat all the way round.",
        "Next rnd: K2tog all the way round.",
        "Next row: K2tog all along the row.",
        "Rnd 1: *K2, k2tog*, repeat *to* = 30 sts.",
        "Rnd 2: *K5, p2; rep around.",
        "Round 1: K6, K2tog, repeat around.",
        "Row 11: K3, *yo, sk2p, yo, k1*, repeat between stars to last 3 sts, k3",
        "Row 2: K4, *k2, p2,* repeat to last 4 sts, k4.",
        "Row 6: Sl first st purlwise wyif, k to end.",
    ],
)
def test_a_row_of_stitches_is_read_in_any_dress(line: str) -> None:
    """Lines from the pages that used to need a row of a table each."""
    assert reads(line)
