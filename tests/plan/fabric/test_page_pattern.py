"""What "in pattern" means behind a rib, where the page calls other rows the pattern. Worked out by hand."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import faults, plan_of
from tests.project.corpus_judge import text_of

BACK = (
    "== back",
    "Cast on 40 sts.",
    "Work 4 rows in k1, p1 rib.",
    "Row 1 (RS): Knit.",
    "Row 2: Purl.",
    "Row 3: *K2tog, yo; rep from * to end.",
    "Row 4: Knit.",
    "These 4 rows form the patt.",
    "Work 8 rows in patt.",
    "Bind off.",
    "== sleeve",
    "Cast on 20 sts.",
    "Work 4 rows in k1, p1 rib.",
)
ENDED = "Bind off."


@pytest.mark.parametrize("line", ["Cont in patt until sleeve measures 20 cm.", "Work 8 rows in patt.", "Work in pattern, inc 1 st at each end of 5th and every foll 6th row to 24 sts."])  # fmt: skip
def test_the_pattern_of_the_page_is_not_taken_for_the_rib_in_hand(line: str) -> None:
    """The sleeve would be ribbed to its top."""
    assert "the pattern of the page stands in line" in faults(text_of([*BACK, line, ENDED], 1, "cm")[0])


def test_a_rib_called_so_and_rows_called_by_their_name_go_on() -> None:
    """What says which is meant is read."""
    plan = plan_of(text_of([*BACK, "Work 4 rows in rib.", ENDED], 1, "cm")[0])
    assert {run.stitch for run in plan.rounds[-2].runs} == {"k", "p"}
    named = tuple(line.replace("form the patt", "form leaf pattern") for line in BACK)
    plan = plan_of(text_of([*named, "Work 8 rows in leaf pattern.", ENDED], 1, "cm")[0])
    assert {run.stitch for run in plan.rounds[-3].runs} == {"k2tog", "yo"}


def test_in_the_piece_where_the_pattern_stands_it_goes_on() -> None:
    """Nothing is open where its rows were the last that were worked."""
    plan = plan_of(text_of([*BACK, ENDED], 1, "cm")[0])
    assert [row.instruction for row in plan.rounds[9:13]] == ["knit", "purl", "*k2tog, yo; rep from * to end", "knit"]


def test_a_page_whose_pattern_is_a_rib_leaves_nothing_open() -> None:
    """Both readings are ribbed; the one in hand goes on."""
    work = (
        "== back",
        "Cast on 40 sts.",
        "Row 1 (RS): *K2, p2; rep from * to end.",
        "Row 2: *K2, p2; rep from * to end.",
        "These 2 rows form the pattern.",
        "Work 4 rows in pattern.",
        "Bind off.",
        "== sleeve",
        "Cast on 20 sts.",
        "Work 4 rows in k2, p2 rib.",
        "Work 4 rows in pattern.",
        "Bind off.",
    )
    assert len(plan_of(text_of(list(work), 1, "cm")[0]).rounds) == 8 + 10


def test_nor_for_the_garter_stitch_of_a_border() -> None:
    """"K 4 rows. Work in patt for 20 cm": the frill of a sleeve would be garter stitch to its top."""
    work = [*BACK[:-1], "Knit 4 rows.", "Work in patt for 20 cm.", ENDED]
    assert "only a border was worked in this piece" in faults(text_of(work, 1, "cm")[0])


@pytest.mark.parametrize(("ribbed", "fits"), [(4, True), (3, False)])
def test_the_pattern_of_the_back_comes_on_the_side_it_has_there(ribbed: int, fits: bool) -> None:
    """Behind a rib that ends on the other side than on the back, all of the front would be inside out."""
    back = [line.replace("Row 1 (RS)", "Row 1") for line in BACK[:-2]]
    front = ["Cast on 20 sts.", f"Work {ribbed} rows in k1, p1 rib.", "Work 8 rows in patt as given for back.", ENDED]
    work = text_of([*back, *front], 1, "cm")[0]
    if fits:
        assert len(plan_of(work).rounds) > 20
    else:
        assert "a WS row comes next, and row 1 of the pattern is none" in faults(work)
