"""Named rounds worked at intervals, and stitches changed at the edges. No I/O.

Common practice: "every 8th round" works seven plain rounds and then the named one. A named right-side row
that would fall on the wrong side once is worked one row sooner; one that is asked for every third row, and so
would at every other time, is refused. It is long because what is worked between shaped rounds, and what is
told of it, is decided alike for named rounds, edges and what goes on "in this manner".
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import replace

from stepper.craft.rows import row_word
from stepper.craft.stitches import stitch
from stepper.plan.drafts import DraftRound, Template
from stepper.plan.fabric.begun_charts import asks_pattern
from stepper.plan.fabric.columns import KNIT, PURL
from stepper.plan.fabric.established import as_it_looks, columns_of, establish, even, ground
from stepper.plan.lines.named_rounds import in_full
from stepper.plan.lines.own_words import refuse_own_words
from stepper.plan.lines.rounds import repeat, work_template
from stepper.plan.lines.shaping.likewise import (
    ALIKE,
    BESIDE,
    CLOSER,
    ONWARDS,
    WIDENING,
    WIDER,
    as_shown_beside,
    carry_on_shaping,
    come_closer,
)
from stepper.plan.lines.shaping.schedule import (
    next_in_times,
    occasions,
    once_less,
    refuse_worked_sides,
    tell_sides_around,
)
from stepper.plan.lines.shaping.to_length import ends_at, tell_how_often
from stepper.plan.lines.techniques import as_placed, beside_marker
from stepper.plan.model import runs_written
from stepper.plan.state.held_below import piece_begun
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.round_sources import TwoReadings
from stepper.project.instructions import AtIntervals, EdgeRows, Leg
from stepper.project.problems import Span, nearest
from stepper.project.stitchwork import Element, Numbers, Until, Work, every_element
from stepper.regex import regex

_SAME = "same "
"""Begins the name of a round that the page calls by what it does: "rep this inc every 8th row"."""

_SIDED = {f"{_SAME}right row": "RS", f"{_SAME}wrong row": "WS"}
"""The last row of the side that the line names: "rep every RS row 4 times more", behind a plain row back."""


def find_named_round(label: str, place: Span, needles: Needles) -> Template | None:
    """Find a round by the name under which it was written out; None, and reported, if there is none."""
    named, name = needles.section.named, label.removeprefix(_SAME)
    template = _written_out(name, named) or _just_shaped(label, needles)
    if template is None:
        alike = [other for other in named if not _opposite(other, name)]
        hint = nearest(name, alike) or 'Write it out first, as "Dec round: k1, k2tog, …".'
        needles.miss(place, f'"{name}" has not been written out in this section.', hint)
    elif name in needles.techniques and not needles.count and not needles.counting.lost:
        needles.miss_stitches(place)
        return None
    return as_placed(name, template, needles) if template is not None else None


def _written_out(name: str, named: Mapping[str, Template]) -> Template | None:
    """Return the round of a name, or of the one name that is the same in full; None if there is not one."""
    if name in named:
        return named[name]
    alike = [other for other in named if in_full(other) == in_full(name)]
    return named[alike.pop()] if len(alike) == 1 else None


def _opposite(one: str, other: str) -> bool:
    """Return whether one of two names increases and the other decreases: neither is a slip for the other."""
    full = in_full(one), in_full(other)
    return any("increase" in full[n] and "decrease" in full[1 - n] for n in (0, 1))


def _just_shaped(label: str, needles: Needles) -> Template | None:
    """Return the round just worked where a label means it: `same inc row`; None if it does not shape so.

    "Rep this rnd every 6th rnd" is `same rnd`, which increases or decreases.
    """
    drafts = needles.drafts[needles.section.start :]
    side = _SIDED.get(label)
    if side and drafts and drafts[-1].side != side and not _shapes(drafts[-1]):
        drafts = drafts[:-1]
    if side and (not drafts or not drafts[-1].flat or drafts[-1].side != side):
        return None
    if not label.startswith(_SAME) or not drafts or drafts[-1].evenly or not _shapes(drafts[-1]):
        return None
    grown = drafts[-1].after - drafts[-1].before
    told = {"inc": 1, "dec": -1}.get(label.removeprefix(_SAME)[:3], 1 if grown > 0 else -1)
    return drafts[-1].template if grown * told > 0 else None


def _shapes(draft: DraftRound) -> bool:
    """Return whether a round shapes what is on the needles: a piece cast on or picked up is no increase."""
    codes = draft.codes - {"pu", "hold", "return"}
    return draft.before > 0 and any(stitch(code).change for code in codes)


def work_at_intervals(instruction: AtIntervals, needles: Needles) -> None:
    """Work a named round at intervals, with plain rounds between."""
    found = _find_shaping(instruction, needles)
    if found is None:
        return
    instruction, template, closer = found
    step = 1 if instruction.label.startswith((WIDER, WIDENING)) else -1
    tell_sides_around(instruction, needles)
    if not any(leg.side for leg in instruction.legs):
        template = as_shown(template, needles)
    if not _begin_at_first(instruction, template, needles):
        return
    since = worked_since(instruction, template, needles)
    literal, template = template, take_right_side(instruction, template, since, needles)
    sided, shifted = template, template is not literal
    goes_on = _pattern_goes_on(instruction, template, needles)
    before, worked = len(needles.findings), 0
    intervals = legs(instruction, template, needles)
    end = ends_at(intervals, needles)
    for plain, leg in occasions(intervals, needles, since=since, end=end):
        if shifted:
            template = literal if leg.every.of(needles.size) % 2 else sided
        following = come_closer(template, needles, step) if closer and worked else template
        if following is None:
            return
        template, worked = following, worked + 1
        on_side = _on_its_side(template, plain, leg, instruction, needles)
        if on_side is None:
            return
        placed, plain = on_side
        if not asks_pattern(template.elements):
            template = placed  # "every RS row 4 times, then every row": its stitches are for that side alone
        work_between(plain, needles, leg.every.place, goes_on=goes_on)
        work_template(_at_very_edge(placed, instruction, needles), needles)
        if len(needles.findings) > before:
            return
    if end is not None and len(needles.findings) == before:
        tell_how_often(instruction.legs, worked + int(instruction.first is not None), needles)
        work_between(end - len(needles.drafts), needles, instruction.place, goes_on=goes_on)
    elif shifted and instruction.legs[-1].until is None:
        # The line takes as many rows as it prints, and what follows begins on the side that it would have.
        work_between(1, needles, instruction.place, goes_on=goes_on)
    if instruction.legs[-1].until is not None and needles.flat and needles.drafts:
        # "until 50 sts rem, ending with a WS row": the row between two shapings may follow the last of them.
        cycle, start = _between(needles, instruction.place, goes_on=goes_on)
        needles.last.repeated = ((template, cycle[start % len(cycle)]), 1)
        needles.last.counted = len(needles.drafts)


def _find_shaping(instruction: AtIntervals, needles: Needles) -> tuple[AtIntervals, Template, bool] | None:
    """Find the round that is worked at intervals.

    Returns:
        The instruction with the legs that it means, the round, and whether it comes closer each time; None if
        there is none, which is reported, or if the line is worked by now.
    """
    if instruction.label.startswith((ALIKE, BESIDE, CLOSER, ONWARDS, WIDER, WIDENING)):
        carried = carry_on_shaping(instruction, needles)
        if carried is None:
            return None
        template, printed, closer = carried
        return replace(instruction, legs=printed), template, closer
    if _repeats_own_words(instruction, needles):
        return None
    named = round_of(instruction, needles)
    return None if named is None else (instruction, named, False)


def _begin_at_first(instruction: AtIntervals, template: Template, needles: Needles) -> bool:
    """Work the row with which a shaping begins, "next and every 4th row"; False if this size has none."""
    if instruction.first is None:
        return True
    if _has_none(instruction, needles):
        return False
    work_between(instruction.first.of(needles.size) - 1, needles, instruction.place, goes_on=True)
    work_template(_at_very_edge(template, instruction, needles), needles)
    return True


def _at_very_edge(template: Template, instruction: AtIntervals, needles: Needles) -> Template:
    """Return a shaping at the very edges where too few stitches are left to work it one stitch in; tell so.

    A point decreased "until 3 sts rem" has five before its last row: k2tog, k1, ssk. Source: common practice.
    """
    if instruction.narrow is None or instruction.round is None or needles.counting.lost:
        return template
    if template.elements != instruction.round.elements or needles.count >= _least(template.elements, needles):
        return template
    if needles.count < _least(instruction.narrow.elements, needles):
        return template
    told = "the decreases are at the very edges here: too few stitches are left to work them one in"
    needles.remarks.append(told)
    return replace(template, elements=instruction.narrow.elements)


def _least(elements: tuple[Element, ...], needles: Needles) -> int:
    """Return how many stitches a round with a change at each end takes at least. Unit: stitches."""
    before = 0
    for element in elements:
        if isinstance(element, Until):
            return before + (element.short.of(needles.size) if element.short else 0)
        if isinstance(element, Work):
            before += element.times.of(needles.size) * (2 if element.stitch == "dec" else 1)
    return before


def _has_none(instruction: AtIntervals, needles: Needles) -> bool:
    """Return whether of "next and every 4th row 0 times" no row at all is worked in this size; tell so.

    One is, the next, where that is not counted in the times of the other sizes either. The printed counts
    tell, and else both readings are told.
    """
    leg, *more = instruction.legs
    if leg.times is None or leg.more or more or leg.times.of(needles.size):
        return False
    counted = leg.total or needles.reads_second(next_in_times(leg.times, instruction.place, needles))
    return counted and none_in_size(leg.times, needles)


def _repeats_own_words(instruction: AtIntervals, needles: Needles) -> bool:
    """Work a named row in own words again and again, if a line asks for that and no row between."""
    template = needles.section.named.get(instruction.label)
    (leg, *more), first = instruction.legs, instruction.first
    if template is None or template.own is None or more or first is not None or not instruction.again:
        return False
    if leg.times is None or leg.until is not None or leg.length is not None or leg.side:
        return False
    if leg.every.of(needles.size) != 1:
        return False
    begin = len(needles.drafts)
    repeat((template,), leg.times.of(needles.size), needles, instruction.place)
    establish((template,), needles, start=begin)
    return True


def _on_its_side(
    template: Template, plain: int, leg: Leg, instruction: AtIntervals, needles: Needles
) -> tuple[Template, int] | None:
    """Return a shaping for its side, and the plain rows before it; None, reported, if there is none."""
    if leg.side and template.side and leg.side != template.side:
        told = f"the shaping is written for {template.side} rows, and asked for on {leg.side} rows."
        needles.report(leg.every.place, told)
        return None
    if leg.side and not template.side:
        template = replace(template, side=leg.side)
    if not _falls_wrong(template, plain, needles):
        return template, plain
    return None if alternates(leg, template, instruction, needles) else (template, plain - 1 if plain else 1)


def as_shown(template: Template, needles: Needles) -> Template:
    """Return a shaping in rows with the side on which it was worked, where its stitches are for that alone.

    Knitted on the wrong side of stockinette it would leave a ridge. One that goes on in pattern, and one in
    garter stitch, is worked alike on both.
    """
    if template.side or not needles.flat or asks_pattern(template.elements) or ground(needles) == "garter":
        return template
    if needles.section.garter:
        return template
    drafts = reversed(needles.drafts[needles.section.start :])
    shown = next((draft for draft in drafts if draft.flat and _is_like(draft, template)), None)
    return template if shown is None else replace(template, side=shown.side)


def alternates(leg: Leg, template: Template, instruction: AtIntervals, needles: Needles) -> bool:
    """Report a shaping of one side that comes after an odd number of rows: every other one changes sides.

    "Repeat the row 3 times" means each next row of its side; "every row 3 times" says each row.
    """
    every = leg.every.of(needles.size)
    each = leg.each or instruction.label.startswith((ALIKE, BESIDE, CLOSER, ONWARDS, WIDER, WIDENING))
    least = 1 if each else 3
    if leg.length is not None or every % 2 == 0 or every < least:
        return False
    if leg.each and leg.times is not None and leg.times.of(needles.size) == 1:
        told = f"the shaping is worked on {template.side} rows, and the next row is none: "
        needles.warn(leg.every.place, f"{told}taken as the one behind it.")
        return False
    needles.report(
        leg.every.place,
        f"the shaping is worked on {template.side} rows, and so often it also falls on others.",
        "Write out how it is worked on them, or after an even number of rows.",
    )
    return True


def worked_since(instruction: AtIntervals, template: Template, needles: Needles) -> int:
    """Return how many rounds of the first interval are already worked: those since the last such shaping.

    "Dec rnd: … Knit 5 rounds. Rep dec rnd every 6 rnds" works the next one at once.
    """
    first = instruction.legs[0]
    every = first.every.of(needles.size)
    since = 0
    for draft in reversed(needles.drafts[needles.section.start :]):
        if draft.before != draft.after or draft.template == template:
            break
        since += 1
    else:
        return 0
    if instruction.first is not None or not 0 < since < every or not _is_like(draft, template):
        return 0
    word = row_word(needles.flat)
    rounds, verb = (f"{since} {word}s", "count") if since > 1 else (word, "counts")
    needles.warn(
        instruction.place,
        f"the {rounds} since the last such shaping {verb} towards the first {every}.",
    )
    return since


def _is_like(draft: DraftRound, template: Template) -> bool:
    """Return whether a round shapes as another does: the same increases and decreases in the same order."""
    if draft.template is None or draft.template.evenly is not None:
        return False
    return draft.template == template or _shaping_of(draft.template.elements) == _shaping_of(
        template.elements
    )


def _shaping_of(elements: tuple[Element, ...]) -> list[str]:
    codes = (one.stitch for one in every_element(elements) if isinstance(one, Work))
    return [code for code in codes if code != "pattern" and stitch(code).change]


def work_between(rounds: int, needles: Needles, place: Span, *, goes_on: bool) -> None:
    """Work the rounds between two shapings: in the fabric if the shaping goes on with it, otherwise plain."""
    if rounds < 1:
        return
    cycle, start = _between(needles, place, goes_on=goes_on)
    repeat(cycle, rounds, needles, place, start=start)


def _between(needles: Needles, place: Span, *, goes_on: bool) -> tuple[tuple[Template, ...], int]:
    """Return the rounds that are worked between two shapings, and which of them comes next."""
    going = even(needles, place) if goes_on else None
    if going is None:
        return plain_cycle(needles), 0
    return as_it_looks(going[0], needles, place), going[1]


def _pattern_goes_on(instruction: AtIntervals, template: Template, needles: Needles) -> bool:
    """Return whether the pattern goes on between shaped rows; tell where the page leaves it open."""
    before_it = ground(needles) if needles.section.pattern else ""
    goes_on = bool(needles.section.pattern) and (goes_on_with(template) or before_it == "garter")
    rows = f"{row_word(needles.flat)}s"
    if not goes_on and before_it == "pattern" and (done := _worked_as_the_pattern(template, needles)):
        goes_on = True
        own = "right-side rows" if needles.flat else "rounds"
        told = f"the {rows} between go on in pattern, since the shaped one is {done} as its {own} are."
        needles.warn(instruction.place, told)
    elif not goes_on and (before_it in ("pattern", "unknown") or _lies_on_texture(template, needles)):
        needles.warn(
            instruction.place,
            f'the {rows} between are worked plain, as the shaped one is; write "work in pattern" in that one '
            "if the pattern before goes on.",
        )
    return goes_on


def _lies_on_texture(template: Template, needles: Needles) -> bool:
    """Return whether the shaped round was worked plain right on a texture, and nothing plain stood between.

    Its own stitches then make what lies below look plain, and nothing shows whether the texture ended there.
    """
    known, drafts = needles.established, needles.drafts
    if not drafts or known.end < len(drafts) - 1 or not _is_like(drafts[-1], template):
        return False
    below = [{run.stitch[:1] for run in runs_written(one.phrase)} for one in drafts[known.start : known.end]]
    return any("p" in codes and ("k" in codes or not needles.flat) for codes in below)


def _worked_as_the_pattern(template: Template, needles: Needles) -> str:
    """Say that a shaped row is `knit` or `purled` if all right-side rows of the pattern are so; else nothing.

    "K3, m1, k to last 3 sts, m1, k3" between edges in garter stitch, which the wrong-side rows make; or "p to
    last 2 sts, p2tog" in reverse stockinette. In the round, all rounds of the pattern have to be so.
    """
    letters = {code[0] for code in _stitches(template.elements)}
    if len(letters) != 1 or (needles.flat and template.side != "RS"):
        return ""
    look, done = (KNIT, "knit") if letters == {"k"} else (PURL, "purled")
    columns, phase = columns_of(needles)
    first, step = (phase + (needles.side == "WS"), 2) if needles.flat else (0, 1)
    alike = all(
        column[at % len(column)] == look
        for column in columns
        for at in range(first, first + 2 * len(column), step)
    )
    return done if alike else ""


def goes_on_with(template: Template) -> bool:
    """Return whether a shaped round goes on with the fabric: "in pattern", or with its own knit and purl."""
    stitches = _stitches(template.elements)
    return asks_pattern(template.elements) or {"k", "p"} <= {code[0] for code in stitches}


def _stitches(elements: tuple[Element, ...]) -> set[str]:
    codes = {one.stitch for one in every_element(elements) if isinstance(one, Work | Until)}
    return {code for code in codes if code[0] in "kp" and code != "pattern"}


def round_of(instruction: AtIntervals, needles: Needles) -> Template | None:
    """Return the round that is worked at intervals: written in the line itself, or by its name."""
    if refuse_worked_sides(instruction.legs, needles):
        return None
    if instruction.round is None:
        found = find_named_round(instruction.label, instruction.place, needles)
        if found is not None and found.own is not None:
            refuse_own_words(found, instruction.place, needles)
            return None
        return found
    written = Template(instruction.round.elements, instruction.round.place, side=needles.line.side)
    if not isinstance(written.elements[0], Until) or written.elements[0].goal != "marker":
        return written
    placed = beside_marker(written, needles)
    return as_shown_beside(placed, needles) if placed is not None else None


def legs(instruction: AtIntervals, template: Template, needles: Needles) -> tuple[Leg, ...]:
    """Return the legs; one time less if "next and every 4th row 5 times" includes the next, as "in all" does.

    "Decrease like this every 3 cm a total of 5 times" includes the one shown just before, if only that was
    worked: a total behind a series of them is of another.
    """
    if instruction.label in needles.section.in_all:
        needles.section.in_all.discard(instruction.label)
        return once_less(instruction.legs, needles)
    first = instruction.legs[0]
    often = _times_worked(template, needles)
    once = often == 1
    if first.total and instruction.again and once:
        return once_less(instruction.legs, needles)
    least = first.times.of(needles.size) if first.times is not None and instruction.first is None else 0
    if first.total and first.times is not None and 0 < often < least:
        choice = TwoReadings(
            place=first.times.place,
            words=f"{least} times in all",
            first="so often from here on",
            second=f"the {often} before this line included",
            line=instruction.place.line,
        )
        second = needles.reads_second(choice)
        return once_less(instruction.legs, needles, often) if second else instruction.legs
    free = once and not (first.more or first.total)
    if free and first.times is not None and _worked_not_repeated(instruction, needles):
        choice = TwoReadings(
            place=first.times.place,
            words=f"work this … {first.times.of(needles.size)} times",
            first="so often after the once just worked",
            second="so often in all, that once included",
            line=instruction.place.line,
        )
        return once_less(instruction.legs, needles) if needles.reads_second(choice) else instruction.legs
    if instruction.first is None or first.times is None:
        return instruction.legs
    if first.total:
        return once_less(instruction.legs, needles)
    if first.more or not first.times.of(needles.size):
        return instruction.legs
    choice = next_in_times(first.times, instruction.place, needles)
    return once_less(instruction.legs, needles) if needles.reads_second(choice) else instruction.legs


_WORKED = regex(r"\b(?:work|do|make|knit)(?:ing)?\s+(?:this|that|the)\b", re.I)
_REPEATED = regex(r"\b(?:rep(?:eat)?\w*|again|more|further)\b", re.I)


def _worked_not_repeated(instruction: AtIntervals, needles: Needles) -> bool:
    """Return whether the line says to work the round just shown so often, which may count that once.

    "Work this dec rnd 9 times" may; to repeat it so often does not.
    """
    if instruction.first is not None or not instruction.label.startswith(_SAME):
        return False
    line = next((one.text for one in needles.project.lines if one.place.line == needles.here.line), "")
    return _WORKED.search(line) is not None and _REPEATED.search(line) is None


def _times_worked(template: Template, needles: Needles) -> int:
    """Return how often the section has worked such a shaping."""
    drafts = needles.drafts[needles.section.start :]
    return sum(_is_like(draft, template) for draft in drafts)


def take_right_side(
    instruction: AtIntervals, template: Template, since: int, needles: Needles, *, behind: int = 0
) -> Template:
    """Return the shaping of a line in rows for right-side rows if it names no side and is the first.

    Shaping is worked on the right side unless a pattern says otherwise: common practice. Counted from the
    next row, as in the round, "every other row" behind a wrong-side row would only meet wrong-side rows. Each
    is worked a row earlier, so that a line of so many times still takes the rows that it prints. The others
    of the line, those in every row or every third, are worked as they fall.

    Args:
        instruction: The shaping.
        template: The row that shapes.
        since: Rows of the first interval that are worked by now.
        needles: The knitting in hand.
        behind: Rows that pass before the first interval begins.
    """
    asked = instruction.legs
    if instruction.round is None or instruction.first is not None or since or not needles.flat:
        return template
    if template.side or asked[0].every.of(needles.size) % 2 or any(leg.side for leg in asked):
        return template
    here = max(needles.section.start, piece_begun(needles))
    if any(_is_like(draft, template) for draft in needles.drafts[here:]):
        return template
    sided = replace(template, side="RS")
    if not _falls_wrong(sided, behind + asked[0].every.of(needles.size) - 1, needles):
        return template
    needles.warn(
        instruction.place,
        "on which side it is worked is not said; right-side rows are taken. "
        'Write "every WS row", or the row itself, if it is the other.',
    )
    return sided


def _falls_wrong(template: Template, plain: int, needles: Needles) -> bool:
    """Return whether the row after a number of plain ones is on the wrong side for the named row."""
    if not template.side or not needles.flat:
        return False
    same = needles.side == template.side
    return same != (plain % 2 == 0)


def plain_cycle(needles: Needles) -> tuple[Template, ...]:
    """Return the plain rounds between shapings, with the wrong side as the pattern has it."""
    place = Span(line=needles.line.number or 1, column=1)
    if needles.section.garter and needles.flat:
        return (Template((Until("k", "end", None, None, place),), place),)
    plain = Template((), place, stockinette=True)
    if needles.section.back is not None and needles.flat:
        return (needles.section.back, plain) if needles.side == "WS" else (plain, needles.section.back)
    return (plain,)


def work_edge_rows(instruction: EdgeRows, needles: Needles) -> None:
    """Bind off or cast on a number of stitches at the beginning of each of several rows."""
    place = instruction.place
    if none_in_size(instruction.number, needles):
        return
    change = Work(instruction.stitch, instruction.number, None, place)
    rest = Until("pattern", "end", None, None, place)
    template = Template((change, rest), place)
    for _ in range(instruction.rows.of(needles.size)):
        before = len(needles.findings)
        work_template(template, needles)
        if len(needles.findings) > before:
            return


def none_in_size(number: Numbers, needles: Needles) -> bool:
    """Return whether a shaping by 0 stitches, or 0 times, is left out of this size; tell so.

    Common practice: "bind off 0 (2) sts at the beginning of the next 2 rows" is for the other sizes.
    """
    if number.of(needles.size):
        return False
    place = number.place
    needles.warn(
        place,
        'with 0 in this size, these rows are taken as not worked at all; write "Work 2 rows even." for this '
        "size if they are worked without shaping.",
    )
    return True
