"""Charts told in words whose rounds have bare numbers. All pages are invented."""

from __future__ import annotations

import pytest

from stepper.project.page.drawn.chart_numbers import name_rounds
from stepper.project.page.pasted import take_apart


@pytest.mark.parametrize(
    ("rows", "made"),
    [
        (
            ["Chart 1", "1: *1 B, 5 A*   2: *2 B, 4 A*   3: as 1", "Knit 1 rnd."],
            ["Chart 1", "Rnd 1: *1 B, 5 A*.", "Rnd 2: *2 B, 4 A*.", "Rnd 3: as rnd 1.", "Knit 1 rnd."],
        ),
        (
            ["CHART B (8 sts):", "1. 1 MC, 7 CC", "2. 2 MC, 6 CC - here MC rests, carry it loosely"],
            ["CHART B (8 sts):", "Rnd 1: 1 MC, 7 CC.", "Rnd 2: 2 MC, 6 CC. Here MC rests, carry it loosely."],
        ),
    ],
)
def test_bare_numbers_below_the_name_of_a_chart_are_its_rounds(rows: list[str], made: list[str]) -> None:
    """Several stand in one row of the page, and none ends in a full stop."""
    assert name_rounds(rows, range(1, len(rows) + 1))[0] == made


@pytest.mark.parametrize(
    "rows",
    [
        ["Chart 1", "1: *1 B, 5 A*", "Knit 1 rnd."],
        ["Chart 1", "2: *1 B, 5 A*  3: *2 B, 4 A*"],
        ["Chart 1", "1: *1 B, 5 A*  3: *2 B, 4 A*"],
        ["Chart 1", "1: *1 B, 5 A*  2: as 4"],
        ["Sizes", "1: 84 cm  2: 88 cm"],
        ["Knit chart 1 twice.", "1: *1 B, 5 A*  2: as 1"],
    ],
)
def test_other_numbers_stay_as_they_are(rows: list[str]) -> None:
    """One round alone, numbers that do not run up, a round that is like one not told yet."""
    assert name_rounds(rows, range(1, len(rows) + 1))[0] == rows


def test_a_round_is_found_where_it_stands_on_the_page() -> None:
    """She looks for it there if it is not read."""
    assert name_rounds(["Chart 1", "1: *1 B, 5 A* 2: as 1", "3: as 1"], [4, 5, 6])[1] == [4, 5, 5, 6]


def test_a_page_with_its_charts_in_words_is_read() -> None:
    """The rounds are lines of the chart, and what is told of one is said with it."""
    page = take_apart(
        "Dim yoke\n\nCast on 48 sts in A. Join.\nWork chart 1 (3 rnds, 6 sts per repeat) 8 times round.\n"
        "Knit 1 rnd A.\nBind off.\n\nChart 1\n1: *1 B, 5 A*  2: *2 B, 3 C, 1 B* - here A rests, carry it loosely or cut it\n3: as 1\n"
    )
    assert [piece.text for piece in page.pieces if piece.kind == "note"] == []
    (told,) = [piece.line for piece in page.pieces if piece.text.startswith("Rnd 2")]
    assert told is not None
    assert told.said == ("Here A rests, carry it loosely or cut it",)
