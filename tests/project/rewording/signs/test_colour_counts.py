"""Colour rounds told by counts of colours. Source: common practice of stranded colour knitting."""

from __future__ import annotations

from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.signs.colour_counts import write_colour_counts

ROUNDS = {
    "Rnd 1: *5 MC, 1 CC1; rep from * around.": "Rnd 1: *k5 in MC, k1 in CC1; rep from * to end.",
    "Rnd 2: 1 MC, *1 CC, 3 MC; rep from * to last 3 sts, 1 CC, 2 MC.": "Rnd 2: k1 in MC, *k1 in CC, k3 in MC; rep from * to last 3 sts, k1 in CC, k2 in MC.",
    "Rnd 3: *2 sts in A, 2 sts in B; rep from *.": "Rnd 3: *k2 in A, k2 in B; rep from * to end.",
    "Row 3 (RS): 2 A, *5 B, 1 A; rep from *.": "Row 3 (RS): k2 in A, *k5 in B, k1 in A; rep from * to end.",
    "*3 (4, 5) MC, 1 CC; rep from *.": "*k3 (4, 5) in MC, k1 in CC; rep from * to end.",
    "Rnd 4: *2 CC1, 3 MC.": "Rnd 4: *k2 in CC1, k3 in MC; rep from * to end.",
    "Rnds 5 and 6: MC.": "Rnds 5 and 6: with MC, knit.",
    "Round 3: all white.": "Round 3: with white, knit.",
    "Rnd 4: Knit all sts in CC.": "Rnd 4: with CC, knit.",
    "Rnd 1: *K1 LC, k3 DC.*": "Rnd 1: *k1 in LC, k3 in DC; rep from * to end",
    "Rnd 7: K1A, *k3B, k1A; rep from * to last 3 sts, k3B.": "Rnd 7: k1 in A, *k3 in B, k1 in A; rep from * to last 3 sts, k3 in B.",
    "Rnd 8: 2B, 1W, *3B, 1W, rep from *, end 2B": "Rnd 8: k2 in B, k1 in W, *k3 in B, k1 in W; rep from * to last 2 sts, k2 in B",
    "(3 A, 1 B) around.": "*k3 in A, k1 in B; rep from * to end.",
    "Rnd 9: * 2 white, 2 dark brown *": "Rnd 9: *k2 in white, k2 in dark brown; rep from * to end",
    "Rnd 10: *2 A, 1 B* 4 times, 12 A": "Rnd 10: (k2 in A, k1 in B) 4 times, k12 in A",
    "Rnd 11: *(1 MC, 1 CC) twice, 4 MC; rep from *.": "Rnd 11: *(k1 in MC, k1 in CC) twice, k4 in MC; rep from * to end.",
    "Rnd 12: With MC knit 1, with CC knit 2, repeat to end.": "Rnd 12: *k1 in MC, k2 in CC; rep from * to end.",
    "Alternate 1 stitch MC, 1 stitch CC to the end of the round.": "*k1 in MC, k1 in CC; rep from * to end.",
    "2nd row: P *1 M, 3 C; rep from * to last st, 1 M.": "2nd row: *p1 in M, p3 in C; rep from * to last 1 sts, p1 in M.",
    "Round 12: two white, two brown, repeat to end.": "Round 12: *k2 in white, k2 in brown; rep from * to end.",
    "2nd and 4th rounds: *3 A, 1 B*.": "2nd and 4th rounds: *k3 in A, k1 in B; rep from * to end.",
    "Rnd 14: *6 MC*": "Rnd 14: *k6 in MC; rep from * to end",
    "Rnd 1: 1 white, 3 grey, twice.": "Rnd 1: (k1 in white, k3 in grey) twice.",
    "Round 1: 1 white, 3 grey.": "Round 1: *k1 in white, k3 in grey; rep from * to end.",
    "Rnd 4: A4, B5, A3": "Rnd 4: *k4 in A, k5 in B, k3 in A; rep from * to end",
    "Rnd 5: A12": "Rnd 5: with A, knit",
    "Rnd 13: *1 CC, 5 MC* = 96 sts.": "Rnd 13: *k1 in CC, k5 in MC; rep from * to end = 96 sts.",
}  # fmt: skip
"""Rounds as printed and as they are written."""

STAY = """\
Rnd 3: C6, C4
Row 2 (WS): *5 MC, 1 CC1; rep from * to end.
Row 2: *5 MC, 1 CC1; rep from * to end.
Row 2: 1 A, 3 B.
Row 1: MC.
Yarn: 3 MC, 2 CC1.
Rnd 1: *p1 MC, 5 CC; rep from *.
Rnd 1: With 2 MC, knit.
Rnd 1: 1 MC, 3 CC twice.
Rnd 1: 2 K, 3 P.
Rnd 1: 2 white balls, 3 grey.
Rnd 1: *k1 MC, k2, k1 CC*
Rnd 1: *2 white, 2 brown*, 1 stitch.
Round 4: white or grey.
Rnd 5: all but the last white.
Join 1 CC, 2 MC.
3 white, 2 grey.
(3 A, 1 B).
Row 1: *With Grey K. 1, P. 3, Dark Grey K. 3, repeat from * across row.
""".splitlines()
"""Rows that may be purled, balls of yarn, a choice of yarns, a stitch of either yarn, a bracket of no round."""


def test_stitches_told_by_their_yarn_are_knitted_in_it() -> None:
    """A round of a colour chart in words names the colours, in one of many ways."""
    written = {printed: write_colour_counts(as_printed(printed)).text for printed in ROUNDS}
    assert written == ROUNDS


def test_what_may_be_purled_or_is_no_round_stays() -> None:
    """In rows of the wrong side the stitches are purled, and balls of yarn are counted too."""
    assert [write_colour_counts(as_printed(printed)).text for printed in STAY] == STAY


def test_that_a_list_of_colours_is_repeated_is_said_and_stars_say_it_themselves() -> None:
    """The page does not say "repeat" beside such a list: that it is one is worth a word."""
    assert write_colour_counts(as_printed("Round 1: 1 white, 3 grey.")).kept == (
        "these 4 stitches are the repeat, worked to the end of the round",
    )
    assert write_colour_counts(as_printed("Round 1: *1 white, 3 grey*")).kept == ()


def test_each_stitch_keeps_its_printed_place() -> None:
    """A yarn that the file lacks is shown where it is printed."""
    made = write_colour_counts(as_printed("Rnd 9: * 2 white, 2 brown *"))
    assert made.place(made.text.index("brown"), 5)[0] == 18
