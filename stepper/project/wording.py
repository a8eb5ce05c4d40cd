"""Turn a printed pattern line into instructions.

Theory of operation. A line is first made plain: typographic signs become their plain twins one for one, so
that every column stays true. A note and a label are taken off its front. The rest goes through the grammar in
`wording.lark`, and the tree becomes records of `stepper.project.instructions`. Where the grammar stops, the
words that stopped it, what could have stood there, and the nearest legal wording make one problem: the
nearest is found by putting a legal word for each unknown one and reading the line again.
"""

from __future__ import annotations

import difflib
import re
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field, replace
from functools import lru_cache
from importlib import resources
from typing import TYPE_CHECKING

from stepper.craft import stitches
from stepper.project.instructions import Count, Line, Phrase, Remark, Sentence
from stepper.project.problems import Place, Problem
from stepper.project.sentences import Builder, Head

if TYPE_CHECKING:
    from lark import Lark
    from lark.exceptions import UnexpectedInput

_PLAIN = str.maketrans(
    {
        "‘": "'", "’": "'", "“": '"', "”": '"', "″": '"', "′": "'",
        "–": "-", "—": "-", "‑": "-", "−": "-", "‒": "-",
        "\u00a0": " ", "\u202f": " ", "\u2009": " ", "\t": " ",
        "×": "x", "∗": "*", "＊": "*",
    }
)  # fmt: skip

_HEAD = re.compile(
    r"^\s*(?:(?:short[-\s]?)?(?:rnds?|rounds?|rows?)\b\.?\s*\d[^:.*\[]*|next\s+(?:rnd|round|row)[^:]*"
    r"|(?:all|every|rs|ws)\b[^:.*\[]*\b(?:rnds?|rounds?|rows?))\s*(?:\(?[rw]s\)?\s*)?:",
    re.I,
)
_LABEL = re.compile(r"^\s*([^\W\d_][^:.*\[\]]{0,48}?)\s*:\s*")
_NOTE = re.compile(r"^\s*note\s*:\s*", re.I)

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
    "_UNTIL": '"until piece measures"',
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

EXAMPLES = (
    "Cast on 80 sts.",
    "Join in the round.",
    "Knit 2 rounds.",
    "*K2, p2; rep from * to end.",
    "K1, k2tog, k to last 3 sts, ssk, k1.",
    "(k1, yo) 3 times, k to end.",
    "Rnds 1-4: Knit.",
    "Rep rnds 1-2 5 times.",
    "Rep last round until piece measures 30 cm.",
    "Work for 3 cm.",
    "Work 4 rounds in pattern.",
    "Knit until piece measures 32 cm.",
    "Increase evenly to 246 sts.",
    "Decrease 12 sts evenly.",
    "Chart trail, 2 times.",
    "Chart trail, rounds 3-9.",
    "Dec round: K1, k2tog, k to last 3 sts, ssk, k1.",
    "Work dec round every 8th round 6 times.",
    "K34, hold 46 for left sleeve, cast on 8, k to end.",
    "Return left sleeve to needles.",
    "Pick up and knit 8 sts, k to end.",
    "Place marker every 20 sts.",
    "Change to 3.75 mm needles.",
    "With A, knit 2 rounds.",
    "Break A.",
    "Bind off in pattern.",
    "Bind off stretchily.",
    "Note: words to be said.",
)
"""One legal line of every kind; shown where nothing nearer is found, and read by a test."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Reading:
    """What one printed line gave: the line, or the problems that stopped it."""

    line: Line | None
    problems: tuple[Problem, ...] = ()


@dataclass(slots=True, kw_only=True)
class Words:
    """The names that a garment adds to the legal words: charts, yarns, labels."""

    sizes: int
    """How many sizes the pattern has; every list must have as many entries, or one."""
    names: set[str] = field(default_factory=set)
    inches: bool = False


@lru_cache(maxsize=1)
def _parser() -> Lark:
    """Build the parser once; the tables are kept between runs of the program where a cache can be written."""
    from lark import Lark

    text = resources.files("stepper.project").joinpath("wording.lark").read_text(encoding="utf-8")
    try:
        return Lark(text, start="line", parser="lalr", lexer="basic", maybe_placeholders=True, cache=True)
    except OSError:
        return Lark(text, start="line", parser="lalr", lexer="basic", maybe_placeholders=True)


@lru_cache(maxsize=1)
def legal_words() -> frozenset[str]:
    """Collect every word of the grammar and of the stitch table, for suggestions."""
    text = resources.files("stepper.project").joinpath("wording.lark").read_text(encoding="utf-8")
    found: set[str] = set()
    for row in text.splitlines():
        match = re.match(r"^_?[A-Z][A-Z_]*(?:\.-?\d+)?: (.*)$", row)
        if match and not row.startswith(("WORD", "SIGN", "LABEL_REF")):
            plain = re.sub(r"\(\?[!=][^)]*\)", " ", match.group(1))
            found.update(word for word in re.findall(r"(?<![\\\[])\b[a-z]{2,}\b", plain))
            found.update(_optional_endings(plain))
    for code in stitches.codes():
        found.update(part for part in re.split(r"[\s\-]", code) if len(part) > 1 and part[0].isalpha())
    found.update(
        {"stitches", "stitch", "sts", "rounds", "rnds", "rows", "round", "rnd", "row", "markers", "times"}
    )
    return frozenset(found - {"ls", "mm"} | {"mm"})


def _optional_endings(pattern: str) -> set[str]:
    """Spell out words written with optional letters, as `needles?` and `(?:increas(?:e|ing))`."""
    found = set()
    for stem, ending in re.findall(r"\b([a-z]{3,})([a-z])\?", pattern):
        found.update({stem, stem + ending})
    for stem, endings in re.findall(r"\b([a-z]{2,})\(\?:([a-z|']+)\)", pattern):
        found.update(stem + ending for ending in endings.split("|"))
    return found


def read_line(text: str, place_of: Callable[[int, int], Place], words: Words) -> Reading:
    """Read one printed line.

    Args:
        text: The line as it stands, possibly joined from several lines of the file.
        place_of: Gives the place in the file of a stretch of `text`: offset from 0, length.
        words: The names this garment adds.

    Returns:
        The line, or the problems that stopped it; never both.
    """
    plain = text.translate(_PLAIN)
    whole = place_of(len(plain) - len(plain.lstrip()), len(plain.strip()) or 1)
    note = _NOTE.match(plain)
    if note:
        remark = Remark(text[note.end() :].strip().rstrip("."), place_of(note.end(), len(plain) - note.end()))
        return Reading(line=_line(None, Head(), (remark,), text, whole))
    label, side, start = _split_label(plain)
    outcome = _parse(plain, start)
    if not isinstance(outcome, _Stopped):
        builder = Builder(place_of=lambda offset, length: place_of(start + offset, length), words=words.sizes)
        head, sentences = builder.build(outcome, inches=words.inches)
        if builder.problems:
            return Reading(line=None, problems=tuple(builder.problems))
        if side:
            head = replace(head, side=side, rows=True)
        return Reading(line=_line(label, head, sentences, text, whole))
    problem = _explain(plain, start, outcome, words)
    place = place_of(problem.offset, problem.length)
    return Reading(line=None, problems=(place.problem(problem.message, problem.hint),))


def _line(label: str | None, head: Head, sentences: tuple[Sentence, ...], text: str, place: Place) -> Line:
    return Line(
        label=label,
        numbers=head.numbers,
        side=head.side,
        rows=head.rows,
        sentences=sentences,
        text=" ".join(text.split()),
        place=place,
        every=head.every,
    )


_LABEL_SIDE = re.compile(r"\s*\(?\b(rs|ws)\)?$", re.I)


def _split_label(plain: str) -> tuple[str | None, str, int]:
    """Take a label off the front; give it, the side it names, and where the rest begins."""
    if _HEAD.match(plain):
        return None, "", 0
    match = _LABEL.match(plain)
    if match is None:
        return None, "", 0
    label = match.group(1).strip()
    side = _LABEL_SIDE.search(label)
    if side and side.start():
        return label[: side.start()].strip(), side.group(1).upper(), match.end()
    return label, "", match.end()


@dataclass(frozen=True, slots=True)
class _Stopped:
    """Where the grammar stopped: offset in the parsed text, the words there, what could stand there."""

    offset: int
    found: str
    expected: tuple[str, ...]


def _parse(plain: str, start: int) -> object:
    return _parsed(plain[start:])


@lru_cache(maxsize=4096)
def _parsed(body: str) -> object:
    """Parse the text of a line. Garments say the same line in several places, the two sleeves above all."""
    from lark.exceptions import UnexpectedInput

    if not body.strip(" ."):
        return _Stopped(len(body), "", ("an instruction",))
    try:
        return _parser().parse(body)
    except UnexpectedInput as error:
        return _stopped(error, body)


def _stopped(error: UnexpectedInput, body: str) -> _Stopped:
    from lark.exceptions import UnexpectedToken

    expected: tuple[str, ...] = ()
    if isinstance(error, UnexpectedToken):
        token = error.token
        accepts = error.accepts or error.expected
        seen = dict.fromkeys(_EXPECTED[name] for name in sorted(accepts) if name in _EXPECTED)
        expected = tuple(seen)
        if token.type == "$END":
            return _Stopped(len(body.rstrip()), "", expected)
        return _Stopped(token.start_pos or 0, str(token), expected)
    offset = error.pos_in_stream or 0
    return _Stopped(offset, body[offset : offset + 1], expected)


@dataclass(frozen=True, slots=True)
class _Explained:
    offset: int
    length: int
    message: str
    hint: str


def _explain(plain: str, start: int, stopped: _Stopped, words: Words) -> _Explained:
    """Say what stopped the reading and what would be legal."""
    repair = _repair(plain, start, words)
    if repair is not None:
        offset, wrong, right = repair
        return _Explained(
            offset, len(wrong), f'"{wrong}" is not understood here.', f'Did you mean "{right}"?'
        )
    offset = start + stopped.offset
    found = _whole_words(plain, offset) if stopped.found else ""
    what = f'"{found}" is not understood here' if found else "the line ends too early"
    expected = _expected_words(stopped.expected)
    message = f"{what}{f'; expected {expected}' if expected else ''}."
    hint = _nearest_line(plain[start:])
    return _Explained(offset, max(1, len(found)), message, hint)


def _expected_words(expected: tuple[str, ...], most: int = 5) -> str:
    items = list(expected)
    if len(items) > most:
        first = ("an instruction", "a stitch", "a number", "a length")
        items = [item for item in first if item in items] + [item for item in items if item not in first]
        items = items[:most]
    if len(items) < 2:
        return "".join(items)
    return f"{', '.join(items[:-1])} or {items[-1]}"


def _whole_words(plain: str, offset: int) -> str:
    match = re.match(r"\S+?(?=[\s,.;:)\]]|$)", plain[offset:])
    return match.group() if match else plain[offset : offset + 1]


def _nearest_line(body: str) -> str:
    """Offer the legal line that looks most like this one."""
    plain = body.strip().lower()
    ranked = sorted(
        EXAMPLES,
        key=lambda example: difflib.SequenceMatcher(None, plain, example.lower()).ratio(),
        reverse=True,
    )
    return f"A line that can be read: {ranked[0]}  Anything else can stand as a note: Note: …"


def _repair(plain: str, start: int, words: Words) -> tuple[int, str, str] | None:
    """Find one word whose legal twin makes the line readable.

    Returns:
        Its offset, the word, and the twin; nothing where no single word does it.
    """
    known = legal_words() | {part for name in words.names for part in name.lower().split()}
    for match in re.finditer(r"[^\W_][\w'&/]*", plain[start:]):
        word = match.group()
        lower = word.lower()
        if lower in known or lower.isdigit():
            continue
        for twin in _twins(lower, known):
            trial = plain[: start + match.start()] + twin + plain[start + match.end() :]
            if not isinstance(_parse(trial, start), _Stopped):
                return start + match.start(), word, twin
    return None


def _twins(word: str, known: Iterable[str]) -> list[str]:
    """List legal words near an unknown one, nearest first; stitches written with a number included."""
    stem = re.match(r"^([a-z]+)(\d+)$", word)
    twins = difflib.get_close_matches(word, list(known), n=6, cutoff=0.6)
    if stem and stem.group(1) not in ("k", "p"):
        twins += [near + stem.group(2) for near in ("k", "p") if near in stem.group(1)]
    return twins


def counts(sentences: Iterable[Sentence]) -> list[Count]:
    """Give the printed counts of a line."""
    return [sentence for sentence in sentences if isinstance(sentence, Count)]


def phrases(sentences: Iterable[Sentence]) -> list[Phrase]:
    """Give the rounds written out stitch by stitch in a line."""
    return [sentence for sentence in sentences if isinstance(sentence, Phrase)]
