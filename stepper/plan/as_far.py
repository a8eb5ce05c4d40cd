"""Work out a garment as far as its file is read: up to the first row that is open. No I/O.

Theory of operation. A row is open that is not read, and so is one that is read and does not fit. The garment
is worked in the order in which it is knitted and ends where it comes to such a row, so nothing behind it is
worked out: neither what hangs on it nor what only seems not to. A row that does not fit is found by working
what stands above it; the garment is then worked again up to there, until nothing is left that does not fit.
A row that says what is done at the same time as the line above it opens that line, too: knitted without it,
that line would be knitted wrongly; once it is in her own words, it is as she knitted it. So are short rows
open that are not closed before such a row, from the first of them on: behind it nobody could tell where they
are turned.
"""

from __future__ import annotations

import re
from bisect import bisect_right
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace

from stepper.plan.compile import Compiled, compile_plan
from stepper.plan.lines.line_in_hand import is_in_own_words
from stepper.plan.model import Plan
from stepper.project.instructions import Line, Unread, UpToHere
from stepper.project.model import Project, Section
from stepper.project.page.pieces import works
from stepper.project.page.unread.proposals import Kept, propose
from stepper.project.problems import Span
from stepper.regex import regex

_BESIDE = regex(
    r"\b(?:at\s+the\s+same\s+time|same\s+time|meanwhile|in\s+the\s+meantime|simultaneously|whil(?:e|st)"
    r"|as\s+you\s+(?:knit|work|go)|along\s+the\s+way|when\b[^.;]*?\b(?:measures?|is)\s+(?:about\s+)?\d"
    r"|throughout|already|from\s+(?:the\s+)?(?:beginning|start|first)|before\s+(?:you|this|that))\b",
    re.I,
)
"""Words of a row that may begin above it."""


def plan_as_far(project: Project, rows: Iterable[int]) -> Plan | None:
    """Work out a garment up to the first row that is open, in the size that is knitted alone.

    Args:
        project: As much of the file as is read.
        rows: Rows of the file that are open, from 1: left by a pasted page, or not read.

    Returns:
        The plan, with the row at which it ends, without rounds if that is the first; None if something does
        not fit that is no row of the pattern.
    """
    if project.alone is None and not project.switches:
        project = replace(project, alone=Span(line=1, column=1))
    ends = dict.fromkeys(rows, 0)
    while True:
        compiled = compile_plan(_up_to(project, ends))
        if compiled.plan is not None and not _ends_before_turns(compiled.plan, ends, project):
            return compiled.plan
        if compiled.plan is None and not _end_before(compiled, ends, project):
            return None


def _ends_before_turns(plan: Plan, ends: dict[int, int], project: Project) -> bool:
    """End a garment before short rows that no row closes in front of the next that is open.

    A remark among short rows ends the garment for now and leaves them open; once it is settled, they would be
    opened, which she has knitted by then.

    Args:
        plan: The garment up to the first row that is open.
        ends: Rows at which it ends, as in `_end_before`.
        project: The garment.
    """
    beyond, row = dict(ends), plan.open
    while row is not None and row.within_turns and row.line in beyond:
        del beyond[row.line]
        compiled = compile_plan(_up_to(project, beyond))
        if compiled.plan is None:
            return _end_before(compiled, ends, project)
        row = compiled.plan.open
    return False


def _end_before(compiled: Compiled, ends: dict[int, int], project: Project) -> bool:
    """End a garment before the first thing that does not fit; return whether it ended later before.

    Args:
        compiled: The garment, with what does not fit as it was found one after the other.
        ends: Rows at which the garment ends, each with how many rounds are worked before that.
        project: The garment.
    """
    lines = {line.place.line: line for section in project.sections for line in section.lines}
    known, tried = sorted(lines), list[tuple[int, int]]()
    worked = compiled.worked
    if worked is not None and worked.findings:
        first = worked.findings[0]
        # Of numbered rows the first is in hand, and what is told stands below it.
        rows = (max(first.row, first.place.line), first.row, first.place.line)
        before = {draft.line for draft in worked.drafts[: first.begun]}
        tried = [*((row, first.begun if row in before else 0) for row in rows), (first.place.line, 0)]
        if first.called and (first.called in rows or before.intersection(rows)):
            # Worked once more it does not fit, and what was knitted by it stays: open is what calls for it.
            tried = [(first.called, first.called_at)]
        # To open a remark would help nobody.
        tried.sort(key=lambda each: not works(lines[max(known[0], _row_of(each[0], known))]))
    for row, since in (*tried, *((each.line, 0) for each in compiled.problems)):
        begins = _row_of(row, known)
        if begins and ends.get(begins, since + 1) > since:
            ends[begins] = since
            return True
    return False


def _row_of(row: int, known: Sequence[int]) -> int:
    """Return where the line begins that a row of the file belongs to; 0 if it belongs to none."""
    at = bisect_right(known, row)
    return known[at - 1] if at else 0


def _up_to(project: Project, ends: Mapping[int, int]) -> Project:
    """Return a project that ends at the first of some rows that the knitting comes to."""
    sections = tuple(replace(section, lines=_with_ends(section, ends)) for section in project.sections)
    return replace(project, sections=sections)


def _with_ends(section: Section, ends: Mapping[int, int]) -> tuple[Line, ...]:
    lines = list(section.lines)
    for at, line in enumerate(section.lines):
        since = 0 if _is_unread(line) else ends.get(line.place.line)
        if since is None:
            continue
        lines[at] = _ended(line, since)
        if _BESIDE.search(line.text):
            above = next((one for one in range(at - 1, -1, -1) if _is_worked(section.lines[one], ends)), None)
            if above is not None and not _is_open_or_hers(section.lines[above], ends):
                lines[above] = _ended(section.lines[above], since)
    return tuple(lines)


def _is_unread(line: Line) -> bool:
    return any(isinstance(each, Unread) for each in line.sentences)


def _is_remark(line: Line) -> bool:
    found = propose(line.text.removeprefix("Note: "))
    return found.kept is Kept.NOTE and not found.doubtful


def _is_worked(line: Line, ends: Mapping[int, int]) -> bool:
    """Return whether rows are knitted for a line: one that is not read and no remark speaks of some, too."""
    return works(line) or (line.place.line in ends and not _is_remark(line))


def _is_open_or_hers(line: Line, ends: Mapping[int, int]) -> bool:
    return line.place.line in ends or is_in_own_words(line)


def _ended(line: Line, since: int) -> Line:
    """Return a line at which the garment ends; worked before so many rounds, it is what it was."""
    read = works(line) and not _is_unread(line)
    ended = replace(line, ends=UpToHere(said=not read and _is_remark(line), since=since))
    return ended if since else replace(ended, numbers=(), every="")  # no row of a block
