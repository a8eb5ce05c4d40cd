"""Shaping in the parsed tree as instruction records: spread evenly, at intervals, side by side."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any

from lark import Token

from stepper.project.instructions import (
    AtIntervals,
    Evenly,
    Labelled,
    Rounds,
    Sentence,
    Together,
    UntilLength,
    WorkRounds,
)
from stepper.project.occasions import OccasionBuilder, type_of
from stepper.project.stitchwork import Numbers


@dataclass(slots=True, kw_only=True)
class ShapingBuilder(OccasionBuilder):
    """Builds the records of shaping."""

    # --- evenly ---

    def _do_evenly_to(self, tree: Any) -> list[Sentence]:
        return self._evenly(tree, to=True)

    def _do_evenly_by(self, tree: Any) -> list[Sentence]:
        return self._evenly(tree, to=False)

    def _evenly(self, tree: Any, *, to: bool) -> list[Sentence]:
        place = self._tree_place(tree)
        lead = next(iter(tree.find_data("lead")), None)
        change = next(tree.find_data("change")).children[0]
        token = next(child for child in tree.children if isinstance(child, Token) and child.type == "NUMBERS")
        numbers = self._numbers(token)
        direction = -1 if change.lower().startswith("dec") else 1
        made: list[Sentence] = []
        if lead is not None and len(lead.children) == 3:
            rounds = self._numbers(lead.children[1])
            if rounds.values[0] > 1:
                before = Numbers(tuple(value - 1 for value in rounds.values), rounds.place)
                made.append(WorkRounds(code_of(lead.children[0]), Rounds(before, False), place))
        code = code_of(lead.children[0]) if lead is not None else ""
        made.append(Evenly(direction, numbers if to else None, None if to else numbers, place, code))
        return made

    # --- at intervals ---

    def _do_work_every(self, tree: Any) -> AtIntervals:
        return self._intervals(tree, again=False)

    def _do_rep_every(self, tree: Any) -> AtIntervals:
        return self._intervals(tree, again=True)

    def _intervals(self, tree: Any, *, again: bool) -> AtIntervals:
        first, legs = self.when(tree.children[-1])
        return AtIntervals(_named(tree), legs, again, self._tree_place(tree), first=first)

    def _do_work_times(self, tree: Any) -> AtIntervals:
        return self._on_end(tree, again=False)

    def _do_rep_times(self, tree: Any) -> AtIntervals:
        return self._on_end(tree, again=True)

    def _on_end(self, tree: Any, *, again: bool) -> AtIntervals:
        """Read a named round worked several times, or to a count, without plain rounds between."""
        place = self._tree_place(tree)
        leg = self.so_often(tree.children[-1], self._one(place))
        return AtIntervals(_named(tree), (leg,), again, place)

    def _do_work_label(self, tree: Any) -> Labelled:
        label = next(child for child in tree.children if type_of(child) == "LABEL_REF")
        again = any(type_of(child) == "REP" for child in tree.children)
        return Labelled(label_of(label), self._place(label), again)

    def _do_together(self, tree: Any) -> Sentence:
        place = self._tree_place(tree)
        parts = []
        for child in tree.children:
            after = None
            if child.data == "delayed":
                length, from_ = child.children[:2]
                after = UntilLength(self._length(length), True, self._start(from_), False)
                child = child.children[-1]
            made = getattr(self, f"_do_{child.data}")(child)
            if isinstance(made, AtIntervals):
                parts.append(replace(made, after=after))
            else:
                self.problems.append(made.place.problem("say how often it is worked, beside the other."))
        return Together(tuple(parts), place)


def _named(tree: Any) -> str:
    return label_of(next(child for child in tree.children if type_of(child) == "LABEL_REF"))


def code_of(token: Token) -> str:
    """Return the stitch of `Knit` or `Purl`."""
    return "p" if token.lower().startswith("p") else "k"


def label_of(token: Token) -> str:
    """Return the name of a round as it is looked up."""
    return " ".join(str(token).lower().split())
