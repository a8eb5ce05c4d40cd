"""Rows worked turn and turn about, such as knit rows and purl rows, written as one entry with all their
boxes. Pure."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from typing import Final

from stepper.plan.model import Round
from stepper.records import dataclass
from stepper.report.sheet.blocks import RoundRow

LEAST: Final = 4
"""Rows from which they are written as one entry. Chosen here."""


@dataclass(frozen=True, slots=True)
class FirstOfRow:
    """A row of the sheet with the first of its rounds."""

    first: Round
    row: RoundRow

    @property
    def single(self) -> bool:
        """Whether it is one round that changes no count."""
        return len(self.row.boxes[0]) == 1 and self.row.before == self.row.after


def fold_alternating(entries: Sequence[FirstOfRow]) -> Iterator[RoundRow]:
    """Write entries that alternate as one; leave any other as it is.

    Args:
        entries: Of one section, in order, each with one group of boxes.
    """
    at = 0
    while at < len(entries):
        last = at
        while last + 1 < len(entries) and _goes_on(entries[at : last + 2]):
            last += 1
        if last - at + 1 < LEAST:
            yield entries[at].row
            at += 1
            continue
        yield _join(entries[at : last + 1])
        at = last + 1


def _goes_on(entries: Sequence[FirstOfRow]) -> bool:
    """Return whether the last of these entries goes on with what alternates in those before it."""
    before, last = entries[-2], entries[-1]
    if not (before.single and last.single) or before.row.check is not None:
        return False
    if last.row.remarks or last.row.label or last.row.altered != before.row.altered:
        return False
    if last.row.before != before.row.before or last.first.flat != before.first.flat:
        return False
    if last.first.flat and last.first.side == before.first.side:
        return False
    if len(entries) == 2:
        return last.row.words != before.row.words and not before.row.label
    return last.row.words == entries[-3].row.words


def _join(entries: Sequence[FirstOfRow]) -> RoundRow:
    first, second, last = entries[0], entries[1], entries[-1]
    return replace(
        first.row,
        numbers=f"{first.first.number}–{last.first.number}",
        words=tuple(f"{_which(each.first)}: {each.row.words[0]}" for each in (first, second)),
        check=last.row.check,
        boxes=(tuple(box for each in entries for box in each.row.boxes[0]),),
    )


def _which(round_: Round) -> str:
    if round_.flat:
        return f"{round_.side} rows"
    return "Odd rounds" if round_.number % 2 else "Even rounds"
