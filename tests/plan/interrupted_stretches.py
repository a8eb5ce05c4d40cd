"""Stretches in which something is broken off: a pattern, a second yarn, a needle, the round; each with its meaning.

The form is that of `stretches`. The meanings were written before any of them was read by the program. Source: common practice.
"""

from __future__ import annotations

from tests.plan.stretches import F, R, Stretch, _

TWO = "Rnd 1: *K1 A, k1 MC; rep from * to end.\nRnd 2: *K1 MC, k1 A; rep from * to end.\n"
"""Two rounds of a pattern in two yarns."""
PATT = "Rnd 1: *K3, p1; rep from * to end.\nRnd 2: *K1, p1, k2; rep from * to end.\nRep rnds 1 and 2 once.\n"
ROWS = "Row 1 (RS): *K2, p2; rep from * to end.\nRow 2: Purl.\n"
LEAF = "== leaf pattern\nLeaf pattern (multiple of 4 sts)\n"
PANEL = "== leaf pattern\nLeaf pattern (10 sts)\nRnd 1: P2, k6, p2.\nRnd 2: P2, k2, p2, k2, p2.\n"
GAP = f"{R}Next rnd: Bind off 8 sts, k to end.\n"
"""The round is opened at its beginning: the yarn hangs at the end of a right-side row."""

# fmt: off
INTERRUPTED: tuple[Stretch, ...] = (
    # --- a pattern in two yarns, and one of them goes on alone ---
    _(R, f"{TWO}Break A.\nWork even for 3 rnds.", "40*5", yarns="AAMMM", told="it ends there"),
    _(R, f"{TWO}Continue in MC only for 3 rnds.", "40*5", yarns="AAMMM", told="it ends there"),
    _(R, f"{TWO}Break A.\nWith MC, work even until piece measures 5 cm.", "40*10", yarns="AAMMMMMMMM"),
    _(R, f"{TWO}Change to MC.\nWork even for 2 rnds.\nRep rnds 1 and 2 once.", "40*6", yarns="AAMMAA"),
    _(R, f"{TWO}Dec rnd: With MC, *k8, k2tog; rep from * around.\nWork 3 rnds even.", "40*2 36*4", yarns="AAMMMM"),
    _(R, "Work chart peak twice.\nBreak A and work 2 rnds even.", "40*6", yarns="AAAAMM"),
    _(R, f"{TWO}Work 2 rnds even.", "40*4", yarns="AAAA"),
    _(R, f"{TWO}Break A.\nWork 4 rnds in pattern.", ""),
    _(R, "Rnd 1: *K1 A, p1 MC; rep from * to end.\nRep rnd 1 twice.\nBreak A.\nWork 2 rnds even.", ""),
    # --- a pattern, and a plain row ---
    _(R, f"{PATT}Purl 1 rnd.\nWork 2 rnds in pattern.", ""),
    _(R, f"{PATT}Knit 1 rnd.\nWork 2 rnds in pattern.", ""),
    _(R, f"{PATT}Next rnd: Purl.\nCont in patt until piece measures 5 cm.", ""),
    _(R, "Work 4 rnds in k2, p2 rib.\nPurl 1 rnd.\nWork 4 rnds in pattern.", ""),
    _(F, "Work 4 rows in k2, p2 rib.\nKnit 1 row.\nWork in pattern for 2 rows.", ""),
    _(R, "Work chart peak.\nPurl 1 rnd.\nWork 2 rnds in pattern.", ""),
    _(R, f"{PATT}Purl 1 rnd.\nRep rnds 1 and 2 once.", "40*7", {6: "k3 p1 " * 10}),
    _(R, f"{PATT}Work 2 rnds in pattern.", "40*6", {5: "k3 p1 " * 10}),
    _(F, "Knit 1 row. Purl 1 row. Cont in patt for 2 rows.", "40*4", {3: "k40", 4: "p40"}),
    # --- rounds in brackets, and what is worked again ---
    _(R, "[With A, purl 1 rnd; with MC, knit 2 rnds] twice.", "40*6", yarns="AMMAMM"),
    _(R, "(With A, purl 1 rnd; with MC, knit 1 rnd) 3 times.\nKnit 1 rnd.", "40*7", yarns="AMAMAMM"),
    _(R, "With A, knit 1 rnd. With MC, knit 1 rnd.\nRep the last 2 rnds twice.", "40*6", yarns="AMAMAM"),
    _(R, "Change to 3 mm needles and knit 1 rnd.\nChange to 5 mm needles and knit 1 rnd.\nRep the last 2 rnds once.", ""),
    _(R, "Rnd 1: With 5 mm needles, knit.\nRnd 2: With 3 mm needles, purl.\nRep rnds 1 and 2 once.", ""),
    _(R, "Rnd 1: Knit.\nRnd 2: Purl.\nRep rnds 1 and 2 once.\nChange to 5 mm needles.\nRep rnds 1 and 2 once.", "40*6", needles="4*4 5*2"),
    _(R, "**Knit 1 rnd.\nPurl 1 rnd.\nRep from ** twice more.\nKnit 3 rnds.", "40*9", {6: "p40", 7: "k40"}),
    _(R, "**With A, knit 1 rnd.\nWith MC, purl 1 rnd.\nRep from ** 2 more times.\nKnit 1 rnd.", "40*7", yarns="AMAMAMM"),
    # --- from rows to rounds and back ---
    _(F, f"{ROWS}Join in the round.\nWork in pattern for 2 rnds.", "40*4", {3: "k2 p2 " * 10, 4: "k40"}),
    _(F, f"{ROWS}Join in the round.\nRep rows 1 and 2 once.", ""),
    _(R, "Rnd 1: *K3, p1; rep from * to end.\nRnd 2: Knit.\nWork flat.\nWork in pattern for 2 rows.", "40*4", {3: "k3 p1 " * 10, 4: "p40"}),
    _(R, "Rnd 1: *K3, p1; rep from * to end.\nRnd 2: Knit.\nWork flat.\nRep last 2 rows twice.", ""),
    _("Cast on 40 sts. Work flat.\n", "Work in garter st for 5 rows.\nJoin in the round.\nCont in garter st for 2 rnds.", "40*7", {6: "p40", 7: "k40"}),
    _("Cast on 40 sts. Work flat.\n", "Work in garter st for 6 rows.\nJoin in the round.\nCont in garter st for 2 rnds.", "40*8", {7: "k40", 8: "p40"}),
    _(R, "Row 1: K10, turn.\nRow 2: P20, turn.\nRep last 2 rows once.\nNext rnd: K to end.", "40*5"),
    _("", f"{LEAF}Rnd 1: *K3, p1; rep from * to end.\nRnd 2: Knit.\n== back\nCast on 40 sts. Work flat.\nWork in leaf pattern for 4 rows.", ""),
    _("", f"{LEAF}Row 1 (RS): *K3, p1; rep from * to end.\nRow 2: Purl.\n== cowl\nCast on 40 sts.\nJoin in the round.\nWork in leaf pattern for 4 rnds.", ""),
    _("", f"{LEAF}Rnd 1: *K3, p1; rep from * to end.\nRnd 2: Knit.\n== cowl\nCast on 40 sts.\nJoin in the round.\nWork in leaf pattern for 4 rnds.", "40*4"),
    _("", f"{PANEL}== back\nCast on 30 sts. Work flat.\nRow 1 (RS): K10, work row 1 of leaf pattern over 10 sts, k10.\nRow 2: P10, work row 2 of leaf pattern over 10 sts, p10.", ""),
    # --- the round is opened ---
    _(GAP, "Work back and forth in st st for 3 rows.", "32*3", {1: "p32"}, sides="WRW"),
    _(GAP, "Next row: Purl.\nNext row: Knit.", "32*2", sides="WR"),
    _(GAP, "Work 3 rows in st st.", "32*3", {1: "p32"}, sides="WRW"),
    _(GAP, "Next row (RS): Knit.\nNext row: Purl.", "32*2", sides="RW"),
    _(GAP, "Next rnd: Cast on 8 sts, k to end.\nKnit 1 rnd.", "40*2", sides="RR"),
    _(R, "Next rnd: Place first 8 sts on a holder, k to end.\nWork flat.\nWork 2 rows in st st.", "32*3", sides="RWR", held="8"),
    _(R, "Next rnd: K20, place rem 20 sts on a holder.\nWork flat.\nWork 2 rows in st st.", "20*3", {2: "p20"}, sides="RWR", held="20"),
    _(R, "Next rnd: K20, place next 20 sts on a holder.\nWork back and forth in st st for 2 rows.", "20*3", sides="RWR", held="20"),
    _(R, "Next rnd: K20, place rem 20 sts on a holder.\nWork 2 rows in st st.", "20*3", {2: "p20"}, sides="RWR", held="20"),
    _(R, "Next rnd: K20, place rem 20 sts on a holder.\nBreak yarn.\nWork flat.\nWork 2 rows in st st.", "20*3", {2: "k20"}, sides="RRW", held="20"),
    # --- what a line leaves open is told, or asked ---
    _("Cast on 64 sts.\nJoin in the round.\nKnit 1 rnd.\n", "Divide 5 sts over four needles: 16-16-16-16.", ""),
    _("Cast on 64 sts.\nJoin in the round.\nKnit 1 rnd.\n", "Divide the 64 sts over four needles: 16-16-16-16.\nKnit 1 rnd.", "64"),
    _(R, "Weave in the ends, and it is done in garter.\nKnit 1 rnd.", ""),
    _(R, "Block it, and the band is worked in rib.\nKnit 1 rnd.", ""),
    _(R, "Knit 4 rnds, decreasing 4 sts evenly.", "40*3 36", told="in which of these rows"),
    _(F, "Work 4 rows in garter st, increasing 2 sts evenly.", "40*3 42", told="in which of these rows"),
    _(R, "Knit 4 rnds, decreasing 4 sts evenly on the last rnd.", "40*3 36"),
)
# fmt: on
