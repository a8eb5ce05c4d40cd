"""On which rows, from the words to records. Source: common practice."""

from __future__ import annotations

import pytest

from stepper.project.instructions import AtIntervals
from stepper.project.problems import Span
from stepper.project.reading.wording import Words, read_line


def read(line: str) -> AtIntervals:
    """Read one line of shaping."""
    found = read_line(line, lambda at, length: Span(line=1, column=at + 1, length=length), Words(sizes=1)).line
    assert found is not None, line
    (sentence,) = found.sentences
    assert isinstance(sentence, AtIntervals)
    return sentence


@pytest.mark.parametrize(
    ("words", "first", "legs"),
    [
        ("every 4th row 3 times", None, [(4, 3, None, "")]),
        ("on next and every 4th row until 30 sts rem", 1, [(4, None, 30, "")]),
        ("on next and foll 3 alt rows", None, [(1, 1, None, ""), (2, 3, None, "")]),
        ("on next 2 rows, then on foll alt row", None, [(1, 2, None, ""), (2, 1, None, "")]),
        ("on 5th and every foll 6th row to 46 sts", 5, [(6, None, 46, "")]),
        ("every other RS row twice more", None, [(4, 2, None, "RS")]),
        ("every RS row 3 times, then every row to 20 sts", None, [(2, 3, None, "RS"), (1, None, 20, "")]),
        ("on next RS row", None, [(1, 1, None, "RS")]),
    ],
)
def test_rows_are_read_however_they_are_said(
    words: str, first: int | None, legs: list[tuple[int, int | None, int | None, str]]
) -> None:
    """Alternate, following, every other: so many rows apart, so often or to a count."""
    made = read(f"Rep dec row {words}.")
    assert (made.first.values[0] if made.first else None) == first
    assert [
        (
            leg.every.values[0],
            leg.times.values[0] if leg.times else None,
            leg.until.values[0] if leg.until else None,
            leg.side,
        )
        for leg in made.legs
    ] == legs
