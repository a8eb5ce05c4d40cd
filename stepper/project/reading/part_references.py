"""Turn lines that work another part again into instruction records."""

from __future__ import annotations

import re
from typing import Any

from lark import Token

from stepper.project.duration import Duration, Times, UntilLength
from stepper.project.instructions import AsPart
from stepper.project.reading.needle_rounds import NeedleBuilder
from stepper.project.reading.occasions import type_of
from stepper.records import dataclass
from stepper.regex import regex

_LEAD = regex(
    r"^(?:work(?:ing)?\s+)?(?:exactly\s+)?(?:the\s+)?(?:as|same\s+as)\s+"
    r"(?:(?:given|directed|instructed|described|set\s+out|worked)\s+)?(?:for\s+)?(?:the\s+)?",
    re.I,
)
_MARKS = regex(r"\*{1,4}|[\u2020\u2021\u00a7]{1,2}")


@dataclass(slots=True, kw_only=True)
class PartBuilder(NeedleBuilder):
    """Builds the records of lines that work another part again."""

    def _do_as_part(self, tree: Any) -> AsPart:
        part, upto, reversing = tree.children
        place, back = self._tree_place(tree), reversing is not None
        name = part_named(str(part))
        if upto is None:
            return AsPart(name, place, reversed_=back)
        end = upto.children[0]
        if not isinstance(end, Token):
            until: Duration = self._until(end)
            return AsPart(name, place, until=until, reversed_=back)
        if type_of(end) == "TO_MARK":
            return AsPart(name, place, to_mark=_mark(end), reversed_=back)
        words = " ".join(str(end).lower().split())
        words = re.sub(r"^(?:until|up to|as far as|to)\s+(?:the\s+)?", "", words)
        words = re.sub(r"^(?:beg(?:inning)?|start)\s+of\s+(?:the\s+)?", "", words)
        return AsPart(name, place, upto=words, reversed_=back)

    def _do_as_part_between(self, tree: Any) -> AsPart:
        part, start, end, reversing = tree.children
        return AsPart(
            part_named(str(part)), self._tree_place(tree), from_mark=_mark(start), to_mark=_mark(end),
            reversed_=reversing is not None,
        )  # fmt: skip

    def _do_made_again(self, tree: Any) -> AsPart:
        words = str(tree.children[0]).lower().split()[2:]
        return AsPart(" ".join(words[1:]), self._tree_place(tree), times=int(words[0]))

    def _do_again_between(self, tree: Any) -> AsPart:
        """Read "rep from ** to ** twice more": lines of the part in hand, worked again."""
        start, *ends, repeats = tree.children
        often = self._repeats(repeats)
        place = self._tree_place(tree)
        if not isinstance(often, Times | UntilLength):
            self.report(place, "how often they are worked again is not said.")
        times = 1
        if isinstance(often, Times):
            times = self.same_for_all(often.number, ", ".join(map(str, often.number.values)))
        return AsPart(
            "", place, times=times, from_mark=_mark(start), to_mark=_mark(ends[0]) if ends else "",
            until=often if isinstance(often, UntilLength) else None,
        )  # fmt: skip

    _do_again_from = _do_again_between

    def _do_as_part_rest(self, tree: Any) -> AsPart:
        return AsPart(part_named(str(tree.children[0])), self._tree_place(tree), rest=True)

    def _do_complete_like(self, tree: Any) -> AsPart:
        _, how, *names = str(tree.children[0]).lower().split()
        front = " ".join(names) if how == "alike" else ""
        return AsPart("", self._tree_place(tree), reversed_=True, rest=True, front=front)

    def _do_as_part_shaped(self, tree: Any) -> AsPart:
        shaped, part, until = tree.children
        lasts = self._until(until) if until is not None else None
        name = str(shaped).lower().split()[-1]
        return AsPart(part_named(str(part)), self._tree_place(tree), until=lasts, shaped=name)


def part_named(words: str) -> str:
    """Return the name of the part in "work as given for the back"."""
    return " ".join(_LEAD.sub("", " ".join(words.split())).lower().split())


def _mark(token: Token) -> str:
    found = _MARKS.search(str(token))
    return found.group() if found else ""
