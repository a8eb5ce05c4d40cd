"""Short stretches whose words are dressed otherwise, or that stand at the edge of what they look like, each with its meaning.

The meanings were written by hand before any of them was read by the program. Source: common practice. The form is that of
`stretches`; several stretches that look alike stand below each other. It is long because it is a table.
"""

from __future__ import annotations

from tests.plan.stretches import DEC, DECR, MARKED, RIBR, THREE, B, F, R, Stretch

SOCK = "Cast on 40 sts.\nJoin in the round.\nKnit 4 rounds.\nArrange sts: 20 sts on N1, 20 sts on N2.\n"
LEFT = (
    "== left front\nCast on 20 sts. Work flat.\nWork 4 rows in k1, p1 rib.\nWork 4 rows in st st.\nShape armhole: Next row (RS): Bind off 3 sts, k to end.\n"
    "P 1 row.\nNext row (RS): K1, ssk, k to end.\nP 1 row.\nBind off.\n== right front\nCast on 20 sts. Work flat.\nWork 4 rows in k1, p1 rib.\n"
)


def _(before: str, lines: str, means: str, rows: dict[int, str] | None = None, **more: str) -> Stretch:
    return Stretch(before=before, lines=lines, means=means, rows=rows or {}, **more)


# fmt: off
DRESSED: tuple[Stretch, ...] = (
    # --- lists of sizes, and numbers in brackets that are none ---
    _(F, "Dec 1 st at each end of next and every foll 2nd/4th/6th row 2 times.", "38*4 36*4 34", **THREE),
    _(F, "Dec 1 st at each end of every 2nd-4th-6th row 2 times.", "40*3 38*4 36 | 40*2 38*4 36*2", **THREE),
    _(R, "Knit 2/3/4 rnds, purl 1/2/2 rnds.", "40*5", {3: "k40", 4: "p40"}, **THREE),
    _(R, "Knit 2-3-4 rnds (no shaping).", "40*3", **THREE),
    _(F, "Rows 2-3: Knit.", "40*2"),
    _(R, "*K8, k2tog; rep from * around (36, 36, 36 sts).", "36", **THREE),
    _(R, "Work rnds as follows: K10 [12] 14, k2tog, k to end.", "39", {1: "k12 k2tog k26"}, **THREE),
    _(R, "K10, [k2tog] 2 times, k to end.", "38", {1: "k10 k2tog k2tog k26"}, **THREE),
    _(R, "K10, [k2tog, k2] 2 (3, 4) times, k to end.", "37", {1: "k10 k2tog k2 k2tog k2 k2tog k2 k18"}, **THREE),
    _(R, "For Medium only, knit 2 rnds.\nPurl 1 rnd.", "40*3", {1: "k40", 3: "p40"}, **THREE),
    _(R, "For all sizes except Medium, knit 2 rnds.\nPurl 1 rnd.", "40", {1: "p40"}, **THREE),
    _(R, "For Small and Large, knit 2 rnds once more.\nPurl 1 rnd.", "40", {1: "p40"}, **THREE),
    _(R, "For Large: work as for Medium.\nPurl 1 rnd.", "40 |", {1: "p40"}, **THREE),
    _(R, "For the two larger sizes, purl 2 rnds.\nKnit 1 rnd.", "40*3", {1: "p40", 3: "k40"}, **THREE),
    _(R, "For the largest two sizes: knit 1 rnd. For the smallest: purl 1 rnd.\nKnit 1 rnd.", "40*2", {1: "k40"}, **THREE),
    _(R, "Dec rnd every 4 (6, 8) rnds 2 (1, 0) times.", ""),
    _(f"{R}{DECR}", "Rep dec rnd every 2 (4, 6)th rnd 2 (1, 0) times.", "38*3 36", **THREE),
    _(R, "Knit - (2, 4) rnds.\nPurl 1 rnd.", "40*3", **THREE),
    _(R, "Knit 2 (-, 4) rnds.\nPurl 1 rnd.", "40", {1: "p40"}, **THREE),
    # --- two lots of work on one line ---
    _(R, "Knit 2 rnds. Work 3 rnds in k1, p1 rib.", "40*5", {2: "k40", 3: "k1 p1 " * 20}),
    _(R, "Work 2 rnds in k1, p1 rib. Work 2 rnds in pattern.", "40*4", {4: "k1 p1 " * 20}),
    _(R, "Purl 1 rnd. Work 3 rnds even.", "40*4"),
    _(F, "Knit 2 rows. Work 2 rows in st st, ending with a WS row.", "40*4", {3: "k40", 4: "p40"}),
    _(R, "Purl 2 rnds, knit 2 rnds, 3 times.", "40*12", {3: "k40", 5: "p40"}),
    _(R, "Purl 1 rnd, then knit 2 rnds, twice.", ""),
    # --- words that dress, and words that change ---
    _(F, f"{DEC}Work 3 rows without shaping.\nRepeat the previous 4 rows another 2 times.", "38*4 36*4 34*4"),
    _(F, f"{DEC}Work 3 rows.\nRepeat the previous 4 rows until you have worked them 2 times in all.", "38*4 36*4"),
    _(F, f"{DEC}Work 3 rows.\nRepeat the previous 4 rows a second time.", "38*4 36*4"),
    _(F, f"{DEC}Work 1 row.\nRepeat the previous 2 rows for a total of 6 rows.", "38*2 36*2 34*2"),
    _(F, f"{DEC}Work 1 row.\nRepeat the previous 2 rows 6 times less 2.", ""),
    _(F, f"{DEC}Work 1 row.\nRepeat the previous row only 2 additional times.", "38*4", {3: "k38"}),
    _(F, f"{DEC}Work 1 row.\nDo not repeat the previous 2 rows.\nKnit 1 row.", "38*3 |"),
    _(F, f"{DEC}Work 1 row.\nRepeat the last 2 rows until only 34 sts remain, ending after completing a RS row.", "38*2 36*2 34"),
    _(F, f"{DEC}Work 1 row.\nRepeat the last 2 rows while more than 34 sts remain.", "38*2 36*2 34*2"),
    _(F, f"{DEC}Work 1 row.\nRepeat the last 2 rows until fewer than 36 sts remain.", "38*2 36*2 34*2"),
    _(F, "Carry on in st st until piece measures 5 cm, carrying the yarn loosely.\nKnit 1 row.", "40*10 40", {-1: "k40"}),
    _(F, "Knit to row end, turn work.\nPurl to row end.", "40*2", {1: "k40", 2: "p40"}),
    _(F, "K20, turn work.\nPurl to row end.", "40*2 | 20*2"),
    _(F, "K to last 2 sts, k2tog, turn.\nP to last 2 sts, p2tog, turn.", "39 38"),
    _(R, "Knit to 2 sts before end of rnd, k2tog.\nKnit until 3 sts remain unworked, k3tog.", "39 37"),
    # --- two at the same time ---
    _(F, "Dec 1 st at each end of next row. At the same time, change to A.\nWork 1 row.", "38*2", yarns="AA"),
    _(F, "Dec 1 st at each end of every RS row 3 times, at the same time working 2 rows in A, then 2 rows in MC.", "38 38 36 36 34 |"),
    _(F, "Inc 1 st at each end of next and foll alt row, at the same time dec 5 sts evenly on the first row.", ""),
    _(R, f"{DECR}AT THE SAME TIME, when piece measures 5 cm, change to A.\nKnit 10 rnds.", ""),
    _(R, f"{DECR}Work dec rnd every 4th rnd, at the same time when 36 sts remain, purl 1 rnd.", ""),
    # --- dividing and holding ---
    _(R, "K8, place next 10 sts on hold, cast on 4 sts using the backward loop method, k to end.\nKnit 1 rnd.", "34*2", held="10"),
    _(R, "K8, place last 8 sts worked on hold, k to end.\nKnit 1 row.", "32*2 |", held="8"),
    _(F, "K12, place these 12 sts on a holder for left shoulder, bind off next 16 sts, k to end.\nPurl 1 row.", "24 12", {1: "k12 bo16 k12", 2: "p12"}, held="12"),
    _(F, "K12, turn and leave remaining 28 sts on a holder.\nPurl 1 row.\nKnit 1 row.", "12*3 | 40 12*2", {3: "k12"}, held="28"),
    _(F, "K12, place the remaining sts on hold for later.\nWorking on these 12 sts only, purl 1 row.", "12*2", {2: "p12"}, held="28"),
    _(F, "Place first 12 sts on a holder, join yarn to next st, k to end.\nPurl 1 row.", "28*2", held="12"),
    _(F, "Place last 12 sts on a holder, k to end.\nPurl 1 row.", "28*2 |", held="12"),
    _(F, "K12, place next 28 sts on hold, turn.\nP12.\nPlace the 28 held sts back on needle, rejoin yarn with RS facing and k to end.", "12 12 28 | 12 12 40 | 40 12 28 | 40 12 40 |"),
    _(F, "Slip first 10 sts onto a holder for left front, next 20 sts onto a second holder for back.\nK to end.", "10", held="30"),
    # --- needles of a sock ---
    _(SOCK, "Dec rnd: N1: K1, ssk, k to last 3 sts, k2tog, k1. N2: Knit.\nKnit 1 rnd.", "38*2", {1: "k1 ssk k14 k2tog k21"}),
    _(SOCK, "Rnd 1: N1: Knit to last 3 sts, k2tog, k1; N2: K1, ssk, knit to end.", "38", {1: "k17 k2tog k2 ssk k17"}),
    _(SOCK, "Rnd 1: On both needles, k1, ssk, k to last 3 sts, k2tog, k1.", "36", {1: "k1 ssk k14 k2tog k2 ssk k14 k2tog k1"}),
    _(SOCK, "Rnd 1: K1, ssk, k to last 3 sts on N1, k2tog, k1, knit across N2.", "38", {1: "k1 ssk k14 k2tog k21"}),
    _(SOCK, "Rnd 1: N1: K. N2: K1, ssk, k to last 3 sts, k2tog, k1.\nRep rnd 1 until 16 sts rem on N2.", "38 36", {2: "k20 k1 ssk k12 k2tog k1"}),
    _(SOCK, "Rnd 1: N2: K1, ssk, k to last 3 sts, k2tog, k1.\nKnit 1 rnd.", ""),
    # --- another part ---
    _(f"{LEFT}Work 4 rows in st st.\n", "Complete as for left front.", "17 17 16 16 0 |"),
    _(f"{LEFT}Work 4 rows in st st.\n", "Complete to match left front, reversing all shaping and omitting the bind-off.", ""),
    _("== back\nCast on 40 sts. Work flat.\nWork 4 rows in k1, p1 rib.\nKnit 2 rows.\nBind off.\n", "== front\nWork as for back until 2 rows fewer have been worked.", ""),
    _("== back\nCast on 40 sts. Work flat.\nWork 4 rows in k1, p1 rib.\nKnit 2 rows.\nBind off.\n", "== front\nCast on 30 sts. Work rib as for back.\nPurl 1 row.", "30*5", {1: "k1 p1 " * 15, 5: "p30"}),
    _("== back\nCast on 40 sts. Work flat.\nWork 4 rows in k1, p1 rib.\nKnit 2 rows.\nBind off.\n", "== front\nCast on 30 sts. Work 6 rows of rib as for back.\nPurl 1 row.", "30*7", {6: "k1 p1 " * 15, 7: "p30"}),
    _("== back\nCast on 40 sts. Work flat.\nWork 4 rows in k1, p1 rib.\nKnit 2 rows.\nBind off.\n", "== front\nWork as for back, but cast on 30 sts.", "30*6 0 |"),
    # --- what is a choice, a fact, or an order ---
    _(R, "If you prefer a longer body, knit 2 more rnds here.\nPurl 1 rnd.", "40", {1: "p40"}),
    _(R, "If you have 40 sts, knit 2 more rnds here.\nPurl 1 rnd.", "40*3 |"),
    _(R, "There are 40 sts; knit 2 rnds.\nPurl 1 rnd.", "40*3", {1: "k40", 3: "p40"}),
    _(R, "You will now knit 2 rnds.\nPurl 1 rnd.", "40*3", {1: "k40", 3: "p40"}),
    _(R, "2 rnds are knitted, then 1 rnd is purled.\nKnit 1 rnd.", "40*4 |"),
    _(R, "You have now knitted 4 rnds.\nPurl 1 rnd.", "40", {1: "p40"}),
    _(R, "The last rnd should be purled.\nPurl 1 rnd.", ""),
    _(R, "Skip this rnd if you are making the short version: purl 1 rnd.\nKnit 1 rnd.", "40*2 |", {1: "p40"}),
    _(f"{R}Dec rnd: *K8, k2tog; rep from * around.\n", "When all decreases are done, 20 sts remain.\nKnit 1 rnd.", ""),
    _(f"{R}Rnd 1: *K8, k2tog; rep from * around.\nRnd 2: Knit.\n", "After Rnd 1: 35 sts.\nKnit 1 rnd.", "36", told="35"),
    # --- colour and needle ---
    _(R, "Knit 1 rnd in A, then cont using MC.\nKnit 2 rnds.", "40*3", yarns="AMM"),
    _(R, "Cont using A only.\nKnit 2 rnds. With MC, purl 1 rnd. Cont in A.\nKnit 1 rnd.", "40*4", yarns="AAMA"),
    _(R, "Do not change to A yet.\nKnit 1 rnd.", "40", yarns="M"),
    _(R, "After 2 rnds, change to A.\nKnit 4 rnds.", "40*4 |", yarns="MMAA"),
    _(RIBR, "Change to 5 mm needle when 2 rnds have been worked.\nKnit 4 rnds.", ""),
    # --- length ---
    _(RIBR, "Knit until piece measures 5 cm from top of rib.\nPurl 1 rnd.", "40*15", {-1: "p40"}),
    _(R, "Knit until piece is 2 rnds shorter than 5 cm.\nPurl 1 rnd.", "40*9 |"),
    _(R, "Knit until piece measures 5 cm less than 10 cm.\nPurl 1 rnd.", "40*11 |"),
    _(R, "Knit until piece measures 5 cm, 2 in, from beg.\nPurl 1 rnd.", "40*11", {-1: "p40"}),
    _(R, "Knit 5 cm for a folded brim or 3 cm for a single one.\nPurl 1 rnd.", "40*15", {-1: "p40"}),
    _(MARKED, "Knit to m, sl m, k2tog, k to 2 sts before next marker, ssk.\nKnit 1 rnd.", "38*2 |", {1: "k20 k2tog k16 ssk"}),
    _(MARKED, "*K to 2 sts before m, k2tog, sl m; rep from * once, k to end.", "38 |"),
    _(MARKED, "Inc 1 st at each side of marker.\nKnit 1 rnd.", "42*2 |"),
    _(B, "1st row is WS.\nRow 1: Knit.\nRow 2: Purl.\nRow 3: Knit.", "40*3", {1: "k40", 2: "p40"}, sides="WRW"),
    # --- beside what is read ---
    _(R, "Knit 5 cm for a single brim or 10 cm for a folded one.\nPurl 1 rnd.", "40*15", {-1: "p40"}),
    _(R, "Knit 5 cm or 14 rnds.\nPurl 1 rnd.", "40*15", {-1: "p40"}),
    _(R, "Knit to 5 cm from the beg, then purl 1 rnd. Rep last rnd once.", "40*12", {-1: "p40", -2: "p40"}),
    _(R, "Knit 2 rnds. Work 1 rnd in k1, p1 rib. Work 2 rnds even.", "40*5", {3: "k1 p1 " * 20, 4: "k1 p1 " * 20, 5: "k1 p1 " * 20}),
    _(F, "Work 2 rows in k1, p1 rib. Dec 1 st at each end of next row. Work 1 row in pattern.", "40*2 38*2", {4: "k2 " + "p1 k1 " * 17 + "p2"}),
    _(f"{F}{DEC}", "Work 3 rows.\nRepeat the previous 2 rows another 2 times.", "38*7"),
    _(f"{F}{DEC}", "Work 3 rows.\nRep dec row on next and every subsequent 4th row until 32 sts remain, then work 2 rows.", "38*3 36*4 34*4 32*3"),
    _(f"{F}{DEC}", "Work 3 rows.\nRep dec row on every subsequent 4th row until 32 sts remain, then work 2 rows.", "38*3 36*4 34*4 32*3 | 38*6 36*4 34*4 32*3 |"),
    _(f"{F}{DEC}", "Work 1 row.\nRepeat the last 2 rows 2 more times, then the last row 3 additional times.", "38 36*2 34*5"),
    _(R, "Work 3 rnds in k2, p2 rib, then alternate 1 rnd knit and 1 rnd purl 2 times.", "40*7 |", {4: "k40", 5: "p40"}),
    _(R, "Rnd 1: Knit.\nRnd 2: Purl.\nAlternate rnds 1 and 2 until 8 rnds have been worked.", "40*8"),
    _(R, "Rnd 1: Knit.\nRnd 2: Purl.\nWork rnds 1 and 2 a total of 3 times, then rnd 1 only 2 times.", "40*8", {7: "k40", 8: "k40"}),
    _(F, "Row 1 (WS): Knit.\nRow 2 (RS): Purl.", "40*2", told="other side"),
    _(MARKED, "Next rnd: *K1, ssk, k to 3 sts before m, k2tog, k1, sl m; rep from * once more.\nKnit 1 rnd.", "36*2", {1: "k1 ssk k14 k2tog k2 ssk k14 k2tog k1"}),
    _(MARKED, "Next rnd: K to marker, k2tog, k to end.\nRep this rnd until 15 sts remain after marker.", "39 38 37 36 35"),
    _(F, "Cast off 5 sts, k until there are 10 sts on right needle after cast-off, turn and leave the rest on a holder.\nPurl 1 row.", "10*2 | 35 10", {2: "p10"}, held="25"),
    _(F, "Cast off 5 sts, k 10, turn and leave the rest on a holder.\nPurl 1 row.", "11*2 | 10*2 | 35 10 | 35 11", held="25"),
    _(F, "K10, cast off 20 sts, k to end.\nWork on the last 10 sts only: purl 1 row.\nCast off.\nRejoin yarn to the other 10 sts with WS facing and purl 1 row.", "20 10 0 10 | 20 10 10 10", {-1: "p10"}),
    _(F, "K10, cast off 20 sts, k to end.\nPurl 1 row on these 10 sts.", "20 10 |"),
    _(R, "Bind off 5 sts, k to last 5 sts, bind off 5 sts.\nWork 2 rows even.", "30*3"),
    _(R, "K5, place the last 5 sts and the first 5 sts of the rnd on scrap yarn.\nKnit 1 rnd.", "30 |", held="10"),
    _(R, "Place the last 5 sts and the first 5 sts of the rnd on scrap yarn.\nCast on 10 sts over the gap.\nKnit 1 rnd.", "40 |", held="10"),
    _(F, "Work all decreases 2 sts in from the edge.\nDec 1 st at each end of next row.\nWork all decreases 1 st in from the edge.\nDec 1 st at each end of next row.", "38 36", {1: "k2 dec k32 dec k2", 2: "p1 dec p32 dec p1"}),
    _(F, "Work all increases 2 sts in from the edge.\nDec 1 st at each end of next row.", "38", {1: "k1 dec k34 dec k1"}),
    _(R, "Change to A for the next 2 rnds only.\nKnit 4 rnds.", "40*4 |", yarns="AAMM"),
    _(R, "Using A for the purl rnds, knit 1 rnd, purl 1 rnd.", "40*2 |", yarns="MA"),
    _(RIBR, "Change to 5 mm needle for the next 2 rnds.\nKnit 4 rnds.", "40*4 |", needles="5*2 4*2"),
)
# fmt: on
