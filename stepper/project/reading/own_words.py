"""Read a row that is kept in the page's own words: `Own words, 2 rows: … 96 sts.`

What stands before "own words" is a head, a label or a yarn as before any other row, and is read as such with
a plain row in place of the words; so is how long they are worked, before the colon. Of the words themselves
nothing is read but a count that ends them as a sentence of its own. Words that open or close what later rows
depend on - stitches on hold, short rows, a join - are refused: the row would be no whole row on the same
stitches.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import Final

from stepper.project.duration import Rounds, UntilLength, UntilLike, UntilRows
from stepper.project.instructions import (
    BindOff,
    Line,
    OwnWords,
    Phrase,
    PrintedCount,
    Sentence,
    WorkRounds,
)
from stepper.project.problems import Problem, Span
from stepper.project.spelling import near
from stepper.project.stitchwork import Across, Element, Hold, Numbers, TurnHere, Work
from stepper.records import dataclass
from stepper.regex import regex

_NUMBER = r"\d+(?:\s*[\(\[{][\d\s,;:]+[\)\]}]|(?:-\d+)+)?|one|two|three|four|five|six|seven|eight|nine|ten"
_OWN = regex(
    rf"(?:^|(?<=[:,.)]))\s*(?P<name>own\s+words)\s*"
    rf"(?:,\s*(?P<rows>{_NUMBER})\s+(?P<word>rows?|rounds?|rnds?)\s*(?=:|$)|,\s*(?P<known>[^:]+?)\s*(?=:))?"
    r"(?P<colon>:)?\s*",
    re.I,
)
_COUNTED = rf"(?:{_NUMBER})\s*(?:sts?|stitches)\b(?:\s+(?:rem(?:ain)?|left|inc'd|dec'd|increased|decreased))?"
_COUNT = regex(
    rf"(?:(?<=[.!])\s+|^)[(\[]?(?P<count>{_COUNTED})[)\]]?\s*\.?\s*$|"
    rf"\s+[-=]\s*(?P<behind>{_COUNTED})\s*\.?\s*$",
    re.I,
)
_OPEN_COUNT = regex(rf"[(\[]\s*{_COUNTED}\s*[)\]]\s*\.?\s*$", re.I)


@dataclass(frozen=True, slots=True, kw_only=True)
class OwnRow:
    """A row in own words, taken apart."""

    start: int
    """Where "own words" begins in the line."""
    stub: str
    """What stands before the words, with a plain row in their place."""
    known_at: int
    """Where the number of rows stands in the line, or how long they are worked; 0 without either."""
    known_length: int
    """Of that stretch."""
    rows: bool
    """Whether a number of rows stands there, and nothing else."""
    moves: str
    """`come`, `go` or `held` if it says there which stitches come, go or wait on hold, `parts` if it tells
    all stitches of the row in their order; else empty."""
    word: str
    """`row` or `round` if the line says which; else empty."""
    colon: bool
    """Whether a colon stands before the words."""
    words: str
    """The words, without the count behind them."""
    words_at: int
    count: str
    """The count behind them as printed; empty without one."""
    counted_at: int

    def place(self, at: int, length: int) -> tuple[int, int]:
        """Return where a stretch of the stub stands in the line."""
        if at < self.start:
            return at, length
        inside = at - self.start - len(_KNIT)
        return (
            (self.known_at + inside, length)
            if self.known_at and inside >= 0
            else (self.start, len("own words"))
        )


UNCOUNTED: Final = "stitches not counted"
"""How the words of a row end whose number of stitches nobody knows: of several rows only the last was
counted, and the count written behind the others is the one before them."""
_KNIT: Final = " Knit "
_MOVES: Final = regex(
    r"(?P<come>(?:cast|CO|pick)\b(?!\s+off))|(?P<go>(?:bind|cast)\s+off\b|BO\b)|(?P<held>hold\b)", re.I
)
_PARTS: Final = regex(r"(?:^|,\s*)work\s+\d", re.I)
"""How stitches worked by the words of a row stand among its others: `work 25 sts, bind off 10 sts`."""
_LEAVING: Final = regex(r"(?<=sts)\s+to\s+\d+\b", re.I)
_LEAVES: Final = regex(r"\bwork\s+(?P<uses>\d+)\s+sts(?:\s+to\s+(?P<leaves>\d+)\b)?", re.I)
"""How many stitches a stretch is worked to: `work 10 sts to 9`."""
_LASTS: Final = (
    'Before the colon stands for how long: "Own words, 4 rows: …", '
    '"Own words, until piece measures 12 cm: …".'
)
_PARTED: Final = (
    'Before the colon stand all stitches of the row in their order: "Own words, work 25 sts, bind off 10 '
    'sts, work 25 sts: …", "Own words, work 25 sts, turn, hold rem 35 sts for right shoulder: …".'
)
_COMES: Final = (
    'Before the colon stands "cast on 38 sts", "pick up 31 sts", "hold 12 sts for left sleeve" or '
    '"bind off all sts".'
)


def is_own_row(plain: str) -> bool:
    """Return whether a line is one in own words, so that its words are no line of their own."""
    return _OWN.search(plain) is not None


def find_own_row(plain: str) -> OwnRow | None:
    """Take a line in own words apart; None if it is none."""
    match = _OWN.search(plain)
    if match is None:
        return None
    start = match.start("name")
    words = plain[match.end() :].rstrip()
    counted = _COUNT.search(words)
    group = "count" if counted is not None and counted["count"] else "behind"
    rows, known = match["rows"], match["known"]
    lasts = f"{rows} rounds" if rows else known or ""
    moves = _MOVES.match(lasts)
    parts = not rows and _PARTS.search(lasts) is not None
    before = " " * len(_KNIT) if moves or parts else _KNIT
    if parts:  # of the same length: a place in the stub is one in the line
        lasts = re.sub(r"\bwork(?=\s+\d)", "knit", lasts, flags=re.I)
        lasts = _LEAVING.sub(lambda found: " " * len(found[0]), lasts)
    return OwnRow(
        start=start,
        stub=f"{plain[:start]}{before}{lasts}".rstrip() + ".",
        moves="parts" if parts else moves.lastgroup or "" if moves else "",
        known_at=match.start("rows") if rows else match.start("known") if known else 0,
        known_length=len(rows or known or ""),
        rows=rows is not None,
        word="" if not match["word"] else "row" if match["word"].lower().startswith("row") else "round",
        colon=match["colon"] is not None,
        words=words[: counted.start()].rstrip() if counted is not None else words,
        words_at=match.end(),
        count=counted[group] + "." if counted is not None else "",
        counted_at=match.end() + counted.start(group) if counted is not None else 0,
    )


def printed_words(plain: str) -> str:
    """Return a line as the page prints it: of one in own words its head, its words and their count alone."""
    match = _OWN.search(plain)
    if match is None:
        return plain
    return f"{plain[: match.start('name')].rstrip()} {plain[match.end() :]}".strip()


BINDS_OFF: Final = (
    r"\b(?:(?:bind|cast|bound)(?:ing)?(?:\s+(?:them|these|those|it|all|\d+)(?:\s+st(?:itche)?s?)?)?[\s-]+off|BO)\b"
)
"""Words by which stitches are bound off, in any case of letters."""
_ELSEWHERE = (
    (
        BINDS_OFF,
        "stitches bound off leave an edge or a gap, which the rows after it have to know of.",
        'Where all are bound off, write "Own words, bind off all sts: …"; else write that as a line '
        "that is read, and the rest of the row in own words.",
        "go",
    ),
    (
        r"\b(?:on|onto|to|from)\s+(?:a\s+|the\s+)?(?:hold(?:er)?s?|waste\s+yarn|spare\s+(?:needle|yarn))\b"
        r"|\b(?:on|onto)\s+(?:an?|some|another)\s+(?:(?:bit|piece|length|strand)\s+of\s+)?(?:(?:spare|scrap|waste|contrast\w*|safety|short|long)\s+)*"
        r"(?:yarn|wool|thread|string|pin|needle)\b|\b(?:on|onto)\s+(?:scrap|waste)\s+(?:yarn|wool|thread)\b|\bheld\b|\bhold(?:ing)?\s+\d",
        "stitches are put on hold or taken back there, which the rows after it have to know of.",
        'Say it before the colon: "Own words, hold 12 sts for left sleeve: …"; or write a line that is read.',
        "held",
    ),
    (
        r"\bw\s*&\s*t\b|\bwrap(?:\s+and|\s*&)\s+turn\b|\bshort[\s-]+rows?\b(?!\s+(?:one|ones|round|rnd|increase|section)\b)|\bturn\b(?!\s+up\b|\s*\.?\s*$)",
        "the row is turned before its end, and own words stand for whole rows.",
        "Write short rows so that they are read.",
        "turn",
    ),
    (
        r"\bjoin(?:ing|ed)?\b[^.]*\bround\b|\bwork\s+(?:flat|in\s+rows|back\s+and\s+forth)\b",
        "rows become rounds there, or rounds rows, which the rows after it have to know of.",
        'Write that as a line of its own: "Join in the round.", "Work flat."',
        "join",
    ),
    (
        r"\bat\s+the\s+same\s+time\b",
        "two things are worked at the same time there, over more rows than the words stand for.",
        "Write the rows one by one.",
        "at once",
    ),
)
"""Words whose meaning later rows depend on: a pattern, why they are refused, what to write, and their kind,
which for the first two is what `OwnRow.moves` makes known."""
_SAID_BY_PARTS: Final = {"go", "held", "turn"}
"""What is said where all stitches of the row are named in their order."""
_WORKED_ON: Final = regex(
    r"\b(?:[kp]\s?\d+|[kp]|knit|purl|work|patt(?:ern)?|rib|back|rep(?:eat)?|rows?|rnds?)\b", re.I
)
"""Words behind a turn by which the line is more than one row."""
_NOT_READ = ("is not understood here", "ends too early")
_COME_OR_GO = regex(r"\bcast(?:ing)?[\s-]+on\b|\bCO\b|\bpick(?:ing)?\s+up\b", re.I)


_NEARLY = regex(
    rf"(?:^|(?<=[:,.)]))(?=\s*(?P<own>[a-z]+)\s+(?P<words>[a-z]+)\s*"
    rf"(?:,\s*(?:{_NUMBER})\s+(?P<rows>[a-z]+)\s*|,[^:]*)?:)",
    re.I,
)
"""Looked for from every place: "With A, own words:" begins with two words and a comma itself."""
_NEARLY_COUNT = regex(rf"(?<=[.!])\s+[(\[]?(?:{_NUMBER})\s*(?P<sts>[a-z]+)[)\]]?\s*\.?\s*$", re.I)
_LEGAL: Final = {
    "own": ("own",),
    "words": ("words",),
    "rows": ("rows", "row", "rounds", "round", "rnds", "rnd"),
}


def misspelt_own(plain: str) -> tuple[int, str, str] | None:
    """Find the one misspelt word that keeps a line, or its count, from being one in own words: its place, the
    word, and what was meant; None if there is none."""
    for match in _NEARLY.finditer(plain):
        wrong = [
            (match.start(group), match[group], legal)
            for group, legal in _LEGAL.items()
            if match[group] and match[group].lower() not in legal
        ]
        nearest = near(wrong[0][1], wrong[0][2]) if len(wrong) == 1 else ()
        if nearest:
            return *wrong[0][:2], nearest[0][1]
    own = find_own_row(plain)
    counted = _NEARLY_COUNT.search(own.words) if own is not None and not own.count else None
    meant = near(counted["sts"], ("sts", "stitches")) if counted is not None else ()
    if own is None or counted is None or not meant:
        return None
    return own.words_at + counted.start("sts"), counted["sts"], meant[0][1]


def find_depended_on(words: str) -> dict[str, str]:
    """Find what later rows would have to know of some words, whatever their count.

    Returns:
        What it is - `go`: stitches bound off, `held`: put on hold or taken back, `turn`: a row turned before
        its end, `join`: rows that become rounds, `at once`: two works over the same rows - with what is told.
    """
    return {kind: message for pattern, message, _, kind in _ELSEWHERE if re.search(pattern, words, re.I)}


_TURNS = regex(r"\bw\s*&\s*t\b|\bwrap(?:\s+and|\s*&)\s+turn\b|\bshort[\s-]+rows?\b|\bturn\b", re.I)


def turns_at_its_end(words: str) -> bool:
    """Return whether some words turn once, and nothing is worked behind the turn: they are one row."""
    turns = list(_TURNS.finditer(words))
    if len(turns) != 1 or turns[0][0].lower() != "turn":
        return False
    return _WORKED_ON.search(words[turns[0].end() :]) is None


_TURNS_LAST = regex(r"\bturn(?:ing)?(?:\s+(?:the\s+)?work)?\W*$", re.I)


def turns_last(words: str) -> bool:
    """Return whether some words end with a turn, as a row does and no round."""
    return _TURNS_LAST.search(words) is not None


def words_refused(own: OwnRow) -> tuple[int, int, str, str] | None:
    """Return why the words of a row cannot be kept: place and length in the line, message, hint; None if they
    can."""
    if not own.colon:
        return (
            own.start,
            len("own words"),
            "a colon is missing.",
            'Write "Own words: ...", or "Own words, 2 rows: ..."',
        )
    if not re.search(r"[^\W\d_]", own.words):
        return (
            own.start,
            len("own words"),
            "no words follow to be read aloud.",
            'Write "Own words: work the motif as on page 3. 96 sts."',
        )
    for pattern, message, hint, kind in _ELSEWHERE:
        found = re.search(pattern, own.words, re.I)
        if found is None or kind == own.moves or (own.moves == "parts" and kind in _SAID_BY_PARTS):
            continue
        if not (own.moves == "held" and kind == "turn" and turns_at_its_end(own.words)):
            # "k28, turn, leave the others on a thread": what is behind the turn is on hold, and known
            return own.words_at + found.start(), len(found[0]), message, hint
    found = _COME_OR_GO.search(own.words)
    if found is not None and not own.count and own.moves not in ("come", "parts"):
        told = "stitches come onto the needles there, and no count behind the words says how many."
        return own.words_at + found.start(), len(found[0]), told, 'Print it behind a full stop: "... 96 sts."'
    found = _OPEN_COUNT.search(own.words) if not own.count else None
    if found is not None:
        told = f'"{found[0].strip()}" may be the count after the row, or belong to its last words.'
        return (
            own.words_at + found.start(),
            len(found[0]),
            told,
            'A count stands behind a full stop: "... 96 sts."',
        )
    return None


_MEANT: Final = (
    (r"\s*([a-z]+)", ("until", "for", "cast", "pick", "bind", "hold")),
    (r"\s*bind\s+([a-z]+)", ("off",)),
    (r"\s*cast\s+([a-z]+)", ("off", "on")),
)
"""What mostly begins what stands before the colon: the place of a word, and what it may be a slip for."""


def known_refused(own: OwnRow, problems: tuple[Problem, ...], place: Span) -> tuple[Problem, ...]:
    """Return what is wrong with a line whose stub was not read: what stands before the colon, if that stopped
    it and no word is meant for another.

    Args:
        own: The row.
        problems: What the reader says of the stub.
        place: Where that stands in the file.
    """
    stopped = any(told in each.message for each in problems for told in _NOT_READ)
    meant = any(each.hint.startswith("Did you mean") for each in problems)
    if own.rows or not own.known_at or meant or not stopped:
        return problems
    known = own.stub[own.start + len(_KNIT) :]
    for expression, words in _MEANT:
        found = re.match(expression, known, re.I)
        slip = near(found[1], words) if found is not None and found[1].lower() not in words else ()
        if found is not None and slip:
            at = replace(place, column=place.column + found.start(1), length=len(found[1]))
            return (at.problem(f'"{found[1]}" is not understood here.', f'Did you mean "{slip[0][1]}"?'),)
    told = "what comes or goes by these words" if own.moves else "how long the words are worked"
    return (place.problem(f"it is not understood {told}.", _COMES if own.moves else _LASTS),)


def _moving(
    line: Line, own: OwnRow, words: str, known: str, count: PrintedCount | None, place: Span
) -> OwnWords | Problem:
    """Return the words with what comes or goes by them: all stitches, or some that go on hold in the row."""
    row = line.sentences[-1]
    kept = OwnWords(words, None, count, place)
    if own.moves == "parts":
        return _in_parts(line, row, kept, known)
    works = row.elements if isinstance(row, Phrase) else ()
    if works and all(isinstance(one, Hold) and one.times is not None for one in works):
        if line.times is not None or len(line.numbers) > 1 or line.every:
            return place.problem("stitches go on hold in one row.", "Write that row by itself.")
        return replace(kept, held=tuple(one for one in works if isinstance(one, Hold)))
    begins = bool(works) and all(isinstance(one, Work) and one.stitch in ("co", "pu") for one in works)
    if not begins and not isinstance(row, BindOff):
        return place.problem("it is not understood what comes or goes by these words.", _COMES)
    if line.times is not None or line.numbers or line.every:
        return place.problem("the line says twice which row it is for.", "Write it without a number.")
    assert isinstance(row, Phrase | BindOff)
    return replace(kept, beside=row)


def _in_parts(line: Line, row: Sentence, kept: OwnWords, known: str) -> OwnWords | Problem:
    """Return the words with all stitches of their row in order: worked by them, bound off, on, or on hold.

    Args:
        line: The line as read with plain stitches in place of those worked by the words.
        row: Its row.
        kept: The words.
        known: What stands before the colon, as written.
    """
    if line.times is not None or len(line.numbers) > 1 or line.every:
        return kept.place.problem("stitches come, go or wait in one row.", "Write that row by itself.")
    elements = row.elements if isinstance(row, Phrase) else ()
    made = [_in_part(one) for one in elements]
    parts = [one for one in made if one is not None]
    told = list(_LEAVES.finditer(known))
    worked = [at for at, one in enumerate(parts) if isinstance(one, Work) and one.stitch == "own"]
    changed = any(found["leaves"] for found in told)
    if not parts or len(parts) < len(made) or (changed and len(told) != len(worked)):
        return kept.place.problem("it is not understood which stitches come, go or wait there.", _PARTED)
    for at, found in zip(worked, told if changed else (), strict=False):
        one = parts[at]
        assert isinstance(one, Work)  # looked at above
        if found["leaves"] and found["leaves"] != found["uses"]:
            times = replace(one.times, values=(1,))
            parts[at] = replace(one, stitch=f"own {found['uses']} to {found['leaves']}", times=times)
    return replace(kept, beside=Phrase(tuple(parts), kept.place))


def _in_part(one: Element) -> Across | Work | Hold | TurnHere | None:
    """Return a part of a row, what is worked by the words as that; None if it is no such part."""
    if isinstance(one, Across | Hold | TurnHere):
        return one
    if not isinstance(one, Work) or one.yarn or one.fabric:
        return None
    if one.stitch in ("bo", "co"):
        return one
    return replace(one, stitch="own") if one.stitch == "k" else None


def with_own_words(
    line: Line, own: OwnRow, text: str, count: PrintedCount | None, place: Span
) -> Line | Problem:
    """Return a line with the words in place of the plain row it was read with.

    Args:
        line: The line as read with a plain row.
        own: The row.
        text: The whole line as written, signs and all.
        count: The count printed behind the words; None without one.
        place: Where the words stand.
    """
    *lead, row = line.sentences
    words = text[own.words_at : own.words_at + len(own.words)].strip()
    head = " ".join(text[: own.words_at].split())  # what the words say of rows and rounds decides nothing
    if own.moves:
        known = text[own.known_at : own.known_at + own.known_length]
        moved = _moving(line, own, words.rstrip("."), known, count, place)
        if isinstance(moved, Problem):
            return moved
        return replace(line, sentences=(*lead, moved), text=head)
    rows: Numbers | None = None
    lasts: UntilLength | UntilLike | UntilRows | None = None
    if isinstance(row, WorkRounds) and isinstance(row.duration, Rounds) and not row.duration.total:
        rows = row.duration.number if own.known_at else None
    elif isinstance(row, WorkRounds) and own.known_at:
        duration = row.duration
        if not isinstance(duration, UntilLength | UntilLike | UntilRows):
            told = "what the words do to the stitches is not known, so nobody can tell when that is reached."
            return place.problem(told, _LASTS)
        if line.times is not None or line.numbers or line.every:
            return place.problem("the line says twice how many rows it is for.", "Say it once.")
        lasts = duration
    elif not isinstance(row, Phrase) or own.known_at:
        hint = _LASTS if own.known_at else 'Write "Next 2 rows: Own words: ..."'
        return place.problem("own words stand for rows by themselves.", hint)
    if rows is not None and line.times is not None:
        return rows.place.problem("the line says twice how many rows it is for.", "Say it once.")
    rows = rows or line.times
    if rows is not None and line.numbers:
        if set(rows.values) != {len(line.numbers)}:
            return rows.place.problem(f"the line numbers {len(line.numbers)} rows, and says otherwise.")
        rows = None
    several = len(line.numbers) > 1 or bool(line.every)
    kept = OwnWords(words.rstrip("."), rows, count, place, own.word, several, lasts)
    return replace(line, sentences=(*lead, kept), rows=line.rows or own.word == "row", times=None, text=head)
