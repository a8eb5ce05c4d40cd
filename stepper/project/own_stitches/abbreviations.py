"""Keep the abbreviations that a page defines, and put what they stand for into its rows. No I/O.

A row that uses one is read with the stitches in its place; every letter keeps its printed place, and the line
keeps its printed words. That is told once. No row is knitted with an abbreviation whose meaning is not read.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import field, replace

from stepper.craft.stitches import Kind, find_stitch, stitch
from stepper.project.instructions import Assumed, Line
from stepper.project.own_stitches.meaning import Meaning, read_meaning
from stepper.project.problems import Problem, Span
from stepper.project.rewording.reworded import Reworded
from stepper.records import dataclass
from stepper.regex import regex

_ALIKE = (
    frozenset({"ssk", "skp", "k2tog tbl"}),
    frozenset({"m1", "m1l"}),
    frozenset({"m1", "m1r"}),
    frozenset({"m1p", "m1lp"}),
    frozenset({"m1p", "m1rp"}),
    frozenset({"ssp", "p2tog tbl"}),
    frozenset({"sl", "sl pwise"}),
    frozenset({"sl", "sl kwise"}),
    frozenset({"sl wyib", "sl"}),
)
"""Stitches that look alike or nearly so, and keep every count."""
_MOVED = ("k", "p", "sl")
"""Stitches that rows give a number and a place; a page that means another stitch by them is not read."""
_DOUBTFUL = ("k1b",)
"""Stitches whose letters mean another on other pages: below, or through the back loop. Common practice."""
_DOUBLE = ("mds", "ds", "dst")
_NEEDLE_NAME = regex(
    r"(?:N|ndl\s?|needle\s?)(?P<number>[1-5])\s+(?:the\s+)?needle\s?#?(?P=number)"
    r"(?:\s*[(,-]\s*[a-z/ ]*\)?)?\.?",
    re.IGNORECASE,
)
_TELLS_DOUBLE = regex(
    r"\bdouble\s+st(?:itch)?\b|\bgerman\s+short\s+rows?\b|\b(?:two|both|2)\s+(?:legs|strands)\b", re.I
)
"""Words that explain the stitch made at the turn of a German short row, however it is drawn up."""
_WORDS = regex(
    r"(?:in|to|on|at|as|of|or|an|be|is|it|up|by|for|end|rows?|rnds?|rounds?|rep|and|all|beg|sts?|rs|ws|mc|cc|bor|co|bo"
    r"|cont|patt|rem|foll|alt|tog|tbl|pm|sm|rm|m|est|next|turn|until|with|work|repeat|then)$",
    re.I,
)
"""Words of rows: no abbreviation of a stitch in small letters, unless the page writes it so."""


@dataclass(frozen=True, slots=True)
class OwnStitch:
    """One abbreviation that the page defines."""

    name: str
    """As printed."""
    words: str
    """What the page says it means."""
    meaning: Meaning | None
    """None if the words are not read."""
    place: Span
    usual: str = ""
    """The stitch that these letters stand for elsewhere; empty for none."""

    def told(self) -> str:
        """Return what is assumed where it is used."""
        if self.meaning is None:
            said = stitch(self.usual).said
            return (
                f'"{self.name}" is worked as is usual ({said}); what the page says of it is not read: '
                f'"{self.words}".'
            )
        usual = f", and not as the usual {stitch(self.usual).said}" if self.usual else ""
        return f'"{self.name}" is worked as the page defines it: {self.meaning.text}{usual}.'

    def refusal(self) -> tuple[str, str]:
        """Return why a row that uses it is not read, and what to write."""
        return (
            f'"{self.name}" is an abbreviation of the page, and what it means is not read: "{self.words}".',
            f"Write its stitches under `abbreviations` at the top of the file, as in {self.name}: k2tog, yo. "
            'Or keep the row in its words, with its stitches behind it: "Own words: … 96 sts."',
        )


@dataclass(slots=True)
class Abbreviations:
    """The abbreviations that a page has defined so far."""

    known: dict[str, OwnStitch] = field(default_factory=dict)
    said: set[str] = field(default_factory=set)
    """Those that have been told."""
    confirmed: set[str] = field(default_factory=set)
    """Those that pages print for several stitches, and this one explains as they are read anyway.

    In small letters.
    """
    pattern: re.Pattern[str] | None = None
    """Finds any of them in a row; None while there are none."""

    def define(self, name: str, words: str, place: Span) -> Problem | None:
        """Take in what an abbreviation means.

        Returns:
            The problem, if the page means another stitch by letters that rows use in other ways; such a
            meaning is not taken in.
        """
        if name.lower() in _DOUBLE and _TELLS_DOUBLE.search(words):
            return None  # the rows know it as the stitch of a German short row
        if _NEEDLE_NAME.fullmatch(f"{name} {words}"):
            return None  # the rows know it as a needle
        entry = find_stitch(name.lower())
        meaning = read_meaning(self.put(words).text)
        usual = entry.code if entry is not None else ""
        if meaning is not None and meaning.order and _WORDS.match(name):
            return None  # the rows know it as that order
        if entry is not None and meaning is not None and _is_usual(entry.code, meaning):
            self.known.pop(name, None)
            if entry.code in _DOUBTFUL:
                self.confirmed.add(name.lower())
        elif usual in _CHANGES and meaning is None and changes_more(words):
            return place.problem(
                f'"{name}" is always read as {stitch(usual).said}; the page means "{words}" by it.',
                "Write the stitches it means in the rows that have it, and leave this entry out.",
            )
        elif usual in _MOVED and meaning is not None:
            return place.problem(
                f'"{name}" is always read as {stitch(usual).said}; the page means {meaning.text} by it.',
                f"Write {meaning.text} in the rows that have it, and leave this entry out.",
            )
        elif usual not in _MOVED:
            self.known[name] = OwnStitch(name, " ".join(words.split()), meaning, place, usual)
        self._find()
        return None

    def way_to_change(self, direction: int) -> OwnStitch | None:
        """Return the stitch in which the page makes a stitch more or less where a row says no other.

        Args:
            direction: +1 for an increase, -1 for a decrease.

        Returns:
            The first of its own for that; None if it explains none, or none that takes one stitch at the
            most, or two for a decrease.
        """
        own = {name.lower(): one for name, one in self.known.items()}
        for name in _WAYS[direction]:
            meaning = own[name].meaning if name in own else None
            if meaning is not None and meaning.change == direction and len(meaning.codes) == 1:
                return own[name]
        return None

    @property
    def tells_any(self) -> bool:
        """Whether rows are read by any of them otherwise than on a page that explains nothing."""
        return bool(self.known or self.confirmed)

    def explains(self, name: str) -> bool:
        """Return whether the page says what an abbreviation means that others print for several stitches."""
        return name.lower() in self.confirmed or any(name.lower() == known.lower() for known in self.known)

    def _find(self) -> None:
        names = sorted(self.known, key=lambda name: (-len(name), name))
        if not names:
            self.pattern = None
            return
        forms = "|".join(_form(name) for name in names)
        self.pattern = re.compile(
            rf"(?<![\w/&-])(?<!\bst\s)(?<!\bsts\s)(?P<name>{forms})(?![\w/&'’])(?!-\w)(?!\s+(?:rows?|rnds?|rounds?)\b)"
        )

    def find(self, name: str) -> OwnStitch:
        """Return the abbreviation that a row writes so."""
        return self.known.get(name) or next(
            one for each, one in self.known.items() if _letters(each) == _letters(name)
        )

    def single(self) -> dict[str, str]:
        """Return the abbreviations that stand for one stitch, each with its code, for the key of a chart."""
        return {
            name: one.meaning.codes[0]
            for name, one in self.known.items()
            if one.meaning is not None and len(one.meaning.codes) == 1
        }

    def used(self, text: str) -> list[OwnStitch]:
        """Return the abbreviations of the page that a row uses, in its order."""
        if self.pattern is None:
            return []
        found = (self.find(match["name"]) for match in self.pattern.finditer(text, _behind_label(text)))
        return list({one.name: one for one in found if not _is_a_change(one, text)}.values())

    def put(self, text: str) -> Reworded:
        """Put the stitches in place of the abbreviations of a row.

        A label keeps its words, as does what is called a row: "Work M1 round every 4th round".
        """
        made = [text[:0]]
        places: list[int] = []
        done = 0
        start = _behind_label(text)
        for match in self.pattern.finditer(text, start) if self.pattern is not None else ():
            one = self.find(match["name"])
            if one.meaning is None or _is_a_change(one, text):
                continue
            begin = match.start()
            verb = _VERB.search(text[start:begin])
            begin = start + verb.start() if verb is not None else begin
            words, end = _in_its_place(one.meaning, text, match.end())
            made += [text[done:begin], words]
            places += [*range(done, begin), *([match.start()] * len(words))]
            done = end
        made.append(text[done:])
        places += range(done, len(text) + 1)
        return Reworded("".join(made), tuple(places))

    def tell(self, line: Line, printed: Iterable[OwnStitch]) -> Line:
        """Return a line with what is assumed by the abbreviations it is the first to use."""
        fresh = [
            one for one in printed if one.name not in self.said and (one.meaning is not None or one.usual)
        ]
        if not fresh:
            return line
        if not line.only:  # a line for some sizes tells the others nothing
            self.said.update(one.name for one in fresh)
        told = tuple(Assumed(one.told(), line.place) for one in fresh)
        return replace(line, assumed=(*line.assumed, *told))


_CHANGES = ("inc", "dec")
_WAYS = {1: ("inc", "m1", "m"), -1: ("dec",)}
"""Names by which pages call the stitch that they increase or decrease in, the most general first.

Source: common practice.
"""
_MORE = regex(r"\b(?:inc|dec)\w*\.?\s+(?:by\s+)?(?:[2-9]|two|three|four)\b", re.I)


def changes_more(words: str) -> bool:
    """Return whether words mean a change of more than one stitch: "increase 2 sts"."""
    return bool(_MORE.search(words))


_VERB = regex(r"\b(?:work|make|do)\s+(?:an?\s+)?$", re.I)
_LABEL = regex(r"^[^:*(\[]{1,60}:")
_OVER = regex(r"\s+over\s+(?:the\s+)?(?:next\s+)?(\d+)\s*(?:sts?|stitches)\b", re.I)
_AGAIN = regex(
    r"\s*(?:\d+\s*(?:times|x\b)|(?:once|twice|(?:two|three)\s+times)\b|to\s+(?:end|last|m\b|marker)"
    r"|(?:across|around)\b|x\s*\d)",
    re.I,
)
_INTO_NEXT = regex(r"\.?\s+in(?:to)?\s+(?:the\s+)?(?:next|foll(?:owing)?)\s+st(?:itch)?\b", re.I)
_IN_BRACKETS = regex(r"\s*\(\s*(\d{1,2})\s*(?:times|x)\s*\)", re.I)
_NUMBER = regex(r"\s+(\d{1,2})(?=\s*[,.;\])*]|\s*$)")


def _behind_label(text: str) -> int:
    label = _LABEL.match(text)
    return label.end() if label is not None else 0


def _in_its_place(meaning: Meaning, text: str, end: int) -> tuple[str, int]:
    """Return what is written for an abbreviation that ends here, and where the row goes on behind it."""
    if meaning.order:
        return meaning.text, end
    over = _OVER.match(text, end)
    if over is not None and int(over[1]) == meaning.uses:
        end = over.end()
    into = _INTO_NEXT.match(text, end)
    if into is not None and meaning.uses == 1:
        end = into.end()
    number = _NUMBER.match(text, end) or _IN_BRACKETS.match(text, end)
    if number is not None:
        if len(set(meaning.codes)) > 1:
            return f"({meaning.text}) {number[1]} times", number.end()
        return Meaning(meaning.codes * int(number[1])).text if int(number[1]) else "", number.end()
    return (f"({meaning.text})" if _AGAIN.match(text, end) else meaning.text), end


_ALL_OVER = regex(
    r"\d|one\b|two\b|at\b|each\b|evenly\b|sts?\b|stitch|to\b|every\b|on\b|by\b|as\b|until\b|in\s+(?:this|the\s+same)\b",
    re.I,
)


def _is_a_change(one: OwnStitch, text: str) -> bool:
    """Return whether a row says by "inc" or "dec" that stitches come or go, and not that one is worked."""
    if one.usual not in ("inc", "dec") and one.name.lower() not in ("inc", "dec"):
        return False
    return any(
        _ALL_OVER.match(text[match.end() :].lstrip())
        for match in re.finditer(rf"\b{re.escape(one.name)}\b\.?", text, re.I)
    )


def _letters(name: str) -> str:
    """Return the letters of an abbreviation, without the stops of old leaflets between them."""
    return re.sub(r"[.\s]", "", name).lower()


def _form(name: str) -> str:
    """Return the expression for an abbreviation, in any case unless it would then be a word of rows."""
    spelt = re.escape(name)
    if "." in name:  # "w.f." of old leaflets, in a row with a stop behind it too
        spelt = spelt.replace(r"\.", r"\.\s?") + r"\.?"
    if len(name) < 2:  # a list prints its letters large: "O, over. N, narrow."
        return f"[{spelt}{name.lower()}]" if name in "NO" else spelt
    return spelt if _WORDS.match(name) else f"(?i:{spelt})"


def _is_usual(code: str, meaning: Meaning) -> bool:
    return _is_same(code, meaning) or _is_spelt_out(code, meaning)


def _is_same(code: str, meaning: Meaning) -> bool:
    """Return whether a meaning is the stitch that the letters stand for anyway, or one just like it."""
    if code in ("inc", "dec"):
        return False
    if len(set(meaning.codes)) != 1:
        return False
    (other,) = set(meaning.codes)
    if len(meaning.codes) > 1:
        return False
    return other == code or other == _crossed(code) or any({code, other} <= alike for alike in _ALIKE)


def _is_spelt_out(code: str, meaning: Meaning) -> bool:
    """Return whether a meaning only says the letters of a decrease: "slip, slip, knit" takes the two slipped.

    Source: common practice.
    """
    usual = stitch(code)
    if usual.kind is not Kind.DECREASE:
        return False
    slipped = [each.startswith("sl") for each in meaning.codes]
    last = stitch(meaning.codes[-1])
    again = slipped[:-1] == [True] * last.uses and last.kind is Kind.DECREASE and last.change == usual.change
    return meaning.change >= 0 or again


def _crossed(code: str) -> str:
    """Return what a cable by its number crosses: `c4f` is `2/2 lc`; nothing for other stitches."""
    cable = re.fullmatch(r"c(\d+)([fb])", code)
    if cable is None or int(cable.group(1)) % 2:
        return ""
    half = int(cable.group(1)) // 2
    return f"{half}/{half} {'lc' if cable.group(2) == 'f' else 'rc'}"
