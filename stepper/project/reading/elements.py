"""Turn the parts of a round in the parsed tree, with their numbers and lengths, into instruction records.

It is long because the methods are found by the names of the rules, as in `sentences`, and one class holds
them.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import field, replace
from typing import Any

from lark import Token, Tree

from stepper.craft import stitches
from stepper.project.instructions import Assumed
from stepper.project.keys.own_lengths import split_own
from stepper.project.lengths import in_one_unit, read_length
from stepper.project.problems import Problem, Span
from stepper.project.reading.goals import GOALS, read_goal
from stepper.project.reading.manners import chart_called, name_of, stretch_in
from stepper.project.stitchwork import (
    Across,
    ChartPart,
    Element,
    Hold,
    Mark,
    Numbers,
    PickUp,
    PrintedLength,
    Several,
    Spread,
    TurnHere,
    Until,
    Work,
)
from stepper.records import dataclass
from stepper.regex import regex

MOST = 9999
"""The largest number a line may hold: stitches, rounds or times."""
_BY_SIZE = 'Write a line for each size, as "Size S only: …".'
WORDS = ("zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten")
"""Small numbers that patterns print as words."""


@dataclass(slots=True, kw_only=True)
class ElementBuilder:
    """Builds the records inside a round and gathers the problems of their numbers."""

    place_of: Callable[[int, int], Span]
    words: int
    """How many sizes the pattern has; 0 if unknown."""
    problems: list[Problem] = field(default_factory=list)
    inches: bool = False
    said: list[str] = field(default_factory=list)
    """Words that work no stitches, to be said with the line."""
    assumed: list[Assumed] = field(default_factory=list)
    """What the line leaves open."""
    insets: dict[str, int] = field(default_factory=dict)
    """How many stitches stand outside a change at an edge, of each kind, where the page said so before."""
    picked_from: str = ""
    """`WS` if stitches are picked up from that side."""

    def report(self, place: Span, message: str, hint: str = "") -> None:
        """Add a problem at a place, as `Span.problem` makes it."""
        self.problems.append(place.problem(message, hint))

    # --- small parts ---

    def _place(self, token: Token) -> Span:
        return self.place_of(token.start_pos or 0, len(token))

    def _tree_place(self, tree: Tree[Token]) -> Span:
        tokens = list(tree.scan_values(lambda value: isinstance(value, Token)))
        if not tokens:
            return self.place_of(0, 1)
        start = min(token.start_pos or 0 for token in tokens)
        end = max(token.end_pos or 0 for token in tokens)
        return self.place_of(start, end - start)

    def _numbers(self, token: Token) -> Numbers:
        text = str(token).lower()
        if text in WORDS:
            return Numbers((WORDS.index(text),), self._place(token))
        values = tuple(int(part) for part in re.findall(r"\d+", text))
        place = self._place(token)
        if self.words and len(values) not in (1, self.words):
            told = f'"{token}" has {len(values)} numbers; the pattern has {self.words} sizes.'
            hint = "Write one number for all sizes, or one for each, in the order of `sizes`."
            self.report(place, told, hint)
        if max(values) > MOST:
            self.report(place, f"{max(values)} is more than any garment has.")
            return Numbers(tuple(min(value, MOST) for value in values), place)
        return Numbers(values, place)

    def _one_for_all(self, token: Token) -> int:
        """Read a number that has to be the same in every size, as the one that a round is called by."""
        return self.same_for_all(self._numbers(token), str(token))

    def same_for_all(self, numbers: Numbers, printed: str) -> int:
        """Return the one value of a number; report one that has several."""
        if len(set(numbers.values)) > 1:
            told = f'"{printed}" differs by size, and this number has to be the same for all.'
            self.report(numbers.place, told, _BY_SIZE)
        return numbers.values[0]

    def _one(self, place: Span) -> Numbers:
        return Numbers((1,), place)

    def _length(self, token: Token) -> PrintedLength:
        place = self._place(token)
        own, printed = split_own(str(token))
        if own and not printed:
            return PrintedLength((0.0,), place, str(token), own)
        text, same = in_one_unit(printed, inches=self.inches)
        values, trouble = read_length(text, inches=self.inches)
        if not same:
            told = f'the two units of "{token}" differ; {text.strip()} is taken.'
            self.assumed.append(Assumed(told, place))
        if trouble:
            self.report(place, trouble)
        elif self.words and len(values) not in (1, self.words):
            self.report(place, f'"{printed}" has {len(values)} lengths; the pattern has {self.words} sizes.')
        if own:
            return PrintedLength(tuple(-value for value in values) or (0.0,), place, str(token), own)
        return PrintedLength(values or (0.0,), place, text.strip())

    # --- inside a round ---

    def _goal_name(self, tree: Any) -> str:
        """Return which marker, or stitch at a turn, a goal means; note a marker assumed to be the next."""
        name = read_goal(tree)
        token = next((child for child in tree.children if getattr(child, "type", "") == "MARKER"), None)
        if token is not None and re.search(r"\bmarked\b", str(token), re.I):
            return "marked"  # the one before the stitch that a row marked: no other is taken for it
        which = re.search(r"\b(?:raglan|side|gusset|thumb|underarm|cent(?:er|re))\b", str(token or ""), re.I)
        if token is not None and which is not None and not name:
            kind = str(which[0]).lower()
            text = f'"{" ".join(token.split())}" is taken as the next marker of the row'
            if kind in ("side", "raglan", "underarm"):
                text += f", unless one of several was placed for the {kind}"
            if kind in ("gusset", "thumb"):
                text += f", or if others stand in it as the next of the two at the {kind}"
            self.assumed.append(Assumed(f"{text}.", self._place(token)))
            return kind
        return name

    def _element(self, tree: Any) -> Element:
        made: Element = getattr(self, f"_el_{tree.data}")(tree)
        return made

    def _work(self, tree: Any, stitch: str, number: Token | None, bare: bool = False) -> Element:
        tokens = [child for child in tree.children if isinstance(child, Token)]
        code = _modified(stitch, [token for token in tokens if token.type == "MODIFIER"])
        modifiers = [str(token) for token in tokens if token.type == "MODIFIER"]
        self.said.extend([f"{stitch} {' '.join(modifiers)}"] if len(modifiers) > 1 else [])
        yarn = next((str(token).split()[-1] for token in tokens if token.type == "YARN_REF"), None)
        place = self._tree_place(tree)
        if stitches.find_stitch(code) is None:
            self.report(place, f'"{code}" is not a stitch of the table.')
            code = stitch
        if bare:
            return Until(code, "end", None, yarn, place)
        return Work(code, self._numbers(number) if number is not None else self._one(place), yarn, place)

    def _el_bare(self, tree: Any) -> Element:
        token = tree.children[0].children[0]
        return self._work(tree, _stitch(token), None, bare=token.type != "NAMED")

    def _el_basic(self, tree: Any) -> Element:
        return self._work(tree, _stitch(tree.children[0]), tree.children[1])

    def _el_plain(self, tree: Any) -> Element:
        return self._work(tree, _stitch(tree.children[0]), tree.children[1])

    def _el_patterned(self, tree: Any) -> Element:
        fabric = stretch_in(tree)
        ribbed = not fabric and self._established(tree)
        token = next(child for child in tree.children if isinstance(child, Token) and child.type == "NUMBERS")
        code, place = "k" if fabric else "pattern", self._tree_place(tree)
        return Work(code, self._numbers(token), None, place, ribbed, fabric, _is_called_pattern(tree))

    def _el_turned(self, tree: Any) -> Element:
        token = tree.children[0]
        place = self._tree_place(tree)
        return Work("p" if str(token).lower().startswith("p") else "k", self._one(place), None, place)

    def _el_ratio(self, tree: Any) -> Element:
        numbers = [child for child in tree.children if isinstance(child, Token) and child.type == "NUMBERS"]
        along = " ".join(str(t) for t in tree.children if isinstance(t, Token) and t.type == "EDGE_TAIL")
        place = self._tree_place(tree)
        self._say_where("pu", tree)
        if not str(tree.children[0]).lower().startswith("p"):
            self.report(place, "only picking up goes by the rows of an edge.")
        return PickUp(self._numbers(numbers[0]), self._numbers(numbers[1]), along.lower(), place)

    def _el_in_each(self, tree: Any) -> Element:
        number = next(child for child in tree.children if child.type == "NUMBERS")
        place, words = self._tree_place(tree), str(tree.children[-1]).lower()
        if not str(tree.children[0]).lower().startswith("p"):
            self.report(place, "only picking up goes by the stitches of an edge.")
        self._say_how(tree)
        along = "cast-on edge" if re.search(r"cast-?\s?on|\bco\b", words) else "bound-off edge"
        self.said.append(f"pick up in each stitch of the {along}")
        return PickUp(self._numbers(number), self._one(place), along, place, True)

    def _say_how(self, tree: Any) -> None:
        """Note that stitches are picked up purlwise."""
        if "purl" in str(tree.children[0]).lower():
            self.said.append("pick up and purl")

    def _el_charted_to(self, tree: Any) -> Element:
        goal, short = self._goal(tree.children[-1])
        return self._charted(tree, None, goal, short)

    def _el_charted_over(self, tree: Any) -> Element:
        return self._charted(tree, self._numbers(tree.children[-1]), "", None)

    def _el_charted_to_fill(self, tree: Any) -> Element:
        return self._charted(tree, None, "fill", None)

    def _charted(self, tree: Any, over: Numbers | None, goal: str, short: Numbers | None) -> Element:
        place = self._tree_place(tree)
        if goal in ("marker", "behind") and self._goal_name(tree.children[-1]):
            self.report(place, "a chart is worked to the next marker, or to the end.")
        chart = next(one for one in tree.children if getattr(one, "type", "") in ("CHART", "PATTERN_OF"))
        name = name_of(str(chart)) if chart.type == "PATTERN_OF" else chart_called(str(chart))
        number = None
        for piece in tree.find_data("piece"):
            ends = [token for token in piece.children if isinstance(token, Token)]
            number = self._one_for_all(ends[0])
            if len(ends) > 1:
                self.report(place, "a round works one round of a chart, not several.")
        return ChartPart(name, number, over, goal, short, place, chart.type == "PATTERN_OF")

    def _el_across(self, tree: Any) -> Element:
        words = re.sub(r"^\S+\s+across\s+(the\s+)?(held\s+)?", "", str(tree.children[0]), flags=re.I)
        words = re.sub(r"\s+(from\s+(the\s+)?holder|on\s+hold)$", "", words, flags=re.I)
        number, words = self._number_in(words, tree)
        how = str(tree.children[0]).lower()[0]
        code = {"p": "p", "w": "pattern"}.get(how, "k")
        if code == "p":
            self.said.append(f"purl across {name_part(words)}".strip())
        return Across(name_part(words), self._tree_place(tree), number, code)

    def _number_in(self, words: str, tree: Any) -> tuple[Numbers | None, str]:
        """Split the number off the front of the name of held stitches: `40 (44, 48) left sleeve`."""
        match = re.match(r"\s*(\d+(?:\s*[(\[][\d\s,;]+[)\]])?)(?:\s+|$)", words)
        words = re.sub(r"^\s*held\b\s*", "", words[match.end() :] if match else words, flags=re.I)
        words = re.sub(r"^(sts|stitches)$", "", words.strip(), flags=re.I)
        if match is None:
            return None, words
        values = tuple(int(part) for part in re.findall(r"\d+", match.group(1)))
        place = self._tree_place(tree)
        if self.words and len(values) not in (1, self.words):
            self.report(place, f"{len(values)} numbers stand here; the pattern has {self.words} sizes.")
        return Numbers(values, place), words

    def _el_edge(self, tree: Any) -> Element:
        words = str(tree.children[0]).lower()
        code = "pu" if words.startswith("p") else "co" if re.match(r"c(ast\s+on|o)", words) else "bo"
        self._say_where(code, tree)
        self._say_how(tree)
        return Work(code, self._numbers(tree.children[1]), None, self._tree_place(tree))

    def _say_where(self, code: str, tree: Any) -> None:
        """Keep the words that say where stitches are picked up, or how they are cast on or bound off."""
        tails = [str(token) for token in tree.children[1:] if token.type in _TAILS]
        if code != "pu" and any(_SAME_EDGE.search(words) for words in tails):
            told = "which edge this is hangs on the rows before, and is not looked up here."
            self.report(self._tree_place(tree), told)
        if tails:
            what = {"pu": "pick up", "co": "cast on", "bo": "bind off"}[code]
            self.said.append(" ".join(f"{what} {' '.join(tails)}".split()))

    def refuse_amid(self, tree: Any) -> None:
        """Refuse a row that begins with stitches bound off at a place that is not its beginning."""
        off = tree.data == "edge" and re.match(r"b|cast\s+off", str(tree.children[0]), re.I)
        if off and any(_AMID.search(str(token)) for token in tree.children[1:] if token.type in _TAILS):
            told = "stitches are worked before those bound off there, and how many is not said."
            self.report(self._tree_place(tree), told, "Write them: k20, bind off 10, k to end.")

    def _el_cable(self, tree: Any) -> Element:
        place, code = self._tree_place(tree), " ".join(str(tree.children[0]).lower().split())
        if stitches.find_stitch(code) is None:
            self.report(place, f'"{tree.children[0]}" is no cable: its numbers do not fit.')
            return Work("k", self._one(place), None, place)
        return Work(code, self._one(place), None, place)

    def _el_to(self, tree: Any) -> Element:
        stitch = _stitch(tree.children[0].children[0])
        tokens = [child for child in tree.children[1:] if isinstance(child, Token)]
        code = _modified(stitch, [token for token in tokens if token.type == "MODIFIER"])
        yarn = next((str(token).split()[-1] for token in tokens if token.type == "YARN_REF"), None)
        place = self._tree_place(tree)
        if isinstance(tree.children[-1], Token):
            name = "across" if str(tree.children[-1]).lower() == "across" else ""
            return Until(code, "end", None, yarn, place, name)
        goal, short = self._goal(tree.children[-1])
        return Until(code, goal, short, yarn, place, self._goal_name(tree.children[-1]))

    def _el_to_all(self, tree: Any) -> Element:
        return self._el_to(tree)

    def _el_off_to_end(self, tree: Any) -> Element:
        return Until("bo", "end", None, None, self._tree_place(tree))

    def _el_work_to(self, tree: Any) -> Element:
        goal, short = self._goal(tree.children[-1])
        fabric, place = stretch_in(tree), self._tree_place(tree)
        ribbed, name = not fabric and self._established(tree), self._goal_name(tree.children[-1])
        code, called = "k" if fabric else "pattern", _is_called_pattern(tree)
        return Until(code, goal, short, None, place, name, ribbed, fabric, called)

    def _established(self, tree: Any) -> bool:
        """Refuse a fabric that part of a row would have to set up: it can only continue what is there.

        Returns:
            Whether the words say that what is there is a rib.
        """
        manner = next((token for token in tree.scan_values(_is_manner)), None)
        other = re.search(r"garter|stockinette|stocking|st\s+st|\d", str(manner or ""), re.I)
        if manner is not None and (other is not None or manner.type != "MANNER"):
            told = f'"{manner}" is read of whole rows, not of a stretch of one.'
            self.report(self._place(manner), told, "Write the stitches of the stretch, for example k to end.")
        words = " ".join(str(child) for child in tree.children if isinstance(child, Token))
        return re.search(r"\brib", words, re.I) is not None

    def _goal(self, tree: Any) -> tuple[str, Numbers | None]:
        tokens = [child for child in tree.children if isinstance(child, Token)]
        number = next((self._numbers(token) for token in tokens if token.type == "NUMBERS"), None)
        if tree.data == "to_last_one":
            return "last", self._one(self._tree_place(tree))
        if tree.data == "to_centre" and number is None and re.search(r"\bst", str(tokens[0]), re.I):
            return "centre", self._one(self._tree_place(tree))
        return GOALS[tree.data], number

    def _inside(self, tree: Any) -> tuple[Element, ...]:
        return tuple(self._element(child) for child in tree.children if child is not None)

    def _el_bracket(self, tree: Any) -> Element:
        inside, count = tree.children[0], tree.children[1]
        place = self._tree_place(tree)
        return Several(self._inside(inside), self._often(count, place), "times", None, place)

    def _often(self, token: Token, place: Span) -> Numbers:
        """Read how often: a number, `once` or `twice`."""
        if token.type != "TWICE":
            return self._numbers(token)
        return Numbers((1 if str(token).lower() == "once" else 2,), place)

    def _el_bracket_to(self, tree: Any) -> Element:
        goal, short = self._goal(tree.children[1])
        name = self._goal_name(tree.children[1])
        return _over_and_over(self._inside(tree.children[0]), goal, short, self._tree_place(tree), name)

    def _el_star(self, tree: Any) -> Element:
        inside = next(
            child for child in tree.children if isinstance(child, Tree) and child.data == "phrase_in"
        )
        rep = tree.children[-1]
        place = self._tree_place(tree)
        if rep.data == "star_times":
            more = any(token.type == "MORE" for token in rep.children)
            token = next(token for token in rep.children if token.type in ("NUMBERS", "TWICE"))
            times = self._often(token, place)
            # "rep from * 3 times" comes after working it once; some patterns print the total, so without
            # "more" there are two readings.
            times = Numbers(tuple(value + 1 for value in times.values), times.place)
            return Several(self._inside(inside), times, "times", None, place, 0 if more else 1)
        if rep.data == "star_total":
            token, tail = rep.children[0], rep.children[-1]
            if "total" not in str(tail).lower() and "all" not in str(tail).lower():
                self.report(place, "how often the stitches are worked in all is not clear.")
            return Several(self._inside(inside), self._often(token, place), "times", None, place)
        if rep.data == "star_to":
            goal, short = self._goal(rep.children[0])
            name = self._goal_name(rep.children[0])
            return _over_and_over(self._inside(inside), goal, short, place, name)
        if rep.data in ("star_between", "star_markers"):
            goal = "marker" if rep.data == "star_between" else "markers"
            both = "both" if goal == "markers" and "both" in str(rep.children[-1]).lower() else ""
            return Several(self._inside(inside), None, goal, None, place, name=both)
        goal = {"star_end": "end", "star_fit": "fit"}.get(rep.data, "rest")
        return _over_and_over(self._inside(inside), goal, None, place)

    def _el_over_openings_in(self, tree: Any) -> Element:
        self._established(tree)
        return self._over_openings("pattern", tree)

    def _el_over_openings(self, tree: Any) -> Element:
        return self._over_openings(_stitch(tree.children[0].children[0]), tree)

    def _over_openings(self, code: str, tree: Any) -> Element:
        place = self._tree_place(tree)
        cast_on = Work("co", self._numbers(tree.children[1]), None, place)
        each = Several((Until(code, "opening", None, None, place), cast_on), None, "openings", None, place)
        return Several((each, Until(code, "end", None, None, place)), self._one(place), "times", None, place)

    def _el_mark(self, tree: Any) -> Element:
        words = str(tree.children[0]).lower()
        code = _MARKS.get(words[0], "sm")
        _, _, name = words.partition(" for ")
        self.said.extend([" ".join(str(tree.children[0]).split())] if name else [])
        if code == "rm" and words.endswith("markers"):
            name = "all"
        return Mark(code, name.strip(), self._tree_place(tree))

    def _el_hold(self, tree: Any) -> Element:
        tokens = [child for child in tree.children if isinstance(child, Token)]
        number = next(token for token in tokens if token.type == "NUMBERS")
        name = next((str(token) for token in tokens if token.type == "FOR_NAME"), "")
        return Hold(
            self._numbers(number), name_part(name), self._tree_place(tree), rest=tree.data == "hold_rem"
        )

    _el_hold_rem = _el_hold

    def _el_hold_worked(self, tree: Any) -> Element:
        tokens = {child.type: child for child in tree.children if isinstance(child, Token)}
        number = self._numbers(tokens["NUMBERS"]) if "NUMBERS" in tokens else None
        name = name_part(str(tokens.get("FOR_NAME", "")))
        return Hold(number, name, self._tree_place(tree), worked=True)

    def _el_hold_all(self, tree: Any) -> Element:
        name = next((str(token) for token in tree.children if getattr(token, "type", "") == "FOR_NAME"), "")
        return Hold(None, name_part(name), self._tree_place(tree), to_marker=tree.data == "hold_to")

    _el_hold_to = _el_hold_all

    def _el_double(self, tree: Any) -> Element:
        place = self._tree_place(tree)
        return Work("ds", self._one(place), None, place)

    def _el_into(self, tree: Any) -> Element:
        inside = re.findall(r"[kp]1\s+tbl|[kp]1|yo", str(tree.children[0]).lower())
        place = self._tree_place(tree)
        code = f"({', '.join(' '.join(word.split()) for word in inside)}) in one"
        return Work(code, self._one(place), None, place)

    def _el_spread(self, tree: Any) -> Element:
        change = str(tree.children[0].children[0]).lower()
        by, over = (
            self._numbers(child) for child in tree.children if getattr(child, "type", "") == "NUMBERS"
        )
        place, direction = self._tree_place(tree), -1 if change.startswith("dec") else 1
        said = {str(getattr(child, "type", "")): str(child).lower() for child in tree.children}
        if "LAST" not in said:
            return Spread(direction, by, over, place)
        return Spread(direction, by, None, place, over, said.get("KNITTED", "")[:1])

    def _el_turn(self, tree: Any) -> Element:
        words = str(tree.children[0]).lower()
        method = "wrap" if words.startswith("w") else "german" if "make" in words else ""
        number = next((child for child in tree.children if getattr(child, "type", "") == "NUMBERS"), None)
        left = self._numbers(number) if number is not None else None
        return TurnHere(method, self._tree_place(tree), left)


_MARKS = {"p": "pm", "r": "rm", "j": "join 2nd ball", "o": "other ball"}
"""What is meant by a word of a marker, or of the two balls of a neck, by its first letter; else `sm`."""
_AMID = regex(
    r"\b(?:(?:at|in|on|over|around|about)\s+(?:the\s+)?(?:middle|mid|cent(?:er|re))|(?:each|either|both)\s+sides?|between)\b",
    re.I,
)
"""Where stitches are bound off with others of the row before them: "at the middle under the arm"."""
_SAME_EDGE = regex(r"\b(?:same|that|this|other|opposite)\s+(?:edge|end|side)\b", re.I)
_TAILS = ("EDGE_TAIL", "FROM_PLACE", "FOR_NAME", "MANNER", "BIND_MANNER", "MODIFIER")


def _over_and_over(
    inside: tuple[Element, ...], goal: str, short: Numbers | None, place: Span, name: str = ""
) -> Element:
    """Return what is repeated up to a place; a stitch alone ("*K* around") is that stitch up to there."""
    only = inside[0] if len(inside) == 1 else None
    if isinstance(only, Until) and only.goal == "end" and only.short is None and goal in _ENDS_OF_A_STITCH:
        return replace(only, goal=goal, short=short, place=place, name=name)
    return Several(inside, None, goal, short, place, 0, name)


_ENDS_OF_A_STITCH = ("end", "last", "marker")
"""Places up to which a repeat and a stitch alone are worked, called the same for both."""


def _is_manner(value: object) -> bool:
    return isinstance(value, Token) and value.type in ("MANNER", "RIB_MANNER", "PATTERN_MANNER")


def _is_called_pattern(tree: Any) -> bool:
    """Return whether stitches are worked in what the words call a pattern: "patt 10", "work in pattern"."""
    tokens = tree.scan_values(lambda value: getattr(value, "type", "") in ("MANNER", "PATTERN"))
    return any("patt" in str(token).lower() for token in tokens)


def _stitch(token: Token) -> str:
    word = " ".join(str(token).lower().split())
    found = stitches.find_stitch(word)
    return found.code if found else word


def _modified(stitch: str, modifiers: list[Token]) -> str:
    code = stitch
    for token in modifiers:
        word = " ".join(str(token).lower().split())
        short = {"knitwise": "kwise", "purlwise": "pwise"}.get(word, word)
        if short.startswith("through"):
            short = "tbl"
        elif short.startswith("with yarn"):
            short = "wyib" if short.endswith("back") else "wyif"
        if stitch == "sl" and short == "pwise":
            continue  # slipping purlwise is what a plain "slip" means
        if code != stitch and stitch == "sl":
            continue  # "kwise wyib": the first word names the stitch, the second the yarn
        code = f"{code} {short}"
    return code


def name_part(text: str) -> str:
    """Return the name of a part of the garment, however the line introduces it."""
    words = re.sub(r"^\s*for\s+", "", text.strip(), flags=re.I)
    words = re.sub(r"^the\s+", "", words, flags=re.I)
    words = re.sub(r"\s+(sts|stitches)$", "", words, flags=re.I)
    return " ".join(words.lower().split())
