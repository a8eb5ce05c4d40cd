"""Garter edges beside shaping. The rows are worked out by hand: the edge is where the page's own row has it."""

from __future__ import annotations

from stepper.plan.fabric.borders import WIDEST, border_of
from stepper.plan.state.in_hand import Column
from tests.plan.test_compile import plan_of
from tests.project.samples import project
from tests.tables import each_row

GARTER: Column = (("k", ""), ("p", ""))
PLAIN: Column = (("k", ""), ("k", ""))


def rows(work: str) -> list[str]:
    """Return the rows of a work, as they are written."""
    return [each.instruction for each in plan_of(project(work)).rounds]


@each_row("even", ["Work 3 rows even.", "Work 3 rows in pattern.", "Next row: Patt to end.\nNext row: Patt to end.\nNext row: Patt to end."])
@each_row(
    ("shaped", "edge", "left"),
    [
        ("K1, m1, k to last st, m1, k1", 2, 26),
        ("K2, yo, k to last 2 sts, yo, k2", 3, 26),
        ("K1, ssk, k to last 3 sts, k2tog, k1", 3, 14),
        ("K3, m1, k to last 3 sts, m1, k3", 3, 26),
    ],
)
def test_garter_edges_stay_as_wide_as_the_page_has_them(shaped: str, edge: int, left: int, even: str) -> None:
    """An increase inside the edge pushed its stitches inwards, and the row back was "k1, p1, k1, p…", in silence."""
    work = (
        f"Cast on 20 sts.\nRow 1 (RS): {shaped}.\nRow 2: K{edge}, p to last {edge} sts, k{edge}.\n"
        f"Rep rows 1 and 2 once.\nNext row (RS): {shaped}.\n{even}\nBind off."
    )
    back = f"k{edge}, p{left - 2 * edge}, k{edge}"
    assert rows(work.replace("\\\n", "\n"))[-4:-1] == [back, "knit", back]


def test_a_wide_edge_stays_as_wide_beside_decreases_within_it() -> None:
    """Five stitches became four at the first decrease and stayed four at the next, in silence.

    By hand: the edge is five stitches wherever the page has it; 36 stitches are left, 26 between the edges.
    """
    work = (
        "Cast on 40 sts.\nRow 1 (RS): Knit.\nRow 2: K5, p to last 5 sts, k5.\nRep rows 1 and 2 twice.\n"
        "Next row: K1, ssk, k to last 3 sts, k2tog, k1.\nWork 1 row in pattern.\n"
        "Next row: K1, ssk, k to last 3 sts, k2tog, k1.\nWork 1 row in pattern.\nBind off."
    )
    assert [rows(work)[-4], rows(work)[-2]] == ["k5, p28, k5", "k5, p26, k5"]


def test_an_edge_that_is_bound_off_is_no_edge_any_more() -> None:
    """Behind an armhole there is stockinette up to the edge."""
    work = (
        "Cast on 30 sts.\nRow 1 (RS): Knit.\nRow 2: K2, p to last 2 sts, k2.\nRep rows 1 and 2 twice.\n"
        "Bind off 5 sts at beg of next 2 rows.\nWork 2 rows in pattern.\nBind off."
    )
    assert rows(work)[-3:-1] == ["knit", "purl"]


def test_an_edge_has_few_stitches() -> None:
    """A piece in garter stitch has no edge in garter stitch."""
    assert border_of([GARTER] * 3 + [PLAIN] * 9) == 3
    assert border_of([PLAIN] * 9) == 0
    assert border_of([GARTER] * (WIDEST + 1) + [PLAIN] * 9) == 0


def test_a_broken_rib_that_ends_on_a_purl_has_no_garter_edge() -> None:
    """Its purl columns look like an edge in garter; beside a decrease two of them became knit, in silence.

    Worked out by hand: of twelve columns (k, p in turn) the first decrease takes the eleventh, the next one the ninth.
    """
    work = (
        "Cast on 12 sts. Work flat.\nRow 1 (RS): *K1, p1; rep from * to end.\nRow 2: Purl.\nRep rows 1 and 2 twice.\n"
        "Keeping pattern correct, dec 1 st at end of every RS row 3 times.\nWork 2 rows even in pattern.\nBind off."
    )
    assert rows(work)[7:12:2] == [
        "k1, (p1, k1) 4 times, dec, p1",
        "(k1, p1) 4 times, dec, p1",
        "k1, (p1, k1) 3 times, dec, p1",
    ]
    assert rows(work)[13] == "k1, (p1, k1) 3 times, p2"
