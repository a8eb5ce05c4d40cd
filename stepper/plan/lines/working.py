"""Work the instructions of a line, with one short helper for each kind. No I/O.

Each helper takes the knitting in hand and one instruction, and adds rounds to it. What does not fit is
reported, and the work goes on as the line intended, so that one fault is told once. It is long because
every kind of instruction has its helper here: in the list at the top if it is another module's.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from functools import singledispatch
from typing import TypeVar

from stepper.craft.rows import row_word
from stepper.craft.stitches import STITCHES
from stepper.plan.checks.counts import check_count
from stepper.plan.drafts import Template, own_words_of
from stepper.plan.even.blended_phrase import work_blended_phrase
from stepper.plan.even.even_change import work_evenly
from stepper.plan.fabric.crossings import check_crossings, check_pace
from stepper.plan.fabric.established import establish, goes_on_from_before
from stepper.plan.fabric.named_patterns import (
    as_it_is_set,
    first_row,
    goes_on_with_name,
    rows_from,
    take_as_pattern,
    take_rows_as_pattern,
)
from stepper.plan.fabric.new_beginning import (
    begin_further,
    check_beginning,
    refuse_beginning_within,
    split_at_beginning,
    stop_short,
)
from stepper.plan.lines.again.repeated_rounds import (
    are_same_rounds,
    check_rounds,
    come_as_they_were,
    establish_pattern,
    in_yarn_named,
    of_rows_above,
    repeated_cycle,
)
from stepper.plan.lines.buttonhole_rows import lay_buttonholes
from stepper.plan.lines.chart_work import work_chart
from stepper.plan.lines.durations import cycle_of, go_on_in, last_for, times_in_words, work_even
from stepper.plan.lines.ended_rounds import end_with
from stepper.plan.lines.flat_or_round import closes
from stepper.plan.lines.held.one_part import go_on_over, hold_half
from stepper.plan.lines.held.returned import take_back
from stepper.plan.lines.held.set_apart import leave_waiting, set_apart, take_as_the_others
from stepper.plan.lines.marking import mark_after, mark_every
from stepper.plan.lines.named_rounds import ROUND_NAME, rows_of_one_name
from stepper.plan.lines.own_words import begins_or_ends, leave_unknown
from stepper.plan.lines.rounds import repeat, work_template
from stepper.plan.lines.rows_or_rounds import hangs_at_gap
from stepper.plan.lines.shaping.both_sides_shaping import over_both_sides, part_sides
from stepper.plan.lines.shaping.edge_shaping import work_at_edge
from stepper.plan.lines.shaping.edges_side_by_side import refuse_at_once, work_edges_together
from stepper.plan.lines.shaping.intervals import (
    find_named_round,
    none_in_size,
    work_at_intervals,
    work_edge_rows,
)
from stepper.plan.lines.shaping.likewise import shown_before, work_as_shown
from stepper.plan.lines.shaping.side_by_side import work_together
from stepper.plan.lines.stripes import end_in_stripes, work_stripes
from stepper.plan.lines.wrong_side import tell_other_side, tell_wrong_side
from stepper.plan.model import flatten
from stepper.plan.state.needle_and_yarn import break_yarn, change_needle, take_yarn
from stepper.plan.state.needles import Needles
from stepper.plan.state.over_needles import lay_instep, move_over, over_needles
from stepper.plan.state.own_gauge import gauge_for
from stepper.plan.stitches.marker_sides import side_unsaid
from stepper.plan.stitches.round_sources import TwoReadings
from stepper.plan.stitches.row_elements import is_sleeve
from stepper.plan.told_only import WHEN_DONE, lets_stop_sooner
from stepper.project.duration import Ended, Paced, Rounds, Times, UntilCount, UntilLength
from stepper.project.instructions import (
    AtIntervals,
    AtOnce,
    BindOff,
    BothSides,
    BreakYarn,
    Buttonholes,
    ChartWork,
    Crossed,
    EdgeRows,
    EdgeShaping,
    EdgesTogether,
    Evenly,
    Flat,
    Forms,
    Going,
    Join,
    Labelled,
    Needle,
    OwnWords,
    Phrase,
    PrintedCount,
    Remark,
    Repeated,
    Return,
    RowsCount,
    Sentence,
    StopShort,
    Striped,
    Together,
    TurnMethod,
    Unread,
    WithYarn,
    WorkRounds,
)
from stepper.project.laying_out import (
    BeginFurther,
    BeginsAt,
    InstepOn,
    MarkAfter,
    MarkEvery,
    MarkRow,
    MoveOver,
    OnlyOn,
    OverNeedles,
    SetApart,
)
from stepper.project.pattern_heads import key_of
from stepper.project.stitchwork import Across, Element, Hold, Mark, Numbers, PickUp, TurnHere, Work
from stepper.regex import regex

_MADE_AGAIN = regex(
    r"make\s+(?:[2-9]|two|three|four|five|six)\b(?!\s+(?:st|button|eyelet|tassel|pompom))", re.IGNORECASE
)


@singledispatch
def work(instruction: Sentence, needles: Needles) -> None:
    """Work one instruction of a line."""
    raise AssertionError(f"no helper works {type(instruction).__name__}")


_Kind = TypeVar("_Kind", bound=Sentence)


def _give(kind: type[_Kind], helper: Callable[[_Kind, Needles], None]) -> None:
    """Have a helper of another module work the instructions of a kind; it has to take that kind."""
    work.register(kind, helper)


_give(Forms, take_as_pattern)
_give(Striped, work_stripes)
_give(Going, go_on_in)
_give(AtIntervals, work_at_intervals)
_give(EdgeShaping, work_at_edge)
_give(BothSides, part_sides)
_give(EdgesTogether, work_edges_together)
_give(AtOnce, refuse_at_once)
_give(Together, work_together)
_give(Evenly, work_evenly)
_give(ChartWork, work_chart)
_give(Ended, end_with)
_give(StopShort, stop_short)
_give(Crossed, check_crossings)
_give(Buttonholes, lay_buttonholes)
_give(Paced, check_pace)
_give(PrintedCount, check_count)
_give(RowsCount, check_rounds)
_give(Return, take_back)
_give(Needle, change_needle)
_give(WithYarn, take_yarn)
_give(BreakYarn, break_yarn)
_give(OverNeedles, over_needles)
_give(InstepOn, lay_instep)
_give(MoveOver, move_over)
_give(SetApart, set_apart)
_give(OnlyOn, go_on_over)
_give(BeginFurther, begin_further)
_give(BeginsAt, check_beginning)
_give(MarkAfter, mark_after)
_give(MarkEvery, mark_every)


# --- written-out rounds -------------------------------------------------------------------------------


@work.register
def _(instruction: Phrase, needles: Needles) -> None:
    if all(isinstance(element, Mark) for element in instruction.elements):
        _tell_marks(instruction.elements, needles)
        return
    if needles.flat and _only_turns(instruction) and len(needles.drafts) > needles.line.start:
        return  # "Purl to end. Turn.": so ends every row
    if needles.counting.lost and _brings_stitches(instruction.elements):
        needles.regain(0)
    if take_as_the_others(instruction, needles) or hold_half(instruction, needles):
        return
    further = split_at_beginning(instruction, needles)
    if further is not None:
        for part in further:
            work(part, needles)
        return
    if refuse_beginning_within(instruction, needles):
        return
    template = Template(instruction.elements, instruction.place, side=needles.line.side)
    if needles.count == 0 and not needles.counting.lost and not _brings_stitches(instruction.elements):
        needles.miss_stitches(instruction.place)
        return
    if work_blended_phrase(instruction, needles):
        return
    none = _casts_on_none(instruction.elements, needles)
    if none is not None:
        _cast_on_none(none, needles)
        return
    if _begins_sleeve(instruction, needles):
        leave_waiting(needles.drafts[-1].section, needles)
    if _refuses_cast_on(instruction, needles):
        return
    if _holds_at_turn(instruction, needles):
        told = "the row before turned within the stitches; the line does not say on which side of the turn"
        hint = 'Write "K12, turn and leave rem 28 sts on a holder", or how many go on hold.'
        needles.miss(instruction.place, f"{told} they go on hold.", hint)
        return
    unsaid = side_unsaid(instruction.elements)
    if unsaid is not None:
        told = "the row makes stitches at two markers, and does not say on which side of them they lie."
        hint = 'Write "sm" where each marker is slipped: "k to marker, sm, m1, k to marker, m1, sm".'
        needles.miss(unsaid, told, hint)
        return
    tell_wrong_side(template, needles)
    work_template(template, needles)
    _close_round(instruction, needles)
    if not _only_edge(instruction.elements):
        rows = rows_of_one_name(needles)
        cycle = tuple(each.template for each in needles.drafts[-rows:] if each.template is not None)
        establish(cycle if rows > 1 else (template,), needles, start=len(needles.drafts) - rows)


def _tell_marks(elements: tuple[Element, ...], needles: Needles) -> None:
    """Have the next round say which markers are placed or removed, where a line does nothing else."""
    for element in elements:
        if not isinstance(element, Mark):
            continue
        if element.name == "all":
            needles.markers, needles.last.markers_lost = (), 0
            needles.remarks.append("remove the markers")
            continue
        name = f" for {element.name}" if element.name else ""
        needles.remarks.append(f"{STITCHES[element.stitch].said}{name}")


def _cast_on_none(none: Numbers, needles: Needles) -> None:
    """Leave out a line that casts on no stitch in this size; report it of a piece that has none yet."""
    if needles.count:
        none_in_size(none, needles)
        return
    needles.report(none.place, "no stitch is cast on here, and the piece has none.")
    needles.lose()


def _refuses_cast_on(instruction: Phrase, needles: Needles) -> bool:
    """Report a line that only casts on where a section begins while other stitches are on the needles.

    Anywhere else the stitches are taken as added to those, which is told.
    """
    casts_on = all(isinstance(one, Work) and one.stitch == "co" for one in instruction.elements)
    if not needles.count or not casts_on:
        return False
    if _begins_section(needles) and not needles.counting.lost:
        needles.report(
            instruction.place,
            f"cast on where a section begins; on the needles are still others, {needles.count} of them.",
            "Bind those off or put them on hold first, or say where they are added: "
            '"Next row: Cast on 8 sts, k to end."',
        )
        needles.lose()
        return True
    row = row_word(needles.flat)
    told = f"taken as cast on at the beginning of the next {row}, as a step of its own."
    needles.warn(instruction.place, told)
    return False


def _holds_at_turn(instruction: Phrase, needles: Needles) -> bool:
    """Return whether a line right behind a turn holds stitches, and says neither how many nor which."""
    first = instruction.elements[0]
    at_turn = needles.flat and needles.short_rows.gap is not None and needles.facing.lead > 0
    return at_turn and isinstance(first, Hold) and first.times is None and not first.to_marker


def _begins_section(needles: Needles) -> bool:
    """Return whether no row of the section in hand was worked yet, and others were before it."""
    return 0 < needles.section.start == len(needles.drafts)


def _begins_sleeve(instruction: Phrase, needles: Needles) -> bool:
    """Return whether a sleeve is cast on while a body lies on its needle, until the yoke joins both."""
    first = instruction.elements[0]
    casts_on = isinstance(first, Work) and first.stitch == "co"
    if not (casts_on and needles.count and _begins_section(needles)) or needles.counting.lost or needles.flat:
        return False
    return is_sleeve(needles.section.name) and not is_sleeve(needles.drafts[-1].section)


def _only_turns(instruction: Phrase) -> bool:
    only = instruction.elements[0] if len(instruction.elements) == 1 else None
    return isinstance(only, TurnHere) and not only.method and only.left is None


def _casts_on_none(elements: tuple[Element, ...], needles: Needles) -> Numbers | None:
    """Return the number of a line that only casts on, and in this size no stitch; None of any other."""
    numbers = [one.times for one in elements if isinstance(one, Work) and one.stitch == "co"]
    if not numbers or len(numbers) < len(elements) or any(number.of(needles.size) for number in numbers):
        return None
    return numbers[0]


def _close_round(instruction: Phrase, needles: Needles) -> None:
    """Go on around behind a line that calls itself a round and works across what rows had left aside."""
    if needles.line.around and needles.flat and needles.drafts and closes(needles.drafts[-1]):
        needles.flat, needles.side = False, "RS"
        needles.warn(instruction.place, "a round behind rows: taken as joined in the round with this line.")


def _brings_stitches(elements: tuple[Element, ...]) -> bool:
    first = elements[0]
    return (
        any(isinstance(element, Across) for element in elements)
        or isinstance(first, PickUp)
        or (isinstance(first, Work) and first.stitch in ("co", "pu"))
    )


def _only_edge(elements: tuple[Element, ...]) -> bool:
    edges = ("co", "pu", "bo")
    return all(
        isinstance(one, Hold | Mark | PickUp) or (isinstance(one, Work) and one.stitch in edges)
        for one in elements
    )


# --- durations ----------------------------------------------------------------------------------------


@work.register
def _(instruction: WorkRounds, needles: Needles) -> None:
    if needles.count == 0:
        needles.miss_stitches(instruction.place)
        return
    set_in = as_it_is_set(instruction, needles)
    if set_in is None:
        return
    instruction = set_in
    going_on = instruction.manner in ("pattern", "rib") and instruction.edges is None
    needles.section.garter = instruction.manner == "garter" or (needles.section.garter and going_on)
    begin = len(needles.drafts)
    # Rounds that the line gives in a fabric of their own ("Purl 2 rounds") are none of those in pattern.
    continues = going_on and begin > needles.line.start and needles.line.named != begin
    continues = continues and not _on_top(instruction, needles)
    shaped = continues and needles.drafts[needles.line.start].before != needles.count
    until_count = isinstance(instruction.duration, UntilCount)  # only shaping can reach another count
    goes_on = going_on and not until_count and (shaped or not continues)
    goes_on = goes_on and bool(needles.section.pattern or goes_on_from_before(instruction.place, needles))
    begun = instruction.first if goes_on else None
    if (goes_on and begun is None) or goes_on_with_name(instruction, needles):
        work_even(instruction, needles)
        needles.line.named = len(needles.drafts)
        return
    cycle = cycle_of(instruction, needles) if begun is None else rows_from(begun, needles)
    if cycle is None:
        return
    start = needles.line.start if continues else begin
    first = first_row(instruction, cycle, needles) if begun is None else 0
    if first is None:
        return
    less = int(instruction.but_last)
    lasts, place, own = instruction.duration, instruction.place, needles.fabric
    needles.fabric = gauge_for(instruction.manner, lasts, needles)
    try:
        last_for(cycle, lasts, needles, place, start=start, first=first, less=less)
    finally:
        needles.fabric = own
        establish(cycle[first:] + cycle[:first], needles, start=begin)
    needles.line.named = -1 if instruction.once else len(needles.drafts)
    if instruction.edges is None:
        needles.established.name = key_of(instruction.manner)


def _on_top(instruction: WorkRounds, needles: Needles) -> bool:
    """Return whether rounds are counted behind a row that is none of them: "Next rnd: K to end. Work 5 rnds."

    A row without a head only says how they are worked: "*K2, p2; rep from * to end. Work 5 rnds."
    """
    lasts = instruction.duration
    return needles.line.headed and isinstance(lasts, Rounds) and not lasts.total


@work.register
def _(instruction: Repeated, needles: Needles) -> None:
    instruction = of_rows_above(instruction, needles)
    if instruction.implied and not instruction.numbers:
        told = "the line does not say how often the rows before it are repeated."
        needles.miss(instruction.place, told, 'Say it: "rep last 2 rows 4 times", or until what length.')
        return
    shown = shown_before(instruction, needles)
    if shown is not None:
        work_as_shown(shown, needles)
        return
    cycle = repeated_cycle(instruction, needles)
    if not cycle or not come_as_they_were(cycle, instruction, needles):
        return
    cycle = in_yarn_named(cycle, instruction, needles)
    if _only_names(instruction, needles):
        take_rows_as_pattern(cycle, instruction.place, needles)
        return
    if _works_part_of_written(instruction, cycle, needles):
        told = "more rows were just worked as they are written; whether these come on top is not clear."
        hint = 'Write "repeat" for rows worked again, or only the rows to work.'
        needles.miss(instruction.place, told, hint)
        return
    total = getattr(instruction.duration, "total", False) or _taken_in_all(instruction, needles)
    more = getattr(instruction.duration, "more", False)
    in_all = total or not (instruction.again or instruction.pattern or instruction.label or more)
    in_all = in_all or _begins_where_written(instruction, needles)
    start = len(needles.drafts)
    if in_all and len(needles.drafts) >= len(cycle):
        recent = tuple(draft.template for draft in needles.drafts[-len(cycle) :])
        if are_same_rounds(recent, cycle) and (total or not _came_again(cycle, needles)):
            if not total and _works_no_row(instruction, cycle, needles):
                told = "this row was just worked as it is written; whether it comes again is not clear."
                needles.miss(instruction.place, told, 'Write "rep row 2 once" for a row worked again.')
                return
            start -= len(cycle)
            if not total and not instruction.label:
                needles.warn(
                    instruction.place,
                    f"read as {times_in_words(instruction.duration, needles)} in all, the once just worked "
                    'included; write "repeat" if they come on top.',
                )
    begin = len(needles.drafts)
    try:
        less = int(instruction.but_last)
        last_for(cycle, instruction.duration, needles, instruction.place, start=start, less=less, again=True)
        tell_other_side(cycle, instruction.place, needles, begin=begin)
    finally:
        establish_pattern(instruction, cycle, needles, start=begin)


def _works_part_of_written(
    instruction: Repeated, cycle: tuple[Template, ...], needles: Needles
) -> bool:
    """Return whether a line only says to work the first of the rows that stand right before it.

    "Rows 1, 3 and 5: ... WS rows: Purl. Work rows 1-5." may be how far the rows written are worked; a row for
    all of a side has ended them with a sixth.
    """
    written, end = needles.last.written
    lasts = instruction.duration
    once = isinstance(lasts, Times) and not lasts.more and lasts.number.of(needles.size) == 1
    only = once and not (instruction.again or instruction.pattern or instruction.label)
    part = len(cycle) < len(written) and written[: len(cycle)] == cycle
    return only and part and end == len(needles.drafts)


def _came_again(cycle: tuple[Template, ...], needles: Needles) -> bool:
    """Return whether rounds were already repeated, so that a line that works them is on top."""
    before = tuple(draft.template for draft in needles.drafts[-2 * len(cycle) : -len(cycle)])
    return are_same_rounds(before, cycle)


def _works_no_row(instruction: Repeated, cycle: tuple[Template, ...], needles: Needles) -> bool:
    """Return whether a line that works a row once would work none, the once just worked counted in."""
    lasts = instruction.duration
    once = instruction.numbers and isinstance(lasts, Times) and set(lasts.number.values) == {1}
    written, end = needles.last.written
    return bool(once) and not (end == len(needles.drafts) and len(written) == len(cycle))


def _begins_where_written(instruction: Repeated, needles: Needles) -> bool:
    """Return whether a named round worked to a length was just written out.

    "Rib rnd: *K2, p2. Work rib rnd for 4 cm": the length is that of the rib, its first round included.
    """
    lasts = instruction.duration
    if not instruction.label or instruction.again or not isinstance(lasts, UntilLength) or lasts.measured:
        return False
    before = needles.drafts[needles.section.start :][-2:]
    return len(before) > 1 and before[0].template != before[1].template


def _only_names(instruction: Repeated, needles: Needles) -> bool:
    """Return whether a line says what the pattern is and works none of it: "rep these 4 rows for pattern"."""
    lasts = instruction.duration
    return isinstance(lasts, Times) and lasts.more and not lasts.total and not lasts.number.of(needles.size)


def _taken_in_all(instruction: Repeated, needles: Needles) -> bool:
    """Return whether "rep rnds 1-2 3 times" counts the once just worked; note that it has two readings."""
    duration, place = instruction.duration, instruction.place
    plain = isinstance(duration, Times) and not duration.more and not duration.total
    if not instruction.again or not plain or not isinstance(duration, Times):
        return False
    times = duration.number.of(needles.size)
    if times < 2:
        return False
    choice = TwoReadings(
        place=place,
        words=f"rep … {times} times",
        first=f"{times} times on top of the once",
        second=f"{times} times in all",
        line=place.line,
        quiet=True,
    )
    return needles.reads_second(choice)


@work.register
def _(instruction: EdgeRows, needles: Needles) -> None:
    if needles.count == 0:
        needles.miss_stitches(instruction.place)
        return
    if instruction.sides and needles.joined:
        told = "a piece in the round has no sides to bind off at."
        needles.report(instruction.place, told, "Write where in the round the stitches are bound off.")
        return
    if instruction.flat and instruction.rows.of(needles.size) > 1:
        needles.flat = True
    work_edge_rows(instruction, needles)


@work.register
def _(instruction: TurnMethod, needles: Needles) -> None:
    needles.short_rows.method = instruction.method


@work.register
def _(instruction: Labelled, needles: Needles) -> None:
    template = find_named_round(instruction.label, instruction.place, needles)
    if template is not None and template.own is not None and not instruction.again:
        told = f"{own_words_of(template.place.line)}, and was worked where it is written."
        needles.miss(instruction.place, told, f'Write "Rep {instruction.label} once" if it is worked again.')
    elif template is not None:
        work_template(template, needles)


def _grafts_others(needles: Needles) -> bool:
    """Return whether a line grafts underarms, and the stitches on the needles are of no such name."""
    text = next((one.text for one in needles.project.lines if one.place.line == needles.line.number), "")
    drafts = needles.drafts[needles.section.start :]
    back = {run.yarn for draft in drafts for run in flatten(draft.phrase) if run.stitch == "return"}
    named = [needles.section.name, needles.section.label or "", *back]
    return bool(_UNDERARM.search(text)) and not any(_UNDERARM.search(name) for name in named)


_UNDERARM = regex(r"\bunderarms?\b", re.I)


# --- the needles and what is on them ------------------------------------------------------------------


@work.register
def _(instruction: BindOff, needles: Needles) -> None:
    if needles.counting.lost:
        needles.regain(0)
        return
    # "Finishing" may be a part of its own, for what waits on hold.
    own = len(needles.drafts) > needles.section.start
    if needles.count == 0 and instruction.how == "graft" and needles.drafts and (own or needles.held):
        last = needles.drafts[-1]  # the underarms of a finished piece: nothing of it is on the needles
        last.remarks = (*last.remarks, f"{WHEN_DONE}graft what is left open")
        return
    if needles.count == 0 and needles.held and needles.drafts and "three-needle" in instruction.manner:
        last = needles.drafts[-1]  # the shoulders wait, and are joined off the needles of the piece
        told = f"{WHEN_DONE}bind off together what waits on hold, with a third needle"
        last.remarks = (*last.remarks, told)
        return
    if needles.count == 0:
        needles.report(instruction.place, "there are no stitches on the needles to bind off.", kind="empty")
        return
    if instruction.how == "graft" and _grafts_others(needles):
        told = f"the line grafts underarm stitches, and those on the needles, {needles.count}, are others."
        needles.miss(instruction.place, told, "Say what happens with those first, or leave it to a note.")
        return
    code = {"graft": "graft", "draw": "draw"}.get(instruction.how, "bo")
    end_in_stripes(instruction, needles)
    bound_off = over_both_sides(code, needles)
    if not needles.two_balls:  # where they part is known until both are bound off
        needles.markers = ()
    needles.emit(bound_off, 0, bound_off=instruction.manner)
    needles.markers = ()
    needles.section.pattern = ()
    needles.short_rows.turns = ()
    needles.side = "RS"


@work.register
def _(instruction: Join, needles: Needles) -> None:
    if needles.drafts and not needles.flat and needles.drafts[-1].codes == {"co", "rest"}:
        others = needles.drafts[-1].before
        needles.report(
            instruction.place,
            f"stitches are cast on and joined in the round while {others} others are still on the needles.",
            "Bind those off or put them on hold first, or begin a section of its own behind them.",
        )
    needles.flat, needles.joined = False, True
    needles.side = "RS"
    needles.section.back = None
    needles.section.back_line = None
    needles.section.garter = False
    needles.remarks.append("join in the round")


@work.register
def _(instruction: Flat, needles: Needles) -> None:
    needles.free = not needles.flat
    turned = instruction.turned and bool(needles.drafts) and needles.drafts[-1].before > 0
    if needles.free and (turned or hangs_at_gap(needles)):
        needles.side = "WS"  # the round before it was worked from the right side
    needles.turn_to_rows()


@work.register
def _(instruction: MarkRow, needles: Needles) -> None:
    needles.remarks.append(instruction.text)
    needles.last.marked = len(needles.drafts)
    if instruction.onwards:
        needles.last.measured = len(needles.drafts)


@work.register
def _(instruction: Remark, needles: Needles) -> None:
    if _MADE_AGAIN.match(instruction.text):
        needles.report(
            instruction.place,
            "a piece that is made more than once is worked once here.",
            "Copy its lines into a section of its own for the other, or leave it to a note, by which its "
            'yarn counts twice: "Note: The second sleeve is the same."',
        )
        return
    if needles.count == 0 and len(needles.drafts) > needles.section.start:
        last = needles.drafts[-1]  # the stitches are off: there may be no round left to say it with
        last.remarks = (*last.remarks, f"{WHEN_DONE}{instruction.text}")
    elif lets_stop_sooner(instruction.text) and len(needles.drafts) > needles.section.start:
        _say_at_the_stretch(instruction.text, needles)
    else:
        needles.remarks.append(instruction.text)


def _say_at_the_stretch(remark: str, needles: Needles) -> None:
    """Say a remark where the rounds of the line above it begin: it may end them sooner."""
    drafts = needles.drafts
    first = len(drafts) - 1
    while first > needles.section.start and drafts[first - 1].line == drafts[-1].line:
        first -= 1
    drafts[first] = replace(drafts[first], remarks=(*drafts[first].remarks, remark))


@work.register
def _(instruction: OwnWords, needles: Needles) -> None:
    beside = begins_or_ends(instruction, needles)
    if beside is not None:
        begin, before = len(needles.drafts), needles.count
        work(beside, needles)
        if instruction.parted:
            leave_unknown(instruction, needles, begin=begin, before=before)
        if instruction.count is not None:
            check_count(instruction.count, needles)
        return
    if instruction.beside is not None:
        return
    template = Template((), instruction.place, side=needles.line.side, own=instruction)
    begin, name = len(needles.drafts), needles.section.label or ""
    if ROUND_NAME.search(name) and instruction.rows is None and instruction.lasts is None:
        needles.section.named[name.lower()] = template
    rows = instruction.rows.of(needles.size) if instruction.rows is not None else 1
    if not rows:
        needles.warn(instruction.place, "no row is worked by these words in this size.")
    if needles.counting.lost and rows:
        work_template(template, needles)  # a count printed behind the words is known again
        return
    if instruction.lasts is not None:
        last_for((template,), instruction.lasts, needles, instruction.place, start=begin)
    else:
        repeat((template,), rows, needles, instruction.place)
    establish((template,), needles, start=begin)


@work.register
def _(instruction: Unread, needles: Needles) -> None:
    needles.lose()
