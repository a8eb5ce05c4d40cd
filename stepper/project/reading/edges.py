"""Turn changes at the edges of rows in the parsed tree into instruction records."""

from __future__ import annotations

import re
from typing import Any

from stepper.project.instructions import (
    Assumed,
    AtIntervals,
    EdgeRows,
    EdgeShaping,
    Leg,
    Phrase,
    Sentence,
)
from stepper.project.problems import Span
from stepper.project.reading.elements import WORDS
from stepper.project.reading.occasions import type_of
from stepper.project.reading.shapings import ShapingBuilder
from stepper.project.stitchwork import Element, Mark, Numbers, Until, Work
from stepper.records import dataclass

_INSET = 1
"""Stitches between the edge and a change if the words do not say how many; common practice."""
_BESIDE = ("FOR_NAME", "MANNER", "MODIFIER")
_AT_BEGINNING = "stitches are bound off at the beginning of a row."
_HINT = 'Write "at the beginning of the next 2 rows".'


@dataclass(slots=True, kw_only=True)
class EdgeBuilder(ShapingBuilder):
    """Builds the records of changes at the beginning, the end or one edge of rows."""

    # --- a stitch or two at the ends: "inc 1 st at each end of every 4th row" ---

    def _do_ends_when(self, tree: Any) -> Sentence:
        trees = [child for child in tree.children if hasattr(child, "data")]
        first, legs = self.when(trees[0])
        return self._ended(tree, legs, first)

    def _do_ends_filling(self, tree: Any) -> Sentence:
        """Read a change at the ends that goes on as long as the rounds beside it."""
        return self._ended(tree, (self.filling(tree),))

    def _do_ends_filling_first(self, tree: Any) -> Sentence:
        """Read a change "on 2nd and every alt row", that goes on as long as the rounds beside it."""
        row = next(child for child in tree.children if type_of(child) in ("NEXT", "NTH"))
        first = self._one(self._tree_place(tree)) if row.type == "NEXT" else self.nth(row)
        return self._ended(tree, (self.filling(tree),), first)

    def _do_ends_times(self, tree: Any) -> Sentence:
        place = self._tree_place(tree)
        often = next(child for child in tree.children if hasattr(child, "data"))
        return self._ended(tree, (self.so_often(often, self._one(place)),))

    def _do_ends_beginning(self, tree: Any) -> Sentence:
        number = next((child for child in tree.children if type_of(child) == "NUMBERS"), None)
        place = self._tree_place(tree)
        rows = self._numbers(number) if number is not None else self._one(place)
        return self._ended(tree, (Leg(self._one(place), rows, False),))

    def _do_ends_beginning_and(self, tree: Any) -> Sentence:
        leg = self.leg(next(child for child in tree.children if hasattr(child, "data")))
        return self._ended(tree, (leg,), self._one(self._tree_place(tree)))

    def _do_ends_beginning_then(self, tree: Any) -> Sentence:
        return self._ended(tree, self._next_then(tree))

    def _next_then(self, tree: Any) -> tuple[Leg, ...]:
        """Read "at beg of next 2 rows, then every 4th row twice" as intervals, the first for those rows."""
        place = self._tree_place(tree)
        numbers = [child for child in tree.children if type_of(child) == "NUMBERS"]
        rows = numbers[1:] if type_of(tree.children[0]) == "EDGE" else numbers
        times = self._numbers(rows[0]) if rows else self._one(place)
        legs = next(child for child in tree.children if getattr(child, "data", "") == "legs")
        return (Leg(self._one(place), times, False), *(self.leg(child) for child in legs.children))

    def _ended(self, tree: Any, legs: tuple[Leg, ...], first: Numbers | None = None) -> Sentence:
        """Make the instruction of a change at the ends, or at one named edge."""
        place = self._tree_place(tree)
        change = str(tree.children[0]).lower()
        where = self._where(tree)
        stitch = "dec" if change.startswith("dec") else "inc"
        number = self._changed(change, place)
        as_before = where.endswith("before")
        inset = _INSET if as_before else self._inset(tree)
        edge = edge_of(where)
        if edge:
            changed = Numbers((number,), place)
            return EdgeShaping(stitch, changed, edge, legs, place, inset, first, as_before)
        if "of" in where.split():
            beside = self._beside_marker(stitch, number, inset, place)
            return AtIntervals("", legs, False, place, beside, first)
        written = self._ends(stitch, number, where, inset, tree)
        once = first is None and len(legs) == 1 and legs[0].times is not None and legs[0].times.values == (1,)
        if once and not legs[0].side and legs[0].every.values == (1,):
            return written
        at_will = not any(type_of(child) == "INSET" for child in tree.children) and stitch not in self.insets
        narrow = self._ends(stitch, number, where, 0, tree) if stitch == "dec" and at_will else None
        return AtIntervals("", legs, False, place, written, first, narrow=narrow)

    def _changed(self, change: str, place: Span) -> int:
        """Return how many stitches are changed at an end; reported if none, or more than a decrease takes."""
        said = re.search(r"\b(?:\d|one|two)\b", change)
        word = said.group() if said else "one"
        if word not in ("1", "one", "2", "two"):
            told = f"{word} stitches changed at one end are no increase or decrease that is known here."
            hint = 'Write the row out, or "bind off 3 sts at the beginning of the next 2 rows".'
            self.report(place, told, hint)
        return 2 if word in ("2", "two") else 1

    def _inset(self, tree: Any) -> int:
        """Return how far from the edge a change is worked; reported as assumed if the line does not say."""
        token = next((child for child in tree.children if type_of(child) == "INSET"), None)
        kind = "dec" if str(tree.children[0]).lower().startswith("dec") else "inc"
        if token is None and kind in self.insets and "of" not in self._where(tree).split():
            return self.insets[kind]
        if token is None:
            text = "how far from the edge it is worked is not said; one stitch in from the edge is taken."
            if "of" in self._where(tree).split():
                text = "how far from the marker is not said: as a round before shows it, or one stitch in."
            self.assumed.append(Assumed(text, self._tree_place(tree)))
            return _INSET
        word = re.search(r"\b(\d|one|two|three|four|five)\b", str(token), re.I)
        found = word.group().lower() if word else "1"
        self.said.append(" ".join(str(token).strip(" ,;").split()))
        return int(found) if found.isdigit() else WORDS.index(found)

    def _ends(self, stitch: str, number: int, where: str, inset: int, tree: Any) -> Phrase:
        """Write out the row with the change at its ends."""
        place = self._tree_place(tree)
        uses = number * (2 if stitch == "dec" else 1)
        change = Work(stitch, Numbers((number,), place), None, place)
        stay = (Work("pattern", Numbers((inset,), place), None, place),) if inset else ()
        both = re.search(r"each|both|and", where) is not None
        start = both or re.search(r"beg|start", where) is not None
        made: list[Element] = [*stay, change] if start else []
        if both or re.search(r"\bend\b", where):
            short = Numbers((uses + inset,), place)
            made += [Until("pattern", "last", short, None, place), change, *stay]
        else:
            made.append(Until("pattern", "end", None, None, place))
        return Phrase(tuple(made), place)

    def _beside_marker(self, stitch: str, number: int, inset: int, place: Span) -> Phrase:
        """Write out the row with a change on both sides of the one marker there is."""
        change = Work(stitch, Numbers((number,), place), None, place)
        stay = (Work("pattern", Numbers((inset,), place), None, place),) if inset else ()
        short = Numbers((number * (2 if stitch == "dec" else 1) + inset,), place)
        before = (Until("pattern", "marker", short, None, place), change, *stay)
        rest = Until("pattern", "end", None, None, place)
        return Phrase((*before, Mark("sm", "", place), *stay, change, rest), place)

    # --- bound off and cast on at the beginning of rows, or at one edge ---

    def _do_edge_rows(self, tree: Any) -> Sentence:
        numbers = [token for token in tree.children if type_of(token) == "NUMBERS"]
        edge_first = type_of(tree.children[0]) == "EDGE"
        number = numbers[0] if edge_first else numbers[-1]
        rest = [token for token in numbers if token is not number]
        place = self._tree_place(tree)
        rows = self._numbers(rest[0]) if rest else self._one(place)
        word = next(str(child) for child in tree.children if type_of(child) == "ROUND")
        return EdgeRows(
            self._edge_stitch(tree), self._numbers(number), rows, place, word.lower().startswith("row")
        )

    def _do_beginning_rows(self, tree: Any) -> Sentence:
        return self._do_edge_rows(tree)

    def _do_edge_and(self, tree: Any) -> Sentence:
        leg = self.leg(next(child for child in tree.children if hasattr(child, "data")))
        return self._edged(tree, (leg,), "beginning", self._one(self._tree_place(tree)))

    def _do_edge_then(self, tree: Any) -> Sentence:
        return self._edged(tree, self._next_then(tree), "beginning")

    def _do_edge_when(self, tree: Any) -> Sentence:
        trees = [child for child in tree.children if hasattr(child, "data")]
        first, legs = self.when(trees[-1])
        return self._edged(tree, legs, self._where(tree), first)

    def _do_edge_times(self, tree: Any) -> Sentence:
        """Read "bind off 4 sts at neck edge twice": each time on the next row that begins there."""
        place = self._tree_place(tree)
        trees = [child for child in tree.children if hasattr(child, "data")]
        leg = self.so_often(trees[-1], Numbers((2,), place))
        if self._off_at_both_sides(tree) and leg.times is not None and not leg.more:
            return self._next_rows(tree, tuple(2 * times for times in leg.times.values))
        several = leg.times is None or leg.times.values != (1,)
        text = "bound off at one edge on every other row, as only the rows that begin there can."
        if several:
            self.assumed.append(Assumed(text, place))
        return self._edged(tree, (leg,), self._where(tree))

    def _do_edge_once(self, tree: Any) -> Sentence:
        if self._off_at_both_sides(tree):
            return self._next_rows(tree, (2,))
        place = self._tree_place(tree)
        leg = Leg(Numbers((1,), place), self._one(place), False)
        return self._edged(tree, (leg,), self._where(tree))

    def _do_edge_here(self, tree: Any) -> Sentence:
        """Read "cast on 6 sts at end of row": after the stitches of the row just worked."""
        where = self._where(tree)
        if "end" not in where.split() or _at_both_ends(where):
            return self._do_edge_once(tree)
        place = self._tree_place(tree)
        stitch = self._edge_stitch(tree)
        if stitch == "bo":
            self.report(place, _AT_BEGINNING, _HINT)
        number = self._numbers(next(child for child in tree.children if type_of(child) == "NUMBERS"))
        return Phrase((Work(stitch, number, None, place),), place)

    def _off_at_both_sides(self, tree: Any) -> bool:
        """Return whether stitches are bound off "each side", without the rows on which that is done."""
        word = next(str(child).lower() for child in tree.children if type_of(child) == "EDGE")
        sides = re.search(r"\b(?:each|both)\s+(?:sides?|ends?)$", self._where(tree))
        return re.match(r"b|cast\s+off", word) is not None and sides is not None

    def _next_rows(self, tree: Any, rows: tuple[int, ...]) -> Sentence:
        """Read "bind off 4 sts each side" as pages mean it: a row can only be bound off at its beginning."""
        place = self._tree_place(tree)
        number = self._numbers(next(child for child in tree.children if type_of(child) == "NUMBERS"))
        text = "bound off at the beginning of rows, one for each side, as only there it can be."
        self.assumed.append(Assumed(text, place))
        return EdgeRows(self._edge_stitch(tree), number, Numbers(rows, place), place, True, True)

    def _where(self, tree: Any) -> str:
        return next((str(child).lower() for child in tree.children if type_of(child) == "WHERE"), "beginning")

    def _edge_stitch(self, tree: Any) -> str:
        """Return `co` or `bo`; keep the words beside it, and report stitches picked up over several rows."""
        words = next(str(child).lower() for child in tree.children if type_of(child) == "EDGE")
        beside = [str(child) for child in tree.children if type_of(child) in _BESIDE]
        if words.startswith("p"):
            told = "stitches are picked up along one edge, not on several rows."
            self.report(self._tree_place(tree), told)
        stitch = "co" if re.match(r"c(ast\s+on|o)", words) else "bo"
        self.said.extend(f"{'cast on' if stitch == 'co' else 'bind off'} {word}" for word in beside)
        return stitch

    def _edged(self, tree: Any, legs: tuple[Leg, ...], where: str, first: Numbers | None = None) -> Sentence:
        place = self._tree_place(tree)
        stitch = self._edge_stitch(tree)
        number = self._numbers(next(child for child in tree.children if type_of(child) == "NUMBERS"))
        edge = edge_of(where)
        if where.endswith("before"):
            self.report(place, '"as before" is read of a decrease or an increase at an edge.')
        if edge:
            return EdgeShaping(stitch, number, edge, legs, place, 0, first)
        change, rest = Work(stitch, number, None, place), Until("pattern", "end", None, None, place)
        both = _at_both_ends(where)
        at_end = both or ("end" in where.split() and "and" not in where.split())
        if not re.search(r"beg|start", where) and not (at_end and stitch == "co"):
            self.report(place, f'"{where}": {_AT_BEGINNING}', _HINT)
        row = (change, rest, change) if both else (rest, change) if at_end else (change, rest)
        return AtIntervals("", legs, False, place, Phrase(row, place), first)


def _at_both_ends(where: str) -> bool:
    """Return whether a change is at both ends of a row."""
    return re.search(r"\b(?:each|both)\s+ends?\b", where) is not None


def edge_of(where: str) -> str:
    """Return the edge named: `neck`, `armhole`, `front` or `side`; empty for an end of the row."""
    found = re.search(r"\b(neck|armhole|front|side)\s+edges?\b", where)
    return found.group(1) if found and "both" not in where else ""
