"""A row around a neck: stitches that wait, and edges, by turns. Source: common practice."""

from __future__ import annotations

import pytest

from stepper.project.rewording.on_needles.neck_rows import write_neck_rows
from stepper.project.rewording.reworded import as_printed


def written(printed: str) -> str:
    """Return a line with the parts of its row one behind the other."""
    return write_neck_rows(as_printed(printed)).text


@pytest.mark.parametrize(
    ("printed", "meant"),
    [
        (
            "With RS facing, k 34 (36) back neck, 12 (14) left saddle, pick up and k 11 down left front neck, k 20 (22) from holder, 11 up right front neck, 12 (14) right saddle. 100 (108) sts.",
            "With RS facing, k across 34 (36) held back neck sts, k across 12 (14) held left saddle sts, pick up and knit 11 sts, k across 20 (22) held sts, pick up and knit 11 sts, k across 12 (14) held right saddle sts. 100 (108) sts.",
        ),
        (
            "Right side facing, rib 13 from right band, pick up and K. 97 sts. round neck, rib 13 from left band - 123 sts.",
            "Right side facing, work across 13 held right band sts, pick up and knit 97 sts, work across 13 held left band sts - 123 sts.",
        ),
        (
            "Work the sts at underarm 11 (13) off the thread, pick up 54 (57) to the shoulder and the same down again, 119 (127).",
            "Work across 11 (13) held underarm sts, pick up and knit 54 (57) sts, pick up and knit 54 (57) sts. 119 (127) sts.",
        ),
        (
            "K 40 sts up right front, 1 st at the point of the V (mark it!), 46 up left front, back neck sts from holder.",
            "Pick up and knit 40 sts, pm for marked st, pick up and knit 1 sts, pick up and knit 46 sts, k across held back neck sts.",
        ),
    ],
)
def test_a_verb_told_once_goes_on(printed: str, meant: str) -> None:
    """What waits is knitted, what lies along an edge is picked up."""
    line = write_neck_rows(as_printed(printed))
    assert line.text == meant
    assert len(line.places) == len(line.text) + 1


def test_where_is_said_with_the_row() -> None:
    """The edges are told beside the work."""
    line = write_neck_rows(as_printed("Pick up and k 12 down left front neck, k 20 from holder, 12 up right front neck. 44 sts."))
    assert line.kept == ("down left front neck", "up right front neck")


@pytest.mark.parametrize(
    "printed",
    [
        "K 20 sts up to the marker, turn.",
        "Pick up and k 12 down left front neck, 12 up right front neck.",  # nothing waits
        "Pick up and k 12 down left front neck, k 20 from holder, dec 4 sts evenly.",
        "Pick up and k 12 down left front neck, k 20 from holder, 12 as before.",
        "Pick up and k 12 along each side, k 20 from holder.",
        "K 20 5 from holder, pick up and k 12 down left front.",
        "K 20 from holder, the same down left front.",  # the same as what?
    ],
)
def test_a_row_with_other_words_stays_as_printed(printed: str) -> None:
    """Half a neckband taken for all of it would be short."""
    assert written(printed) == printed
