"""A pair of which one is printed. Source: common practice."""

from __future__ import annotations

from stepper.project.pairs import pair_alike
from tests.tables import each_row


@each_row(
    ("sentence", "piece"),
    [
        ("Both mittens are alike. Wear on either hand.", "mitten"),
        ("The two socks are worked exactly the same.", "sock"),
        ("Both sleeves are identical.", "sleeve"),
        # it is told of something else, or not of the whole piece
        ("Both mittens are the same as far as the thumb.", ""),
        ("Both mittens are alike until the thumb.", ""),
        ("Both edges are alike.", ""),
        ("Work both sleeves at the same time.", ""),
    ],
)
def test_a_sentence_says_that_a_pair_is_alike(sentence: str, piece: str) -> None:
    """The second is knitted as the first, which alone is printed."""
    assert pair_alike(sentence) == piece
