"""Stretches that work a part, a section or rows again, each with its meaning as a knitter works it out.

The form is that of `stretches`. The second half of the table looks like the first and means something else, or nothing that is
sure. Source: common practice. It is long because it is a table.
"""

from __future__ import annotations

from tests.plan.stretches import Stretch

F = "Cast on 80 sts. Work flat.\nWork 4 rows in st st.\n"
"""The next row is a right-side row."""
R = "Cast on 80 sts.\nJoin in the round.\nKnit 2 rounds.\n"
DEC = f"{F}Row 1 (RS): K1, k2tog, k to end.\nRow 2: Purl.\n"
OFF2 = f"{F}Next row (RS): Bind off 2 sts, k to end.\n"
DEC_ROUND = f"{R}Dec rnd: K1, k2tog, k to last 3 sts, ssk, k1.\n"
TURNED = f"{F}Next row (RS): K32, turn, leaving rem 48 sts on a holder.\nPurl 1 row.\nWork 4 rows in st st.\nBind off.\n"
BACK = (
    "== back\nCast on 40 sts. Work flat.\n1st row (RS): *K1, p1; rep from * to end.\n2nd row: *K1, p1; rep from * to end.\n"
    "Rep these 2 rows once more.\n** Work 4 rows in st st. **\nShape armholes: Bind off 3 sts at beg of next 2 rows.\n"
    "Dec 1 st at each end of next and foll alt row.\nWork 8 rows in st st.\nBind off.\n"
)
ONE = "== section one\nCast on 40 sts. Work flat.\nRow 1 (RS): Knit.\nRow 2: Purl.\nRow 3: K1, k2tog, k to end.\nRow 4: Purl.\n"
LEFT = "== Left front\nCast on 20 sts. Work flat.\nWork 2 rows in st st.\nNext row (RS): K to last 3 sts, k2tog, k1.\nPurl 1 row.\nBind off.\n"
CO40 = "== front\nCast on 40 sts. Work flat.\n"
RIBBED = " ".join(["k1 p1"] * 20)


def _(before: str, lines: str, means: str, rows: dict[int, str] | None = None, **more: str) -> Stretch:
    return Stretch(before=before, lines=lines, means=means, rows=rows or {}, **more)


# fmt: off
REFERENCE_STRETCHES: tuple[Stretch, ...] = (
    # --- another part ---
    _(BACK, f"{CO40}Work from ** to ** as given for Back.", "40*4", {1: "k40"}),
    _(BACK, f"{CO40}Work as for the Back between ** and **.", "40*4", {1: "k40"}),
    _(BACK, "== front\nFollow instructions for Back to **.", "40*4", {1: RIBBED}),
    _(BACK, "== front\nCast on and work rib as for Back.\nKnit 2 rows.", "40*6", {4: RIBBED, 5: "k40"}),
    _(BACK, "== front\nCast on 30 sts and work rib as given for Back.\nKnit 1 row.", "30*5", {1: " ".join(["k1 p1"] * 15), 5: "k30"}),
    _(BACK, f"{CO40}Work 2 rows in 1x1 rib as given for back.", "40*2", {2: RIBBED}),
    _(BACK, f"{CO40}Work 1cm in 1x1 rib as for back, ending with a 2nd row.", "40*4 | 40*2"),
    _(BACK, "== front\nWork as for Back to **.\nWork 2 rows in st st.\nShape armholes as for Back.", "40*6 37 34 32 32 30"),
    _(BACK, "== front\nWork as for Back to **.\nWork 2 rows in st st.\nDec for armholes as for Back.", "40*6 37 34 32 32 30"),
    _(BACK, f"{CO40}Work in st st until same length as back.", "40*21"),
    _("", f"{LEFT}== Right front\nKnit this as the left, but mirrored: the neck decreases now lie at the beginning of the RS rows.", "20*2 19 19 0 20*2 19 19 0", {8: "k1 ssk k17"}),
    # --- a section ---
    _(ONE, "== section two\nWork the 4 rows of Section One twice.", "39 39 38 38 38 38 37 37"),
    _(ONE, "== section two\nWork Section One twice, beginning with Row 3 the first time only.", "38 38 38 38 37 37", {1: "k1 k2tog k36"}),
    _(ONE, "== section two\nRow 1 (RS): As row 3 of Section One.\nRow 2: Purl.\nRepeat these 2 rows once more.", "38 38 37 37"),
    _(ONE, "== section two\nWork rows 1 to 4 of Section One once, then rows 1 and 2 once more.", "39 39 38 38 38 38"),
    _(ONE, "== section two\nWork Section One once more, ending after row 3.", "39 39 38"),
    _(ONE, "== section two\nWork Section One twice, omitting the last row.", "39 39 38 38 38 38 37"),
    # --- rows ---
    _(DEC, "Rep the last 2 rows twice more, then the first of these 2 rows once more.\nPurl 1 row.", "78 78 77 77 76 76", sides="RWRWRW"),
    _(f"{OFF2}Purl 1 row.\n", "Rep every RS row twice more.\nPurl 1 row.", "76 76 74 74", {1: "bo2 k76"}, sides="RWRW"),
    _(DEC_ROUND, "Work this decrease round 3 times in all, with 2 rounds between each.", "78*2 76 76*2 74"),
    _(DEC_ROUND, "Make this decrease round 3 times altogether, with 3 rounds from one to the next. 74 sts.", "78*2 76 76*2 74"),
    _(f"{R}Rnd 1: K1, k2tog, k to last 3 sts, ssk, k1.\nRnd 2: Knit.\n", "Then work Rnd 1 on every round until you have 72 sts left.", "76 74 72"),
    _(F, "Row 1 (RS): Knit.\nRow 2: Purl.\nRepeat rows 1 and 2 eleven more times.", "80*24"),
    _(F, "Row 1 (RS): K1, m1, k to end. (1 st more)", "81"),
    _(DEC, "Rep the last 2 rows twice more and cast off.", "78 78 77 77 0"),
    _(TURNED, "With RS facing, rejoin yarn to rem sts, bind off 16 sts, k to end.\nPurl 1 row.\nWork until same length as first side.\nBind off.", "32 32 32*4 0"),
    _(f"{F}Next row (RS): K32, turn, leaving rem 48 sts on a holder.\nWork 5 rows in st st.\nLeave these sts on a holder.\n", "With RS facing, rejoin yarn to rem 48 sts. K to end.\nWork even until same length as first side.", "48 48*5", sides="RWRWRW"),
    _("", "== Side\nCast on 20 sts. Work flat.\nKnit 2 rows.\nBind off.\nMake the second side the same.", "20*2 0 20*2 0"),
    # --- what looks like it and is not sure ---
    _(BACK, "== front\nWork from ** to ** as given for Back.", ""),
    _(BACK, f"{CO40}Knit 1 row.\nWork rib as for back.", ""),
    _(BACK, f"{CO40}Knit 1 row.\nWork as for back to **.", ""),
    _(BACK, "== front\nWork as for back to **, then as for front.", ""),
    _(BACK, f"{CO40}Work rib as for back until 40 sts remain.", ""),
    _(BACK, f"{CO40}Work in st st until same length as first side.", ""),
    _(BACK, f"{CO40}Work in st st until same length as first sleeve.", ""),
    _(ONE, "== section two\nRepeat Section One.", ""),
    _(ONE, "== section two\nWork the 6 rows of Section One twice.", ""),
    _("", f"{LEFT}== Right front\nKnit this as the left, but mirrored: the neck decreases now lie at the end of the RS rows.", ""),
    _(f"{DEC}Row 3: Knit.\nRow 4: Purl.\n", "Rep the last 4 rows twice more, then the first of these 4 rows once more.", ""),
    _(f"{OFF2}Knit 1 row.\nPurl 1 row.\n", "Rep every RS row twice more.", ""),
    _(f"{F}Knit 1 row.\nNext row (WS): Bind off 2 sts, p to end.\n", "Rep every RS row twice more.", ""),
    _(f"{R}Rnd 1: K1, k2tog, k to last 3 sts, ssk, k1.\nRnd 2: Knit.\n", "Then work Rnd 1 on every 4th round until you have 72 sts left.", ""),
    _(F, "Row 1 (RS): K1, m1, k to end. (3 sts more)", ""),
    _(TURNED, "Make the second side the same.", ""),
    _(TURNED, "With RS facing, rejoin yarn to rem sts, bind off 16 sts, k to end.\nWork 8 rows in st st.\nWork until same length as first side.", ""),
)
# fmt: on
