"""The edges of a pattern that is shaped there, against a grid drawn on squared paper.

The grid knows nothing of the program: a stitch of it looks as its square says, by its place and its row. Source: common practice
("keep pattern correct", "taking increased sts into pattern"): what is new continues the pattern outwards.
"""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from stepper.plan.fabric.shaped_edges import EdgeNotes, settle_edges
from tests.plan.fabric.test_columns import columns, draft, looks
from tests.plan.fabric.test_established import knit, printed_row, seen

MOSS = {
    "moss": ("kp", "pk"),
    "seed that begins with a purl": ("pk", "kp"),
    "double moss": ("kp", "kp", "pk", "pk"),
    "box": ("kkpp", "kkpp", "ppkk", "ppkk"),
}
RIBS = {"1x1": ("kp",), "2x2": ("kkpp",), "2x2 from a purl": ("ppkk",), "3x2": ("kkkpp",), "5x2": ("kkkkkpp",)}
BOTH = {
    "Inc 1 st at each end of next {row}, taking inc sts into patt.": (1, 1, 1),
    "Inc 1 st at each end of next {row}, working inc sts into patt.": (1, 1, 1),
    "Dec 1 st at each end of next {row}.": (-1, -1, 1),
    "Inc in first st, work in pattern to last st, inc in last st.": (1, 1, 0),
    "Kfb, work in pattern to last st, kfb.": (1, 1, 0),
}
"""A row that shapes: stitches more at its beginning and at its end, and those between the edge and the change."""
ONE = {
    "Inc 1 st at beg of next {row}.": (1, 0, 1),
    "Inc 1 st at end of next {row}.": (0, 1, 1),
    "Dec 1 st at beg of next {row}.": (-1, 0, 1),
    "Dec 1 st at end of next {row}.": (0, -1, 1),
}
WRITTEN = {
    "K1, m1, work in pattern to last st, m1, k1.": (1, 1, 1),
    "K1, k2tog, work in pattern to last 3 sts, ssk, k1.": (-1, -1, 1),
    "P1, m1, work in pattern to last st, m1, p1.": (1, 1, 1),
}


@given(
    name=st.sampled_from(sorted(MOSS) + sorted(RIBS)),
    flat=st.booleans(),
    widths=st.integers(3, 6),
    done=st.lists(
        st.tuples(st.sampled_from(sorted(BOTH) + sorted(ONE) + sorted(WRITTEN)), st.integers(1, 4)), min_size=1, max_size=6
    ),
)
@settings(max_examples=60, deadline=None)
def test_a_pattern_goes_on_to_its_edges_as_the_grid_says(
    name: str, flat: bool, widths: int, done: list[tuple[str, int]]
) -> None:
    """Every stitch of every unshaped row is the one of its square, and the edge stitch of a rib is what it was."""
    tile = MOSS.get(name) or RIBS[name]
    width, high = len(tile[0]), len(tile)
    count, word = width * max(widths, -(-24 // width)), "row" if flat else "round"
    lines = [f"Cast on {count} sts.", "Work flat." if flat else "Join in the round."]
    period = 2 if flat and high == 1 else high
    for number in range(period):
        side = (" (RS)" if number % 2 == 0 else " (WS)") if flat else ""
        written = printed_row(tile[number % high], wrong=flat and number % 2 == 1)
        lines.append(f"{'Row' if flat else 'Rnd'} {number + 1}{side}: {written}")
    row, first, last = period, 0, count - 1
    edges = [tile[0][0], tile[0][(count - 1) % width]]
    squares: dict[int, str] = {}
    for words, even in done:
        if (words in WRITTEN or (words.startswith("Kfb") and flat)) and name in RIBS:
            continue  # a rib with edge stitches of its own, and a kfb purled from behind, are told in other tests
        begins, ends, inset = {**BOTH, **ONE, **WRITTEN}[words]
        lines.append(words.format(row=word))
        if flat and row % 2 == 1:
            begins, ends = ends, begins
        first, last, row = first - begins, last + ends, row + 1
        for at, place, changed in ((0, first, begins), (1, last, ends)):
            if changed and not inset:
                edges[at] = tile[0][place % width]
        lines.append(f"Work {even} {word}s in pattern.")
        for _ in range(even):
            look = "".join(tile[row % high][place % width] for place in range(first, last + 1))
            squares[row] = edges[0] + look[1:-1] + edges[1] if name in RIBS else look
            row += 1
    plan = knit("\n".join(lines))
    assert len(plan.rounds) == row + 1
    for number, look in squares.items():
        assert seen(plan.rounds[number + 1]) == look, (lines, number)


@pytest.mark.parametrize("work", ["moss stitch", "seed stitch"])
@pytest.mark.parametrize("flat", [True, False])
def test_a_pattern_by_its_name_grows_at_both_ends_alike(work: str, flat: bool) -> None:
    """By hand: 23 stitches in rows begin and end with a purl where 21 began and ended with a knit stitch, on the very row."""
    word = "row" if flat else "round"
    plan = knit(
        f"Cast on {21 if flat else 22} sts. {'Work flat.' if flat else 'Join in the round.'}\nWork in {work} for 4 {word}s.\n"
        f"Inc 1 st at each end of next {word}, taking inc sts into patt.\nWork 3 {word}s in patt."
    )
    rows = [seen(each) for each in plan.rounds[-3:]]
    assert all("kk" not in row and "pp" not in row for row in rows)
    assert [row[0] for row in rows] == ["k", "p", "k"]


def test_an_edge_stitch_of_its_own_stays_and_the_new_stitch_goes_on_with_the_moss_beside_it() -> None:
    """By hand: a stitch in stockinette at each edge; inside it the moss stitch grows outwards, k beside p."""
    rows = "Row 1 (RS): K1, *p1, k1; rep from * to last 2 sts, k2.\nRow 2: P1, *p1, k1; rep from * to last 2 sts, p2.\n"
    plan = knit(
        f"Cast on 25 sts. Work flat.\n{rows}Rep rows 1 and 2 twice.\nInc 1 st at each end of next row, taking inc sts into patt.\n"
        "Work 2 rows in patt."
    )
    first, second = seen(plan.rounds[-2]), seen(plan.rounds[-1])
    assert (first[0], first[-1], second[0], second[-1]) == ("k",) * 4
    assert all("kk" not in row[1:-2] and "pp" not in row[1:-2] for row in (first, second))


def test_edge_stitches_worked_otherwise_in_one_row_are_told() -> None:
    """Knitted edges in a shaped row of moss stitch: the pattern goes over them in the rows behind it, and she is told so."""
    work = "Cast on 21 sts. Work flat.\nWork in moss stitch for 4 rows.\n"
    work += "K1, m1, work in patt to last st, m1, k1.\nWork 1 row in patt.\n" * 2
    plan = knit(work)
    assert any("at its edges otherwise than the pattern" in each.text for each in plan.warnings)
    assert "kk" not in seen(plan.rounds[-1])


def test_a_new_stitch_without_a_repeat_beside_it_is_told() -> None:
    """Three stitches are no repeat of any kind: the new ones become stockinette, and she is told so."""
    plan = knit("Cast on 4 sts. Work flat.\nRow 1 (RS): P1, k1, p2.\nRow 2: K2, p1, k1.\nInc 1 st at each end of next row.\nWork 1 row in patt.")
    assert any("no repeat of the pattern stands" in each.text for each in plan.warnings)


def test_beside_a_marker_the_new_stitch_stands_next_to_it() -> None:
    """By hand: a stitch worked twice on each side of a marker in 2x2 rib; the pattern goes on towards the marker from both sides."""
    row = draft("(k2 p2)x3 inc inc (p1 k2 p1)x3", 26, 28, markers=(14,))
    before = columns("kkpp" * 3 + "k" + "k" + "pkkp" * 3)
    after = columns("kkpp" * 3 + "kk" + "kk" + "pkkp" * 3)
    notes = EdgeNotes()
    assert looks(settle_edges(before, after, row, 0, notes)) == "kkpp" * 3 + "kk" + "kp" + "pkkp" * 3
    assert not notes.alone
    assert not notes.worked_otherwise


def test_behind_a_row_that_leaves_no_stitch_nothing_is_settled() -> None:
    """All are grafted, and a line that looks for the pattern behind them is refused, with a reason."""
    assert settle_edges(columns("kkpp"), [], draft("graft4", 4, 0), 0, EdgeNotes()) == []
