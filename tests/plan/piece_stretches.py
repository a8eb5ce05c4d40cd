"""Stretches in which stitches wait, part, are picked up, mirrored and joined, each with its meaning as a knitter works it out.

The form is that of `stretches`. The second half of the table looks like the first and means something else, or nothing that is
sure. Source: common practice. It is long because it is a table.
"""

from __future__ import annotations

from tests.plan.stretches import Stretch

F = "Cast on 80 sts. Work flat.\nWork 4 rows in st st.\n"
"""The next row is a right-side row."""
R = "Cast on 80 sts.\nJoin in the round.\nKnit 2 rounds.\n"
TURNED = f"{F}Next row (RS): K32, turn, leaving the remaining sts to wait.\nPurl 1 row.\n"
MARKED = f"{R}Set-up rnd: K20, k1 (mark this st), k to end.\n"
OFF = "Cast on 80 sts. Work flat.\nWork 2 rows in st st.\nBind off.\n"
PIECES = (
    "== Body\nCast on 80 sts.\nJoin in the round.\nKnit 3 rounds, ending 4 sts before end of last round.\n"
    "Next rnd: Bind off 8 sts, k 32, bind off 8 sts, k to end.\nPlace all sts on a holder.\n"
    "== Sleeve\nCast on 20 sts.\nJoin in the round.\nKnit 3 rounds.\nNext rnd: Bind off 4 sts, k to end.\nPlace all sts on a holder.\nMake another sleeve.\n"
)


def _(before: str, lines: str, means: str, rows: dict[int, str] | None = None, **more: str) -> Stretch:
    return Stretch(before=before, lines=lines, means=means, rows=rows or {}, **more)


# fmt: off
PIECE_STRETCHES: tuple[Stretch, ...] = (
    # --- who waits, on what ---
    _(F, "Next row (RS): K32, turn, leaving the remaining sts to wait.\nPurl 1 row.", "32 32", held="48"),
    _(F, "Next row (RS): K30 and turn; the other 50 sts stay on their needle.\nPurl 1 row.", "30 30", held="50"),
    _(F, "Next row (RS): K8, park the next 12 sts on a piece of string, k to end.", "68", held="12"),
    _(F, "Next row (RS): K8 and place these 8 sts on a pin, k to end.\nPurl 1 row.", "80 72", held="8"),
    _(TURNED, "Bind off.\nLeave the centre 16 sts on a safety pin. With RS facing, join yarn at the neck edge and knit to the end.\nPurl 1 row.", "0 32 32", held="16", sides="RRW"),
    _(TURNED, "Knit 1 row.\nPlace on a holder.\nLeave the centre 16 sts on a thread. Join yarn at the neck edge with the RS facing and knit to end.\nPurl 1 row.", "32 32 32", held="48", sides="RRW"),
    _(R, "On the last round, stop 4 sts before the end of the round.\nDivide for front and back: Bind off the next 8 sts, knit until there are 32 sts on the right needle after the bind-off, bind off the following 8 sts, knit to the end.\nLet the front rest on a holder while you work the back: 32 sts.\nPurl 1 row.", "64 32 | 80 64 32", held="32"),
    _(R, "Next rnd: Cast off 5 sts, k until 30 sts for the front, cast off 10 sts, k until 30 sts for the back, cast off the remaining 5 sts.", "60", {1: "bo5 k30 bo10 k30 bo5"}),
    _(F, "Next row (RS): Bind off 20 sts, k until there are 40 sts on needle, bind off rem sts.", "40", {1: "bo20 k40 bo20"}),
    _(f"{F}Next row (RS): K27, bind off 26 sts, k27.\n", "Continue on the last 27 sts only; the others can stay on the needle.\nPurl 1 row.", "27", held="27"),
    _(F, "Next row (RS): K32, join a second ball of yarn, bind off 16 sts, knit to end.\nWork both shoulders at the same time, each with its own ball.\nPurl 1 row.\nDecrease 1 st at each neck edge on every RS row twice.", "64 64 62 62 60"),
    # --- shaping in steps at one end ---
    _(F, "At the neck edge (beginning of the WS rows) bind off 3 sts once and 2 sts twice.", "80 77 77 75 75 73", sides="RWRWRW"),
    _(F, "Bind off 2 sts at the beginning of this and the next RS row.", "78 78 76", sides="RWR"),
    _(F, "Bind off for the armhole at the start of each row: 4 sts twice, 2 sts twice, 1 st 4 times.", "76 72 70 68 67 66 65 64"),
    _(F, "Decrease 1 st at neck edge on next RS row (k1, ssk, k to end). Decrease once more in the same manner. 78 sts.", "79 79 78", {1: "k1 ssk k77", 3: "k1 ssk k76"}),
    # --- picked up along edges ---
    _(OFF, "Pick up and knit 14 sts down the left side, 12 across the front, 14 up the right side, and 26 around the back neck. 66 sts.", "66"),
    _(OFF, "Start at the side seam. Pick up and knit 4 sts along the cast-off edge, 34 up to the shoulder, the same number down the other side, and 4 sts to finish. 76 sts.", "76"),
    _(OFF, "Pick up 80 sts around the neck: 30 along the back, 12 down each side and 26 across the front.", "80"),
    _(OFF, "Pick up 40 sts along the left edge, 1 st at the point (mark it), 40 sts up the right edge.\nJoin in the round.\nRnd 1: Knit to 1 st before the marked st, CDD, k to end.\nRnd 2: Knit.\nRnd 3: Knit to within 1 st of the marked st, CDD, k to end.", "81 79 79 77", {2: "k39 s2kp k39", 4: "k38 s2kp k38"}),
    _(MARKED, "Rnd 1: Knit to the marked st, yo, knit the marked st, yo, k to end.\nRnd 2: Knit to the marked st, yo, k1, yo, k to end.", "82 84", {1: "k20 yo k1 yo k59", 2: "k21 yo k1 yo k60"}),
    # --- parts as others, pieces joined ---
    _("", "== Left front\nCast on 20 sts. Work flat.\nWork 4 rows in st st.\nNext row (RS): K to last 3 sts, k2tog, k1.\nPurl 1 row.\nBind off.\n== Right front\nWork as left front, but mirrored.", "20*4 19 19 0 20*4 19 19 0", {12: "k1 ssk k17"}),
    _("", "== Section 1\nCast on 40 sts. Work flat.\nKnit 2 rows.\n== Section 2\nRow 1 (RS): K1, m1, k to last st, m1, k1.\nRow 2: Knit.\n== Section 3\nWork Section 2 once more. 44 sts.", "40 40 42 42 44 44"),
    _(PIECES, "== Yoke\nJoin all pieces for the yoke: knit 16 sts of first sleeve, 32 sts of front, 16 sts of second sleeve and 32 sts of back. 96 sts.\nKnit 1 round.", "96"),
    # --- what looks like it and is not sure ---
    _(F, "The sleeve stitches stay on their holders.", ""),
    _(F, "The remaining 34 sts are put on a thread for the neck.", ""),
    _(F, "Continue on the last 27 sts only; the others can stay on the needle.", ""),
    _(F, "Place the centre 20 sts on waste yarn.", ""),
    _(F, "Next row (RS): K20, bind off 12 sts, k until there are 20 sts on right needle, k to end.", ""),
    _(OFF, "Pick up 12 sts along each side.", ""),
    _(OFF, "Pick up 80 sts around the neck: 30 along the back, 12 down each side and 20 across the front.", ""),
    _(OFF, "Pick up and knit 20 sts down the side, 3 rows in garter st, bind off.", ""),
    _(f"{F}Place first 12 sts on a holder for front neck.\nBind off.\n", "Pick up and knit 14 sts down the left side, 12 across the front, 14 up the right side. 40 sts.", ""),
    _(F, "At the beginning of RS rows bind off 3 sts.", ""),
    _(f"{R}Set-up rnd: K20, k1 (mark this st), k40, k1 (mark this st), k to end.\n", "Rnd 1: Knit to 1 st before the marked st, s2kp, k to end.", ""),
    _(f"{MARKED}Rnd 1: K10, pm, k to end.\n", "Rnd 2: Knit to 1 st before the marked st, s2kp, k to end.", ""),
    _(f"{F}Next row (RS): K20, k1 (mark this st), k to end.\n", "Next row (WS): Purl to 1 st before the marked st, p3tog, p to end.", ""),
    _(f"{R}Set-up rnd: K20, pm, k20, pm, k to end.\n", "Rnd 1: Knit to 1 st before the marked st, s2kp, k to end.", ""),
    _("== Right glove\nCast on 40 sts.\nJoin in the round.\nKnit 10 rounds.\nBind off.\n", "== Left glove\nWork cuff as for right glove.", ""),
    _("", "== Right mitt\nCast on 40 sts.\nJoin in the round.\nKnit 5 rounds.\nThumb gusset: K20, pm, m1, pm, k20.\nBind off.\n== Left mitt\nWork exactly as for the right mitt as far as the gusset, but with C6F in the panel.", ""),
    _(f"{R}Next rnd: K68, hold 12 sts.\n", "Place the 12 held sts on the needles and pick up 2 sts over the gap. 14 sts.", ""),
)
# fmt: on
