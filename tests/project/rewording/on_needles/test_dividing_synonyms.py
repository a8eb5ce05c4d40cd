"""Rows that divide a piece, and what goes on. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain, understood
from stepper.project.reading.wording import reads


def read_as(printed: str) -> str:
    """Return the words in which a line was read."""
    return " ".join(understood(made_plain(printed)).reworded.text.split()).replace(" :", ":").strip(" ,.").lower()


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        (
            "Next row: Work 40 sts in pattern for the right front, BO 8 sts, work until there are 84 sts on RH needle after the bind-off for the back, BO 8 sts, work to end for the left front.",
            "next row: work 40 sts in pattern, bo 8 sts, work 84 sts in pattern, bo 8 sts, work to end",
        ),
        ("Next rnd: K36 for half of the back, hold 40 sts for sleeve, CO 8 sts, k36 for the other half of the back.", "next rnd: k36, hold 40 sts for sleeve, co 8 sts, k36"),
        ("Continue on the 40 left front sts only. Leave the rest on the cable or move them to waste yarn.", "work in rows over next 40 sts, hold others"),
        ("Continue on the 40 sts of the left front only.", "work in rows over next 40 sts"),
        ("Continue on the last set of sts for the left shoulder.", "hold sts beyond gap"),
        ("Next row: K24, turn, leaving remaining sts on the needle.", "next row: k24, turn and hold all sts"),
        ("Next rnd: Knit to gusset marker, place 17 gusset sts on waste yarn and remove markers, knit to end.", "next rnd: knit to gusset marker, remove marker, hold 17 sts for thumb, remove marker, knit to end"),
    ],
)
def test_which_stitches_are_for_what_part(printed: str, words: str) -> None:
    """The part is said with the row; how many stitches there are is worked."""
    assert read_as(printed) == words


@pytest.mark.parametrize(
    "line",
    [
        "Next row: patt 30 sts, cast off 6 sts, patt until there are 60 sts on right-hand needle, cast off 6 sts, patt to end.",
        "Continue on the first set of sts only.",
        "Work on the first 30 sts only.",
        "Leave the rest on the needle.",
        "Continue on the last set of rows only.",
    ],
)
def test_a_part_that_is_only_named_is_refused(line: str) -> None:
    """All stitches on the right needle may be meant, and a name tells no place."""
    assert not reads(line)
