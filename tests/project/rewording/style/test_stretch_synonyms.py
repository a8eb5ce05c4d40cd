"""A fabric over a part of a row. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import recast


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Seed st 4, k to last 4 sts, seed st 4.", "work 4 sts in Seed st, k to last 4 sts, work 4 sts in seed st."),
        ("K to last 6 sts, k6 in garter st.", "K to last 6 sts, work 6 sts in garter st."),
        ("K6, seed st to last 6 sts, k6.", "K6, work in seed st to last 6 sts, k6."),
        ("K to m, sm, work Braid Panel, sm, k to end.", "K to m, sm, work next rnd of Braid Panel to fill, sm, k to end."),
    ],
)
def test_a_border_or_a_panel_has_its_own_stitches(printed: str, words: str) -> None:
    """How many they are, and where they end, stays as printed."""
    assert recast(made_plain(printed)).text == words


@pytest.mark.parametrize("printed", ["Work Braid Panel.", "Work 20 rows in Braid Panel."])
def test_a_pattern_alone_is_no_part_of_a_row(printed: str) -> None:
    """Nothing stands beside it."""
    assert "next rnd" not in recast(made_plain(printed)).text
