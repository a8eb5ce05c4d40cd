"""Short stretches told in prose, in the passive, for some sizes, or of stitches that wait, each with its meaning.

The meanings were written by hand before any of them was read by the program. Source: common practice. The form is that of `stretches`.
A meaning that ends in `|` may as well be refused; one that is empty must be. It is long because it is a table.
"""

from __future__ import annotations

from tests.plan.page_stretches import FLATM, LARGE
from tests.plan.stretches import DEC, DECR, INCR, RIBR, SMALL, THREE, F, R, Stretch

HELD = "Cast on 60 sts. Work flat.\nWork 4 rows in st st.\n"
SMALLEST = {"sizes": "S (M, L)", "size": "S"}
BACK = (
    "== back\nCast on 40 sts. Work flat.\nWork 4 rows in k1, p1 rib.\nKnit 2 rows.\n"
    "Shape armholes: Bind off 3 sts at beg of next 2 rows.\nWork 4 rows in st st.\nBind off.\n"
)


def _(before: str, lines: str, means: str, rows: dict[int, str] | None = None, **more: str) -> Stretch:
    return Stretch(before=before, lines=lines, means=means, rows=rows or {}, **more)


# fmt: off
TOLD: tuple[Stretch, ...] = (
    # --- the passive, the second person, the future ---
    _(R, "Two rnds are knitted, then one is purled.\nKnit 1 rnd.", "40*4 |", {2: "k40", 3: "p40", 4: "k40"}),
    _(R, "Now 4 rnds are worked in k1, p1 rib.", "40*4", {4: "k1 p1 " * 20}),
    _(R, "4 rnds of rib have been worked.\nKnit 1 rnd.", "40 |", {1: "k40"}),
    _(R, "4 rnds will have been purled when you come to the heel.\nKnit 1 rnd.", "40 |", {1: "k40"}),
    _(R, "The next rnd is not purled.\nKnit 1 rnd.", "40 |", {1: "k40"}),
    _(R, "The last 2 rnds were purled by mistake in the photo.\nKnit 1 rnd.", "40 |", {1: "k40"}),
    _(R, "The hem can be purled for 2 rnds.\nKnit 1 rnd.", "40 |", {1: "k40"}),
    _(R, "The next 2 rnds may be purled instead of knitted.\nKnit 2 rnds.", "40*2 |", {1: "k40"}),
    _(R, "2 rnds should be purled before the rib is begun.\nWork 2 rnds in k1, p1 rib.", "40*4 |", {1: "p40", 3: "k1 p1 " * 20}),
    _(R, "4 sts are decreased evenly on the next rnd.\nKnit 1 rnd.", "36*2", {2: "k36"}),
    _(R, "4 sts are decreased on each of the next 2 rnds.\nKnit 1 rnd.", "36 32*2 |"),
    _(R, "4 sts have been decreased.\nKnit 1 rnd.", ""),
    _(R, "4 sts are then bound off at the beginning of the rnd.\nKnit 1 rnd.", "36*2 |"),
    _(F, "3 sts are bound off at the beginning of the next 2 rows.", "37 34"),
    _(F, "3 sts are bound off at each side.\nKnit 1 row.", "37 34*2 |"),
    _(F, "Bound-off sts are counted as 3 at each side.\nKnit 1 row.", "40 |"),
    _(F, "1 st is increased at each end of the next and every following 4th row, until 44 sts are on the needle.", "42*4 44"),
    _(F, "1 st is increased at each end, 2 times in all, on every 4th row.", "42*4 44 | 40*3 42*4 44 | 40*2 42*4 44 | 40*2 42*4 44*2 |"),
    _(F, "The first st of each row is slipped.\nKnit 2 rows.", "40*2 |", {1: "sl k39"}),
    _(R, "You should have knitted 4 rnds by now.\nKnit 1 rnd.", "40 |"),
    _(R, "You will knit 4 rnds after the heel.\nPurl 1 rnd.", "40 |", {1: "p40"}),
    _(R, "We now purl 2 rnds, and then knit 1.", "40*3", {2: "p40", 3: "k40"}),
    _(R, "I purl 2 rnds here, but you need not.\nKnit 1 rnd.", "40 |", {1: "k40"}),
    _(R, "I usually knit 2 more rnds.\nPurl 1 rnd.", "40 |", {1: "p40"}),
    _(R, "I knit 2 rnds, purl 2 rnds.\nPurl 1 rnd.", "40*5 | 40 |"),
    _(R, "If worked loosely, 4 rnds are knitted in place of 3.\nKnit 3 rnds.", "40*3 |"),
    _(R, "Purling 2 rnds, you come to the body.\nKnit 1 rnd.", "40*3 |", {1: "p40"}),
    _(R, "Having purled 2 rnds, knit 1 rnd.", "40 | 40*3 |", {-1: "k40"}),
    _(R, "After purling 2 rnds, knit 1 rnd.", "40*3 |", {1: "p40", 3: "k40"}),
    _(R, "After having knitted 4 rnds, purl 1 rnd.", "40 | 40*5 |", {-1: "p40"}),
    _(R, "Without purling, work 2 rnds.\nPurl 1 rnd.", "40*3 |", {1: "k40"}),
    _(RIBR, "The rib is worked for 4 rnds more, then the needle is changed to 5 mm.\nKnit 1 rnd.", "40*5 |", needles="4*4 5"),
    _(RIBR, "The rib is worked for 4 rnds in all.\nKnit 1 rnd.", "40 | 40*5 |", {-1: "k40"}),
    _(R, "The thumb is worked later over 8 sts.\nKnit 1 rnd.", "40 |"),
    _(R, "The body is worked in garter stitch.\nWork 4 rnds.", "40*4", {1: "p40 | k40"}),
    _(R, "The body is worked in rounds of purl.\nWork 2 rnds.", "40*2 |", {2: "p40"}),
    _(R, "The sleeves are worked in garter stitch.\nWork 4 rnds.", "40*4 |", {1: "k40", 2: "k40"}),
    _(R, "Rib is worked as k1, p1 but only on the last 20 sts.\nWork 2 rnds.", ""),
    _(SMALL, "The body is worked on needle 4 mm.\nKnit 2 rnds.", "40*2", needles="4*2"),
    _(SMALL, "The sleeves are worked on needle 4 mm.\nKnit 2 rnds.", "40*2 |", needles="3.5*2"),
    _(SMALL, "The needles are changed to 4 mm after 2 rnds.\nKnit 4 rnds.", "40*4 |", needles="3.5*2 4*2"),
    _(R, "MC is broken and A joined.\nKnit 1 rnd.", "40 |", yarns="A"),
    _(R, "A is not joined until the yoke.\nKnit 1 rnd.", "40 |", yarns="M"),
    _(R, "A is used for the heel.\nKnit 1 rnd.", "40 |", yarns="M"),
    # --- repeats told in prose ---
    _(F, f"{DEC}P 1 row.\nDo this 3 times in all.", "38*2 36*2 34*2"),
    _(F, f"{DEC}P 1 row.\nDo this 3 more times.", "38*2 36*2 34*2 32*2"),
    _(F, f"{DEC}P 1 row.\nDo that again on every 4th row until you have done it 3 times.", "38*2 38*2 36*4 34 |"),
    _(F, f"{DEC}P 1 row.\nThis is done 3 times.", "38*2 36*2 34*2"),
    _(F, f"{DEC}P 1 row.\nThis was done 3 times on the back.\nK 1 row.", "38*3 |"),
    _(F, f"{DEC}P 1 row.\nThis leaves 38 sts; do the same at the other end.", ""),
    _(F, f"{DEC}P 1 row.\nKeep going like this until 34 sts are left.", "38*2 36*2 34 | 38*2 36*2 34*2"),
    _(F, f"{DEC}P 1 row.\nKeep going like this, but on every 4th row, until 34 sts are left.", "38*2 38*2 36*4 34 | 38*4 36*4 34 |"),
    _(R, f"{DECR}Knit 3 rnds.\nWork these 4 rnds until 34 sts are left, then the first of them twice.", "38*4 36*4 34 32 30 | 38*4 36*4 34*4 32 30 |"),
    _(R, f"{DECR}Knit 3 rnds.\nRepeat twice, decreasing one st fewer each time.", ""),
    _(R, f"{DECR}Knit 3 rnds.\nRepeat, but knit 5 rnds between, twice.", "38*4 36*6 34*6 | 38*6 36*6 34 |"),
    _(R, f"{INCR}Work the inc rnd every 4th rnd, 3 times in all, counting the one just worked.", "42*4 44*4 46 |"),
    _(R, f"{INCR}Work the inc rnd every 4th rnd 3 times, not counting the one just worked.", "42*4 44*4 46*4 48 |"),
    _(R, f"{INCR}Work the inc rnd every 4th rnd 3 times, then every 6th rnd until 50 sts, then knit 1 rnd.", "42*4 44*4 46*4 48*6 50*2 | 40*3 42*4 44*4 46*6 48*6 50*2"),
    _(R, f"{INCR}Knit 3 rnds. The inc rnd is worked on every 4th rnd 3 times in all.\nPurl 1 rnd.", "42*4 44*4 46*2 |", {-1: "p46"}),
    _(R, "Every 3rd rnd, dec 4 sts evenly, until 32 sts are left.", "40*2 36*3 32"),
    _(R, "Every rnd, dec 4 sts evenly, except every 3rd, until 28 sts are left.", "36 32*2 28 |"),
    _(R, "Dec 4 sts evenly every 3rd rnd and every 2nd rnd.", ""),
    _(R, "Rnd 1: *K2, p2; rep from * around.\nEvery following rnd is the same.\nWork until piece measures 3 cm.", "40*4 | 40*8"),
    _(R, "Rnd 1: *K2, p2; rep from * around.\nThe following rnd is the same, and the one after is purled.\nKnit 1 rnd.", "40*4 |", {2: "k2 p2 " * 10, 3: "p40"}),
    _(R, "Rnd 1: *K2, p2; rep from * around.\nEvery following rnd is the same, but moved by one st.\nWork 2 rnds.", ""),
    _(R, "Rnd 1: *K8, k2tog; rep from * around.\nRnd 2: Knit.\nNow leave out the plain rnds: rep rnd 1 with one st fewer between until 16 sts.", "36*2 32 28 24 20 16 |"),
    _(R, "Rnd 1: *K8, k2tog; rep from * around.\nRnd 2: Knit.\nGo on in this way, with one st less before each k2tog every time, until 24 sts are left.", "36*2 32*2 28*2 24 | 36*2 32*2 28*2 24*2"),
    _(R, "Rnd 1: *K8, k2tog; rep from * around.\nRnd 2: Knit.\nGo on in this way, with one st more before each k2tog every time, until 24 sts are left.", ""),
    _(R, "Rnd 1: *K8, k2tog; rep from * around.\nKnit 3 rnds.\nGo on in this way, with one rnd less between each time, until 24 sts are left.", "36*4 32*3 28*2 24 |"),
    _(R, "*Purl 1 rnd, knit 3 rnds* 3 times.\nPurl 1 rnd.", "40*13 |", {4: "k40", 5: "p40"}),
    _(R, "Alternate purl and knit rnds for 6 rnds.", "40*6 |", {1: "p40", 2: "k40"}),
    _(R, "Knit every other rnd and purl those between, for 4 rnds.", "40*4 |"),
    # --- evenly ---
    _(R, "Knit 1 rnd, increasing 4 sts evenly over the first 20 sts.", "44 |"),
    _(R, "Knit 1 rnd, increasing evenly to 44 sts.", "44"),
    _(R, "Knit 1 rnd, increasing 4 sts evenly to 46 sts.", ""),
    _(R, "Knit 2 rnds, on the second increasing 0 (4, 8) sts evenly spaced.", "40 44", **THREE),
    _(R, "Knit 2 rnds, on the first increasing 0 (4, 8) sts evenly spaced.", "44*2", **THREE),
    _(R, "Knit 2 rnds, on both increasing 4 sts evenly spaced.", "44 48 |"),
    _(R, "Knit 4 rnds, on the second and last increasing 4 sts evenly.", "40 44*2 48 |"),
    _(R, "Dec 4 sts evenly in the purl rnd: knit 1 rnd, purl 1 rnd, knit 1 rnd.", "40 36*2 |"),
    # --- stitches that wait ---
    _(HELD, "Next row: K20, put the next 20 sts on a thread, k20.\nWork the last 20 sts first: P 1 row, bind off.", "40 20 0 |", held="40"),
    _(HELD, "K20 and park these 20 sts on a pin, k to end.\nP 1 row.", "60 40", held="20"),
    _(HELD, "K20; the other 40 sts wait on the needle.\nWork 2 rows on these 20 sts.", "20*3 | 60 20*2 |"),
    _(HELD, "Let the first 20 sts wait and work the others.\nK 1 row.", "40 |", held="20"),
    _(HELD, "Let the last 20 sts wait.\nK 1 row.", "40 |", held="20"),
    _(HELD, "Next row: Bind off 10 sts, k until there are 20 sts on the right needle, place these on a pin, k to end.\nP 1 row.", "50 30 | 30*2 |", held="20"),
    _(HELD, "Next row: K20, bind off 20 sts, k until there are 10 sts on the right needle, turn.", ""),
    _(HELD, "K20, bind off 20 sts, k20. Continue on the first 20 sts only; the others wait.\nP 1 row.", "40 20 |", held="20"),
    _(HELD, "K20, bind off 20 sts, k20. Continue on the last 20 sts only; the others can stay on the needle.\nP 1 row.\nBind off.\nWith WS facing, attach yarn to the other 20 sts and purl 1 row.", "40 20 0 20 |", {-1: "p20"}),
    _(R, "Knit to the last 5 sts. Put the last 5 and the next 5 sts on a thread.\nKnit 1 rnd.", "30 | 40 30 | 35 30 |", held="10"),
    _(R, "On the last rnd, stop 4 sts before the end.\nNext rnd: Bind off 8 sts, k to end.", "32 |"),
    _(R, "Knit 2 rnds. On the last rnd, stop 4 sts before the end.\nNext rnd: Bind off 8 sts, k to end.", "40*2 32"),
    _(HELD, "K20, turn and leave rem 40 sts on a holder for right front.\nP 2 rows.\nPlace sts on a holder.\nWith RS facing, rejoin yarn to right front sts and k to end.", "20*3 40 | 60 20*2 40 |", {-1: "k40"}, sides="RWRR"),
    _(R, "Graft the underarm sts using Kitchener stitch.", ""),
    # --- some sizes ---
    _(R, "S and M only: Purl 2 rnds.\nAll sizes: Knit 1 rnd.", "40*3", {2: "p40", 3: "k40"}, **THREE),
    _(R, "S only: Purl 2 rnds. M and L only: Purl 3 rnds. Knit 1 rnd.", "40*4 | 40*3 |", {3: "p40"}, **THREE),
    _(R, "S only: Purl 2 rnds. M and L only: Purl 3 rnds. Knit 1 rnd.", "40*3 | 40*2 |", {2: "p40"}, **SMALLEST),
    _(R, "M: Purl 2 rnds.\nKnit 1 rnd.", "40*3 |", {2: "p40", 3: "k40"}, **THREE),
    _(R, "M: Purl 2 rnds.\nKnit 1 rnd.", "40 |", {1: "k40"}, **LARGE),
    _(R, "L only: (K8, k2tog) 4 times. 36 sts.\nAll sizes: Knit 1 rnd.", "40", {1: "k40"}, **THREE),
    _(R, "L only: (K8, k2tog) 4 times. 36 sts.\nAll sizes: Knit 1 rnd.", "36*2", {2: "k36"}, **LARGE),
    _(R, "The two smaller sizes: Purl 1 rnd.\nLargest size: Purl 2 rnds.\nKnit 1 rnd.", "40*2 | 40 |", {1: "p40"}, **THREE),
    _(R, "The smaller sizes: Purl 1 rnd.\nKnit 1 rnd.", "", **THREE),
    _(R, "Sizes S, L: Purl 1 rnd.\nKnit 1 rnd.", "40", {1: "k40"}, **THREE),
    _(R, "Sizes S to L: Purl 1 rnd.\nKnit 1 rnd.", "40*2", {1: "p40"}, **THREE),
    _(R, "Sizes S and XL: Purl 1 rnd.\nKnit 1 rnd.", "", **THREE),
    _(R, "Purl 1 (-, 2) rnds.\nSize M: K2tog, k to end.\nKnit 1 rnd.", "39*2 |", **THREE),
    _(R, "For all sizes but L, k2tog, k to end.\nKnit 1 rnd.", "39*2 | 39 |", {1: "k2tog k38"}, **THREE),
    # --- marked stitches, markers, edges ---
    _(R, "Mark the 20th st.\nNext rnd: K to 1 st before the marked st, s2kp, k to end.", "38", {1: "k18 s2kp k19"}),
    _(R, "Mark the 20th st.\nNext rnd: K to the marked st, yo, k1, yo, k to end.", "42 |", {1: "k19 yo k1 yo k20"}),
    _(R, "Mark the 20th st.\nNext rnd: K to 1 st before the marked st, s2kp, k to end.\nNext rnd: K to 1 st before the marked st, s2kp, k to end.", "38 36", {2: "k17 s2kp k18"}),
    _(R, "Mark the next st.\nKnit 1 rnd.\nNext rnd: K to the marked st, yo, k to end.", ""),
    _(FLATM, "Row 1 (RS): K to m, sm, k 3 past the marker, turn.\nRow 2: P to m and 3 sts further, turn.\nRow 3: K to end.\nRow 4: P to end.", "40*4 |", {1: "k13 turn " + "rest " * 27}),
    _(FLATM, "Row 1 (RS): K to 3 sts before the second m, turn.\nRow 2: P to 3 sts before the first m, turn.\nRow 3: K to end.\nRow 4: P to end.", "40*4 |"),
    _(BACK, "== front\nWork as for back to armholes.\nKnit 1 row.", "40*7", {7: "k40"}),
    _(BACK, "== front\nWork as for back, but work 2 rows fewer before the armholes.", ""),
    _(BACK, "== front\nWork as for back until armholes have been shaped.\nBind off.", "40*6 37 34 0 |"),
    _(BACK, "== front\nWork as for back, omitting the rib.", "40*2 37 34*5 0 |"),
    # --- heads and places ---
    _(R, "Hem: Purl 2 rnds.\nBody: Knit 2 rnds.", "40*4", {2: "p40", 3: "k40"}),
    _(R, "Hem (optional): Purl 2 rnds.\nBody: Knit 2 rnds.", "40*2 |", {1: "k40"}),
    _(R, "Neck (all sizes): Purl 2 rnds.\nKnit 2 rnds.", "40*4", {2: "p40", 3: "k40"}),
    _(R, "Second hem: As first hem.\nKnit 2 rnds.", ""),
    _(R, "After the hem: Knit 2 rnds.\nPurl 1 rnd.", "40*3 |", {3: "p40"}),
    _(R, "Before the hem: Knit 2 rnds.\nPurl 1 rnd.", "40*3 |", {3: "p40"}),
    _(R, "Finishing: Purl 1 rnd and bind off.", "40 0"),
    _(R, "Finishing: With A, purl 1 rnd, then bind off in MC.", "40 0", yarns="AM"),
    _(R, "Sew on buttons, purl 1 rnd and bind off.", "40 0 |"),
    _(R, "Seams: Sew sleeve seams, then purl 1 rnd.", "40 |"),
    _(R, "Block to 40 cm, then knit 2 rnds.", "40*2 |"),
)
# fmt: on
