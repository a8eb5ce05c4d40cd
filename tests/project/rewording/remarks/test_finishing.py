"""What is done off the needles below a heading of finishing. The sentences are invented; what each is, is common practice."""

from __future__ import annotations

import pytest

from stepper.project.instructions import Remark
from stepper.project.reader import read_project
from stepper.project.rewording.remarks.finishing import goes_on_finishing, is_off_the_needles
from tests.project.samples import project
from tests.tables import each_row


@pytest.mark.parametrize(
    "line",
    [
        "Sew from hem to underarm.",
        "Weave them in on the wrong side.",
        "Fold in half lengthwise and sew the sole and back seam.",
        "Wash by hand at 30 degrees.",
        "Join with mattress stitch.",
        "Close up little holes at the underarm, block, sew on 5 buttons opposite the holes.",
        "Cross them at the back and fix with a few stitches.",
        "Unpin when it is completely dry (not before!).",
    ],
)
def test_without_stitches_yarn_or_needle_in_hand_nothing_is_knitted(line: str) -> None:
    """In whatever words, but only below such a heading."""
    assert is_off_the_needles(line, finishing=True)
    assert not is_off_the_needles(line, finishing=False)


@each_row(
    "line",
    [
        "Pick up along the neck edge.",
        "Graft the underarms.",
        "Make the second mitten to match.",
        "Now the other one.",
        "Rejoin yarn at the underarm.",
        "Thread the yarn through and pull tight.",
        "With RS facing, go along the edge.",
        "Close the top.",
        "Place the held stitches back on needles.",
        "Knit the ties.",
        "Work a row of crochet around the edge.",
        "Repeat for the left sleeve.",
        "Join the shoulders.",
        "Return the 20 at the front to a long circular.",
        "Sew with A.",
        "Complete the left glove likewise.",
        "Close the shoulders with three-needle technique.",
    ],
)
def test_what_may_be_knitting_after_all_is_not_told_only(line: str) -> None:
    """Live stitches, a piece made again, another yarn."""
    assert not is_off_the_needles(line, finishing=True)


def test_the_label_of_a_line_may_say_it() -> None:
    """ "Seams:" is as good as a heading; "Body:" is none."""
    assert is_off_the_needles("Side seams: Sew from hem to underarm.", finishing=False)
    assert is_off_the_needles("Care: Wash by hand.", finishing=False)
    assert not is_off_the_needles("Body: Sew from hem to underarm.", finishing=False)
    assert not is_off_the_needles("Making up: Pick up and finish.", finishing=False)


def test_another_heading_ends_it_and_a_sentence_does_not() -> None:
    """What is commented between two headings changes nothing."""
    assert goes_on_finishing(False, "# FINISHING")
    assert goes_on_finishing(False, "ALL DONE BUT THE ENDS")
    assert goes_on_finishing(True, "# page 3 of 4, printed in May.")
    assert not goes_on_finishing(True, "# Second sock")
    assert not goes_on_finishing(False, "# Yoke")


def test_it_is_told_and_works_nothing() -> None:
    """The same words above the heading are refused."""
    work = "Cast on 4 sts.\nKnit 2 rows.\nBind off.\n"
    told = read_project(project(f"{work}# Finishing\nCross the straps at the back and fix them.")).project
    assert told is not None
    assert told.sections[0].lines[-1].sentences == (
        Remark("Cross the straps at the back and fix them", told.sections[0].lines[-1].sentences[0].place),
    )
    assert read_project(project(f"{work}Cross the straps at the back and fix them.")).problems
