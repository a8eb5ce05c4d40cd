"""Turn the tree of a parsed line into instruction records, one short method for each grammar rule.

It is longer than other modules: the methods are found by the names of the rules, and one class holds them.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Any

from lark import Token, Tree

from stepper.craft.needles import BARE_SIZE
from stepper.craft.stitches import Kind, find_stitch
from stepper.project.duration import Duration, Ended, Rounds, Times, UntilLength
from stepper.project.instructions import (
    Assumed,
    BindOff,
    BothSides,
    BreakYarn,
    Flat,
    Forms,
    Going,
    Join,
    Leg,
    Needle,
    Phrase,
    PrintedCount,
    Repeated,
    Return,
    RowsCount,
    Sentence,
    StopShort,
    Striped,
    TurnMethod,
    WithYarn,
    WorkRounds,
)
from stepper.project.laying_out import MarkAfter, MarkEvery, MarkRow
from stepper.project.lengths import read_needle, us_number
from stepper.project.reading.chart_lines import ChartBuilder
from stepper.project.reading.elements import name_part
from stepper.project.reading.manners import forms_name, is_as_set, is_even, manner_of
from stepper.project.reading.occasions import edge_of, is_short, side_of, type_of
from stepper.project.reading.shapings import beside, code_of
from stepper.project.stitchwork import Element, Numbers, Several, Until, Work
from stepper.records import dataclass

_WORKED = (Kind.PLAIN, Kind.INCREASE, Kind.DECREASE, Kind.CABLE)


@dataclass(frozen=True, slots=True, kw_only=True)
class Head:
    """The words before the colon: `Rnds 1-4:`."""

    numbers: tuple[int, ...] = ()
    side: str = ""
    rows: bool = False
    every: str = ""
    """`WS`, `RS`, `even` or `odd` if the line is also for all such rows."""
    next: bool = False
    """Whether it is for the next row, without a number: `Next row:`."""
    times: Numbers | None = None
    """How many consecutive rows it is for: `Next 4 rows:`."""
    first: Numbers | None = None
    legs: tuple[Leg, ...] = ()
    """The rows it is for if they are not consecutive: `Next and foll alt row:`."""


@dataclass(slots=True, kw_only=True)
class Builder(ChartBuilder):
    """Builds the records of one line and gathers the problems of its numbers."""

    def build(self, tree: Any, *, inches: bool) -> tuple[Head, tuple[Sentence, ...]]:
        """Build the head and the sentences of a parsed line."""
        self.inches = inches
        head = Head()
        sentences: list[Sentence] = []
        for child in tree.children:
            if child is None:
                continue
            if child.data in ("head", "head_all", "head_next", "head_parity", "head_when"):
                head = self._head(child)
            else:
                sentences.extend(beside(self._sentence(child), sentences))
        return head, tuple(sentences)

    def _head(self, tree: Tree[Token]) -> Head:
        spans = list(tree.find_data("span"))
        numbers = self._span(spans[0], head=True) if spans else ()
        if tree.data == "head_parity":
            odd = str(tree.children[0]).lower().startswith("odd")
            numbers = tuple(number for number in numbers if number % 2 == odd)
        sides = [str(token).upper() for side in tree.find_data("side") for token in side.children]
        side = side_of(sides[0]) if sides else ""
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
        count = [child for child in tree.children if isinstance(child, Token) and child.type == "NUMBERS"]
        times = self._numbers(count[0]) if count else None
        rows = rows or _rows_said(every)
        of_all = _every(every, numbers)
        if not side and numbers and of_all in ("WS", "RS"):
            side = of_all  # "Row 1 and all other WS rows": so is row 1
        first, legs = self.when(tree.children[0]) if tree.data == "head_when" else (None, ())
        next_ = any(getattr(token, "type", "") == "NEXT" for token in tree.children)
        return Head(
            numbers=numbers,
            side=side,
            rows=rows,
            every=_every(every, numbers),
            next=next_,
            times=times,
            first=first,
            legs=legs,
        )

    # --- sentences ---

    def _sentence(self, tree: Tree[Token]) -> list[Sentence]:
        made = getattr(self, f"_do_{tree.data}")(tree)
        return made if isinstance(made, list) else [made]

    def _do_worked_rounds(self, tree: Any) -> WorkRounds:
        plain, number, more, _ = tree.children
        return WorkRounds(
            code_of(plain), Rounds(self._numbers(number), more is not None), self._tree_place(tree)
        )

    def _do_worked_ridges(self, tree: Any) -> WorkRounds:
        """Read "knit 8 ridges": a ridge of garter stitch is two rows."""
        number, more = tree.children[-2:]
        place, ridges = self._tree_place(tree), self._numbers(number)
        if len(tree.children) > 2 and code_of(tree.children[0]) == "p":
            hint = "Write how many rows are purled."
            self.report(place, "a ridge is knitted on both sides.", hint)
        rows = Numbers(tuple(2 * ridge for ridge in ridges.values), ridges.place)
        return WorkRounds("garter", Rounds(rows, more is not None), place)

    def _do_striped_plain(self, tree: Any) -> Striped:
        plain, number, _, stripes = tree.children
        return self._striped(tree, code_of(plain), Rounds(self._numbers(number), False), stripes)

    def _do_striped_rounds(self, tree: Any) -> Striped:
        number, more, _, manner, stripes = tree.children
        return self._striped(
            tree, manner_of(manner), Rounds(self._numbers(number), more is not None), stripes
        )

    def _do_striped_until(self, tree: Any) -> Striped:
        plain = next((child for child in tree.children if type_of(child) == "PLAIN"), None)
        manner = next((child for child in tree.children if getattr(child, "data", "") == "manner"), None)
        how = code_of(plain) if plain is not None else manner_of(manner)
        return self._striped(tree, how, self._until(tree.children[-1]), tree.children[-2])

    def _striped(self, tree: Any, manner: str, duration: Duration, stripes: Token) -> Striped:
        """Read "in stripes of 4 rnds A, 2 rnds B"."""
        found = re.findall(
            r"(\d+)\s+(?:(?:rnds?|rounds?|rows?)\s+)?(?:in\s+|of\s+|with\s+)?([A-Z]+\d?)", str(stripes)
        )
        place = self._tree_place(tree)
        return Striped(manner, duration, tuple((int(rounds), yarn) for rounds, yarn in found), place)

    def _do_worked_in_all(self, tree: Any) -> WorkRounds:
        return WorkRounds("pattern", self.in_all(tree), self._tree_place(tree), bare=True)

    def _do_worked_rounds_in(self, tree: Any) -> WorkRounds:
        number, more, _, manner, beginning = tree.children
        return self._worked_in(tree, manner, beginning, Rounds(self._numbers(number), more is not None))

    def _do_worked_until(self, tree: Any) -> WorkRounds:
        plain, until = tree.children
        return WorkRounds(code_of(plain), self._until(until), self._tree_place(tree))

    def _do_worked_until_in(self, tree: Any) -> WorkRounds:
        manner, beginning, until = tree.children
        return self._worked_in(tree, manner, beginning, self._until(until))

    def _worked_in(self, tree: Any, manner: Any, beginning: Any, duration: Duration) -> WorkRounds:
        place, first = self._tree_place(tree), self._beginning(beginning)
        return WorkRounds(
            manner_of(manner),
            duration,
            place,
            bare=manner is None,
            even=is_even(manner),
            as_set=is_as_set(manner),
            first=first,
        )

    def _do_worked_once(self, tree: Any) -> WorkRounds:
        place, first = self._tree_place(tree), self._beginning(tree.children[1])
        rounds = Rounds(self._one(place), False)
        return WorkRounds(manner_of(tree.children[0]), rounds, place, first=first, once=True)

    def _beginning(self, tree: Any) -> Numbers | None:
        return self._numbers(tree.children[1]) if tree is not None else None

    def _do_edged(self, tree: Any) -> Sentence:
        worked, number, manner = tree.children
        made = self._sentence(worked)[0]
        assert isinstance(made, WorkRounds)
        return replace(made, edges=(self._numbers(number), manner_of(manner)))

    def _do_forms_span(self, tree: Any) -> Forms:
        place = self._tree_place(tree)
        numbers = self._span(tree.children[1], head=True)
        return Forms(Numbers((len(numbers),), place), forms_name(str(tree.children[2])), place, numbers)

    def _do_forms(self, tree: Any) -> Forms:
        number = tree.children[1]
        rounds = self._numbers(number) if number is not None else None
        return Forms(rounds, forms_name(str(tree.children[3])), self._tree_place(tree))

    def _do_rep_span(self, tree: Any) -> list[Sentence]:
        place = self._tree_place(tree)
        spans = [child for child in tree.children if getattr(child, "data", "") == "span"]
        after = [tree.children[at + 1] for at, child in enumerate(tree.children) if child in spans]
        return [
            Repeated(self._span(span), None, self._repeats(repeats), True, place)
            for span, repeats in zip(spans, after, strict=True)
        ]

    def _do_repeated_but(self, tree: Any) -> list[Sentence]:
        made = self._sentence(tree.children[0])
        last = made[-1]
        if not isinstance(last, Repeated) or not isinstance(last.duration, Times | UntilLength):
            self.report(self._tree_place(tree), "how many rows that is cannot be told.")
            return made
        return [*made[:-1], replace(last, but_last=True)]

    def _do_ended_round(self, tree: Any) -> Ended:
        return Ended("", self._numbers(tree.children[1]), self._tree_place(tree))

    def _do_ended_worked(self, tree: Any) -> Ended:
        return Ended(str(tree.children[0]).lower()[0], None, self._tree_place(tree))

    def _do_ended_at(self, tree: Any) -> Ended:
        return Ended(edge_of(str(tree.children[0])), None, self._tree_place(tree))

    def _do_ended_side(self, tree: Any) -> Ended:
        return Ended(side_of(str(tree.children[0])), None, self._tree_place(tree))

    def _do_rep_span_bare(self, tree: Any) -> Repeated:
        place = self._tree_place(tree)
        return Repeated(self._span(tree.children[2]), None, Times(self._one(place), True), True, place, True)

    def _do_rep_bare(self, tree: Any) -> Repeated:
        """Read "repeat 10 more times": the rows of the line itself, or those just written out."""
        place = self._tree_place(tree)
        token = tree.children[1]
        number = self._numbers(token) if token.type == "NUMBERS" else self._often(token, place)
        return Repeated((), None, Times(number, True), True, place, line=True)

    def _do_rep_last(self, tree: Any) -> Repeated:
        """Read "rep last round"; several without a number means those just written out."""
        place = self._tree_place(tree)
        several = str(tree.children[2]).lower().rstrip(".").endswith("s")
        last, short = None if several else self._one(place), is_short(tree.children[2])
        return Repeated((), last, self._repeats(tree.children[3]), True, place, short=short)

    def _do_rep_last_many(self, tree: Any) -> Repeated:
        _, _, number, rows, repeats = tree.children
        lasts, place = self._repeats(repeats), self._tree_place(tree)
        return Repeated((), self._numbers(number), lasts, True, place, short=is_short(rows))

    def _do_work_last_many(self, tree: Any) -> Repeated:
        """Read "work these 2 rows 16 times", which counts the once just written out."""
        _, number, rows, repeats = tree.children
        lasts, place = self._repeats(repeats), self._tree_place(tree)
        return Repeated((), self._numbers(number), lasts, False, place, short=is_short(rows))

    def _do_work_spans(self, tree: Any) -> list[Sentence]:
        place = self._tree_place(tree)
        at = [number for number, child in enumerate(tree.children) if getattr(child, "data", "") == "span"]
        return [
            Repeated(self._span(tree.children[n]), None, self._repeats(tree.children[n + 1]), False, place)
            for n in at
        ]

    def _do_work_span(self, tree: Any) -> Repeated:
        _, span, repeats = tree.children
        place = self._tree_place(tree)
        duration = self._repeats(repeats) if repeats is not None else Times(self._one(place), False)
        return Repeated(self._span(span), None, duration, False, place)

    def _do_facing(self, tree: Any) -> list[Sentence]:
        token = tree.children[0]
        side = "WS" if re.search(r"ws|wrong", str(token).lower()) else "RS"
        self.said.append(f"with {side} facing")
        picked = next(tree.find_data("edge"), None)
        if side == "WS" and picked is not None and str(picked.children[0]).lower().startswith("p"):
            self.picked_from = side
        elif any(next(tree.find_data(kind), None) for kind in ("back", "taken_up")):
            made, wrong = self._sentence(tree.children[1]), side == "WS"
            return [
                replace(one, wrong_side=wrong, right_side=not wrong) if isinstance(one, Return) else one
                for one in made
            ]
        elif side == "WS":
            text = '"WS facing" is said, and changes nothing: the row is counted as it comes.'
            hint = 'Write "Next row (WS):" for the side.'
            self.assumed.append(Assumed(f"{text} {hint}", self._place(token), wrong_side=True))
        return self._sentence(tree.children[1])

    def _do_going(self, tree: Any) -> list[Sentence]:
        """Read "cont in st st, inc 1 st at each end of ...": the fabric of the rows, and the shaping."""
        fabric = Going(manner_of(tree.children[0]), self._tree_place(tree.children[0]))
        return [fabric, *self._sentence(tree.children[1])]

    def _do_stop_short(self, tree: Any) -> StopShort:
        return StopShort(self._numbers(tree.children[0]), self._tree_place(tree))

    def _do_graft(self, tree: Any) -> list[Sentence]:
        place = self._tree_place(tree)
        number = next((child for child in tree.children if getattr(child, "type", "") == "NUMBERS"), None)
        tails = [str(child) for child in tree.children if getattr(child, "type", "") == "EDGE_TAIL"]
        self.said.extend([f"graft {' '.join(tails)}"] if tails else [])
        made: list[Sentence] = (
            [PrintedCount(self._numbers(number), self._place(number))] if number is not None else []
        )
        return [*made, BindOff("", place, "graft")]

    def _do_draw(self, tree: Any) -> BindOff:
        self.said.append(str(tree.children[0]).strip())
        return BindOff("", self._tree_place(tree), "draw")

    def _do_turn_method(self, tree: Any) -> TurnMethod:
        words = str(tree.children[0]).lower()
        method = "german" if "german" in words else "plain" if "plain" in words else "wrap"
        return TurnMethod(method, self._tree_place(tree))

    def _do_join(self, tree: Any) -> Join:
        return Join(self._tree_place(tree))

    def _do_flat(self, tree: Any) -> Flat:
        return Flat(self._tree_place(tree), tree.children[0].type == "TURN_WORK")

    def _do_both_sides(self, tree: Any) -> BothSides:
        return BothSides(self._tree_place(tree))

    def _do_needle(self, tree: Any) -> list[Sentence]:
        token = tree.children[0]
        place = self._place(token)
        word = re.match(r"smaller|larger|[a-z]+(?=-size)", str(token).lower())
        if word:
            return [Needle(0.0, place, word.group())]
        mm = read_needle(str(token))
        if mm is None and re.match(BARE_SIZE, str(token), re.I):
            return [Needle(0.0, place, str(token))]
        if mm is None:
            told = f'"{token}" names no needle size that is the same everywhere.'
            self.report(place, told, "Give the size in millimetres, for example 3.75 mm needles.")
            return []
        printed = us_number(str(token))
        listed = printed is not None and mm not in (printed.mm, *printed.also_mm)
        if printed is not None and listed:
            text = f"US {printed.us} is {printed.mm:g} mm in the tables; {mm:g} mm, as printed, is taken."
            self.assumed.append(Assumed(text, place))
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

    def _do_bind_off_rem(self, tree: Any) -> list[Sentence]:
        """Read "bind off rem 20 sts", with the number as a count to check."""
        number = tree.children[1]
        words = [str(child).lower().rstrip(".") for child in tree.children[2:] if child is not None]
        place = self._tree_place(tree)
        return [PrintedCount(self._numbers(number), self._place(number)), BindOff(" ".join(words), place)]

    def _do_back(self, tree: Any) -> Return:
        name = re.sub(
            r"^(return|place|take\s+up)\s+(the\s+)?(held\s+)?|\s+(sts\s+|stitches\s+)?(back\s+)?(to|onto|on)\s+(the\s+)?needles?$",
            "",
            str(tree.children[0]),
            flags=re.I,
        )
        number, name = self._number_in(name, tree)
        place = self._tree_place(tree)
        on_needle = tree.data == "taken_up"
        rest = on_needle and re.fullmatch(r"rem(?:aining)?(?:\s+(?:sts|stitches))?", name.strip(), re.I)
        return Return("" if rest else name_part(name), place, number, on_needle=on_needle)

    _do_taken_up = _do_back

    def _do_mark_row(self, tree: Any) -> MarkRow:
        return MarkRow(" ".join(str(tree.children[0]).split()), self._tree_place(tree))

    def _do_measured_on(self, tree: Any) -> MarkRow:
        return MarkRow(" ".join(str(tree.children[0]).split()), self._tree_place(tree), onwards=True)

    def _do_mark_after(self, tree: Any) -> MarkAfter:
        counts = tuple(self._numbers(child) for child in tree.children if type_of(child) == "NUMBERS")
        return MarkAfter(counts, tree.data == "mark_ends", self._tree_place(tree))

    _do_mark_ends = _do_mark_after

    def _do_mark_every(self, tree: Any) -> MarkEvery:
        return MarkEvery(self._numbers(tree.children[0]), self._tree_place(tree))

    def _do_count(self, tree: Any) -> PrintedCount:
        token = next(child for child in tree.children if isinstance(child, Token) and child.type == "NUMBERS")
        tail = next(
            (str(child).lower() for child in tree.children if getattr(child, "type", "") == "COUNT_TAIL"), ""
        )
        change = 1 if tail.startswith("inc") else -1 if tail.startswith("dec") else 0
        parts = ("SECTIONS", "AFTER_ROW", "ON_NEEDLE")
        within = next((str(child) for child in tree.children if type_of(child) in parts), "")
        return PrintedCount(self._numbers(token), self._place(token), change, _part_counted(within))

    def _do_rows_count(self, tree: Any) -> RowsCount:
        tokens = {token.type: token for token in tree.children if token is not None}
        total = "COUNT_TAIL" in tokens
        return RowsCount(self._numbers(tokens["NUMBERS"]), self._tree_place(tree), total)

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
        self.refuse_amid(next(child for child in tree.children if child is not None))
        last = next(child for child in reversed(tree.children) if child is not None and child.data != "tail")
        return [Phrase(self._around(elements, last), self._tree_place(tree)), *made]

    def _around(self, elements: list[Element], last: Any) -> tuple[Element, ...]:
        """Make one group of a round like "k8, k2tog around": its words have two readings."""
        end, before = elements[-1], elements[:-1]
        in_words = last.data in ("to", "to_all") and last.children[0].children[0].type == "NAMED"
        entries = [find_stitch(one.stitch) for one in before if isinstance(one, Work)]
        counted = len(entries) == len(before) and all(entry and entry.kind in _WORKED for entry in entries)
        if not (in_words and before and counted and isinstance(end, Until) and end.goal == "end"):
            return tuple(elements)
        once = Work(end.stitch, self._one(end.place), end.yarn, end.place)
        place = replace(before[0].place, length=1)
        return (Several((*before, once), None, "around", None, place, 1),)


def _part_counted(words: str) -> str:
    """Return which part of the stitches a count is of, as `PrintedCount.sections`; empty for all."""
    if not words:
        return ""
    placed = re.match(r"(after\s+\w+|on)\b\D*(\d+)$", words, re.I)
    if placed:
        return f"{'needle' if placed.group(1).lower() == 'on' else 'row'} {placed.group(2)}"
    if re.match(r"of\b", words, re.I):
        return "gusset"
    if re.match(r"each\s+for\b", words, re.I):
        return "pair"
    if re.search(r"\bside\b", words, re.I):
        return "sides"
    return "each" if re.search(r"each|every|all", words, re.I) else "between"


def _rows_said(words: str) -> bool:
    return bool(re.search(r"\brows?\b|\b[rw]s\b", words))


def _every(words: str, numbers: tuple[int, ...]) -> str:
    """Return which rows a head like "and all WS rows" means; empty without such words."""
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
