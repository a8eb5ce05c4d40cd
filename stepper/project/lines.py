"""Read a block of work lines, finding which rows of the file make one printed line. No I/O."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import pairwise

from stepper.project.draft import FileDraft
from stepper.project.instructions import Line, Remark, Unread, is_only_said
from stepper.project.marks.mark_references import take_references
from stepper.project.marks.part_marks import single_stars, without_marks
from stepper.project.own_stitches.abbreviations import Abbreviations
from stepper.project.own_stitches.changes_worked import work_changes
from stepper.project.own_stitches.lists import take_definitions
from stepper.project.own_stitches.yarn_letters import take_letters
from stepper.project.pairs import side_of_pair
from stepper.project.pattern_heads import (
    SECTION_NUMBER,
    WRITTEN,
    as_first_row,
    as_plain_head,
    heads_pattern,
    run_in_head,
)
from stepper.project.problems import Span
from stepper.project.reading.announced import rows_of_announced
from stepper.project.reading.at_once import join_at_once
from stepper.project.reading.clauses import clauses_of
from stepper.project.reading.row_ends import fabric_goes_on
from stepper.project.reading.wording import Words, read_line, reads
from stepper.project.respelt import Respelt
from stepper.project.rewording.remarks.edge_rules import insets_in
from stepper.project.rewording.remarks.finishing import goes_on_finishing
from stepper.project.size_blocks import SizeBlocks
from stepper.project.size_heads import cut_at_sizes
from stepper.project.sizes import is_for_some
from stepper.project.stripes.stripe_rows import take_stripes
from stepper.project.stripes.stripe_sequences import StripeSequences
from stepper.project.yaml_file.source import Node, Scalar, block_lines
from stepper.records import dataclass
from stepper.regex import regex


def read_work(
    node: Node,
    words: Words,
    draft: FileDraft,
    abbreviations: Abbreviations | None = None,
    stripes: StripeSequences | None = None,
    behind: str = "",
) -> tuple[Line, ...]:
    """Read the lines of a section; rows that begin with # are left out.

    Args:
        node: The value of `work`.
        words: The names that the garment adds.
        draft: What is known of the file so far; gets the problems.
        abbreviations: Those that the page explains; gets those explained among the rows.
        stripes: The stripe sequences that the page defines; gets those defined among the rows.
        behind: Name of the section behind it; empty for the last.
    """
    own = abbreviations if abbreviations is not None else Abbreviations()
    if not isinstance(node, Scalar) or node.folded:
        told = "the lines of `work` must stand in a block."
        draft.report(node.place, told, 'Write "work: |" and the lines below it.')
        return ()
    printed = [row for row in block_lines(node, draft.text_lines) if row[0].strip()]
    rows = [row for row in printed if row[0].lstrip()[:1] != "#"]
    if not rows:
        draft.report(node.place, "`work` is empty.")
    respelt = Respelt()
    rows = take_stripes(rows, stripes if stripes is not None else StripeSequences(), words.yarns, respelt)
    rows = take_letters(rows, words.letters, respelt)
    rows = take_definitions(rows, own, words.names, draft.problems, respelt)
    rows = take_references(rows, respelt)
    rows = [part for row in rows for part in _cut_at_head(row, words.size_names)]
    rows, marks, opening = _marked(rows)
    rows = _under_heads(rows)
    lines: list[Line] = []
    words.insets, words.finishing = {}, False
    heads = [row for row in printed if row[0].lstrip()[:1] == "#"]
    index = 0
    blocks = SizeBlocks(words.size_names, printed, behind, draft)
    while index < len(rows):
        if blocks.take(rows[index], rows[index + 1 :]):
            index += 1
            continue
        only = blocks.sizes()
        while heads and heads[0][1].line < rows[index][1].line:
            words.finishing = goes_on_finishing(words.finishing, heads.pop(0)[0])
        words.sizes_above = _sizes_above(lines, len(words.size_names))
        found = read_rows(rows[index:], words, draft, respelt)
        index += found.taken
        line = found.line or found.meant or _unread(rows[index - 1])
        words.insets |= insets_in((*line.said, *_remarks_of(line)))
        line = _as_printed(line, rows[index - found.taken : index], respelt, own)
        line = replace(line, marks=marks[index - 1]) if marks[index - 1] else line
        line = replace(line, opens=opening) if opening and not lines else line
        lines.append(_for_sizes(line, only))
    return _joined(_one_of_a_pair(lines, draft))


def _one_of_a_pair(lines: list[Line], draft: FileDraft) -> list[Line]:
    """Return lines of which none is for the other piece of a pair than the line above it.

    "RIGHT mitt: k2, pm, …" and "LEFT mitt: k to last 3 sts, …" below it are printed side by side; knitted one
    behind the other they give one mitt two thumbs.
    """
    made: list[Line] = []
    for line in lines:
        side, piece = side_of_pair(line.label)
        others = {side_of_pair(above.label) for above in made[-_NEAR:]}
        if side and ("left" if side == "right" else "right", piece) in others:
            told = f"the row above is for the other {piece}, and of the two this piece has one."
            draft.report(line.place, told, 'Keep the row of the piece in hand, and the other as "Note: …".')
            line = replace(_unread((line.text, line.place)), marks=line.marks)
        made.append(line)
    return made


_NEAR = 3
"""So many lines above, the row for the other piece of a pair stands at most. Source: chosen here."""


def _under_heads(rows: list[tuple[str, Span]]) -> list[tuple[str, Span]]:
    """Return rows with those that head others made labels, and the first row below each named a row."""
    heads = [
        _as_heading(text, rows[number + 1][0] if number + 1 < len(rows) else "")
        for number, (text, _) in enumerate(rows)
    ]
    below = [False, *(heads_pattern(text, under) for (text, _), (under, _) in pairwise(rows))]
    return [
        (as_first_row(head) if first else head, place)
        for head, first, (_, place) in zip(heads, below, rows, strict=False)
    ]


def _remarks_of(line: Line) -> Iterator[str]:
    """Yield what a line only says."""
    yield from (one.text for one in line.sentences if isinstance(one, Remark))


def _sizes_above(lines: list[Line], sizes: int) -> tuple[int, ...]:
    """Return the sizes that the last lines are for, as far up as each is for some; empty if it is not clear.

    They are those that "all other sizes" leave out.

    Args:
        lines: The lines above.
        sizes: How many sizes the pattern has.
    """
    named: set[int] = set()
    doubtful = False
    last: tuple[int, ...] = ()
    for only in (line.only for line in lines):
        if not only or len(named) == sizes:
            named, doubtful = set(), False
        doubtful = doubtful or (bool(named & set(only)) and only != last)
        named |= set(only)
        last = only
    return () if doubtful else tuple(sorted(named))


def _for_sizes(line: Line, only: tuple[int, ...]) -> Line:
    """Return a line for the sizes of the head above it, unless its own words name fewer."""
    return replace(line, only=only) if only and (not line.only or set(only) <= set(line.only)) else line


def _joined(lines: list[Line]) -> tuple[Line, ...]:
    """Return the lines of a section, each with what it has from the one beside it."""
    for at in range(len(lines) - 1):
        lines[at], lines[at + 1] = fabric_goes_on(lines[at], lines[at + 1])
    for at in range(len(lines)):
        here, following = rows_of_announced(lines[at], lines[at + 1] if at + 1 < len(lines) else None)
        lines[at : at + 2] = [here] if following is None else [here, following]
    return tuple(join_at_once(lines))


def _marked(
    rows: list[tuple[str, Span]],
) -> tuple[list[tuple[str, Span]], list[tuple[str, ...]], tuple[str, ...]]:
    """Split rows at the marks and heads inside them; return them, the marks after each and in front."""
    made: list[tuple[str, Span]] = []
    marks: list[tuple[str, ...]] = []
    opening: tuple[str, ...] = ()
    stars = single_stars(text for text, _ in rows)
    for row in rows:
        pieces, (before, *behind) = without_marks(row, stars=stars)
        if marks:
            marks[-1] += before
        else:
            opening += before
        for piece, here in zip(pieces, behind, strict=False):
            parts = [
                part
                for headed in _headed(piece)
                for sentenced in _sentenced(headed)
                for part in _claused(sentenced)
            ]
            made += parts
            marks += [()] * (len(parts) - 1) + [here]
    return made, marks, opening


_HEAD = regex(
    r"(?<=[.!])\s+(?=(?:\d+(?:st|nd|rd|th)(?:\s*(?:,|-|to|and)\s*\d+(?:st|nd|rd|th)){0,4}\s+(?:rows?|rnds?|rounds?)|2nd\s+and\s+(?:all|every)\s+[a-z]+\.?\s+(?:row|rnd|round)s?|(?:row|rnd|round)\s+\d+|next\s+(?:row|rnd|round))\b[^.:*]{0,16}:)",
    re.I,
)

_PART = (
    r"(?:left|right|first|second|main|upper|lower|back|front|body|yoke|sleeves?|neck(?:band|line)?|collar|cuffs?|hem|hood|"
    r"ribbing|welt|border|edging|crown|brim|hand|thumb|gusset|heel(?:\s+flap)?|toe|foot|leg|instep|sole|pocket|button|"
    r"buttonhole|bands?|armholes?|shoulders?|raglan|cap|waist|bust|half|side|lower|body)"
)
_HEADING = regex(
    rf"^(?P<name>\s*(?:(?:to\s+)?shape\s+)?(?:the\s+)?{_PART}(?:\s+(?:and\s+)?{_PART}){{0,3}}(?:\s+shaping)?)\s*[.]?\s*$",
    re.I,
)
"""A separate row that names a part or what is shaped, without a colon: "Yoke.", "Shape armholes"."""


_NUMBERED = regex(rf"^\s*{SECTION_NUMBER}")
_WORKED_OVER = regex(r"\s*(?:[:,\u2013\u2014-]\s*|\bis\s+)(worked\s+(?:over|on)\b[^()]*)$", re.I)
_WRITTEN = regex(rf"(?<=\w){WRITTEN}(?=\s*(?:[(,]|$))", re.I)
_ALSO_SAID = regex(r"(?<=\d|s|e),\s*(?:worked\s+)?in\s+(?:the\s+)?(?:rounds?|rows)\)$", re.I)
_LONGEST_NAME = 48
"""Letters that the name of a line may have."""
_NOTE = regex(r"^\s*note:\s*", re.I)


def label_of_head(text: str) -> str:
    """Return the label that the name of a stitch pattern becomes, for which `heads_pattern` holds."""
    head = _NUMBERED.sub(lambda number: " " * len(number.group()), as_plain_head(text))
    head = _WORKED_OVER.sub(r" (\1)", _WRITTEN.sub("", head))
    return _ALSO_SAID.sub(")", head) if len(head) > _LONGEST_NAME else head


def _as_heading(text: str, below: str) -> str:
    """Make a row that only names a part or a pattern the label of the line below; above another heading, a
    note."""
    row = _NOTE.sub("", below)  # a first row that is not read stands as a note in a pasted file
    if heads_pattern(text, row):
        return f"{label_of_head(text)}:" if row == below else f"Note: {label_of_head(text)}"
    match = _HEADING.match(text)
    if match is None:
        return text
    name = match.group("name")
    return f"Note: {name.strip()}" if _HEADING.match(below) else f"{name}:"


def _cut_at_head(row: tuple[str, Span], size_names: tuple[str, ...]) -> list[tuple[str, Span]]:
    """Cut a row behind the name of the pattern that it tells: "Moss stitch: Row 1: *K1, p1; rep from *.", and
    before each further head of sizes."""
    text, place = row
    at = run_in_head(text)
    if not at:
        return _stretches(row, cut_at_sizes(text, size_names))
    rest = Span(line=place.line, column=place.column + at, length=len(text) - at)
    return [(text[:at].rstrip(), replace(place, length=at)), (text[at:], rest)]


def _stretches(row: tuple[str, Span], cut: Sequence[tuple[int, int]]) -> list[tuple[str, Span]]:
    """Return the stretches of a row as rows of their own."""
    text, place = row
    if len(cut) < 2:
        return [row]
    return [
        (text[start:end].rstrip(), Span(line=place.line, column=place.column + start, length=end - start))
        for start, end in cut
    ]


def _headed(row: tuple[str, Span]) -> list[tuple[str, Span]]:
    """Split a row of the file that holds a second head: `1st row: K. 2nd row: P.`

    A row for some sizes stays whole: its second head would else be for all of them.
    """
    return _parted(row, _HEAD)


_SENTENCE = regex(r"(?<=[.!])\s+(?=[A-Z])")
_SAME_TIME = regex(r"\bat\s+the\s+same\s+time\b", re.I)


def _sentenced(row: tuple[str, Span]) -> list[tuple[str, Span]]:
    """Split a row that reads sentence by sentence only: what one of them says may need a line of its own.

    A line for some sizes, or with two shapings at the same time, stays whole.
    """
    return _parted(row, _SENTENCE)


def _claused(row: tuple[str, Span]) -> list[tuple[str, Span]]:
    """Split a row that reads only clause by clause: what is worked one after the other."""
    text, place = row
    if is_for_some(text) or _SAME_TIME.search(text) or reads(text):
        return [row]
    parts = [
        (text[start:end], Span(line=place.line, column=place.column + start, length=end - start))
        for start, end in clauses_of(text)
    ]
    return parts or [row]


def _parted(row: tuple[str, Span], before: re.Pattern[str]) -> list[tuple[str, Span]]:
    """Split a row behind each match if only its parts can be read, and all of them can."""
    text = row[0]
    starts = [0, *(match.end() for match in before.finditer(text))]
    if len(starts) < 2 or is_for_some(text) or _SAME_TIME.search(text) or reads(text):
        return [row]
    parts = _stretches(row, list(zip(starts, [*starts[1:], len(text)], strict=True)))
    return parts if all(reads(part) for part, _ in parts) else [row]


@dataclass(frozen=True, slots=True, kw_only=True)
class Rows:
    """What some rows read as."""

    taken: int
    """How many rows make the line. Range: 1 and up."""
    line: Line | None
    """The line; None, with problems in the draft, if it cannot be read."""
    meant: Line | None = None
    """The line as it reads with the words that were meant, if it does."""


def _unread(row: tuple[str, Span]) -> Line:
    """Make a stand-in for a line that could not be read, so that the lines around it are still checked."""
    text, place = row
    nothing = (Unread(place),)
    return Line(label=None, numbers=(), side="", rows=False, sentences=nothing, text=text, place=place)


def _as_printed(line: Line, rows: list[tuple[str, Span]], respelt: Respelt, own: Abbreviations) -> Line:
    """Return a line with its printed words, and with what its abbreviations of the page are taken for."""
    line = work_changes(line, own)
    printed = respelt.words(rows)
    if printed is None:
        return line
    return own.tell(replace(line, text=printed, stripes=respelt.stripes(rows)), respelt.uses(rows))


def read_rows(
    rows: list[tuple[str, Span]], words: Words, draft: FileDraft, respelt: Respelt | None = None
) -> Rows:
    """Read one printed line, which may be broken over several lines of the file.

    A line that cannot be read alone and does not end a sentence is tried together with those that follow,
    because text copied from a page has its lines broken inside sentences. A note takes in the next row only
    if that row is not a line of its own.
    """
    first = read_line(rows[0][0], Placer(rows[:1], respelt), words)
    note = first.line is not None and is_only_said(first.line) and len(rows) > 1
    if note and read_line(rows[1][0], Placer(rows[1:2], respelt), words).line is not None:
        return Rows(taken=1, line=first.line)
    if first.line is not None and not _goes_on(rows, 1):
        return Rows(taken=1, line=first.line)
    for count in range(2, min(len(rows), 8) + 1):
        if rows[count - 2][0].rstrip().endswith((".", "!")) and not _beside(rows[count - 1][0]):
            break
        if _goes_on(rows, count):
            continue
        joined = " ".join(
            row[0].strip() if number else row[0].rstrip() for number, row in enumerate(rows[:count])
        )
        if not reads(joined):
            continue
        reading = read_line(joined, Placer(rows[:count], respelt), words)
        if reading.line is not None:
            return Rows(taken=count, line=reading.line)
    unread = [one for one in respelt.uses(rows[:1]) if not (one.meaning or one.usual)] if respelt else []
    if first.problems and unread:
        draft.report(Placer(rows[:1], respelt)(0, len(rows[0][0].strip())), *unread[0].refusal())
        return Rows(taken=1, line=first.line)
    draft.problems.extend(first.problems)
    return Rows(taken=1, line=first.line, meant=first.meant)




def _goes_on(rows: list[tuple[str, Span]], count: int) -> bool:
    """Return whether the last of the first `count` rows cannot be the end of a sentence."""
    if count >= len(rows):
        return False
    return rows[count - 1][0].rstrip().endswith((",", ";", "-", "(", "[")) or _beside(rows[count][0])


def _beside(row: str) -> bool:
    """Return whether a row names a shaping alongside that of the row before: "At the same time, …"."""
    return row.lstrip().lower().startswith(("at the same time", "and at the same time"))


class Placer:
    """Finds the place in the file of a stretch of text joined from several rows."""

    def __init__(self, rows: list[tuple[str, Span]], respelt: Respelt | None = None) -> None:
        self.respelt = respelt
        self.starts: list[tuple[int, Span]] = []
        offset = 0
        for number, (text, place) in enumerate(rows):
            lead = len(text) - len(text.lstrip()) if number else 0
            self.starts.append((offset, Span(line=place.line, column=place.column + lead)))
            offset += len(text.strip() if number else text.rstrip()) + 1

    def __call__(self, offset: int, length: int) -> Span:
        """Return the place of a stretch: offset in the joined text from 0, and length."""
        start, place = max((entry for entry in self.starts if entry[0] <= offset), key=lambda entry: entry[0])
        found = Span(line=place.line, column=place.column + offset - start, length=max(1, length))
        return self.respelt.place(found) if self.respelt is not None else found
