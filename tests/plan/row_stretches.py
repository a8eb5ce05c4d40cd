"""Stretches of single rows told stitch by stitch, each with its meaning as a knitter works it out.

The meanings were written by hand. The form is that of `stretches`. Source: common practice.
"""

from __future__ import annotations

from typing import Final

from tests.plan.stretches import B, F, R, Stretch, _

# fmt: off
ROWS: Final[tuple[Stretch, ...]] = (
    # --- which rows are worked ---
    _(B, "Rows 1, 3 and 5 (RS): K1, yo, k2tog, k to end.\nWS rows: Purl.\nWork rows 1-5.", ""),
    _(B, "Rows 1, 3 and 5 (RS): K1, yo, k2tog, k to end.\nWS rows: Purl.\nWork rows 1-6.", "40*6"),
    _(B, "Rows 1, 3 and 5 (RS): K1, yo, k2tog, k to end.\nWS rows: Purl.\nRep rows 1-4.", "40*10"),
    _(B, "Row 1: K1, yo, k2tog, k to end.\nRow 2: Purl.\nRow 3: Knit.\nRow 4: Purl.\nWork rows 1 and 2 once more.", "40*6"),
    _(B, "Knit 2 rows.\nRow 1: *K1, p1; rep from * to end.\nRow 2: *P1, k1; rep from * to end.\nDo these two rows until 8 rows are done.", "40*10", told="2 before do not"),
    # --- a pattern that nothing has set up ---
    _(B, "Knit 2 rows.\nRow 1: K15, patt 10, k15.", ""),
    _(B, "Next row: K15, work 10 sts in pattern, k15.", ""),
    _(B, "Next row: Work in pattern to last 2 sts, k2.", ""),
    _(F, "Next row: Patt 10, turn. Next row: Patt 10.", "40*2"),
    _(B, "Rows 1-4: *K1, p1; rep from * to end.\nNext row: K15, patt 10, k15.", "40*5", {5: "k15 " + "p1 k1 " * 5 + "k15"}),
    _(R, "Next rnd: K2, patt 10, k28.", "40"),
)
# fmt: on
