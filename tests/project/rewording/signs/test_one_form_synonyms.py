"""A sentence that is known is known in every dress of its lists, lengths, counts and endings, and says the same in each."""

from __future__ import annotations

from dataclasses import fields, is_dataclass

import pytest

from stepper.project.problems import Span
from stepper.project.reading.wording import Words, read_line, reads
from stepper.project.rewording.reword import reword
from tests.project.rewording.dresses import FRAMES, by_chance, fill, first_of, one_changed
from tests.tables import each_row


def said(line: str) -> object:
    """Return what a line says, wherever it stands and however its words were printed."""
    read = read_line(line, lambda offset, length: Span(line=1, column=offset + 1, length=length), Words(sizes=3, names={"A"}))
    assert read.line is not None, line
    return without_print(read.line.sentences)


def without_print(value: object) -> object:
    """Return a record without its places and the words as printed."""
    if isinstance(value, tuple):
        return tuple(map(without_print, value))
    if is_dataclass(value):
        kept = [field.name for field in fields(value) if field.name not in ("place", "printed", "text")]
        return (type(value).__name__, *(without_print(getattr(value, name)) for name in kept))
    return value.lower() if isinstance(value, str) else value


@each_row("name", FRAMES)
def test_each_wording_of_a_place_says_what_the_first_says(name: str) -> None:
    """One misread dress of a list would be knitted in silence."""
    frame = FRAMES[name]
    meant = said(fill(frame, first_of(frame)))
    assert [line for line in one_changed(frame) if said(line) != meant] == []


@pytest.mark.parametrize("name", FRAMES)
def test_wordings_are_read_together(name: str) -> None:
    """Pages mix them: a list in braces, inches by a sign and an ending of its own stand in one line."""
    assert [line for line in by_chance(FRAMES[name], 60, name) if not reads(line)] == []


@pytest.mark.parametrize(
    "line",
    [
        "CO 64-72 sts.",
        "K2, 3 sts remain.",
        "Change to 4.5 mm, 16 in (40 cm) circular needle.",
        "Distribute sts as follows: 8:10:8 (8:12:8, 10:10:10).",
        "Work even until body measures 6 cm or 2 in short of length wanted.",
    ],
)
def test_what_only_looks_alike_stays_as_it_is(line: str) -> None:
    """Two numbers with a dash may be a choice, a needle's length is no second unit, three numbers may be three needles."""
    kept = reword(line).text
    assert [made for made in ("(72)", "[40 cm]", "[2 in]", "K2. 3", "8, 12") if made in kept] == []
