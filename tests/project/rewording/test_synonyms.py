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


@pytest.mark.parametrize("row", SYNONYMS, ids=lambda row: row.example)
def test_every_row_of_the_table_reads_its_example(row: Synonym) -> None:
    """A row that no line needs, or that leaves its line unread, is taken out or mended."""
    reading = read_line(row.example, place_of, Words(sizes=3, names={"MC", "A", "B", "chart", "fern"}))
    assert reading.problems == ()


@pytest.mark.parametrize("row", SYNONYMS, ids=lambda row: row.example)
def test_every_row_is_tried_on_the_lines_it_is_for(row: Synonym) -> None:
    """A line that its pattern would change has one of the pieces it is looked for by."""
    made = as_printed(made_plain(row.example))
    for earlier in SYNONYMS:
        low = made.text.lower()
        changed = put_words(made, earlier)
        if changed.text != made.text:
            assert any(piece in low for piece in earlier.has)
            if earlier is row:
                return
        made = changed
    raise AssertionError(f"the row does not change its example, which is {made.text!r} by then")
