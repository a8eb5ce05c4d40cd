"""Markers, needles, edges, a gusset. Source: the wording of patterns in print; common practice."""

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
        ("Change to circular needle no. 4.5.", "change to 4.5 mm circular needles"),
        ("Change to short circular needle 4.5 mm.", "change to 4.5 mm circular needles"),
        ("Change to 4 mm.", "change to 4 mm needles"),
        ("Change to 4 mm needle (40 cm).", "change to 4 mm needles"),
        ("Change to circular needle 3.", "change to size 3 circular needles"),
        ("Change to needles 3.5. Knit 2 rounds.", "change to size 3.5 mm needles. Knit 2 rounds"),
    ],
)
def test_needles_are_those_of_the_size_printed(printed: str, words: str) -> None:
    """The number before the decimal point is not lost, and the length of the cable is no size."""
    assert written(printed) == words


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Knit to marker, work instep in pattern, knit to end.", "Knit to marker, sm, work in pattern to marker, sm, knit to end"),
        ("Knit to 3 sts before marker, k2tog, k1, sm, work across instep sts in pattern, sm, k1, ssk, knit to end.", "Knit to 3 sts before marker, k2tog, k1, sm, work in pattern to marker, sm, k1, ssk, knit to end"),
    ],
)
def test_an_instep_lies_between_its_markers(printed: str, words: str) -> None:
    """It ends at the second marker, and not with the round."""
    assert written(printed) == words


@pytest.mark.parametrize("line", ["Place a marker at centre front.", "Move the beginning of the round 4 stitches to the left.", "Pick up 1 stitch in each row end of neckband.", "Insert 8 markers in the piece."])
def test_a_place_that_is_not_told_is_refused(line: str) -> None:
    """A marker without a place would stand anywhere."""
    assert not reads(line)
