"""Shaping and repeats told in prose, each with its meaning as a knitter works it out.

The meanings were written by hand before any of them was read by the program. Source: common practice. The form is that of
`stretches`; those that only look alike, and mean something else or cannot be known, stand at the end. It is long because it is a
table.
"""

from __future__ import annotations

from tests.plan.stretches import DEC, DECR, INCR, B, F, R, Stretch

EIGHT = "Cast on 8 sts.\nJoin in the round.\n"
RAGLAN = (
    "Cast on 40 sts.\nJoin in the round.\nRnd 1: *K10, pm; rep from * to end.\nRnd 2: *K1, m1l, k to 1 st before marker, m1r, k1, sm; rep from * to end.\n"
)
GUSSET = "Cast on 40 sts.\nJoin in the round.\nRnd 1: K1, pm, k1, pm, k to end.\nRnd 2: K1, sm, m1l, k to marker, m1r, sm, k to end.\n"
PLACED = "Cast on 40 sts.\nJoin in the round.\nRnd 1: K1, pm, m1l, k1, m1r, pm, k to end.\n"
ROUND60 = "Cast on 60 sts.\nPm and join in the round.\n"


def _(before: str, lines: str, means: str, rows: dict[int, str] | None = None, **more: str) -> Stretch:
    return Stretch(before=before, lines=lines, means=means, rows=rows or {}, **more)


THREE = {"sizes": "S (M, L)"}

# fmt: off
TOLD: tuple[Stretch, ...] = (
    # --- a round worked again, at intervals ---
    _(R, f"{DECR}Do that again every 3rd round until you've done it 3 times in all. 34 sts left.", "38*3 36*3 34"),
    _(R, f"{DECR}Do that again every 3rd (4th, 5th) round until you've done it 2 (3, 4) times in all.", "38*4 36*4 34", **THREE),
    _(R, f"{DECR}Do the same on every third round, 2 more times.", "38*3 36*3 34"),
    _(R, f"{DECR}Work decrease round every 4th round until you have worked it 3 times. 34 sts.", "38*4 36*4 34 | 40*3 38*4 36*4 34"),
    _(R, f"{INCR}Repeat the increase round for every 2 cm in total 3 times = 46 sts.", "42*6 44*6 46 | 42*5 44*5 46"),
    _(R, f"{INCR}On every 3rd round, work the increase round 2 more times.", "42*3 44*3 46"),
    _(R, f"{INCR}Increase in this way every 3rd round 2 times and every 4th round 1 time; the round you've just worked counts as the first of the increases.", "42*3 44*4 46"),
    _(R, f"{INCR}Continue to increase like this on every 3rd rnd until there are 46 sts.", "42*3 44*3 46"),
    _(R, f"{INCR}Increase like this every 3rd round, 3 times altogether = 46 sts.", "42*3 44*3 46"),
    _(R, f"{INCR}Repeat this increase every 3 rounds, 2 more times.", "42*3 44*3 46"),
    _(R, f"{DECR}Decrease like this every other round 2 times: 34 sts left.", "38*2 36*2 34"),
    _(R, f"{DECR}Keep decreasing in every second round until 34 sts remain, then in every round until 30 sts remain.", "38*2 36*2 34 32 30"),
    _(R, f"{DECR}Now only work the decrease round until 34 sts remain.", "38 36 34"),
    _(F, f"{DEC}Decrease in the same way on every RS row, 3 times in all.", "38*2 36*2 34"),
    _(F, "Decrease 1 st at each side on the next and every following RS row, 3 times in total. 34 sts remain.", "38 38 36 36 34"),
    _(F, "On every RS row, k2, k2tog, k to last 4 sts, skp, k2. This is done 3 times.", "38 38 36 36 34"),
    _(F, "Increase 1 stitch at each end of the next row and then on every following 4th row, 3 times altogether.", "42*4 44*4 46"),
    # --- with a number of stitches, at raglans and gussets ---
    _(R, f"{INCR}Increase 2 sts in the same way on next round and every following alternate round 3 times in all.", "42 44 44 46 46 48"),
    _(RAGLAN, "Work raglan increases every other round 3 times in total.", "48 56 56 64"),
    _(RAGLAN, "Increase 8 sts in this manner on every other round until there are 64 sts.", "48 56 56 64"),
    _(GUSSET, "Increase 2 sts for the gusset on every third round, 3 times in all.", "42*2 44*3 46"),
    _(GUSSET, "Continue to increase like this on every 3rd rnd until there are 7 sts between the markers, 46 sts altogether.", "42*2 44*3 46"),
    _(PLACED, "Increase like this on every 3rd rnd until there are 7 sts between the markers.", ""),
    _(PLACED, "Increase 2 sts in the same way on every 3rd rnd, 3 times altogether.", ""),
    # --- more or fewer stitches between, each time ---
    _(EIGHT, "Rnd 1: *K1, m1; rep from * around. 16 sts.\nRnd 2: Knit.\nContinue in this way, increasing 8 sts on every other round, with one more knit stitch before each increase every time, until you have 32 sts.", "16 16 24 24 32", {3: "k2 m1 " * 8, 5: "k3 m1 " * 8}),
    _(R, "Rnd 1: *K3, k2tog; rep from * around. 32 sts.\nRnd 2: Knit.\nCarry on like this, with one stitch less before each k2tog, until you have 16 sts.", "32 32 24 24 16", {3: "k2 k2tog " * 8, 5: "k1 k2tog " * 8}),
    # --- spread evenly ---
    _(R, "Knit 1 round where 4 (8) 10 sts are increased evenly = 44 (48) 50 sts.", "48", {1: "k5 m1 " * 8}, sizes="S (M, L)"),
    _(R, "On the next round increase 8 sts evenly spaced.", "48", {1: "k5 m1 " * 8}),
    _(R, "Knit 3 rounds, and on the last of these decrease 4 sts evenly spaced.", "40 40 36", {3: "k8 k2tog " * 4}),
    _(R, "Knit 2 rnds, decreasing 4 sts evenly in second rnd. 36 sts.", "40 36"),
    _(R, "Knit one round and increase evenly to 48 sts.", "48"),
    # --- rows worked again ---
    _(F, "Row 1: *Sl 1, k1; rep from * to end.\nRow 2: Sl 1, p to end.\nWork these two rows until you have 8 rows, ending with row 2. Then work Row 1 one last time.", "40*9", {9: "sl k " * 20}),
    _(R, "Rib round: *K1, p1; rep from * around.\nRepeat rib round 3 times more, or until brim is 4 cm deep.", "40*4", {4: "k1 p1 " * 20}),
    _(R, "Rnd 1: K1, k2tog, k to last 3 sts, ssk, k1.\nRnd 2: Knit.\nThen do just Rnd 1 another 2 times: 34 sts.", "38 38 36 34"),
    _(R, "Rnd 1: K1, k2tog, k to last 3 sts, ssk, k1.\nRnd 2: Knit.\nNow skip the plain rounds and do Round 1 every time: 36, 34 sts.", "38 38 36 34"),
    _(R, "Rnd 1: K1, k2tog, k to last 3 sts, ssk, k1.\nRnd 2: Knit.\nAlternate rounds 1 and 2 until 34 sts are left.", "38 38 36 36 34"),
    _(R, "Rnd 1: K1, k2tog, k to last 3 sts, ssk, k1.\nRnd 2: Knit.\nRnd 3: Purl.\nKeep doing rounds 1 and 3 until 34 sts are left.", "38 38 38 36 36 34"),
    _(R, "Rnd 1: *k2, p2* - repeat between the stars all the way around.\nEvery following round is the same. Continue until piece measures 4 cm.", "40*7 | 40*8", {-1: "k2 p2 " * 10}),
    _(R, "Increase round: *Knit 4, M1* = 50 sts.", "50", {1: "k4 m1 " * 10}),
    # --- short rows ---
    _(ROUND60, "Row 1 (RS): From BOR, knit 10, turn.\nRow 2 (WS): Purl to BOR and 10 sts further, turn.\nRow 3: Knit to the double st, knit it, knit 5 sts, turn.\nRow 4: Purl to the double st, purl it, purl 5 sts, turn.", "60*4"),
    _(B, "K30, w&t.\nP20, w&t.\nContinue in this way, leaving 4 more sts unworked at each turn, 2 more times.", "40*6"),
    _(ROUND60, "K5, pm, k to end.\nK10, turn.\nDS, p to 2 sts past BOR, turn.\nDS, k to BOR.", "60*4"),
    _(ROUND60, "K10, turn.\nDS, p to 10 sts past BOR, turn.\nContinue in this way, turning 4 sts further out each time, 2 more times.", "60*6"),
    # --- stripes ---
    _(R, "Knit 2 rounds A, 1 round MC and 1 round A.", "40*4", yarns="AAMA"),
    # --- what looks like them ---
    _(F, "Next row (RS): K10, m1, k to end.\nContinue the increases at each end of every 4th row 3 more times.", ""),
    _(F, "Next row (RS): K10, m1, k to end.\nWork an increase at each end of every 4th row 2 times.", "41*4 43*4 45", {5: "k1 inc k37 inc k1"}),
    _(R, "Increase 2 sts in this manner on every other round until there are 46 sts.", ""),
    _(R, f"{INCR}Increase 4 sts in the same way on every other round until there are 46 sts.", ""),
    _(R, f"{INCR}Work raglan increases every other round 3 times in total.", ""),
    _(R, f"{INCR}Increase 2 sts for the gusset on every third round, 3 times in all.", ""),
    _(R, f"{INCR}Decrease in this way every other round until 30 sts remain.", ""),
    _(R, f"{INCR}Repeat the neck increases every other round 2 more times.", ""),
    _(R, f"{INCR}Repeat this every other round 2 more times, but on the other side of the marker.", ""),
    _(R, f"{INCR}Increase in this way every other round 2 times in all, starting on the 4th round.", ""),
    _(R, "Rnd 1: Knit.\nRnd 2: Purl.\nDo both rounds 3 times.", ""),
    _(R, "In the last round, decrease 4 sts spread evenly.", ""),
    _(R, "Knit 3 rounds, decreasing 4 sts evenly on each of them.", ""),
    _(F, "Row 1: K2, p to last 2 sts, k2.\nRow 2: Knit.\nAlternate these two rows 4 times.", ""),
    _(R, f"{INCR}Increase in this way on every 3rd round until there are 7 sts on each side of the marker.", ""),
    _(R, "Rnd 1: *K3, k2tog; rep from * around.\nCarry on like this, with one stitch more before each k2tog, until you have 16 sts.", ""),
    _(R, "Rnd 1: *K3, m1; rep from * around.\nRnd 2: Knit.\nContinue in this way, with one more stitch between each decrease every time, until you have 30 sts.", ""),
    _(B, "K30, w&t.\nP20, w&t.\nContinue in this way, turning 4 sts earlier on the knit rows only, 2 more times.", ""),
)
"""The stretches."""
