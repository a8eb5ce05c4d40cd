"""The same line in other signs: lists of sizes, lengths, counts, heads of rows, repeats, stitches, capitals and stops.

Each manner writes what a line says as another designer prints it, and never changes what it says: where a manner would
leave a second meaning ("64-72 sts" of two sizes, "with a" for the yarn A), it leaves the line as it is. Source of the
manners: common practice, UK and US, old and modern print. It is long because it is a table.
"""

from __future__ import annotations

import random
import re
from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass

FRACTIONS = {"½": "1/2", "¼": "1/4", "¾": "3/4", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8"}
_DECIMAL = {"½": ".5", "¼": ".25", "¾": ".75"}
_V = r"(?:\d+(?:\.\d+)?(?:[½¼¾⅛⅜⅝⅞]|st|nd|rd|th)?|[½¼¾])(?![\w½¼¾]|\.\d)"
_GROUP = rf"\s*,?\s*[(\[{{]\s*{_V}(?:\s*[,;:/–-]\s*{_V})*\s*[)\]}}]"
LIST = re.compile(
    rf"(?:(?<![\w.½¼¾/–-])|(?<=\b[kpKP]))(?:{_V}{_GROUP}(?:\s*{_V}{_GROUP}|{_GROUP}|\s+{_V}(?=\s+(?:sts?|stitches|times|rows|rnds|rounds|cm|in)\b))*|{_V}(?:([/-]){_V}(?:\1{_V})+))(?![\w/-])"
)
"""A list of sizes as pages print it: a number with brackets behind, or a chain of three or more."""
_ONE = re.compile(_V)
_SIGN = r"(?:cms?\b\.?|in(?:s|ch|ches)?\b\.?|\"|”|″)"
LENGTH = re.compile(
    r"(?<![\w.½¼¾/–-])(?P<much>(?:\d+(?:\.\d+)?(?:\s?[½¼¾⅛⅜⅝⅞])?|[½¼¾])(?:\s*[(\[{][\d\s.,;:/½¼¾⅛⅜⅝⅞–-]+[)\]}])*)\s*(?P<unit>cm|inches|inch|in|\")(?!\w|\s+(?:each|the|next|patt|pattern|st|all|total|same|every|last|first)\b)"
)
"""A length in one unit."""
_NO_LENGTH = re.compile(r"^\.?\s*(?:long\b|circ|needle|cable|x\b|×|wide|[(\[/=]|or\s+\d|,?\s*\d)", re.I)
"""What stands behind a length that is of a needle, or has its other unit already."""
COUNT = re.compile(
    r"^(?P<row>.*[^\s.;:,–—=(\[-])(?:\.\s+|\s+[–—-]\s+|[–—]|\s+=\s+|\.?\s+(?=[(\[]))(?P<open>[(\[])?"
    r"(?P<count>\d[\d\s(),;:/\[\]½-]*?\s*(?:sts|stitches)(?:\s+(?:rem|remain|inc'd|dec'd|increased|decreased|total))?)(?P<close>[)\]])?\.?$"
)
"""A row with the stitches it leaves behind it."""
_HEAD = re.compile(
    r"^(?P<what>Row|Rnd|Round)(?P<many>s?) (?P<first>\d+)(?:(?P<joint>\s?[-–]\s?|\s(?:and|to|&)\s)(?P<last>\d+))?(?: \((?P<side>RS|WS)\))?:\s+(?=\S)"
)
_NEXT = re.compile(r"^(?P<name>Next|[A-Z][a-z]+(?: [a-z]+)?) (?P<what>row|rnd|round)(?: \((?P<side>RS|WS)\))?:\s+(?=\S)")
_STARRED = re.compile(
    r"\*\s?(?P<body>[^*;]+?)\s?[;,]\s*(?P<rep>rep|repeat) from \*\s+(?P<end>to end(?: of (?:row|rnd|round))?|around|across(?: row)?|to last (?:\d+ )?sts?\b)"
)
_GROUPED = re.compile(r"[(\[](?P<body>(?!steps?\b)(?!\d+ rows?)[^()\[\]]*[a-z][^()\[\]]*)[)\]]\s*(?P<times>twice|\d+ times)(?! more)\b")
_STITCH = r"(?:(?:[kp]\d+(?:tog)?|sl\s?1|ssk|ssp|yo|m1[lrp]?|[kp]fb|psso|skp)\b)"

Write = Callable[[str, int], str]


@dataclass(frozen=True, slots=True)
class Manner:
    """One way to print something."""

    kind: str
    """What is printed: a designer has one manner of each kind."""
    name: str
    write: Write
    """Takes a line and the number of sizes."""


def _lists(write: Callable[[list[str]], str], least: int = 2) -> Write:
    def written(line: str, sizes: int) -> str:
        def one(match: re.Match[str]) -> str:
            values = _ONE.findall(match.group())
            if len(values) != sizes or sizes < least or _balance(match.group()):
                return match.group()
            return write(values)

        return LIST.sub(one, line)

    return written


def _balance(text: str) -> bool:
    return any(text.count(opened) != text.count(closed) for opened, closed in ("()", "[]", "{}"))


def _in_groups(values: list[str], opened: Sequence[str], joint: str, between: str) -> str:
    """Return sizes with their first before brackets, the rest in as many brackets as signs are given."""
    rest, number = values[1:], len(opened)
    each = -(-len(rest) // number)
    groups = [rest[at : at + each] for at in range(0, len(rest), each)]
    return values[0] + "".join(
        (" " if not at else between) + pair[0] + joint.join(group) + pair[1] for at, (group, pair) in enumerate(zip(groups, opened, strict=False))
    )


def _coming_and_going(values: list[str]) -> str:
    """Return sizes as "a (b, c) d (e, f)"."""
    parts = [values[at : at + 3] for at in range(0, len(values), 3)]
    return " ".join(part[0] + (f" ({', '.join(part[1:])})" if part[1:] else "") for part in parts)


LISTS: Mapping[str, Write] = {
    "a (b, c)": _lists(lambda v: f"{v[0]} ({', '.join(v[1:])})"),
    "a [b, c]": _lists(lambda v: f"{v[0]} [{', '.join(v[1:])}]"),
    "a {b, c}": _lists(lambda v: f"{v[0]} {{{', '.join(v[1:])}}}"),
    "a (b: c)": _lists(lambda v: f"{v[0]} ({': '.join(v[1:])})", 3),
    "a [b:c]": _lists(lambda v: f"{v[0]} [{':'.join(v[1:])}]", 3),
    "a [b : c]": _lists(lambda v: f"{v[0]} [{' : '.join(v[1:])}]", 3),
    "a (b; c)": _lists(lambda v: f"{v[0]} ({'; '.join(v[1:])})", 3),
    "a (b-c)": _lists(lambda v: f"{v[0]} ({'-'.join(v[1:])})", 3),
    "a (b – c)": _lists(lambda v: f"{v[0]} ({' – '.join(v[1:])})", 3),
    "a {b-c}": _lists(lambda v: f"{v[0]} {{{'-'.join(v[1:])}}}", 3),
    "a (b/c)": _lists(lambda v: f"{v[0]} ({'/'.join(v[1:])})", 3),
    "a-b-c": _lists("-".join, 3),
    "a–b–c": _lists("–".join, 3),
    "a - b - c": _lists(" - ".join, 3),
    "a/b/c": _lists("/".join, 3),
    "a / b / c": _lists(" / ".join, 3),
    "a(b, c)": _lists(lambda v: f"{v[0]}({', '.join(v[1:])})"),
    "a (b,c)": _lists(lambda v: f"{v[0]} ({','.join(v[1:])})"),
    "a(b,c)": _lists(lambda v: f"{v[0]}({','.join(v[1:])})"),
    "a ( b, c )": _lists(lambda v: f"{v[0]} ( {', '.join(v[1:])} )"),
    "a, (b, c)": _lists(lambda v: f"{v[0]}, ({', '.join(v[1:])})"),
    "(a, b, c)": _lists(lambda v: f"({', '.join(v)})", 3),
    "[a, b, c]": _lists(lambda v: f"[{', '.join(v)}]", 3),
    "a (b) (c)": _lists(lambda v: v[0] + "".join(f" ({one})" for one in v[1:]), 3),
    "a (b) c (d)": _lists(_coming_and_going, 4),
    "a (b, c) (d, e)": _lists(lambda v: _in_groups(v, ("()", "()"), ", ", " "), 4),
    "a (b, c)(d, e)": _lists(lambda v: _in_groups(v, ("()", "()"), ", ", ""), 4),
    "a (b, c) [d, e]": _lists(lambda v: _in_groups(v, ("()", "[]"), ", ", " "), 4),
    "a [b, c] (d, e)": _lists(lambda v: _in_groups(v, ("[]", "()"), ", ", " "), 4),
    "a (b) [c] {d}": _lists(lambda v: _in_groups(v, ("()", "[]", "{}"), ", ", " "), 4),
    "a (b:c) [d:e]": _lists(lambda v: _in_groups(v, ("()", "[]"), ":", " "), 4),
    "a (b, c), [d, e]": _lists(lambda v: _in_groups(v, ("()", "[]"), ", ", ", "), 4),
}  # fmt: skip


def _fractions(write: Callable[[str, str], str]) -> Write:
    def written(line: str, sizes: int) -> str:
        return re.sub(r"(\d*)\s?([½¼¾⅛⅜⅝⅞])", lambda match: (" " if match[0][0] == " " else "") + write(match[1], match[2]), line)

    return written


def _decimal(line: str, sizes: int) -> str:
    return re.sub(r"(\d*)\s?([½¼¾])", lambda match: (" " if match[0][0] == " " else "") + (match[1] or "0") + _DECIMAL[match[2]], line)


FRACTION: Mapping[str, Write] = {
    "2 1/2": _fractions(lambda whole, part: f"{whole} {FRACTIONS[part]}".strip()),
    "2-1/2": _fractions(lambda whole, part: f"{whole}-{FRACTIONS[part]}" if whole else FRACTIONS[part]),
    "2 ½": _fractions(lambda whole, part: f"{whole} {part}".strip()),
    "2.5": _decimal,
    "12½ cm": lambda line, sizes: re.sub(r"(\d)\.5(?=[\d\s.,;:()\[\]½-]*\s?cm)", r"\1½", line),
}


def _unit(inches: str, cms: str) -> Write:
    def written(line: str, sizes: int) -> str:
        def one(match: re.Match[str]) -> str:
            if re.match(r"\.?\s*(?:x\b|×|circ|needle|cable|long\b)", line[match.end() :], re.I):
                return match.group()
            if re.search(r"\b(?:in|in the|work)\s*$", match["much"]):
                return match.group()
            return match["much"] + (cms if match["unit"] == "cm" else inches)

        return LENGTH.sub(one, line)

    return written


UNITS: Mapping[str, Write] = {
    '" cm': _unit('"', "cm"),
    "” cms": _unit("”", " cms"),
    "″": _unit("″", " cm"),
    "in": _unit(" in", " cm"),
    "in.": _unit(" in.", " cm."),
    "inches": _unit(" inches", " centimetres"),
    "ins": _unit(" ins", "cms"),
    "inch": _unit(" inch", " centimeters"),
    "''": _unit("''", " cm"),
}


def _other(much: str, unit: str) -> str:
    """Return a length in the other unit, each number to the quarter of an inch or half a centimetre."""

    def one(match: re.Match[str]) -> str:
        number = match.group()
        value = float(number.rstrip("½¼¾⅛⅜⅝⅞") or 0) + {"½": 0.5, "¼": 0.25, "¾": 0.75}.get(number[-1], 0.0)
        if unit == "cm":
            quarters = max(1, round(value / 2.54 * 4))
            return (str(quarters // 4) if quarters >= 4 else "") + ("", "¼", "½", "¾")[quarters % 4]
        return f"{round(value * 2.54 * 2) / 2:g}"

    return re.sub(r"\d+(?:\.\d+)?[½¼¾]?|[½¼¾]", one, much)


def _both(write: Callable[[str, str], str], *, inches_first: bool) -> Write:
    def written(line: str, sizes: int) -> str:
        units = {match["unit"] for match in LENGTH.finditer(line)}
        if len(units) != 1 or re.search(r"\d\s*(?:mm\b|[⅛⅜⅝⅞])", line):
            return line

        def one(match: re.Match[str]) -> str:
            before, behind = line[: match.start()], line[match.end() :]
            if _NO_LENGTH.match(behind) or before.count("(") > before.count(")") or before.count("[") > before.count("]"):
                return match.group()
            metric = match["unit"] == "cm"
            other = _other(match["much"], match["unit"])
            cm, inch = (match["much"], other) if metric else (other, match["much"])
            return write(f"{inch}\"", f"{cm} cm") if inches_first else write(f"{cm} cm", f"{inch}\"")

        return LENGTH.sub(one, line)

    return written


BOTH: Mapping[str, Write] = {
    '2" / 5 cm': _both(lambda a, b: f"{a} / {b}", inches_first=True),
    '2"/5 cm': _both(lambda a, b: f"{a}/{b}", inches_first=True),
    '2" (5 cm)': _both(lambda a, b: f"{a} ({b})", inches_first=True),
    '2" [5 cm]': _both(lambda a, b: f"{a} [{b}]", inches_first=True),
    "2 in. (5 cm)": _both(lambda a, b: f"{a[:-1]} in. ({b})", inches_first=True),
    "2 inches [5 cm]": _both(lambda a, b: f"{a[:-1]} inches [{b}]", inches_first=True),
    "2 in / 5 cm": _both(lambda a, b: f"{a[:-1]} in / {b}", inches_first=True),
    '5 cm (2")': _both(lambda a, b: f"{a} ({b})", inches_first=False),
    "5 cm (2 in)": _both(lambda a, b: f"{a} ({b[:-1]} in)", inches_first=False),
    "5cm [2in]": _both(lambda a, b: f"{a.replace(' cm', 'cm')} [{b[:-1]}in]", inches_first=False),
    '5 cm / 2"': _both(lambda a, b: f"{a} / {b}", inches_first=False),
    "5 cm, 2 in": _both(lambda a, b: f"{a}, {b[:-1]} in", inches_first=False),
    "5cm/2in": _both(lambda a, b: f"{a.replace(' cm', 'cm')}/{b[:-1]}in", inches_first=False),
}


def _count(write: Callable[[str, str], str]) -> Write:
    def written(line: str, sizes: int) -> str:
        match = COUNT.match(line)
        if match is None or bool(match["open"]) != bool(match["close"]) or _balance(match["count"]):
            return line
        if re.search(r"\b(?:to last|of|over|next|for|on|last|\d [-–] \d+)$", match["row"]):
            return line
        return write(match["row"], match["count"])

    return written


COUNTS: Mapping[str, Write] = {
    ". 70 sts.": _count(lambda row, count: f"{row}. {count}."),
    ". 70 sts": _count(lambda row, count: f"{row}. {count}"),
    " — 70 sts.": _count(lambda row, count: f"{row} — {count}."),
    " – 70 sts": _count(lambda row, count: f"{row} – {count}"),
    "—70 sts.": _count(lambda row, count: f"{row}—{count}."),
    ". — 70 sts": _count(lambda row, count: f"{row}. — {count}"),
    " (70 sts)": _count(lambda row, count: f"{row} ({count})"),
    " (70 sts).": _count(lambda row, count: f"{row} ({count})."),
    ". (70 sts)": _count(lambda row, count: f"{row}. ({count})"),
    ". (70 sts.)": _count(lambda row, count: f"{row}. ({count}.)"),
    " [70 sts]": _count(lambda row, count: f"{row} [{count}]"),
    ". [70 sts].": _count(lambda row, count: f"{row}. [{count}]."),
    " {70 sts}": _count(lambda row, count: f"{row} {{{count}}}"),
    " = 70 sts": _count(lambda row, count: f"{row} = {count}"),
    ". = 70 sts.": _count(lambda row, count: f"{row}. = {count}."),
    " (= 70 sts)": _count(lambda row, count: f"{row} (= {count})"),
    "; 70 sts.": _count(lambda row, count: f"{row}; {count}."),
    ": 70 sts": _count(lambda row, count: f"{row}: {count}"),
    ", 70 sts.": _count(lambda row, count: f"{row}, {count}."),
    "... 70 sts": _count(lambda row, count: f"{row} ... {count}"),
    " -> 70 sts": _count(lambda row, count: f"{row} -> {count}"),
    " → 70 sts": _count(lambda row, count: f"{row} → {count}"),
    " // 70 sts": _count(lambda row, count: f"{row} // {count}"),
    " | 70 sts": _count(lambda row, count: f"{row} | {count}"),
    ". _70 sts_": _count(lambda row, count: f"{row}. _{count}_"),
}


def _ordinal(number: str) -> str:
    value = int(number)
    return number + ("th" if value % 100 in (11, 12, 13) else {1: "st", 2: "nd", 3: "rd"}.get(value % 10, "th"))


def _head(write: Callable[[str, str, str, str], str], *, rows: bool = False) -> Write:
    """Return a manner of heads.

    Args:
        write: Given the word, whether it is many, the numbers and the side.
        rows: Whether it is only for rows: "R1" does not say that it is a round, where nothing else says it.
    """

    def written(line: str, sizes: int) -> str:
        match = _HEAD.match(line)
        if match is None or (rows and match["what"] != "Row"):
            return line
        last = match["last"]
        numbers = match["first"] + (f"{match['joint']}{last}" if last else "")
        head = write(match["what"], "s" if match["many"] else "", numbers, match["side"] or "")
        return head + line[match.end() :]

    return written


def _sided(side: str, opened: str = "(", closed: str = ")") -> str:
    return f" {opened}{side}{closed}" if side else ""


def _ordinals(numbers: str) -> str:
    return re.sub(r"\d+", lambda match: _ordinal(match.group()), numbers)


HEADS: Mapping[str, Write] = {
    "R1:": _head(lambda what, s, n, side: f"R{n}{_sided(side)}: ", rows=True),
    "R1.": _head(lambda what, s, n, side: f"R{n}{_sided(side)}. ", rows=True),
    "R 1:": _head(lambda what, s, n, side: f"R {n}{_sided(side)}: ", rows=True),
    "ROW 1:": _head(lambda what, s, n, side: f"{(what + s).upper()} {n}{_sided(side)}: "),
    "row 1:": _head(lambda what, s, n, side: f"{(what + s).lower()} {n}{_sided(side)}: "),
    "Row 1.": _head(lambda what, s, n, side: f"{what}{s} {n}{_sided(side)}. "),
    "Row 1:-": _head(lambda what, s, n, side: f"{what}{s} {n}{_sided(side)}:- "),
    "Row 1:–": _head(lambda what, s, n, side: f"{what}{s} {n}{_sided(side)}:– "),
    "Row 1 -": _head(lambda what, s, n, side: f"{what}{s} {n}{_sided(side)} - "),
    "Row 1 –": _head(lambda what, s, n, side: f"{what}{s} {n}{_sided(side)} – "),
    "Row 1—": _head(lambda what, s, n, side: f"{what}{s} {n}{_sided(side)}—"),
    "Row 1.—": _head(lambda what, s, n, side: f"{what}{s} {n}{_sided(side)}.— "),
    "Row 1 :": _head(lambda what, s, n, side: f"{what}{s} {n}{_sided(side)} : "),
    "Row 1:no blank": _head(lambda what, s, n, side: f"{what}{s} {n}{_sided(side)}:"),
    "Row 1 =": _head(lambda what, s, n, side: f"{what}{s} {n}{_sided(side)} = "),
    "Row 1)": _head(lambda what, s, n, side: f"{what}{s} {n}{_sided(side)}) "),
    "Row 1 [RS]:": _head(lambda what, s, n, side: f"{what}{s} {n}{_sided(side, '[', ']')}: "),
    "Row 1 RS:": _head(lambda what, s, n, side: f"{what}{s} {n}{_sided(side, '', '')}: "),
    "Row 1, RS:": _head(lambda what, s, n, side: f"{what}{s} {n}{',' if side else ''}{_sided(side, '', '')}: "),
    "Row 1 - RS:": _head(lambda what, s, n, side: f"{what}{s} {n}{' -' if side else ''}{_sided(side, '', '')}: "),
    "Row 1: (RS)": _head(lambda what, s, n, side: f"{what}{s} {n}:{_sided(side)} "),
    "Row 1: (RS).": _head(lambda what, s, n, side: f"{what}{s} {n}:{_sided(side)}{'.' if side else ''} "),
    "(RS) Row 1:": _head(lambda what, s, n, side: f"{_sided(side).strip()} {what}{s} {n}: ".lstrip()),
    "Row #1:": _head(lambda what, s, n, side: f"{what}{s} #{n}{_sided(side)}: "),
    "Row1:": _head(lambda what, s, n, side: f"{what}{s}{n}{_sided(side)}: "),
    "1st row:": _head(lambda what, s, n, side: f"{_ordinals(n)} {what.lower()}{s}{_sided(side)}: "),
    "1st Row.": _head(lambda what, s, n, side: f"{_ordinals(n)} {what}{s}{_sided(side)}. "),
    "1st row:-": _head(lambda what, s, n, side: f"{_ordinals(n)} {what.lower()}{s}{_sided(side)}:- "),
    "1st row -": _head(lambda what, s, n, side: f"{_ordinals(n)} {what.lower()}{s}{_sided(side)} - "),
    "1ST ROW:": _head(lambda what, s, n, side: f"{_ordinals(n)} {what}{s}{_sided(side)}: ".upper()),
    "1st row no sign": _head(lambda what, s, n, side: f"{_ordinals(n)} {what.lower()}{s}{_sided(side)} "),
}


def _next(write: Callable[[str, str, str], str]) -> Write:
    def written(line: str, sizes: int) -> str:
        match = _NEXT.match(line)
        if match is None or match["name"] in ("Every", "Each", "All", "Last", "This"):
            return line
        return write(match["name"], match["what"], match["side"] or "") + line[match.end() :]

    return written


NEXT: Mapping[str, Write] = {
    "Next Row:": _next(lambda name, what, side: f"{name.title()} {what.title()}{_sided(side)}: "),
    "NEXT ROW:": _next(lambda name, what, side: f"{name} {what}{_sided(side)}: ".upper()),
    "next row:": _next(lambda name, what, side: f"{name} {what}{_sided(side)}: ".lower().replace("(rs)", "(RS)").replace("(ws)", "(WS)")),
    "Next row -": _next(lambda name, what, side: f"{name} {what}{_sided(side)} - "),
    "Next row –": _next(lambda name, what, side: f"{name} {what}{_sided(side)} – "),
    "Next row:-": _next(lambda name, what, side: f"{name} {what}{_sided(side)}:- "),
    "Next row.": _next(lambda name, what, side: f"{name} {what}{_sided(side)}. "),
    "Next row.—": _next(lambda name, what, side: f"{name} {what}{_sided(side)}.— "),
    "Next row [RS]:": _next(lambda name, what, side: f"{name} {what}{_sided(side, '[', ']')}: "),
    "Next row: (RS).": _next(lambda name, what, side: f"{name} {what}:{_sided(side)}{'.' if side else ''} "),
    "Next row RS:": _next(lambda name, what, side: f"{name} {what}{_sided(side, '', '')}: "),
    "Next row, RS:": _next(lambda name, what, side: f"{name} {what}{',' if side else ''}{_sided(side, '', '')}: "),
    "Next row :": _next(lambda name, what, side: f"{name} {what}{_sided(side)} : "),
    "Next row =": _next(lambda name, what, side: f"{name} {what}{_sided(side)} = "),
    "Next row-no blank": _next(lambda name, what, side: f"{name} {what}{_sided(side)}:"),
}


def _starred(write: Callable[[str, str, str], str], *, bare: bool = False, ends: bool = False) -> Write:
    """Return a manner of repeats.

    Args:
        write: Given the stitches, "rep" and how far.
        bare: Whether brackets stand around the stitches, which may then have none of their own.
        ends: Whether it is only for repeats to the end of the row.
    """

    def written(line: str, sizes: int) -> str:
        def one(match: re.Match[str]) -> str:
            if (bare and re.search(r"[()\[\]]", match["body"])) or line.count("*") != 2:
                return match.group()
            if ends and not re.match(r"to end|around|across", match["end"]):
                return match.group()
            body = match["body"]
            first = body[0].upper() if line[match.start() - 1 : match.start()] == "" and body[0].islower() else body[0]
            return write(first + body[1:], match["rep"], match["end"])

        return _STARRED.sub(one, line)

    return written


STARS: Mapping[str, Write] = {
    "*a; rep from * to end": _starred(lambda body, rep, end: f"*{body}; rep from * {end}"),
    "* a, rep from * to end": _starred(lambda body, rep, end: f"* {body}, rep from * {end}"),
    "*a - rep from * to end": _starred(lambda body, rep, end: f"*{body} - rep from * {end}"),
    "*a. Rep from * to end": _starred(lambda body, rep, end: f"*{body}. Rep from * {end}"),
    "*a; repeat from * to end": _starred(lambda body, rep, end: f"*{body}; repeat from * {end}"),
    "*a; rep. from * to end": _starred(lambda body, rep, end: f"*{body}; rep. from * {end}"),
    "*a* to end": _starred(lambda body, rep, end: f"*{body}* {end}"),
    "*a*, to end": _starred(lambda body, rep, end: f"*{body}*, {end}"),
    "*a* rep to end": _starred(lambda body, rep, end: f"*{body}* rep {end}"),
    "*a*, rep to end": _starred(lambda body, rep, end: f"*{body}*, rep {end}"),
    "*a*; repeat to end": _starred(lambda body, rep, end: f"*{body}*; repeat {end}"),
    "*a; rep to end": _starred(lambda body, rep, end: f"*{body}; rep {end}"),
    "*a*, rep between * * to end": _starred(lambda body, rep, end: f"*{body}*, rep between * * {end}"),
    "*a*; rep between *s to end": _starred(lambda body, rep, end: f"*{body}*; rep between *s {end}"),
    "*a*, rep from * to * to end": _starred(lambda body, rep, end: f"*{body}*, rep from * to * {end}"),
    "*a*; rep between stars to end": _starred(lambda body, rep, end: f"*{body}*; rep between asterisks {end}"),
    "*a*, rep from * to end": _starred(lambda body, rep, end: f"*{body}*, rep from * {end}"),
    "*a*": _starred(lambda body, rep, end: f"*{body}*", ends=True),
    "*a; rep from *": _starred(lambda body, rep, end: f"*{body}; rep from *", ends=True),
    "(a) to end": _starred(lambda body, rep, end: f"({body}) {end}", bare=True),
    "[a] to end": _starred(lambda body, rep, end: f"[{body}] {end}", bare=True),
    "{a} to end": _starred(lambda body, rep, end: f"{{{body}}} {end}", bare=True),
    "[a] rep to end": _starred(lambda body, rep, end: f"[{body}] rep {end}", bare=True),
    "(a), rep to end": _starred(lambda body, rep, end: f"({body}), rep {end}", bare=True),
    "[a]; repeat to end": _starred(lambda body, rep, end: f"[{body}]; repeat {end}", bare=True),
    "(a) rep from ( ) to end": _starred(lambda body, rep, end: f"rep ({body}) {end}", bare=True),
    "rep [a] to end": _starred(lambda body, rep, end: f"rep [{body}] {end}", bare=True),
    "+a; rep from + to end": _starred(lambda body, rep, end: f"+{body}; rep from + {end}"),
}  # fmt: skip


def _grouped(write: Callable[[str, str], str]) -> Write:
    def written(line: str, sizes: int) -> str:
        def one(match: re.Match[str]) -> str:
            number = "2" if match["times"] == "twice" else match["times"].split()[0]
            return write(match["body"], number)

        return _GROUPED.sub(one, line)

    return written


GROUPS: Mapping[str, Write] = {
    "(a) 3 times": _grouped(lambda body, n: f"({body}) {n} times"),
    "[a] 3 times": _grouped(lambda body, n: f"[{body}] {n} times"),
    "[a]3 times": _grouped(lambda body, n: f"[{body}]{n} times"),
    "{a} 3 times": _grouped(lambda body, n: f"{{{body}}} {n} times"),
    "[a] x 3": _grouped(lambda body, n: f"[{body}] x {n}"),
    "[a] x3": _grouped(lambda body, n: f"[{body}] x{n}"),
    "(a)x3": _grouped(lambda body, n: f"({body})x{n}"),
    "[a] ×3": _grouped(lambda body, n: f"[{body}] ×{n}"),
    "(a) × 3": _grouped(lambda body, n: f"({body}) × {n}"),
    "(a) 3x": _grouped(lambda body, n: f"({body}) {n}x"),
    "[a] 3 x": _grouped(lambda body, n: f"[{body}] {n} x"),
    "*a* 3 times": _grouped(lambda body, n: f"*{body}* {n} times"),
    "*a* x3": _grouped(lambda body, n: f"*{body}* x{n}"),
    "[a] (3 times)": _grouped(lambda body, n: f"[{body}] ({n} times)"),
    "[a], 3 times": _grouped(lambda body, n: f"[{body}], {n} times"),
    "[ a ] 3 times": _grouped(lambda body, n: f"[ {body} ] {n} times"),
}


def _stitches(single: str, together: str, *, low: bool = False, sign: Callable[[str], str] = str) -> Write:
    """Return a manner of stitches: `K` and `2` stand for the letter and number of each."""

    def written(line: str, sizes: int) -> str:
        def letter(match: re.Match[str]) -> str:
            return match[1].lower() if low else match[1].upper() if "K" in single else match[1]

        line = re.sub(r"\b([kKpP])([23])tog\b", lambda m: together.replace("K", letter(m)).replace("2", m[2]), line)
        line = re.sub(r"(?<![\w-])([kKpP])(\d+)(?!\w|[-/]\d)", lambda m: single.replace("K", letter(m)).replace("2", m[2]), line)
        return re.sub(rf"(?<![\w-]){_STITCH}(?!\w)", lambda m: sign(m.group()) if not re.match(r"[kp]\d", m.group()) else m.group(), line)

    return written


def _upper(stitch: str) -> str:
    return stitch.upper()


STITCHES: Mapping[str, Write] = {
    "K2, K2TOG, SSK": _stitches("K2", "K2TOG", sign=_upper),
    "K2, K2tog, SSK": _stitches("K2", "K2tog", sign=_upper),
    "k2, k2tog": _stitches("K2", "K2tog", low=True),
    "K 2, K 2 tog": _stitches("K 2", "K 2 tog", sign=str.capitalize),
    "k 2, k 2 tog": _stitches("K 2", "K 2 tog", low=True),
    "k2, k2 tog": _stitches("K2", "K2 tog", low=True),
    "k. 2, k. 2 tog.": _stitches("K. 2", "K. 2 tog.", low=True),
    "k.2, k.2 tog.": _stitches("K.2", "K.2 tog.", low=True),
    "K2, K2tog.": _stitches("K2", "K2tog."),
    "k2, k2tog., y.o.": _stitches("K2", "K2tog.", low=True, sign=lambda one: {"yo": "y.o.", "psso": "p.s.s.o."}.get(one, one)),
    "K2, K2-tog": _stitches("K2", "K2-tog"),
    "sl 1, M 1": _stitches("K2", "K2tog", sign=lambda one: re.sub(r"^(sl|m)(?=\d)", lambda m: f"{m[1].capitalize()} ", one)),
    "m1-l": _stitches("K2", "K2tog", sign=lambda one: re.sub(r"^m1([lr])$", r"M1-\1", one).upper()),
    "M1 L": _stitches("K2", "K2tog", sign=lambda one: re.sub(r"^m1([lr])$", r"M1 \1", one).upper()),
    "2k": lambda line, sizes: re.sub(r"(?<![\w-])([kp])(\d+)(?=,| |;|$|\.)(?! rib| tog)", r"\2\1", line),
}  # fmt: skip


def _between(joint: str) -> Write:
    def written(line: str, sizes: int) -> str:
        if not re.search(rf"{_STITCH}, ", line, re.I):
            return line
        return re.sub(rf"(?i)({_STITCH}|\b[kp] to (?:end|last \d+ sts?)), (?=(?-i:[a-z]))(?={_STITCH}|[kp] to )", lambda m: m[1] + joint, line)

    return written


def _stops_between(line: str, sizes: int) -> str:
    """Return a row with full stops between its stitches, each with a capital, as old print has it."""
    if not re.match(r"^(?:[\w ]+(?: \([RW]S\))?: )?\*?[kp]\d", line, re.I):
        return line
    return re.sub(rf"(?i)({_STITCH}), (?={_STITCH})([a-z])", lambda m: f"{m[1]}. {m[2].upper()}", line)


JOINTS: Mapping[str, Write] = {
    "k2,p2": _between(","),
    "k2 p2": _between(" "),
    "k2; p2": _between("; "),
    "K2. P2": _stops_between,
    "k2 , p2": _between(" , "),
}

_SHORT = re.compile(
    r"\b(sts?|rep|rem|beg|foll|alt|inc|dec|patt|rnds?|cont|tog|approx|pat)\b(?![.'’-])(?=\s+[a-z\d(*])(?<!st st)", re.I
)


def _short_stops(line: str, sizes: int) -> str:
    line = re.sub(r"\bst st\b", "st.st", line)
    return _SHORT.sub(r"\1.", line)


def _loud(line: str, sizes: int) -> str:
    return line if re.search(r"\b(?:m|v)\b|chart", line) else line.upper()


def _quiet(line: str, sizes: int) -> str:
    return line if re.search(r"\b(?:[A-HMLS]|MC|CC\d?|XL|N\d|CO|BO)\b|[A-Z]\d|chart", line) else line[0] + line[1:].lower()


def _small(line: str, sizes: int) -> str:
    return line if re.search(r"\b(?:[A-HMLS]|MC|CC\d?|XL|N\d)\b|[.!] [A-Z]|chart", line) else line[0].lower() + line[1:]


PRINT: Mapping[str, Write] = {
    "LOUD": _loud,
    "small first letter": _small,
    "all small": _quiet,
    "no stop": lambda line, sizes: line.rstrip("."),
    "stop": lambda line, sizes: line if line[-1:] in ".:;,*!?" else f"{line}.",
    " .": lambda line, sizes: re.sub(r"\.$", " .", line),
    "sts. rep.": _short_stops,
    "1–4": lambda line, sizes: re.sub(r"(?<=\d)-(?=\d)(?!\d/\d)", "–", line),
    "1 - 4": lambda line, sizes: re.sub(r"\b((?:Row|Rnd|Round|row|rnd|round)s \d+)[-–](?=\d)", r"\1 - ", line),
    "’": lambda line, sizes: line.replace("'", "’"),
    "two blanks": lambda line, sizes: re.sub(r"([.;:]) ", r"\1  ", line),
    "hard blanks": lambda line, sizes: re.sub(r"(?<=\d) (?=[a-z])", "\u00a0", line),
}

_KINDS: Mapping[str, Mapping[str, Write]] = {
    "lists": LISTS, "fractions": FRACTION, "units": UNITS, "both units": BOTH, "counts": COUNTS, "heads": HEADS,
    "next": NEXT, "stars": STARS, "groups": GROUPS, "stitches": STITCHES, "joints": JOINTS, "print": PRINT,
}  # fmt: skip
MANNERS: tuple[Manner, ...] = tuple(Manner(kind, name, write) for kind, manners in _KINDS.items() for name, write in manners.items())
"""Every manner, by kind."""


def of_kind(kind: str) -> list[Manner]:
    """Return the manners of a kind."""
    return [manner for manner in MANNERS if manner.kind == kind]


def designer(chance: random.Random, most: int = 4) -> tuple[Manner, ...]:
    """Return the manners of one designer of a whole page, of some kinds drawn by chance, in the order in which they are put on.

    No page has all its letters large or all small, and one that gives a second unit has another unit for its first.
    """
    drawn = set(chance.sample([kind for kind in _KINDS if kind != "both units"], most))
    no_page = ("LOUD", "all small", "small first letter", "no stop")
    return tuple(
        chance.choice([manner for manner in of_kind(kind) if manner.name not in no_page]) for kind in _ORDER if kind in drawn
    )


_ORDER = ("both units", "units", "counts", "groups", "stars", "stitches", "joints", "lists", "fractions", "heads", "next", "print")
"""A manner that looks for plain lists or heads comes before those that change them."""


def put_on(line: str, manners: Sequence[Manner], sizes: int) -> str:
    """Return a line in the manners of one designer."""
    for manner in manners:
        line = manner.write(line, sizes)
    return line
