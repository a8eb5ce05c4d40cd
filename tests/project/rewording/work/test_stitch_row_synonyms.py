"""Rows told stitch by stitch in other words. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.reword import reword
from tests.tables import each_row


@each_row(
    ("printed", "words"),
    [
        ("3rd row : k.1, * wl. fwd., k.2 tog. ; rep. from * to end.", "row 3 : k 1, * yo, k2tog; rep from * to end."),
        ("4th row : * wl. rd. n., p.2 tog. ; rep. from * to end.", "row 4 : * yo, p2tog; rep from * to end."),
        ("Rnd 5: *K2tog 3 times, p1; rep from * around.", "Rnd 5: *(K2tog) 3 times, p1; rep from * around."),
        ("1st row: M.st 3, cast off 1 st, m.st to end.", "row 1: moss 3, cast off 1 st, work in moss st to end."),
        ("Row 5: Seed 3, yo, k2tog, seed to end.", "Row 5: work 3 sts in Seed st, yo, k2tog, work in seed st to end."),
        ("Row 5: G st 5, k to last 5 sts, g st 5.", "Row 5: work 5 sts in garter st, k to last 5 sts, work 5 sts in garter st."),
        ("Patt 1 row.", "work 1 row in patt."),
        ("Row 5: Rib 3, yo, rib 2 tog, rib 2.", "Row 5: Rib 3, yo, k2tog, rib 2."),
        ("Row 5: P4, inc purlwise in next st, p4.", "Row 5: P4, pfb, p4."),
        ("Row 5: K1, inc in each st to last st, k1.", "Row 5: K1, *kfb; rep from * to last st, k1."),
        ("Row 2: K over p, p over k as the sts appear.", "Row 2: work in opposite to end."),
        ("2nd and all foll rows: P the knits and k the purls.", "Row 2: work in opposite to end."),
        ("Rnd/Row 1: *K1, p1; rep from * to end.", "Row 1: *K1, p1; rep from * to end."),
        ("Rib pattern: K2, p2 in turn.", "Rib pattern: *K2, p2; rep from * to end."),
        ("Always repeat rows 1-8.", "repeat rows 1-8 0 times more."),
    ],
)
def test_a_row_is_put_into_the_words_that_are_read(printed: str, words: str) -> None:
    """A row known with one dress of its stitches is known with each."""
    assert reword(made_plain(printed)).text == words


@pytest.mark.parametrize(
    "printed",
    [
        "Rnd 1: *Yo, k2tog 3 times, k1; rep from * to end.",  # one hole, or three
        "Row 2: Knit the purls.",  # and the knits?
        "2nd and all foll rows: Knit.",  # how many there are is not said
        "Row 2: Work the sts as they appear (k the purl sts, p the knit sts).",  # one or the other
    ],
)
def test_what_may_mean_two_things_is_not_read(printed: str) -> None:
    """A guess would be a row of other stitches."""
    assert not reads(printed)


def test_knits_on_knits_is_no_opposite() -> None:
    """Rib and moss stitch differ by these words alone."""
    assert reword("Row 2: K the knit sts and p the purl sts.").text == "Row 2: work in pattern to end."
    assert reword("Row 2: K the purl sts and p the knit sts.").text == "Row 2: work in opposite to end."
