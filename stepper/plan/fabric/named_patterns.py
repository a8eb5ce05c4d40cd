"""Work patterns called by name: those of the trade and those that the page itself defines. No I/O.

Theory of operation. A pattern of the trade (`stepper.craft.stitch_patterns`) is a grid as seen from the right
side; each row is laid over the stitches in hand and turned to the side that it is worked from. A reversible
one begins as written on whichever side comes first. The patterns that a page defines are kept by
`stepper.plan.lines.pattern_definitions`.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from itertools import groupby, takewhile
from math import lcm

from stepper.craft.stitch_patterns import PATTERNS, StitchPattern, find_pattern
from stepper.plan.drafts import Template, without_places
from stepper.plan.fabric.columns import KNIT, UnknownFabricError, as_seen
from stepper.plan.fabric.established import columns_of, establish, row_due, spread_since, stands_in_its_rounds
from stepper.plan.fabric.page_pattern import pattern_of
from stepper.plan.model import flatten
from stepper.plan.state.fitting_counts import nearest_counts
from stepper.plan.state.measuring_places import is_rib
from stepper.plan.state.needle_and_yarn import refuse_needles_by_turns
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.phrase import work_phrase
from stepper.plan.stitches.row_elements import MisfitError
from stepper.plan.stitches.run_repeats import join_runs
from stepper.project.dialect import is_american as reads_american
from stepper.project.instructions import Forms, WorkRounds
from stepper.project.pattern_heads import key_of
from stepper.project.problems import Span, nearest, one_of
from stepper.project.stitchwork import Element, Numbers, Several, Until, Work
from stepper.regex import regex

NAMED = "named "
"""Prefix of the manner of rounds worked in a pattern called by name."""
_AROUND = regex(r"[^:]{0,40}\b(?:rnds?|rounds?)\b[^:]{0,40}:", re.I)
_AS_HERE = "Write them out as they are worked here."
RIB_OF = "as-"
"""Before the name of a part whose rib or pattern is meant: "in rib as given for back" is `as-back rib`."""


def named_cycle(manner: str, needles: Needles, place: Span) -> tuple[Template, ...] | None:
    """Return the rounds of a pattern called by name; None, and reported, if it is unknown or does not fit.

    Args:
        manner: The name, after `NAMED`.
        needles: The knitting in hand.
        place: Where the line calls it.
    """
    name = manner.removeprefix(NAMED)
    if name.startswith(RIB_OF) and not name.endswith(" rib"):
        return _page_pattern_of(key_of(name).removeprefix(RIB_OF), needles, place)
    if name.startswith(RIB_OF):
        return _rib_of(name.removeprefix(RIB_OF).removesuffix(" rib"), needles, place)
    own = needles.patterns.get(key_of(name))
    if own is not None:
        told = shows_other_face(own, needles) if len(own) > 1 else ""
        if told:
            needles.report(place, f"{told}: every other one would be wrong.", _AS_HERE)
        return None if told else own
    pattern = _of_the_trade(name, needles, place)
    if pattern is None or not _fits(pattern, needles.count, needles, place):
        return None
    return _cycle(
        needles, place, len(pattern.rows), lambda row: _worked(pattern, row, needles.count, needles)
    )


def shows_other_face(rows: tuple[Template, ...], needles: Needles) -> str:
    """Return what is wrong if rows of the page are called in the round, or rounds of it in rows; else empty.

    Rows that name no side may be rounds, as many pages call both rows.
    """
    if all(row.stockinette or row.chart or row.asks or row.own is not None for row in rows):
        return ""
    if not needles.flat:
        told = "these rows are written for right and wrong sides, and the work goes in rounds"
        return told if rows[0].side or _were_rows(rows, needles) else ""
    places = {row.place.line for row in rows}
    around = any(line.place.line in places and _AROUND.match(line.text) for line in needles.project.lines)
    return "these rounds are written for the right side, and the work goes in rows" if around else ""


def _were_rows(rows: tuple[Template, ...], needles: Needles) -> bool:
    """Return whether rows that name no side were worked in rows before, and would lie otherwise in the round.

    Moss stitch lies alike either way; where the wrong side is purled back it does not.
    """
    worked = (draft.template for draft in needles.drafts if draft.side == "WS")
    known = {template.place for template in worked if template is not None}
    for row in rows:
        if row.place not in known:
            continue
        try:
            made = work_phrase(
                row.elements, count=needles.count, size=needles.size, yarn=needles.yarn, place=row.place
            )
        except MisfitError:
            return True
        codes = [run.stitch for run in flatten(made.items) for _ in range(run.times)]
        if codes != [as_seen(code, wrong=True) for code in reversed(codes)]:
            return True
    return False


def _page_pattern_of(part: str, needles: Needles, place: Span) -> tuple[Template, ...] | None:
    """Return the rows that the page calls the pattern of another part; None, and reported, without any."""
    rows = needles.patterns.get(pattern_of(part))
    if rows is None:
        needles.report(
            place,
            f"no rows of the {part} are called its pattern, so nobody can tell which are meant.",
            'Say so where they stand: "These 4 rows form the pattern."',
        )
    return rows


def _rib_of(part: str, needles: Needles, place: Span) -> tuple[Template, ...] | None:
    """Return the rows of the rib that another part begins with; None, and reported, if it has none."""
    drafts = [
        draft
        for draft in needles.drafts
        if draft.section.lower().removesuffix("s") == part.removesuffix("s") and draft.before
    ]
    ribbed = [draft.template for draft in takewhile(is_rib, drafts) if draft.template is not None]
    for period in range(1, len(ribbed) // 2 + 1):
        if all(template == ribbed[at % period] for at, template in enumerate(ribbed)):
            return tuple(ribbed[:period])
    needles.report(
        place,
        f"the {part} begins with no rib that is worked here, so nobody can tell which is meant.",
        'Write the rib with its stitches: "Work in k2, p2 rib for 5 cm."',
    )
    return None


def goes_on_with_name(instruction: WorkRounds, needles: Needles) -> bool:
    """Return whether rounds called by a name continue the fabric because it already is that pattern.

    "Continue in moss stitch" after an odd number of rows of it does not start it over.
    """
    known = needles.established
    called = instruction.manner.startswith((NAMED, "rib "))
    if not called or instruction.first is not None or instruction.edges is not None:
        return False
    if known.name != key_of(instruction.manner) or known.end <= known.start:
        return False
    return stands_in_its_rounds(needles) or not spread_since(needles)


def row_after_last(cycle: tuple[Template, ...], needles: Needles) -> int | None:
    """Return which row of a pattern follows the row last worked, from 0; None if nobody can tell."""
    last = needles.drafts[-1] if needles.drafts else None
    if last is not None and last.words:
        return None
    if last is None or last.after != needles.count:
        return None
    worked = join_runs(flatten(last.phrase))
    found = set()
    for number, row in enumerate(cycle):
        if row.own is not None or (row.side and needles.flat and row.side != last.side):
            continue  # what a row in own words looks like is not known
        try:
            made = work_phrase(
                row.elements, count=last.before, size=needles.size, yarn=needles.yarn, place=row.place
            )
        except MisfitError:
            continue
        if join_runs(flatten(made.items)) == worked:
            found.add((number + 1) % len(cycle))
    ways_on = {tuple(row.elements for row in (*cycle[at:], *cycle[:at])) for at in found}
    return min(found) if len(ways_on) == 1 else None


def comes_on_side(number: int, first: str, needles: Needles) -> bool:
    """Return whether a row of a pattern may come next, from 1, whose row 1 is for a side; in rounds any may.

    Args:
        number: The row.
        first: `RS` or `WS`; empty if the page does not say.
        needles: The knitting in hand.
    """
    return not first or not needles.flat or (first == needles.side) == (number % 2 == 1)


def as_it_is_set(instruction: WorkRounds, needles: Needles) -> WorkRounds | None:
    """Return "in stocking stitch as set" as what is set: stockinette, or that with its few other stitches.

    A seam stitch that is purled stays so. None, reported, where less than three stitches in four are of the
    fabric that the line names, or nobody can tell which are.
    """
    if not instruction.as_set or instruction.manner not in ("stockinette", "garter") or needles.counting.lost:
        return instruction
    try:
        columns, _ = columns_of(needles)
    except UnknownFabricError:
        columns = []
    garter = instruction.manner == "garter"
    named = [len(set(column)) > 1 if garter else set(column) == {KNIT} for column in columns]
    if columns and all(named):
        return replace(instruction, as_set=False)
    if 4 * sum(named) < 3 * len(columns) or not columns:
        told = f"the stitches before this line are not set in {instruction.manner}"
        told += ", so nobody can tell how they go on."
        needles.miss(instruction.place, told, 'Leave out "as set", or write the round out.')
        return None
    return replace(instruction, manner="pattern", as_set=False)


def _side_worked(cycle: tuple[Template, ...], needles: Needles) -> str:
    """Return the side on which the first of some rows was worked before, if they come on it each time.

    The rows of the back say their side seldom: on the other one the front would be inside out.
    """
    begins = not needles.drafts or not needles.drafts[-1].before
    if not needles.flat or len(cycle) % 2 or needles.free or begins or needles.counting.unread:
        return ""
    worked = (draft.side for draft in needles.drafts if draft.flat and draft.template == cycle[0])
    return next(worked, "")


_OF_ONE_ROW = frozenset({"moss", "seed", "garter"})
"""Patterns of which a page may print one row, which is worked on both sides. Source: common practice."""


def first_row(instruction: WorkRounds, cycle: tuple[Template, ...], needles: Needles) -> int | None:
    """Return which row of a pattern comes first, from 0; None, reported, if it has none of that number or
    side."""
    at = instruction.first.of(needles.size) - 1 if instruction.first is not None else 0
    if instruction.as_set and instruction.first is None:
        following = row_after_last(cycle, needles)
        if following is None:
            told = "the row before this line is none of that pattern, so nobody can tell how it goes on."
            needles.report(instruction.place, told, "Write which row comes next: beginning with row 2.")
        return following
    known = needles.established
    called = instruction.manner.startswith(NAMED) and instruction.first is None and len(cycle) > 1
    if called and known.name == key_of(instruction.manner):
        needles.warn(
            instruction.place,
            "taken as beginning the pattern again with its row 1, on the stitches as they are now; "
            'say "beginning with row 3" where it goes on.',
        )
    if not 0 <= at < len(cycle):
        needles.report(instruction.place, f"the pattern has {len(cycle)} rows, and no row {at + 1}.")
        return None
    named = instruction.manner.startswith(NAMED)
    # One row of such a pattern alone, printed for the right side, is that of both.
    both = len(cycle) == 1 and key_of(instruction.manner.removeprefix(NAMED)) in _OF_ONE_ROW
    side = (cycle[0].side or _side_worked(cycle, needles)) if named and not both else ""
    if not comes_on_side(at + 1, side, needles):
        needles.report(
            instruction.place,
            f"a {needles.side} row comes next, and row {at + 1} of the pattern is none.",
            "Work one row before it, or begin with another row.",
        )
        return None
    return at


def rows_from(first: Numbers, needles: Needles) -> tuple[Template, ...] | None:
    """Return the rows of the pattern in hand from one of them on, which a line calls by its printed number.

    Args:
        first: The printed number.
        needles: The knitting in hand.

    Returns:
        The rows; None, reported, if that row is none of them, or is worked on the other side.
    """
    row_due(needles)  # what was worked since then may have shaped it
    known, number = needles.established, first.of(needles.size)
    row = needles.section.numbered.get(number)
    worked = [draft.side for draft in needles.drafts if draft.template is row] if row is not None else []
    if row not in known.cycle or known.shaped or known.one_yarn_since or not worked:
        told = f"row {number} is none of the pattern that goes on here, as it now is."
        needles.miss(first.place, told, "Write the rows that come, or name the pattern.")
        return None
    if needles.flat and worked[-1] != needles.side:
        told = f"a {needles.side} row comes next, and row {number} was worked as a {worked[-1]} row."
        needles.miss(first.place, told, "Work one row before it, or begin with another row.")
        return None
    at = known.cycle.index(row)
    return known.cycle[at:] + known.cycle[:at]


def take_as_pattern(instruction: Forms, needles: Needles) -> None:
    """Take the rounds just worked as the pattern that the page names."""
    rounds = (
        instruction.rounds.of(needles.size)
        if instruction.rounds is not None
        else len(needles.section.pattern)
    )
    worked = needles.drafts[needles.section.start :][-rounds:] if rounds else []
    cycle = tuple(draft.template for draft in worked if draft.template is not None and draft.before)
    if not cycle or len(cycle) != rounds:
        needles.miss(
            instruction.place,
            f"{rounds} rounds that could be the pattern are not written out before this line.",
        )
        return
    begin = len(needles.drafts) - rounds
    before = needles.drafts[begin - 1] if begin else None
    if refuse_needles_by_turns(worked, before, instruction.place, needles):
        return
    named = tuple(needles.section.numbered.get(number) for number in instruction.numbers)
    if any(named) and not _worked_last(tuple(row for row in named if row is not None), rounds, needles):
        _refuse_earlier_rows(instruction.place, needles)
        return
    if cycle != needles.section.pattern:
        establish(cycle, needles, start=len(needles.drafts) - rounds)
    key = key_of(instruction.name)
    if key and key not in ("rib", "ribbing", "repeat"):
        needles.patterns[key] = (replace(cycle[0], side=worked[0].side if worked[0].flat else ""), *cycle[1:])


def take_rows_as_pattern(cycle: tuple[Template, ...], place: Span, needles: Needles) -> None:
    """Take rounds as the pattern that goes on: "rep rows 3 and 4 for pattern" behind them.

    Behind other rows nobody can tell with which of them the pattern goes on.
    """
    if needles.counting.lost:
        return
    if not _worked_last(cycle, len(cycle), needles):
        _refuse_earlier_rows(place, needles)
        return
    if cycle != needles.section.pattern:
        establish(cycle, needles, start=len(needles.drafts) - len(cycle))
    needles.last.repeated = (cycle, 0)


def _worked_last(cycle: tuple[Template, ...], rounds: int, needles: Needles) -> bool:
    """Return whether rounds, as many as a line says, are those worked last, in their order."""
    worked = [draft.template for draft in needles.drafts[needles.section.start :][-len(cycle) :]]
    alike = [template is not None and without_places(template) for template in worked]
    return len(cycle) == rounds and alike == [without_places(template) for template in cycle]


def _refuse_earlier_rows(place: Span, needles: Needles) -> None:
    needles.miss(
        place,
        "these rows are not the last ones worked, so with which row the pattern goes on is not said.",
        'Leave this line out, and write how long: "Rep rows 1-2 until piece measures 10 cm".',
    )


def edged_cycle(instruction: WorkRounds, needles: Needles) -> tuple[Template, ...] | None:
    """Return the rounds of a fabric with stitches of another at both edges; None, reported, if one is
    unknown."""
    assert instruction.edges is not None
    number, manner = instruction.edges
    place, width = instruction.place, number.of(needles.size)
    middle = _pattern_of(instruction.manner, needles, place)
    edge = _pattern_of(manner, needles, place)
    if middle is None or edge is None:
        return None
    inner = needles.count - 2 * width
    if inner < 1:
        needles.report(
            number.place, f"{width} stitches at each edge leave none of the {needles.count} between."
        )
        return None
    if not _fits(middle, inner, needles, place):
        return None

    def row(at: int) -> tuple[str, ...]:
        border = _worked(edge, at, width, needles)
        return (*border, *_worked(middle, at, inner, needles), *reversed(border))

    return _cycle(needles, place, lcm(len(middle.rows), len(edge.rows)), row)


def _pattern_of(manner: str, needles: Needles, place: Span) -> StitchPattern | None:
    if manner.startswith("rib "):
        return find_pattern("k{} p{} rib".format(*manner.split()[1:]))
    name = {"k": "stockinette", "p": "reverse stockinette"}.get(manner, manner.removeprefix(NAMED))
    if name in PATTERNS:
        return PATTERNS[name]
    if not manner.startswith(NAMED):
        needles.report(
            place,
            f'the fabric between the edges is "{manner}", which only says that it goes on.',
            'Name it: "in stockinette".',
        )
        return None
    return _of_the_trade(name, needles, place)


def _of_the_trade(name: str, needles: Needles, place: Span) -> StitchPattern | None:
    pattern = find_pattern(name, american=is_american(needles) if "moss" in name else False)
    if pattern is None:
        known = (*needles.patterns, *PATTERNS)
        hint = (
            nearest(key_of(name), known)
            or f'Write its rows under its name: "{name.capitalize()}:", then "Row 1: ...".'
        )
        needles.miss(place, f'no pattern called "{name}" is known, nor defined on this page.', hint)
        return None
    if pattern.open:
        needles.warn(place, f"{pattern.open} Write its rows out if the page means another.")
    return pattern


def is_american(needles: Needles) -> bool:
    """Return whether the page uses US wording and no UK wording."""
    return reads_american(" ".join(line.text for line in needles.project.lines))


def _fits(pattern: StitchPattern, count: int, needles: Needles, place: Span) -> bool:
    """Return whether a pattern fits a number of stitches; if not, report the nearest counts that do."""
    if pattern.fits(count, flat=needles.flat):
        return True
    more = f", or {one_of(map(str, pattern.even_ends))} more" if needles.flat and pattern.even_ends else ""
    near = nearest_counts(count, pattern.repeat)
    needles.report(
        place,
        f"{pattern.name} needs a multiple of {pattern.repeat}{more}; {count} stitches are on the needles.",
        f"It would fit on {one_of(map(str, near))} stitches.",
    )
    return False


def _worked(pattern: StitchPattern, row: int, count: int, needles: Needles) -> tuple[str, ...]:
    """Lay a row of a grid over a number of stitches, in working order."""
    tile = pattern.rows[row % len(pattern.rows)]
    seen = (tile * (count // len(tile) + 1))[:count]
    begun = needles.wrong
    wrong = needles.flat and (row % 2 == 1) != begun
    other = wrong != begun if pattern.reversible else wrong
    return tuple(as_seen(code, wrong=True) for code in reversed(seen)) if other else seen


def _cycle(
    needles: Needles, place: Span, rows: int, row: Callable[[int], tuple[str, ...]]
) -> tuple[Template, ...]:
    """Return the rounds of a repeat; in rows an even number, so that the sides agree."""
    period = lcm(rows, 2) if needles.flat else rows
    made = tuple(Template(_elements(row(at), place), place) for at in range(period))
    return made[:1] if len(set(made)) == 1 and not needles.flat else made


def _elements(codes: tuple[str, ...], place: Span) -> tuple[Element, ...]:
    """Write a row as a repeat and what is left over."""
    if len(set(codes)) == 1:
        return (Until(codes[0], "end", None, None, place),)
    for unit in range(1, len(codes) // 2 + 1):
        if all(code == codes[at % unit] for at, code in enumerate(codes)):
            over = codes[len(codes) - len(codes) % unit :]
            return (Several(_works(codes[:unit], place), None, "rest", None, place), *_works(over, place))
    return _works(codes, place)


def _works(codes: tuple[str, ...], place: Span) -> tuple[Work, ...]:
    return tuple(
        Work(code, Numbers((len(tuple(alike)),), place), None, place) for code, alike in groupby(codes)
    )
