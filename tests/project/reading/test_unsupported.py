"""Kinds of work that no line can say. Source: common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.unsupported import find_unsupported
from tests.tables import each_row


@each_row(
    ("line", "kind"),
    [
        ("Sl1yo, brk1, rep to end.", "brioche"),
        ("Bind off with an i-cord edge.", "an I-cord"),
        ("Pick up and knit an odd number of sts (approx 95-107) around neck.", "a number of stitches that is left to you"),
        ("Pick up & knit around armhole at a rate of 1 st in each BO st, ending with an even number.", "a number of stitches that is left to you"),
        ("As button band, but make holes to match.", "buttonholes at places that you mark"),
        ("Work both sleeves at the same time.", "two pieces at once"),
        ("Rep rows 1 and 2 until all gusset sts have been worked.", "stitches that the page does not count"),
        ("Crochet around the neck.", "crochet"),
        ("K11, place these sts aside, k to end.", "stitches to be held that this row has just worked"),
        ("K to marker, place 10 sts just worked on holder.", "stitches to be held that this row has just worked"),
        ("K10, join a second ball of yarn, k to end.", "two pieces at once"),
        ("Work back and forth on first 20 sts only.", "rows over a part of the stitches"),
        ("Cont to dec, working 1 st less between decs.", "shaping told by the stitches between"),
        ("Continue in this manner until 16 sts rem.", "rows that the line does not name"),
        ("Work to your desired length.", "a length that is left to you"),
        ("Repeat rows 3-8 until you're happy with the length.", "a length that is left to you"),
        ("Work in rib for 5 to 5 1/2 inches.", "one length of two"),
        ("Work straight for 5 cm, ending at side edge.", "a row that ends at an edge"),
        ("Repeat from * 3 times more.", "the star of another line"),
        ("Increase to 38 sts, by adding 4sts.", "more stitches without saying how they are made"),
        ("Work 3 rows in rev st st (k on RS, p on WS).", "a fabric, and in brackets for the rows of another"),
        ("Work 4 rows in garter st (k 1 row, p 1 row).", "a fabric, and in brackets for the rows of another"),
        ("Work left front to correspond.", "a part that is like another"),
        ("Work 4 rows in stockinette (k3 at armhole edge).", "stitches at an edge, by its name"),
        ("First and last 3 sts in garter from here on.", "an edge in all rows that follow"),
        ("Keep first and last st in garter st throughout.", "an edge in all rows that follow"),
        ("From here on, work the first 3 sts of every row in garter st.", "an edge in all rows that follow"),
        ("Work short rows with yarn-over turns.", "turns with a yarn over"),
        ("K to last 5 sts, turn, yarn over.", "turns with a yarn over"),
        ("K to end, knitting the yarn overs together with the next st.", "turns with a yarn over"),
        ("Unzip the provisional cast-on and place the sts on a needle.", "a provisional cast-on, whose stitches come back"),
        ("Graft to the provisional cast-on.", "a provisional cast-on, whose stitches come back"),
        ("Work neckband to correspond.", "a part that is like another"),
        ("Work even until foot measures 5 cm less than total foot length.", "a length of the wearer"),
    ],
)
def test_a_kind_that_is_not_read_is_named_with_what_to_write(line: str, kind: str) -> None:
    """A knitter who knows that it cannot be read stops looking for the right words."""
    found = find_unsupported(line)
    assert found is not None
    assert f"asks for {kind}, " in found.message
    assert found.hint


@pytest.mark.parametrize("line", ["K2, p2 to end.", "Work 3 rows in rev st st (p on RS, k on WS).", "Work 4 rows in garter st (knit every row).", "Work both sides alike.", "Cast on 40 sts.", "Cast on 40 sts provisionally.", "K15, turn.", "K1, yo, k to end.", "*K2, p2; rep from * 3 times more.", "Place these sts on a holder."])
def test_what_is_read_is_none_of_them(line: str) -> None:
    """Words that only look like one would send her away from a line that can be read."""
    assert find_unsupported(line) is None
