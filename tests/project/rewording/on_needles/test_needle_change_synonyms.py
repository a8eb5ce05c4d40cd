"""A change of needles, of size or of kind. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain, understood
from stepper.project.reading.wording import reads
from tests.tables import each_row


def read_as(printed: str) -> str:
    """Return the words in which a line was read."""
    return " ".join(understood(made_plain(printed)).reworded.text.split()).strip(" ,.").lower()


@each_row("kind", ['24" or 32" needle', "circular", '24 in / 60 cm circular needle', "40 cm circular needle", "needle"])
@each_row("verb", ["Change to", "Switch back to", "Swap over to", "Go up to", "Move to"])
def test_another_size_is_changed_to(verb: str, kind: str) -> None:
    """How long a needle is changes no gauge; its size does."""
    assert read_as(f"{verb} the smaller {kind}.").replace("circular ", "") in ("change to smaller needles", "change to smaller needle")


@pytest.mark.parametrize(
    "line",
    [
        "Change to the short circular needle when there are enough stitches.",
        "Swap to dpns when the circumference gets too small for the circular needle.",
        "Switch to a longer needle whenever the stitches feel crowded.",
        "Change to the short circular needle if you have not already done so.",
        "If the sts become too few for the circular needle, change to the double-pointed needles.",
        "Transfer the sts to dpns as soon as they no longer fit around the needle.",
        'Change to a 24" needle.',
    ],
)
def test_another_needle_of_the_size_works_no_stitch(line: str) -> None:
    """It is said where it stands."""
    assert read_as(line) == ""
    assert understood(made_plain(line)).reworded.kept


@pytest.mark.parametrize(
    "line",
    [
        "Change to 4 mm dpns when the sts no longer fit.",
        "Change to larger needles when there are 60 sts.",
        "Change to dpns when 40 sts remain and work the toe in pattern.",
        "Switch to a longer needle when there are 90 sts.",
        "Change to the short circular needle once the lace is done.",
    ],
)
def test_a_moment_that_is_not_told_leaves_the_size_unread(line: str) -> None:
    """Where the gauge changes has to be known, and a count is a place."""
    assert not reads(line)
