"""Pieces joined in one row. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain, understood
from stepper.project.reading.wording import reads


def read_as(printed: str) -> str:
    """Return the words in which a line was read."""
    return " ".join(understood(made_plain(printed)).reworded.text.split()).strip(" ,.").lower()


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        (
            "With RS facing and smaller needles, work across all sts as follows: K31 of right front, K37 of first sleeve, K57 of back.",
            "change to smaller needles. with rs facing, k across 31 held right front sts, k across 37 held first sleeve sts, k across 57 held back sts",
        ),
        (
            "Next row (RS): K31 sts of right front, K37 sts of first sleeve, then K57 sts of back, placing a marker at each of the two joins. 125 sts.",
            "next row (rs): k across 31 held right front sts, pm, k across 37 held first sleeve sts, pm, k across 57 held back sts. 125 sts",
        ),
        ("Joining row: K30 sts of right front, pm, k36 sts of right sleeve, pm, k60 sts of back.", "joining row: k across 30 held right front sts, pm, k across 36 held right sleeve sts, pm, k across 60 held back sts"),
        ("Joining round: K front sts, CO 8 sts, k back sts, CO 8 sts.", "joining round: k across front sts, co 8 sts, k across back sts, co 8 sts"),
        ("Join body and sleeves as follows, using larger 32 in needle and with right sides facing:", "change to larger needles"),
        ("Knit to the end of the row, CO 16 sts for the front neck, and join in the rnd.", "knit to the end of the row, co 16 sts. join in the round"),
    ],
)
def test_pieces_are_worked_across(printed: str, words: str) -> None:
    """Each by its name and number, with markers where the row says so."""
    assert read_as(printed) == words


@pytest.mark.parametrize(
    "line",
    [
        "Next rnd: K4, sm, knit the sleeve sts, sm, k to end.",
        "Next row: K31 sts of the right colour, k37.",
        "Join body and sleeves as follows, knit 2 rounds:",
    ],
)
def test_stitches_between_markers_are_no_piece(line: str) -> None:
    """They lie on the needle, and only some of them may be meant."""
    assert not reads(line)
