"""Sentences of making up and of explaining are said, and nothing that instructs is among them. Source: common practice."""

from __future__ import annotations

from stepper.project.instructions import Remark
from stepper.project.problems import Span
from stepper.project.reading.wording import LineReading, Words, read_line
from tests.tables import each_row


def read(text: str) -> LineReading:
    """Read one line of a pattern with two yarns."""
    return read_line(text, lambda at, length: Span(line=1, column=at + 1, length=length), Words(sizes=1, names={"MC", "A"}))


@each_row(
    "printed",
    [
        "Sew the side seams, leaving 12 cm open at the top.",
        "With right sides together, sew shoulder seams.",
        "Fold hem to the inside along the ridge and stitch down.",
        "Using the long tail, sew up the back of the leg.",
        "Turn right side out and stuff lightly.",
        "Attach eyes 3 cm apart.",
        "Turn up the brim.",
        "Thread elastic through the casing.",
        "Make a twisted cord.",
        "Lay flat to dry.",
        "This increase row shapes the bunny's tail.",
        "You will see a row of holes.",
        "These stitches will be grafted later.",
        "If you are not sure, check your gauge.",
        "Don't worry about the gap.",
        "Make the neck opening as follows:",
        "Increasing for the thumb:",
    ],
)
def test_what_works_no_stitch_is_said(printed: str) -> None:
    """The knitter hears it where it stands; a page with such a sentence is not refused for it."""
    line = read(printed).line
    assert line is not None
    assert all(isinstance(one, Remark) for one in line.sentences)


@each_row(
    "printed",
    [
        "Close the gap by knitting 2 sts together.",
        "Fold and bind off both edges together.",
        "Attach green.",
        "Tie in the blue.",
        "Sew side seams and repeat for the other sock.",
        "Fold the cuff and work 4 rows.",
        "Stuff the head, dec 4 sts evenly.",
        "Weave in ends as you work the next 4 rows.",
        "This is the wrong side.",
        "This makes 12 sts.",
        "This row is worked on every right side row.",
        "This sleeve is the same as the first.",
        "You will now be working in the round.",
        "You should see the back as you turn.",
        "The first stitch of every row is slipped.",
        "The decreases are worked every other round.",
        "If there is an odd number of stitches, k2tog once.",
        "If you have worked row 4, work 2 rounds.",
        "If desired, change to smaller needles.",
        "If you are making the large size, cast on 4.",
        "Work the next 20 sts as follows:",
        "Work in the round as follows:",
        "Continue back and forth as follows:",
        "All RS rows:",
        "Rows 3-6:",
    ],
)
def test_what_says_how_the_knitting_goes_on_is_none_of_it(printed: str) -> None:
    """Passed over, each of these would be a garment knitted otherwise than printed."""
    assert read(printed).line is None
