"""Stitches that come back, and the yarn joined to them. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain, understood
from stepper.project.reading.wording import reads
from tests.tables import each_row


def read_as(printed: str) -> str:
    """Return the words in which a line was read."""
    return " ".join(understood(made_plain(printed)).reworded.text.split()).strip(" ,.").lower()


@each_row(
    ("printed", "words"),
    [
        ("Move the sts for one sleeve from the scrap yarn onto dpns.", "return held sleeve sts to needles"),
        ("Take the sleeve sts off the holder and place them on dpns.", "return held sleeve sts to needles"),
        ("Transfer the held 30 sts of the right front to the needle.", "return 30 held right front sts to needles"),
        ("With RS facing, slip 40 sts from front holder to needle.", "with rs facing, return 40 held front sts to needles"),
        ("With RS facing, slip 40 sts from the right front holder to needle.", "with rs facing, return 40 held right front sts to needles"),
        ("Join yarn to the 20 sts on hold for the left front.", "return 20 held left front sts to needles"),
        ("Slip the 40 sts on hold for the left sleeve to the smaller circular needle.", "change to smaller needles. return 40 held left sleeve sts to needles"),
        ("Slip the 40 sts on hold for the left sleeve to the needle.", "return 40 held left sleeve sts to needles"),
        ("Place the sts on hold for the left sleeve back on the needle.", "return held left sleeve sts to needles"),
        ("Return the held right front sts to the needle; join yarn at the armhole edge, ready for a WS row.", "with ws facing, return held right front sts to needles"),
        ("Place back sts on needle and rejoin yarn, ready to work a RS row.", "with rs facing, return held back sts to needles"),
        ("Join yarn to the held sts at the armhole edge, ready for a WS row.", "with ws facing, return held sts to needles"),
        ("Return the 48 held sts to larger needles. Join MC at the center of the underarm.", "change to larger needles. return 48 held sts to needles. join mc"),
        ("Pick up the held thumb sts on 3 dpns.", "return held thumb sts to needles. divide over 3 needles"),
        ("Rejoin yarn at the neck edge of the right shoulder, WS facing, and work to match, reversing all shaping.", "with ws facing, take up remaining sts. complete like other side, reversing shaping"),
        ("Join the wool at the neck edge of the remaining 43 sts and work to correspond with the first side.", "take up 43 remaining sts. complete like other side"),
    ],
)
def test_stitches_come_back_in_whatever_order_it_is_told(printed: str, words: str) -> None:
    """Whose they are and which side faces is kept; what they hung on is not needed."""
    assert read_as(printed) == words


@pytest.mark.parametrize(
    "line",
    [
        "With WS facing, rejoin yarn at neck edge.",
        "Take the sleeve sts off the holder and knit them.",
        "Slip 20 sts to needle 2.",
        "Rejoin yarn at the neck edge and work to the shoulder.",
        "Move the marker for one sleeve onto the needle.",
    ],
)
def test_what_does_not_say_which_stitches_is_refused(line: str) -> None:
    """Yarn at an edge may be for a band, and a needle of the round is no holder's."""
    assert not reads(line)
