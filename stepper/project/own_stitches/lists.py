"""Find rows of a section that explain an abbreviation, and put stitches into those that use it. No I/O."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator

from stepper.craft.stitches import Kind, find_stitch
from stepper.project.own_stitches.abbreviations import Abbreviations, changes_more
from stepper.project.own_stitches.meaning import read_meaning
from stepper.project.problems import Problem, Span
from stepper.project.reading.own_words import is_own_row
from stepper.project.reading.parsing import NOTE, made_plain
from stepper.project.respelt import Respelt, Row
from stepper.records import dataclass
from stepper.regex import regex

_HEAD = regex(
    r"^\s*(?:(?:special|other|unusual|key\s+to|list\s+of|stitch|(?:explanation|meaning)s?\s+of(?:\s+the)?)\s+)?(?:abbreviations?|stitches|terms)(?:\s+used)?"
    r"(?:\s+in\s+(?:this|the)\s+pattern)?\s*(?::|-(?=\s)|\.\s*-+|$)\s*",
    re.I,
)
"""The head of a list, alone or with its first entry behind it."""
_SIGN = r"\s*(?:[=:\u2013\u2014]|-(?=\s))\s*"
_SHORT = (
    r"(?:(?:[A-Za-z]{1,4}\.){1,4}[A-Za-z]{1,4}|[A-Za-z][A-Za-z0-9/&]{0,7}(?:-[A-Za-z0-9]{1,3}|\s(?-i:[LR])\b)?|\d{1,2}/\d{1,2}(?:/\d{1,2})?\s?[LRlr][Pp]?[Cc])"
)
_LONG = r"[A-Za-z][\w'/ -]{2,40}?"
_ENTRY = regex(
    rf"^\W{{0,3}}(?:{_LONG}\s*[(\[](?P<behind>{_SHORT})[)\]]|(?P<name>{_SHORT})\.?(?:\s*[(\[](?P<long>{_LONG})[)\]])?)(?:{_SIGN}|(?<=[)\]])\s+(?=[A-Z][a-z]))"
    r"(?P<words>\S.*)$"
)
_BARE_ENTRY = regex(rf"^\W{{0,3}}(?P<behind>(?!))?(?P<name>{_SHORT})\s+(?P<words>[a-z][^;|]*)$")
_OTHER_ENTRY = regex(
    r"\W{0,3}[A-Za-z][\w()&]{0,9}(?:\s*[/,]\s*[A-Za-z][\w()&]{0,9}){0,4}\s*(?:[=\u2013\u2014]|-(?=\s))"
    r"|\W{0,3}[A-Za-z]\w{0,6}\(\S{1,3}\)\s*:"
)
"""A row of a list that explains words, and no stitch: "st(s) - stitch(es)", "pm / sm - place / slip"."""
_ENTRIES = regex(
    rf"[;.]\s+(?=(?:{_LONG}\s*\({_SHORT}\)|{_SHORT}(?:\s*\({_LONG}\))?)\s*=)|;\s+(?={_SHORT}\s*:)"
    rf"|,\s+(?={_SHORT}\s*=)|\s+\|\s+|;\s+(?=[A-Z]\w{{0,5}}\s+(?:sl|slip|pick|lift|knit|k)\b)"
    r"|;\s+(?=[A-Za-z]{1,8}\([a-z]{1,4}\)\s*=|[a-z]{1,5}\.?\s[a-z]{1,5}\.?\s*=)"
)
_BY_COMMAS = regex(rf"(?P<name>{_SHORT})\.?(?P<comma>,\s+)(?=[a-z])")
"""An entry of the old style: "inc., increase by working into front and back of st"."""
_FEWEST = 3
"""So many entries of that style in a row make a list of them. Source: chosen here."""
_NO_NAME = regex(
    r"(?:rows?|rnds?|rounds?|next|mc|cc\d?|size|note|nb|tip|[a-z]{1,2}\d*\s?mm|(?:cm|in|mm|rs|ws)"
    r"|body|back|fronts?|brim|crown|cuff|cuffs|hem|neck|collar|heel|foot|toe|leg|hand|thumb|band|yoke|rib|border|edging|hood|"
    r"sleeves?|shape|gauge|tension|needles?|yarn|chart|left|right|first|second|all|both|then|setup|set-up|sizes?)$",
    re.I,
)
"""What stands before a colon or an equals sign and is no stitch: rows, parts, yarns, measures."""
_ROW = regex(r"^\W*(?:next|rows?|rnds?|rounds?|\d(?!\d?/\d{1,2}(?:/\d{1,2})?\s?[lr]p?c\b))", re.I)
_VOCABULARY = regex(
    r"(?:k|p|st|sts|rep|rem|rnds?|rows?|rs|ws|mc|cc\d?|beg|cont|patt|tog|tbl|inc|dec|alt|foll|approx|bor|co|bo|cn|dpns?|"
    r"pm|sm|rm|sl|kwise|pwise|wyif|wyib|yo|psso|p2sso|m|ds|w&t|lh|rh|eor|meas|prev|sk|ch|n[1-5]|ndl)$",
    re.I,
)
"""Abbreviations of words that are read anyway."""
_A_LINE = regex(
    r"\b(?:until|rows?|rnds?|rounds?|rep(?:eat)?|cast|bind|end|last|sts\s+rem|remain|measures)\b|\*", re.I
)
"""Words of a line that is worked, which no list explains."""
_SHOUTED = regex(r"(?=.*[A-Z].*[A-Z0-9]|.*\d)[A-Za-z0-9/&-]+$")


def take_definitions(
    rows: list[Row],
    abbreviations: Abbreviations,
    names: Iterable[str],
    problems: list[Problem],
    respelt: Respelt,
) -> list[Row]:
    """Take the meanings of abbreviations off the rows of a section, and put stitches where they are used.

    Args:
        rows: The rows, each with its place.
        abbreviations: Those defined so far; what is found is added.
        names: Yarns, charts and gauges of the file, which are no stitches.
        problems: Gets what cannot be taken in.
        respelt: Gets the rows as they were.

    Returns:
        The rows that are left, with stitches in them; what is not read of a list stands in them as a note.
    """
    others = {name.lower() for name in names}
    made: list[Row] = []
    listed = False
    number = -1
    while number + 1 < len(rows):
        number += 1
        text, place = rows[number]
        plain = made_plain(text)
        if NOTE.match(plain) or is_own_row(plain):
            made.append((text, place))
            continue
        head = _HEAD.match(plain)
        if head is not None and _heads_list(plain[head.end() :], rows[number + 1 :], others):
            listed = True
            plain = plain[head.end() :]
            if not plain:
                continue
        while (
            listed and number + 1 < len(rows) and _ENTRY.match(plain) and goes_on(plain, rows[number + 1][0])
        ):
            number += 1
            plain = f"{plain} {made_plain(rows[number][0]).strip()}"
            text = f"{text} {rows[number][0].strip()}"
        entries = _entries(plain, others, listed=listed)
        listed = listed and bool(entries)
        for name, words in entries:
            problem = abbreviations.define(name, words, place) if words else None
            if problem is not None:
                problems.append(problem)
        if not entries:
            made.append(_put(text, place, abbreviations, respelt))
        elif any(
            name in abbreviations.known and abbreviations.known[name].meaning is None for name, _ in entries
        ):
            made.append((f"Note: {text.strip()}", place))
    return made


@dataclass(frozen=True, slots=True)
class Entry:
    """One abbreviation that a list explains."""

    name: str
    words: str
    read: bool
    """Whether its meaning is read as stitches."""


def entries_of(text: str) -> list[Entry]:
    """Return the abbreviations of stitches that a row of a list explains; all else in it is passed over."""
    plain = made_plain(text)
    head = _HEAD.match(plain)
    found = []
    for part in _parts(_with_signs(plain[head.end() :] if head is not None else plain)):
        entry = _ENTRY.match(part) or _bare_entry(part)
        name = (entry["behind"] or entry["name"]) if entry is not None else ""
        if entry is None or _ROW.match(part) or not can_be_name(name):
            continue
        read = read_meaning(entry["words"]) is not None
        usual = not changes_more(entry["words"]) and _VOCABULARY.match(name)
        if not read and (usual or not (_SHOUTED.match(name) or _is_shaped(name) or name.lower() == "inc")):
            continue
        found.append(Entry(name, entry["words"], read))
    return found


def _bare_entry(part: str) -> re.Match[str] | None:
    """Return an entry of a list set in columns, without a sign behind its name: "C6B sl next 3 sts to cn, …".

    Only where its words are stitches, and its name that of an increase, a decrease or a cable, or in
    capitals: any row of words looks like one otherwise.
    """
    entry = _BARE_ENTRY.match(part)
    if entry is None or not (_SHOUTED.match(entry["name"]) or _is_shaped(entry["name"])):
        return None
    if _VOCABULARY.match(entry["name"]) or _A_LINE.search(entry["words"]):
        return None  # "BO all sts. Row 1: Knit." orders, and explains nothing
    return entry if read_meaning(entry["words"]) is not None else None


def breaks_off(row: str) -> bool:
    """Return whether a row heads a list and ends amid an entry: "Terms.-K., knit; st., stitch; tog.,"."""
    plain = made_plain(row).strip()
    head = _HEAD.match(plain)
    return head is not None and head.end() < len(plain) and not plain.endswith((".", ":", ";"))


def goes_on(row: str, below: str = "") -> bool:
    """Return whether the meaning at the end of a row goes on in the row below."""
    plain = made_plain(below)
    if row.rstrip().endswith((".", ";")) or _ENTRY.match(plain) or _OTHER_ENTRY.match(plain):
        return False
    return bool(re.match(r"\s*[a-z(\[\d]", below))


def can_be_name(name: str) -> bool:
    """Return whether a name can be the abbreviation of a stitch: no row, no part, no yarn."""
    return (
        bool(re.fullmatch(_SHORT, name))
        and not _NO_NAME.match(name)
        and not re.fullmatch(r"[rw]s", name, re.I)
    )


def _put(text: str, place: Span, abbreviations: Abbreviations, respelt: Respelt) -> Row:
    used = abbreviations.used(text)
    if not used:
        return text, place
    reworded = abbreviations.put(text)
    respelt.put((text, place), reworded, own=tuple(used))
    return reworded.text, place


def _heads_list(rest: str, below: list[Row], others: set[str]) -> bool:
    """Return whether a row that looks like the head of a list has an entry behind or below it."""
    first = rest or (made_plain(below[0][0]) if below else "")
    return any(True for _ in _entries(first, others, listed=True))


def _entries(plain: str, others: set[str], *, listed: bool) -> list[tuple[str, str]]:
    """Return the abbreviations that a row explains, each with its words; none if it holds anything else."""
    found = list[tuple[str, str]]()
    signed = _with_signs(plain)
    commas, plain = signed != plain, signed
    listed = listed or commas
    for part in _parts(plain):
        entry = _ENTRY.match(part)
        name = (entry["behind"] or entry["name"]) if entry is not None else ""
        if entry is None or _ROW.match(part):
            return []
        words = entry["words"]
        if listed and _VOCABULARY.match(name) and not re.search(r"[\d*,]", words) and not read_meaning(words):
            found.append((name, ""))
            continue
        if commas and not read_meaning(words) and not _is_shaped(name):
            found.append((name, ""))
            continue
        equals = "=" in part[: entry.start("words")]
        if name.lower() == "dec" and not (equals and read_meaning(words)):
            return []
        if name.lower() in others or _NO_NAME.match(name) or not (listed or equals or _is_shaped(name)):
            return []
        sure = listed and (_SHOUTED.match(name) or find_stitch(name.lower()) is not None or len(name) < 4)
        if read_meaning(words) is None and (not sure or _A_LINE.search(words)):
            return []
        found.append((name, words))
    return found


def _with_signs(plain: str) -> str:
    """Return a list whose names have commas behind them with equals signs there; another as it is."""
    parts = re.split(r";\s+", plain.strip())
    if len(parts) < _FEWEST or not all(_BY_COMMAS.match(part) for part in parts):
        parts = re.split(rf"\.\s+(?={_SHORT},\s+[a-z])", plain.strip(), flags=re.A)
    if len(parts) < _FEWEST or not all(_BY_COMMAS.match(part) for part in parts):
        return plain
    return "; ".join(_BY_COMMAS.sub(r"\g<name> = ", part, count=1) for part in parts)


def _is_shaped(name: str) -> bool:
    """Return whether letters are those of an increase, a decrease or a cable, which name no line."""
    entry = find_stitch(name.lower())
    return entry is not None and entry.kind in (Kind.INCREASE, Kind.DECREASE, Kind.CABLE)


def _parts(plain: str) -> Iterator[str]:
    """Yield the entries of a row: "SE = slip 1; CDI = (k1, yo, k1) in next st".

    A name without a meaning, as in "M1 lift the bar; k2tog; ssk", is an entry too, no part of that before it.
    """
    start = 0
    for match in _ENTRIES.finditer(plain):
        yield from _named_apart(plain[start : match.start()])
        start = match.end()
    yield from _named_apart(plain[start:])


def _named_apart(part: str) -> list[str]:
    """Return an entry without the names behind it, and those."""
    first, *others = re.split(r";\s+", part)
    lone = [other for other in others if _is_shaped(other.strip(" ."))]
    return [first, *others] if lone and len(lone) == len(others) else [part]
