"""Lists of abbreviations as pages print them, and rows of stitches that look alike. All are invented."""

from __future__ import annotations

import pytest

from stepper.project.page.abbreviation_lists import lists_abbreviations
from stepper.project.page.front_matter import kind_of


@pytest.mark.parametrize(
    "text",
    [
        "Abbreviations.\u2014K., knit; p., purl; st., stitch; p.s.s.o., pass slipped stitch over; inc., increase; ins., inches.",
        "ABBREVIATIONS Alt, alternate; beg, beginning; cont, continue; g.st, garter stitch (every row k); st(s), stitch(es); tog, together.",
        "alt alternate; beg begin(ning); cont continue; K knit; K2tog knit 2 together; rep repeat; st(s) stitch(es)",
        "Abbreviations used: K = knit, P = purl, SM = slip marker, kfb = knit into front and back, rnd(s) = round(s)",
        "Abbrevs: k-knit, k2tog-k 2 sts tog, p-purl, rem-remaining, ssk-sl 2 sts kwise one by one, then k2tog through back loops",
        "Others: k, p, ssk, k2tog, st(s), rnd(s), rep, pm, sm, beg, dec.",
    ],
)
def test_a_list_in_any_print_is_one(text: str) -> None:
    """Nothing of it is knitted, and nobody is asked about it."""
    assert lists_abbreviations(text)
    assert kind_of(text, "abbreviations") == "abbreviations"


@pytest.mark.parametrize(
    "text",
    ["K2, p2, k2tog, yo", "K1; p1; k2tog; yo", "Row 1: k2; p2; k2; p2", "k, p, ssk, k2tog", "Knit, purl, slip, knit.", "g = grey, w = white, b = blue, m = mustard", "S: 40; M: 44; L: 48; XL: 52", "Others: k, p, ssk, yo.", ""],
)
def test_a_row_or_another_list_is_none(text: str) -> None:
    """Its entries are no short forms with their words."""
    assert not lists_abbreviations(text)
