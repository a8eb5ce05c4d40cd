"""Read counts that are told part by part: "40 sts: 20 for the back and 10 for each front". No I/O.

Theory of operation. Such a sentence holds nothing but numbers, the parts that they count and words that join them,
before or behind the numbers, in any order; so every word is looked at, and one that is none of these leaves the
sentence as it is printed. A number of no part, or "in all", is the count of all stitches: the plan checks it, as it
checks what lies between two markers. The parts are told. But where they are all the parts there are, they have to add
up to it in every size, each front counting twice; where they do not, one of the numbers is wrong, and nobody can
tell which. A part that is only one of several cannot be more than all. Source: common practice.
"""

from __future__ import annotations

import re
from dataclasses import replace
from itertools import product
from typing import Final

from stepper.project.rewording.reworded import Reworded, laid_anew
from stepper.project.rewording.synonym import word_set
from stepper.project.rewording.told.numbers import number_of
from stepper.records import dataclass
from stepper.regex import regex

_LIST: Final = r"\d+(?:\s*[(\[]\s*\d+(?:\s*[,;:/]\s*\d+)*\s*[)\]])?"
_STS: Final = r"(?:stitches|stitch|sts?)"
_TOKEN: Final = regex(
    rf"\s*(?:(?P<list>{_LIST})|(?P<word>[^\W\d_][\w'\u2019]*(?:-[a-z]+)*)|(?P<sign>[,;:=()\[\]&+-]))"
)
_JOINS: Final = word_set(
    "you now there are is will be should have has had 'll you'll you've got left remain remains rem "
    "remaining that that's this gives makes make which with the a an of them these those so and then "
    "total altogether in all on for at stitch stitches st sts count check counts number stitch-count "
    "your in-all we to come comes up made still unchanged"
)
"""Words that join the counts, or stand for the stitches."""
_PARTS: Final = word_set(
    "each both per every either front fronts back backs sleeve sleeves body yoke raglan raglans "
    "shoulder shoulders neck side sides end ends edge edges first second third fourth left right middle "
    "centre center outer inner marker markers section sections panel panels gusset gussets thumb palm "
    "hand instep sole heel foot top bottom half halves underarm underarms wedge wedges wing wings band bands steek "
    "before after between only upper lower button buttonhole seam seams tongue flap leg legs needle "
    "needles n1 n2 n3 n4"
)
"""Words that name the parts."""
_ON_NEEDLE: Final = regex(r"\b(?:needles?|n[1-4])\b|^(?:first|second|third)$", re.I)
_THINGS: Final = word_set(
    "needles markers sections panels wedges sides ends edges seams bands halves fronts backs sleeves "
    "legs"
)
"""What a number right before it counts, and no stitches."""
_ALL: Final = regex(r"\b(?:total|altogether|in\s+all)\b", re.I)
_EACH: Final = regex(r"\b(?:each|both|per|every|either)\b", re.I)
_MANY: Final = regex(r"\b(?:needles?|sections?|wedges?|panels?|markers?|seams?|raglans?)\b", re.I)
_ON_ALL: Final = regex(r"\s+on\s+(?:the\s+|your\s+|all\s+)?needles?\b(?=\s*[,;:.)(]|\s*$|\s+and\b)", re.I)
_BETWEEN: Final = regex(r"\s*between\s+(?:the\s+)?(?:two\s+)?(?:(?:thumb|gusset)\s+)?markers\s*", re.I)
_TRAILING: Final = regex(
    rf"(?P<goal>\b(?:until|till)\b[^.;]*?{_LIST}\s+(?:{_STS})\b[^.,;:()\d]*?)\s*[,;]\s*(?:and\s+|or\s+)?(?P<all>{_LIST}\s+{_STS})\s+(?:altogether|in\s+(?:all|total)|total)(?=\s*\)?\s*(?:[.]|$))",
    re.I,
)
"""All stitches told behind those that a part is worked up to."""
_DIVIDED: Final = regex(
    rf"(?P<stem>\b(?:until|till)\s+(?:there\s+are|you\s+have)\s+{_LIST}\s+{_STS}|\b(?:cast\s+on|co)\s+{_LIST}\s+{_STS}(?=[^.;]*(?:\bneedles?\b|,\s*(?:that(?:\s+is|'s)|which\s+is)\b)))"
    r"\s*[,;:(-]+\s*(?:that\s+(?:is|makes)|that's|which\s+is|i\.?\s?e\.?|so|with)?\s*(?P<parts>\d[^.;]*?)\s*\)?(?=\s*(?:[.]|$))",
    re.I,
)
"""The parts of what is cast on, or worked up to, behind it."""
_SENTENCE: Final = regex(r"(?:(?<=^)|(?<=[.!]\s))[^.!]+(?:[.!]|$)")
_COUNTED: Final = regex(r"^\s*all\s+(?:the\s+)?\d|\bcount\b|\btotal\b|\baltogether\b|\bin\s+all\b", re.I)
"""Words with which one number is of all stitches."""
_ALONE: Final = regex(
    rf"\s*(?:each|both)\s+(?:fronts?|backs?|sleeves?|body|yoke)\s*:\s*{_LIST}\s+{_STS}(?:\s+each)?\s*\.?\s*",
    re.I,
)
"""A line that counts one part of what is on the needles, and no more: "Each front: 35 sts"."""
_ALIKE: Final = regex(
    r"\s*(?:you|we|there|(?:the\s+)?(?:front|back|left|right|sleeves?|body)\b[^\d]*?\b(?:have|has))\b", re.I
)
"""How a sentence begins that says of several parts how many stitches each has."""
_LONGEST: Final = 260
_MOST: Final = 8


@dataclass(frozen=True, slots=True, kw_only=True)
class _Part:
    """One number of such a sentence, and what it counts."""

    numbers: tuple[int, ...]
    span: tuple[int, int]
    words: str

    @property
    def times(self) -> tuple[int, ...]:
        """How often it may be there: each front twice, each needle three or four times."""
        words = re.findall(r"[a-z]+", self.words)
        spelt = [number for word in words if (number := number_of(word)) is not None]
        if _EACH.search(self.words):
            if spelt:
                return tuple(spelt)
            named = len(
                set(
                    re.findall(
                        r"\b(?:front|back|palm|sole|instep|top|bottom|left|right|upper|lower)\b", self.words
                    )
                )
            )
            return tuple(range(2, 13)) if _MANY.search(self.words) else (max(2, named),)
        named = len(re.findall(r"\band\b", self.words)) + 1
        plural = re.search(r"\b(?:fronts|sleeves|sides|ends|shoulders|halves|backs|bands|legs)\b", self.words)
        return (1, 2) if plural or named > 1 else (1,)


@dataclass(frozen=True, slots=True, kw_only=True)
class CountsApart:
    """A sentence of counts told part by part."""

    total: _Part | None
    parts: tuple[_Part, ...]
    whole: bool
    """Whether the parts are all there are."""

    @property
    def doubt(self) -> str:
        """Why they cannot be right, as a sentence; empty if they can."""
        if self.total is None or not self.parts:
            return ""
        sizes = max(len(self.total.numbers), *(len(part.numbers) for part in self.parts))
        known = [
            part.numbers * (sizes if len(part.numbers) == 1 else 1) for part in (self.total, *self.parts)
        ]
        if any(len(numbers) != sizes for numbers in known):
            return ""
        total, *parts = known
        for times in product(*(part.times for part in self.parts)):
            sums = [
                sum(number * often for number, often in zip(column, times, strict=True))
                for column in zip(*parts, strict=True)
            ]
            if sums == list(total) or (
                not self.whole and all(some <= every for some, every in zip(sums, total, strict=True))
            ):
                return ""
        return "the parts that are counted do not come to the number of all stitches."


def counts_apart(sentence: str) -> CountsApart | None:
    """Read a sentence that only tells counts part by part; None if it says anything else, or one count only.

    Args:
        sentence: One sentence in plain signs, lists of sizes in one form.
    """
    plain = _ON_ALL.sub("", sentence.rstrip(" .!:"))
    if len(sentence) > _LONGEST or not re.search(r"\d", plain):
        return None
    if plain != sentence[: len(plain)]:
        return None if _ON_ALL.search(sentence) is None else counts_apart(_blank(sentence))
    found: list[tuple[re.Match[str] | None, list[str]]] = [(None, [])]
    at = 0
    while at < len(plain):
        token = _TOKEN.match(plain, at)
        if token is None:
            return None
        at = token.end()
        word = (token["word"] or token["sign"] or "").lower()
        if token["list"]:
            if found[-1][0] is not None and not found[-1][1]:
                return None  # "45 (46) 47" are sizes, of a length as well as of stitches
            found.append((token, []))
        elif token["word"] and word not in _JOINS and word not in _PARTS and number_of(word) is None:
            return None
        elif token["word"] == "A" and token.start("word"):
            return None  # a yarn by its letter
        else:
            found[-1][1].append(word)
    return _sorted(found)


def _blank(sentence: str) -> str:
    """Return a sentence with "on the needles" left white, every letter in its place."""
    return _ON_ALL.sub(lambda match: " " * len(match.group()), sentence)


def _sorted(found: list[tuple[re.Match[str] | None, list[str]]]) -> CountsApart | None:
    """Give each number the words that name its part: those behind it, or those before it where a part leads in."""
    counted = [match for match, _ in found if match is not None]
    words = [words for _, words in found]
    if not 1 <= len(counted) <= _MOST:
        return None
    every = [word for some in words for word in some]
    signs = "".join(word for word in every if not word[0].isalnum())
    first = _is_named(words[0])
    leads = first or _is_named(_led_in(words))
    groups = _named_before(words, leave=not first) if leads else words[1:]
    if not leads and any(
        some and some[0] in _THINGS and not {"st", "sts", "stitches"} & set(some[:3]) for some in words[1:]
    ):
        return None  # "6 markers in total"
    parts: list[_Part] = []
    total = None
    for match, named in zip(counted, groups, strict=True):
        of_part = [word for word in named if word in _PARTS or number_of(word) is not None or word in ("and", "the")]
        numbers = tuple(map(int, re.findall(r"\d+", match["list"])))
        said = re.sub(r"^(?:the|and)\s+|\s+(?:the|and)$", "", " ".join(of_part))
        part = _Part(numbers=numbers, span=match.span("list"), words=said)
        if _is_named(named) and _ALL.search(" ".join(named)):
            return None
        summed = "+" in signs and total is not None
        stated = len(counted) == 1 and words[0][:2] == ["count", ":"]  # "Count: 188 body sts" is what is in hand
        if (_is_named(named) and not stated) or summed:
            parts.append(part)
        elif total is None:
            total = part
        else:
            return None
    counts = {"st", "sts", "stitch", "stitches", "count", "total", "altogether", "all"} & set(every)
    if not counts and (not parts or (total is not None and not set(":=") & set(signs))):
        return None
    if any(_ON_NEEDLE.search(part.words) and "per" not in part.words.split() for part in parts):
        return None  # so the stitches are divided, which the plan has to know
    apart = any(re.search(r"\b(?:between|before|after|wings?)\b", part.words) for part in parts)
    whole = len(parts) > 1 or ":" in signs or any(_EACH.search(part.words) for part in parts)
    return CountsApart(total=total, parts=tuple(parts), whole=whole and not apart)


def _led_in(words: list[list[str]]) -> list[str]:
    """Return the words behind the first number that lead in the second: "60 sts; each sleeve 12, back 36"."""
    behind, trails = words[1], _is_named(words[-1])
    signs = (":",) if trails else (":", ";", "(", ",")  # "60 sts, front and back 18 each, 24 sleeves"
    at = next((behind.index(sign) for sign in signs if sign in behind), len(behind))
    return behind[at:] if len(words) > 2 else []


def _is_named(words: list[str]) -> bool:
    """Return whether some words name a part."""
    return any(word in _PARTS and not _EACH.fullmatch(word) for word in words) or "each" in words


def _named_before(words: list[list[str]], *, leave: bool) -> list[list[str]]:
    """Give each number the words before it, and "each" behind it: "fronts 35 each, back 72".

    Args:
        words: Those before the first number, and those behind each.
        leave: Whether the first number has no words, being that of all.
    """
    groups: list[list[str]] = []
    carried = [] if leave else words[0]
    for behind in words[1:]:
        # "35 each, back 72" and "35, 72 each" are of the number before it; ", each back 72" is of the one behind.
        near = behind[: 1 if behind[2:] and behind[2] in _PARTS else 2]
        own = [word for word in near if _EACH.fullmatch(word)] if carried else []
        stop = behind.index(":") if ":" in behind else 0
        totals = behind[: stop or None] if _ALL.search(" ".join(behind)) else []
        groups.append([*carried, *own, *totals])
        behind = behind[stop:]
        carried = [word for number, word in enumerate(behind) if not (number < 2 and word in own)]
    return groups


def write_counts_apart(line: Reworded) -> Reworded:
    """Write sentences of counts told part by part as the count of all stitches, and tell the parts.

    Returns:
        The line; the same if it has no such sentence, or the counts of one cannot be right.
    """
    line = _without_parts(_with_total_apart(line))
    alone = _ALONE.fullmatch(line.text) is not None
    for match in reversed(list(_SENTENCE.finditer(line.text))):
        apart = counts_apart(match.group())
        if apart is None or apart.doubt:
            continue
        if not (apart.total or len(apart.parts) > 1 or alone or _is_of_several(match.group(), apart)):
            continue
        if not apart.parts and not _COUNTED.search(match.group()):
            continue  # one count, as pages print it
        line = _written(line, match.start(), apart)
    return line


def _is_of_several(sentence: str, apart: CountsApart) -> bool:
    """Return whether one number is told to be that of each of several parts: "The front and back have 40 sts each"."""
    named = re.findall(r"\b(?:front|back|left|right|sleeves?|body|sides|halves)\b", apart.parts[0].words)
    return len(named) > 1 and bool(_EACH.search(apart.parts[0].words)) and _ALIKE.match(sentence) is not None


def _written(line: Reworded, start: int, apart: CountsApart) -> Reworded:
    """Put the counts that are checked for one sentence."""
    end = _SENTENCE.match(line.text, start)
    stop = end.end() if end is not None else len(line.text)
    between = [part for part in apart.parts if _BETWEEN.fullmatch(part.words) and len(apart.parts) == 1]
    counted = [*([apart.total] if apart.total is not None else []), *between]
    pieces: list[str | tuple[int, int]] = []
    for part in sorted(counted, key=lambda part: part.span):
        pieces += [" "] if pieces else []
        pieces.append((start + part.span[0], start + part.span[1]))
        pieces.append(" sts." if part is apart.total else " sts between markers.")
    rest = line.text[stop:]
    behind = stop + len(rest) - len(rest.lstrip())
    told = line.text[start:stop].strip(" .!:") if len(apart.parts) > len(between) else ""
    made = laid_anew(line, start, behind, [*pieces, " "] if rest else pieces)
    return replace(made, kept=(*made.kept, told)) if told else made


def _with_total_apart(line: Reworded) -> Reworded:
    """Write "until there are 17 sts between the markers, 64 sts altogether" as a goal and a count."""
    match = _TRAILING.search(line.text)
    if match is None:
        return line
    return laid_anew(line, match.end("goal"), match.end(), [". ", match.span("all")])


def _divided(match: re.Match[str]) -> CountsApart | None:
    """Read the parts of what is cast on or worked up to; None if they are something else."""
    stem = re.sub(r"^.*?(?=\d)", "", match["stem"])
    apart = counts_apart(f"{stem}: {match['parts']}")
    if apart is None or apart.total is None or not apart.parts:
        return None
    on_needles = any(_ON_NEEDLE.search(part.words) for part in apart.parts)
    # "24 sts; 12 sts per needle" divides them, which the plan has to know; "24 sts, that is 12 per needle" adds up.
    return None if on_needles and ";" in match.group() else apart


def _without_parts(line: Reworded) -> Reworded:
    """Take out the parts of what is cast on or worked up to, and tell them: "Cast on 20 sts, that is 10 per needle"."""
    match = _DIVIDED.search(line.text)
    apart = _divided(match) if match is not None else None
    if match is None or apart is None or apart.doubt:
        return line
    line = laid_anew(line, match.end("stem"), match.end(), [])
    return replace(line, kept=(*line.kept, match["parts"].strip()))


def counts_in_doubt(text: str) -> str:
    """Return why counts that a line tells part by part cannot be right; empty if they can.

    Args:
        text: The line in plain signs, lists of sizes in one form.
    """
    told = [counts_apart(match.group()) for match in _SENTENCE.finditer(text)]
    apart = [*told, *(_divided(match) for match in _DIVIDED.finditer(text))]
    return next((one.doubt for one in apart if one is not None and one.doubt), "")
