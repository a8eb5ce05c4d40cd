"""What waits, on what, and how it is taken up. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.reword import reword
from tests.tables import each_row


def written(printed: str) -> str:
    """Return a line in the words it is read in at the second look."""
    return " ".join(reword(made_plain(printed), spoken=True).text.split()).strip(" ,.")


@each_row("holder", ["a holder", "a spare needle or length of yarn", "a thread", "a safety pin", "scrap yarn", "a length of waste yarn"])
@each_row("verb", ["Leave", "Slip", "Put", "Place"])
def test_stitches_wait_on_anything_that_holds_them(verb: str, holder: str) -> None:
    """What they hang on does not matter; that they wait does."""
    preposition = "onto" if verb == "Slip" else "on"
    assert written(f"{verb} the sleeve {preposition} {holder}.").lower().startswith("hold all sts")


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Return held 30 sts to needle and rejoin yarn with RS facing.", "With RS facing, return 30 held sts to needles"),
        ("Transfer 30 front sts to the needle. With WS facing, rejoin yarn.", "With WS facing, return 30 held front sts to needles"),
        ("Slip 20 sts from holder to needle, ready for a WS row. Rejoin yarn.", "With WS facing, return 20 held sts to needles"),
        ("Place 30 sts from holder on needle, join yarn at neck edge and knit to end.", "return 30 held sts to needles. Knit to end"),
        ("With RS facing, rejoin yarn to held front sts.", "With RS facing, return held front sts to needles"),
    ],
)
def test_stitches_come_back_on_the_side_that_is_told(printed: str, words: str) -> None:
    """The next row begins on the side that faces when the yarn is joined."""
    assert written(printed) == words


@pytest.mark.parametrize("line", ["Knit 22 stitches and put the rest of the yarn aside.", "Return to the beginning and rejoin yarn.", "Slip the first 20 sts from holder, knit."])
def test_what_only_looks_like_stitches_that_wait_is_refused(line: str) -> None:
    """Yarn is no stitches, and a place no holder."""
    assert not reads(line)
