"""How a chart is read, told where it is read as charts are. Source: chart conventions, common practice."""

from __future__ import annotations

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
