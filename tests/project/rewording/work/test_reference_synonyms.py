"""Other parts and other sides. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.reword import reword


def written(printed: str) -> str:
    """Return a line in the words it is read in at the second look."""
    return " ".join(reword(made_plain(printed), spoken=True).text.split()).strip(" ,.")


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Work to match, reversing all shaping.", "complete like other side, reversing all shaping"),
        ("Work second side to match first, reversing shaping.", "complete like other side, reversing shaping"),
        ("Rejoin yarn at neck edge, RS facing, and work to correspond with first side.", "With RS facing, take up remaining sts. complete like other side"),
        ("Complete to match left front, reversing shapings.", "complete alike left front, reversing shapings"),
        ("Complete as for right front, working neck decs at end of RS rows.", "complete alike right front, reversing shaping"),
        ("Shape raglans same as back until 33 sts rem.", "shape raglan as for back until 33 sts rem"),
        ("Work the Rib Rnd (as for collar) for 5 cm.", "work in as-collar rib for 5 cm"),
        ("Work until the armhole shapings have been completed and 105 sts remain.", "Work to end of armhole shaping. 105 sts"),
    ],
)
def test_what_is_meant_is_named_in_one_way(printed: str, words: str) -> None:
    """The other side, the other front, a shaping or the rib of another part."""
    assert written(printed) == words


@pytest.mark.parametrize(
    "line",
    [
        "Complete as for left front, working neck decs at end of RS rows.",
        "Complete as for right front, working armhole decs at end of rows.",
        "Work as for left front, but work neck decs (k2tog, k1) at the beginning of RS rows.",
        "Complete as for left front, working 4 rows less.",
        "Shape shoulders as for back.",
    ],
)
def test_what_is_not_the_mirror_image_is_left(line: str) -> None:
    """A left front has its neck where right-side rows end: a right front that has it there too is no mirror image."""
    assert not reads(line)
