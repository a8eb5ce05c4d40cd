"""Rows that close buttonholes, and the tab of a shawl. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import recast


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Knit, casting on 3 over the cast-off sts of previous row.", "Knit, casting on 3 sts over each buttonhole."),
        ("P to bound off sts, cast on 2 sts, p to end.", "P to buttonhole, cast on 2 sts, p to end."),
        ("Rotate work 90 degrees and pick up and knit 7 sts.", "pick up and knit 7 sts."),
    ],
)
def test_where_the_stitches_go_is_kept(printed: str, words: str) -> None:
    """The number cast on, and what is worked beside it, stay as printed."""
    assert recast(made_plain(printed)).text == words


def test_a_turn_is_no_rotation() -> None:
    """"Turn, pick up 7 sts" turns to the other side."""
    assert recast("Turn, pick up and knit 7 sts.").text.startswith("Turn")
