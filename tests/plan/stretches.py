"""Short stretches of a page in which what came before changes what a line means, each with its meaning as a knitter works it out.

The meanings were written by hand before any of them was read by the program. Source: common practice. The form is that of
`lookalikes`; `== name` begins a part of its own. Altered since: "every 4th row" that falls on the right side has the second reading
that `lookalikes` gives it; three stretches that were thought to need a refusal have the meaning that they have word by word, two of them
with what has to be told. It is long because it is a table.
"""

from __future__ import annotations

from dataclasses import dataclass, field

F = "Cast on 40 sts. Work flat.\nWork 4 rows in st st.\n"
"""The next row is a right-side row."""
R = "Cast on 40 sts.\nJoin in the round.\nKnit 4 rounds.\n"
B = "Cast on 40 sts. Work flat.\n"
MARKED = f"{R}Set-up rnd: K20, pm, k20.\n"
RIBR = "Cast on 40 sts.\nJoin in the round.\nWork 4 rnds in k1, p1 rib.\n"
SMALL = "With 3.5 mm needles, cast on 40 sts.\nJoin in the round.\nWork 4 rnds in k2, p2 rib.\n"
HEEL = "Cast on 18 sts. Work flat.\nWork 4 rows in st st.\n"
DEC = "Dec row (RS): K1, ssk, k to last 3 sts, k2tog, k1.\n"
DECR = "Dec rnd: K1, k2tog, k to last 3 sts, ssk, k1.\n"
INCR = "Inc rnd: K1, m1, k to last st, m1, k1.\n"


@dataclass(frozen=True, slots=True, kw_only=True)
class Stretch:
    """Lines that follow on each other, with what stands before them and what they mean."""

    before: str
    lines: str
    means: str
    """Stitches after each row they work, as in `lookalikes`; empty where they must be refused."""
    rows: dict[int, str] = field(default_factory=dict)
    """Some of the rows as they are worked: stitches in their order."""
    yarns: str = ""
    """Yarn of each row: M for the main colour alone, else A."""
    sides: str = ""
    """Side of each row: R or W."""
    needles: str = ""
    """Needle of each row in mm, as counts are written."""
    held: str = ""
    """Stitches on hold at the end, all together."""
    told: str = ""
    """What the knitter is told of them, where they cannot be right as they stand but are worked as printed."""
    size: str = "M"
    sizes: str = "M"


def _(before: str, lines: str, means: str, rows: dict[int, str] | None = None, **more: str) -> Stretch:
    return Stretch(before=before, lines=lines, means=means, rows=rows or {}, **more)


THREE = {"sizes": "S (M, L)"}

# fmt: off
STRETCHES: tuple[Stretch, ...] = (
    # --- for some sizes, and under headings ---
    _(R, "Size S: Knit 1 rnd. Size M: Knit 2 rnds. All other sizes: Knit 3 rnds.", "40*2", **THREE),
    _(R, "L and up: Knit 5 rnds.\nNot for S: Knit 3 rnds.", "40*3", **THREE),
    _(R, "S and L only: Knit 1 rnd.\nM only: (K8, k2tog) 4 times. 36 sts.", "36", **THREE),
    _(R, "Knit 1 rnd.\nAll other sizes: Knit 3 rnds.", "", **THREE),
    _(R, "Knit 2 rnds.\n40 sts: 22 for the back and 20 for the front.", ""),
    _(R, "Knit 2 rnds.\n40 sts: 20 each front and back.", "40*2"),
    _(R, "Knit 2 rnds.\n42 sts: 21 each front and back.", ""),
    # --- rows worked again ---
    _(F, "Row 1 (RS): K1, ssk, k to end.\nRow 2: Purl.\nRow 3: Knit.\nRow 4: Purl.\nRep the last 4 rows twice more.\nRep row 1 once.", "39*4 38*4 37*4 36"),
    _(F, f"{DEC}Work 3 rows even.\nRep the last 4 rows twice.", "38*4 36*4 34*4"),
    _(F, f"{DEC}Next row: Purl.\nRep dec row.\nWork 3 rows even.\nRep the last 4 rows twice.", "38*2 36*4 34*4 32*4"),
    _(F, "Dec 1 st at each end of next row.\nWork 1 row.\nRep these 2 rows 3 times more.", "38*2 36*2 34*2 32*2"),
    _(F, "Dec 1 st at each end of next and foll alt row.\nRep the last 2 rows twice.", "38 38 36 36 34 34 32"),
    _(F, "Dec 1 st at each end of next 2 rows.\nRep last row twice.", "38 36 34 32"),
    _(F, "Bind off 3 sts at beg of next 2 rows.\nRep the last 2 rows once.", "37 34 31 28"),
    _(F, "Bind off 3 sts at beg of next 2 rows.\nWork 2 rows even.\nRep the last 4 rows once.", "37 34*3 31 28*3"),
    _(R, "Rnd 1: *K8, k2tog; rep from * around.\nRnd 2: Knit.\nRnd 3: *K7, k2tog; rep from * around.\nRnd 4: Knit.\nRep rnds 2 and 4 once.", "36*2 32*4"),
    _(R, "Rnds 1 and 3: Knit.\nRnds 2 and 4: *K2, p2; rep from * around.\nRep rnds 1-4 once, then rnd 1 once.", "40*9", {2: "k2 p2 " * 10, 9: "k40"}),
    _(R, "Rnd 1: Knit.\nRnd 2: Purl.\nRnd 3: *K1, p1; rep from * around.\nRep last 3 rnds once.\nRep rnd 2 twice.", "40*8", {6: "k1 p1 " * 20, 7: "p40", 8: "p40"}),
    _(R, f"{DECR}Knit 5 rnds.\nRep the last 6 rnds twice more, then dec rnd every 4th rnd twice.", "38*6 36*6 34*6 34*3 32*4 30 | 38*6 36*6 34*6 32*4 30"),
    _(R, f"{INCR}Rep inc rnd every 6th rnd twice more.\nKnit 2 rnds.\nRep the last 3 rnds once.", "42*6 44*6 46*3 48*3"),
    _(F, "Row 1 (RS): K10, k2tog, k to end.\nRow 2: P.\nRow 3: As row 1.\nRow 4: As row 2.", "39 39 38 38", {3: "k10 k2tog k27"}),
    _(F, "1st row: K.\n2nd row: P.\n3rd row: K1, k2tog, k to end.\n4th row: P.\nRep 3rd and 4th rows twice.", "40 40 39 39 38 38 37 37"),
    _(B, "Row 1: *K2, p2; rep from * to end.\nRep row 1 for 5 cm.\nNext row: Knit.", "40*15 | 40*16", {-1: "k40", -2: "k2 p2 " * 10}),
    _(B, "Row 1 (RS): Knit.\nRow 2: Purl.\nRep rows 1 and 2 until piece measures 5 cm, ending with row 1.", "40*13 | 40*15", {-1: "k40"}),
    _(F, "Next row: K10, m1, k to last 10 sts, m1, k10.\nNext row: P.\nRep last 2 rows until there are 48 sts.\nWork 2 rows even.", "42*2 44*2 46*2 48*4 | 42*2 44*2 46*2 48*3"),
    _(R, "Next rnd: K1, k2tog, k to last 3 sts, ssk, k1.\nNext rnd: Knit.\nRep these 2 rnds twice more.\nRep first of these 2 rnds once.", "38*2 36*2 34*2 32"),
    _(R, "Knit 1 rnd.\nNext rnd: (K8, k2tog) 4 times.\nRep this rnd once.", ""),
    _(R, "Next rnd: *K2tog, k2; rep from * around.\nRep last rnd once.", ""),
    _(R, "Dec rnd: K2tog, k to end.\nRep this rnd every 3rd rnd 3 times.\nRep this rnd 3 times.", "39*3 38*3 37*3 36 35 34 33"),
    _(F, "K 1 row, p 1 row, k 1 row.\nRep last 2 rows once.", "40*5", {4: "p40", 5: "k40"}),
    _(F, "Knit 2 rows, purl 2 rows.\nRep last 2 rows.", "40*6", {5: "p40", 6: "p40"}),
    _(F, "Knit 1 row.\nWork 2 rows in k1, p1 rib.\nRep last row once more.", "40*4", {1: "k40", 4: "k1 p1 " * 20}),
    _(F, "Row 1: K1, ssk, k to end.\nRow 2 and every alt row: Purl.\nRow 3: K1, ssk, k to end.\nRow 5: Knit.", "39 39 38 38 38 | 39 39 38 38 38 38", {4: "p38"}),
    _(F, "Row 1: Knit.\nRows 2, 4 and 6: Purl.\nRow 3: K1, k2tog, k to end.\nRow 5: As row 3.", "40 40 39 39 38 38", {6: "p38"}),
    _(R, "Rnd 1: *K8, k2tog; rep from * around.\nRnd 2 and all even rnds: Knit.\nRnd 3: *K7, k2tog; rep from * around.\nRnd 5: *K6, k2tog; rep from * around.", "36*2 32*2 28 | 36*2 32*2 28*2"),
    _(R, "Rnd 1: *K8, k2tog; rep from * around.\nRnd 2: Knit.\nCont to dec in this way every other rnd, working 1 st less between decs, until 16 sts rem.", "36*2 32*2 28*2 24*2 20*2 16 | 36*2 32*2 28*2 24*2 20*2 16*2"),
    _(R, "Rnd 1: *K8, k2tog; rep from * around.\nRnd 2: *K7, k2tog; rep from * around.\nCont in this manner until 8 sts rem.", "36 32 28 24 20 16 12 8"),
    _(F, "Row 1 (RS): *K2, p2; rep from * to end.\nRow 2: Purl.\nRep last 2 rows once.\nRep row 2.", "40*5", {5: "p40"}),
    _(F, f"{DEC}Next row: Purl.\nRep last 2 rows 2 times, then rep dec row every 4th row twice.", "38*2 36*2 34*2 34*2 32*4 30"),
    _(F, f"{DEC}Work 5 rows.\nRep dec row on next row, then work 5 rows.\nRep last 6 rows once.", "38*6 36*6 34*6"),
    _(F, "Inc 1 st at each end of next and every foll 4th row 2 times.\nRep last row once.", "42*4 44 44*3 46 48 | 42*4 44 46"),
    _(F, "Work 4 rows in k2, p2 rib.\nBeg with a k row, work 2 rows in st st.\nRep these 6 rows once.", "40*12", {7: "k2 p2 " * 10, 11: "k40", 12: "p40"}),
    _(F, "Work 4 rows in k2, p2 rib.\nWork 2 rows in st st.\nRep the last 3 rows once.", "40*9", told="of these rows was worked on the"),
    _(R, "Work 2 rnds in k1, p1 rib.\nKnit 2 rnds.\nRep the last 3 rnds once.", "40*7", {5: "k1 p1 " * 20, 6: "k40", 7: "k40"}),
    _(R, f"{DECR}Knit 1 rnd.\nRep last 2 rnds 3 (2, 4) times more.\nRep last 2 rnds 0 (1, 2) times.", "38*2 36*2 34*2 32*2", **THREE),
    _(F, "Next row: K5, k2tog, k to end.\nNext row: P to last 7 sts, p2tog, p5.\nRep last 2 rows once.", "39 38 37 36", {4: "p30 p2tog p5"}),
    _(F, "Row 1: K2tog, k to end.\nRow 2: K2tog, p to end.\nRow 3: K.\nRep rows 1 and 2 only.", "39 38 38 37 36 |"),
    # --- yarn ---
    _(R, "Join A.\nKnit 2 rnds.\nWith MC, knit 1 rnd.\nKnit 1 rnd.", "40*4", yarns="AAMM"),
    _(R, "Next rnd: With A, knit.\nNext rnd: With MC, purl.\nNext rnd: Knit.", "40*3", yarns="AMM"),
    _(R, "Change to A.\nKnit 3 rnds.\nBreak A. With MC knit 2 rnds.\nRejoin A and knit 1 rnd.", "40*6", yarns="AAAMMA"),
    _(F, "Rows 1-2: With A, knit.\nRows 3-4: With MC, knit.\nRep these 4 rows once, then rows 1-2 once more.", "40*10", yarns="AAMMAAMMAA"),
    _(F, "Work in stripes of 2 rows A, 2 rows MC.\nWork 6 rows in st st.\nDec 1 st at each end of next row.", "40*6 38", yarns="AAMMAAM"),
    _(F, "Join A and k 2 rows.\nBreak A, join MC.\nBeg with a k row, work 2 rows in st st.\nRep last 4 rows once.", "40*8", {2: "k40", 4: "p40", 6: "k40", 8: "p40"}, yarns="AAMMAAMM"),
    _(R, "Knit 1 rnd A, 1 rnd MC.\nRep last 2 rnds twice.", "40*6", yarns="AMAMAM"),
    _(R, "Using A, knit 1 rnd, purl 1 rnd.\nUsing MC, knit 2 rnds.\nRep last 2 rnds once.", "40*6", yarns="AAMMMM"),
    _(R, "Next rnd: *K2 A, k2 MC; rep from * around.\nNext rnd: Knit with A.", "40*2", yarns="AA"),
    # --- colour rounds, told by their yarns ---
    _(R, "Rnd 1: 1 A, 3 MC.\nRnd 2: all A.\nRnds 3-4: MC.\nThen do rnds 2 and 1, in that order.\nBreak A after this round.\nKnit 1 rnd.", "40*7", yarns="AAMMAAM"),
    _(R, "Rnd 1: 2A, 1MC, *2A, 2MC, rep from *, end 1MC.\nThe rest is in A.\nKnit 1 rnd.", "40*2", yarns="AA"),
    _(R, "Rnd 1: (3 A, 1 MC) around.\nRnd 2: Knit all sts in main colour.\nAlternate 1 stitch A, 1 stitch MC to the end of the round.", "40*3", yarns="AMA"),
    _(R, "Rnd 1: 1 A, 2 MC.", ""),
    _(R, "Rnd 1: *M2, A1*", ""),
    _(R, "With A, knit 1 rnd.\nWith MC, knit 3 rnds.\nRep last 4 rnds once.\nKnit 2 rnds.", "40*10", yarns="AMMMAMMMMM"),
    _(F, "Join A. Knit 2 rows.\nWith MC, work 2 rows in st st.\nWith A, knit 2 rows.\nBreak A and cont in MC only.\nWork 2 rows in st st.", "40*8", yarns="AAMMAAMM"),
    _(F, "With A, k 1 row.\nBreak A.\nP 1 row.", "40*2", yarns="AM"),
    _(F, "Work 2 rows in A.\nWork 2 rows.", "40*4"),
    _(F, "Change to A. Work 2 rows.\nDec 1 st at each end of next row.\nChange to MC and bind off.", "40*2 38 0", yarns="AAAM"),
    _(R, "Next rnd: K20 with A, k20 with MC.\nKnit 1 rnd in MC.\nJoin A and bind off.", "40*2 0", yarns="AMA"),
    _(R, "*With A, knit 1 rnd. With MC, knit 1 rnd; rep from * twice.\nBind off.", "40*6 0", yarns="AMAMAMM"),
    _(R, "Rnd 1: With A, *k1, sl 1; rep from * around.\nRnd 2: With A, knit.\nRnd 3: With MC, *sl 1, k1; rep from * around.\nRnd 4: With MC, knit.\nRep rnds 1-4 once.", "40*8", yarns="AAMMAAMM"),
    # --- needle ---
    _(R, "Change to 5 mm needle.\nKnit 2 rnds.\nChange back to 4 mm needle and knit 2 rnds.", "40*4", needles="5*2 4*2"),
    _(SMALL, "Change to 4 mm needles.\nKnit 4 rnds.\nChange to smaller needles.\nWork 2 rnds in k2, p2 rib.\nChange to larger needles and knit 1 rnd.", "40*7", needles="4*4 3.5*2 4"),
    _(SMALL, "Change to 4 mm needles and knit 2 rnds.\nWith 3.5 mm needles, bind off.", "40*2 0", needles="4*2 3.5"),
    _(SMALL, "Change to needles one size larger.\nKnit 2 rnds.", ""),
    # --- from where a length is measured ---
    _(F, "Place a marker at each end of last row.\nWork 6 rows even.\nBind off 2 sts at beg of next 2 rows.\nCont straight until work measures 5 cm from markers, ending with a WS row.", "40*6 38 36*7"),
    _(F, "Bind off 3 sts at beg of next 2 rows.\nCont even until armhole measures 5 cm, ending with a WS row.", "37 34*13"),
    _(R, "Next rnd: K8, place next 10 sts on a holder for sleeve, cast on 4 sts, k to end.\nKnit until piece measures 5 cm from underarm.", "34*14 | 34*15", held="10"),
    _(R, "Dividing rnd: K8, place next 10 sts on waste yarn, cast on 4 sts, k to end.\nKnit 3 rnds.\nKnit until body measures 5 cm from dividing rnd.", "34*14 | 34*15", held="10"),
    _(RIBR, "Knit 2 rnds.\nKnit until piece measures 5 cm above rib.", "40*14"),
    _(RIBR, "Knit 2 rnds.\nKnit until piece measures 5 cm from end of rib.", "40*14"),
    _(RIBR, "Knit 2 rnds.\nKnit until piece measures 5 cm.", "40*10"),
    _(RIBR, "Knit 2 rnds.\nKnit until piece measures 5 cm, including rib.", "40*10"),
    _(F, "Work even until piece measures 5 cm from cast-on edge.\nDec 1 st at each end of next row.\nWork even until piece measures 10 cm from cast-on edge.", "40*10 38*14"),
    _(F, "Work 5 cm even.\nDec 1 st at each end of next row.\nWork 5 cm even.", "40*14 38*15"),
    _(F, "Dec row (RS): K1, ssk, k to last 3 sts, k2tog, k1.\nWork 3 rows.\nWork even until piece measures 5 cm from dec row.", "38*14 | 38*15"),
    _(R, "Knit 10 rnds.\nRep the last 10 rnds until piece measures 20 cm from cast-on.", "40*52 | 40*50 | 40*60"),
    _(F, "Dec 1 st at each end of every 6th row until piece measures 10 cm.", "40*5 38*6 36*6 34*6 32 | 40*4 38*6 36*6 34*6 32*2"),
    _(F, "Inc 1 st at each end of every 4th row to 46 sts, then work even until piece measures 10 cm.", "40*3 42*4 44*4 46*13 | 40*2 42*4 44*4 46*14"),
    _(F, "Inc 1 st at each end of next and every foll 4th row to 46 sts.\nWork even until piece measures 10 cm from cast-on.", "42*4 44*4 46*16"),
    _(R, "Knit until piece measures 2 in.\nKnit until piece measures 4 in.", "40*24"),
    _(R, "Knit for 2 in, then knit until piece measures 4 in from beg.", "40*24"),
    _(R, "Knit 1 inch more.\nKnit 1 more inch.", "40*14"),
    _(R, "Knit until piece measures 5 cm.\nPurl 1 rnd.\nKnit until piece measures 5 cm from purl rnd.", "40*24 | 40*25", {11: "p40", 12: "k40"}),
    _(R, "Knit until piece measures 5 cm.\nNext rnd: Purl.\nKnit 5 cm more.\nKnit until piece measures 15 cm from cast-on.", "40*38"),
    _(F, "Work even until piece measures 1 cm.\nDec 1 st at each end of next row.", "38"),
    _(F, "Work even until piece measures same length as given.\nDec 1 st at each end of next row.", ""),
    _("", "== back\nCast on 40 sts. Work flat.\nWork 4 rows in st st.\n== yoke\nWork even until piece measures 5 cm.", "40*14"),
    _("", "== body\nCast on 40 sts.\nJoin in the round.\nKnit 14 rnds.\n== border\nPurl 1 rnd.\nKnit until border measures 5 cm.", "40*28", {15: "p40"}),
    _("", "== back\nCast on 40 sts. Work flat.\nWork 4 rows in st st.\nBind off.\n== pocket\nCast on 20 sts. Work flat.\nWork even in st st until piece measures 5 cm.\nBind off.", "40*4 0 20*14 0"),
    _("", "== body\nCast on 40 sts.\nJoin in the round.\nKnit 8 rnds.\n== upper part\nKnit until piece measures 5 cm from cast-on edge.", "40*14"),
    _("", "== body\nCast on 40 sts.\nJoin in the round.\nKnit 8 rnds.\n== upper part\nKnit for 5 cm.", "40*22"),
    _("", "== body\nCast on 40 sts.\nJoin in the round.\nKnit 8 rnds.\n== upper part\nPurl 2 rnds.\nKnit until piece measures 5 cm from beg of upper part.", "40*22"),
    # --- the side of the last row ---
    _(F, "Knit 3 rows, ending with a RS row.\nNext row (WS): Purl.", "40*4", {1: "k40", 4: "p40"}, sides="RWRW"),
    _(F, "Work even until piece measures 4 cm, ending with a WS row.\nNext row (RS): K1, ssk, k to end.", "40*6 39 | 40*8 39", {-1: "k1 ssk k37"}),
    _(F, "Work even until piece measures 4 cm, ending with a RS row.\nDec 1 st at each end of next row and foll 2 alt rows.", "40*7 38*2 36*2 34"),
    _(F, "Work 3 rows.\nNext row (RS): Knit.", "40*4", told="by the rows so far one of the other side comes next"),
    _(F, "Dec 1 st at each end of next 3 rows, ending with a WS row.", ""),
    _(F, "Bind off 2 sts at beg of next 2 rows, then work 3 rows even.\nNext row (WS): P2tog, p to end.", "38 36*4 35", {6: "p2tog p34"}, sides="RWRWRW"),
    _(F, "Work 1 row. Bind off 2 sts at beg of next row.", "40 38", {2: "bo2 p38"}),
    _(F, "Work 3 rows.\nNext row: Bind off 3 sts, work to end.\nNext row: Bind off 3 sts, work to end.", "40*3 37 34", {4: "bo3 p37", 5: "bo3 k34"}),
    _(F, "Work 5 rows, ending after a RS row.\nKnit 1 row for fold line.\nBeg with a k row, work 2 rows in st st.", "40*8", {6: "k40", 7: "k40", 8: "p40"}, sides="RWRWRWRW"),
    _(F, "Work even until piece measures 5 cm, ending with RS facing for next row.\nNext row (RS): Purl.", "40*11", {-1: "p40"}),
    _(F, "Work even until piece measures 5 cm, ending with WS facing for next row.\nNext row (WS): Knit.", "40*10 | 40*12", {-1: "k40"}),
    _(F, "Dec 1 st at each end of every RS row 3 times.\nWork 2 rows even, ending with a RS row.", "38*2 36*2 34*3"),
    # --- sizes ---
    _(F, "Dec 1 st at each end of every 4th row 0 (2, 3) times, then every 6th row 3 (0, 1) times.", "40*3 38*4 36 | 40*2 38*4 36*2 | 40*2 38*4 36", **THREE),
    _(F, "Dec 1 st at each end of every 4th row 0 (2, 3) times, then every 6th row 3 (0, 1) times.", "40*5 38*6 36*6 34 | 40*4 38*6 36*6 34*2 | 40*4 38*6 36*6 34", sizes="S (M, L)", size="S"),
    _(F, "Bind off 4 (-, 5) sts at beg of next 2 rows.\nWork 2 rows.", "40*2", **THREE),
    _(F, "Size S: Work 2 rows.\nSizes M and L: Dec 1 st at each end of next row. Work 1 row.\nAll sizes: Work 2 rows even.", "38*4", **THREE),
    _(F, "Size S: Work 2 rows.\nSizes M and L: Dec 1 st at each end of next row. Work 1 row.\nAll sizes: Work 2 rows even.", "40*4", sizes="S (M, L)", size="S"),
    _(F, "For size L only: Bind off 2 sts at beg of next 2 rows.\nBind off 3 sts at beg of next 2 rows.", "37 34", **THREE),
    _(F, "For size L only: Bind off 2 sts at beg of next 2 rows.\nBind off 3 sts at beg of next 2 rows.", "38 36 33 30", sizes="S (M, L)", size="L"),
    _(F, "Work 2 (4, –) rows even.\nDec 1 st at beg of next row.", "39", sizes="S (M, L)", size="L"),
    _(F, "Next row: K10 (12, 0), k2tog, k to end.", "39", {1: "k2tog k38"}, sizes="S (M, L)", size="L"),
    _(F, "Next row: *K8, k2tog; rep from * 1 (2, 0) more times, k to end.", "39", {1: "k8 k2tog k30"}, sizes="S (M, L)", size="L"),
    _(F, "Next row: *K8, k2tog; rep from * 1 (2, 0) more times, k to end.", "37", {1: "k8 k2tog " * 3 + "k10"}, **THREE),
    _(F, "Dec 0 (2, 4) sts evenly across next row.\nWork 1 row.", "40*2", sizes="S (M, L)", size="S"),
    _(F, "Inc 1 st at each end of next row and foll 0 (1, 2) alt rows.", "42", sizes="S (M, L)", size="S"),
    _(F, "Inc 1 st at each end of next row and foll 0 (1, 2) alt rows.", "42*2 44*2 46", sizes="S (M, L)", size="L"),
    _(F, f"{DEC}Next row: Purl.\nRep last 2 rows 0 (1, 2) times more.\nKnit 1 row.", "38*3", sizes="S (M, L)", size="S"),
    _(F, "Size S only: Knit 2 rows.\nSize M only: Knit 4 rows.\nSize L only: Knit 6 rows.\nPurl 1 row.", "40*5", {5: "p40"}, **THREE),
    _(F, "Sizes S and M: Work 2 rows even.\nSize L: Dec 1 st at each end of next row, work 1 row.\nBind off.", "38*2 0", sizes="S (M, L)", size="L"),
    _(F, "Bind off 3 (3, 0) sts at beg of next 2 rows, then 0 (2, 2) sts at beg of foll 2 rows.", "37 34 32 30", **THREE),
    _(F, "Bind off 3 (3, 0) sts at beg of next 2 rows, then 0 (2, 2) sts at beg of foll 2 rows.", "40 40 38 36 | 38 36", sizes="S (M, L)", size="L"),
    _(F, "Knit 2 (0, 4) rows.\nNext row: Purl 1 row.\nRep last row 0 (0, 1) times.", "40", {1: "p40"}, **THREE),
    _(F, "Size L: K 2 rows. P 2 rows.\nAll sizes: Bind off.", "0", **THREE),
    _(F, "Work 4 rows.\nSize M: Dec 1 st at each end of next row. Work 3 rows.\nRep last 4 rows once.", "40*4 38*4 36*4", **THREE),
    # --- markers ---
    _(MARKED, "Next rnd: K to marker, remove marker, k to end.\nNext rnd: K to 2 sts before marker, k2tog, sm, k to end.", ""),
    _(MARKED, "Next rnd: K5, pm, k to marker, sm, k to end.\nNext rnd: K to first marker, sm, k2tog, k to end.\nNext rnd: K to 2nd marker, sm, k2tog, k to end.", "40 39 38", {2: "k5 k2tog k33", 3: "k19 k2tog k18"}),
    _(MARKED, "Next rnd: *K1, k2tog, k to 3 sts before marker, ssk, k1, sm; rep from * once.\nKnit 1 rnd.\nRep last 2 rnds once.", "36*2 32*2"),
    _(MARKED, "Dec rnd: K to 3 sts before m, k2tog, k1, sm, k1, ssk, k to end.\nKnit 1 rnd.\nRep last 2 rnds until 34 sts rem.", "38*2 36*2 34 | 38*2 36*2 34*2"),
    _(MARKED, "Next rnd: K to marker, sm, m1, k to end.\nNext rnd: K to 1 st before marker, m1, k1, sm, k to end.", "41 42", {1: "k20 m1 k20", 2: "k19 m1 k22"}),
    _(F, "Next row: K10, pm, k20, pm, k10.\nNext row: Purl.\nNext row: K to first m, sm, ssk, k to 2 sts before 2nd m, k2tog, sm, k to end.\nNext row: Purl.", "40*2 38*2", {3: "k10 ssk k16 k2tog k10"}),
    _(F, "Next row: K10, pm, k to end.\nNext row: P to marker, sm, p2tog, p to end.", "40 39", {2: "p30 p2tog p8"}),
    _(F, "Next row: K10, pm, k to end.\nWork 2 rows.\nNext row: P to 2 sts before marker, p2tog, sm, p to end.", "40*3 39", {4: "p28 p2tog p10"}),
    _(MARKED, "Next rnd: K2tog, k to marker, sm, k2tog, k to end.\nRemove markers.\nNext rnd: K2tog, k to end.", "38 37"),
    _(MARKED, "Dec 4 sts evenly in next rnd.\nKnit 1 rnd.", "36*2"),
    _(MARKED, "Next rnd: K to marker, sm, cast on 4 sts, k to end.\nNext rnd: K to marker, sm, k2tog, k to end.", "44 43", {2: "k20 k2tog k22"}),
    _(MARKED, "Next rnd: Bind off 5 sts, k to marker, sm, k to end.\nNext row: P to marker, sm, p to end.", "35*2"),
    _(MARKED, "Next rnd: K to marker, sm, k5, pm, k to end.\nNext rnd: K to marker, remove marker, k2tog, k to end.\nNext rnd: K to marker, sm, k2tog, k to end.", "40 39 38", {2: "k20 k2tog k18", 3: "k24 k2tog k13"}),
    # --- charts and panels ---
    _(R, "Work chart peak.", "40*2", yarns="AA"),
    _("Cast on 42 sts.\nJoin in the round.\nKnit 4 rounds.\n", "Work chart peak.", ""),
    _(R, "Knit 1 rnd.\nWork rnds 1-2 of chart peak twice, then rnd 1 once more.\nKnit 1 rnd.", "40*7", yarns="MAAAAAM"),
    _(R, "Next rnd: K18, work rnd 1 of chart peak over next 4 sts, k to end.\nNext rnd: K18, work rnd 2 of chart peak over next 4 sts, k to end.", "40*2", yarns="AA"),
    _("Cast on 42 sts.\nJoin in the round.\nKnit 4 rounds.\n", "Next rnd: K1, work chart peak over next 40 sts, k1.\nKnit 2 rnds.", "42*3", yarns="AMM"),
    _(R, "Work chart peak over next 20 sts, k to end.\nKnit 1 rnd.", "40*2 | 40*3"),
    _(F, "Next row: K10, p4, c4f, p4, k to end.\nNext row: K the knits and p the purls.", "40*2"),
    _(F, "Row 1 (RS): K18, p4, k to end.\nRow 2: P18, k4, p to end.\nRep last 2 rows once.\nDec 1 st at each end of next row.", "40*4 38", {4: "p18 k4 p18"}),
    # --- even changes ---
    _(F, "Next row: K, inc 8 sts evenly across.\nNext row: P, dec 8 sts evenly across.", "48 40"),
    _(R, "Knit 1 rnd, inc 4 sts evenly.\nRep last rnd once.", "44 48"),
    _(R, "Knit 1 rnd, dec 4 sts evenly.\nKnit 3 rnds.\nRep last 4 rnds twice.", "36*4 32*4 28*4"),
    _(R, "Dec 4 sts evenly on next and every foll 3rd rnd 3 times.", "36*3 32*3 28*3 24 | 36*3 32*3 28"),
    _(R, "Dec 4 sts evenly on every 3rd rnd 3 times.", "40*2 36*3 32*3 28"),
    _(F, "Work 2 rows, dec 4 sts evenly in last row.", "40 36"),
    _(R, "Work 1 round in k1, p1 rib, inc 4 sts evenly.", ""),
    _(R, "Rib around, inc 4 sts evenly.", ""),
    _(RIBR, "Rib around, inc 4 sts evenly.", "44"),
    _(F, "P across, dec 4 sts evenly spaced. 36 sts.", "36"),
    _(F, "Work in garter st for 3 rows.\nWork 1 row in st st, inc 4 sts evenly.", "40*3 44", {4: "p5 m1p p10 m1p p10 m1p p10 m1p p5"}),
    _(F, "Knit around until piece measures 5 cm.", ""),
    _(F, "Cont around in st st for 5 cm.", ""),
    _(R, "Cont around in st st for 2 cm.", "40*6"),
    _(F, "Work 4 rows in k2, p2 rib, inc 2 sts evenly across last row.\nWork 2 rows in st st.", "40*3 42*3"),
    # --- while something else goes on ---
    _(F, "Dec 1 st at each end of every other row until piece measures 5 cm.", "40 38*2 36*2 34*2 32*2 30 | 38*2 36*2 34*2 32*2 30*2"),
    _(F, "Work 10 rows even, AT THE SAME TIME dec 1 st at each end of every 4th row.", "40*3 38*4 36*3 | 40*2 38*4 36*4"),
    _(F, "Work in st st for 8 rows, at the same time inc 1 st at each end of next and every foll 4th row.", "42*4 44*4"),
    _(F, "Cont in st st for 8 rows, dec 1 st at each end of 3rd and foll 4th row.", "40*2 38*4 36*2"),
    _(F, "Cont in st st for 8 rows, at the same time dec 1 st at each end of the 5th row.", "40*4 38*4"),
    _(R, "Knit 12 rnds, dec 1 st at beg of every 3rd rnd.", "40*2 39*3 38*3 37*3 36"),
    _(F, "Cont in st st until piece measures 5 cm, at the same time dec 1 st at each end of 4th row.", "40*3 38*7"),
    _(F, "Dec 1 st at each end of next and every foll alt row, and at the same time when 34 sts rem, change to A.", ""),
    # --- bound off amid a row ---
    _(MARKED, "Next rnd: K15, bind off 10 sts removing marker, k to end.\nNext rnd: K to marker, k to end.", ""),
    _(MARKED, "Next rnd: K15, bind off 10 sts, removing marker, k to end.", "30"),
    _(R, "On next rnd bind off first 5 sts, k until there are 10 sts on right-hand needle (front), bind off next 10 sts, k until there are 10 sts after bound-off sts (back), bind off last 5 sts.", "20"),
    _(R, "Next rnd: Bind off 5 sts, k until 5 sts remain, k5.", "35", {1: "bo5 k35"}),
    _(R, "Next rnd: Bind off 5 sts, k until 5 sts remain, bind off these.", "30"),
    _(R, "Work on these 30 sts only for 4 rounds.", ""),
    _(R, "Work even for 4 rounds, ending 5 sts before the marker.\nBind off 10 sts, k to end.", "40*4 30"),
    # --- stitches on hold ---
    _(F, "Next row: K15, turn and leave rem 25 sts on a holder.\nWork 3 rows on these 15 sts.\nBind off.\nWith RS facing, rejoin yarn to held sts, bind off 10 sts, k to end.\nWork 3 rows.\nBind off.", "15*4 0 15*4 0", held="0"),
    _(F, "Next row: K18, bind off 4 sts, k to end.\nWorking on last 18 sts only, work 3 rows.\nBind off.\nWith WS facing, rejoin yarn to rem 18 sts.\nWork 3 rows.\nBind off.", "36 18*3 0 18*3 0", held="0"),
    _(F, "Place first 10 sts on a holder, k to end.\nWork 3 rows.", "30*4", held="10"),
    _(F, "Next row: K to last 10 sts, place last 10 sts on a holder.\nNext row: P to end.", "30*2", held="10"),
    _(F, "Next row: K20, place these 20 sts on a holder, k20.\nWork 3 rows.", "40 20*3 | 20*4", held="20"),
    _(R, "Work in stripes of 1 rnd A, 1 rnd MC.\nKnit 3 rnds.\nNext rnd: K10, place next 20 sts on a holder, k to end.\nKnit 2 rnds.", "40*3 20*3", yarns="AMAMAM", held="20"),
    _(R, "Next rnd: K10, place next 8 sts on waste yarn for thumb, k to end.\nKnit 3 rnds.\nBind off.\nReturn 8 held sts to needle.\nJoin in the round.\nKnit 4 rnds.\nBind off.", "32*4 0 8*4 0", held="0"),
    _(R, "Next rnd: K10, place next 8 sts on waste yarn for thumb, k to end.\nBind off.\nReturn 8 held thumb sts to needle and pick up and k 2 sts.\nJoin in the round.\nKnit 4 rnds.", "32 0 10*4 | 32 0 10 10*4", held="0"),
    _(F, "Next row: K20, turn.\nWork 3 rows on these 20 sts only.\nBind off.\nRejoin yarn to rem sts.\nKnit 1 row.", "20*4 0 20 | 40*4 20 20", held="0"),
    _(F, "Next row: K18, hold rem 22 sts for front.\nWork 3 rows.\nBind off.\nRejoin yarn to front with RS facing.\nWork 2 rows.", "18*4 0 22*2", held="0"),
    _(F, "Next row: K18, hold rem 22 sts for front.\nWork 3 rows.\nBind off.\nReturn to the other sts, rejoin yarn with RS facing.\nWork 2 rows.", "18*4 0 22*2", held="0"),
    _(R, "Next rnd: K10, place next 20 sts on a holder for sleeve, k to end.\nBind off.\nKnit up 3 sts from the underarm, knit the sleeve, knit up 3 more.\nJoin in the round.\nKnit 2 rnds.", "20 0 26*3", held="0"),
    # --- short rows ---
    _(F, "Row 1: K30, turn.\nRow 2: P20, turn.\nRow 3: K to end.\nRow 4: P to end.", "40*4"),
    _(F, "Next 2 rows: Work to last 5 sts, turn.\nNext 2 rows: Work to last 10 sts, turn.\nRep last 2 rows once.\nWork 1 row over all sts.", "40*7"),
    _(F, "Short row 1 (RS): K35, turn.\nShort row 2 (WS): P30, turn.\nNext row: K to end.\nNext row: P to end.\nRep the last 2 short rows once.", "40*6", {5: "k35 turn rest rest rest rest rest"}),
    _(F, "Short row 1 (RS): K35, turn.\nShort row 2 (WS): P30, turn.\nRep the last 2 short rows once.", "40*4"),
    _(F, "Row 1: K to last 4 sts, w&t.\nRow 2: P to last 4 sts, w&t.\nRow 3: K to last 8 sts, w&t.\nRow 4: P to last 8 sts, w&t.\nRow 5: K to end.\nRow 6: P to end.\nBind off.", "40*6 0"),
    _(R, "Next rnd: K30, turn.\nNext row: P20, turn.\nNext row: K to end of rnd.\nKnit 2 rnds.", "40*5"),
    _(HEEL, "Row 1: K11, ssk, k1, turn.\nRow 2: Sl 1, p5, p2tog, p1, turn.\nRow 3: Sl 1, k6, ssk, k1, turn.\nRow 4: Sl 1, p7, p2tog, p1, turn.", "17 16 15 14"),
    _(HEEL, "Row 1: K11, ssk, k1, turn.\nRow 2: Sl 1, p5, p2tog, p1, turn.\nRow 3: Sl 1, k6, ssk, k1, turn.\nRow 4: Sl 1, p7, p2tog, p1, turn.\nCont in this way, working 1 more st before dec, until all sts have been worked.", "17 16 15 14 13 12"),
    _(F, "Work to last 6 sts, turn.\nWork to last 6 sts, turn.\nWork to last 12 sts, turn.\nWork to last 12 sts, turn.\nWork to end.\nBind off.", "40*5 0"),
    # --- parts of their own ---
    _("", "== left front\nCast on 20 sts. Work flat.\nWork 4 rows in st st.\nBind off 4 sts at beg of next row.\nWork 3 rows even.\nBind off.\n== right front\nWork as for left front, reversing shaping.", "20*4 16*4 0 20*5 16*4 0 | 20*4 16*4 0 20*5 16*3 0 | 20*4 16*4 0 20*3 16*5 0 | 20*4 16*4 0 20*3 16*4 0"),
    _("", "== first sleeve\nCast on 20 sts.\nJoin in the round.\nKnit 4 rnds.\nBind off.\n== second sleeve\nWork as for first sleeve.", "20*4 0 20*4 0"),
    _("", "== front\nCast on 20 sts. Work flat.\nWork 4 rows in st st.\nDec 1 st at beg of next row.\nWork 3 rows.\nBind off.\nMake 2.", ""),
    _("", "== pocket\nCast on 20 sts. Work flat.\nWork 4 rows in st st.\nBind off.\nMake 2.", "20*4 0 20*4 0 | 20*4 0"),
    _("", "== thumb\nCast on 12 sts.\nJoin in the round.\nKnit 5 rnds.\nNext rnd: K2tog around.\nBreak yarn, draw through rem sts and fasten off.\n== finger\nCast on 12 sts.\nJoin in the round.\nKnit 7 rnds.\nWork as for thumb.", ""),
    _("", "== thumb\nCast on 12 sts.\nJoin in the round.\nKnit 5 rnds.\nNext rnd: K2tog around.\nBreak yarn, draw through rem 6 sts and fasten off.\n== finger\nCast on 12 sts.\nJoin in the round.\nKnit 7 rnds.\nNext rnd: K2tog around.\nFasten off as for thumb.", "12*5 6 0 12*7 6 0 | 12*5 0 12*7 0"),
    _("", "== thumb\nCast on 12 sts.\nJoin in the round.\nKnit 5 rnds.\nNext rnd: K2tog around.\nBreak yarn, draw through rem sts.\n== second thumb\nWork as for thumb.", "12*5 6 0 12*5 6 0 | 12*5 6 12*5 6"),
    _("", "== left mitten\nCast on 20 sts.\nJoin in the round.\nKnit 4 rnds.\nNext rnd: K3, place next 4 sts on waste yarn, cast on 4 sts, k to end.\nKnit 2 rnds.\nBind off.\n== right mitten\nWork as for left mitten to thumb.\nNext rnd: K to last 7 sts, place next 4 sts on waste yarn, cast on 4 sts, k to end.\nKnit 2 rnds.\nBind off.", "20*4 20*3 0 20*4 20*3 0"),
    _("", "== back\nCast on 40 sts. Work flat.\nWork 6 rows in st st.\nBind off 4 sts at beg of next 2 rows.\nWork 4 rows.\nBind off.\n== front\nWork as for back to armholes.\nBind off 4 sts at beg of next 2 rows.\nWork 2 rows.\nBind off.", "40*6 36 32*5 0 40*6 36 32*3 0"),
    _("", "== back\nCast on 40 sts. Work flat.\nWork 6 rows in st st.\nDec 1 st at each end of next row.\nWork 3 rows.\nBind off.\n== front\nWork as for back until 38 sts rem.\nWork 1 row.\nBind off.", "40*6 38*4 0 40*6 38*2 0"),
    # --- edges ---
    _(F, "Dec 1 st at beg of next row and at same edge on foll 2 rows.", "39 38 37", {1: "k1 dec k37", 2: "p36 dec p1", 3: "k1 dec k35"}),
    _(F, "Inc in first and last st of next row.\nWork 1 row.\nRep last 2 rows twice.", "42*2 44*2 46*2"),
    _(F, "K2tog at beg of next 4 rows.", "39 38 37 36"),
    _(F, "K2tog at each end of next row.", "38"),
    _(F, "Bind off 5 sts at beg of next 4 rows. Bind off rem sts.", "35 30 25 20 0"),
    _(F, "Bind off 5 sts at beg of next 4 rows. Place rem 20 sts on a holder.", "35 30 25 20", held="20"),
    _(F, "Bind off 5 sts at beg of next 2 rows and 6 sts at beg of foll 2 rows. 18 sts rem.", "35 30 24 18"),
    _(F, "Bind off 5 sts at beg of next 2 rows and 6 sts at beg of foll 2 rows. 16 sts rem.", ""),
    _(F, "Dec 1 st at end of next row and at beg of foll row.", "39 38", {1: "k37 dec k1", 2: "p1 dec p36"}),
    _(F, "Bind off 3 sts at beg of next and foll alt row, then dec 1 st at same edge on next 2 alt rows.", "37 37 34 34 33 33 32 | 37 37 34 34 33 33 32 32"),
    _(F, "Bind off 4 sts at beg of next row, work to end.\nWork 1 row.\nDec 1 st at beg of next row.\nWork 1 row.\nRep last 2 rows twice.", "36*2 35*2 34*2 33*2"),
    _(F, "Cast on 5 sts at beg of next 2 rows, working these sts in st st.\nWork 2 rows even.", "45 50*3"),
    _(F, "Next row: K2, yo, k to last 2 sts, yo, k2.\nNext row: K2, p to last 2 sts, k2.\nRep last 2 rows once.", "42*2 44*2", {3: "k2 yo k38 yo k2", 4: "k2 p40 k2"}),
    _(F, "Next row: Bind off 10 sts, k to last 10 sts, bind off last 10 sts.\nWith WS facing, rejoin yarn to rem 20 sts and p 1 row.", "20*2"),
    _(F, "Next row: K15, bind off next 10 sts, k to end.\nNext row: P15, cast on 10 sts, p15.\nWork 2 rows.", "30 40*3"),
)
