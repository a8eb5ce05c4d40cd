"""Keep the printed words and places of rows that are read in other words than they are printed in. No I/O."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import field

from stepper.project.own_stitches.abbreviations import OwnStitch
from stepper.project.problems import Span
from stepper.project.rewording.reworded import Reworded
from stepper.project.stripes.striping import StripesCalled
from stepper.records import dataclass

Row = tuple[str, Span]
"""A row of the file with its place."""


@dataclass(frozen=True, slots=True, kw_only=True)
class RespeltRow:
    """A row that is read in other words."""

    column: int
    """Column of the file where it begins, from 1."""
    printed: str
    reworded: Reworded
    own: tuple[OwnStitch, ...] = ()
    """Abbreviations of the page that it uses."""
    stripes: StripesCalled | None = None
    at: int = 0
    """Where in the row as it is read the words stood that call for stripes, from 0."""


@dataclass(slots=True)
class Respelt:
    """The rows of a section that are read in other words, by their lines in the file."""

    rows: dict[int, RespeltRow] = field(default_factory=dict)

    def put(
        self,
        row: Row,
        reworded: Reworded,
        *,
        own: tuple[OwnStitch, ...] = (),
        stripes: StripesCalled | None = None,
        at: int = 0,
    ) -> None:
        """Keep a row that is read in other words from here on; it may have been put into others before."""
        text, place = row
        before = self.rows.get(place.line)
        if before is not None:
            places = tuple(
                before.reworded.places[min(at_, len(before.reworded.places) - 1)] for at_ in reworded.places
            )
            reworded = Reworded(reworded.text, places)
            stripes, at, own = before.stripes, before.at, own or before.own
        self.rows[place.line] = RespeltRow(
            column=place.column,
            printed=before.printed if before is not None else text,
            reworded=reworded,
            own=own,
            stripes=stripes,
            at=at,
        )

    def place(self, place: Span) -> Span:
        """Return the printed place of a stretch of a row."""
        row = self.rows.get(place.line)
        if row is None:
            return place
        offset, length = row.reworded.place(max(0, place.column - row.column), place.length)
        return Span(line=place.line, column=row.column + offset, length=length)

    def words(self, rows: Iterable[Row]) -> str | None:
        """Return the printed words of rows, or of parts of rows; None where they stand as printed."""
        listed = list(rows)
        if not any(place.line in self.rows for _, place in listed):
            return None
        return " ".join(" ".join(self._words(row).split()) for row in listed)

    def _words(self, row: Row) -> str:
        text, place = row
        whole = self.rows.get(place.line)
        if whole is None:
            return text
        first = place.column - whole.column
        last = first + len(text)
        places = whole.reworded.places
        start = places[first] if 0 < first < len(places) else 0
        end = places[last] if last < len(whole.reworded.text) else None
        return whole.printed[start:end]

    def uses(self, rows: Iterable[Row]) -> list[OwnStitch]:
        """Return the abbreviations of the page that rows use."""
        kept = (self.rows[place.line] for _, place in rows if place.line in self.rows)
        return list({one.name: one for row in kept for one in row.own}.values())

    def stripes(self, rows: Iterable[Row]) -> StripesCalled | None:
        """Return the stripes that rows, or parts of rows, call for."""
        for text, place in rows:
            row = self.rows.get(place.line)
            if row is not None and row.stripes is not None:
                first = place.column - row.column
                last = first + len(text)
                if first <= row.at < last or (row.at == last == len(row.reworded.text)):
                    return row.stripes
        return None
