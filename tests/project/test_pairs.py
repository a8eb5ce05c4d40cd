"""A pair of which one is printed. Source: common practice."""

from __future__ import annotations

import pytest

from stepper.project.pairs import pair_alike, side_of_pair
from stepper.project.reader import read_project
from tests.project.samples import project
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


@pytest.mark.parametrize(
    ("label", "side"),
    [
        ("RIGHT mitt", ("right", "mitt")),
        ("For the left-hand sock", ("left", "sock")),
        ("Left mittens only", ("left", "mitten")),
        ("right mitten rnd", ("right", "mitten")),
        ("Left round", ("left", "")),
        ("Left front", ("", "")),
        ("Left hand needle", ("", "")),
        ("Right side", ("", "")),
        (None, ("", "")),
    ],
)
def test_a_label_may_name_the_piece_of_a_pair_that_its_row_is_for(label: str | None, side: tuple[str, str]) -> None:
    """Fronts are knitted side by side; of two mitts one is on the needles."""
    assert side_of_pair(label) == side


@pytest.mark.parametrize(
    ("right", "left"),
    [
        ("RIGHT mitt: k2, pm, m1R, k1, m1L, pm, k to end.", "LEFT mitt: k to last 3 sts, pm, m1R, k1, m1L, pm, k2."),
        ("Next rnd (right mitten): K2, m1, k to end.", "Next rnd (left mitten): K to last 2 sts, m1, k2."),
        ("Rnd 1 (Right): K2, m1, k to end.", "Rnd 1 (Left): K to last 2 sts, m1, k2."),
    ],
)
def test_rows_of_the_two_pieces_are_not_knitted_one_behind_the_other(right: str, left: str) -> None:
    """It gave one mitt two thumbs, and was called sound."""
    read = read_project(project(f"Cast on 36 sts. Join in the round.\n{right}\n{left}\nBind off."))
    (problem,) = read.problems
    assert "the other" in problem.message
    assert read_project(project(f"Cast on 36 sts. Join in the round.\n{right}\nBind off.")).problems == ()
