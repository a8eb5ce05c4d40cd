"""Turn shaping in the parsed tree into instruction records: evenly, at intervals, side by side."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from typing import Any, Final

from lark import Token

from stepper.project.duration import Paced, Rounds, UntilCount, UntilLength
from stepper.project.instructions import (
    Assumed,
    AtIntervals,
    AtOnce,
    Buttonholes,
    Crossed,
    EdgeShaping,
    EdgesTogether,
    Evenly,
    Going,
    Labelled,
    Phrase,
    Repeated,
    RowsCount,
    Sentence,
    Striped,
    Together,
    WithYarn,
    WorkRounds,
)
from stepper.project.problems import Span
from stepper.project.reading.manners import manner_of
from stepper.project.reading.occasions import OccasionBuilder, side_of, type_of
from stepper.project.stitchwork import Numbers, Several, Until, Work
from stepper.records import dataclass
from stepper.regex import regex

_N: Final = r"\d+(?:\s*[(\[]\s*[\d\s,;:]+[)\]])?"
_HOLES: Final = regex(
    rf"with\s+(?:(?:(?P<number>{_N})|an?)\s+)?buttonholes?(?:\s+as\s+before)?(?P<right>\s+at\s+right\s+front)?"
    rf"(?:\s+(?:in|on)\s+rows?\s+(?P<rows>[\d\s,and]+?)"
    rf"|\s+every\s+(?P<every>\d+)(?:st|nd|rd|th)?\s+rows?\s+from\s+row\s+(?P<first>\d+)(?:\s+(?P<times>{_N})\s+times)?)?"
    rf"(?:\s*,\s*(?P<ends>{_N})\s+sts\s+from\s+each\s+end)?\s*,?",
    re.I,
)


@dataclass(slots=True, kw_only=True)
class ShapingBuilder(OccasionBuilder):
    """Builds the records of shaping."""

    # --- evenly ---

    def _do_evenly_to(self, tree: Any) -> list[Sentence]:
        return self._evenly(tree, to=True)

    def _do_evenly_by(self, tree: Any) -> list[Sentence]:
        return self._evenly(tree, to=False)

    def _do_evenly_open(self, tree: Any) -> list[Sentence]:
        """Read "knit 1 round, decreasing 4 sts", which leaves open where: spread over the round."""
        text = "where in the round is not said; the changes are spread evenly."
        self.assumed.append(Assumed(text, self._tree_place(tree)))
        return self._evenly(tree, to=False)

    def _evenly(self, tree: Any, *, to: bool) -> list[Sentence]:
        """Read an even change, with the rounds that the line gives before or after it."""
        place = self._tree_place(tree)
        change = next(tree.find_data("change")).children[0]
        token = next(child for child in tree.children if type_of(child) == "NUMBERS")
        numbers = self._numbers(token)
        direction = -1 if change.lower().startswith("dec") else 1
        lead = tree.children[0]
        kind = getattr(lead, "data", "") if lead is not None else ""
        which = next((str(child) for child in tree.children if type_of(child) == "WHICH"), "")
        first = re.search(r"\bfirst\b", which, re.I) is not None
        others = self._lead(lead, place) if kind.startswith("lead") else None
        code = "" if lead is None or kind == "change" else self._lead_stitch(lead)
        fabric = self._lead_fabric(lead) if others is None else ""
        row = Evenly(direction, numbers if to else None, None if to else numbers, place, code, fabric)
        if first and (others is None or code not in ("k", "p")):
            told = "a change in the first of several rounds is read of rounds that are knitted or purled."
            self.report(place, told, "Write that round by itself, and the others after it.")
        if others is None and kind in ("", "change") and re.search(r"\blast\b", which, re.I):
            told = "the last row is worked already where this begins."
            hint = 'Write it with those rows: "Work in rib for 6 rows, inc 8 sts evenly on last row."'
            self.report(place, told, hint)
        if others is None:
            return [row]
        if not which:
            told = "in which of these rows the change falls is not said; the last is taken."
            self.assumed.append(Assumed(told, place))
        return [row, others] if first else [others, row]

    def _lead_fabric(self, lead: Any) -> str:
        """Return the fabric that is named for the round of the change; empty if it goes on as before."""
        named = (child for child in getattr(lead, "children", ()) if getattr(child, "data", "") == "manner")
        manner = next((manner_of(child) for child in named), "pattern")
        return "" if manner == "pattern" else manner

    def _lead_stitch(self, lead: Any) -> str:
        """Return how the round of the change is worked: `k`, `p`, or `pattern` if it goes on as before."""
        token = next((child for child in lead.children if type_of(child) in ("PLAIN", "PLAIN_AND")), None)
        return code_of(token) if token is not None else "pattern"

    def _lead(self, lead: Any, place: Span) -> WorkRounds | None:
        """Read the rounds besides the one with the change: "knit 4 rounds, ..."; None if there are none."""
        if lead.data == "lead_plain_until":
            plain, until = lead.children
            return WorkRounds(code_of(plain), self._until(until), place, but_last=True)
        if lead.data == "lead_until":
            manner, until = lead.children
            return WorkRounds(
                manner_of(manner), self._until(until), place, bare=manner is None, but_last=True
            )
        token = next((child for child in lead.children if type_of(child) == "NUMBERS"), None)
        if token is None:
            return None
        rounds = self._numbers(token)
        fewer = Numbers(tuple(max(0, value - 1) for value in rounds.values), rounds.place)
        if not any(fewer.values):
            return None
        if lead.data == "lead_rounds":
            _, more, _, manner = lead.children
            duration = Rounds(fewer, more is not None)
            return WorkRounds(manner_of(manner), duration, place, bare=manner is None)
        return WorkRounds(code_of(lead.children[0]), Rounds(fewer, False), place)

    def _do_every_nth(self, tree: Any) -> list[Sentence]:
        """Read "knit, inc 1 st in every 10th st": in the 10th, the 20th, and so on."""
        place = self._tree_place(tree)
        lead = tree.children[0]
        number, nth = (child for child in tree.children if type_of(child) in ("NUMBERS", "NTH"))
        change = next(tree.find_data("change")).children[0].lower()
        every = self._numbers(nth)
        plain = Numbers(tuple(max(0, value - 1) for value in every.values), every.place)
        code = self._lead_stitch(lead)
        if change.startswith("dec") or self._numbers(number).values != (1,):
            told = "only one increase in every so many stitches is read."
            hint = "Write the round out, for example *k8, k2tog; rep from *."
            self.report(place, told, hint)
        group = (Work(code, plain, None, place), Work("inc", self._one(place), None, place))
        rest = Until(code, "end", None, None, place)
        others = self._lead(lead, place)
        row = Phrase((Several(group, None, "fit", None, place), rest), place)
        return [row] if others is None else [others, row]

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

    def _do_rep_side(self, tree: Any) -> Repeated:
        _, side, _, repeats = tree.children
        place = self._tree_place(tree)
        two = Numbers((2,), place)
        return Repeated((), two, self._repeats(repeats), True, place, side=side_of(str(side)))

    def _do_rep_label(self, tree: Any) -> Repeated:
        """Read "rep rib round until neckband measures 3 cm"."""
        place, again = self._tree_place(tree), any(type_of(child) == "REP" for child in tree.children)
        return Repeated((), None, self._until(tree.children[-1]), again, place, label=_named(tree))

    def _do_going_on(self, tree: Any) -> Going:
        return Going(manner_of(tree.children[0]), self._tree_place(tree))

    def _do_together(self, tree: Any) -> Sentence:
        parts: list[AtIntervals] = []
        yarns: list[tuple[UntilLength, WithYarn]] = []
        edges: list[EdgeShaping] = []
        base: WorkRounds | Striped | None = None
        for child in tree.children:
            if child.data == "delayed_yarn":
                token = child.children[-1]
                yarn = WithYarn(str(token).split()[-1], self._place(token))
                yarns.append((self._when_measures(child), yarn))
                continue
            after = self._after(child)
            child = child if after is None else child.children[-1]
            made = getattr(self, f"_do_{child.data}")(child)
            if isinstance(made, AtIntervals):
                parts.append(replace(made, after=after))
            elif isinstance(made, EdgeShaping) and after is None:
                edges.append(made)
            elif isinstance(made, WorkRounds | Striped):
                base = made
            else:
                self.report(made.place, "say how often it is worked, beside the other.")
        place = self._tree_place(tree)
        if edges and (parts or yarns or isinstance(base, Striped)):
            told = "beside a shaping of one edge, another of one edge is read."
            self.report(edges[0].place, told, "Name the edge of each.")
        if edges:
            return EdgesTogether(tuple(edges), place, base if isinstance(base, WorkRounds) else None)
        return Together(tuple(parts), place, base, tuple(yarns))

    def _do_rep_filling(self, tree: Any) -> AtIntervals:
        """Read a shaping that goes on as long as the rounds beside it: "rep dec rnd every 4th rnd"."""
        return AtIntervals(_named(tree), (self.filling(tree),), True, self._tree_place(tree))

    def _do_at_once(self, tree: Any) -> AtOnce:
        return AtOnce(self._tree_place(tree))

    def _do_crossed(self, tree: Any) -> list[Sentence]:
        """Read "crossing cable every 8th rnd" beside rounds in pattern, whose own rounds cross it."""
        worked, every = tree.children[:2]
        made = getattr(self, f"_do_{worked.data}")(worked)
        before = made if isinstance(made, list) else [made]
        return [*before, Crossed(self.nth(every), self._place(every))]

    def _do_paced(self, tree: Any) -> Paced:
        change, number, every = tree.children[:3]
        direction = -1 if str(change.children[0]).lower().startswith("dec") else 1
        return Paced(direction, self._numbers(number), self.nth(every), self._tree_place(tree))

    def _do_holed(self, tree: Any) -> Buttonholes:
        """Read "with 7 buttonholes in row 4, 4 sts from each end, by yo, k2tog"."""
        token = tree.children[0]
        told = _HOLES.fullmatch(str(token))
        assert told is not None, token

        def number(name: str) -> Numbers | None:
            words = told[name]
            if not words:
                return None
            return self._numbers(Token("NUMBERS", words, (token.start_pos or 0) + told.start(name)))

        named = told["rows"] or told["first"] or ""
        made = self._inside(tree.children[1]) if len(tree.children) > 1 else ()
        return Buttonholes(
            made,
            self._tree_place(tree),
            number("number"),
            tuple(int(row) for row in re.findall(r"\d+", named)),
            number("ends"),
            int(told["every"] or 0),
            number("times"),
            right=told["right"] is not None,
        )

    _do_holed_again = _do_holed

    def _do_holed_more(self, tree: Any) -> Buttonholes:
        return Buttonholes((), self._tree_place(tree), more=True)

    def _do_not_holed(self, tree: Any) -> Buttonholes:
        return Buttonholes((), self._tree_place(tree), none=True)

    def _after(self, tree: Any) -> UntilLength | UntilCount | None:
        """Read when a shaping begins beside another; None if it begins with it."""
        if tree.data == "delayed_count":
            return UntilCount(self._numbers(tree.children[0]))
        return self._when_measures(tree) if tree.data == "delayed" else None

    def _when_measures(self, tree: Any) -> UntilLength:
        length, from_ = tree.children[:2]
        return UntilLength(self._length(length), True, self._start(from_), False)


def beside(made: Sequence[Sentence], before: Sequence[Sentence]) -> list[Sentence]:
    """Return what a sentence was made to, buttonholes with the rows that are worked again beside them.

    Args:
        made: What the sentence was made to.
        before: What stands before it in its line.
    """
    rows = next((one for one in reversed(before) if not isinstance(one, RowsCount)), None)
    if not isinstance(rows, Repeated):
        return list(made)
    return [replace(one, again=rows) if isinstance(one, Buttonholes) and one.rows else one for one in made]


def _named(tree: Any) -> str:
    return label_of(next(child for child in tree.children if type_of(child) == "LABEL_REF"))


def code_of(token: Token) -> str:
    """Return the stitch of `Knit` or `Purl`."""
    return "p" if token.lower().startswith("p") else "k"


def label_of(token: Token) -> str:
    """Return the name of a round in the form used to look it up: "the Decrease round" is `decrease round`."""
    return " ".join(str(token).lower().split()).removeprefix("the ")
