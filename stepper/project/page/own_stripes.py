"""Find the stripe sequences that a page defines, so that its lines are read by them. No I/O."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from stepper.project.page.front_values import find_yarns
from stepper.project.page.pieces import Piece
from stepper.project.page.quoting import value
from stepper.project.reading.parsing import made_plain
from stepper.project.stripes.stripe_sequences import StripeSequences
from stepper.records import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class PageStripes:
    """The stripe sequences of a page."""

    sequences: StripeSequences
    rows: frozenset[str]
    """The rows that define them, alone and as they may be joined."""

    def mark(self, piece: Piece) -> Piece:
        """Return a piece of the page, as front matter if it only defines stripes and works no stitch."""
        if piece.kind == "line" or piece.text not in self.rows:
            return piece
        return replace(piece, kind="comment", front=piece.front or "stitch patterns", why="")


def read_sequences(rows: Sequence[str]) -> PageStripes:
    """Read the stripe sequences among the rows of a page."""
    found = StripeSequences()
    names = [name for yarn in find_yarns(rows) for name in (yarn.key, yarn.name)]
    defining: set[str] = set()
    at = 0
    while at < len(rows):
        begins = bool(rows[at]) and found.begins(made_plain(rows[at]))
        taken = found.take([made_plain(row) for row in rows[at : at + 24]], names) if begins else 0
        if taken:
            defining |= {
                *rows[at : at + taken],
                " ".join(rows[at : at + taken]),
                " ".join(rows[at + 1 : at + taken]),
            }
        at += max(taken, 1)
    return PageStripes(sequences=found, rows=frozenset(defining))


def stripe_rows(found: StripeSequences) -> list[str]:
    """Write the stripe sequences of a page as a key of its file."""
    if not found.known:
        return []
    listed = {
        name: ", ".join(f"{number} rows {yarn}" for number, yarn in stripes)
        for name, stripes in found.known.items()
    }
    return ["", "stripes:", *(f"  {value(name)}: {value(words)}" for name, words in listed.items())]
