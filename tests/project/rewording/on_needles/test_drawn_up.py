"""The last stitches drawn up on the yarn, in whatever order a page tells it, and look-alikes that leave some."""

from __future__ import annotations

from stepper.project.reading.wording import reads
from stepper.project.rewording.on_needles.drawn_up import write_drawn_up
from stepper.project.rewording.reworded import as_printed
from tests.tables import each_row

DRAWN = (
    "Break off yarn, leaving an 8-inch tail, draw through remaining sts and fasten securely.",
    "Cut the yarn to 20 cm, thread it through the remaining sts twice, pull tight and secure inside.",
    "Cut the yarn with a 10 inch tail, thread it through those last stitches (twice, if you don't trust it), pull tight and fasten off on the inside.",
    'Cut yarn, leaving a 6" tail; draw tail through live sts, cinch closed and weave in end.',
    "Break off, thread the end through the 10 sts, draw up firmly and darn in the end.",
    "Using a tapestry needle, thread the tail through the remaining sts, pull tight and secure on the wrong side.",
    "Break wool, run end through sts, draw up and fasten off securely.",
)
OTHERS = (
    "Cut yarn, thread tail through the first 40 sts and pull tight.",
    "Pull the yarn through the last 2 sts and knit to end.",
    "Draw the loop through both sts on the needle.",
    "Thread the ribbon through the eyelets and fasten the ends.",
    "Cut yarn, draw through the sts on holder and bind off.",
)


@each_row("sentence", DRAWN)
def test_stitches_drawn_up_are_closed_whatever_is_told_of_the_tail(sentence: str) -> None:
    """All that is no order is said with it."""
    made = write_drawn_up(as_printed(sentence))
    assert made.text.startswith("Cut yarn and draw through ")
    assert made.kept
    assert reads(sentence)


@each_row("sentence", OTHERS)
def test_a_look_alike_is_left_as_printed(sentence: str) -> None:
    """Some of its stitches stay, or go on being worked."""
    assert write_drawn_up(as_printed(sentence)).text == sentence
