"""Sizes that a line leaves out by a dash. Source: common practice of patterns in many sizes."""

from __future__ import annotations

import pytest

from stepper.project.reading.left_out_sizes import LeftOut, sizes_left_out


@pytest.mark.parametrize(
    ("plain", "sizes", "worked"),
    [
        ("Rep last 2 rnds - (-, 3, 5) times.", 4, (2, 3)),
        ("Rep last 2 rnds - [-, -] (1, 2) {3} times.", 6, (3, 4, 5)),
        ("Knit 2 rnds. [90 (96, -) sts]", 3, (0, 1)),
        ("Work inc rnd every 4th (4th, -) rnd 3 (4, -) times.", 3, (0, 1)),
        ("Knit 2 (3, 4) rnds.", 3, ()),
        ("Knit 2 rnds - 40 sts.", 3, ()),
        ("Cast on 64 - (72, 80) sts.", 3, ()),
    ],
)
def test_a_size_with_a_dash_in_every_list_is_left_out(plain: str, sizes: int, worked: tuple[int, ...]) -> None:
    """The line is for the others alone; a dash that stands between a number and a bracket is none."""
    assert sizes_left_out(plain, sizes) == LeftOut(worked=worked)


def test_how_often_may_be_none() -> None:
    """A shaping in two paces has a dash where the second is not worked, and the line is for all sizes."""
    assert sizes_left_out("Work inc rnd every rnd 5 (6, 7) times, then every 2nd rnd 2 (3, -) times.", 3) == LeftOut()


def test_a_dash_beside_a_number_is_in_doubt_where_it_counts_stitches() -> None:
    """Nobody can tell whether the row is worked in that size, or its count not told."""
    left_out = sizes_left_out("K10 (12, 14), k to end. (- (24, 28) sts)", 3)
    assert left_out.doubtful is not None
    assert left_out.worked == ()
