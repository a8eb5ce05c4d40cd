"""Find charts that a page draws by signs, one for each stitch: "2  . o o ." with ". = DC, o = LC". No I/O.

Theory of operation. Rows that hold nothing but single signs, with the number of the round at either side, are
a chart if two of them stand together; so are a row of stitch numbers at its head or foot and the row that
says what each sign is. Two rows that copying has run together are told by the number between them. A chart is
drawn with its first round at the bottom, and read from right to left, unless the page numbers it otherwise.
It is taken into the file where every row works the stitches that the row below it leaves, the numbers of
the rows leave none out, and every sign is explained as a yarn or a stitch; where anything is missing, it says
what. Source: chart conventions, common practice.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import field
from itertools import pairwise
from typing import Final

from stepper.craft.stitches import find_stitch
from stepper.project.own_stitches.meaning import read_meaning
from stepper.project.rewording.yarn_names import CALLED
from stepper.records import dataclass
from stepper.regex import regex

_MARGIN: Final = regex(r"(?:(?:rnd|round|row|r)\.?\s*)?(\d{1,3})[:.)]?$", re.I)
_LEGEND: Final = regex(
    r"(?:^|(?<=\s))(?P<sign>[^\s\d=])\s*(?:=|:(?=\s))\s*(?P<means>[A-Za-z][^=;,]*?)(?=\s*[;,.]?\s*$|\s*[;,]\s*\S\s*[=:]|\s+\S\s*=)"
)
_LEGEND_HEAD: Final = regex(r"\W*(?:(?:chart\s+)?key|legend|signs?|symbols?|explanation)\s*:?\s*", re.I)
_HEAD: Final = regex(r"chart\s+(?P<name>[A-Za-z0-9]{1,12})\b(?!\s*,)(?:[^.]|\bp\.\s*\d)*$", re.I)
_BARE_HEAD: Final = regex(r"(?:the\s+)?(?:[a-z]+\s+)?chart\s*:?$", re.I)
_YARN: Final = regex(
    rf"(?:in\s+)?(?P<yarn>(?-i:MC|CC\d?|[DLBP]C|C\d|[A-JL-OQ-Z])|{CALLED})(?:\s+(?:yarn|wool))?", re.I
)
_SIGNS: Final = regex(r"[^\d\s()\[\],;'\"|_]|[.xXoO#+*/\\@%&^~-]{4,}")
"""A square, or a row of them printed without spaces."""
_IN_YARN: Final = regex(r"\s+(?:in|with)\s+(?=\S+(?:\s+\S+)?$)", re.I)
NO_STITCH: Final = "_"
"""Drawn at the end of a row that has fewer stitches than others: none is worked there."""
_FEWEST: Final = 2
"""Rows of a chart, and signs of a row, at least."""
_MOST: Final = 400


@dataclass(frozen=True, slots=True, kw_only=True)
class GridChart:
    """A chart drawn by signs."""

    name: str
    """As the page calls it; empty if it has no name."""
    first: int
    """Its first row on the page, from 0: its heading, or its own."""
    last: int
    """The row behind it, from 0."""
    printed: tuple[tuple[int, str], ...]
    """What the page prints of it, heading and key among it: each row, from 0, with its words."""
    rows: tuple[str, ...]
    """Its rows from the top down, as signs without spaces."""
    key: tuple[tuple[str, str], ...]
    """What each sign means: a yarn in the page's words, or a stitch."""
    why: str
    """What is missing, as a sentence; empty if it is whole."""


@dataclass(slots=True, kw_only=True)
class _Draft:
    """A chart while its rows are gathered."""

    rows: list[tuple[int | None, str]] = field(default_factory=list)
    """The number of each row, if it has one, and its signs; from the top down."""
    feet: list[list[int]] = field(default_factory=list)
    """The numbers of the stitches, at its head and its foot."""
    legend: dict[str, str] = field(default_factory=dict)
    spaced: bool = False
    """Whether its signs stand apart; rows without spaces below a key are read by another form of charts."""
    unlike: str = ""
    """A sign that is explained twice, as two things; empty if none is."""

    def explain(self, told: Mapping[str, str]) -> None:
        """Take what some signs mean."""
        two = (sign for sign, means in told.items() if self.legend.get(sign, means).lower() != means.lower())
        self.unlike = self.unlike or next(two, "")
        self.legend |= told

    def signs(self) -> set[str]:
        """Return the signs drawn so far."""
        return {sign for _, line in self.rows for sign in line}


def find_grids(rows: Sequence[str]) -> dict[int, GridChart]:
    """Find the charts that a page draws by signs.

    Args:
        rows: The rows of the page, white space made single.

    Returns:
        The charts by the row that each begins with.
    """
    found: list[GridChart] = []
    at = 0
    while at < len(rows):
        draft, end = _drawn(rows, at)
        if draft is None:
            at += 1
            continue
        found.append(_made(rows, at, end, draft))
        at = end
    return {grid.first: grid for grid in found}


def _drawn(rows: Sequence[str], at: int) -> tuple[_Draft | None, int]:
    """Gather the chart that begins at a row; None if none does."""
    draft, end, blank = _Draft(), at, 0
    while end < len(rows) and len(draft.rows) < _MOST:
        if not rows[end]:
            blank += 1
            if blank > 1 and not draft.rows:
                break
            end += 1
            continue
        if blank > 1 and not _is_legend(rows[end], draft):
            break
        if not _take(rows[end], draft):
            break
        blank, end = 0, end + 1
    while end > at and not rows[end - 1]:
        end -= 1
    numbers = [number or 0 for number, _ in draft.rows]
    numbered = len(numbers) > _FEWEST and numbers == sorted(numbers, reverse=True) and all(numbers)
    told = bool(draft.legend) or numbered  # else it may be an ornament, or rows of stitches without commas
    whole = len(draft.rows) >= _FEWEST and told and draft.spaced and bool(rows[at])
    early = {match["sign"] for match in _LEGEND.finditer(rows[at])}  # a key above it, or another row
    whole = whole and (not early or not early.isdisjoint(draft.signs()))
    return (draft if whole else None), end


def _take(row: str, draft: _Draft) -> bool:
    """Take a row into a chart: signs and their numbers, stitch numbers, a legend, or signs and a legend."""
    legend = _LEGEND.search(row)
    bare = row[: legend.start()].strip() if legend is not None else row
    if legend is not None:
        bare = _LEGEND_HEAD.sub("", bare, count=1) if _LEGEND_HEAD.fullmatch(bare) else bare
    parts = _parts(bare) if bare else ([], [])
    if parts is None:
        explained = _told_signs(row, draft)
        draft.explain(explained)
        return bool(explained)
    numbers, lines = parts
    if legend is None and not lines and (len(numbers) < 3 or not _run(numbers)):
        return False
    told = list(_LEGEND.finditer(row)) if legend is not None else []
    if told and not _explains(told, bare, draft.signs() | {sign for _, line in lines for sign in line}):
        return False
    draft.explain({match["sign"]: match["means"].strip(" .") for match in told})
    draft.spaced = draft.spaced or (bool(lines) and " " in bare)
    draft.feet += [numbers] if numbers else []
    draft.rows += lines
    return True


def _explains(told: list[re.Match[str]], bare: str, signs: set[str]) -> bool:
    """Return whether what looks like a key is one: of the signs that are drawn, or above them all by itself.

    "A: cast on 24 sts" below a chart is a line of the pattern.
    """
    equal = all("=" in match.group() for match in told)
    named = {match["sign"] for match in told}
    if not signs:
        return equal and not bare
    return named <= signs or (equal and not named.isdisjoint(signs))


def _parts(row: str) -> tuple[list[int], list[tuple[int | None, str]]] | None:
    """Cut a row into the numbers of stitches before it and the rows of signs, each with its number."""
    tokens = [
        token
        for token in re.sub(r"\b(?:rnd|round|row)\.?\s*(?=\d)", "", row, flags=re.I).split()
        if token != "|"
    ]
    groups: list[tuple[list[int], str]] = [([], "")]
    for token in tokens:
        number = _MARGIN.match(token)
        if number is not None:
            if groups[-1][1]:
                groups.append(([], ""))
            groups[-1][0].append(int(number[1]))
        elif _SIGNS.fullmatch(token):
            groups[-1] = (groups[-1][0], groups[-1][1] + token)
        else:
            return None
    if not any(signs for _, signs in groups):
        return groups[0][0], []
    lines: list[tuple[int | None, str]] = []
    for numbers, signs in groups:
        if signs and len(signs) < _FEWEST:
            return None
        if signs:
            lines.append((numbers[-1] if numbers else None, signs))
        elif numbers and lines and len(numbers) == 1 and lines[-1][0] in (None, numbers[0]):
            lines[-1] = (numbers[0], lines[-1][1])  # the number stands behind its row
        else:
            return None
    return groups[0][0][:-1], lines


def _run(numbers: list[int]) -> bool:
    """Return whether numbers run one by one, upwards or downwards."""
    return all(abs(later - number) == 1 for number, later in pairwise(numbers))


def _told_signs(row: str, draft: _Draft) -> dict[str, str]:
    """Return the signs that a row explains without a sign between: "Signs: . colour 1  x colour 2"."""
    head = _LEGEND_HEAD.match(row)
    if head is None or not draft.rows:
        return {}
    signs = draft.signs()
    told: dict[str, list[str]] = {}
    sign = ""
    for token in row[head.end() :].split():
        if token in signs and token not in told:
            sign, told[token] = token, []
        elif sign:
            told[sign].append(token)
    return {each: " ".join(words).strip(" ,;") for each, words in told.items() if words}


def _is_legend(row: str, draft: _Draft) -> bool:
    return bool(draft.rows) and (bool(_LEGEND.search(row)) or _LEGEND_HEAD.match(row) is not None)


def _made(rows: Sequence[str], at: int, end: int, draft: _Draft) -> GridChart:
    """Make a chart of what was gathered, with what stands right above it as its name."""
    above = next((row for row in range(at - 1, max(at - 3, -1), -1) if rows[row]), None)
    head = _HEAD.match(rows[above]) if above is not None else None
    bare = above is not None and _BARE_HEAD.fullmatch(rows[above]) is not None
    named = above is not None and (head is not None or bare) and len(rows[above]) <= 60
    drawn, why = _in_order(draft)
    key = {sign: _meaning(words) for sign, words in draft.legend.items()}
    why = why or _explained_twice(draft) or _unexplained(drawn, draft.legend, key) or _uneven(drawn, key)
    widest = max(map(len, drawn))
    if not why and any(len(signs) < widest for signs in drawn):
        key[NO_STITCH] = "no stitch"
        drawn = [signs.rjust(widest, NO_STITCH) for signs in drawn]
    first = above if named and above is not None else at
    return GridChart(
        printed=tuple((row, rows[row]) for row in range(first, end) if rows[row]),
        name=head["name"].lower() if named and head is not None and not bare else "",
        first=first,
        last=end,
        rows=tuple(drawn),
        key=tuple(
            (sign, key[sign]) for sign in sorted({sign for row in drawn for sign in row}) if key.get(sign)
        ),
        why=why,
    )


def _in_order(draft: _Draft) -> tuple[list[str], str]:
    """Return the rows with the first round at the bottom, and what is wrong with their numbers."""
    drawn = [signs for _, signs in draft.rows]
    numbers = [number for number, _ in draft.rows if number is not None]
    if numbers and len(numbers) < len(drawn):
        return drawn, "some rows of this chart have a number, and others none."
    upwards = numbers == list(range(len(drawn), 0, -1))
    if numbers and not upwards and numbers != list(range(1, len(drawn) + 1)):
        return (
            drawn,
            f"the rows of this chart are numbered {', '.join(map(str, numbers[:6]))}: "
            "some are missing, or none is row 1.",
        )
    drawn = drawn if upwards or not numbers else drawn[::-1]
    for foot in draft.feet:
        if foot[0] == 1 and foot[-1] > 1:
            return (
                drawn,
                "the stitches of this chart are numbered from the left; a chart is read from the right.",
            )
        if len(foot) != len(drawn[-1]):
            return drawn, f"this chart numbers {len(foot)} stitches and draws {len(drawn[-1])}."
    return drawn, ""


def _meaning(words: str) -> str:
    """Return what a sign means: a yarn as the page calls it, a stitch, or both; empty if it is neither."""
    plain = re.sub(r"^(?:knit|k)\s+(?:in|with)\s+", "", " ".join(words.split()), flags=re.I)
    if is_yarn(plain):
        return _YARN.sub(r"\g<yarn>", plain)
    worked, _, yarn = _IN_YARN.sub("\n", plain).partition("\n")
    meaning = read_meaning(worked)
    found = find_stitch(worked.lower()) or (
        find_stitch(meaning.codes[0]) if meaning is not None and len(meaning.codes) == 1 else None
    )
    if found is None or (yarn and (" " in found.code or not is_yarn(yarn))):
        return ""
    return f"{yarn} {found.code}".strip()


def _uneven(drawn: list[str], key: Mapping[str, str]) -> str:
    """Return which row does not work the stitches that the one below leaves; empty if all do."""
    left = None
    for row, signs in enumerate(reversed(drawn), start=1):
        cells = [find_stitch(key[sign].split()[-1]) if not is_yarn(key[sign]) else None for sign in signs]
        used = sum(cell.uses if cell is not None else 1 for cell in cells)
        if left is not None and used != left:
            told = f"row {row} of this chart is drawn over {used} stitches, and row {row - 1} leaves {left}"
            return f"{told}: a sign is missing in one of them, or stands there twice."
        left = sum(cell.leaves if cell is not None else 1 for cell in cells)
    return ""


def is_yarn(words: str) -> bool:
    """Return whether words are a yarn, by its letters or as the page calls it."""
    return _YARN.fullmatch(words) is not None


def _explained_twice(draft: _Draft) -> str:
    """Return which sign of a chart means two things; empty if none does."""
    told = f'the page says two things of what "{draft.unlike}" means in this chart.'
    return told if draft.unlike else ""


def _unexplained(drawn: list[str], legend: Mapping[str, str], key: Mapping[str, str]) -> str:
    """Return which sign of a chart is not explained as a yarn or a stitch; empty if all are."""
    signs = dict.fromkeys(sign for row in drawn for sign in row)
    missing = [sign for sign in signs if sign not in legend]
    if missing:
        return f'the page does not say what "{missing[0]}" means in this chart.'
    unread = next((sign for sign in signs if not key[sign]), "")
    return (
        f'"{unread}" means "{legend[unread]}" in this chart, which is neither a yarn nor a stitch.'
        if unread
        else ""
    )
