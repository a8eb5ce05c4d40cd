"""Parse a plain line into its tree, or find the place where the reading stopped."""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import lru_cache
from typing import TYPE_CHECKING

from stepper.craft import stitches
from stepper.project.grammar import grammar_text
from stepper.project.rewording.asides import hides, instructs, joins_order, label_instructs
from stepper.project.rewording.reworded import Reworded, as_printed
from stepper.records import dataclass
from stepper.regex import regex

if TYPE_CHECKING:
    from lark import Token, Tree
    from lark.exceptions import UnexpectedInput

    from stepper.project.reading.tables import LineParser

_PLAIN = str.maketrans(
    {
        "‘": "'", "’": "'", "“": '"', "”": '"', "″": '"', "′": "'",
        "–": "-", "—": "-", "‑": "-", "−": "-", "‒": "-",
        "\u00a0": " ", "\u202f": " ", "\u2009": " ", "\t": " ",
        "×": "x", "∗": "*", "＊": "*", "★": "*", "☆": "*", "✱": "*", "✲": "*",
    }
)  # fmt: skip

_HEAD = regex(
    r"^\s*(?:(?:even|odd)(?:[-\s]numbered)?\s+(?:rnds?|rounds?|rows?)\s+\d[^:.*\[]*|(?:short[-\s]?)?(?:rnds?|rounds?|rows?)\b\.?\s*\d[^:.*\[]*|next\s+(?:rnd|round|row)[^:]*"
    r"|(?:for\s+)?(?:the\s+)?(?:next|foll(?:owing)?\.?)\s+(?:\d[\d\s,;()\[\]]*|(?:two|three|four|five|six|seven|eight|"
    r"nine|ten)\s+)(?:rnds|rounds|rows)\b\.?"
    r"|next\s+and\s+(?:every|each)\s[^:.*\[]*"
    r"|every\s+[^:.*\[]*\b(?:rnds?|rounds?|rows?)\s+[^:.*\[]*\b(?:times|twice|rem|sts)"
    r"|(?:all|every|rs|ws|(?:right|wrong)[-\s]side)\b[^:.*\[]*\b(?:rnds?|rounds?|rows?))\s*(?:\(?[rw]s\)?\s*)?:",
    re.I,
)
_LABEL = regex(
    r"^\s*((?:\d\s?[x/]\s?\d\s+(?=rib))?[^\W\d_][^:.*\[\]]{0,48}?"
    r"(?:\((?:worked\s+)?(?:over|mult(?:iple)?\s+of)\s[^():.*\[\]]{1,200}\))?)\s*:\s*",
    re.I,
)
"""A label; the stitches that a pattern needs, one number for each of many sizes, may make it longer."""
_NEEDLE = regex(
    r"(?:on\s+)?(?:N|needles?\s*|ndls?\.?\s*)\d[\d\s,&and]*|(?:each|front|back)\s+needle|on\s+(?:instep|sole)",
    re.I,
)
"""A needle of a sock or half of its round, which is not the name of a line: "N1:", "Needles 1 and 3:"."""
_LABEL_SIDE = regex(r"\s*[,-]?\s*\(?\b([rw])s\)?$|\s*\(\s*(r|w)(?:ight|rong)\s+side\s*\)$", re.I)
NOTE = regex(r"^\s*note\s*:\s*", re.I)

_EXPECTED = {
    "NUMBERS": "a number",
    "LENGTH": "a length",
    "ROUND": '"round" or "row"',
    "PLAIN": "an instruction",
    "_COMMA": "a comma",
    "_STOP": "the end of the sentence",
    "$END": "the end of the line",
    "_TO": '"to"',
    "_STS": '"sts"',
    "MORE": '"more"',
    "_TIMES": '"times"',
    "UNTIL": '"until piece measures"',
    "_FOR": '"for"',
    "EVENLY": '"evenly"',
    "_REP_STAR": '"rep from *"',
    "_CLOSE": "a closing bracket",
    "BASIC": "a stitch",
    "NAMED": "a stitch",
    "MARKER": '"marker"',
    "LAST": '"last"',
    "END": '"end"',
    "NEEDLE": "a needle size",
    "_EVERY": '"every"',
    "LABEL_REF": "a named round",
    "CHART": "a chart",
    "BEFORE": '"before"',
    "_COLON": "a colon",
}


@dataclass(frozen=True, slots=True)
class Stopped:
    """Where the grammar stopped: offset in the parsed text, the words there."""

    offset: int
    found: str
    parsed: str | None = None
    """The text in which the grammar stopped, which tells what it expected; None if it was not the grammar."""
    why: str = ""
    """What is wrong with those words, if that is known; empty if the grammar does not know them."""
    hint: str = ""


def made_plain(text: str) -> str:
    """Replace every typographic sign by its plain twin, one for one, so that columns stay true."""
    return text.translate(_PLAIN)


def split_label(plain: str) -> tuple[str | None, str, int]:
    """Split a label off the front; return it, the side it names, and where the rest begins."""
    if _HEAD.match(plain):
        return None, "", 0
    match = _LABEL.match(plain)
    if match is None or _NEEDLE.fullmatch(match.group(1).strip()):
        return None, "", 0
    if match.group(1).count("(") > match.group(1).count(")"):
        return None, "", 0  # a colon inside a list of numbers ends no label
    label = match.group(1).strip()
    side = _LABEL_SIDE.search(label)
    if side and side.start():
        return label[: side.start()].strip(), f"{side.group(1) or side.group(2)}S".upper(), match.end()
    return label, "", match.end()


@dataclass(frozen=True, slots=True)
class Understood:
    """A line as far as it reads: its label, and its tree or the place where the reading stopped."""

    label: str | None
    side: str
    start: int
    """Where the body begins after the label, in the words it was read in."""
    outcome: object
    """The tree; `Stopped`, with offsets in the line as written; None if all of it is only to be said."""
    reworded: Reworded


_STOP_IN_ROWS = regex(r"(?:^|[:.])\s*[kp]\.\s*\d+\s+(?:rows?|rnds?|rounds?)\b", re.I)
"""Rows of the old style, "K. 6 rows", where the full stop would else end a row that is knitted."""


_LETTERED_NEEDLE = regex(
    r"\b(?:needles?|ndls?|ndles?)\s+(?-i:[A-HJ-M])(?![\w/'’.]*\w)"
    r"|(?<![\w.])(?-i:[A-HJ-M])\s+needles?\b(?!\s*\d)",
    re.I,
)
"""A needle as a list of needles letters it, "A: 4 mm": "using needle B, cast on" names no yarn."""
_BY_SIZE = 'Give the size in millimetres, for example "With 3.5 mm needles".'


def understood(plain: str, *, spoken: bool = True) -> Understood:
    """Read a plain line as written, or else reworded in the grammar's words.

    Args:
        plain: The line, made plain.
        spoken: Whether a line that is not read so is read in other signs and as talk to the knitter, too.
    """
    label, side, start = split_label(plain)
    outcome = _labelled(label, plain, start) or parse_line(plain[start:])
    first = Understood(label, side, start, outcome, as_printed(plain))
    if not isinstance(outcome, Stopped) and not _STOP_IN_ROWS.search(plain):
        return first
    lettered = _LETTERED_NEEDLE.search(plain)
    if lettered is not None:
        told = f'"{lettered.group()}" calls a needle by a letter, which may as well be that of a yarn.'
        stop = Stopped(lettered.start() - start, lettered.group(), None, told, _BY_SIZE)
        return Understood(label, side, start, stop, as_printed(plain))
    # Loaded here: a line that reads as it is written needs none of the sixty tables of other wordings.
    from stepper.project.rewording.reword import orders, talks, tells_beside, undress

    bare = _BARE_HEAD.match(plain) is not None
    manners = [False, True] if (spoken or bare) and undress(plain).text != plain else [False]
    if bare:
        manners.reverse()  # "R1" is neither a row nor a round; other tables make a row of it
    found = first
    for talked in [False, True] if spoken and talks(plain) else [False]:
        alone = _orders_alone(plain, first, manners) if talked and tells_beside(plain) else None
        if alone is not None:
            return alone
        for undressed in manners:
            other = _in_other_words(plain, first, spoken=talked, undressed=undressed)
            if not isinstance(other.outcome, Stopped):
                return other
            found = other if found is first else found
    return (_in_orders(plain, first, manners) if spoken and orders(plain) else None) or found


_BARE_GERUND = regex(r"\W*[a-z]+ing(?:\s+(?:off|on|up|together|down|back|again))?\W*", re.I)
"""A heading as books have it, "Joining", "Casting off": it names what is told below and orders nothing."""


def _orders_alone(plain: str, first: Understood, manners: Sequence[bool]) -> Understood | None:
    """Read the orders of a line without what only tells beside them, else in the words of the line."""
    from stepper.project.rewording.reword import without_tails

    straight = _as_recast(plain, first, without_tails(plain))
    if not isinstance(straight.outcome, Stopped):
        return straight
    for undressed in manners:
        other = _in_other_words(plain, first, spoken=False, undressed=undressed, alone=True)
        if not isinstance(other.outcome, Stopped):
            return other
    return None


def _in_orders(plain: str, first: Understood, manners: Sequence[bool]) -> Understood | None:
    """Read a line that says in another voice what to do; None if it is not read so either."""
    if _BARE_GERUND.fullmatch(plain):
        return None
    from stepper.project.rewording.reword import ordered_words

    straight = _as_recast(plain, first, ordered_words(plain))
    if not isinstance(straight.outcome, Stopped):
        return straight
    for talked in (False, True):
        for undressed in manners:
            other = _in_other_words(plain, first, spoken=talked, undressed=undressed, ordered=True)
            if not isinstance(other.outcome, Stopped):
                return other
    return None


def _in_other_words(
    plain: str,
    first: Understood,
    *,
    spoken: bool,
    undressed: bool = False,
    ordered: bool = False,
    alone: bool = False,
) -> Understood:
    """Read a line reworded, with signs for the yarns it calls by a colour, or else without."""
    from stepper.project.rewording.reword import reword

    made = reword(plain, spoken=spoken, undressed=undressed, ordered=ordered, alone=alone)
    if made.yarns:
        signed = _as_recast(plain, first, made)
        if not isinstance(signed.outcome, Stopped):
            return signed
        made = reword(plain, signed=False, spoken=spoken, undressed=undressed, ordered=ordered, alone=alone)
    return _as_recast(plain, first, made)


def _as_recast(plain: str, first: Understood, made: Reworded) -> Understood:
    """Read a line that was reworded; what stopped it as printed, if it is not read so either."""
    outcome = first.outcome
    if made.text == plain:
        return first
    label, side, start = split_label(made.text)
    label = label or made.name or None
    bad = _labelled(label, plain, 0)
    if bad is not None:
        return first if first.label else Understood(None, "", 0, bad, first.reworded)
    if made.kept and not made.text[start:].strip(" .,;"):
        return Understood(label, side, start, None, made)
    if made.kept:
        start += len(made.text[start:]) - len(made.text[start:].lstrip(" .,;"))
    second = parse_line(made.text[start:])
    if not isinstance(second, Stopped):
        return Understood(label, side, start, second, made)
    reached, _ = made.place(start + second.offset, 1)
    if isinstance(outcome, Stopped) and reached <= first.start + outcome.offset:
        return first
    found = Stopped(reached - first.start, second.found, second.parsed, second.why, second.hint)
    return Understood(first.label, first.side, first.start, found, first.reworded)


_BARE_HEAD = regex(r"(?:(?-i:R|Rw)|rows?|rnds?|rounds?)\s?\.?#?\d", re.I)
"""The number of a row, which is no name: "R1", "Row1"."""


_MARKS_PUT = regex(
    r"\b(?:plac(?:e|ing)|put(?:ting)?|sett?(?:ing)?|hang(?:ing)?|insert(?:ing)?)\s+"
    r"(?:(?:the|all|both|side|raglan|st(?:itch)?|\d+|two|three|four)\s+)*markers?\b",
    re.I,
)
"""Markers that the name of a line has placed."""
_MARK = regex(r"\b(?:pm|mark\w*|threads?|pins?|m)\b", re.I)
"""Where a marker is placed in a row, or spoken of."""


def _labelled(label: str | None, plain: str, start: int) -> Stopped | None:
    """Stop at a label that is an instruction: `Decrease round, every 4th round:`."""
    words = label_instructs(label) if label else ""
    if label and _BARE_HEAD.match(label):
        told = f'"{label}" is read as the name of its line, and numbers a row.'
        return Stopped(0 - start, label, None, told, 'Write "Row 1: ..." or "Rnd 1: ...".')
    if label and _MARKS_PUT.search(label) and not _MARK.search(plain.partition(":")[2]):
        told = f'"{label}" is read as the name of its line, and no marker is placed in the row.'
        return Stopped(0 - start, label, None, told, 'Write "pm" in the row where each marker is placed.')
    if not words or label is None:
        return None
    at = max(0, plain.lower().find(words.lower()))
    why = f'"{label}" is read as the name of its line, but "{words}" instructs.'
    return Stopped(at - start, words, None, why, _SAY_IT)


_SAY_IT = (
    'Say it in the line: "Next 2 rows: ..." for several rows, "Work dec round every 4th round 6 times." '
    'behind a line "Dec round: ...", "With A, ..." for a yarn.'
)


def stop_of(plain: str, *, spoken: bool = True) -> int | None:
    """Return the offset where the reading of a plain line stops; None if it reads, or is a note.

    Args:
        plain: The line, made plain.
        spoken: Whether it is read in other signs and as talk to the knitter, too.
    """
    if NOTE.match(plain):
        return None
    read = understood(plain, spoken=spoken)
    return read.start + read.outcome.offset if isinstance(read.outcome, Stopped) else None


@lru_cache(maxsize=1)
def build_parser() -> LineParser:
    """Build the parser once; what takes long in it is kept between runs of the program."""
    # Loaded here: whoever only words what was read, as the screen does, needs no parser.
    from stepper.project.reading.tables import LineParser, load_tables

    return LineParser(load_tables(grammar_text()))


@lru_cache(maxsize=4096)
def parse_line(body: str) -> object:
    """Parse the text of a line. Cached: garments repeat lines, above all on the two sleeves."""
    from lark.exceptions import UnexpectedInput

    if not body.strip(" ."):
        return Stopped(len(body), "", body)
    crowded = _crowded(body)
    if crowded is not None:
        return crowded
    try:
        tree = build_parser().parse(body)
    except UnexpectedInput as error:
        return _stopped(error, body)
    return _hidden(tree, body) or tree


_MOST_LETTERS = 4000
"""Letters of the longest line that is read, about a page; a longer one would take too long."""
_MOST_OPEN = 12
"""Most brackets open at once; patterns have two or three."""


def _crowded(body: str) -> Stopped | None:
    """Stop at a line longer, or brackets deeper, than any pattern has: both cost the parser time."""
    if len(body) > _MOST_LETTERS:
        why = f"the line is longer than {_MOST_LETTERS} letters, and is not read."
        found = body[_MOST_LETTERS : _MOST_LETTERS + 1]
        return Stopped(_MOST_LETTERS, found, None, why, "Write it as several lines.")
    depth = 0
    for match in re.finditer(r"[()\[\]]", body):
        depth += 1 if match.group() in "([" else -1
        if depth > _MOST_OPEN:
            why = f"more than {_MOST_OPEN} brackets are open here at once."
            return Stopped(match.start(), match.group(), None, why, "Close the brackets before it.")
    return None


_NAMES = {
    "FOR_NAME": r"for\s+",
    "EDGE_TAIL": r"(?:evenly\s+along|from|at|along|across|over|in|(?=using\b))\s*",
    "MARK": r".*?(?:\bfor\s+|$)",
    "DRAW": r".*?\bthrough\s+",
    "RETURN_HELD": r"\w+\s+(?:the\s+)?(?:\d+(?:\s*[(\[][\d\s,;]+[)\]])?\s+)?",
    "ACROSS_HELD": r"\w+\s+across\s+(?:the\s+)?(?:\d+(?:\s*[(\[][\d\s,;]+[)\]])?\s+)?",
}
"""Terminals that hold free words, and what introduces the words."""


APART = 'Write it as an instruction of its own, or as "Note: ..." if it is only to be said.'
"""What is told of an instruction that hides in a name."""


def _hidden(tree: Tree[Token], body: str) -> Stopped | None:
    """Stop at an instruction hidden in the name of a part or a place: `for underarm every other row`."""
    for token in tree.scan_values(lambda value: hasattr(value, "start_pos")):
        introduced = _NAMES.get(token.type)
        if introduced is None:
            continue
        match = re.match(introduced, token, re.I)
        start = match.end() if match else 0
        found = instructs(token[start:])
        if found is None and token.type != "DRAW":
            found = joins_order(token[start:])
        if found is not None:
            offset = (token.start_pos or 0) + start + found.start()
            return Stopped(offset, found.group(), None, hides(found.group(), token), APART)
    return None


def _stopped(error: UnexpectedInput, body: str) -> Stopped:
    from lark.exceptions import UnexpectedToken

    if isinstance(error, UnexpectedToken):
        token = error.token
        if token.type == "$END":
            return Stopped(len(body.rstrip()), "", body)
        return Stopped(token.start_pos or 0, str(token), body)
    offset = error.pos_in_stream or 0
    return Stopped(offset, body[offset : offset + 1], body)


def list_expected(stopped: Stopped) -> tuple[str, ...]:
    """List what would be legal where the grammar stopped, in the reader's words; empty if nobody can tell.

    Asked for what is told of a line alone: many wordings are tried, and this takes as long as reading one.
    """
    from lark.exceptions import UnexpectedInput, UnexpectedToken

    if stopped.parsed is None:
        return ()
    if not stopped.parsed.strip(" ."):
        return ("an instruction",)
    try:
        build_parser().parse(stopped.parsed)
    except UnexpectedToken as error:
        legal = sorted(error.accepts or error.expected)
        return tuple(dict.fromkeys(_EXPECTED[name] for name in legal if name in _EXPECTED))
    except UnexpectedInput:
        return ()
    return ()


@lru_cache(maxsize=1)
def legal_words() -> frozenset[str]:
    """Collect every word of the grammar and of the stitch table, for suggestions."""
    text = grammar_text()
    found: set[str] = set()
    for row in text.splitlines():
        match = re.match(r"^_?[A-Z][A-Z_]*(?:\.-?\d+)?: (.*)$", row)
        if match and not row.startswith(("WORD", "SIGN", "LABEL_REF")):
            plain = re.sub(r"\(\?[!=][^)]*\)", " ", match.group(1))
            found.update(word for word in re.findall(r"(?<![\\\[])\b[a-z]{2,}\b", plain))
            found.update(_optional_endings(plain))
    for code in stitches.list_codes():
        found.update(part for part in re.split(r"[\s\-]", code) if len(part) > 1 and part[0].isalpha())
    found.update(
        {"stitches", "stitch", "sts", "rounds", "rnds", "rows", "round", "rnd", "row", "markers", "times"}
    )
    found.update({"note", "a", "k", "p", "m", "x", "at", "co", "bo", "in", "on", "rc", "lc", "rpc", "lpc"})
    # Words of the synonym tables, which the grammar never sees, and cables by their number.
    found.update({"match", "stripe", "stripes", "leave", "rejoin", "holder", "halfway"})
    found.update({"continuity", "correct", "than"})
    found.update(f"c{number}{way}" for number in (4, 6, 8) for way in "bf")
    return frozenset(found - {"ls"})


def _optional_endings(pattern: str) -> set[str]:
    """Spell out words written with optional letters, such as `needles?` and `(?:increas(?:e|ing))`."""
    found = set()
    for stem, letter in re.findall(r"\b([a-z]{2,})([a-z])\?", pattern):
        found.update({stem, stem + letter})
    for stem, endings in re.findall(r"\b([a-z]{2,})\(\?:([a-z|']+)\)", pattern):
        found.update({stem, *(stem + ending for ending in endings.split("|"))})
    return found
