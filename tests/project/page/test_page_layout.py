from __future__ import annotations

import re

from hypothesis import given
from hypothesis import strategies as st

from stepper.project.page.page_layout import PrintedLine, PrintedPage, reading_order

PROSE = "Knit to the marker and slip it over"


def line(text: str, left: float, top: float, width: float) -> PrintedLine:
    """Make a line of ten points' height."""
    return PrintedLine(text=text, left=left, right=left + width, bottom=top - 10, top=top)


def page(*lines: PrintedLine, pictures: int = 0) -> PrintedPage:
    """Make a page of A4."""
    return PrintedPage(lines=lines, height=842.0, pictures=pictures)


def rows_of(*pages: PrintedPage) -> list[list[str]]:
    """Read pages; leave out the white rows."""
    return [[row for row in rows if row] for rows in reading_order(pages)[1]]


def test_columns_are_read_one_after_the_other() -> None:
    """A sentence never jumps over the gutter into another one."""
    columns = [
        line(f"{PROSE} {side}{number}", left, 700 - 12 * number, 200)
        for side, left in (("a", 50), ("b", 300))
        for number in range(4)
    ]

    assert rows_of(page(*columns)) == [[f"{PROSE} {side}{number}" for side in "ab" for number in range(4)]]


def test_a_heading_over_both_columns_stands_between_what_is_above_and_below_it() -> None:
    """What is printed under the heading of the sleeves is not read before it."""

    def band(name: str, top: float) -> list[PrintedLine]:
        return [
            line(f"{PROSE} {name}{side}{number}", left, top - 12 * number, 200)
            for side, left in (("a", 50), ("b", 300))
            for number in range(3)
        ]

    heading = line("Sleeves, worked alike in the round from the underarm down", 120, 640, 300)
    found = rows_of(page(*band("x", 700), heading, *band("y", 610)))[0]

    assert [row.rsplit(" ", 1)[-1] for row in found] == [
        "xa0", "xa1", "xa2", "xb0", "xb1", "xb2", "down", "ya0", "ya1", "ya2", "yb0", "yb1", "yb2"
    ]  # fmt: skip


def test_a_table_is_read_row_by_row() -> None:
    """The chest of each size stays beside the word chest."""
    cells = [
        line(text, left, 700 - 14 * number, 18.0 if left > 60 else 90.0)
        for number, row in enumerate((("Size", "S", "M"), ("Chest", "90", "98"), ("Length", "55", "57")))
        for text, left in zip(row, (50.0, 250.0, 350.0), strict=True)
    ]

    assert rows_of(page(*cells)) == [["Size  S  M", "Chest  90  98", "Length  55  57"]]


def test_a_running_head_is_told_once_and_page_numbers_are_left_out() -> None:
    """A sentence broken over two pages has neither in its middle."""
    pages = [
        page(
            line("Saltgrass cowl", 50, 835, 80),
            line(text, 50, 500, 300),
            line(f"Page {number} of 2", 500, 30, 60),
        )
        for number, text in enumerate(("*K2, p2; rep from * to", "end. 96 sts."), start=1)
    ]
    heads, texts = reading_order(pages)

    assert heads == ("Saltgrass cowl",)
    assert [row for rows in texts for row in rows if row] == ["*K2, p2; rep from * to", "end. 96 sts."]


def test_what_stands_at_the_edge_of_one_page_alone_stays_in_its_place() -> None:
    """The last line of a full page is no running foot."""
    found = rows_of(page(line("Bind off all sts.", 50, 30, 100)), page(line("Graft the toe.", 50, 500, 90)))

    assert found == [["Bind off all sts."], ["Graft the toe."]]


LINES = st.builds(
    line,
    st.lists(st.sampled_from(["knit", "k2tog", "12", "round", "to", "marker"]), min_size=1).map(" ".join),
    st.floats(40, 400),
    st.floats(100, 740),
    st.floats(10, 200),
)


@given(st.lists(st.lists(LINES, max_size=25), min_size=1, max_size=3))
def test_no_word_of_a_page_is_lost_or_doubled(made: list[list[PrintedLine]]) -> None:
    """Wherever the lines stand, away from the edges every one is read once."""
    heads, texts = reading_order([page(*lines) for lines in made])

    assert heads == ()
    for lines, rows in zip(made, texts, strict=True):
        words = sorted(word for each in lines for word in each.text.split())
        assert sorted(re.findall(r"\S+", " ".join(rows))) == words
