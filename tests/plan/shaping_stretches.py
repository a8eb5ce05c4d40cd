"""Shaping at edges, at the same time, and by reference to another part, each with its meaning as a knitter works it out.

The meanings were written by hand before any of them was read by the program. Source: common practice. The form is that of
`stretches`; several stretches that look alike stand below each other. It is long because it is a table.
"""

from __future__ import annotations

from tests.plan.stretches import DEC, B, F, R, Stretch

FRONT = "== left front\nCast on 40 sts. Work flat.\nWork 4 rows in k1, p1 rib.\nWork 2 rows in st st.\n"
"""The neck is where right-side rows end, as the front is worn; the next row is a right-side row."""
RAGLAN = f"{FRONT}Raglan shaping:\nNext row (RS): K2, skpo, k to end.\nNext row: P.\n"
BACK = (
    "== back\nCast on 40 sts. Work flat.\nWork 4 rows in k1, p1 rib.\nWork 4 rows in st st.\n"
    "Shape armholes: Bind off 3 sts at beg of next 2 rows.\nDec 1 st at each end of next and foll alt row.\nWork 10 rows.\nBind off.\n"
)
BACK_RAGLAN = (
    "== back\nCast on 40 sts. Work flat.\nWork 4 rows in k1, p1 rib.\nWork 4 rows in st st.\nShape raglans: Bind off 3 sts at beg of next 2 rows.\n"
    "Next row (RS): K2, skpo, k to last 4 sts, k2tog, k2.\nNext row: P.\nRep last 2 rows until 20 sts rem.\nBind off.\n"
)
BEGUN = "Cast on 40 sts. Work flat.\nWork 4 rows in k1, p1 rib.\nWork 2 rows in st st.\n"
LEFT = (
    "== left front\nCast on 20 sts. Work flat.\nWork 4 rows in k1, p1 rib.\nWork 4 rows in st st.\nShape armhole: Next row (RS): Bind off 3 sts, k to end.\n"
    "P 1 row.\nNext row (RS): K1, ssk, k to end.\nP 1 row.\nBind off.\n== right front\nCast on 20 sts. Work flat.\nWork 4 rows in k1, p1 rib.\n"
)

MIRRORED = "== left front\nCast on 40 sts. Work flat.\nRow 1 (RS): K to last 3 sts, k2tog, k1.\nRow 2: Purl.\n"


def _(before: str, lines: str, means: str, rows: dict[int, str] | None = None, **more: str) -> Stretch:
    return Stretch(before=before, lines=lines, means=means, rows=rows or {}, **more)


TOLD = "Armhole and neck are shaped at the same time.\n"
BEGINS = "Armhole: At the beginning of every RS row, k1, ssk, k to end, 3 times in all.\n"
ENDS = "Neck: At the end of every RS row, k to last 3 sts, k2tog, k1, 2 times in all."

# fmt: off
SHAPING: tuple[Stretch, ...] = (
    # --- work this round so often: the once just worked may count, which a count behind it says ---
    _(R, "Then decrease like this: k1, k2tog, knit to the last three, ssk, k1.\nWork this decrease round 3 times, with 2 plain rounds between. 34 sts.", "38 38*2 36 36*2 34"),
    _(R, "Next rnd: k1, k2tog, k to last 3 sts, ssk, k1.\nWork this decrease round 3 times, with 2 plain rounds between. 32 sts.", "38 38*2 36 36*2 34 34*2 32"),
    _(F, "Next row: k1, k2tog, k to end.\nWork this every RS row 3 times. 37 sts.", "39 39 38 38 37"),
    _(R, "Dec rnd: k1, k2tog, k to last 3 sts, ssk, k1.\nWork dec rnd 2 times.\nWork dec rnd every other rnd until you have worked it 4 times in total. 32 sts.", "38 36 36 34 34 32"),
    # --- steps at an edge, told in a list ---
    _(FRONT, "At neck edge bind off 4 sts once and 2 sts twice.", "40 36 36 34 34 32"),
    _(FRONT, "Bind off 6 sts at the neck edge, then 3 sts at same edge once more.", "40 34 34 31"),
    _(FRONT, "At beg of next WS row (neck edge) bind off 6 sts, then 3 sts at same edge once more.", "40 34 34 31"),
    _(FRONT, "Cast off 3 sts at armhole edge on next row, then 2 sts at the same edge on alternate rows twice.", "37 37 35 35 33"),
    _(FRONT, "Dec 1 st at neck edge on next RS row and the following RS row; at the same time, at armhole edge, bind off 8 sts once, 8 sts once, and 7 sts once.", "31 31 22 22 15"),
    _(FRONT, "Bind off 4 sts at armhole edge once, then 2 sts twice. At the same time dec 1 st at neck edge every RS row 3 times.", "35 35 32 32 29"),
    _(FRONT, "Bind off 4 sts at armhole edge once. Bind off 2 sts at armhole edge twice, at the same time dec 1 st at neck edge every RS row 3 times.", ""),
    _(FRONT, "At neck edge bind off on every RS row 3 sts once, 2 sts twice.", ""),
    _(F, "Cast off 9 sts at the beginning of the next row and the remaining 31 two rows later.", "31 31 0"),
    _(F, "Cast off 15 sts at beg of next row, then 10 at beg of foll 2 alt rows.", "25 25 15 15 5"),
    _(F, "Cast off 9 at the start of the next two rows, then 8 at the start of the two after.", "31 22 14 6"),
    _(F, "At beg of foll WS rows, cast off 3 sts once, 2 sts twice.", "40 37 37 35 35 33"),
    _(F, "Cast off 3 sts at the end of the next row, then 5 two rows later.", ""),
    # --- a row behind a colon, and how often ---
    _(F, "Increase for the neckline at the beginning of every RS row: knit 2, M1L, knit to end. Increase 4 times in total = 44 sts.", "41 41 42 42 43 43 44", {1: "k2 m1l k38"}),
    _(F, "Decrease 1 st at neck edge on next RS row (k1, ssk, k to end), then every RS row 2 times more.", "39 39 38 38 37"),
    _(F, "Decrease every RS row: k1, ssk, k to end. Repeat 4 times.", ""),
    _(R, "Decrease on both sides of the marker: k1, k2tog, k to last 3 sts, ssk, k1. Repeat the decreases with 2 cm between, a total of 3 times = 34 sts.", "38 38*5 36 36*5 34"),
    _(R, "Round 1: K1, k2tog, k to last 3 sts, ssk, k1.\nRound 2: Knit.\nDo these two rounds 3 times and you'll have 34 sts.", "38 38 36 36 34 34"),
    _(R, "Round 1: *K8, k2tog; rep from * to end.\nRound 2: Knit.\nRound 3: *K7, k2tog; rep from * to end.\nRound 4: Knit.\nOne stitch fewer before each k2tog, every other round. Carry on like that until you have 24 sts left.", "36 36 32 32 28 28 24"),
    _(F, "Working on these sts only, dec 1 st at each end of next 2 rows.", "38 36"),
    _(F, "Knit 2 ridges, ending with a WS row.", "40*4"),
    _(f"{MIRRORED}Bind off.\n== right front\nCast on 40 sts. Work flat.\n", "Make it a mirror image of the left front.", "39 39 0", {1: "k1 ssk k37"}),
    # --- rows named one after the other ---
    _(F, "Dec 1 st at each end of next row, then once more on the following row.", "38 36"),
    _(F, "Dec 1 st at each end of next row, then once more on the following RS row.", "38 38 36"),
    _(F, "Dec 1 st at each end of next row and on foll alt row.", "38 38 36"),
    _(F, "Dec 1 st at each end of next 2 rows and then on foll 2 alt rows.", "38 36 36 34 34 32"),
    _(F, "Bind off 2 sts at beg of next and every foll alt row 3 times in all.", "38*2 36*2 34"),
    _(FRONT, "Bind off 2 sts at neck edge on next row.", "40 38", told="the one where right-side rows end"),
    _(FRONT, "Inc 1 st at armhole edge on next 3 rows, then cast on 3 sts at same edge once.", ""),
    _(FRONT, "Inc 1 st at neck edge on next 2 rows. Cast on 3 sts at same edge.", ""),
    _(F, "Dec 1 st at each end of next and every foll alt row to 34 sts, then on foll 2 rows.", "38 38 36 36 34 32 30"),
    _(F, "Dec 1 st at each end of every row until 36 sts remain, then every other row until 32 remain.", "38 36 36 34 34 32"),
    _(F, "Dec 1 st at each end of next 2 rows, then of 2 foll alt rows, then of every foll 4th row until 28 sts rem.", "38 36 36 34 34 32 32*3 30 30*3 28"),
    _(F, "Inc 1 st at both ends of 3rd row and every 4th row following until there are 44 sts.", "40*2 42 42*3 44"),
    _(F, "Inc 1 st at each end of 3rd row and of every 4th row after that until there are 44 sts.", "40*2 42 42*3 44"),
    _(F, "Working all decreases 3 sts in from the edge, dec 1 st at each end of next and foll 2 alt rows.", "38 38 36 36 34", {1: "k3 dec k30 dec k3"}),
    # --- a row written out for every so many rows ---
    _(F, "At the beginning of every RS row, k1, ssk, k to end, for a total of 3 times.", "39 39 38 38 37", {1: "k1 ssk k37", 5: "k1 ssk k35"}),
    _(F, "At the end of every RS row, k to last 3 sts, k2tog, k1, for a total of 2 times. Then do the same at the end of every 4th row 2 times.", "39 39 38*4 37*4 36", {7: "k35 k2tog k1"}),
    _(F, "At beg of each RS row, k1, ssk, knit to end. Do this a total of 2 times.", "39 39 38"),
    _(F, "On every RS row, k1, ssk, k to last 3 sts, k2tog, k1, for a total of 2 times.", "38 38 36"),
    _(F, "K1, ssk, k to last 3 sts, k2tog, k1 on every RS row, 2 times in all.", "38 38 36"),
    # --- two lines at the same time ---
    _(F, f"{TOLD}{BEGINS}{ENDS}", "38 38 36 36 35", {1: "k1 ssk k34 k2tog k1", 5: "k1 ssk k33"}),
    _(F, f"Note: {TOLD}{BEGINS}{ENDS}", "38 38 36 36 35"),
    _(F, f"Read on to the end of this section before you begin, as armhole and neck are shaped at the same time.\n{BEGINS}{ENDS}", "38 38 36 36 35"),
    _(F, f"{BEGINS}{ENDS}", "39 39 38 38 37 37 36 36 35 | 39 39 38 38 37 36 36 35"),
    _(F, f"{TOLD}{BEGINS}Knit 2 rows.", ""),
    _(F, f"Note: {TOLD}{BEGINS}Work 2 rows.\n{ENDS}", ""),
    _(F, "Armhole and neck are shaped at the same time.\nKnit 2 rows.", ""),
    # --- two edges in one line ---
    _(FRONT, "Work 4 rows dec 1 st at neck edge in every row.", "39 38 37 36", {1: "k37 dec k1", 2: "p1 dec p36"}),
    _(FRONT, "Work 4 rows dec 1 st at neck edge in every row, AT THE SAME TIME dec 1 st at armhole edge in 2nd and foll alt row.", "39 37 36 34"),
    _(FRONT, "Work 5 rows dec 1 st at armhole edge only in 2nd and every foll alt row.", "40 39 39 38 38"),
    _(FRONT, "Work 3 rows dec 1 st at neck edge in 2nd and foll alt row.", ""),
    _(FRONT, "Knit 4 rows, at the same time dec 1 st at neck edge on every row.", ""),
    _(FRONT, "Dec 1 st at armhole edge of next 5 rows, at the same time dec 1 st at neck edge on 2nd and every foll alt row.", "39 37 36 34 33"),
    _(FRONT, "Dec 1 st at armhole edge of next 3 rows, then on foll 2 alt rows, at the same time dec 1 st at neck edge on next and every foll RS row.", "38 37 35 35 33 33 31"),
    _(FRONT, "Dec 1 st at armhole edge on every RS row, at the same time dec 1 st at neck edge on every RS row until 34 sts rem.", "38 38 36 36 34"),
    _(FRONT, "Dec 1 st at armhole edge on every RS row, at the same time dec 1 st at neck edge on every RS row until 35 sts rem.", ""),
    _(RAGLAN, "Cont to dec at raglan edge on every RS row as before, at the same time dec 1 st at neck edge on next 3 rows.", "37 36 34", {1: "k2 skp k32 dec k1", 3: "k2 skp k29 dec k1"}),
    _(RAGLAN, "Still shaping raglan on every RS row as before, dec 1 st at neck edge on next 3 rows.", "37 36 34", {1: "k2 skp k32 dec k1"}),
    _(RAGLAN, "Work 3 rows, dec 1 st at raglan edge on every RS row as before.", "38 38 37", {1: "k2 skp k35"}),
    _(FRONT, "BO 4 sts at neck edge once, then dec 1 st at neck edge every RS row 2 times.", "40 36 35 35 34 | 36 36 35 35 34"),
    _(RAGLAN, "Dec at raglan edge as before on every RS row 2 times.", "38 38 37", {1: "k2 skp k35"}),
    _(FRONT, "Dec at raglan edge as before on every RS row 2 times.", ""),
    _(RAGLAN, "Dec 1 st at neck edge as before on every RS row 2 times.", ""),
    _(FRONT, "At neck edge, dec 1 st every row 2 times, then every other row 2 times.", "39 38 38 37 37 36"),
    _(FRONT, "Next row (RS): K to end, but dec 1 st at neck edge.", "39", {1: "k37 dec k1"}),
    # --- cast off in steps ---
    _(F, "Cast off 5 at beg of next 4 rows, then 4 at beg of foll 2 rows.", "35 30 25 20 16 12"),
    _(F, "Cast off 5 sts at beg of next row, then 5 at beg of foll alt row.", "35 35 30"),
    _(F, "Cast off, taking 2 tog all along the row.", "0"),
    _(F, "Next row: Cast off 5 sts, taking 2 tog across.", ""),
    _(FRONT, "Bind off 5 sts at shoulder edge every other row twice, then 4 sts once.", "35 35 30 30 26"),
    # --- spread over a part of the row ---
    _(F, "Next row: K5, k to last 5 sts dec 6 evenly, k5.", "34"),
    _(F, "Next row: K5, p to last 5 sts, inc 5 sts evenly, k5.", "45", {1: "k5 p3 m1 p6 m1 p6 m1 p6 m1 p6 m1 p3 k5"}),
    _(F, "Knit, increasing 4 sts evenly spaced, using M1L.", "44"),
    _(F, "Knit, increasing 4 sts evenly spaced, using kfb.", "44", {1: "k4 kfb k9 kfb k9 kfb k9 kfb k5"}),
    # --- another part ---
    _(f"{BACK}== front\n{BEGUN}", "Shape armholes as for back. 30 sts.", "37 34 32 32 30"),
    _(f"{BACK}== front\n{BEGUN}", "Work armhole shaping as for back.", "37 34 32 32 30"),
    _(f"{BACK}== left front\n{BEGUN}", "Shape armhole as for back.", ""),
    _(f"{BACK}== front\n{BEGUN}", "Shape shoulders as for back.", ""),
    _(f"{BACK_RAGLAN}== front\n{BEGUN}", "Shape raglans as given for back until 28 sts rem.", "37 34 32 32 30 30 28"),
    _(f"{BACK_RAGLAN}== front\n{BEGUN.replace('40', '44')}", "Shape raglans as given for back until 28 sts rem.", ""),
    _(BACK_RAGLAN, "== front\nWork as given for back until 28 sts rem in raglan shaping, ending with a WS row.", "40*8 37 34 32 32 30 30 28 28"),
    _(BACK, "== front\nWork exactly as for the back until the armhole shapings have been completed and 30 sts remain.", "40*8 37 34 32 32 30"),
    _(f"{LEFT}Work 4 rows in st st.\n", "Complete to match left front, reversing shapings.", "20 17 16 16 0", {2: "bo3 p17", 3: "k14 k2tog k1"}),
    _(f"{LEFT}Work 3 rows in st st.\n", "Complete to match left front, reversing shapings.", "17 16 16 0"),
    _(f"{LEFT}Work 5 rows in st st.\n", "Complete to match left front, reversing shapings.", "17 16 16 0"),
    _(f"{LEFT}Work 1 row in st st.\n", "Complete to match left front, reversing shapings.", ""),
    _(f"{LEFT}Work 4 rows in st st.\n", "Complete same as Left Front, working armhole decs at end of right side rows.", "20 17 16 16 0"),
    _(f"{LEFT}Work 4 rows in st st.\n", "Complete same as Left Front, working armhole decs at beginning of right side rows.", ""),
    # --- rows with a name, and a rib that is measured ---
    _(f"{F}{DEC}Purl 1 row.\n", "Work dec row, then purl 1 row, 3 times in all.", "36*2 34*2 32*2"),
    _(R, "Knit 3 rnds.\nWork in k1, p1 rib until rib measures 2 cm.", "40*3 40*5 | 40*3 40*6", {4: "k1 p1 " * 20}),
    _(B, "Rib row: *K1, p1; rep from * to end.\nRep rib row until rib measures 2 cm.", "40*5 | 40*6"),
)
# fmt: on
