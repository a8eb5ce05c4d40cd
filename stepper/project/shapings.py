"""Durations and shaping in the parsed tree as instruction records: how long, how often, where it grows."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Any

from lark import Token, Tree

from stepper.project.elements import ElementBuilder
from stepper.project.instructions import (
    Assumed,
    AtIntervals,
    Duration,
    EdgeRows,
    Evenly,
    Labelled,
    Leg,
    Phrase,
    Rounds,
    Sentence,
    Times,
    Together,
    UntilCount,
    UntilLength,
    WorkRounds,
)
from stepper.project.stitchwork import Element, Numbers, Until, Work

_NTHS = ("second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth")


@dataclass(slots=True, kw_only=True)
class ShapingBuilder(ElementBuilder):
    """Builds the records of durations and shaping."""

    # --- how long ---

    def _until(self, tree: Any) -> Duration:
        if tree.data == "for_rounds":
            number, more, _ = tree.children
            return Rounds(self._numbers(number), more is not None)
        if tree.data == "until_count":
            return UntilCount(self._numbers(tree.children[0]))
        if tree.data == "for_length":
            length, blocked, ending = tree.children
            return UntilLength(
                self._length(length), False, "here", blocked is not None, *self._ending(ending)
            )
        length, from_, blocked, ending = tree.children
        return UntilLength(
            self._length(length), True, self._start(from_), blocked is not None, *self._ending(ending)
        )

    def _ending(self, tree: Any) -> tuple[int | None, str]:
        """Return the round, and the side, that the words end with."""
        if tree is None:
            return None, ""
        if tree.data == "ending_round":
            return self._numbers(tree.children[1]).values[0], ""
        return None, side_of(str(tree.children[0]))

    def _start(self, from_: Any) -> str:
        """Return where a length is measured from: `section`, `cast-on` or `divide`; report any other."""
        if from_ is None:
            return "section"
        token = from_.children[0]
        word = re.sub(r"^from\s+(the\s+)?", "", str(token).lower())
        if re.match(r"cast|beg|commencement$", word):
            return "cast-on"
        if word in ("underarm", "divide", "division"):
            return "divide"
        place = self._place(token)
        if word != "start":
            self.problems.append(
                place.problem(
                    f'how far the piece has come "{token}" is not known.',
                    'Measure from the cast-on edge, or write "for" and the length worked from here.',
                )
            )
        self.assumed.append(Assumed(f'"{token}" is measured from the beginning of this section.', place))
        return "section"

    def _repeats(self, tree: Any) -> Duration:
        place = self._tree_place(tree)
        if tree.data == "n_times":
            return Times(self._numbers(tree.children[0]), any(tree.children[1:]))
        if tree.data == "n_total":
            return Times(self._numbers(tree.children[0]), False, True)
        if tree.data == "twice":
            word = str(tree.children[0]).lower()
            return Times(Numbers((2 if word == "twice" else 1,), place), tree.children[1] is not None)
        if tree.data == "repeats":
            return self._until(tree.children[0])
        return self._until(tree)

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

    def _do_next_and_every(self, tree: Any) -> AtIntervals:
        return self._intervals(tree, again=False, at_once=True)

    def _intervals(self, tree: Any, *, again: bool, at_once: bool = False) -> AtIntervals:
        legs = self._legs(tree)
        return AtIntervals(_named(tree), legs, again, self._tree_place(tree), at_once=at_once)

    def _legs(self, tree: Any) -> tuple[Leg, ...]:
        return tuple(
            self._leg(child)
            for child in tree.children
            if isinstance(child, Tree) and child.data in ("leg", "leg_each", "leg_side")
        )

    def _do_work_times(self, tree: Any) -> AtIntervals:
        return self._on_end(tree, again=False)

    def _do_rep_times(self, tree: Any) -> AtIntervals:
        return self._on_end(tree, again=True)

    def _on_end(self, tree: Any, *, again: bool) -> AtIntervals:
        """Read a named round worked several times without plain rounds between."""
        repeats = self._repeats(tree.children[-1])
        assert isinstance(repeats, Times)
        place = self._tree_place(tree)
        leg = Leg(self._one(place), repeats.number, repeats.more)
        return AtIntervals(_named(tree), (leg,), again, place)

    def _leg(self, tree: Any) -> Leg:
        if tree.data == "leg_each":
            every = self._one(self._tree_place(tree))
        elif tree.data == "leg_side":
            every = Numbers((2,), self._tree_place(tree))
        else:
            token = tree.children[0]
            if token.type == "OTHER":
                every = Numbers((2,), self._place(token))
            elif str(token).lower() in _NTHS:
                every = Numbers((_NTHS.index(str(token).lower()) + 2,), self._place(token))
            else:
                every = self._numbers(token)
        repeats = self._repeats(tree.children[-1])
        assert isinstance(repeats, Times)
        side = side_of(str(tree.children[0])) if tree.data == "leg_side" else ""
        return Leg(every, repeats.number, repeats.more, side)

    def _do_work_label(self, tree: Any) -> Labelled:
        label = next(child for child in tree.children if _type(child) == "LABEL_REF")
        again = any(_type(child) == "REP" for child in tree.children)
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
                parts.append(
                    AtIntervals(
                        made.label, made.legs, made.again, made.place, made.round, made.at_once, after
                    )
                )
            else:
                self.problems.append(made.place.problem("say how often it is worked, beside the other."))
        return Together(tuple(parts), place)

    # --- at the ends of rows ---

    def _ends(self, tree: Any) -> Phrase:
        """Write out the row that changes its ends: `inc 1 st at each end`."""
        place = self._tree_place(tree)
        change = str(tree.children[0]).lower()
        where = next((str(child).lower() for child in tree.children if _type(child) == "WHERE"), "beginning")
        stitch = "dec" if change.startswith("dec") else "inc"
        number = 2 if re.search(r"\b(?:2|two)\b", change) else 1
        uses = number * (2 if stitch == "dec" else 1)
        edge = Work(stitch, Numbers((number,), place), None, place)
        both = re.search(r"each|both|and", where) is not None
        made: list[Element] = []
        if both or re.search(r"beg|start", where):
            made.append(edge)
        if both or "end" in where.split():
            made += [Until("pattern", "last", Numbers((uses,), place), None, place), edge]
        elif made:
            made.append(Until("pattern", "end", None, None, place))
        if not made:
            self.problems.append(
                place.problem(
                    f'"{where}" does not say at which end of the row.',
                    "Write at the beginning, at the end, or at each end.",
                )
            )
            made = [edge]
        text = "how far from the edge it is worked is not said; the outermost stitches are taken."
        self.assumed.append(Assumed(text, place))
        return Phrase(tuple(made), place)

    def _do_ends_once(self, tree: Any) -> Phrase:
        return self._ends(tree)

    def _do_ends_rows(self, tree: Any) -> AtIntervals:
        place = self._tree_place(tree)
        number = next(child for child in tree.children if _type(child) == "NUMBERS")
        leg = Leg(self._one(place), self._numbers(number), False)
        return AtIntervals("", (leg,), False, place, self._ends(tree))

    def _do_ends_beginning(self, tree: Any) -> Sentence:
        rows = any(_type(child) == "NUMBERS" for child in tree.children)
        return self._do_ends_rows(tree) if rows else self._ends(tree)

    def _do_ends_every(self, tree: Any) -> AtIntervals:
        return AtIntervals("", self._legs(tree), False, self._tree_place(tree), self._ends(tree))

    def _do_ends_next_and(self, tree: Any) -> AtIntervals:
        place = self._tree_place(tree)
        return AtIntervals("", self._legs(tree), False, place, self._ends(tree), at_once=True)

    def _do_edge_rows(self, tree: Any) -> Sentence:
        tokens = {token.type: token for token in reversed(tree.children) if token.type != "NUMBERS"}
        numbers = [token for token in tree.children if token.type == "NUMBERS"]
        edge_first = tree.children[0].type == "EDGE"
        number = numbers[0] if edge_first else numbers[-1]
        rest = [token for token in numbers if token is not number]
        place = self._tree_place(tree)
        words = str(tokens["EDGE"]).lower()
        if words.startswith("p"):
            self.problems.append(place.problem("stitches are picked up along one edge, not on several rows."))
        stitch = "co" if re.match(r"c(ast\s+on|o)", words) else "bo"
        if "FOR_NAME" in tokens:
            self.said.append(str(tokens["FOR_NAME"]))
        rows = self._numbers(rest[0]) if rest else self._one(place)
        flat = str(tokens["ROUND"]).lower().startswith("row")
        return EdgeRows(stitch, self._numbers(number), rows, place, flat)

    def _do_beginning_rows(self, tree: Any) -> Sentence:
        return self._do_edge_rows(tree)


def _type(child: Any) -> str:
    """Return the kind of a token; empty for a tree."""
    return str(getattr(child, "type", ""))


def _named(tree: Any) -> str:
    return label_of(next(child for child in tree.children if _type(child) == "LABEL_REF"))


def side_of(words: str) -> str:
    """Return the side that words name: `RS` or `WS`."""
    return "WS" if re.match(r"w", words.strip(), re.I) else "RS"


def code_of(token: Token) -> str:
    """Return the stitch of `Knit` or `Purl`."""
    return "p" if token.lower().startswith("p") else "k"


def label_of(token: Token) -> str:
    """Return the name of a round as it is looked up."""
    return " ".join(str(token).lower().split())
