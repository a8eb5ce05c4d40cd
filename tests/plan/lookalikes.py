"""Short instructions that look alike and mean different things, each with its meaning as a knitter works it out.

The meanings were written by hand before any of the lines was read by the program. Source: common practice, where nothing else is
named. A meaning is the stitches after each row (or round) that the line works: `38 38*3 36` is one row to 38, three rows at 38,
one to 36. Several, with `|` between them, are readings between which the trade itself is divided, so that each is right. Under
`rows`, some of those rows as they are worked, from 1 (-1 is the last). A line that is refused is no misreading; one read
otherwise is. It is long because it is a table.
"""

from __future__ import annotations

from dataclasses import dataclass, field

FLAT40 = "Cast on 40 sts. Work flat.\nWork 4 rows in st st.\n"
"""The next row is a right-side row."""
FLAT42, FLAT41 = FLAT40.replace("40", "42"), FLAT40.replace("40", "41")
ROUND40 = "Cast on 40 sts.\nJoin in the round.\nKnit 4 rounds.\n"
BARE40 = "Cast on 40 sts. Work flat.\n"
MARKED = f"{ROUND40}Set-up rnd: K20, pm, k20.\n"
DEC2 = f"{ROUND40}Rnd 1: K1, k2tog, k to end.\nRnd 2: Knit.\n"
DEC_ROUND = f"{ROUND40}Dec rnd: K1, k2tog, k to last 3 sts, ssk, k1.\n"
RIB = f"{BARE40}Work 4 rows in k2, p2 rib.\n"
MOSS = "Cast on 41 sts. Work flat.\nWork 4 rows in moss st.\n"
FOUR = (
    "Cast on 40 sts. Work flat.\nRow 1 (RS): Knit.\nRow 2: Purl.\nRow 3: *K2, p2; rep from * to end.\nRow 4: *K2, p2; rep from * to end.\n"
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Lookalike:
    """An instruction with what stands before it and what it means."""

    before: str
    line: str
    means: str
    """Stitches after each row it works; empty where it must be refused."""
    rows: dict[int, str] = field(default_factory=dict)
    """Some of the rows as they are worked: stitches in their order."""
    yarns: str = ""
    """Yarn of each row, a letter each: M for the main colour, A for the other; empty where that is not the point."""
    size: str = "M"
    sizes: str = "M"


def _(before: str, line: str, means: str, rows: dict[int, str] | None = None, **more: str) -> Lookalike:
    return Lookalike(before=before, line=line, means=means, rows=rows or {}, **more)


_RIGHT = "40*2 38 38*3 36 36*3 34"
_FOURTH = "40*3 38 38*3 36 36*3 34"
THREE = {"sizes": "S (M, L)"}

# fmt: off
LOOKALIKES: tuple[Lookalike, ...] = (
    # --- which row, how often ---
    _(FLAT40, "Dec 1 st at each end of every 4th row 3 times.", f"{_FOURTH} | {_RIGHT} 34 | {_RIGHT}"),
    _(FLAT40, "Dec 1 st at each end of every 4th row until 34 sts rem.", f"{_FOURTH} | {_RIGHT}"),
    _(FLAT40, "Dec 1 st at each end of every foll 4th row until 34 sts rem.", f"{_FOURTH} | {_RIGHT}"),
    _(FLAT40, "Work 4 rows even.", "40*4"),
    _(FLAT40, "Dec 1 st at each end of next 4 rows.", "38 36 34 32"),
    _(FLAT40, "Dec 1 st at each end of next and foll 4th row.", "38 38*3 36"),
    _(FLAT40, "Dec 1 st at each end of foll 4th row.", "40*3 38 | 40*2 38 38 | 40*2 38"),
    _(FLAT40, "Dec 1 st at each end of next row.", "38", {1: "k1 dec k34 dec k1"}),
    _(FLAT40, "Dec 1 st at end of next row.", "39", {1: "k37 dec k1"}),
    _(FLAT40, "Dec 1 st at beg of next row.", "39", {1: "k1 dec k37"}),
    _(FLAT40, "Dec 1 st each side of next row.", "38"),
    _(FLAT40, "Dec 1 st at each end of next and every foll 4th row until 32 sts rem.", "38 38*3 36 36*3 34 34*3 32"),
    _(FLAT40, "Dec 1 st at each end of next and every foll 4th row 3 times.", "38 38*3 36 36*3 34 34*3 32 | 38 38*3 36 36*3 34"),
    _(FLAT40, "Dec 1 st at each end of next and foll 3 alt rows.", "38 38 36 36 34 34 32"),
    _(FLAT40, "Dec 1 st at each end of next row, then on every foll alt row 3 times.", "38 38 36 36 34 34 32"),
    _(FLAT40, "Dec 1 st at each end of every row 3 times.", "38 36 34"),
    _(FLAT40, "Dec 1 st at each end of every RS row 3 times.", "38 38 36 36 34"),
    _(FLAT40, "Dec 1 st at each end of next 3 RS rows.", "38 38 36 36 34"),
    _(FLAT40, "Dec 1 st at end of next 3 RS rows.", "39 39 38 38 37", {3: "k36 dec k1"}),
    _(FLAT40, "Dec 1 st at beg of next WS row.", "40 39", {2: "p1 dec p37"}),
    _(FLAT40, "Dec 1 st at beg of next row and at end of foll row.", "39 38"),
    _(FLAT40, "Dec 1 st at beg of every row 4 times.", "39 38 37 36"),
    _(FLAT40, "Dec 1 st at beg of next 4 rows.", "39 38 37 36"),
    _(FLAT40, "Inc 1 st at each end of every 3rd row twice.", "40*2 42 42*2 44"),
    _(FLAT40, "Inc 2 sts at each end of next row.", "44"),
    _(FLAT40, "Inc 1 st at each end of next row, then every 6th row twice, then every 4th row once.", "42 42*5 44 44*5 46 46*3 48"),
    _(FLAT40, "Inc 1 st at each end of next and foll 6th row, then every foll 4th row until there are 48 sts.", "42 42*5 44 44*3 46 46*3 48"),
    # --- again, in all, more ---
    _(DEC2, "Rep last 2 rnds 3 times.", "38 38 37 37 36 36"),
    _(DEC2, "Rep last 2 rnds 3 more times.", "38 38 37 37 36 36"),
    _(DEC2, "Rep last 2 rnds 3 times more.", "38 38 37 37 36 36"),
    _(DEC2, "Work last 2 rnds 3 times in all.", "38 38 37 37"),
    _(DEC2, "Rep last 2 rnds until 35 sts rem.", "38 38 37 37 36 36 35 | 38 38 37 37 36 36 35 35"),
    _(DEC2, "Rep last 2 rnds once.", "38 38"),
    _(DEC2, "Rep last 2 rnds twice more.", "38 38 37 37"),
    _(DEC2, "Rep last rnd 3 times.", "39*3"),
    _(DEC2, "Rep rnd 1 3 times.", "38 37 36"),
    _(DEC2, "Rep last 3 rnds.", "39 38 38"),
    _(DEC2, "Rep rnds 1 and 2 until 6 rnds have been worked.", "38 38 37 37"),
    _(DEC2, "Rep last 2 rnds for 2.5 cm.", "38 38 37 37 36 36 35 | 38 38 37 37 36 36 | 38 38 37 37 36 36 35 35"),
    _(DEC_ROUND, "Rep dec rnd every 7th rnd twice.", "38*6 36 36*6 34"),
    _(DEC_ROUND, "Rep dec rnd every 7th rnd twice more, then every 5th rnd once.", "38*6 36 36*6 34 34*4 32"),
    _(DEC_ROUND, "Rep dec rnd every 2nd rnd until 34 sts rem.", "38 36 36 34"),
    _(DEC_ROUND, "Rep dec rnd every 2.5 cm twice.", "38*6 36 36*6 34"),
    _(DEC_ROUND, "Knit 3 rnds. Rep dec rnd.", "38*3 36"),
    _(DEC_ROUND, "Rep dec rnd on next 3 rnds.", "36 34 32"),
    _(FLAT40, "Next 4 rows: K2tog, k to end.", "39 38 37 36"),
    _(FLAT40, "Next row: K2tog, k to end.\nRep last row 3 times.", "39 38 37 36"),
    _(FLAT40, "Row 1 (RS): Knit.\nRow 2: Purl.\nRep rows 1-2 twice.", "40*6"),
    _(FLAT40, "Row 1 (RS): Knit.\nRow 2: Purl.\nRep rows 1-2 until 8 rows have been worked.", "40*8"),
    _(FLAT40, "Rows 1-4: Knit.", "40*4", {2: "k40"}),
    _(FLAT40, "Row 1 (RS): K1, ssk, k to end.\nRow 2 and all WS rows: Purl.\nRow 3: Knit.\nRow 4: As row 2.", "39*4", {4: "p39"}),
    _(FOUR, "Cont in patt for 3 rows.", "40*3", {1: "k40", 2: "p40", 3: "k2 p2 " * 10}),
    _(FOUR, "Rep last 2 rows once.", "40*2", {1: "k2 p2 " * 10, 2: "k2 p2 " * 10}),
    _(FOUR, "Rep these 4 rows once, then rows 1 and 2 once more.", "40*6", {5: "k40", 6: "p40"}),
    # --- to, before, past ---
    _(FLAT40, "Next row: K to last 2 sts, k2tog.", "39", {1: "k38 k2tog"}),
    _(MARKED, "Next rnd: K to 2 sts before marker, k2tog, sm, k to end.", "39", {1: "k18 k2tog k20"}),
    _(MARKED, "Next rnd: K to marker, sm, k2tog, k to end.", "39", {1: "k20 k2tog k18"}),
    _(MARKED, "Next rnd: K to 2 sts past marker, k2tog, k to end.", "39", {1: "k22 k2tog k16"}),
    _(MARKED, "Next rnd: K to 1 st before marker, m1, k1, sm, k to end.", "41", {1: "k19 m1 k21"}),
    _(MARKED, "Next rnd: K to marker, m1, slip marker, k to end.\nNext rnd: K to marker, m1, slip marker, k to end.", "41 42", {2: "k21 m1 k20"}),
    _(MARKED, "Next rnd: K to marker, slip marker, m1, k to end.\nNext rnd: K to marker, slip marker, m1, k to end.", "41 42", {2: "k20 m1 k21"}),
    _(MARKED, "Next rnd: K to marker, remove marker, k to end.", "40"),
    _(FLAT40, "Next row: K2, k2tog, k to last 4 sts, ssk, k2.", "38", {1: "k2 k2tog k32 ssk k2"}),
    _(FLAT40, "Next row: K2, *k2tog, k4; rep from * to last 2 sts, k2.", "34", {-1: "k2 " + "k2tog k4 " * 6 + "k2"}),
    _(FLAT40, "Next row: K2, *k2tog, k4; rep from * to end.", ""),
    _(FLAT42, "Next row: *K2tog, k4; rep from * to last 6 sts, k6.", "36", {1: "k2tog k4 " * 6 + "k6"}),
    _(ROUND40, "Next rnd: *K8, k2tog; rep from * 3 times.", "36"),
    _(ROUND40, "Next rnd: *K8, k2tog; rep from * twice more, k10.", "37", {1: "k8 k2tog " * 3 + "k10"}),
    _(ROUND40, "Next rnd: (K8, k2tog) 4 times.", "36"),
    _(ROUND40, "Next rnd: (K8, k2tog) 3 times, k to end.", "37", {1: "k8 k2tog " * 3 + "k10"}),
    _(ROUND40, "Next rnd: K2tog twice, k to end.", "38", {1: "k2tog k2tog k36"}),
    _(ROUND40, "Next rnd: (K2, k2tog) twice, k to end.", "38", {1: "k2 k2tog k2 k2tog k32"}),
    _(ROUND40, "Next rnd: K2, k2tog twice, k to end.", "38", {1: "k2 k2tog k2tog k34"}),
    _(ROUND40, "Next rnd: K2tog around.", "20"),
    _(ROUND40, "Next rnd: *K2, k2tog; rep from * around.", "30"),
    _(ROUND40, "Next rnd: *K2, k2tog; rep from * to last 4 sts, k4.", "31"),
    _(ROUND40, "Next rnd: K2, *k2tog, k2; rep from * around.", ""),
    # --- off and on ---
    _(FLAT40, "Bind off 3 sts at beg of next 2 rows.", "37 34"),
    _(FLAT40, "Bind off 3 sts at beg of next row.", "37"),
    _(FLAT40, "Bind off 3 sts each side.", "37 34"),
    _(FLAT40, "Bind off 3 sts at beg of next 2 rows and 2 sts at beg of foll 2 rows.", "37 34 32 30"),
    _(FLAT40, "Bind off 3 sts at beg of next and foll alt row.", "37 37 34"),
    _(FLAT40, "Bind off 3 sts at beg of every row until 28 sts rem.", "37 34 31 28"),
    _(FLAT40, "Next row: K15, bind off 10 sts, k to end.", "30", {1: "k15 bo10 k15"}),
    _(FLAT40, "Bind off all sts.", "0"),
    _(FLAT40, "Cast on 3 sts at beg of next 2 rows.", "43 46"),
    _(FLAT40, "Cast on 3 sts at end of next 2 rows.", "43 46", {1: "k40 co3"}),
    _(FLAT40, "Bind off 2 sts at beg of next 2 rows, then dec 1 st at each end of next 3 RS rows.", "38 36 34 34 32 32 30"),
    _(FLAT40, "Bind off 2 sts at beg of next 2 rows. Dec 1 st at each end of next row and foll 2 alt rows.", "38 36 34 34 32 32 30"),
    _(FLAT40, "Buttonhole row: K3, bind off 3 sts, k to end.\nNext row: P to bound-off sts, cast on 3 sts, p to end.", "37 40", {2: "p34 co3 p3"}),
    _(FLAT40, "Next row: K3, yo, k2tog, k to last 5 sts, k2tog, yo, k3.", "40", {1: "k3 yo k2tog k30 k2tog yo k3"}),
    # --- lengths: 28 rows to 10 cm ---
    _(ROUND40, "Knit until piece measures 5 cm from cast-on.", "40*10"),
    _(ROUND40, "Knit until piece measures 5 cm from beg.", "40*10"),
    _(ROUND40, "Knit until piece measures 5 cm from start.", "40*10"),
    _(ROUND40, "Knit for 5 cm.", "40*14"),
    _(ROUND40, "Knit a further 5 cm.", "40*14"),
    _(ROUND40, "Knit until piece measures 2 in from cast-on.", "40*10"),
    _(ROUND40, "Knit 2 in more.", "40*14"),
    _(ROUND40, "Knit for 2½ in.", "40*18"),
    _(ROUND40, "Knit for 2.5 cm.", "40*7"),
    _(ROUND40, "Knit for 2,5 cm.", "40*7"),
    _(ROUND40, "Knit for 2 in (5 cm).", "40*14"),
    _(ROUND40, "Knit 5 rounds.", "40*5"),
    _(FLAT40, "Place a marker at each end of last row.\nWork 4 rows in st st.\nCont in st st until piece measures 5 cm from markers.", "40*14"),
    _(FLAT40, "Place a marker at each end of last row.\nWork 4 rows in st st.\nCont in st st until piece measures 5 cm from cast-on.", "40*10"),
    _(FLAT40, "Cont in st st until piece measures 5 cm, ending with a WS row.", "40*10"),
    _(FLAT40, "Cont in st st until piece measures 5 cm, ending with a RS row.", "40*9 | 40*11"),
    _(FLAT40, "Cont in st st until piece measures 5 cm, ending ready for a RS row.", "40*10"),
    _(FLAT40, "Work 5 rows in st st, ending with a RS row.", "40*5"),
    _(FLAT40, "Work 6 rows in st st, beg with a p row.", "40*6", {1: "p40", 2: "k40"}),
    _(FLAT40, "Beg with a k row, work 6 rows in st st.", "40*6", {1: "k40", 2: "p40"}),
    _(FLAT40, "Knit 1 row. Beg with a p row, work 5 rows in st st.", "40*6", {1: "k40", 2: "p40", 6: "p40"}),
    _(FLAT40, "Knit 1 row. Beg with a k row, work 4 rows in st st.", "40*5", {1: "k40", 2: "k40", 3: "p40"}),
    # --- sizes: S (M, L) ---
    _(FLAT40, "Dec 4 (6, 8) sts evenly across next row.", "34", **THREE),
    _(FLAT40, "Size S only: Knit 2 rows.", "-", **THREE),
    _(FLAT40, "Size M only: Knit 2 rows.", "40*2", **THREE),
    _(FLAT40, "Sizes S and L only: Knit 2 rows.", "-", **THREE),
    _(FLAT40, "All sizes except S: Knit 2 rows.", "40*2", **THREE),
    _(FLAT40, "All sizes except M: Knit 2 rows.", "-", **THREE),
    _(FLAT40, "All sizes: Knit 2 rows.", "40*2", **THREE),
    _(FLAT40, "Work 4 (-, 6) rows even.", "-", **THREE),
    _(FLAT40, "Work - (2, 4) rows even.", "40*2", **THREE),
    _(FLAT40, "Bind off 0 (2, 3) sts at beg of next 2 rows.", "38 36", **THREE),
    # --- yarns ---
    _(ROUND40, "With A, knit 2 rounds.\nKnit 1 round.", "40*3", yarns="AAA"),
    _(ROUND40, "Join A. Knit 2 rounds. Break A.\nKnit 1 round.", "40*3", yarns="AAM"),
    _(ROUND40, "Knit 2 rounds in A, then 1 round in MC.", "40*3", yarns="AAM"),
    _(ROUND40, "*Knit 2 rounds in A, 1 round in MC; rep from * once.", "40*6", yarns="AAMAAM"),
    _(ROUND40, "Change to A and knit 2 rounds.", "40*2", yarns="AA"),
    # --- fabrics ---
    _(BARE40, "Work 4 rows in k2, p2 rib.", "40*4", {1: "k2 p2 " * 10, 2: "k2 p2 " * 10}),
    _(BARE40, "Work 4 rows in garter st.", "40*4", {1: "k40", 2: "k40"}),
    _(BARE40, "Work 4 rows in reverse st st.", "40*4", {1: "p40", 2: "k40"}),
    _(BARE40.replace("40", "41"), "Work 4 rows in moss st.", "41*4", {1: "k1 p1 " * 20 + "k1", 2: "k1 p1 " * 20 + "k1"}),
    _(RIB, "Next row: K the knits and p the purls.", "40", {1: "k2 p2 " * 10}),
    _(MOSS, "Next row: P the knits and k the purls.", "41", {1: "k1 p1 " * 20 + "k1"}),
    _(MOSS, "Next row: K the knits and p the purls.", "41", {1: "p1 k1 " * 20 + "p1"}),
    _(RIB, "Next row: Rib 10, m1, rib to end.", "41", {1: "k2 p2 k2 p2 k2 m1 " + "p2 k2 " * 7 + "p2"}),
    # --- turns ---
    _(FLAT40, "Next row: K20, turn and leave rem 20 sts on a holder.\nWork 2 rows.", "20*3"),
    _(FLAT40, "Next row: K30, turn.\nNext row: P20, turn.\nNext row: K to end.", "40*3"),
    _(FLAT40, "Turn and cast on 6 sts.\nNext row: Purl.", "46 | 46 46"),
    # --- slipped, over, front and back ---
    _(FLAT40, "Next row: Sl 1, k to end.", "40", {1: "sl k39"}),
    _(FLAT40, "Next row: Sl 1 wyif, k to end.", "40", {1: "sl_wyif k39"}),
    _(FLAT40, "Next row: K1, sl 1, k1, psso, k to end.", "39", {1: "k1 skp k37"}),
    _(FLAT40, "Next row: K1, sl 1, k2tog, psso, k to end.", "38"),
    _(FLAT40, "Next row: K1, sl 2 tog kwise, k1, p2sso, k to end.", "38", {1: "k1 s2kp k36"}),
    _(FLAT40, "Next row: P2, yrn, p2tog, p to end.", "40", {1: "p2 yo p2tog p36"}),
    _(FLAT40, "Next row: K1, yfwd, k to end.", "41", {1: "k1 yo k39"}),
    _(FLAT40, "Next row: K1, yf, sl 1, yb, k to end.", "40"),
    _(FLAT40, "Next row: K1, wyif sl 1, k to end.", "40", {1: "k1 sl_wyif k38"}),
    _(FLAT40, "Next row: K10, yo twice, k to end.", "42", {1: "k10 yo2 k30 | k10 yo yo k30"}),
    _(FLAT40, "Next row: K10, (yo, k1) twice, k to end.", "42", {1: "k10 yo k1 yo k29"}),
    # --- made ---
    _(FLAT40, "Next row: Inc in every 10th st across.", "44"),
    _(FLAT40, "Next row: Kfb in each st.", "80"),
    _(FLAT40, "Inc 4 sts evenly across next row.", "44"),
    _(FLAT40, "Inc to 44 sts evenly.", "44"),
    _(FLAT40, "Next row: K5, m1, (k10, m1) 3 times, k5.", "44"),
    _(FLAT40, "Next row: K5, (m1, k10) 3 times, m1, k5.", "44"),
    _(FLAT40, "Next row: Inc in first st, k to last 2 sts, inc in next st, k1.", "42", {1: "inc k37 inc k1"}),
    # --- charts ---
    _(ROUND40, "Chart peak, 2 times.", "40*4"),
    _(ROUND40, "Work rnds 1-2 of chart peak once, then rnd 1 once more.", "40*3"),
    _(ROUND40, "Work 3 rounds in chart peak.", "40*3"),
    # --- a second look: the end of a stretch ---
    _(FLAT40, "Cont in st st until piece measures 5 cm, ending with a p row.", "40*10"),
    _(FLAT40, "Cont in st st until piece measures 5 cm from beg, ending after a k row.", "40*9 | 40*11"),
    _(FLAT40, "Work 9 rows in st st, ending with a WS row.", ""),
    _(FLAT40, "Purl 1 row (WS).", "40", {1: "p40"}),
    _(FLAT40, "Next row (RS facing): K2tog, k to end.", "39"),
    _(FLAT40, "Next row: K20, m1, k20. 42 sts.", ""),
    _(FLAT40, "Next row: K20, m1, k20 (41 sts).", "41"),
    # --- stars ---
    _(ROUND40, "Next rnd: K10, *yo, k2tog; rep from * 5 times, k to end.", "40", {1: "k10 " + "yo k2tog " * 6 + "k18"}),
    _(ROUND40, "Next rnd: K10, (yo, k2tog) 5 times, k to end.", "40", {1: "k10 " + "yo k2tog " * 5 + "k20"}),
    _(ROUND40, "Next rnd: *K3, m1; rep from * 5 times more, k to end.", "46", {1: "k3 m1 " * 6 + "k22"}),
    _(ROUND40, "Next rnd: *K3, m1; rep from * to last 4 sts, k4.", "52"),
    _(ROUND40, "Next rnd: *K3, m1; rep from * until 4 sts rem, k4.", "52"),
    _(ROUND40, "Next rnd: Dec 1 st in every 10 sts.", "36"),
    _(FLAT40, "Next row: *K2 tog, yfwd; rep from * to last 2 sts, k2.", "40", {1: "k2tog yo " * 19 + "k2"}),
    _(FLAT40, "Next row: (K1, yo) to last st, k1.", "79"),
    _(FLAT40, "Next row: K2 tog across.", "20"),
    # --- these rows ---
    _(FLAT40, "Next row (RS): K1, skpo, k to last 3 sts, k2tog, k1.\nP 1 row.\nRep these 2 rows 4 times.", "38 38 36 36 34 34 32 32 30 30"),
    _(FLAT40, "Next row (RS): K1, skpo, k to last 3 sts, k2tog, k1.\nP 1 row.\nWork these 2 rows 4 times in all.", "38 38 36 36 34 34 32 32"),
    _(FLAT40, "Next row (RS): K1, skpo, k to last 3 sts, k2tog, k1.\nP 1 row.\nRep these 2 rows until 30 sts rem.", "38 38 36 36 34 34 32 32 30 | 38 38 36 36 34 34 32 32 30 30"),
    _(DEC_ROUND, "Knit 6 rnds. Work dec rnd. Knit 4 rnds. Work dec rnd.", "38*6 36 36*4 34"),
    _(DEC_ROUND, "Rep last rnd 3 times.", "36 34 32"),
    _(DEC_ROUND, "Knit 2 rnds.\nRep last 3 rnds twice.", "38*2 36*3 34*3"),
    _(DEC_ROUND, "Knit 2 rnds.\nRep these 3 rnds until 32 sts rem.", "38*2 36*3 34*3 32 | 38*2 36*3 34*3 32*3"),
    _(DEC2, "Rep rnds 1 & 2 four times.", "38 38 37 37 36 36 35 35"),
    _(DEC2, "Rep rnds 1 & 2 four times in total.", "38 38 37 37 36 36"),
    _(DEC2, "Work 4 more rnds in this way.", "38 38 37 37"),
    _(DEC2, "Cont as set until 36 sts rem.", "38 38 37 37 36 | 38 38 37 37 36 36"),
    _(DEC2, "Cont to dec 1 st on every alt rnd 3 times more.", "38 38 37 37 36 | 38 38 37 37 36 36"),
    _(DEC2, "Cont to dec in this way on every 4th rnd twice.", "39*2 38 38*3 37 | 39*3 38 38*3 37"),
    _(DEC2, "Rep rnd 2 only for 2.5 cm.", "39*7 | 39*6"),
    _(FLAT40, "Work 4 rows. Rep last 4 rows twice.", "40*12"),
    _(FLAT40, "Work even for 4 more rows.", "40*4"),
    _(FLAT40, "Work even until 8 rows have been worked from cast-on.", "40*4"),
    # --- markers ---
    _(f"{ROUND40}Set-up rnd: *K10, pm; rep from * to end.\n", "Next rnd: *K to 2 sts before marker, k2tog, sm; rep from * 3 times more.", "36"),
    _(f"{ROUND40}Set-up rnd: *K10, pm; rep from * to end.\n", "Inc 1 st each side of each marker.", "48"),
    _(f"{ROUND40}Set-up rnd: *K10, pm; rep from * to end.\n", "Inc 1 st after each marker.", "44"),
    _(f"{ROUND40}Set-up rnd: *K10, pm; rep from * to end.\n", "Inc 1 st before each marker on next and foll 4th rnd.", "44 44*3 48"),
    # --- in the middle, on and off ---
    _(FLAT40, "Next row: K20, turn, cast on 5 sts, turn, k to end.", "45", {1: "k20 co5 k20"}),
    _(FLAT40, "Next row: K20, cast on 5 sts, k to end.", "45", {1: "k20 co5 k20"}),
    _(FLAT40, "Bind off 5 sts at beg of next row, k to end.\nNext row: Bind off 5 sts, p to end.", "35 30"),
    _(FLAT40, "Bind off 5 sts at beg of next 2 rows, 3 sts at beg of next 4 rows.", "35 30 27 24 21 18"),
    _(FLAT40, "Bind off 5 sts at beg of next 2 rows, 3 sts at beg of foll 2 rows, then 2 sts at beg of every row until 20 sts rem.", "35 30 27 24 22 20"),
    _(FLAT40, "Next row: K15, bind off centre 10 sts, k to end.", "30", {1: "k15 bo10 k15"}),
    _(FLAT40, "Next row: K15, slip next 10 sts to a holder, k15.", "30"),
    _(FLAT40, "Next row: K15, slip next 10 sts to a holder, join a 2nd ball and k to end.", "30"),
    _(FLAT40, "Next row: K12, place next 16 sts on holder, k12.", "24"),
    _(FLAT40, "Next row: K12 and place these sts on a holder, k to end.", "40 28"),
    _(FLAT40, "Next row: K to last 12 sts, place last 12 sts on a holder.", "28"),
    _(FLAT40, "Bind off all sts.\nPick up and k 30 sts along side edge.\nWork 3 rows in garter st.", "0 30 30*3"),
    _(FLAT40, "Bind off all sts.\nPick up and k 3 sts for every 4 rows along side edge.", "0 3"),
    # --- shaping within a stretch ---
    _(FLAT40, "Work 4 rows in st st, dec 1 st at each end of 3rd row.", "40 40 38 38"),
    _(FLAT40, "Work 4 rows in st st, dec 1 st at each end of every row.", "38 36 34 32"),
    _(FLAT40, "Work 8 rows in st st, dec 1 st at each end of every 4th row.", "40*3 38 38*3 36 | 40*2 38 38*3 36 36"),
    _(FLAT40, "Work 8 rows in st st, dec 1 st at each end of 3rd and 7th rows.", "40*2 38 38*3 36 36"),
    _(FLAT40, "Work 8 rows in st st, AT THE SAME TIME dec 1 st at each end of 3rd and every foll 4th row.", "40*2 38 38*3 36 36"),
    _(FLAT40, "Dec 1 st at each end of 3rd row and every foll 4th row until 36 sts rem.", "40*2 38 38*3 36"),
    _(FLAT40, "Dec 1 st at each end of 5th row and foll 4th row.", "40*4 38 38*3 36"),
    _(FLAT40, "Dec 1 st at each end of next 2 rows and foll 2 alt rows.", "38 36 36 34 34 32"),
    _(FLAT40, "Dec 1 st at each end of next 2 alt rows.", "38 38 36 | 40 38 38 36"),
    _(FLAT40, "Dec 1 st at each end of every alt row twice, then every row twice.", "40 38 38 36 34 32 | 38 38 36 36 34 32 | 38 38 36 34 32 | 38 38 36 34 32 32"),
    _(FLAT40, "Knit 3 rows, dec 4 sts evenly on last row.", "40 40 36"),
    _(FLAT40, "Knit 3 rows, dec 4 sts evenly on first row.", "36 36 36"),
    _(FLAT40, "Work 3 rows in garter st, inc 4 sts evenly across 2nd row.", "40 44 44"),
    _(FLAT40, "Dec 4 sts evenly across next row and every foll 4th row twice.", "36 36*3 32 32*3 28 | 36 36*3 32"),
    _(FLAT40, "Dec 4 sts evenly on next row, then 2 sts evenly on foll row.", "36 34"),
    _(FLAT40, "Next row: K to end, inc 4 sts evenly.", "44"),
    # --- k and p, rows and stitches ---
    _(FLAT40, "P 1 row. K 1 row.", "40*2", {1: "p40", 2: "k40"}),
    _(FLAT40, "K 1 row, p 1 row.", "40*2", {1: "k40", 2: "p40"}),
    _(FLAT40, "K 2 rows.", "40*2", {1: "k40", 2: "k40"}),
    _(FLAT40, "P 2 rows.", "40*2", {1: "p40", 2: "p40"}),
    _(BARE40, "Row 1: K1, p1 to end.", "40", {1: "k1 p1 " * 20}),
    _(BARE40, "K1, p1 rib 4 rows.", "40*4", {1: "k1 p1 " * 20}),
    _(FLAT40, "Next row: P to last 2 sts, p2tog.", "39", {1: "p38 p2tog"}),
    _(FLAT40, "Next row: Sl 1, k1, psso, k to end.", "39", {1: "skp k38"}),
    _(FLAT40, "Next row: K3, k2tog tbl, k to end.", "39"),
    _(FLAT40, "Next row: K3tog, k to end.", "38"),
    _(FLAT40, "Next row: K1, (k1, yo, k1) in next st, k to end.", "42"),
    _(FLAT40, "Knit every row until piece measures 5 cm from cast-on.", "40*10", {1: "k40", 2: "k40"}),
    _(ROUND40, "Knit every rnd until piece measures 5 cm.", "40*10"),
    _(FLAT40, "Knit every RS row and purl every WS row for 5 cm.", "40*14", {1: "k40", 2: "p40"}),
    # --- in each size ---
    _(FLAT40, "Next row: K4 (5, 6), m1, k to last 4 (5, 6) sts, m1, k4 (5, 6).", "42", {1: "k5 m1 k30 m1 k5"}, **THREE),
    _(FLAT40, "Dec 1 st at each end of next row and every foll 4th (2nd, 2nd) row twice.", "38 38 36 36 34 | 38 38 36", **THREE),
    _(FLAT40, "Dec 1 st at each end of next 2 (3, 4) rows.", "38 36 34", **THREE),
    _(FLAT40, "Dec 1 (2, 2) sts at each end of next row.", "36", **THREE),
    _(FLAT40, "Bind off 3 (4, 5) sts at beg of next 2 rows. 34 (32, 30) sts.", "36 32", **THREE),
    _(FLAT40, "Cont in st st until piece measures 4 (5, 6) cm from cast-on.", "40*10", **THREE),
    # --- lengths once more ---
    _(ROUND40, 'Knit until piece measures 2" from cast-on.', "40*10"),
    _(ROUND40, "Knit until piece measures 2 1/2 in from cast-on.", "40*14"),
    _(ROUND40, "Knit until piece measures 5 cm (2 in) from cast-on.", "40*10"),
    _(ROUND40, "Knit until piece measures approx 5 cm.", "40*10"),
    _(ROUND40, "Knit 5 cm from here.", "40*14"),
    _(ROUND40, "Knit until piece measures 5 cm from join.", "40*10"),
    _(f"{FLAT40}Join in the round.\nKnit 4 rounds.\n", "Knit until piece measures 5 cm from join.", "40*10"),
    _(f"{FLAT40}Join in the round.\nKnit 4 rounds.\n", "Knit until piece measures 5 cm from cast-on.", "40*6"),
    _(ROUND40, "Purl 1 rnd.\nKnit until piece measures 5 cm from purl rnd.", "40*15 | 40*14"),
    # --- yarns once more ---
    _(ROUND40, "Join A. Knit 1 rnd. Change to MC and knit 2 rnds.", "40*3", yarns="AMM"),
    _(ROUND40, "Knit 1 rnd A, 1 rnd MC, 1 rnd A.", "40*3", yarns="AMA"),
    _(ROUND40, "Alternating A and MC, knit 4 rounds.", "40*4", yarns="AMAM"),
    _(ROUND40, "With A, k 1 rnd.\nWith MC, k 1 rnd.\nRep last 2 rnds once.", "40*4", yarns="AMAM"),
    _(ROUND40, "Do not break MC. Join A and k 2 rnds. With MC, k 1 rnd.", "40*3", yarns="AAM"),
    _(ROUND40, "Break MC. With A, knit 2 rnds.\nKnit 1 rnd.", "40*3", yarns="AAA"),
    # --- turns once more ---
    _(FLAT40, "Next row: K10, turn, p10, turn, k to end.", "40*3"),
    _(FLAT40, "Next row: K30, wrap next st, turn.\nNext row: P to end.", "40*2"),
    # --- rows of their own beside rows in pattern, and rounds between stars ---
    _(ROUND40, "Purl 2 rounds. Work 3 rounds in k2, p2 rib.", "40*5", {2: "p40", 3: " ".join(["k2 p2"] * 10)}),
    _(ROUND40, "Work 3 rounds in k2, p2 rib. Work 2 rounds in pattern.", "40*5"),
    _(ROUND40, "*Knit 1 rnd, purl 1 rnd; rep from * once more.", "40*4", {2: "p40", 3: "k40"}),
    _(ROUND40, "*Knit 1 rnd, purl 1 rnd; rep from * twice.", "40*6", {5: "k40", 6: "p40"}),
    _(ROUND40, "(Knit 1 rnd, purl 1 rnd) twice.", "40*4", {4: "p40"}),
    _(ROUND40, "*Knit 1 rnd, purl 1 rnd; rep from * to end.", ""),
    _(ROUND40, "*With A, knit 1 rnd; with MC, knit 2 rnds; rep from * once more.", "40*6", yarns="AMMAMM"),
    _(BARE40, "Work 3 rows in garter st (1st row is WS).", "40*3"),
    _(FLAT40, "Dec 1 st at each end of next and every foll alt row to 36 sts, then on foll 2 rows.", "38 38 36 34 32"),
    _(FLAT40, "Dec 1 st at each end of every RS row until 36 sts rem, then of every row until 32 sts rem.", "38 38 36 34 32"),
    _(FLAT40, "Dec 1 st at each end of next and foll 2 alt rows, then on foll 2 rows.", "38 38 36 36 34 32 30"),
    _(DEC2, "Work Rnds 1 and 2 alternately until 37 sts rem.", "38 38 37"),
    _(DEC2, "After Rnd 1: 39 sts.", "-"),
    _(DEC2, "After Rnd 1: 38 sts.", ""),
)
# fmt: on
