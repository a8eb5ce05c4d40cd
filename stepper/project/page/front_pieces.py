"""Cut a paragraph of front matter into pieces, each of one kind. No I/O."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import groupby

from stepper.project.page.orders import (
    gives_needle_for_part,
    holds_instruction,
    holds_strands_together,
    is_for_some_sizes,
    needles_for_part,
)
from stepper.project.page.pieces import Piece
from stepper.project.pairs import pair_alike

_ORDER = "this may be an instruction, and stands in front of the pattern."
_STRANDS = (
    "several strands are knitted as one here: the gauge has to be one that is knitted so. Give them together "
    "a name of their own under yarn, with the metres of all: every strand adds to what is needed."
)
_NEEDLE = "a needle is given to a part here, and no row says which needle it is worked on."
_SOME = "this is for some sizes alone, and no row says so."
_PAIR = (
    "both of a pair are alike, and one of them is planned here: the second has to be knitted as well. "
    'Write "Make 2." as the first line of its part.'
)
_UNNAMED = "it is not clear what this is."


def front_pieces(
    sentences: Sequence[str], kinds: Sequence[str], rows: Sequence[str], first: int
) -> list[Piece]:
    """Make the pieces of a paragraph of front matter.

    Args:
        sentences: Its sentences, in order.
        kinds: Kind of each, one of `front_matter.KINDS`; empty for what must go under a mark.
        rows: The rows of the page that hold it; they may go on after the last sentence.
        first: Row of the page where it begins, from 1.

    Returns:
        The pieces: one for each row if all of it is of one kind, else one for each run of a kind.
    """
    if len(set(kinds)) == 1 and kinds[0] and " ".join(sentences) == " ".join(rows):
        return [
            Piece(kind="comment", text=row, row=first + number, front=kinds[0])
            for number, row in enumerate(rows)
        ]
    return list(_runs(sentences, kinds, rows, first))


def _runs(sentences: Sequence[str], kinds: Sequence[str], rows: Sequence[str], first: int) -> Iterator[Piece]:
    done = 0
    for kind, run in groupby(zip(kinds, sentences, strict=True), key=lambda pair: pair[0]):
        text = " ".join(sentence for _, sentence in run)
        row = first + _row_at(done, rows)
        done += len(text) + 1
        if kind:
            yield Piece(kind="comment", text=text, row=row, front=kind)
        else:
            yield Piece(kind="note", text=text, row=row, why=_why(text))


def _why(text: str) -> str:
    """Return why a text of no kind goes under a mark."""
    if holds_strands_together(text):
        return _STRANDS
    if (gives_needle_for_part(text) or needles_for_part(text)) and not holds_instruction(text):
        return _NEEDLE
    if is_for_some_sizes(text):
        return _SOME
    if pair_alike(text):
        return _PAIR
    return _ORDER if holds_instruction(text) else _UNNAMED


def _row_at(offset: int, rows: Sequence[str]) -> int:
    """Return the row that holds a letter of the rows joined by single spaces. Both from 0."""
    end = 0
    for number, row in enumerate(rows):
        end += len(row) + 1
        if offset < end:
            return number
    return len(rows) - 1
