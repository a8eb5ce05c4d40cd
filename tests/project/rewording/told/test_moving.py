"""What looks like stitches that are put on hold or come back, and is not. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.told.moving import write_moves
from tests.tables import each_row


def written(line: str) -> str:
    """Return the words in which a line tells of stitches that are moved."""
    return write_moves(as_printed(line)).text


@each_row(
    "printed",
    [
        "Slip 3 sts to cable needle and hold in front, k3, k3 from cable needle.",
        "Sl 1 st back to left needle, cast on 2 sts.",
        "Slip the first 4 sts onto right needle without working them.",
        "Knit until 105 sts remain.",
        "20 sts remain on the holder.",
        "The sts for the neck rest on the holder until the collar.",
        "Leave the back sts on the needle.",
        "Keep the first 3 sts in garter stitch.",
        "Put the heel sts on one needle.",
        "Hold yarn in front, slip 1.",
        "Hold 2 strands of yarn together and cast on 40 sts.",
        "Place the middle 24 sts on a thread.",
        "Place 18 sts at each end on a holder.",
        "Leave the last 7 sts unworked and turn.",
        "Place a marker after the first 40 sts.",
        "Leave 20 cm of yarn for sewing.",
        "Join yarn at the neck edge and pick up 40 sts.",
        "Set up the next round on the needles.",
        "Rest St st, 12 sts each side.",
        "Continue on the right front sts only, leaving the left front sts on a holder.",
    ],
)  # fmt: skip
def test_what_only_looks_like_it_stays_as_printed(printed: str) -> None:
    """Stitches of a cable or a gap, statements of what waits already, places that nobody can find in the row."""
    assert written(printed) == printed
