"""Stitch patterns worked by their names. Source: common practice."""

from __future__ import annotations

from tests.project.rewording.told.test_sentences import written
from tests.tables import each_row


@each_row(
    ("printed", "words"),
    [
        ("With M, work Wave Lace as before, this time three times through.", "With M, work all rounds of Wave Lace three times."),
        ("Starting with Round 2, continue in Wave Lace until Rounds 1-4 have been worked four times in total.", "Work rounds 2-4 of Wave Lace once. Work rounds 1-4 of Wave Lace 3 times."),
        ("Work in Leaf lace until rnds 1-2 have been worked 6 times.", "Work rnds 1-2 of Leaf lace 6 times."),
        ("Work Leaf Lace rnds 1-2 twice.", "Work rnds 1-2 of Leaf Lace twice."),
        ("Starting with Rnd 1, work Leaf lace 4 (5) times.", "Work all Rnds of Leaf lace 4 (5) times."),
        ("Beginning with Rnd 2, work in Leaf lace for 5 cm.", "Work in Leaf lace, beginning with Rnd 2 for 5 cm."),
        ("Work in Leaf lace, ending with Rnd 2, until piece measures 5 cm.", "Work in Leaf lace until piece measures 5 cm, ending with Rnd 2."),
    ],
)
def test_which_rounds_and_how_often(printed: str, words: str) -> None:
    """In any order; what was worked before is counted where the sentence says from where it goes on."""
    assert written(printed) == words


@each_row(
    "printed",
    [
        "Continue in Leaf lace until rnds 1-4 have been worked 6 times in all.",
        "Starting with Round 5, continue in Leaf lace until Rounds 1-4 have been worked 3 times.",
        "Starting with Round 2, work Leaf lace 3 times.",
        "Work Leaf lace 3 more times.",
        "Work in stockinette stitch 3 times.",
        "Work Leaf lace twice in each section.",
        "Work in Leaf lace and garter stitch for 5 cm.",
    ],
)
def test_what_nobody_can_count_is_left(printed: str) -> None:
    """How much of it was worked before, or where it goes on."""
    assert written(printed) == printed
