"""The tree of one parsed line to instruction records: one short method for each rule of the grammar."""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import Any

from lark import Token, Tree

from stepper.project.elements import ElementBuilder, named
from stepper.project.instructions import (
    AtIntervals,
    BindOff,
    BreakYarn,
    ChartWork,
    Count,
    Duration,
    EdgeRows,
    Element,
    Evenly,
    Flat,
    Join,
    Labelled,
    Leg,
    MarkEvery,
    Needle,
    Numbers,
    Phrase,
    Remark,
    Repeated,
    Return,
    Rounds,
    Sentence,
    Times,
    Together,
    TurnMethod,
    UntilCount,
    UntilLength,
    WithYarn,
    Worked,
)
from stepper.project.lengths import read_needle

_NTHS = ("second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth")


@dataclass(frozen=True, slots=True, kw_only=True)
class Head:
    """What stands before the colon: `Rnds 1-4:`."""

    numbers: tuple[int, ...] = ()
    side: str = ""
    rows: bool = False
    every: str = ""
    """`WS`, `RS`, `even` or `odd`: the line is for all such rows too."""


@dataclass(slots=True, kw_only=True)
class Builder(ElementBuilder):
    """Builds the records of one line and gathers the problems of its numbers."""

    def build(self, tree: Any, *, inches: bool) -> tuple[Head, tuple[Sentence, ...]]:
        """Build the head and the sentences of a parsed line."""
        self.inches = inches
        head = Head()
        sentences: list[Sentence] = []
        for child in tree.children:
            if child is None:
                continue
            if child.data in ("head", "head_all"):
                head = self._head(child)
            else:
                sentences.extend(self._sentence(child))
        return head, tuple(sentences)

    def _span(self, tree: Tree[Token]) -> tuple[int, ...]:
        found: list[int] = []
        for piece in tree.find_data("piece"):
            found.extend(self._piece(piece))
        return tuple(sorted(set(found)))

    def _piece(self, piece: Tree[Token]) -> range:
        ends = [self._numbers(token).values[0] for token in piece.children if isinstance(token, Token)]
        first, last = ends[0], ends[-1]
        if last < first or last - first > 999:
            self.problems.append(
                self._tree_place(piece).problem(f"rounds {first}-{last} do not run upwards.")
            )
            return range(first, first + 1)
        return range(first, last + 1)

    def _head(self, tree: Tree[Token]) -> Head:
        spans = list(tree.find_data("span"))
        numbers = self._span(spans[0]) if spans else ()
        sides = [str(token).upper() for side in tree.find_data("side") for token in side.children]
        side = {"RIGHT SIDE": "RS", "WRONG SIDE": "WS"}.get(sides[0], sides[0]) if sides else ""
        rows = any(
            token.type == "ROUND" and token.lower().startswith("row")
            for token in tree.scan_values(lambda value: isinstance(value, Token))
        )
        every = next(
            (
                str(token).lower()
                for token in tree.children
                if getattr(token, "type", "") in ("AND_ALL", "ALL_ROWS")
            ),
            "",
        )
        return Head(numbers=numbers, side=side, rows=rows or _rows_said(every), every=_every(every, numbers))

    # --- sentences ---

    def _sentence(self, tree: Tree[Token]) -> list[Sentence]:
        made = getattr(self, f"_do_{tree.data}")(tree)
        return made if isinstance(made, list) else [made]

    def _do_worked_rounds(self, tree: Any) -> Worked:
        plain, number, more, _ = tree.children
        return Worked(_code(plain), Rounds(self._numbers(number), more is not None), self._tree_place(tree))

    def _do_worked_rounds_in(self, tree: Any) -> Worked:
        number, more, _, manner = tree.children
        return Worked(
            _manner(manner), Rounds(self._numbers(number), more is not None), self._tree_place(tree)
        )

    def _do_worked_until(self, tree: Any) -> Worked:
        plain, until = tree.children
        return Worked(_code(plain), self._until(until), self._tree_place(tree))

    def _do_worked_until_in(self, tree: Any) -> Worked:
        manner, until = tree.children
        return Worked(_manner(manner), self._until(until), self._tree_place(tree))

    def _do_worked_once(self, tree: Any) -> Worked:
        place = self._tree_place(tree)
        return Worked(_manner(tree.children[0]), Rounds(self._one(place), False), place)

    def _until(self, tree: Any) -> Duration:
        if tree.data == "for_rounds":
            number, more, _ = tree.children
            return Rounds(self._numbers(number), more is not None)
        if tree.data == "until_count":
            return UntilCount(self._numbers(tree.children[0]))
        if tree.data == "for_length":
            length, blocked = tree.children
            return UntilLength(self._length(length), False, "here", blocked is not None)
        length, from_, blocked, ending = tree.children
        start = "section"
        if from_ is not None:
            words = re.sub(r"^from\s+(the\s+)?", "", str(from_.children[0]).lower())
            start = "cast-on" if re.match(r"cast|beg", words) else "section"
        ending_round, ending_side = None, ""
        if ending is not None:
            if ending.data == "ending_round":
                ending_round = self._numbers(ending.children[1]).values[0]
            else:
                ending_side = str(ending.children[0]).upper()[:2]
        return UntilLength(self._length(length), True, start, blocked is not None, ending_round, ending_side)

    def _repeats(self, tree: Any) -> Duration:
        place = self._tree_place(tree)
        if tree.data == "n_times":
            return Times(self._numbers(tree.children[0]), any(tree.children[1:]))
        if tree.data == "twice":
            word = str(tree.children[0]).lower()
            return Times(Numbers((2 if word == "twice" else 1,), place), tree.children[1] is not None)
        if tree.data == "once_more":
            return Times(self._one(place), True)
        if tree.data == "repeats":
            return self._until(tree.children[0])
        return self._until(tree)

    def _do_rep_span(self, tree: Any) -> list[Sentence]:
        place = self._tree_place(tree)
        spans = [child for child in tree.children if getattr(child, "data", "") == "span"]
        after = [tree.children[at + 1] for at, child in enumerate(tree.children) if child in spans]
        return [
            Repeated(self._span(span), None, self._repeats(repeats), True, place)
            for span, repeats in zip(spans, after, strict=True)
        ]

    def _do_rep_last(self, tree: Any) -> Repeated:
        place = self._tree_place(tree)
        return Repeated((), self._one(place), self._repeats(tree.children[3]), True, place)

    def _do_rep_last_many(self, tree: Any) -> Repeated:
        number, repeats = tree.children[2], tree.children[4]
        return Repeated((), self._numbers(number), self._repeats(repeats), True, self._tree_place(tree))

    def _do_work_span(self, tree: Any) -> Repeated:
        _, span, repeats = tree.children
        place = self._tree_place(tree)
        duration = self._repeats(repeats) if repeats is not None else Times(self._one(place), False)
        return Repeated(self._span(span), None, duration, False, place)

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
                made.append(Worked(_code(lead.children[0]), Rounds(before, False), place))
        made.append(Evenly(direction, numbers if to else None, None if to else numbers, place))
        return made

    def _do_chart(self, tree: Any) -> ChartWork:
        chart, round_, piece, repeats = (*tree.children, None, None, None)[:4]
        return self._chart(tree, chart, piece if round_ is not None else None, repeats)

    def _do_chart_rounds(self, tree: Any) -> ChartWork:
        _, piece, chart, repeats = tree.children
        return self._chart(tree, chart, piece, repeats)

    def _chart(self, tree: Any, chart: Token, piece: Any, repeats: Any) -> ChartWork:
        name = re.sub(r"^(the\s+)?chart\s+", "", str(chart), flags=re.I)
        span = self._piece(piece) if piece is not None else None
        duration = self._repeats(repeats) if repeats is not None else None
        times = duration.number if isinstance(duration, Times) else None
        lasts = None if isinstance(duration, Times) else duration
        first, last = (span[0], span[-1]) if span else (None, None)
        return ChartWork(name, first, last, times, self._place(chart), lasts)

    def _do_work_every(self, tree: Any) -> AtIntervals:
        return self._intervals(tree, again=False)

    def _do_rep_every(self, tree: Any) -> AtIntervals:
        return self._intervals(tree, again=True)

    def _intervals(self, tree: Any, *, again: bool) -> AtIntervals:
        label = next(
            child for child in tree.children if isinstance(child, Token) and child.type == "LABEL_REF"
        )
        legs = tuple(
            self._leg(child)
            for child in tree.children
            if isinstance(child, Tree) and child.data in ("leg", "leg_each", "leg_side")
        )
        return AtIntervals(_label(label), legs, again, self._tree_place(tree))

    def _do_work_times(self, tree: Any) -> AtIntervals:
        return self._on_end(tree, again=False)

    def _do_rep_times(self, tree: Any) -> AtIntervals:
        return self._on_end(tree, again=True)

    def _on_end(self, tree: Any, *, again: bool) -> AtIntervals:
        """Read a named round worked several times without plain rounds between."""
        label = next(child for child in tree.children if getattr(child, "type", "") == "LABEL_REF")
        repeats = self._repeats(tree.children[-1])
        assert isinstance(repeats, Times)
        place = self._tree_place(tree)
        leg = Leg(self._one(place), repeats.number, repeats.more)
        return AtIntervals(_label(label), (leg,), again, place)

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
        return Leg(every, repeats.number, repeats.more)

    def _do_work_label(self, tree: Any) -> Labelled:
        label = next(
            child for child in tree.children if isinstance(child, Token) and child.type == "LABEL_REF"
        )
        return Labelled(_label(label), self._place(label))

    def _do_together(self, tree: Any) -> Sentence:
        place = self._tree_place(tree)
        parts = []
        for child in tree.children:
            (made,) = self._sentence(child)
            if isinstance(made, AtIntervals):
                parts.append(made)
            else:
                self.problems.append(made.place.problem("say how often it is worked, beside the other."))
        return Together(tuple(parts), place)

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
        rows = self._numbers(rest[0]) if rest else self._one(place)
        return EdgeRows(stitch, self._numbers(number), rows, place)

    def _do_beginning_rows(self, tree: Any) -> Sentence:
        return self._do_edge_rows(tree)

    def _do_facing(self, tree: Any) -> list[Sentence]:
        token = tree.children[0]
        side = "WS" if re.search(r"ws|wrong", str(token).lower()) else "RS"
        return [Remark(f"with {side} facing", self._place(token)), *self._sentence(tree.children[1])]

    def _do_graft(self, tree: Any) -> list[Sentence]:
        place = self._tree_place(tree)
        number = next((child for child in tree.children if getattr(child, "type", "") == "NUMBERS"), None)
        made: list[Sentence] = (
            [Count(self._numbers(number), self._place(number))] if number is not None else []
        )
        return [*made, BindOff("", place, "graft")]

    def _do_draw(self, tree: Any) -> BindOff:
        return BindOff("", self._tree_place(tree), "draw")

    def _do_turn_method(self, tree: Any) -> TurnMethod:
        words = str(tree.children[0]).lower()
        method = "german" if "german" in words else "plain" if "plain" in words else "wrap"
        return TurnMethod(method, self._tree_place(tree))

    def _do_join(self, tree: Any) -> Join:
        return Join(self._tree_place(tree))

    def _do_flat(self, tree: Any) -> Flat:
        return Flat(self._tree_place(tree))

    def _do_needle(self, tree: Any) -> list[Sentence]:
        token = tree.children[0]
        place = self._place(token)
        mm = read_needle(str(token))
        if mm is None:
            self.problems.append(
                place.problem(
                    f'"{token}" names no needle size that is the same everywhere.',
                    "Give the size in millimetres, for example 3.75 mm needles.",
                )
            )
            return []
        return [Needle(mm, place, str(token))]

    def _do_with_yarn(self, tree: Any) -> list[Sentence]:
        token = tree.children[0]
        made: list[Sentence] = [WithYarn(str(token).split()[-1], self._place(token))]
        if tree.children[1] is not None:
            made.extend(self._sentence(tree.children[1]))
        return made

    def _do_break_yarn(self, tree: Any) -> list[Sentence]:
        token = tree.children[0]
        words = re.sub(r"\b(break|cut|off|yarn|and)\b", " ", str(token), flags=re.I).split()
        return [BreakYarn(word, self._place(token)) for word in words] or [BreakYarn("", self._place(token))]

    def _do_bind_off(self, tree: Any) -> BindOff:
        words = [str(child) for child in tree.children[1:] if child is not None]
        return BindOff(" ".join(word.lower().rstrip(".") for word in words), self._tree_place(tree))

    def _do_back(self, tree: Any) -> Return:
        name = re.sub(
            r"^(return|place)\s+(the\s+)?(held\s+)?|\s+(sts\s+|stitches\s+)?(back\s+)?(to|onto|on)\s+(the\s+)?needles?$",
            "",
            str(tree.children[0]),
            flags=re.I,
        )
        return Return(named(name), self._tree_place(tree))

    def _do_mark_every(self, tree: Any) -> MarkEvery:
        return MarkEvery(self._numbers(tree.children[0]), self._tree_place(tree))

    def _do_count(self, tree: Any) -> Count:
        token = next(child for child in tree.children if isinstance(child, Token) and child.type == "NUMBERS")
        tail = next(
            (str(child).lower() for child in tree.children if getattr(child, "type", "") == "COUNT_TAIL"), ""
        )
        change = 1 if tail.startswith("inc") else -1 if tail.startswith("dec") else 0
        return Count(self._numbers(token), self._place(token), change)

    def _do_phrase(self, tree: Any) -> list[Sentence]:
        elements: list[Element] = []
        made: list[Sentence] = []
        for child in tree.children:
            if child is None:
                continue
            if child.data == "tail":
                made.append(self._do_count(child))
            else:
                elements.append(self._element(child))
        return [Phrase(tuple(elements), self._tree_place(tree)), *made]


def _rows_said(words: str) -> bool:
    return bool(re.search(r"\brows?\b|\b[rw]s\b", words))


def _every(words: str, numbers: tuple[int, ...]) -> str:
    """Give which rows a head like "and all WS rows" stands for; nothing where there is none."""
    if not words:
        return ""
    for word, every in (
        ("ws", "WS"),
        ("wrong", "WS"),
        ("rs", "RS"),
        ("right", "RS"),
        ("even", "even"),
        ("odd", "odd"),
    ):
        if re.search(rf"\b{word}", words):
            return every
    return "odd" if numbers and numbers[0] % 2 else "even"


def _code(token: Token) -> str:
    return "p" if token.lower().startswith("p") else "k"


def _manner(tree: Any) -> str:
    if tree is None:
        return "pattern"
    words = str(tree.children[0]).lower()
    ribbed = re.search(r"(\d+)\D+?(\d+)", words)
    if ribbed:
        return f"rib {ribbed.group(1)} {ribbed.group(2)}"
    for word, manner in (
        ("garter", "garter"),
        ("sto", "stockinette"),
        ("st st", "stockinette"),
        ("rib", "rib"),
    ):
        if word in words:
            return manner
    return "pattern"


def _label(token: Token) -> str:
    return " ".join(str(token).lower().split())
