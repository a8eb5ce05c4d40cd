"""Find what a printed pattern says before its first line: gauge, needles, yarns. No I/O.

Everything here is a guess from the words of a page. What is not found is left for the knitter to fill in.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace

from stepper.craft.needles import MM_SIZE, NEEDLE_ROLES, US_SIZE
from stepper.project.lengths import read_needle, read_number
from stepper.records import dataclass
from stepper.regex import regex

_NUMBER = r"\d+(?:\.\d+)?(?:\s?[½¼¾]|\s1/2)?"
_GAUGE = regex(
    rf"(?P<st>{_NUMBER})\s*(?:sts?|stitches)\b\.?\s*(?:and|&|,|x|×|by|/|\+)\s*(?P<rows>{_NUMBER})\s*"
    r"(?P<word>rows?|rnds?|rounds?)\b",
    re.I,
)
_INCH = r"(?:the\s+|an?\s+|one\s+|1\s+)(?:square\s+|sq\.?\s+)?inch\b"
_OVER = regex(
    rf"(?P<inch>{_INCH})|(?P<over>{_NUMBER})\s*(?:x\s*\d+\s*)?(?P<unit>cms?|in(?:ch(?:es)?)?\b|\"|″|”|'')",
    re.I,
)
_ALONE = regex(
    rf"(?<![\w.])(?P<number>{_NUMBER})\s*(?:(?P<st>sts?|stitches)|rows?|rnds?|rounds?)\b\.?\s*"
    r"(?:(?:in|on|with|of|worked)\b[^;=\n]{1,60}?\s*(?==))?"
    rf"(?:(?P<sure>=|/|per)|to|over|in)\s*(?:(?P<inch>{_INCH}|inch\b)|(?P<over>{_NUMBER})\s*(?P<unit>cms?|in(?:ch(?:es)?)?\b|\"|″|”|''))",
    re.I,
)
"""Stitches, or rows, over a length of their own: "22 sts = 4 in", "22 sts in moss on 4 mm = 10 cm"; with
its word also "5 sts to the inch"."""
_FABRIC = regex(
    r"\b(?:in|over|of)\s+(?:the\s+)?((?!the\b|all\b|each\b|one\b|sq(?:uare)?\b|wide\b|by\b)[a-z][a-z ]*?)"
    r"(?=\s+(?:on|with|using|before|after|worked|and|or|to|in)\b|\s*[,.;(]|\s*$)",
    re.I,
)
_NEEDLE = regex(
    rf"{MM_SIZE}\b|\b{US_SIZE}|\bsize\s+\d+(?:\.\d+)?\s*\(US\)", re.I
)
_COMPARED = regex(r"\b(?P<which>larger|bigger|smaller)(?:[ -]sized?)?\s+(?:[\w-]+\s+)?needles?\b", re.I)
"""A gauge on one of the two needles of the page, which it does not call by size."""
_SIZE_OF_PATTERN = regex(r"\b(?:charts?|repeats?|reps?|multiples?|motifs?|panels?)\b", re.I)
"""What a page calls that which has its stitches and rows without a length."""
_WORD_GAUGE = regex(r"\b(?:gauge|tension|swatch)\b", re.I)
_SKEIN = regex(
    r"(?P<g>\d+)\s*g(?:rams?|ms?)?\b\W{0,6}(?:=|per|/|,)?\s*(?P<m>\d+)\s*(?P<u>m|metres?|meters?|yds?"
    r"|yards?)\b|"
    r"(?P<m2>\d+)\s*(?P<u2>m|metres?|meters?|yds?|yards?)\b\W{0,6}(?:per|/|="
    r"|,)?\s*(?P<g2>\d+)\s*g(?:rams?|ms?)?\b",
    re.I,
)
_LETTERS = r"MC|CC\d?|[DLBP]C|[A-F]"
"""The letters of a yarn: main, contrast, dark, light, background, pattern; or the first of the alphabet."""
_KEYED = regex(
    rf"(?<![\w(])(?:yarn\s+|shade\s+|colou?r\s+)?({_LETTERS})\s*(?:[:=]|\s[–—-]\s)\s*([^;,.()\n]+)"
)
_AMOUNT = (
    r"\d+(?:\s*[(\[][\d\s,;.½¼¾-]+[)\]])*\s*(?:g|gr|gms?|grams?|oz|yds?|yards?|m|metres?|meters?|skeins?|balls?|hanks?)\b"
)
_WEIGHED = regex(
    rf"(?<![\w(])(?P<key>MC|CC\d?)\s*[:=–—-]?\s*{_AMOUNT}|{_AMOUNT}\s+(?:of\s+)?(?P<behind>MC|CC\d?)\b"
)
"""Yarns of a list of amounts: "MC 50 g, CC1 20 g", "50 g of MC"."""
_BRACKETED = regex(rf"([A-Za-z][A-Za-z' -]{{1,60}}?)\s*\(({_LETTERS})\)")
_ROLE_SHADED = regex(
    r"\b(?P<role>(?i:main|contrast(?:ing)?))\s+(?i:colou?r|shade)\s*(?P<number>[1-9])?\s*"
    r"\((?!(?-i:MC|CC\d?)\))(?P<name>[A-Za-z][A-Za-z' -]{2,})\)"
)
"""A yarn called by what it does, and its colour: "Main colour (grey): 5 balls"."""
_ROLE = regex(
    r"\b(?P<role>main|contrast(?:ing)?)\s+(?:colou?r|shade|yarn)\s*(?P<number>[1-9])?\s*(?:[:=]|\s[–—-]\s)|"
    r"(?<![\w(])(?-i:(?P<key>MC|CC\d?))\s*(?:[:=]|\s[–—-]\s)\s*(?:main|contrast(?:ing)?)\b",
    re.I,
)
"""A yarn called by what it does alone: "Main colour: 419 yds", "CC - contrast color"."""
_ROLE_LETTERED = regex(
    r"\b(?P<role>main|contrast(?:ing)?|background|accent)(?:\s+(?:colou?r|shade|yarn))?"
    r"\s*\((?P<letter>(?-i:MC|CC\d?|[A-Z]))\)",
    re.I,
)
"""A yarn called by what it does, and the letter of that: "Main (M)", "Contrast shade (C)"."""
_NUMBERED = regex(r"^\W*colou?r\s+(?P<number>[1-9])\s*[,:(=–—-]\s*(?P<name>[A-Za-z][A-Za-z' -]*)", re.I)
"""A yarn called by its number: "Colour 2, white: 2 balls"."""
_NAMED_BEHIND = regex(
    rf"^\W*(?:shade|colou?r|yarn)\s+({_LETTERS})\s*,\s*([A-Za-z][A-Za-z' -]*?)(?=\s*[:=])", re.I
)
"""A yarn called by its letter, and its colour behind it: "Colour A, peat: 300 g"."""
_SHADED = regex(rf"(?:\b(?:shade|colou?r|yarn)\s+|^\W*)({_LETTERS})\s*\(([^)\n]+)\)")
_INITIALLED = regex(
    r"(?<![\w.])(?P<key>[A-Z])\.?\s*[,=:]\s*(?P<name>[A-Z][a-z]{2,11})(?=\s*(?:[;.,]|$))"
)
"""A letter and a word with a capital behind it, as in a list of abbreviations."""
_LETTERED = regex(rf"\b(?i:shade|colou?r|yarn)\s+({_LETTERS})(?=\s*(?:[;,.:)\n]|$))")
"""A yarn called by its letter alone: "50 g in colour A"."""
_MEASURE = regex(
    r"\d\s*(?:cms?|mm|in|inch(?:es)?|\"|\u2033|\u201d)(?!\w)|\b(?:chest|bust|waist|hips?|length|width"
    r"|circumference|depth|height|"
    r"armhole|sleeve|shoulder|wrist|measurements?)\b|^[\d\s.,()\[\]:;-]+$",
    re.I,
)
"""Words after the letters of a schematic, which no yarn is called."""
YARN_WORDS = regex(
    r"\b(?:yarns?|wool|worsted|aran|chunky|bulky|fingering|sport(?:\s+weight)?|dk|double\s+knitting"
    r"|lace\s*weight|4[- ]?ply|[2-8]-ply|"
    r"merino|alpaca|cotton|silk|mohair|linen|acrylic|nylon|cashmere|skeins?|balls?|hanks?|cones?"
    r"|main\s+(?:shade|colou?r)|"
    r"contrast(?:ing)?\s+(?:shade|colou?r)|weight)\b|\b\d+(?:\s*[(\[][\d\s,;:–-]+[)\]])?\s*(?:g|gr|gms?|grams?|ozs?|yds?|yards?|metres"
    r"|meters)\b",
    re.I,
)
"""Signs of yarn: a weight, a fibre, a skein, grams, yards or metres."""
_METRES_IN_A_YARD = 0.9144
"""Source: the international yard, 1959."""


@dataclass(frozen=True, slots=True, kw_only=True)
class FoundGauge:
    """One gauge of the page, over 10 cm (or 4 in)."""

    name: str
    stitches: float
    rounds: float | None
    """None if the page gives its stitches alone."""
    needle_mm: float | None
    blocked: tuple[float, float] | None = None
    """Stitches and rounds after blocking."""


@dataclass(frozen=True, slots=True, kw_only=True)
class FoundYarn:
    """One yarn of the page."""

    key: str
    name: str
    grams: int | None = None
    metres: int | None = None


_UP_TO = regex(r"\d(?:[-\u2013\u2014]|\s+(?:to|or)\s+)$", re.I)
"""What stands before the second of two numbers, either of which may be meant: "22-24 sts"."""


def find_gauges(text: str) -> tuple[FoundGauge, ...]:
    """Find every gauge in running text, each with its needle, its fabric and its blocked gauge."""
    found: list[FoundGauge] = []
    matches = list(_GAUGE.finditer(text))
    told = False
    for at, match in enumerate(matches):
        end = matches[at + 1].start() if at + 1 < len(matches) else len(text)
        tail = _sentence(text[match.end() : end])
        lead = text[matches[at - 1].end() if at else 0 : match.start()][-80:]
        stitches, rounds = read_number(match.group("st")), read_number(match.group("rows"))
        if not stitches or not rounds or _UP_TO.search(lead):
            continue
        over = _OVER.search(tail) or _OVER.search(_last_sentence(lead))
        goes_on = told and "\n\n" not in lead
        told = _is_gauge(lead, tail, over, goes_on=goes_on)
        if not told:
            continue
        scale = _scale(over)
        stitches, rounds = round(stitches * scale, 2), round(rounds * scale, 2)
        if not (0 < stitches <= 200 and 0 < rounds <= 300):
            continue
        if re.search(r"block", _last_sentence(lead), re.I) and found and not re.search(r"before", lead, re.I):
            found[-1] = replace(found[-1], blocked=(stitches, rounds))
            continue
        name = _fabric(tail, lead)
        if any(name == other.name for other in found):
            name = f"{name} {len(found) + 1}"
        found.append(
            FoundGauge(
                name=name,
                stitches=stitches,
                rounds=rounds,
                needle_mm=_needle_of(tail, text) or _needle_of(_last_sentence(lead), text),
            )
        )
    return tuple(found) or _told_apart(text)


def _needle_of(words: str, text: str) -> float | None:
    """Return the needle that a gauge names, by its size or as one of the two of the page. Unit: mm.

    A list of needles that stands before the gauge names none for it.
    """
    named = find_needles(words)
    if named:
        return named[0] if len(named) == 1 else None
    compared = _COMPARED.search(words)
    sizes = find_needles(text) if compared is not None else ()
    if compared is None or len(sizes) != 2:
        return None
    return sizes[0] if compared.group("which").lower() == "smaller" else sizes[1]


def _told_apart(text: str) -> tuple[FoundGauge, ...]:
    """Return a gauge whose stitches stand over a length of their own, with the rows if those do too."""
    told: dict[str, float] = {}
    needle: float | None = None
    for match in _ALONE.finditer(text):
        number = read_number(match.group("number"))
        if _UP_TO.search(text[max(0, match.start("number") - 8) : match.start("number")]):
            continue
        line = _line_of(text, match)
        if number and not _SIZE_OF_PATTERN.search(line) and (match.group("sure") or _WORD_GAUGE.search(line)):
            told.setdefault("stitches" if match.group("st") else "rounds", round(number * _scale(match), 2))
            needle = needle or _needle_of(line, text)
    if not 0 < told.get("stitches", 0) <= 200:
        return ()
    return (FoundGauge(name="plain", stitches=told["stitches"], rounds=told.get("rounds"), needle_mm=needle),)


def _line_of(text: str, match: re.Match[str]) -> str:
    """Return the line of a number, with a heading that is its kind alone: "Gauge" above it."""
    begin = text.rfind("\n", 0, match.start()) + 1
    above = text[:begin].rstrip("\n").rsplit("\n", 1)[-1].strip()
    line = text[begin:].split("\n", 1)[0]
    return f"{above} {line}" if _WORD_GAUGE.fullmatch(above.rstrip(" :.-–—")) else line


def _is_gauge(lead: str, tail: str, over: re.Match[str] | None, *, goes_on: bool) -> bool:
    """Return whether stitches and rows are a gauge: with its length, its word, or behind another.

    "Chart A (8 sts x 5 rounds)" and "a multiple of 6 sts and 4 rows" are the size of a pattern; as a gauge
    they would make every length in it wrong.
    """
    line = lead.rsplit("\n", 1)[-1] + " " + tail.split("\n", 1)[0]
    if _WORD_GAUGE.search(line):
        return True
    return not _SIZE_OF_PATTERN.search(line) and bool(over or goes_on or _WORD_GAUGE.search(f"{lead} {tail}"))


def _sentence(text: str) -> str:
    """Return what stands before the end of a sentence or a paragraph, or before the next "Needles: …"."""
    return re.split(r"(?<!\d)(?<!\bsq)[.;](?!\d)|(?<!\bsq)\.\s|\n\n|\n(?=\s*[A-Z][A-Za-z ]{2,30}:)", text)[0]


def _last_sentence(text: str) -> str:
    return re.split(r"\.\s|;|\n\n", text)[-1]


def _scale(over: re.Match[str] | None) -> float:
    """Return the factor that brings a gauge to 10 cm, or to 4 in."""
    if over is not None and over.group("inch"):
        return 4.0
    value = read_number(over.group("over")) if over else None
    if over is None or not value:
        return 1.0
    base = 10.0 if over.group("unit").lower().startswith("c") else 4.0
    return base / value if 0.2 <= base / value <= 10 else 1.0


def _fabric(tail: str, lead: str) -> str:
    for part in (tail, _last_sentence(lead)):
        match = _FABRIC.search(part)
        words = " ".join(match.group(1).lower().split()) if match else ""
        words = re.sub(r"\s+(?:st|stitch|stitches)$", "", words)
        if words and len(words) <= 24 and not re.match(r"(?:inch|cm|mm|size|pattern$)", words):
            return "stockinette" if words in ("st", "stocking", "stocking st") else words
    return "plain"


def in_inches(text: str) -> bool:
    """Return whether the page measures in inches first: its gauge, or most of its lengths."""
    over = [_OVER.search(_sentence(text[match.end() :])) for match in _GAUGE.finditer(text)]
    units = [(match.group("unit") or "inch").lower()[0] for match in over if match]
    if not units and find_gauges(text):
        units = [(match.group("unit") or "inch").lower()[0] for match in _ALONE.finditer(text)]
    if units:
        return units[0] != "c"
    inches = len(re.findall(r"\d\s*(?:[½¼¾]\s*)?(?:in\b|inches|\"|″|”)", text))
    return inches > len(re.findall(r"\d\s*cms?\b", text))


_WIDE = regex(
    r"\b(?:buttons?|beads?|snaps?|toggles?|pom-?poms?|zips?|zippers?|ribbons?)\b,?(?:[^\S\n]+(?:approx\w*\.?|about))?"
    rf"[^\S\n]+{MM_SIZE}\b|{MM_SIZE}(?:[^\S\n]+[a-z]+)?[^\S\n]+(?:buttons?|beads?|snaps?|toggles?|pom-?poms?)\b",
    re.I,
)
"""How wide a button is: "9 buttons, 15 mm"."""
_FOR_PART = regex(
    rf"{MM_SIZE}[^,.;:\n\d]*?\b(?:only[^\S\n]+)?for[^\S\n]+(?:the[^\S\n]+)?(?:neck\w*|collar|edges?|edgings?|borders?|(?:button[-\s]?)?"
    r"bands?|cuffs?|i-?cords?|hem|straps?|(?:three|3)[-\s]needle[^\n.;,]*|(?:bind|cast)[-\s]*off|bo)\b",
    re.I,
)
"""A needle for one part alone, which says nothing of the rest: "3 mm circular for the neckband"."""


def find_needle(text: str) -> float | None:
    """Return the first needle size of running text that is not for one part alone. Unit: mm."""
    for match in _NEEDLE.finditer(_FOR_PART.sub(" ", _WIDE.sub(" ", text))):
        size = read_needle(match.group().replace("#", ""))
        if size is not None:
            return size
    return None


def find_needles(text: str) -> tuple[float, ...]:
    """Return every needle size of running text once, in order of size; crochet hooks are none. Unit: mm."""
    # From the beginning of a clause alone: looked for from every letter a long row takes seconds.
    spoken = re.sub(r"(?<![^,;.\n])[^,;.\n]*\bhooks?\b[^,;\n]*", " ", _WIDE.sub(" ", text), flags=re.I)
    found = (read_needle(match.group().replace("#", "")) for match in _NEEDLE.finditer(spoken))
    return tuple(sorted({size for size in found if size is not None}))


_USE = "|".join(f"(?P<{role}>{words})" for role, words in NEEDLE_ROLES.items())
_SP = r"[^\S\n]"
_FORM = rf"(?:{_SP}+(?:circulars?|circ\.?|needles?|dpns?|double[-\s]pointed|straight)\b)*"
_FOR = rf"(?:\bfor{_SP}+(?:the{_SP}+)?|\({_SP}*|[-–—:=]{_SP}*|,?{_SP}+)"
_ROLE_BEHIND = regex(rf"(?P<size>{MM_SIZE}\b|\b{US_SIZE}){_FORM}{_SP}*{_FOR}(?:{_USE})\b", re.I)
_ROLE_BEFORE = regex(
    rf"\b(?:{_USE})(?:[\s-]size)?{_FORM}{_SP}*[-–—:=(]{_SP}*(?P<size>{MM_SIZE}\b|{US_SIZE})", re.I
)
"""A needle with what it is for, on the same row: "3.5 mm (ribbing)", "Main needle: 4 mm"."""


def find_needle_names(text: str) -> dict[str, float]:
    """Return the needles that a text calls by their use, as in `NEEDLE_ROLES`, each of one size. Unit: mm."""
    found: dict[str, set[float]] = {}
    for match in (*_ROLE_BEHIND.finditer(text), *_ROLE_BEFORE.finditer(text)):
        size = read_needle(match["size"])
        if size is not None:
            found.setdefault(next(role for role in NEEDLE_ROLES if match[role]), set()).add(size)
    named = {name: sizes.pop() for name, sizes in found.items() if len(sizes) == 1}
    return named if len(set(named.values())) == len(named) else {}


def names_colours(text: str) -> bool:
    """Return whether a list explains colours by their first letters: "N., Navy; W., White"."""
    return len(_first_letters(text)) > 1


def _first_letters(text: str) -> list[tuple[str, str]]:
    """Return the letters of a list that stand for words that begin with them, each with its word."""
    pairs = ((match["key"], match["name"]) for match in _INITIALLED.finditer(text))
    return [(letter, word) for letter, word in pairs if letter == word[0]]


def _initialled(row: str, rows: Sequence[str]) -> Iterator[tuple[str, str]]:
    """Yield the colours that a row explains by their first letters, if other rows call two yarns so."""
    others = " ".join(each for each in rows if each != row).lower()
    named = _first_letters(row)
    called = sum(re.search(rf"\b{word.lower()}\b", others) is not None for _, word in named)
    if called > 1:
        yield from named


def find_yarns(rows: Sequence[str]) -> tuple[FoundYarn, ...]:
    """Find the yarns: the letters that the lines use, and their names.

    Args:
        rows: The rows of the page that mention yarn.

    Returns:
        The yarns; without letters one main yarn, if a row looks like yarn: a weight, a fibre, an amount.
    """
    found: dict[str, FoundYarn] = {}
    text = "\n".join(rows)
    for row in rows:
        for key, name in [
            *((match.group(1), match.group(2)) for match in _KEYED.finditer(row)),
            *((match.group(2), match.group(1)) for match in _BRACKETED.finditer(row)),
            *((f"C{match['number']}", match["name"]) for match in _NUMBERED.finditer(row)),
            *((match.group(1), match.group(2)) for match in _NAMED_BEHIND.finditer(row)),
            *((_key_in_role(match), match["name"]) for match in _ROLE_SHADED.finditer(row)),
            *((match.group(1), match.group(2)) for match in _SHADED.finditer(row)),
            *_initialled(row, rows),
        ]:
            clean = "" if _MEASURE.search(name) else _yarn_name(name)
            if clean and key not in found:
                found[key] = FoundYarn(key=key, name=clean)
    for match in _ROLE.finditer(text):
        key = match.group("key") or _key_in_role(match)
        is_main = key == "MC"
        known = any(each.startswith("CC") for each in found) if key == "CC" else key in found
        if not known:
            found[key] = FoundYarn(key=key, name="main yarn" if is_main else f"contrast {key[2:]}".strip())
    for match in _ROLE_LETTERED.finditer(text):
        key = match["letter"]
        found.setdefault(key, FoundYarn(key=key, name=f"{match['role'].lower()} yarn"))
    for match in _WEIGHED.finditer(text):
        key = match.group("key") or match.group("behind")
        name = "main yarn" if key == "MC" else f"contrast {key[2:]}".strip()
        found.setdefault(key, FoundYarn(key=key, name=name))
    for match in _LETTERED.finditer(text):
        found.setdefault(match.group(1), FoundYarn(key=match.group(1), name=f"colour {match.group(1)}"))
    if not found and YARN_WORDS.search(text):
        found["MC"] = FoundYarn(key="MC", name="main yarn")
    grams, metres = _skein(text)
    return tuple(replace(yarn, grams=grams, metres=metres) for yarn in found.values())


def _key_in_role(match: re.Match[str]) -> str:
    """Return the letters of a yarn that is called by what it does: `MC` for the main colour, `CC2`."""
    return "MC" if match["role"].lower() == "main" else f"CC{match['number'] or ''}"


def _skein(text: str) -> tuple[int | None, int | None]:
    """Return the weight and length of a skein, if the text says both. Units: g, m."""
    skein = _SKEIN.search(text)
    if skein is None:
        return None, None
    grams = int(skein.group("g") or skein.group("g2"))
    long = int(skein.group("m") or skein.group("m2"))
    yards = (skein.group("u") or skein.group("u2")).lower().startswith("y")
    metres = round(long * _METRES_IN_A_YARD) if yards else long
    return (grams, metres) if 0 < grams <= 2000 and 0 < metres <= 5000 else (None, None)


def _yarn_name(text: str) -> str:
    """Strip the amounts from the name of a yarn: "3 skeins oat" is oat."""
    text = re.sub(r"\d+(?:\s*[(\[][^)\]]*[)\]])?\s*(?:x\s*)?(?:skeins?|balls?|hanks?|g|m|yds?)?\b", " ", text)
    text = re.split(r"\b(?:in|of)\s+an?\s+", text)[-1]
    idle = r"\b(?:of|in|shade|colou?r|each|main|contrast|contrasting|approx|and|one)\b"
    text = re.sub(idle, " ", text, flags=re.I)
    words = re.findall(r"[A-Za-z][A-Za-z'-]*", text)
    return " ".join(words[-3:]).lower() if 0 < len(words) <= 8 else ""
