"""Read what an abbreviation means on a page, told in words, as stitches. No I/O.

Theory of operation. Each way to tell a stitch in words is put into its abbreviation, one after the other, by
`stepper.project.own_stitches.stitches_told`; then the whole is read as a row is. A meaning is read only where
every word of it is accounted for, every stitch has its number, and nothing in it depends on the side, the
place in the row or a choice.
"""

from __future__ import annotations

import re
from functools import cache

from stepper.craft.stitches import Kind, stitch
from stepper.project.instructions import Line, Phrase
from stepper.project.own_stitches.crossings_told import name_bobble, put_crossings
from stepper.project.own_stitches.stitches_told import NUMBERS, TOLD, Made
from stepper.project.problems import Span
from stepper.project.reading.wording import Words, read_line, reads
from stepper.project.stitchwork import Element, Several, Work
from stepper.records import dataclass
from stepper.regex import regex


@dataclass(frozen=True, slots=True)
class Meaning:
    """What an abbreviation stands for."""

    codes: tuple[str, ...]
    """The stitches in their order, each as often as it is worked; none for an order."""
    order: str = ""
    """An order that rows give a number to, as "pick up and knit"; empty for stitches."""

    @property
    def text(self) -> str:
        """The stitches as a row has them: `k2tog, yo`; or the order."""
        if self.order:
            return self.order
        runs: list[tuple[str, int]] = []
        for code in self.codes:
            if runs and runs[-1][0] == code:
                runs[-1] = (code, runs[-1][1] + 1)
            else:
                runs.append((code, 1))
        return ", ".join(_written(code, times) for code, times in runs)

    @property
    def uses(self) -> int:
        """Stitches of the row before that it takes up."""
        return sum(stitch(code).uses for code in self.codes)

    @property
    def change(self) -> int:
        """Stitches gained or lost."""
        return sum(stitch(code).change for code in self.codes)


def _written(code: str, times: int) -> str:
    if code in ("k", "p"):
        return f"{code}{times}"
    if code in ("k tbl", "p tbl"):
        return f"{code[0]}{times} tbl"
    if code == "sl" or code.startswith("sl "):
        return f"sl {times}{code[2:]}"
    one = f"{code} st" if code.endswith(") in one") else code
    return ", ".join([one] * times)


@cache
def _words() -> tuple[tuple[re.Pattern[str], Made], ...]:
    """Return the rows, compiled when a page first defines something."""
    return tuple((re.compile(words, re.I), made) for words, made in TOLD)


_CLAIM = regex(
    r"\s*[(\[–-]?\s*(?:=\s*)?(?P<by>\d|one|two|three|four)\s+(?:sts?|stitch(?:es)?)\s+(?P<what>inc(?:reased|['’]?d)?|dec(?:reased|['’]?d)?|more|less|made|lost)"
    r"\.?\s*[)\]]?\s*\.?\s*$",
    re.I,
)
_LEANS = regex(
    r"\s*[(\[](?:(?:left|right)[- ]leaning|single|double|cent(?:re|er)d|decrease|increase|\s)+[)\]]",
    re.I,
)
_FOR_LOOKS = regex(
    r"\s*\((?:the\s+)?(?:middle|cent(?:er|re))\s+(?:st|stitch)\s+(?:lies|is|stands)\s+on\s+top\)"
    r"|[.;]\s*this\s+(?:makes|gives|creates|forms|leans)\b[^.\d]*\.?\s*$",
    re.I,
)
_DEPENDS = regex(
    r"\bor\b|\bif\b|\b[rw]s\b|\b(?:right|wrong)\s+side|\brows?\b|\brounds?\b|\brnds?\b|\blast\b|\bend\b|\brep(?:eat)?\b|\bcast\b|\bbind\b",
    re.I,
)
"""Words that make what is worked depend on the side or the place, or that repeat it until somewhere."""
_NO_PLACE = regex(r"\bin\s+the\s+row\s+below\b|\bas\s+if\s+(?=to\b)|\bround\s+(?:the\s+)?needle", re.I)
"""Words that look like one of those and are of the stitch itself."""
_NAMED_BEFORE = regex(r"^\s*(?P<name>[^:–;,()]{2,50}?)\s*(?::|–|\s-\s|\bas\s+follows\b:?)\s*(?=\S)")
_ORDER = regex(r"pick\s+up\s+and\s+(?:knit|purl)|bind\s+off|cast\s+(?:on|off)", re.I)
"""Orders that pages call by letters of their own: "PUK", "P/U"."""
_IN_BRACKETS = regex(r"(?P<name>[a-z][a-z ]{3,40}?)\s*\((?P<made>[^()]+)\)", re.I)
"""A name in full, and how it is worked in brackets: "double decrease (sl 1, k2tog, psso)"."""
_THAT_IS = regex(
    r"(?P<name>[a-z][a-z ]{2,30}?),\s+(?:that\s+is\s*,?|i\.e\.\s*,?|by)\s+(?P<made>[^.;:]+)", re.I
)
"""A name in full, and how it is worked behind it: "narrow, by knitting two together"."""
_STOPS = regex(r"\b([kp]|sl|sts?|tog|rep|wl|fwd)\.(?=[\s,;)]|$)|\b(p\.\s?s\.\s?s\.\s?o)\.?", re.I)
"""The full stops of old leaflets behind what is shortened."""
_CHANGES_BY = regex(
    r"^(?P<what>inc|dec)(?:reas(?:e|ing))?\.?(?:\s+(?:1|one|a)(?:\s+st(?:itch)?)?)?\.?\s*"
    r"(?:[,:]?\s*by\s+|[:,–]\s*|(?=\())(?=\S)",
    re.I,
)
"""What is said first of an increase or a decrease: that it is one."""
_NUMBER_WORDS = regex(r"\b(?:two|three|four|five|six)\b", re.I)
_WORKED = frozenset({Kind.PLAIN, Kind.INCREASE, Kind.DECREASE, Kind.CABLE})
_MOST = 24
"""An abbreviation is of so many stitches at most; what is longer is a row."""
_LONGEST = 400
_PLACE = Span(line=1, column=1)


def read_meaning(words: str) -> Meaning | None:
    """Read what an abbreviation means.

    Args:
        words: The words behind the abbreviation, its name in full before them or not: "slip edge: slip the
            first stitch purlwise with yarn in front".

    Returns:
        The stitches; None if the words are not all understood, if what is worked depends on where it is, or
        if a gain or loss that the words name is not that of the stitches.
    """
    if len(words) > _LONGEST:
        return None
    plain = _without_stops(" ".join(words.replace("’", "'").split())).strip(" .;,")
    claim = _CLAIM.search(plain)
    if claim is not None:
        plain = plain[: claim.start()].rstrip(" ,;")
    plain = _FOR_LOOKS.sub("", _LEANS.sub("", plain)).strip(" .;,")
    if _ORDER.fullmatch(plain):
        return Meaning((), order=" ".join(plain.lower().split()))
    changes = _CHANGES_BY.match(plain)
    if changes is not None:
        return _changing(plain[changes.end() :], changes, claim)
    found = _stitches(plain)
    inside = _IN_BRACKETS.fullmatch(plain) if found is None else None
    if inside is not None:
        found = _stitches(inside["made"])
        found = found if _stitches(inside["name"]) in (None, found) else None
    that_is = _THAT_IS.fullmatch(plain) if found is None else None
    if that_is is not None:
        found = _stitches(that_is["made"])
        found = found if found is not None and _stitches(that_is["name"]) in (None, found) else None
    named = _NAMED_BEFORE.match(plain)
    if found is None and named is not None and _stitches(named.group("name")) in (None, ["mb"]):
        found = _stitches(plain[named.end() :])
    if found is None or not 0 < len(found) <= _MOST:
        return None
    meaning = Meaning(tuple(found))
    return meaning if claim is None or _claimed(claim) == meaning.change else None


def _without_stops(words: str) -> str:
    """Return words as newer pages print them, without stops behind what is shortened."""
    plain = _STOPS.sub(lambda short: "psso" if short[2] else short[1], words)
    return re.sub(r"\b([kp]|sl)\s(?=\d)", r"\1", plain, flags=re.I) if plain != words else words


def _changing(words: str, said: re.Match[str], claim: re.Match[str] | None) -> Meaning | None:
    """Read how a change of one stitch is worked; None if the stitches come or go otherwise than is said."""
    bare = words[1:-1] if words.startswith("(") and words.find(")") == len(words) - 1 else words
    meaning = read_meaning(bare)
    one = 1 if said["what"].lower() == "inc" else -1
    said_alike = claim is None or _claimed(claim) == one
    return meaning if meaning is not None and said_alike and meaning.change == one else None


def _claimed(claim: re.Match[str]) -> int:
    by = claim.group("by").lower()
    number = int(NUMBERS.get(by, by))
    return number if claim.group("what").lower().startswith(("inc", "more", "made")) else -number


def _stitches(words: str) -> list[str] | None:
    """Return the stitches of words; None if they are not all read."""
    if _DEPENDS.search(_NO_PLACE.sub("", words)):
        return None
    words = put_crossings(_numbered(words))
    for pattern, made in _words():
        words = pattern.sub(made, words)
    words = name_bobble(words.strip(" ,."))
    if not reads(words):  # asked first: to find out why not takes long
        return None
    line = read_line(words, lambda offset, length: _PLACE, Words(sizes=1)).line
    return _codes(line) if line is not None else None


def _numbered(words: str) -> str:
    """Return words with the small numbers as figures."""
    return _NUMBER_WORDS.sub(lambda word: NUMBERS[word.group().lower()], words)


def _codes(line: Line) -> list[str] | None:
    """Return the stitches of a line that is one phrase of them, each with its number; None otherwise."""
    if len(line.sentences) != 1 or line.label or line.said or line.side or line.numbers:
        return None
    (phrase,) = line.sentences
    return _flat(phrase.elements) if isinstance(phrase, Phrase) else None


def _flat(elements: tuple[Element, ...]) -> list[str] | None:
    made: list[str] = []
    for one in elements:
        if isinstance(one, Several) and one.goal == "times" and one.times is not None and not one.reading:
            inner = _flat(one.elements)
            times = one.times.values[0]
        elif isinstance(one, Work) and one.yarn is None and not one.fabric and one.stitch != "pattern":
            inner, times = ([one.stitch] if stitch(one.stitch).kind in _WORKED else None), one.times.values[0]
        else:
            return None
        if inner is None or len(made) + times * len(inner) > 4 * _MOST:
            return None
        made += inner * times
    return made
