"""Turn rounds written needle by needle, and stitches divided over needles, into instruction records."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Any

from stepper.project.instructions import Assumed, Phrase, PrintedCount, Sentence
from stepper.project.laying_out import (
    BeginFurther,
    BeginsAt,
    InstepOn,
    MoveOver,
    OnlyOn,
    OverNeedles,
    SetApart,
)
from stepper.project.reading.edges import EdgeBuilder
from stepper.project.reading.elements import name_part
from stepper.project.reading.occasions import type_of
from stepper.project.stitchwork import Element, Mark, Numbers, Until, Work
from stepper.records import dataclass


@dataclass(slots=True, kw_only=True)
class NeedleBuilder(EdgeBuilder):
    """Builds the records of rounds written needle by needle."""

    def _do_divided_evenly(self, tree: Any) -> OverNeedles:
        return OverNeedles(self._numbers(tree.children[0]), (), self._tree_place(tree))

    def _do_divided_each(self, tree: Any) -> OverNeedles:
        return OverNeedles(None, (self._numbers(tree.children[0]),), self._tree_place(tree))

    def _do_divided_as(self, tree: Any) -> OverNeedles:
        place = self._tree_place(tree)
        parts = list(tree.find_data("each_needle"))
        named = [_needles_in(str(part.children[1]))[0] for part in parts]
        if named != list(range(1, len(parts) + 1)):
            told = "the needles are numbered from 1, in the order of the round."
            self.report(place, told)
        counts = tuple(self._numbers(part.children[0]) for part in parts)
        return OverNeedles(self._numbers(tree.children[0]), counts, place)

    def _do_divided_lying(self, tree: Any) -> OverNeedles:
        return replace(self._do_divided_as(tree), counted=True)

    def _do_moved(self, tree: Any) -> MoveOver:
        source, to = _needles_in(str(tree.children[1]))
        return MoveOver(self._numbers(tree.children[0]), source, to, self._tree_place(tree))

    def _do_instep_on(self, tree: Any) -> InstepOn:
        return InstepOn(tuple(_needles_in(str(tree.children[0]))), self._tree_place(tree))

    def _do_apart(self, tree: Any) -> SetApart:
        words = {type_of(child): str(child) for child in tree.children}
        counted = [type_of(child) for child in tree.children]
        held = "HOLD_OTHERS" in words
        waiting = counted.index("HOLD_OTHERS") if held else len(counted)
        worked, others = (
            next((self._numbers(child) for child in part if type_of(child) == "NUMBERS"), None)
            for part in (tree.children[:waiting], tree.children[waiting:])
        )
        needle = next(iter(_needles_in(words.get("ON_NEEDLE", ""))), 0)
        name, place = name_part(words.get("FOR_NAME", "")), self._tree_place(tree)
        return SetApart(worked, others, name, held, "OF_HEEL" in words, place, needle)

    def _do_hold_last(self, tree: Any) -> SetApart:
        number = next(child for child in tree.children if type_of(child) == "NUMBERS")
        name = next((str(child) for child in tree.children if type_of(child) == "FOR_NAME"), "")
        return SetApart(None, self._numbers(number), name_part(name), True, False, self._tree_place(tree))

    def _do_hold_beyond(self, tree: Any) -> SetApart:
        name = next((str(child) for child in tree.children if type_of(child) == "FOR_NAME"), "")
        return SetApart(None, None, name_part(name), True, False, self._tree_place(tree))

    def _do_only_on(self, tree: Any) -> OnlyOn:
        part = re.search(r"(?:left\s+front|right\s+front|front|back)(?=\s+sts)", str(tree.children[0]), re.I)
        assert part is not None
        return OnlyOn(" ".join(part[0].lower().split()), self._tree_place(tree))

    def _do_further(self, tree: Any) -> BeginFurther:
        return BeginFurther(self._numbers(tree.children[0]), self._tree_place(tree))

    def _do_needle_further(self, tree: Any) -> BeginFurther:
        return BeginFurther(None, self._tree_place(tree))

    def _do_instep_further(self, tree: Any) -> BeginFurther:
        return BeginFurther(None, self._tree_place(tree), instep=True)

    def _do_begins_at(self, tree: Any) -> BeginsAt:
        return BeginsAt("instep" in str(tree.children[0]).lower(), self._tree_place(tree))

    def _do_needled(self, tree: Any) -> list[Sentence]:
        place = self._tree_place(tree)
        parts: dict[int, tuple[Element, ...]] = {}
        places = {}
        halves: list[tuple[Element, ...]] = []
        for part in tree.find_data("needle_part"):
            head = part.children[0]
            if (half := _half_in(str(head))) is not None:
                halves.append((Mark("needle", half, self._place(head)), *self._inside(part.children[1])))
                continue
            side = re.search(r"\b(?:front|back)\b", str(head), re.IGNORECASE)
            if side is not None:
                told = "the front needle is taken as the first of the round, the back needle as the second."
                self.assumed.append(Assumed(told, self._place(head)))
            sides = [1 if side.group().lower() == "front" else 2] if side is not None else []
            for number in sides or _needles_in(str(head)) or [0]:
                if number in parts:
                    told = f"needle {number} is worked twice in one round."
                    self.report(self._place(head), told)
                parts[number] = self._inside(part.children[1])
                places[number] = self._place(head)
        elements: list[Element] = []
        for number in sorted(parts):
            elements.append(Mark("needle", str(number) if number else "each", places[number]))
            elements.extend(parts[number])
        for inside in halves:
            elements.extend(inside)
        if halves and parts:
            self.report(place, "a round is told by its needles or by its instep and sole, not by both.")
        last = tree.children[-1]
        count = [self._do_count(last)] if last is not None and last.data == "tail" else []
        return [Phrase(tuple(elements), place), *count]

    def _do_count(self, tree: Any) -> PrintedCount:
        raise NotImplementedError

    def _do_needle_ends(self, tree: Any) -> Phrase:
        """Write out a round with changes at the ends of needles: `Dec at end of needles 1 and 3`."""
        place = self._tree_place(tree)
        words = [str(token).lower() for token in tree.children if type_of(token) == "AT_NEEDLE_ENDS"]
        ends = {number for each in words if re.search(r"\bend\b", each) for number in _needles_in(each)}
        begs = {number for each in words if not re.search(r"\bend\b", each) for number in _needles_in(each)}
        less = str(tree.children[0]).lower().startswith("dec")
        one = Numbers((1,), place)
        elements: list[Element] = []
        for number in range(1, max(ends | begs) + 1):
            elements.append(Mark("needle", str(number), place))
            if number in begs:
                elements += [Work("k", one, None, place), Work("ssk" if less else "m1l", one, None, place)]
            if number in ends:
                short = Numbers((3 if less else 1,), place)
                elements.append(Until("k", "last", short, None, place))
                elements += [Work("k2tog" if less else "m1r", one, None, place), Work("k", one, None, place)]
            else:
                elements.append(Until("k", "end", None, None, place))
        elements += [Mark("needle", "rest", place), Until("k", "end", None, None, place)]
        how = "ssk at the beginning, k2tog at the end" if less else "m1l at the beginning, m1r at the end"
        told = f"one stitch in from the end of the needle is taken, with {how}."
        self.assumed.append(Assumed(told, place))
        return Phrase(tuple(elements), place)


def joined_needles(before: Sentence | None, sentence: Sentence) -> Phrase | None:
    """Join two sentences of one round written needle by needle; None if they are not that."""
    if not (isinstance(before, Phrase) and isinstance(sentence, Phrase)):
        return None
    if all(_begins_half(phrase) for phrase in (before, sentence)):
        return replace(before, elements=(*before.elements, *sentence.elements))
    one, other = _parts(before.elements), _parts(sentence.elements)
    if not one or not other or one.keys() & other.keys():
        return None
    parts = one | other
    elements = tuple(element for number in sorted(parts) for element in parts[number])
    return replace(before, elements=elements)


def _begins_half(phrase: Phrase) -> bool:
    first = phrase.elements[0] if phrase.elements else None
    return isinstance(first, Mark) and first.stitch == "needle" and first.name in ("instep", "sole")


def _half_in(words: str) -> str | None:
    """Return the half of a foot that words name; None if they name needles."""
    found = re.search(r"\b(?:instep|sole)\b", words, re.IGNORECASE)
    return found.group().lower() if found is not None else None


def _parts(elements: tuple[Element, ...]) -> dict[int, list[Element]]:
    """Return the elements of each needle, its mark included; empty if not written needle by needle."""
    parts: dict[int, list[Element]] = {}
    for element in elements:
        if isinstance(element, Mark) and element.stitch == "needle" and element.name.isdigit():
            parts[int(element.name)] = []
        elif not parts:
            return {}
        parts[max(parts, key=list(parts).index)].append(element)
    return parts


def _needles_in(words: str) -> list[int]:
    """Return the numbers of the needles that words name; empty for "each needle"."""
    return [int(number) for number in re.findall(r"\d+", words)]

