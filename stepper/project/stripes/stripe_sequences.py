"""Read the stripe sequences that a page defines, and the words of a row that call for one. No I/O.

"Stripe sequence: 4 rnds MC, 2 rnds CC." is no work. The rows that say "in stripe sequence" are read without
these words, as rows of their fabric, and keep which stripes they are worked in.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import field

from stepper.project.problems import Span
from stepper.project.reading.elements import WORDS
from stepper.project.rewording.reworded import Reworded
from stepper.project.stripes.striping import StripesCalled
from stepper.records import dataclass
from stepper.regex import regex

_NUMBERS = {word: number for number, word in enumerate(WORDS) if number}
_N = rf"(?:\d{{1,2}}|{'|'.join(_NUMBERS)})"
_ROUNDS = r"(?:rounds?|rnds?|rows?)"
_NAME = (
    r"(?:(?:(?!(?:of|in|the|with|to|and|by|your|this|a|an|rep|repeat|work|knit|purl|full|whole|entire|complete|all|keep"
    r"|keeping|continue|continuing|cont|rounds?|rnds?|rows?)\b)[a-z]+\s+)?(?:stripe|striped|striping|colou?r)\s+(?:sequence|pattern|patt|order|repeat)|stripes)"
)
_DEFINED = regex(
    rf"^\s*(?:work\s+(?:the\s+)?)?(?P<name>{_NAME})\b\s*(?:\([^()]*\))?\s*(?P<sign>[:=]|-(?=\s)|$)\s*", re.I
)
_USED = regex(
    r"[,;]?\s*\b(?:(?:while\s+)?(?:still\s+)?(?P<on>continu(?:e|ing)|cont|keep(?:ing)?(?:\s+to)?|maintain(?:ing)?|carry(?:ing)?\s+on)\s+)?"
    r"(?:(?:in|with|to|and|by|following|according\s+to|as\s+per)\s+)?(?:the\s+|your\s+)?"
    rf"(?P<name>{_NAME})(?:\s+(?P<set>as\s+(?:set|established|before|given|above)|correct(?:ly)?|throughout))?(?!\s+of\b)\s*,?",
    re.I,
)
_BEGIN = regex(
    r"[,;]?\s*\b(?i:beg(?:in(?:ning)?)?|start(?:ing)?)\.?\s+(?i:with|from|at|on)\s+(?:the\s+)?"
    rf"(?:(?P<round>(?:{_ROUNDS}\s+\d{{1,2}}|first\s+{_ROUNDS}|beginning|start))\s+of\s+(?:the\s+)?(?=(?i:{_NAME}))"
    rf"|(?:(?P<number>{_N})\s+{_ROUNDS}\s+(?:in|of|with)?\s*)?(?P<yarn>[A-Z][A-Za-z]?\d?)(?:\s+stripe)?(?=\s*,|\s+and\b|\s*\.?\s*$)\s*,?)",
)
_TIMES = regex(
    rf"^(?P<lead>\s*(?:then\s+)?)(?:work|repeat|rep|knit)\s+(?:the\s+)?(?:(?:full|whole|entire|complete)\s+)?(?:(?P<rows>\d{{1,3}})[-\s](?:row|rnd|round)\s+)?(?P<name>{_NAME})\s+"
    rf"(?P<times>once|twice|{_N}\s+times)(?P<more>\s+more)?(?P<after>\s*[.,]?\s*)$",
    re.I,
)
_UNTIL = regex(rf"^\s*(?:repeat|rep|work)\s+(?:the\s+)?(?P<name>{_NAME})\s+(?=until\b|for\b)", re.I)
_ALONE = regex(
    r"^\s*(?:is\s+|are\s+)?(?:(?:body|sleeves?|piece|hat|yoke)\s+(?:is|are)\s+)?(?:work(?:ed)?|knit(?:ted)?|continue|cont)?\W*(?:throughout)?\W*$",
    re.I,
)
_COUNTED = regex(
    rf"\s*[(\[]?\s*(?P<rows>\d{{1,3}})\s+{_ROUNDS}(?:\s+(?:total|in\s+(?:all|total)))?\s*[)\]]?\.?\s*", re.I
)
"""How many rows a sequence has, in a row of its own below it."""
_STRIPE_WORD = regex(r"\bstrip(?:e|ed|es|ing)\b", re.I)


@dataclass(frozen=True, slots=True)
class StripedRow:
    """A row without the words that call for stripes."""

    reworded: Reworded
    stripes: StripesCalled
    at: int
    """Where in the row the words stood, from 0."""


@dataclass(slots=True)
class StripeSequences:
    """The sequences that a page has defined so far, by their names in small letters."""

    known: dict[str, tuple[tuple[int, str], ...]] = field(default_factory=dict)

    def find(self, name: str) -> tuple[tuple[int, str], ...] | None:
        """Return the sequence that a line means: the one of that name, or the only one there is."""
        named = " ".join(name.lower().split())
        if named in self.known:
            return self.known[named]
        plain = re.fullmatch(
            r"stripes|(?:stripe|striped|striping)\s+(?:sequence|pattern|patt|order|repeat)", named
        )
        return next(iter(self.known.values())) if plain and len(self.known) == 1 else None

    @staticmethod
    def begins(row: str) -> bool:
        """Return whether a row may begin a definition; asked first, since most rows begin none."""
        return _DEFINED.match(row) is not None

    def take(self, rows: list[str], yarns: Iterable[str]) -> int:
        """Take a definition from the beginning of some rows.

        Args:
            rows: The rows, in plain signs.
            yarns: Keys and names of the yarns of the file.

        Returns:
            How many rows it takes; 0 if none begins there.
        """
        head = _DEFINED.match(rows[0])
        if head is None:
            return 0
        told = {yarn.lower() for yarn in yarns}
        listed, taken = rows[0][head.end() :].strip(), 1
        stripes = read_stripes(listed, told) if listed else None
        if not listed:
            while taken < len(rows) and (more := read_stripes(rows[taken], told)) is not None:
                stripes, taken = (*(stripes or ()), *more), taken + 1
            counted = _COUNTED.fullmatch(rows[taken]) if taken < len(rows) else None
            if counted is not None and int(counted["rows"]) == sum(number for number, _ in stripes or ()):
                taken += 1
        if not stripes or (listed and not head["sign"]):
            return 0
        self.known[" ".join(head["name"].lower().split())] = stripes
        return taken

    def call(self, row: str, place: Span) -> StripedRow | None:
        """Take the words that call for stripes out of a row.

        Returns:
            The row without them; None where it calls for no stripes, or says more of them than is read.
        """
        if not self.known or not _STRIPE_WORD.search(row):
            return None
        whole = _TIMES.match(row)
        if whole is not None:
            return self._whole(whole, row, place)
        begin = _BEGIN.search(row)
        start, first = None, ""
        cut: list[tuple[int, int]] = []
        if begin is not None:
            if begin["round"]:
                number = re.search(r"\d+", begin["round"])
                start = int(number.group()) - 1 if number is not None else 0
            else:
                first = begin["yarn"]
            cut.append(begin.span())
        used = list(_USED.finditer(row))
        if len(used) != 1:
            return None
        (match,) = used
        until = _UNTIL.match(row)
        if until is not None:
            cut.append((0, match.start()))
        stripes = self.find(match["name"])
        if stripes is None:
            return None
        goes_on = bool(match["on"]) or bool(
            match["set"] and re.match(r"as\s+(?:set|est|bef)|corr", match["set"], re.I)
        )
        lead = row[: match.start()].strip().lower()
        goes_on = goes_on or bool(re.match(r"(?:continue|cont|keep)\b", lead))
        called = StripesCalled(match["name"], stripes, place, start, first, goes_on)
        if start is not None and not 0 <= start < called.rounds:
            return None
        cut.append(match.span())
        return _without(row, sorted(cut), called)

    def _whole(self, match: re.Match[str], row: str, place: Span) -> StripedRow | None:
        stripes = self.find(match["name"])
        if stripes is None or (match["rows"] and int(match["rows"]) != sum(number for number, _ in stripes)):
            return None
        word = match["times"].lower().split()[0]
        times = {"once": 1, "twice": 2}.get(word) or _number(word)
        called = StripesCalled(match["name"], stripes, place, whole=True, goes_on=bool(match["more"]))
        words = f"{match['lead']}Work {times * called.rounds} rounds."
        at = match.start("name")
        return StripedRow(Reworded(words, (*([at] * len(words)), len(row))), called, 0)


def _without(row: str, cuts: list[tuple[int, int]], called: StripesCalled) -> StripedRow | None:
    """Cut the words that call for stripes out of a row, and say "work" where nothing else does."""
    text, places, done, at = "", list[int](), 0, 0
    for start, end in cuts:
        text += row[done:start]
        places += range(done, start)
        at, done = len(text), end
        if text.strip() and row[end : end + 1].isalnum() and not text.endswith(" "):
            text, places = f"{text} ", [*places, start]
    text += row[done:]
    places += range(done, len(row) + 1)
    if _STRIPE_WORD.search(text):
        return None  # it says more of its stripes than is read
    lead = len(text) - len(text.lstrip(" ,;"))
    text, places, at = text[lead:], places[lead:], max(0, at - lead)
    if _ALONE.match(text):
        return StripedRow(Reworded("", (0,)), called, 0)
    if re.match(r"(?:until|for)\b", text, re.I):
        text, places = f"Work {text}", [*([0] * 5), *places]
    working = re.match(r"working\s+(?=\S)", text, re.I)
    if working is not None:
        text, places = f"Work {text[working.end() :]}", [*places[:5], *places[working.end() :]]
    return StripedRow(Reworded(text[:1].upper() + text[1:], tuple(places)), called, min(at, len(text)))


_REPEATED = regex(
    r"\s*[,;.]?\s*(?:\b(?:rep(?:eat)?)\b\s*(?:from\s*\*|(?:these|this|the)\s+(?:\d+\s+)?(?:rounds?|rnds?|rows?|stripes?|sequence))?)\s*"
    r"(?:throughout|for\s+(?:stripe\s+)?(?:pattern|sequence))?\s*[.]?\s*$|\s*[,;.]?\s*\bthroughout\.?\s*$",
    re.I,
)
_GROUP = regex(
    rf"[(\[](?P<inner>[^()\[\]]+)[)\]]\s*(?:x\s*)?(?P<times>twice|{_N}\s*(?:times|x)|(?<=x\s)\d+|\d+)", re.I
)
_EACH = regex(
    rf"^(?P<n>{_N})\s+{_ROUNDS}\s+(?:each\s+)?(?:of\s+|in\s+)?(?:each\s+)?(?:of\s+)?(?P<yarns>[^;]+(?:\band\b|&)[^,;]+)$",
    re.I,
)
_STRIPE = regex(
    rf"^(?:work\s+|knit\s+|then\s+)*(?P<n>{_N})\s*(?:{_ROUNDS})?\s*(?:(?:in|of|with)\s+)?(?:(?:yarn|colou?r)\s+)?(?P<yarn>[A-Za-z]\w*(?:\s+[a-z]+)?)$"
    rf"|^(?P<behind>[A-Za-z]\w*)\s*[:-]?\s*(?P<m>{_N})\s*{_ROUNDS}$",
    re.I,
)
_NUMBERED = regex(
    rf"^{_ROUNDS}\s+(?P<from>\d{{1,2}})(?:\s*(?:-|to|and|&)\s*(?P<to>\d{{1,2}}))?\s*[:=-]?\s*(?:(?:in|with)\s+)?(?:(?:yarn|colou?r)\s+)?(?P<yarn>[A-Za-z]\w*)$",
    re.I,
)


def read_stripes(words: str, yarns: set[str]) -> tuple[tuple[int, str], ...] | None:
    """Read a list of stripes: "4 rnds MC, 2 rnds CC", "(2 rows A, 2 rows B) 3 times", "Rows 1-4: MC".

    Args:
        words: The list.
        yarns: Keys and names of the yarns of the file, in small letters; other words are taken for a yarn
            only where they are written like a key.

    Returns:
        Rounds and yarn of each stripe; None if anything in the list is not one.
    """
    plain = _REPEATED.sub("", words.strip()).strip(" .;")
    plain = re.sub(r"^\*\s*|\s*\*$", "", plain)
    made: list[tuple[int, str]] = []
    done = 0
    for group in _GROUP.finditer(plain):
        before = _listed(plain[done : group.start()], yarns)
        inner = _listed(group["inner"], yarns)
        times = (
            2 if group["times"].lower() == "twice" else _number(group["times"].lower().rstrip("x").split()[0])
        )
        if before is None or not inner or not 0 < times < 100:
            return None
        made += [*before, *inner * times]
        done = group.end()
    rest = _listed(plain[done:], yarns)
    if rest is None or not (made or rest):
        return None
    made += rest
    return tuple(made) if all(0 < number < 100 for number, _ in made) else None


def _listed(words: str, yarns: set[str]) -> list[tuple[int, str]] | None:
    """Return the stripes of a list without brackets; none for no words; None if anything is not a stripe."""
    each = _EACH.match(words.strip(" ,;."))
    if each is not None:
        names = [name for name in re.split(r"\s*(?:,|\band\b|&)\s*", each["yarns"]) if name]
        if all(_is_yarn(name, yarns) for name in names) and re.search(r"\beach\b", words, re.I):
            return [(_number(each["n"]), name) for name in names]
    made: list[tuple[int, str]] = []
    next_number = 1
    for part in re.split(
        r"\s*(?:[,;.](?:\s*(?:and|then)\b)?|\band\b|\bthen\b)\s*", _joined_numbers(words.strip(" ,;."))
    ):
        if not part.strip():
            continue
        numbered = _NUMBERED.match(part.strip())
        if numbered is not None:
            first, last = int(numbered["from"]), int(numbered["to"] or numbered["from"])
            if first != next_number or last < first or not _is_yarn(numbered["yarn"], yarns):
                return None
            made.append((last + 1 - first, numbered["yarn"]))
            next_number = last + 1
            continue
        stripe = _STRIPE.match(part.strip())
        yarn = (stripe["yarn"] or stripe["behind"]) if stripe is not None else ""
        if stripe is None or not _is_yarn(yarn, yarns):
            return None
        made.append((_number(stripe["n"] or stripe["m"]), yarn))
    return made


def _joined_numbers(words: str) -> str:
    """Write "rounds 5 and 6" as "rounds 5-6", so that the "and" joins no two stripes."""
    return re.sub(rf"({_ROUNDS}\s+\d+)\s+(?:and|&|to)\s+(?=\d)", r"\1-", words, flags=re.I)


def _is_yarn(name: str, yarns: set[str]) -> bool:
    return name.lower() in yarns or bool(re.fullmatch(r"MC|CC\d?|[A-Z]\d?", name))


def _number(word: str) -> int:
    return _NUMBERS.get(word.lower()) or int(re.sub(r"\D", "", word) or 0)
