"""Work without shaping is put in one order, whatever order its phrases are printed in. Source: common practice."""

from __future__ import annotations

import pytest

from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.told.straight import put_works_in_order


@pytest.mark.parametrize(
    ("printed", "order"),
    [
        (
            "Knit the sleeve in the round in stockinette until it measures 40 cm.",
            "Join in the round. Work in stockinette until it measures 40 cm.",
        ),
        ("Work back and forth in garter st for 6 cm.", "Work flat. Work in garter st for 6 cm."),
        ("Work the next 12 rounds in 2x2 rib.", "Work 12 rounds in 2x2 rib."),
        ("Rib as set for 5 cm.", "Work in Rib for 5 cm."),
        ("Rib k1, p1 for 16 rounds.", "Work 16 rounds in k1, p1 rib."),
        ("Ribbing: 5 cm knit 2, purl 2.", "Work in k2, p2 rib for 5 cm."),
        (
            "Smaller needles, 2x2 rib for 6 cm, BO loosely in rib.",
            "Change to Smaller needles. Work in 2x2 rib for 6 cm. Bo loosely in rib.",
        ),
        ("Change to k2, p2 rib for the last 6 cm.", "Work in k2, p2 rib for 6 cm."),
        ("Just keep knitting for 15 cm.", "Work even for 15 cm."),
        (
            "Work in k1, p1 rib for 6 cm; the last row is a WS row.",
            "Work in k1, p1 rib for 6 cm, ending with a WS row.",
        ),
        (
            "Work 4 cm in twisted rib: *k1 tbl, p1; rep from * to end.",
            "*k1 tbl, p1; rep from * to end. Work for 4 cm.",
        ),
    ],
)
def test_phrases_are_put_in_the_order_of_the_grammar(printed: str, order: str) -> None:
    """Fabric, manner and length stand in any order, with any verb or none."""
    assert put_works_in_order(as_printed(printed)).text == order


@pytest.mark.parametrize(
    "printed",
    [
        "Rib for 4 cm or 7 cm.",
        "Work 2 cm in rib, 3 cm in stockinette.",
        "Continue in rib or stockinette for 5 cm.",
        "Work 6 rounds in rib and 4 rounds in stockinette.",
        "4 rounds.",
        "Work 5 cm in seed stitch: *k1, p1; rep from * to end.",
        "Work in the round back and forth in rib for 5 cm.",
        "Working in rib for 5 cm.",
        "Change to 4 mm needles.",
    ],
)
def test_what_says_more_than_one_thing_stays_as_it_is(printed: str) -> None:
    """One phrase too many or of no known kind, and nobody can tell what the others belong to."""
    assert put_works_in_order(as_printed(printed)).text == printed


def test_the_part_that_is_named_is_said() -> None:
    """What is taken out is told with the line."""
    assert put_works_in_order(as_printed("Knit the sleeve in rib for 4 cm.")).kept == ("the sleeve",)
