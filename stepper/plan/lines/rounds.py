"""Rounds worked once or repeatedly: written out, plain or from a chart. No I/O."""

from __future__ import annotations

import re

from stepper.plan.checks.counts import check_promised
from stepper.plan.drafts import Template
from stepper.plan.even.even_change import work_evenly
from stepper.plan.fabric.chart_rounds import chart_round
from stepper.plan.fabric.established import ground, keep_held
from stepper.plan.fabric.own_rows import words_due
from stepper.plan.fabric.rows_ahead import count_on_beside
from stepper.plan.fabric.sources_in_hand import supplies_of
from stepper.plan.lines.buttonholes import over_openings
from stepper.plan.lines.heel_rows import as_far_as_meant
from stepper.plan.lines.held.gaps import refuse_across_gap
from stepper.plan.lines.held.just_held import hold_what_was_worked
from stepper.plan.lines.own_words import tell_markers_lost, work_own_row
from stepper.plan.lines.shaping.begun_at_marker import from_the_beginning
from stepper.plan.lines.short_row_method import begins_with_stitch, tell_turning
from stepper.plan.model import Item, flatten, runs_written
from stepper.plan.state.needles import MOST_ROUNDS, Needles, PartReachedError
from stepper.plan.stitches.halves import turned_on
from stepper.plan.stitches.phrase import WorkedPhrase, work_phrase
from stepper.plan.stitches.row_elements import MisfitError
from stepper.project.problems import Span, one_of
from stepper.project.stitchwork import (
    Across,
    ChartPart,
    Element,
    Mark,
    PickUp,
    Several,
    Until,
    Work,
    every_element,
)


def work_template(template: Template, needles: Needles) -> None:
    """Work one round of a pattern once, unless the count is not known."""
    if needles.counting.lost:
        if template.own is not None and template.own.count is not None and not template.own.count.change:
            needles.regain(template.own.count.number.of(needles.size))
        return
    if needles.reached:
        raise PartReachedError
    _take_its_yarn(template, needles)
    if _is_worked_as_a_whole(template, needles) or not begins_with_stitch(template, needles):
        return
    if id(template) not in needles.caches.fits and not _yarns_known(template, needles):
        needles.lose()
        return
    try:
        worked = _fitted(_as_meant(template, needles), needles)
    except MisfitError as misfit:
        _report(misfit, template, needles)
        return
    refuse_across_gap(worked.items, worked.after, template.place, needles)
    first = id(template) not in needles.caches.fits
    needles.caches.fits.add(id(template))
    if worked.held:
        keep_held(worked.items, needles)
    for name in worked.returned:
        del needles.held[name]
    for name, number in worked.held:
        needles.held[name] = needles.held.get(name, 0) + number
        needles.held_by[name] = (needles.section.name, template.place.line)
    charts = dict(worked.charts)
    needles.last.charts.update(charts)
    count_on_beside(template, charts.keys(), needles)
    needles.last.beside.update(charts)
    if worked.left.passed and not needles.short_rows.slipped:
        needles.remarks.append(_PASSING[needles.short_rows.method or "german"])
    tell_turning(template, worked, needles)
    if needles.short_rows.gap is not None:
        needles.short_rows.slipped = _slips_first(worked.items)
        if needles.side == "WS" and not needles.flat:
            needles.short_rows.back.add(id(template))
    if needles.markers and any(isinstance(one, Mark) and one.name == "all" for one in template.elements):
        needles.remarks.append("remove the markers")  # where they hang is not said stitch by stitch
    _keep_markers(template, worked, needles)
    if worked.parted and not needles.flat:
        needles.turn_to_rows()
    needles.emit(
        worked.items,
        worked.after,
        turned=worked.turned,
        template=template,
        divide=bool(worked.held),
        due=words_due(worked.items, needles),
    )
    needles.ends, needles.instep = worked.ends, worked.instep
    if worked.behind:
        hold_what_was_worked(worked, template, needles)
    needles.short_rows.gap, needles.short_rows.turns = worked.left.gap, worked.left.turns
    if worked.begins and not needles.flat:
        begin_round_at(worked.begins, template, needles)
    check_promised(template.counts, needles, first=first)


def _as_meant(template: Template, needles: Needles) -> Template:
    """Return a round with what its words leave to what is on the needles put in."""
    return as_far_as_meant(from_the_beginning(over_openings(template, needles), needles), needles)


def _keep_markers(template: Template, worked: WorkedPhrase, needles: Needles) -> None:
    """Take the markers as a row leaves them; the one that parts two sides goes on as long as it does."""
    needles.sides_parted = len(worked.markers) == 1 and (needles.two_balls or _joins_ball(worked.items))
    needles.markers = worked.markers
    _keep_names(template, needles)


def _joins_ball(items: tuple[Item, ...]) -> bool:
    """Return whether a row joins the second ball, with which two sides of a neck are worked at once."""
    return any(run.stitch == "join 2nd ball" for run in runs_written(items))


def _keep_names(template: Template, needles: Needles) -> None:
    """Keep which of its markers a row calls by a name, if it places all that there are."""
    marks = [mark for mark in template.elements if isinstance(mark, Mark) and mark.stitch == "pm"]
    names = [mark.name.lower() for mark in marks]
    if not any(names):
        return
    known = len(names) == len(needles.markers) and not needles.wrong
    for kind in ("side", "raglan", "underarm", "marked"):
        own = [number for number, name in enumerate(names, 1) if re.search(rf"\b{kind}s?\b", name)]
        if known and len(own) == 1:
            needles.last.called[kind] = own[0], len(names)
        elif own:
            needles.last.called.pop(kind, None)


def _take_its_yarn(template: Template, needles: Needles) -> None:
    """Go on in the yarn that a round names; one repeated by a line of stripes is in theirs."""
    striped = needles.stripes is not None and needles.stripes.line == needles.line.number
    if template.yarn and not striped:
        needles.leave_stripes()
        needles.yarn = template.yarn


def _is_worked_as_a_whole(template: Template, needles: Needles) -> bool:
    """Work a round that is not written out stitch by stitch; return whether it is one, or was refused."""
    if template.evenly is not None:
        work_evenly(template.evenly, needles)
    elif template.chart:
        chart_round(template, needles)
    elif template.own is not None:
        work_own_row(template, needles)
    elif needles.last.markers_lost and _asks_markers(template.elements):
        needles.miss(template.place, *tell_markers_lost(needles))
    else:
        return False
    return True


def begin_round_at(place: int, template: Template, needles: Needles) -> None:
    """Begin the rounds at a marker within the last one: the stitches before it are worked with that round."""
    if ground(needles) not in ("plain", ""):
        told = "the beginning of the round moves, and the pattern with it: that is not followed here."
        needles.miss(template.place, told, "Move the beginning where the fabric is plain.")
        return
    marks = (mark for mark in needles.markers if mark != place)
    needles.markers = tuple(sorted((mark - place) % needles.count for mark in marks))
    needles.ends = ()
    needles.instep = turned_on(needles.instep, place, needles.count)
    more = f"{place} more stitches" if place > 1 else "one more stitch"
    needles.remarks.append(f"work {more}, to the new beginning of the round")
    told = f"from here on the rounds begin at the marker within this row, after {more}."
    needles.warn(template.place, told)


def _yarns_known(template: Template, needles: Needles) -> bool:
    """Return whether the file has every yarn that a round is worked in; report any it lacks."""
    known = {key.lower() for key in needles.project.yarns}
    for element in every_element(template.elements):
        if isinstance(element, Work | Until) and element.yarn and element.yarn.lower() not in known:
            hint = f"The yarns are {one_of(needles.project.yarns) or 'none'}."
            if element.yarn == "B":
                hint += ' If "K1B" is a stitch here, write k1b for the row below, k1 tbl for the back loop.'
            needles.report(element.place, f'there is no yarn "{element.yarn}".', hint)
            return False
    return True


def _report(misfit: MisfitError, template: Template, needles: Needles) -> None:
    """Report what does not fit, at the round itself or at the call that repeats it once too often."""
    brings = any(isinstance(element, Across | PickUp) for element in template.elements)
    missing = needles.partial and needles.counting.unread
    if (missing and brings) or (needles.section.shaky and _asks_markers(template.elements)):
        needles.counting.lost = True  # what is missing may be in a line not read
    place, message = misfit.place, misfit.message
    called = needles.line.place
    if called is not None and called.line > place.line and id(template) in needles.caches.fits:
        message = f"the round of line {place.line} fits no more often here: {message}"
        place = called
    needles.report(place, message, misfit.hint, misfit.kind)
    needles.lose()


def _fitted(template: Template, needles: Needles) -> WorkedPhrase:
    """Work out a round; if a printed count differed before, use that count if only it fits."""
    try:
        return work_out(template, needles)
    except MisfitError:
        if not needles.counting.off or needles.count + needles.counting.off <= 0:
            raise
        counted, needles.count = needles.count, needles.count + needles.counting.off
        try:
            worked = work_out(template, needles)
        except MisfitError:
            needles.count = counted
            raise
        needles.counting.off = 0
        return worked


_AT_MARKERS = ("marker", "behind", "markers", "turn", "past")


def _asks_markers(elements: tuple[Element, ...]) -> bool:
    return any(
        isinstance(element, Mark)
        or (isinstance(element, Until | Several | ChartPart) and element.goal in _AT_MARKERS)
        for element in every_element(elements)
    )


def _slips_first(items: tuple[Item, ...]) -> bool:
    """Return whether the first stitch that a row works is slipped."""
    first = next((run for run in flatten(items) if run.uses and run.stitch != "rest"), None)
    return first is not None and first.stitch.startswith("sl")


_PASSING = {
    "german": "work both legs of every double stitch as one",
    "wrap": "work every wrap together with its stitch",
    "plain": "close the gaps at the turns",
}


def work_out(template: Template, needles: Needles) -> WorkedPhrase:
    """Work out a round, only once for the same stitches: most rounds of a garment repeat the one before.

    Raises:
        MisfitError: the round does not fit the stitches.
    """
    wrong = needles.wrong
    key = (
        # Templates of one line share their elements, whichever pass made them; the value keeps them alive.
        id(template.elements),
        template.stockinette,
        needles.count,
        needles.size,
        needles.yarn,
        needles.markers,
        needles.two_balls,
        wrong,
        needles.short_rows.gap,
        needles.short_rows.turns,
        needles.short_rows.slipped,
        needles.short_rows.method,
        needles.ends,
        needles.instep,
        needles.section.name,
    )
    known = needles.caches.rounds.get(key)
    if known is not None:
        return known[1]
    elements = template.elements
    if template.stockinette:
        elements = (Until("p" if wrong else "k", "end", None, None, template.place),)
    worked = work_phrase(
        elements,
        count=needles.count,
        size=needles.size,
        yarn=needles.yarn,
        place=template.place,
        facing=needles.facing,
        method="plain" if needles.short_rows.slipped else needles.short_rows.method or "german",
        ends=needles.ends,
        instep=needles.instep,
        supplies=supplies_of(needles),
    )
    if not template.asks:
        needles.caches.rounds[key] = (template, worked)
    return worked


def repeat(
    templates: tuple[Template, ...], rounds: int, needles: Needles, place: Span, *, start: int = 0
) -> None:
    """Work a cycle of rounds for a number of rounds, beginning with one of the cycle (from 0)."""
    if needles.counting.lost:
        return
    if rounds > MOST_ROUNDS:
        needles.report(place, f"{rounds} rounds are more than any garment has.", kind="length")
        return
    before = len(needles.findings)
    for number in range(rounds):
        work_template(templates[(start + number) % len(templates)], needles)
        if len(needles.findings) > before:
            return
        once = number == 1 and len(templates) == 1
        alike = once and needles.limit is None and needles.stripes is None
        if alike and _changes_nothing(needles):
            # The rest are the same round: one draft stands for all of them, which is most of a garment.
            needles.drafts.extend([needles.drafts[-1]] * (rounds - 2))
            return


def _changes_nothing(needles: Needles) -> bool:
    """Return whether the last round left everything as it was."""
    draft = needles.drafts[-1]
    if (
        draft.template is None
        or draft.template.asks
        or (draft.template.chart and not draft.template.chart_round)
    ):
        return False
    same = draft.before == draft.after and not draft.divide and draft.markers == needles.drafts[-2].markers
    return same and not draft.flat and needles.short_rows.gap is None and not needles.short_rows.turns
