"""Work rows that are kept in the page's own words: only how many stitches they begin and end with is known.

A count printed behind the words is taken as it stands; without one the number stays as it is. Both are told.
What such a row does to the fabric, to markers it speaks of and to a chart in hand is not known from there on,
and a later row that asks for it is refused (`stepper.plan.fabric`). No I/O.
"""

from __future__ import annotations

import re
from dataclasses import replace

from stepper.plan.drafts import Template, own_words_of
from stepper.plan.fabric.established import keep_held
from stepper.plan.fabric.own_fabric import in_own_words
from stepper.plan.lines.held.gaps import refuse_across_gap
from stepper.plan.model import Run, runs_written
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.row_elements import UNNAMED, name_apart
from stepper.project.instructions import BindOff, OwnWords, Phrase
from stepper.project.model import RuleKind
from stepper.project.problems import Span
from stepper.project.reading.own_words import UNCOUNTED, turns_last
from stepper.project.stitchwork import Work
from stepper.regex import regex

_WORD = {1: "more", -1: "fewer"}
_COMES = regex(r"\b(?:(?P<cast>cast(?:ing)?[\s-]+on|CO)|(?P<picked>pick(?:ing)?[\s-]+up))\b", re.I)
_MARKERS = regex(r"\b(?:markers?|mkrs?|pm|sm|slm|rm|m\d?)\b", re.I)
_NEEDLES = regex(r"\b(?:needles?|ndls?|dpns?|n\d)\b", re.I)
_BOBBLES = regex(r"\b(?:bobbles?|mb)\b", re.I)


def begins_or_ends(own: OwnWords, needles: Needles) -> Phrase | BindOff | None:
    """Return what the words of a line come to if that begins or ends a piece; the words are said with it.

    Args:
        own: The words.
        needles: The knitting in hand; what cannot be begun on it is reported.
    """
    beside = own.beside
    comes = None if needles.count or needles.counting.lost else _COMES.search(own.text)
    if beside is None and comes is not None and own.count is not None and not own.count.change:
        stitch = "pu" if comes["picked"] else "co"
        beside = Phrase((Work(stitch, own.count.number, None, own.place),), own.place)
    if beside is None:
        return None
    if isinstance(beside, Phrase) and needles.count and not own.parted:
        needles.report(
            own.place,
            f"{needles.count} stitches are on the needles, and the words may work them as well.",
            'Print the stitches after the row behind the words instead: "Own words: … 96 sts."',
        )
        return None
    needles.remarks.append(own.text)
    return beside


def work_own_row(template: Template, needles: Needles) -> None:
    """Work one row in own words, unless it does not stand on the stitches on the needles."""
    own = template.own
    assert own is not None
    if not needles.count:
        needles.miss_stitches(own.place)
        return
    leaving = sum(one.times.of(needles.size) for one in own.held if one.times is not None)
    after = _stitches_after(own, leaving, needles)
    if after is None or not _may_stand_here(own, after, needles):
        needles.lose()
        return
    before, findings = needles.count, len(needles.findings)
    here = before - leaving
    code, times = ("own", here) if after == here else (f"own {here} to {after}", 1)
    phrase = (Run(code, times, needles.yarn), *_on_hold(own, needles))
    refuse_across_gap(phrase, after, own.place, needles)
    if len(needles.findings) > findings:
        needles.lose()
        return
    moved = bool(needles.markers) and after != before
    lost = moved or _MARKERS.search(own.text) is not None
    _tell(template, before, after, needles, lost=lost)
    if lost:
        needles.markers, needles.last.markers_lost = (), own.place.line
    if own.held:
        keep_held(phrase, needles)
    for run in phrase[1:]:
        needles.held[run.yarn] = run.times
        needles.held_by[run.yarn] = (needles.section.name, own.place.line)
    needles.emit(phrase, after, template=template, divide=bool(own.held))
    _lose_what_is_in_hand(own, needles)


def leave_unknown(own: OwnWords, needles: Needles, *, begin: int, before: int) -> None:
    """Leave what is not known behind a row told stretch by stretch: its fabric, its markers, its charts.

    Args:
        own: The row.
        needles: The knitting in hand, behind it.
        begin: Index of its first draft.
        before: Stitches before it.
    """
    row = Template((), own.place, own=own)
    needles.section.pattern = (row,)
    needles.established = in_own_words((row,), own.place.line, begin, needles.drafts[begin:])
    for draft in needles.drafts[begin + 1 :]:  # what the row has worked, and waits from then on
        for run in runs_written(draft.phrase):
            if run.stitch == "hold":
                *before_it, kept = needles.kept[run.yarn]
                unknown = replace(kept, established=replace(needles.established))
                needles.kept[run.yarn] = (*before_it, unknown)
    if needles.markers and (needles.count != before or _MARKERS.search(own.text) is not None):
        needles.markers, needles.last.markers_lost = (), own.place.line
    _lose_what_is_in_hand(own, needles)


def _lose_what_is_in_hand(own: OwnWords, needles: Needles) -> None:
    if _NEEDLES.search(own.text):
        needles.ends, needles.instep = (), None
    needles.last.hidden.update(dict.fromkeys(needles.last.charts, own.place.line))
    needles.last.charts.clear()


def _on_hold(own: OwnWords, needles: Needles) -> tuple[Run, ...]:
    """Return what goes on hold in a row, each part under a name of its own."""
    taken, runs = set(needles.held), []
    for one in own.held:
        number = one.times.of(needles.size) if one.times is not None else 0
        if number:
            name = name_apart(one.name or UNNAMED, taken)
            taken.add(name)
            runs.append(Run("hold", number, name))
    return tuple(runs)


def _stitches_after(own: OwnWords, leaving: int, needles: Needles) -> int | None:
    """Return the stitches after a row as printed; None, reported, if there would be none.

    Args:
        own: The row.
        leaving: Stitches that go on hold in it.
        needles: The knitting in hand.
    """
    here = needles.count - leaving
    if here < 1:
        told = f"{leaving} stitches go on hold, and {needles.count} are on the needles."
        needles.report(own.place, told)
        return None
    if own.count is None:
        return here
    printed = own.count.number.of(needles.size)
    after = here + own.count.change * printed if own.count.change else printed
    if after < 1:
        needles.report(
            own.count.place, "no stitches would be left after this row.", "Bind off on its own line."
        )
        return None
    return after


def _may_stand_here(own: OwnWords, after: int, needles: Needles) -> bool:
    """Return whether a row in own words may be worked on what is on the needles; report it if not."""
    before, place = needles.count, own.place
    if needles.short_rows.gap is not None or needles.short_rows.turns:
        told = "short rows are open here, and a row in your own words does not say how they are closed."
        needles.report(place, told, "Write the row that closes them so that it is read.")
        return False
    if own.word == "round" and needles.flat:
        told = "the work goes in rows here, and the line speaks of rounds."
        needles.report(place, told, 'Write "rows", or "Join in the round." before it.')
        return False
    if not needles.flat and turns_last(own.text):
        told = "the work goes in rounds here, and the row is turned at its end."
        hint = 'Write "Work flat." before it if rows begin there; else keep its words as a note above it.'
        needles.report(place, told, hint)
        return False
    if own.count is None:
        return True
    if _is_several(own, needles) and after != before:
        needles.report(
            own.count.place,
            f"several rows in your own words go from {before} stitches to {after}, and where is not said.",
            "Write a line for each row that changes the number, with its count.",
        )
        return False
    if own.count.change:
        return True  # what is gained or lost each time is printed, whatever the row begins with
    key = (place.line, place.column)
    first = needles.last.own.setdefault(key, before)
    alone = needles.alterations.as_printed
    rounds = alone(needles.size).get(needles.line.number, ()) if alone is not None else ()
    printed = {each.before for each in rounds}
    if first != before or (printed and before not in printed):
        there = first if first != before else min(printed)
        needles.report(
            needles.line.place or place,
            f"{own_words_of(place.line)}: its count is for {there} stitches, "
            f"and {before} are on the needles here.",
            "Write the row out for these stitches, with its own count.",
        )
        return False
    return True


def _is_several(own: OwnWords, needles: Needles) -> bool:
    return own.several or own.lasts is not None or (own.rows is not None and own.rows.of(needles.size) > 1)


def _tell(template: Template, before: int, after: int, needles: Needles, *, lost: bool) -> None:
    """Tell once what is taken of a row in own words."""
    own = template.own
    assert own is not None
    if id(template) in needles.caches.fits:
        return
    needles.caches.fits.add(id(template))
    if own.held:
        behind = " as printed" if own.count is not None else ""
        leaving = sum(one.times.of(needles.size) for one in own.held if one.times is not None)
        counts = f"{before} before, {leaving} on hold, {after} after{behind}"
    elif own.text.rstrip(" .").endswith(UNCOUNTED):
        counts = f"nobody knows how many, and they stand as {after} up to the row that was counted"
    elif own.count is None:
        counts = f"{before} before and after, as no count is printed behind them"
    elif before == after:
        counts = f"{before} before and after as printed"
    else:
        counts = f"{before} before, {after} after as printed"
        if own.count.change:
            counts += f", and {abs(after - before)} {_WORD[own.count.change]} each time"
    rows = "these rows are" if _is_several(own, needles) else "this row are"
    told = f"the stitches of {rows} yours: {counts}."
    if lost and needles.markers:
        told += " Where markers hang is not known from there on."
    elif needles.markers:
        told += " The markers are taken to stay where they are."
    needles.warn(own.place, told)
    plain = any(rule.kind is RuleKind.NO_BOBBLES for rule in needles.project.alterations)
    if needles.knitted and plain and _BOBBLES.search(own.text):
        needles.warn(
            own.place, '"no bobbles" does not reach into your own words: the row is said as it is printed.'
        )


def tell_markers_lost(needles: Needles) -> tuple[str, str]:
    """Return why nobody can tell where the markers are, and what to write."""
    line = needles.last.markers_lost
    return (
        f"nobody can tell where the markers are: {own_words_of(line)}.",
        'Count the stitches instead, or take the markers out ("Remove all markers.").',
    )


def refuse_own_words(template: Template, place: Span, needles: Needles) -> None:
    """Report a shaping at intervals whose row is in own words, of which no other stitches are known."""
    told = f"{own_words_of(template.place.line)}, and not worked at intervals."
    needles.miss(place, told, "Write each of these rows with its count, and the rows between.")
