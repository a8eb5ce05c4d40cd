"""Stretches of single rows told stitch by stitch, each with its meaning as a knitter works it out.

The meanings were written by hand. The form is that of `stretches`. Source: common practice.
"""

from __future__ import annotations

from typing import Final

from tests.plan.stretches import B, F, R, Stretch, _

# fmt: off
ROWS: Final[tuple[Stretch, ...]] = (
    # --- stitches made right at two markers: inside them, outside, or one after the other ---
    _(R, "Next rnd: K20, pm, k3, pm, k to end.\nNext rnd: K to first marker, m1, k to second marker, m1, k to end.", ""),
    _(R, "Next rnd: K20, pm, k3, pm, k to end.\nNext rnd: Knit to marker, inc, knit to marker, inc, knit to end.", ""),
    _(R, "Next rnd: K20, pm, k3, pm, k to end.\nNext rnd: K to first marker, sm, m1, k to second marker, m1, sm, k to end.", "40 42", {-1: "k20 m1 k3 m1 k17"}),
    # --- slipped stitches, yarn overs, one stitch in many words ---
    _(B, "Row 1 (RS): *sl 1 purlwise with yarn in back, k1* across.\nRow 2 (WS): sl 1 purlwise with yarn in front, purl across.", "40*2"),
    _(B, "2nd row: Inc, K38, inc.", "42", {1: "inc k38 inc"}),
    _(B, "Row 1: Slip one, knit one, pass the slipped stitch over the knitted one, knit to end.", "39", {1: "skp k38"}),
    _(R, "Round 1: K19, slip 2 sts together as if to knit, k1, pass the 2 slipped sts over; k to the end.", "38", {1: "k19 s2kp k18"}),
    _(B, "1st row: K. 1, * w.f., k. 2 tog.; rep. from * to last st., k. 1.", "40", {1: "k1 " + "yo k2tog " * 19 + "k1"}),
    _(B, "Row 5: p2, place 3 sts on a cable needle behind the work, k3, k3 from the cable needle, p to end.", "40"),
    _(B, "Row 5: P2, C4F (slip next 2 sts to cn and hold in front, k2, k2 from cn), p to end.", "40", {1: "p2 c4f p34"}),
    # --- how far, and what is repeated ---
    _(B, "Row 1: Knit 3, purl until 3 stitches from the end, knit 3.", "40", {1: "k3 p34 k3"}),
    _(B, "Row 1: K3 \u2013 p to last 3 \u2013 k3.", "40", {1: "k3 p34 k3"}),
    _(B, "Row 1: Knit one, purl one, all along.", "40", {1: "k1 p1 " * 20}),
    _(B, "Row 1: *K5, p1; rep from * until 4 sts are left, ending k4.", "40", {1: "k5 p1 " * 6 + "k4"}),
    _(B, "Row 1: (K1, p2) to end, ending with k1.", "40", {1: "k1 p2 " * 13 + "k1"}),
    _(F, "K12, turn. Sl 1, p3, turn.\nNext row: Sl 1, k to 1 st before the turning point, ssk (one from each side of the gap), k1, turn.", "40*2 39"),
    _(B, "Set-up: K18, pm, k4, pm, k18.\nRow 1: K3, *yo, (k1, p2) to 3 sts before marker, k3, yo*, k4; rep from * to * once.", ""),
    _(R, "Rnd 1: K2, *yo, k2tog*, k30; rep from * to * twice, k2.", "40", {1: "k2 yo k2tog k30 yo k2tog yo k2tog k2"}),
    _(R, "Knit 1 rnd, then k2tog around\u201420 sts.", "40 20"),
    _(F, "Next row (RS): K2tog, k until there are 18 sts on right needle, k2tog and turn, leaving rem sts on a holder.", "19", held="19"),
    # --- heads ---
    _(F, "RS: BO 3, k to end. \nWS: work even.\nRS: BO 2, k to end.", "37*2 35", sides="RWR"),
    _(B, "Row 1 (RS): K2, yo, k2tog, k to end.\nRow 2 and each WS row, purl.\nRow 3: Knit.", "40*4", sides="RWRW"),
    _(B, "Rows 1-4: *K1, p1*.\nRows 5-8: rib.", "40*8", {8: "k1 p1 " * 20}),
    # --- what only looks like it ---
    _(B, "Row 1: K3, yo, k2tog, to end.", ""),
    _(B, "Row 1: *K2, p2* repeat 8 times.", ""),
    _(B, "Row 1: P2, C4F (slip next 2 sts to cn and hold at back, k2, k2 from cn), p to end.", ""),
    _(B, "Row 1: P2, sl 3 to cn and hold in front, k3, p3 from cn, p to end.", ""),
    _(B, "Row 1: Bring yarn forward, sl 1, k to end.", ""),
    _(F, "Row 1: K to last 3 sts of instep, k2tog, k1.", ""),
    _(B, "Row 1: K1 below, k to end.", ""),
    _(B, "Row 1: Sl 1, k2tog, pass the 2 slipped sts over, k to end.", ""),
    _(B, "Row 1: K12, p12 to end.", ""),
    _(F, "On every RS row, k2, ssk, k to last 4 sts, k2tog, k2.", ""),
    _(F, "Row 1: Slip the first 5 sts onto the right needle, k to end.", ""),
    _(B, "Row 1: (K1, p1), k to end.", ""),
    _(B, "Row 1: Inc to 44 sts.", ""),
    # --- which rows are worked ---
    _(B, "Rows 1, 3 and 5 (RS): K1, yo, k2tog, k to end.\nWS rows: Purl.\nWork rows 1-5.", ""),
    _(B, "Rows 1, 3 and 5 (RS): K1, yo, k2tog, k to end.\nWS rows: Purl.\nWork rows 1-6.", "40*6"),
    _(B, "Rows 1, 3 and 5 (RS): K1, yo, k2tog, k to end.\nWS rows: Purl.\nRep rows 1-4.", "40*10"),
    _(B, "Row 1: K1, yo, k2tog, k to end.\nRow 2: Purl.\nRow 3: Knit.\nRow 4: Purl.\nWork rows 1 and 2 once more.", "40*6"),
    _(B, "Knit 2 rows.\nRow 1: *K1, p1; rep from * to end.\nRow 2: *P1, k1; rep from * to end.\nDo these two rows until 8 rows are done.", "40*10", told="2 before do not"),
    # --- beginning with a row of the pattern in hand ---
    _(R, "Rnd 1: Knit.\nRnd 2: Purl.\nRnd 3: Knit.\nRnd 4: *K2, p2; rep from * around.\nWork 3 rnds more, beginning with rnd 4.\nWork 1 rnd in pattern.", "40*8", {5: "k2 p2 " * 10, 6: "k40", 7: "p40", 8: "k40"}),
    _(B, "Row 1: K.\nRow 2: P.\nRow 3: *K1, p1; rep from * to end.\nRow 4: K.\nWork 3 rows in pattern, beginning with row 3.", "40*7", {5: "k1 p1 " * 20, 6: "k40", 7: "k40"}),
    _(B, "Row 1: K.\nRow 2: P.\nRow 3: *K1, p1; rep from * to end.\nRow 4: K.\nWork 3 rows in pattern, beginning with row 2.", ""),
    _(B, "Row 1: K.\nRow 2: P.\nRow 3: *K1, p1; rep from * to end.\nRow 4: K.\nDec 1 st at each end of next row.\nWork 2 rows in pattern, beginning with row 4.", ""),
    # --- what stands before a colon is no name where it says where, how far, for whom or in which yarn ---
    _(R, "Begin 5 sts before the end of the rnd: bind off 10 sts, k to end.", ""),
    _(R, "After 4 cm: Bind off 4 sts, k to end.", ""),
    _(R, "Leg (10 cm): Knit.", ""),
    _(R, "Hem (6 rnds): *K1, p1; rep from * to end.", ""),
    _(F, "Centre 10 sts: bind off.", ""),
    _(R, "Colour A: Knit 2 rnds.", ""),
    _(R, "A. Knit 2 rnds.", ""),
    _(R, "Stripe A: With A, knit 2 rnds.", "40*2", yarns="AA"),
    _(R, "For men: Knit 2 rnds.", ""),
    _(R, "Garter stitch: Work 4 rnds.", ""),
    _(R, "Tip: Knit 1 rnd.", ""),
    _(R, "Tip: Count your stitches often.\nKnit 1 rnd.", "40"),
    _(R, "Ribbing: Work for 4 cm.", ""),
    _(R, "Ribbing: Work 4 rnds in k2, p2 rib.", "40*4", {1: "k2 p2 " * 10}),
    _(R, "Hem: Work 4 rnds.", "40*4"),
    _(R, "Bind off 4: Knit 2 rnds.", ""),
    _(R, "Contrast stripe: Knit 2 rnds.", ""),
    _(R, "Heel in moss: Knit 2 rnds.", ""),
    _(R, "Option 2: Purl 2 rnds.", ""),
    _(R, "Next rnd (size L only): K10, k2tog, k to end.", "-", sizes="S (M, L)"),
    _(R, "Next rnd (size M only): K10, k2tog, k to end.", "39", sizes="S (M, L)"),
    _(R, "Crown, L: K10, k2tog, k to end.", "", sizes="S (M, L)"),
    _(R, "Adult Large starts here: K10, k2tog, k to end.", "", sizes="Child (Adult Small, Adult Large)", size="Child"),
    _(R, "Next rnd (men): K10, k2tog, k to end.", ""),
    _(R, "Dec rnd (A): K10, k2tog, k to end.", ""),
    _(R, "Rnd 1 (join A): K10, k2tog, k to end.", ""),
    _(R, "Oat stripe: Knit 2 rnds.", ""),
    _(R, "Next rnd (A): K10, k2tog, k to end.", "39", yarns="A"),
    # --- a pattern that nothing has set up ---
    _(B, "Knit 2 rows.\nRow 1: K15, patt 10, k15.", ""),
    _(B, "Next row: K15, work 10 sts in pattern, k15.", ""),
    _(B, "Next row: Work in pattern to last 2 sts, k2.", ""),
    _(F, "Next row: Patt 10, turn. Next row: Patt 10.", "40*2"),
    _(B, "Rows 1-4: *K1, p1; rep from * to end.\nNext row: K15, patt 10, k15.", "40*5", {5: "k15 " + "p1 k1 " * 5 + "k15"}),
    _(R, "Next rnd: K2, patt 10, k28.", "40"),
)
# fmt: on
