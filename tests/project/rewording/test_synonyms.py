"""Other printed wordings. Source: the wording of patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.problems import Span
from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import Words, read_line
from stepper.project.rewording.recast import as_printed
from stepper.project.rewording.reword import put_words
from stepper.project.rewording.synonym import Synonym
from stepper.project.rewording.synonyms import SYNONYMS


def place_of(offset: int, length: int) -> Span:
    """Count columns from 1 on one line."""
    return Span(line=1, column=offset + 1, length=length)


TOGETHER = 50
"""Rows of the table that a test looks at: handing out a test takes longer than looking at a row."""


def rows_from(first: int) -> tuple[Synonym, ...]:
    """Return the rows of the table that are looked at together."""
    return SYNONYMS[first : first + TOGETHER]


@pytest.mark.parametrize("first", range(0, len(SYNONYMS), TOGETHER))
def test_every_row_of_the_table_reads_its_example(first: int) -> None:
    """A row that no line needs, or that leaves its line unread, is taken out or mended."""
    words = Words(sizes=3, names={"MC", "A", "B", "chart", "fern"})
    read = {row.example: read_line(row.example, place_of, words).problems for row in rows_from(first)}
    assert {example: problems for example, problems in read.items() if problems} == {}


@pytest.mark.parametrize("first", range(0, len(SYNONYMS), TOGETHER))
def test_every_row_is_tried_on_the_lines_it_is_for(first: int) -> None:
    """A line that its pattern would change has one of the pieces it is looked for by."""
    assert [told for row in rows_from(first) if (told := not_tried(row, row.example))] == []


def not_tried(row: Synonym, line: str) -> str:
    """Say which row is not tried on the way of a line to a row, or that the row does not change it; else nothing."""
    made = as_printed(made_plain(line))
    for earlier in SYNONYMS:
        if earlier.pattern.search(made.text) is not None:
            low = made.text.lower()
            changed = put_words(made, earlier)
            if changed.text != made.text and not any(piece in low for piece in earlier.has):
                return f"{line}: the row of {earlier.example!r} is not tried on {made.text!r}"
            if changed.text != made.text and earlier is row:
                return ""
            made = changed
    return f"{line}: its row does not change it; by then it is {made.text!r}"


def test_a_row_that_is_not_tried_would_be_seen() -> None:
    """The watch can fail: a row does not change a line of another kind."""
    assert not_tried(SYNONYMS[0], SYNONYMS[0].example) == ""
    assert "does not change it" in not_tried(SYNONYMS[0], "Knit all sts.")


@pytest.mark.parametrize("end", ["around for 2", "across and", "to end and"])
def test_a_long_row_of_single_stitches_is_looked_through_at_once(end: str) -> None:
    """A row that can be parted in two ways at each stitch was tried in all of them: forty stitches took for ever."""
    line = f"Row 1: {'p1 ' * 60}{end}"
    assert all(isinstance(synonym.pattern.sub("", line), str) for synonym in SYNONYMS)
