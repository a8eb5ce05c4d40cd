"""Turn the parts of a parsed line that number rounds or work a chart into records."""

from __future__ import annotations

import re
from dataclasses import replace
from itertools import pairwise
from typing import Any

from lark import Token, Tree

from stepper.project.duration import Duration, Times
from stepper.project.instructions import ChartWork, Repeated
from stepper.project.problems import Span
from stepper.project.reading.manners import chart_called, name_of
from stepper.project.reading.occasions import is_short, type_of
from stepper.project.reading.part_references import PartBuilder
from stepper.project.stitchwork import Numbers
from stepper.records import dataclass


@dataclass(slots=True, kw_only=True)
class ChartBuilder(PartBuilder):
    """Builds the records of lines that work rounds by their numbers, from a chart or as written above."""

    def _span(self, tree: Tree[Token], *, head: bool = False) -> tuple[int, ...]:
        """Return the numbers of rounds; three or more that are worked again may run downwards one by one."""
        found: list[int] = []
        for piece in tree.find_data("piece"):
            found.extend(self._piece(piece))
        if not head and len(found) > 2 and all(later == number - 1 for number, later in pairwise(found)):
            return tuple(found)
        if any(later <= number for number, later in pairwise(found)):
            told = f"rounds {', '.join(map(str, found))} are not in the order of their numbers."
            self.report(self._tree_place(tree), told)
        return tuple(sorted(set(found)))

    def _piece(self, piece: Tree[Token]) -> range:
        ends = [self._one_for_all(token) for token in piece.children if isinstance(token, Token)]
        first, last = ends[0], ends[-1]
        if last < first or last - first > 999:
            self.report(self._tree_place(piece), f"rounds {first}-{last} do not run upwards.")
            return range(first, first + 1)
        return range(first, last + 1)

    def _do_pattern_spans(self, tree: Any) -> list[Repeated]:
        """Read "work rows 1-4 of trellis pattern 5 times, then rows 1 and 2 once"."""
        again, place, children = type_of(tree.children[0]) == "REP", self._tree_place(tree), tree.children
        name = name_of(str(next(child for child in children if type_of(child) == "PATTERN_OF")))
        made: list[Repeated] = []
        for at, child in enumerate(children):
            if getattr(child, "data", "") != "span":
                continue
            repeats = children[at + 2] if not made else children[at + 1]
            numbers, lasts = self._span(child), self._pattern_lasts(repeats, place)
            made.append(Repeated(numbers, None, lasts, again and not made, place, pattern=name))
        return made

    def _do_pattern_onwards(self, tree: Any) -> Repeated:
        """Read "work rows 2 to last of trellis pattern": once, up to its end."""
        _, first, pattern = tree.children
        place = self._tree_place(tree)
        lasts, name = self._pattern_lasts(None, place), name_of(str(pattern))
        return Repeated((self._one_for_all(first),), None, lasts, False, place, pattern=name, onwards=True)

    def _do_pattern_whole(self, tree: Any) -> Repeated:
        """Read "work the 4 rounds of trellis pattern 5 times"."""
        number = self._numbers(next(child for child in tree.children if type_of(child) == "NUMBERS"))
        name = name_of(str(tree.children[-2]))
        again, place = type_of(tree.children[0]) == "REP", self._tree_place(tree)
        return Repeated((), number, self._pattern_lasts(tree.children[-1], place), again, place, pattern=name)

    def _do_pattern_all(self, tree: Any) -> Repeated:
        """Read "work all rows of trellis pattern 5 times"."""
        again, place = type_of(tree.children[0]) == "REP", self._tree_place(tree)
        name = name_of(str(tree.children[-2]))
        return Repeated((), None, self._pattern_lasts(tree.children[-1], place), again, place, pattern=name)

    def _do_pattern_times(self, tree: Any) -> Repeated:
        """Read "work 5 repeats of trellis pattern", all its rounds each time."""
        number = self._numbers(tree.children[-2])
        place = self._tree_place(tree)
        return Repeated((), None, Times(number, False), False, place, pattern=name_of(str(tree.children[-1])))

    def _do_rep_last_bare(self, tree: Any) -> Repeated:
        """Read "rep last 2 rows", which does not say how often."""
        place = self._tree_place(tree)
        number = next((child for child in tree.children if type_of(child) == "NUMBERS"), None)
        one = None if str(tree.children[-1]).lower().rstrip(".").endswith("s") else self._one(place)
        last = self._numbers(number) if number is not None else one
        short = is_short(tree.children[-1])
        return Repeated((), last, Times(self._one(place), True), True, place, True, short=short)

    def _pattern_lasts(self, repeats: Any, place: Span) -> Duration:
        return Times(Numbers((1,), place), False) if repeats is None else self._repeats(repeats)

    def _do_chart(self, tree: Any) -> ChartWork:
        chart, round_, piece, repeats = (*tree.children, None, None, None)[:4]
        return self._chart(tree, chart, piece if round_ is not None else None, repeats)

    def _do_chart_rounds(self, tree: Any) -> ChartWork:
        _, span, chart, repeats = tree.children
        made = self._chart(tree, chart, None, repeats)
        numbers = self._span(span)
        if numbers != tuple(range(numbers[0], numbers[-1] + 1)):
            return replace(made, numbers=numbers)
        return replace(made, first=numbers[0], last=numbers[-1])

    def _do_chart_all(self, tree: Any) -> ChartWork:
        """Read "work all 6 rnds of chart B", to check how many the chart has."""
        number, chart = (child for child in tree.children if type_of(child) in ("NUMBERS", "CHART"))
        return replace(self._chart(tree, chart, None, tree.children[-1]), rounds=self._numbers(number))

    def _do_chart_done(self, tree: Any) -> ChartWork:
        """Read "continue chart wave until all 4 rnds are complete": the rounds that remain."""
        chart, until = tree.children
        made = replace(self._chart(tree, chart, None, None), following=True, whole=True)
        number = re.search(r"\d+", str(until))
        if number is None:
            return made
        return replace(made, rounds=Numbers((int(number.group()),), self._place(until)))

    def _do_chart_begun(self, tree: Any) -> ChartWork:
        """Read "begin chart wave": its rows are named next."""
        return replace(self._chart(tree, tree.children[0], None, None), announced=True)

    def _do_chart_through(self, tree: Any) -> ChartWork:
        """Read "continue chart wave through rnd 20": the rounds from the next one to that."""
        chart, _, last = tree.children
        made = self._chart(tree, chart, None, None)
        return replace(made, last=self._one_for_all(last), following=True, whole=True)

    def _chart(self, tree: Any, chart: Token, piece: Any, repeats: Any) -> ChartWork:
        following = str(chart).lower().startswith("next")
        name = chart_called(str(chart))
        span = self._piece(piece) if piece is not None else None
        duration = self._repeats(repeats) if repeats is not None else None
        times = duration.number if isinstance(duration, Times) else None
        lasts = None if isinstance(duration, Times) else duration
        first, last = (span[0], span[-1]) if span else (None, None)
        total = isinstance(duration, Times) and duration.total
        return ChartWork(name, first, last, times, self._place(chart), lasts, following, total=total)
