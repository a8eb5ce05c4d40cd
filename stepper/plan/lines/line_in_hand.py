"""Take up a line: its place, its side, and whether it is worked in rows. No I/O."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace

from stepper.plan.lines.cut_short import work_what_was_cut_short
from stepper.plan.lines.rounds import repeat
from stepper.plan.lines.rows_or_rounds import (
    brings_stitches,
    hangs_at_gap,
    is_parted,
    opened_midway,
    refuse_rows_around_gap,
    says_neither,
    settle_rounds,
    speaks_of_rows,
)
from stepper.plan.lines.stripes import call_stripes
from stepper.plan.state.in_hand import LineInHand
from stepper.plan.state.needles import Needles, yarns_in
from stepper.project.instructions import Evenly, Line, OwnWords, Phrase, Repeated, WorkRounds
from stepper.project.problems import Span
from stepper.project.stitchwork import Element, Hold, Several, TurnHere, Work, every_element
from stepper.regex import regex

_JOINS = regex(r"\b(?:re)?(?:join|attach)\w*\b", re.I)
_ROUND = regex(r"\s*(?:[\w-]+\s+)?(?:rnd|round)\b(?:\s+\d+)?\s*:", re.IGNORECASE)
_HEADED = regex(r"\s*(?:[\w()-]+\s+){0,3}(?:row|rnd|round)\b[^:.]{0,20}[:.]", re.IGNORECASE)

_RIGHT_FACING = regex(r"\b(?:RS|right\s+side)(?:\s+of\s+(?:the\s+)?work)?\s+facing\b", re.I)


def begin_line(line: Line, needles: Needles) -> None:
    """Take up a line, and tell the knitter what it leaves open."""
    needles.line = LineInHand(
        number=line.place.line,
        place=line.place,
        start=len(needles.drafts),
        side=line.side,
        around=bool(_ROUND.match(line.text)),
        rows=line.rows,
        headed=bool(_HEADED.match(line.text)),
        right_facing=bool(_RIGHT_FACING.search(line.text)),
    )
    settle_rounds(line, needles)
    for assumed in line.assumed:
        if not (assumed.wrong_side and _faces_wrong_side(line, assumed.place, needles)):
            needles.warn(assumed.place, assumed.text)
    call_stripes(line, needles)
    needles.alterations.line = (
        *needles.alterations.section,
        *needles.alterations.marks.get(line.place.line, ()),
    )


_NOT_FACING = "the wrong side is to face the knitter, and by the rows so far the right side does."
_IN_ROUNDS = "the wrong side is to face the knitter, and the work goes in rounds, whose right side does."
_FACE = 'Write "Next row (WS): …" and the row that is missing before it, or leave the side out.'


def _faces_wrong_side(line: Line, place: Span, needles: Needles) -> bool:
    """Take the first row of a line as one of the wrong side, which its words turn to the knitter.

    Yarn joined anew may begin on either side, and the stitches of a ring of which others are on hold go on in
    rows. Where the right side faces the row is refused: purled there it is a ridge that nobody printed.

    Args:
        line: The line.
        place: Where it says so.
        needles: The knitting in hand, before it.

    Returns:
        Whether it was taken so, or refused; False where its stitches come from elsewhere.
    """
    known = needles.count and not needles.counting.lost and needles.project.spacing is not None
    if not known or needles.short_rows.gap is not None or needles.short_rows.turns:
        return False
    works = [one for one in line.sentences if isinstance(one, Phrase | WorkRounds | Repeated | Evenly)]
    within = not works or (works[0].place.line, works[0].place.column) < (place.line, place.column)
    if line.side or within or brings_stitches(line):
        return False
    if needles.flat:
        if needles.side == "WS" or _lengthened(needles) or work_what_was_cut_short(needles):
            return True
        if needles.free or _just_cast_on(needles) or _joins_yarn(line, needles):
            needles.side = "WS"
        else:
            needles.miss(place, _NOT_FACING, _FACE)
        return True
    if opened_midway(needles) and not _joins_yarn(line, needles):
        refuse_rows_around_gap(line, needles)
    elif speaks_of_rows(line) and (is_parted(needles) or (_just_cast_on(needles) and not needles.joined)):
        needles.begin_rows("WS")
    else:
        needles.miss(place, _IN_ROUNDS, 'Write "Work flat." above it if the work is turned from here on.')
    return True


_NOT_TURNED = "the line is a wrong-side row, and nothing before it has turned the work, which goes in rounds."


def turns_midway(line: Line) -> bool:
    """Return whether a line turns in the middle of a row."""
    phrases = (sentence for sentence in line.sentences if isinstance(sentence, Phrase))
    return any(isinstance(one, TurnHere) for phrase in phrases for one in every_element(phrase.elements))


def is_in_own_words(line: Line) -> bool:
    """Return whether a line is kept in the page's own words."""
    return any(isinstance(sentence, OwnWords) for sentence in line.sentences)


def _is_behind_own_row(needles: Needles) -> bool:
    """Return whether the last row of a ring is one in own words, which may have been turned."""
    last = needles.drafts[-1] if needles.drafts else None
    return last is not None and last.template is not None and last.template.own is not None


def take_side(line: Line, needles: Needles, *, turns: bool) -> None:
    """Switch to rows if the line speaks of rows, and to the side it names.

    Many pages say "row" for a round: one that names no side, behind a closed round, is a round; that is told.
    Short rows in the round are rows, but the piece stays in the round. A stretch worked to a length gets one
    more row if it would end on the wrong side for the line, and a repeat that its count cut short is worked
    to its end.
    """
    if turns and _begins_wrong_side(line, needles):
        needles.begin_rows("WS")
        return
    opens = _opens_in_rows(line, needles)
    if (line.rows or line.side or opens) and not (
        turns or needles.short_rows.gap is not None or needles.short_rows.turns
    ):
        begun = needles.flat
        if _calls_a_round_row(line, needles) and not needles.line.turns_back:
            told = "the work goes in rounds, and this line speaks of a row: taken as a round."
            needles.warn(line.place, f'{told} Write "Work flat" where the work is turned from here on.')
            return
        if not begun and _is_behind_own_row(needles) and not is_in_own_words(line):
            told = "rows in your own words stand above in the round, and this line speaks of rows."
            hint = 'Write "Work flat." above it if the work is turned from here on, else "Rnd" for "Row".'
            needles.report(line.place, told, hint)
            return
        if line.numbers and _calls_a_round_row(line, needles):
            told = "rows follow rounds: the work is taken as turned after each from here on."
            needles.warn(line.place, f'{told} Write "Rnd" where they are rounds.')
        if (speaks_of_rows(line) or opens) and opened_midway(needles) and not _joins_yarn(line, needles):
            refuse_rows_around_gap(line, needles)
        at_gap = hangs_at_gap(needles)
        needles.flat = True
        if not begun and line.side:
            needles.side = line.side
        elif not begun and at_gap:
            needles.side = "WS"
    if not line.side or line.side == needles.side:
        return
    if not needles.flat and needles.short_rows.gap is None:
        if turns and not needles.short_rows.turns:
            hint = 'Write "turn" at the end of the row before it, or RS for WS.'
            needles.report(line.place, _NOT_TURNED, hint)
        return
    if needles.short_rows.gap is None and (_lengthened(needles) or work_what_was_cut_short(needles)):
        return
    if needles.short_rows.gap is None and (needles.free or _just_cast_on(needles)):
        needles.side = line.side
        return
    needles.warn(
        line.place,
        f"the line is for {line.side} rows; by the rows so far one of the other side comes next. "
        "Taken as printed.",
    )
    if needles.short_rows.gap is None:
        needles.side = line.side


def _begins_wrong_side(line: Line, needles: Needles) -> bool:
    """Return whether a line begins a piece with a wrong-side row: among short rows too, no round does."""
    drafts, open_ = needles.drafts, needles.short_rows.gap is not None or needles.short_rows.turns
    if line.side != "WS" or needles.flat or needles.joined or open_ or needles.project.spacing is None:
        return False
    return bool(drafts) and not drafts[-1].before and needles.count > 0


def _calls_a_round_row(line: Line, needles: Needles) -> bool:
    """Return whether a line may say "row" for a round: no side is named, and the work is closed before it."""
    drafts = needles.drafts
    if needles.flat or line.side or needles.held or not drafts or not (drafts[-1].before or needles.joined):
        return False
    phrases = [sentence for sentence in line.sentences if isinstance(sentence, Phrase)]
    elements = [one for phrase in phrases for one in phrase.elements]
    opens = any(isinstance(one, Hold) or (isinstance(one, Work) and one.stitch == "bo") for one in elements)
    codes = drafts[-1].codes
    closed = "hold" not in codes and ("bo" not in codes or _casts_on_over(elements))
    return closed and not opens and not drafts[-1].flat and needles.project.spacing is not None


def _opens_in_rows(line: Line, needles: Needles) -> bool:
    """Return whether a line that says neither row nor round ("R1:") is a row: the round was opened."""
    drafts = needles.drafts
    if not says_neither(line) or needles.flat or not drafts or not drafts[-1].before:
        return False
    bound_off = "bo" in drafts[-1].codes and "co" not in drafts[-1].codes
    return opened_midway(needles) or hangs_at_gap(needles) or bound_off


def _casts_on_over(elements: Sequence[Element]) -> bool:
    """Return whether a row casts on within it, over what the row before bound off: a buttonhole is closed."""
    inner = any(isinstance(one, Work) and one.stitch == "co" for one in elements[1:-1])
    several = [one for one in elements if isinstance(one, Several)]
    return inner or any(one.goal == "openings" or _casts_on_over(one.elements) for one in several)


def _joins_yarn(line: Line, needles: Needles) -> bool:
    """Return whether the yarn is joined anew for the line, which then begins where it is joined."""
    return bool(_JOINS.search(" ".join((line.text, *line.said, *needles.remarks))))


def _just_cast_on(needles: Needles) -> bool:
    """Return whether no row has been worked yet on what is on the needles."""
    return not needles.drafts or needles.drafts[-1].before == 0 or not needles.count


def _lengthened(needles: Needles) -> bool:
    """Work one more row of the stretch just worked to a length; return whether there is one.

    It belongs to that stretch: what was changed and said since, as another needle, is for the row behind it.
    """
    if not needles.stretches or needles.stretches[-1].last != len(needles.drafts) - 1:
        return False
    cycle, at = needles.last.repeated
    if not cycle:
        return False
    here, before, section = len(needles.drafts), needles.drafts[-1], needles.section
    yarn, label, again, remarks = needles.yarn, section.label, section.own_yarn_again, needles.remarks
    if (needles.last.yarn_taken == here or again) and len(yarns := yarns_in(before.phrase)) != 1:
        return False
    if needles.last.yarn_taken == here or again:
        (needles.yarn,) = yarns
    section.label, section.own_yarn_again, needles.remarks = None, False, []
    repeat(cycle, 1, needles, cycle[0].place, start=at)
    changed = (needles.yarn, before.needle_mm) != (yarn, needles.needle_mm)
    needles.yarn, section.label, section.own_yarn_again, needles.remarks = yarn, label, again, remarks
    if len(needles.drafts) == here:
        return True
    row = needles.drafts[-1]
    row.section, row.line, row.altered = before.section, before.line, before.altered
    row.needle_mm, row.fabric = before.needle_mm, before.fabric
    if before.section != section.name:
        section.start += 1
    if needles.last.yarn_taken == here:
        needles.last.yarn_taken = needles.last.yarn_named = here + 1
    needles.stretches[-1] = replace(needles.stretches[-1], last=here)
    if changed:
        told = f"line {before.line} gets one row more before the change, to come to the {needles.side}."
        needles.warn(needles.here, told)
    return True
