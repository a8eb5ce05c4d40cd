"""Panels beside each other in other words. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("K9, 3rd row of Panel A over next 12 sts, k9.", "K9, work row 3 of Panel A over 12 sts, k9."),
        ("K9, work Panel A row 3, k9.", "K9, work row 3 of Panel A to fill, k9."),
        ("K9, panel over next 12 sts, k9.", "K9, work next rnd of panel over 12 sts, k9."),
        ("P2, work next 12 sts as row 3 of Panel A, p2.", "P2, work row 3 of Panel A over 12 sts, p2."),
        (
            "K2, work row 1 of Panel A over 12 sts, p1, Panel B over 22 sts, k2.",
            "K2, work row 1 of Panel A over 12 sts, p1, work row 1 of Panel B over 22 sts, k2.",
        ),
        (
            "K2, work row 3 of Panel A over 12 sts, Panel B over 22 sts, k2.",
            "K2, work row 3 of Panel A over 12 sts, work next rnd of Panel B over 22 sts, k2.",
        ),
        ("These 8 rows form Panel A.", "These 8 rows form Panel A pattern."),
        ("Last 2 rows set position of cables over moss st.", "Last 2 rows set pattern"),
    ],
)
def test_a_panel_has_its_row_and_its_stitches(printed: str, words: str) -> None:
    """Behind a first row the others begin; behind any other they go on with the row that is next."""
    assert reword(made_plain(printed)).text == words


@pytest.mark.parametrize(
    "printed",
    [
        "Row 5: K4, patt 12, k4.",
        "K4, cable 6, k4.",
        "Work Panel A.",
        "Cont in patt over next 12 sts.",
        "Row 3: K4, work 12 sts in patt, k4.",
        "Work 20 rows of chart A over 12 sts.",
    ],
)
def test_stitches_in_pattern_are_no_panel(printed: str) -> None:
    """A number behind "patt" counts stitches, a cable over six is one crossing, and a chart has its own words."""
    assert "next rnd" not in reword(made_plain(printed)).text


@pytest.mark.parametrize(
    "printed",
    [
        "Keeping the centre panel in rib, work until back measures 38 cm.",
        "Keeping borders correct and working 4 sts in rib, work 3 rows.",
        "These 2 rows set position of panels with 2 sts decreased at each side.",
    ],
)
def test_what_is_kept_in_another_fabric_stays_in_the_line(printed: str) -> None:
    """A fabric that changes, or stitches that come and go, are no remark."""
    made = reword(made_plain(printed))
    assert not any(words in " ".join(made.kept).lower() for words in ("in rib", "decreased"))
