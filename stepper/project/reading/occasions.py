"""Turn how long, how often and on which rows something is worked into instruction records."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Any

from lark import Token

from stepper.project.duration import (
    Duration,
    Rounds,
    Times,
    UntilAllWorked,
    UntilBetween,
    UntilCount,
    UntilLength,
    UntilLike,
    UntilRows,
)
from stepper.project.instructions import Leg
from stepper.project.reading.elements import ElementBuilder
from stepper.project.stitchwork import Numbers
from stepper.records import dataclass

_NTHS = ("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth")
_WHOLE = ("hat", "mitten", "mitt", "shawl", "scarf", "cowl")
"""What is measured as a whole, whatever part of it is being worked."""
_LEGS = ("leg", "leg_each", "leg_side", "leg_other_side", "leg_worked", "leg_length")


@dataclass(slots=True, kw_only=True)
class OccasionBuilder(ElementBuilder):
    """Builds the records of durations and intervals."""

    # --- how long ---

    def _until(self, tree: Any) -> Duration:
        if tree.data == "for_rounds":
            number, more, _ = tree.children
            return Rounds(self._numbers(number), more is not None)
        if tree.data == "until_rounds":
            return self.in_all(tree)
        if tree.data == "until_between":
            sections = tree.children[1]
            self._two_markers(sections)
            kind = re.search(r"\b(?:gusset|thumb)\b", str(sections), re.I)
            return UntilBetween(
                self._numbers(tree.children[0]), kind=str(kind[0]).lower() if kind is not None else ""
            )
        if tree.data == "until_on_needle":
            needle = next(str(child) for child in tree.children if type_of(child) == "ON_NEEDLE")
            return UntilBetween(self._numbers(tree.children[0]), needle=int(re.findall(r"\d", needle)[-1]))
        if tree.data == "until_unwrapped":
            return UntilBetween(self._numbers(tree.children[0]), wraps=True)
        if tree.data == "until_rows":
            whole = str(tree.children[2]).lower() == "altogether"
            return UntilRows(self._numbers(tree.children[0]), whole)
        if tree.data == "until_all":
            number = self._numbers(tree.children[0]) if len(tree.children) > 1 else None
            return UntilAllWorked(self._tree_place(tree), number)
        if tree.data == "until_count":
            return UntilCount(self._numbers(tree.children[0]))
        if tree.data == "for_length":
            length, blocked, ending = tree.children
            return UntilLength(
                self._length(length), False, "here", blocked is not None, *self._ending(ending)
            )
        if tree.data == "until_like":
            token, fewer = tree.children[:2]
            return self._like(token, None if fewer is None else self._numbers(fewer))
        if tree.data == "until_flap":
            _, length, blocked, ending = tree.children
            return UntilLength(
                self._length(length), True, "flap", blocked is not None, *self._ending(ending)
            )
        length, from_, blocked, ending = tree.children[-4:]
        start = "beg armhole" if tree.data == "until_part" and from_ is None else self._start(from_)
        bare = tree.data == "until_length" and from_ is None
        what = str(tree.children[0]).lower().split()[-2] if bare else ""
        start = _measured_whole(what) if bare else start
        side = self._ending(ending)
        return UntilLength(self._length(length), True, start, blocked is not None, *side, of=what)

    def _like(self, token: Token, fewer: Numbers | None) -> UntilLike:
        """Read the part that a piece is measured against, and where in it: `same as back to armhole`."""
        words = " ".join(str(token).lower().split())
        measured = re.search(r"(?:\bas|matches)\s+(?:the\s+)?(.+?)\s+(?:up\s+)?to\s+(.+)$", words)
        part, upto = measured.groups() if measured else ("", "")
        upto = re.sub(r"^(?:the\s+)?(?:(?:beg|beginning|start)\s+of\s+(?:the\s+)?)?|\s+shapings?$", "", upto)
        return UntilLike(part, upto, self._place(token), fewer)

    def in_all(self, tree: Any) -> Rounds:
        """Read "5 rounds in total"; report a word there that counts something else."""
        tail = next(child for child in tree.children if type_of(child) == "COUNT_TAIL")
        if not re.match(r"in\s+(?:all|total)|total", str(tail), re.I):
            self.report(self._place(tail), f'"{tail}" is not understood of rounds.')
        number = next(child for child in tree.children if type_of(child) == "NUMBERS")
        return Rounds(self._numbers(number), False, True)

    def _ending(self, tree: Any) -> tuple[int | None, str]:
        """Return the round and the side that the words say to end with."""
        if tree is None:
            return None, ""
        if tree.data == "ending_round":
            return self._one_for_all(tree.children[1]), ""
        if tree.data == "ending_worked":
            return None, str(tree.children[0]).lower()[0]
        if tree.data == "ending_at":
            return None, edge_of(str(tree.children[0]))
        return None, side_of(str(tree.children[0]))

    def _start(self, from_: Any) -> str:
        """Return where a length is measured from: `section`, `cast-on` or `divide`; report any other.

        "From start" is the cast-on edge as "from beginning" is, unless it is of a part that the page names.
        """
        if from_ is None:
            return "section"
        token = from_.children[0]
        word = re.sub(r"^from\s+(the\s+)?", "", str(token).lower())
        stretch = re.match(r"(end|top|beg|start)\w*\s+of\s+(?:the\s+)?(.+)$", word)
        whole = stretch is not None and stretch.group(2) in ("work", "piece", "knitting", "project")
        if stretch is not None and not (whole and stretch.group(1) in ("beg", "start")):
            return f"{'end' if stretch.group(1) in ('end', 'top') else 'beg'} {stretch.group(2)}"
        if re.match(r"cast|beg|start|commencement$|co$|(?:tip|point)\s+of\s+(?:the\s+)?toe$", word):
            return "cast-on"
        if re.match(r"(?:(?:back|base|bottom)\s+of\s+(?:the\s+)?)?heel$", word):
            return "heel"
        if word in ("armhole", "armhole edge"):
            return "beg armhole" if word == "armhole" else word
        if word in ("underarm", "armpit", "divide", "division") or word.startswith("divid"):
            return "divide"
        if re.match(r"mark|colou?red", word):
            return "marked"
        if word.startswith("pick"):
            return "picked up"
        if word == "fold":
            return "beg fold"
        told = f'how far the piece has come "{token}" is not known.'
        hint = 'Measure from the cast-on edge, or write "for" and the length worked from here.'
        self.report(self._place(token), told, hint)
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

    # --- on which rows ---

    def when(self, tree: Any) -> tuple[Numbers | None, tuple[Leg, ...]]:
        """Read on which rows something is worked.

        Returns:
            The extra row on which it is worked, counted from here, if the words have one (`next and every
            4th row`), and the intervals.
        """
        place = self._tree_place(tree)
        legs = tuple(self.leg(child) for child in tree.iter_subtrees_topdown() if child.data in _LEGS)
        if tree.data in ("when_next_and", "when_nth_and"):
            first = self._one(place) if tree.data == "when_next_and" else self.nth(tree.children[0])
            return self._with_first(first, legs, tree)
        number = next((child for child in tree.children if type_of(child) == "NUMBERS"), None)
        rows = self._numbers(number) if number is not None else self._one(place)
        side = next((side_of(str(child)) for child in tree.children if type_of(child) == "SIDE"), "")
        if tree.data == "when_side_and":
            if legs[0].times is not None and any(tree.find_data("n_total")):
                rows = _at_most_once(legs[0].times)
            legs = self._behind_first(legs, tree)
        if tree.data == "when_next" and len(legs) == 1 and legs[0].total and legs[0].times is not None:
            fewer = tuple(max(0, value - 1) for value in legs[0].times.values)  # the next row is one of them
            legs = (replace(legs[0], times=replace(legs[0].times, values=fewer)),)
        if tree.data in ("when_next", "when_rows", "when_side", "when_side_and"):
            legs = (Leg(self._one(place), rows, False, side, each=not side), *legs)
        return None, legs

    def _with_first(
        self, first: Numbers, legs: tuple[Leg, ...], tree: Any
    ) -> tuple[Numbers | None, tuple[Leg, ...]]:
        """Combine the first row with its interval; if the words give a total, the first counts in it."""
        leg, *more = legs
        if leg.times is None or not any(tree.find_data("n_total")):
            return first, legs
        rest = Numbers(tuple(max(0, value - 1) for value in leg.times.values), leg.times.place)
        once = Leg(first, _at_most_once(leg.times), False, leg.side)
        return None, (once, replace(leg, times=rest), *more)

    def _behind_first(self, legs: tuple[Leg, ...], tree: Any) -> tuple[Leg, ...]:
        """Return the intervals behind "next RS row and"; report times that may or may not count that row."""
        leg, *more = legs
        if leg.times is None or leg.more:
            return legs
        if not any(tree.find_data("n_total")):
            told = "whether the next row is one of these times is not said."
            self.report(leg.times.place, told, 'Write "on next RS row, then every 4th row 5 times".')
        rest = Numbers(tuple(max(0, value - 1) for value in leg.times.values), leg.times.place)
        return (replace(leg, times=rest), *more)

    def leg(self, tree: Any) -> Leg:
        """Read one interval: every so many rows, so many times or to a count."""
        token = tree.children[0]
        place = self._tree_place(tree)
        every, side = self._one(place), ""
        if tree.data in ("leg_side", "leg_other_side"):
            side = side_of(str(next(child for child in tree.children if type_of(child) == "SIDE")))
            every = Numbers((2 if tree.data == "leg_side" else 4,), place)
        elif tree.data == "leg_worked":
            every, side = Numbers((2,), place), "WS" if str(token).lower().startswith("p") else "RS"
        elif tree.data == "leg":
            every = Numbers((2,), place) if token.type == "OTHER" else self.nth(token)
        made = self.so_often(tree.children[-1], every, side)
        if tree.data == "leg_length":
            return replace(made, length=self._length(token))
        if tree.data == "leg_worked":
            return replace(made, worked=True)
        return replace(made, each=True) if tree.data == "leg_each" else made

    def filling(self, tree: Any) -> Leg:
        """Read an interval without an end of its own, which is that of the rounds beside it."""
        kinds = ("NTH", "NUMBERS", "OTHER", "SIDE")
        token = next((child for child in reversed(tree.children) if type_of(child) in kinds), None)
        if token is None:
            return Leg(self._one(self._tree_place(tree)), None, False, each=True)
        place = self._place(token)
        if token.type == "SIDE":
            return Leg(Numbers((2,), place), None, False, side_of(str(token)))
        return Leg(Numbers((2,), place) if token.type == "OTHER" else self.nth(token), None, False)

    def so_often(self, tree: Any, every: Numbers, side: str = "") -> Leg:
        """Make an interval with the times, the final count or the length that the words give."""
        if tree.data in ("until_length", "until_part"):
            upto = self._until(tree)
            assert isinstance(upto, UntilLength)
            return Leg(every, None, False, side, upto=upto)
        if tree.data == "leg_until":
            number = next(child for child in tree.children if type_of(child) == "NUMBERS")
            return Leg(every, None, False, side, self._numbers(number))
        if tree.data == "leg_between":
            found = {type_of(child): child for child in tree.children}
            number = found["NUMBERS"]
            self._two_markers(found["SECTIONS"])
            return Leg(every, None, False, side, self._numbers(number), between=True)
        repeats = self._repeats(tree)
        assert isinstance(repeats, Times)
        return Leg(every, repeats.number, repeats.more, side, total=repeats.total)

    def _two_markers(self, sections: Token) -> None:
        """Take the words for the stitches between two markers; report those for several sections."""
        if not re.match(r"between\b.*\b(?:markers|ms)$", str(sections), re.I):
            self.report(self._place(sections), "only two markers are counted between.")
        self.said.extend([str(sections)] if len(str(sections).split()) > 2 else [])

    def nth(self, token: Token) -> Numbers:
        """Read the number of a row: `4th`, `fourth`, `8th (6th)`, `8 (6)`."""
        word = str(token).lower()
        if word in _NTHS:
            return Numbers((_NTHS.index(word) + 1,), self._place(token))
        return self._numbers(token)


def _measured_whole(what: str) -> str:
    """Return where measuring begins if the words name no place: a foot and a whole thing have their own."""
    return "foot" if what in ("foot", "sock") else "piece" if what in _WHOLE else "section"


def edge_of(words: str) -> str:
    """Return the edge at which rows end, `at neck`, from words that name it."""
    return f"at {words.lower().split()[-2]}"


def type_of(child: Any) -> str:
    """Return the kind of a token; empty for a tree."""
    return str(getattr(child, "type", ""))


def is_short(rows: Token) -> bool:
    """Return whether rows are called short: "the last 2 short rows"."""
    return str(rows).lower().startswith("short")


def side_of(words: str) -> str:
    """Return the side that words name: `RS` or `WS`."""
    return "WS" if re.match(r"w", words.strip(), re.I) else "RS"


def _at_most_once(times: Numbers) -> Numbers:
    """Return how often the next row is one of so many times in all: once, and of none never."""
    return Numbers(tuple(min(1, value) for value in times.values), times.place)
