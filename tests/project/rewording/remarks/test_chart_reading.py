"""How a chart is read, told where it is read as charts are. Source: chart conventions, common practice."""

from __future__ import annotations

from stepper.project.page.orders import holds_instruction
from stepper.project.reading.wording import reads
from stepper.project.rewording.remarks.chart_reading import reads_otherwise, tells_reading

TELL = (
    "Read all chart rounds from right to left",
    "The chart is read from bottom to top and from right to left",
    "Read every round from right to left, bottom to top, and work the 8 stitches 12 (14, 16) times",
    "Read all charts from right to left and from the bottom up",
)
ORDER = (
    "Read the chart from the top down",
    "Read the chart from left to right",
    "Read all rounds from left to right",
    "Read every round from right to left, and leave the last stitch out",
    "Work the chart from right to left",
)


def test_the_usual_way_is_only_said_and_another_keeps_its_mark() -> None:
    """The program reads a chart from the bottom right: where the page means otherwise it must not pass in silence."""
    assert [line for line in (*TELL, *ORDER) if tells_reading(line)] == list(TELL)
    assert [line for line in (*TELL, *ORDER) if reads(line)] == list(TELL)


def test_rows_read_by_turns_are_no_other_way() -> None:
    """A chart worked flat is read from the left on its wrong-side rows."""
    assert not reads_otherwise("RS rows are read from right to left, WS rows are read from left to right")
    assert reads_otherwise("All rounds are read from left to right")


OTHERWISE = (
    "Charts are read from left to right as you knit.",
    "Read the chart from the top down.",
    "The chart begins at the top left corner.",
    "Each line is read from right to left as you knit and is repeated all around.",
    "Read each line from right to left.",
    "The rounds are given line by line, and each is worked from right to left.",
    "The written rounds run from right to left, like a chart.",
)
AS_IT_STANDS = (
    "Left-handed knitters read the chart from left to right.",
    "The chart is read from right to left and from bottom to top.",
    "Read the lines of the chart from right to left.",
    "The rounds are worked from the top down.",
    "The pullover is knitted from the top down, with a chart for its yoke.",
    "Lines of colour rise from right to left.",
)


def test_a_page_that_is_read_otherwise_is_marked_in_front_of_the_pattern_too() -> None:
    """Colour rows read from their end come out mirrored, and every count is right."""
    assert [line for line in (*OTHERWISE, *AS_IT_STANDS) if holds_instruction(line)] == list(OTHERWISE)
