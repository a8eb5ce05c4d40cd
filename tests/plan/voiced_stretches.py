"""Orders told in the passive, to "you" and "we", in -ing and without a verb, each with its meaning as a knitter works it out.

The meanings were written by hand. Source: common practice. The form is that of `stretches`; sentences in the same words that tell
what lies there, what was done or what is done each time stand below those that order, and must be refused or work nothing (`-`). It is
long because it is a table.
"""

from __future__ import annotations

from tests.plan.stretches import B, F, R, Stretch

DECS = "Decrease round: K1, k2tog, k to last 3 sts, ssk, k1.\n"
BARE = "Cast on 40 sts.\nJoin in the round.\n"


def _(before: str, lines: str, means: str, rows: dict[int, str] | None = None, **more: str) -> Stretch:
    return Stretch(before=before, lines=lines, means=means, rows=rows or {}, **more)


# fmt: off
VOICED: tuple[Stretch, ...] = (
    # --- what is done ---
    _(BARE, "The hem is worked in k2, p2 rib for 1 cm.", "40*3", {1: "k2 p2 " * 10}),
    _(BARE, "The rib is worked in the round as k1, p1 for 1 cm.", "40*3", {3: "k1 p1 " * 20}),
    _(BARE, "Stocking stitch is now worked for 1 cm.", "40*3", {2: "k40"}),
    _(BARE, "Now 3 rounds are worked in garter stitch.", "40*3", {1: "k40", 2: "p40", 3: "k40"}),
    _(BARE, "The sleeve is knitted in the round in stockinette stitch until it measures 1 cm.", "40*3", {3: "k40"}),
    _(B, "The piece is worked back and forth in stocking stitch for 1 cm.", "40*4 | 40*3", {1: "k40", 2: "p40"}, sides="RWR"),
    _(F, "The next row is purled.", "40", {1: "p40"}),
    _(R, "All stitches are bound off.", "0"),
    _(R, "8 stitches are increased evenly in the next round.", "48", {1: "k5 m1 " * 8}),
    _(R, "One round is knitted without any increases.", "40", {1: "k40"}),
    _(R, "The next two rounds are purled.", "40*2", {2: "p40"}),
    _(R, f"{DECS}The decrease round is repeated every 4th round 2 more times.", "38*4 36*4 34"),
    _(R, "Rnd 1: *K1, p1; rep from * to end.\nRnd 2: Knit.\nThese two rounds are repeated 2 times.", "40*6", {5: "k1 p1 " * 20, 6: "k40"}),
    _(R, "The last 10 stitches are placed on a stitch holder.", "-", held="10"),
    _(R, "The first 20 stitches are slipped onto a piece of scrap yarn and the other 20 stitches are knitted.", "", held="20"),
    _(R, "The yarn is cut and drawn through the remaining stitches.", "0"),
    # --- the same words for what lies there, was done, will be or is done each time ---
    _(R, "The edge stitches are knitted on every row.", ""),
    _(R, "The last row is knitted from the wrong side.", ""),
    _(R, "8 stitches are decreased in each decrease round.", ""),
    _(R, "The stitches are slipped purlwise with yarn in back.", ""),
    _(R, "Increases are worked on every 4th round.", ""),
    _(R, "Both sleeves are worked in the round for 40 cm.", ""),
    _(R, "All stitches have been knitted for 3 rounds.", ""),
    _(R, "The stitches were bound off.", ""),
    _(R, "The next round will be purled.", ""),
    _(R, "The next round can be purled.", ""),
    _(R, "The next round is not purled.", ""),
    _(R, "The remaining stitches are bound off later.", ""),
    _(R, "The last 3 rounds are knitted in the other colour.", ""),
    # --- in few words ---
    _(BARE, "Knit 1 cm rib, 2 knit, 2 purl.", "40*3", {1: "k2 p2 " * 10}),
    _(BARE, "Rib 1 and 1 for 1 cm.", "40*3", {1: "k1 p1 " * 20}),
    _(R, "Rib 2 and 2 stitches together.", ""),
    _(R, "*K6, k2tog* \u2014 35\n*K5, k2tog* - 30", "35 30", {1: "k6 k2tog " * 5}),
    _(R, "*K6, k2tog* \u2014 36", ""),
    _(R, "3.5 mm.\nKnit 2 rounds.", "40*2"),
    _(R, "Stretchy bind-off.", "0"),
    _(R, "A stretchy bind-off is best.", "-"),
    _("Cast on 40 sts and work in k1, p1 rib as follows:\n", "Row 1 (RS): *K1, p1; rep from * to end.\nRow 2: *K1, p1; rep from * to end.", "40*2", {1: "k1 p1 " * 20}),
    # --- to the knitter ---
    _(BARE, "You now work 3 rounds of stockinette.", "40*3", {1: "k40"}),
    _(B, "You will now work 2 rows in garter stitch.", "40*2", {1: "k40", 2: "k40"}),
    _(R, "You are going to purl the next round.", "40", {1: "p40"}),
    _(BARE, "You start with 3 rounds of 1x1 rib.", "40*3", {1: "k1 p1 " * 20}),
    _("", "We begin by casting on 64 sts.\nJoin in the round. Knit 1 round.", "64"),
    _(R, "We decrease on the next round: *k6, k2tog*, repeat to end.", "35", {1: "k6 k2tog " * 5}),
    _(R, "Let's knit 4 rounds even.", "40*4"),
    _(R, "Now it's time to bind off all sts.", "0"),
    _(R, "In the next round you will decrease 8 sts.\nNext round: *K3, k2tog; rep from * to end.", ""),
    _(R, "You will work the next 4 rounds later.", ""),
    _(R, "When you knit the next round, slip the first stitch.", ""),
    _(R, "You knit the sleeves first.", ""),
    # --- in -ing, or without a verb ---
    _(R, "Continuing in stockinette, work 3 more rounds.", "40*3", {3: "k40"}),
    _(R, "Now knitting every round until piece measures 3 cm.", "40*4"),
    _(B, "Turning the work, you will see the wrong side.", ""),
    _(BARE, "4.5 mm needles: 3 rounds 2x2 rib.", "40*3", {1: "k2 p2 " * 10}, needles="4.5*3"),
    _(F, "On needle 3 mm, from RS: knit 2 rows.", "40*2", {2: "k40"}, needles="3*2"),
    _(B, "Then 4 rows garter stitch, bind off on WS.", "40*4 0"),
    _(BARE, "Work 2x2 rib for 1 cm.\nIn rib, bind off all sts.", "40*3 0"),
    # --- a rib by its row; a seed stitch has more than one ---
    _(BARE, "Work 1 cm in half-twisted rib: *k1 tbl, p1*, repeat from * to * around.", "40*3", {3: "k_tbl p1 " * 20}),
    _(BARE, "Work 1 cm in seed stitch: *k1, p1*, repeat from * to * around.", ""),
    _(BARE, "Work 1 cm in broken rib: *k1, p1* - repeat around.", ""),
    # --- repeats ---
    _(BARE, "[k2, p2] all the way round.", "40", {1: "k2 p2 " * 10}),
    _(BARE, "(k1, p1) around, 3 rounds.", "40*3", {3: "k1 p1 " * 20}),
    _(BARE, "Repeat *k1, p1* all the way around.", "40", {1: "k1 p1 " * 20}),
    _(BARE, "Round 1: *k3, p1* - repeat from star to star to the end of the round.", "40", {1: "k3 p1 " * 10}),
    _(BARE, "*knit 2, purl 3* - 8 times.", "40", {1: "k2 p3 " * 8}),
    _(BARE, "*knit 2, purl 3* - 8 times more.", ""),
    _(BARE, "*knit 2, purl 3* - repeat 7 times.", ""),
    # --- lengths for other bodies and tastes ---
    _(R, "Knit until the body is as long as you like, or about 3 cm.", "40*4"),
    _(R, "Continue until the sleeve measures 3 cm, or 4 cm less than your arm length.", "40*4"),
    _(R, "Knit straight until the sleeve is 3 cm, or 5 cm short of your wrist bone.", "40*4"),
    _(R, "Continue until piece measures 3 cm, or until your yarn is nearly used up.", "40*4"),
    _(BARE, "Work k2, p2 rib for 1 cm (or 7 cm, for a doubled neckband).", "40*3", {1: "k2 p2 " * 10}),
    _(R, "Continue until the sleeve measures 3 cm, or 3 cm longer than the first sleeve.", ""),
    _(R, "Continue until the sleeve measures 3 cm, or 20 rounds.", ""),
)
