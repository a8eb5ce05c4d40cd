"""Short stretches of work without shaping, told in the words of many pages, each with its meaning; and what only looks like it.

The meanings were written by hand: 28 rows make 10 cm here. Source: common practice. The form is that of `stretches`. A meaning
that ends in `|` may as well be refused; one that is empty must be.
"""

from __future__ import annotations

from tests.plan.stretches import F, R, Stretch

BACK = (
    "== back\nCast on 40 sts. Work flat.\nWork in st st until piece measures 5 cm, ending with a WS row.\n"
    "Shape armholes: Bind off 3 sts at beg of next 2 rows.\nWork 8 rows in st st.\nShape shoulders: Bind off 5 sts at beg of next 2 rows.\nBind off.\n"
)
FRONT = (
    "== front\nCast on 40 sts. Work flat.\nWork in st st until piece measures 5 cm, ending with a WS row.\n"
    "Shape armholes: Bind off 3 sts at beg of next 2 rows.\n"
)


def _(before: str, lines: str, means: str, rows: dict[int, str] | None = None, **more: str) -> Stretch:
    return Stretch(before=before, lines=lines, means=means, rows=rows or {}, **more)


# fmt: off
STRAIGHT: tuple[Stretch, ...] = (
    # --- as set: a stitch that is set otherwise stays so ---
    _("Cast on 40 sts. Join in the round.\n", "*P1, k9; rep from * to end.\nWork as set in stocking stitch for 2 cm.", "40*7", {1: "p1 k9 " * 4, -1: "p1 k9 " * 4}),
    _("Cast on 40 sts. Join in the round.\n", "*P1, k9; rep from * to end.\nWork in St st as established until piece measures 2 cm.", "40*6", {1: "p1 k9 " * 4, -1: "p1 k9 " * 4}),
    _("Cast on 40 sts. Join in the round.\n", "*P1, k9; rep from * to end.\nKnit as set for 2 cm.", "40*7 |", {-1: "p1 k9 " * 4}),
    _("Cast on 40 sts. Join in the round.\n", "*P1, k9; rep from * to end.\nKnit every round as set until piece measures 2 cm.", "40*6 |", {-1: "p1 k9 " * 4}),
    _("Cast on 40 sts. Join in the round.\n", "*P1, k9; rep from * to end.\nWork in established st st for 2 cm.", "40*7", {-1: "p1 k9 " * 4}),
    _("Cast on 40 sts. Join in the round.\n", "Knit 2 rounds.\nCont in stockinette as set for 2 cm.", "40*8", {-1: "k40"}),
    _("Cast on 40 sts.\n", "Row 1 (RS): Knit.\nRow 2: K4, p to last 4 sts, k4.\nCont in st st as set until piece measures 2 cm.", "40*6", {-1: "k4 p32 k4"}),
    _("Cast on 40 sts. Join in the round.\n", "Work in k2, p2 rib for 2 cm.\nWork in St st as established for 2 cm.", ""),
    # --- how far ---
    _(F, "Even to 5 cm, end WS.", "40*10", {1: "k40", 10: "p40"}, sides="RWRWRWRWRW"),
    _(F, "Even to 5 cm, end with RS row.", "40*9 | 40*11", {1: "k40"}),
    _(F, "Then 5 cm more in rib.", ""),
    _(F, "Work 5 cm of twisted rib (k1 through the back loop, p1).", "40*14", {1: "k_tbl p1 " * 20}),
    _(F, "Work 5 cm of twisted rib (k1, p1).", ""),
    _(F, "Change to 5 mm and rib k2, p2 for 5 cm.", "40*14", {1: "k2 p2 " * 10}, needles="5*14"),
    _(F, "Work 5 cm in (K1. P1) ribbing, ending with RS facing for next row.", "40*14", {1: "k1 p1 " * 20}),
    _(F, "Continue without shaping until work measures 5 cms. from the commencement, finishing at the end of a P. row.", "40*10 |", {1: "k40"}),
    _(F, "Continue without shaping until work measures 5 cm from the commencement, finishing at end of a wrong side row.", "40*10", {1: "k40"}),
    _(F, "Go on without shaping until piece measures 5 cm, last row WS.", "40*10", {1: "k40"}),
    _(F, "Repeat these two rows until work measures 5 cm, finishing with a Row 1.", "40*9 | 40*11", {1: "k40", 2: "p40"}),
    _(F, "Row 1: Knit.\nRow 2: Purl.\nKeep repeating these two rows until the work is 5 cm tall from the cast on edge, finishing with a Row 1.", "40*9 | 40*11", {1: "k40", -1: "k40"}),
    _(F, "Work straight until body measures 10 cm, or 2½ in / 6 cm short of where you would like it to end.", "40*24", {1: "k40"}),
    _(F, "Work in k1, p1 rib for 5 cm for turtleneck (or 2 cm for crewneck).", "40*14", {1: "k1 p1 " * 20}),
    _(F, "Work in k1, p1 rib for 5 cm for size small (or 7 cm for size large).", ""),
    _(F, "Work in k1, p1 rib for 5 cm or 7 cm.", ""),
    _(F, "Work even until piece measures 10 cm from the last decrease.", ""),
    _(F, "Knit until piece measures 8 cm from bottom of ribbing.", ""),
    _(F, "Work until 4 cm remain.", ""),
    _(R, "Next rnd: K10, place next 10 sts on a holder, k20.\nWork even until body measures 5 cm from the armpit.", "30*14 | 30*15"),
    # --- edges and the last row ---
    _(F, "St st with 3 garter sts at each edge to 5 cm, end WS.", "40*10", {1: "k40", 2: "k3 p34 k3"}),
    _(F, "Work in st st with 4 edge sts in garter at each side for 5 cm.", "40*14 |", {2: "k4 p32 k4"}),
    _(F, "Work in k1, p1 rib for 5 cm. End with a WS row, and in this last row increase 2 sts somewhere near the sides.", "40*13 42"),
    _(F, "Work in k1, p1 rib for 5 cm, so decrease 4 sts on the last row.", ""),
    _(F, "Work in k1, p1 rib for 5 cm, decreasing 1 st at each end of every row.", ""),
    _(F, "Work even for 5 cm, because of the armhole cast off 3 sts at each side.", ""),
    _(F, "Work even for 5 cm so the cuff has something to grip.", "40*14", {1: "k40"}),
    # --- with what, in rounds or rows ---
    _(F, "Cont even in A only for 5 cm.", "40*14", {1: "k40"}, yarns="A" * 14),
    _(F, "Work 5 cm in rnds of (K1. P1) ribbing.", ""),
    _(F, "K1, P1 rib around for 5 cm.", ""),
    _(F, "Work k1, p1 rib in the round for 5 cm.", ""),
    _(R, "Work k1, p1 rib round and round until the edge measures 5 cm.", "40*14", {1: "k1 p1 " * 20}),
    _(R, "Continue in stockinette, in the round, until it is 5 cm long.", "40*10", {1: "k40"}),
    _(R, "Change to smaller 5 needles.\nKnit 1 rnd.", ""),
    _(F, "Change to 5 mm needles and, starting with a knit row, cont in st st for 5 cm.", "40*14", {1: "k40", 2: "p40"}, needles="5*14"),
    # --- as long as another part ---
    _(BACK + FRONT, "Even until armhole is same depth as back, end WS.", "34*8", {1: "k34", 8: "p34"}),
    _(BACK + FRONT, "Continue without shaping until the front has as many rows as the back.", "34*8", {1: "k34"}),
    _(BACK + FRONT, "Work even until sleeve measures same as back.", ""),
    _(BACK + "== front\nCast on 40 sts. Work flat.\n", "St st until same length as back to armholes.", "40*14", {1: "k40", 14: "p40"}),
    # --- a piece in rows that is joined is not set around as its rows were; a pattern stitch of the page is not the rib in hand ---
    _("Cast on 20 sts. Work flat.\nRow 1 (RS): Knit.\nRow 2: K4, p to last 4 sts, k4.\n", "Knit in the round, straight, for 1 cm.", "20*3", {1: "k20", 2: "k20"}),
    _(F, "Work even in pattern stitch for 2 cm.", ""),
)  # fmt: skip
"""The stretches, by what they tell."""
