from __future__ import annotations

import pytest

from stepper.project.page.pieces import DrawnChart, PagePart, Piece, has_key, works
from stepper.project.problems import Span
from stepper.project.reading.wording import Words, read_line


@pytest.mark.parametrize(
    ("text", "worked"),
    [
        ("Knit 2 rows.", True),
        ("K2, p2.", True),
        ("Change to 4 mm needles.", False),
        ("Note: smile.", False),
        ("k: knit", False),
    ],
)
def test_a_line_works_stitches_or_not(text: str, worked: bool) -> None:
    """A part begins only where something is knitted."""
    line = read_line(text, lambda _offset, _length: Span(line=1, column=1), Words(sizes=1)).line
    assert line is not None
    assert works(line) is worked
    part = PagePart(name="body", pieces=[Piece(kind="line", text=text, row=1, line=line)])
    assert part.is_worked is worked


def test_a_chart_drawn_as_text_takes_its_own_rows_only() -> None:
    """What follows the chart is the pattern again."""
    chart = DrawnChart(name="trail")
    assert has_key(". = MC; a = A")
    assert [chart.take(row) for row in (". = MC; a = A", "Repeat: 1-4", "a..a", ".aa.", "Knit.")] == [
        True
    ] * 4 + [False]
    assert (chart.key, chart.rows, chart.repeat) == ([(".", "MC"), ("a", "A")], ["a..a", ".aa."], "1-4")
