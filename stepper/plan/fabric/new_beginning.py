"""Begin the rounds at another place: `ending last rnd 4 sts before BOR`, `k10 to the new beginning`. No I/O.

Common practice: underarm stitches lie on both sides of the beginning of the round, and are bound off in one
go once it has moved to just before them. The stitches left are worked first in the next round; from then on
they are one round behind the others, and so is the pattern over them. A sock's rounds begin at the middle of
its sole once the stitches up to there are knitted again behind the round that closed the heel; those are one
round ahead.
"""

from __future__ import annotations

from dataclasses import replace

from stepper.plan.drafts import DraftRound
from stepper.plan.fabric.columns import KNIT, UnknownFabricError
from stepper.plan.fabric.established import columns_of
from stepper.plan.lines.flat_or_round import closes
from stepper.plan.model import Item, Run, flatten
from stepper.plan.state.in_hand import Column, Established
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.halves import NO_INSTEP, SAY_WHERE, turned_on
from stepper.plan.stitches.needle_by_needle import SAY_HOW, UNDIVIDED
from stepper.plan.stitches.places import begins_round
from stepper.plan.stitches.row_elements import fixed_uses
from stepper.plan.stitches.run_repeats import condense
from stepper.project.instructions import Phrase, StopShort
from stepper.project.laying_out import BeginFurther, BeginsAt
from stepper.project.stitchwork import Across, Mark, Numbers, Until, Work


def stop_short(instruction: StopShort, needles: Needles) -> None:
    """Leave the last stitches of the round just worked, and let the next round begin there."""
    number, place = instruction.number.of(needles.size), instruction.place
    if number == 0:
        return
    last = _last_of_section(needles)
    if last is None or needles.flat or last.flat or last.chart:
        needles.report(place, "no round was worked before this that could stop before its end.")
        return
    kept = _without_end(last.phrase, number)
    if kept is None:
        needles.report(
            place,
            f"the last {number} stitches of the round are not all plain, so it cannot stop before them.",
            f"The round has {last.after} stitches.",
        )
        return
    columns, phase = _columns(needles, number)
    remark = f"stop {number} stitches before the end of the round: from here on it begins there"
    rest = Run("rest", number, needles.yarn)
    needles.drafts[-1] = replace(
        last, phrase=(*kept, rest), remarks=(*last.remarks, remark), template=None, whole=True
    )
    if needles.stretches and needles.stretches[-1].last == len(needles.drafts) - 1:
        stretch = needles.stretches.pop()
        if stretch.first < stretch.last:
            needles.stretches.append(replace(stretch, last=stretch.last - 1))
    count = needles.count
    needles.markers = tuple(sorted({(mark + number) % count for mark in needles.markers} - {0}))
    needles.instep = turned_on(needles.instep, count - number, count)
    _go_on_from_here(columns, phase, needles)


def begin_further(instruction: BeginFurther, needles: Needles) -> None:
    """Knit some stitches of the next round, and let the rounds begin behind them."""
    if needles.counting.lost:
        return
    place = instruction.place
    if instruction.instep and needles.instep is None:
        needles.miss(place, NO_INSTEP, SAY_WHERE)
        return
    if instruction.number is None and not instruction.instep and not needles.ends:
        needles.miss(place, UNDIVIDED, SAY_HOW)
        return
    if needles.instep is not None and instruction.instep:
        number = needles.instep[0]
    else:
        number = instruction.number.of(needles.size) if instruction.number is not None else needles.ends[0]
    last = _last_of_section(needles)
    cast_on = last is not None and not last.before and last.codes <= {"co"}
    behind_rows = needles.flat and last is not None and not closes(last)
    if last is None or cast_on or needles.short_rows.gap is not None or behind_rows:
        needles.miss(place, "no round was worked before this that a new beginning could lie behind.")
        return
    if not 0 < number < needles.count:
        needles.miss(place, f"{number} stitches to a new beginning; the round has {needles.count}.")
        return
    if needles.flat and last.side == "WS":
        needles.miss(place, "a wrong-side row comes here by the rows so far, and no round begins behind one.")
        return
    if needles.flat:
        needles.flat, needles.side = False, "RS"
        needles.warn(place, "a new beginning of the round behind rows: taken as joined in the round.")
    try:
        columns, phase = columns_of(needles)
    except UnknownFabricError:
        columns, phase = None, 0
    if columns is not None and any(column[phase % len(column)] != KNIT for column in columns[:number]):
        told = f"the pattern goes on over the {number} stitches that are knitted to the new beginning."
        needles.miss(place, told, "Move the beginning where the fabric is plain.")
        return
    if instruction.number is None and not instruction.instep:
        needles.line.second_holds = [*needles.ends, needles.count][1] - number
    more = f"{number} more stitches" if number > 1 else "one more stitch"
    needles.remarks.append(f"knit {more}: from here on the round begins there")
    needles.drafts[-1] = replace(last, template=None)
    needles.markers = tuple(sorted({(mark - number) % needles.count for mark in needles.markers} - {0}))
    needles.instep = turned_on(needles.instep, number, needles.count)
    if columns is not None:
        columns = [*columns[number:], *((*column[1:], *column[:1]) for column in columns[:number])]
    _go_on_from_here(columns, phase, needles)


def check_beginning(instruction: BeginsAt, needles: Needles) -> None:
    """Hold where the rounds are said to begin against where they do."""
    if needles.counting.lost:
        return
    if needles.instep is None or needles.flat:
        needles.miss(instruction.place, NO_INSTEP, SAY_WHERE)
        return
    before, behind = needles.instep[0], needles.count - needles.instep[1]
    if (before == 0) if instruction.instep else (before == behind > 0):
        return
    told = f"the round begins {before} stitches before the instep here, and {behind} lie behind it."
    needles.report(instruction.place, told, 'Say how it moves: "K8 to the new beginning".')


def _last_of_section(needles: Needles) -> DraftRound | None:
    """Return the round last worked; None if the section has none yet."""
    return next(iter(needles.drafts[needles.section.start :][-1:]), None)


def _go_on_from_here(columns: list[Column] | None, phase: int, needles: Needles) -> None:
    """Take up the fabric behind a new beginning of the round; None if its columns are not known."""
    needles.ends, here = (), len(needles.drafts)
    why = "" if columns is not None else "the beginning of the round moved in it"
    needles.established = Established(
        start=here, end=here, reached=here, columns=columns, phase=phase, why=why
    )


def split_at_beginning(instruction: Phrase, needles: Needles) -> tuple[Phrase | BeginFurther, ...] | None:
    """Take "…, k10, pm for new beginning of rnd" apart where the ten come behind the end of the round.

    Returns:
        The round, if any of it stands there, and the stitches to the new beginning; None if they are stitches
        of this very round, or the line is none of that kind.
    """
    closed = _past_the_end(instruction, needles)
    if closed is not None:
        return closed
    *elements, mark = instruction.elements
    if not isinstance(mark, Mark) or mark.stitch != "pm" or not begins_round(mark.name):
        return None
    while elements and isinstance(elements[-1], Mark) and elements[-1].stitch == "rm":
        elements.pop()
    more = elements.pop() if elements else None
    if not isinstance(more, Work | Until) or more.stitch != "k" or needles.counting.lost or not needles.count:
        return None
    times = _times_of(more, needles) if isinstance(more, Until) else more.times
    if times is None or (isinstance(more, Until) and elements):
        return None
    further = BeginFurther(times, more.place)
    if not elements:
        return (further,) if times.of(needles.size) < needles.count else None
    fits = all(isinstance(one, Work | Across | Mark) for one in elements)
    first = elements[0]
    own = isinstance(first, Across) and first.name not in needles.held
    if not fits or not any(isinstance(one, Across) for one in elements[1 if own else 0 :]):
        return None
    uses = sum(fixed_uses(one, needles.size) for one in elements) + (needles.count if own else 0)
    if uses != needles.count:
        return None
    return replace(instruction, elements=tuple(elements)), further


def _times_of(more: Until, needles: Needles) -> Numbers | None:
    """Return how many stitches "k to last 4 sts" or "k to marker" are.

    Returns:
        The number; None if the line goes to another place or leaves none.
    """
    if more.goal == "marker" and more.name in ("", "first") and more.short is None and needles.markers:
        return Numbers((needles.markers[0],), more.place)
    if more.goal not in ("last", "end") or more.short is None:
        return None
    left = more.short.of(needles.size)
    return Numbers((needles.count - left,), more.place) if 0 < left < needles.count else None


def refuse_beginning_within(instruction: Phrase, needles: Needles) -> bool:
    """Report a row that marks the beginning of the round before the last stitches it casts on or picks up.

    "CO 4, pm for BOR, CO 4": the row ends four stitches behind the marker, and the rounds would begin there.
    Of a row that is worked on behind the marker to its end it is told where the rounds begin; in the round
    `lines/rounds.begin_round_at` tells it, which moves them.

    Returns:
        Whether it is reported.
    """
    stitches = [at for at, one in enumerate(instruction.elements) if not isinstance(one, Mark)]
    for at, mark in enumerate(instruction.elements):
        marks = isinstance(mark, Mark) and mark.stitch == "pm" and begins_round(mark.name)
        if not (marks and isinstance(mark, Mark) and stitches and stitches[0] < at < stitches[-1]):
            continue
        last = instruction.elements[stitches[-1]]
        if isinstance(last, Work) and last.stitch in ("co", "pu"):
            told = "the round is marked to begin here, and the row goes on behind the marker."
            hint = 'Place a plain marker, and say in a line of its own: "K20 to the new beginning".'
            needles.miss(mark.place, told, hint)
            return True
        if needles.flat:
            told = "the rounds go on from the end of this row, and not from the marker within it."
            needles.warn(mark.place, f'{told} Say it if they move: "K20 to the new beginning".')
    return False


def _past_the_end(instruction: Phrase, needles: Needles) -> tuple[Phrase, BeginFurther] | None:
    """Take a round that closes a heel apart from the heel stitches that it knits once more behind its end.

    "Knit across heel sts, pick up and knit 15, work across instep, pick up and knit 15, k8": all stitches of
    the heel are worked before, and nothing but those of the next round can be knitted then.
    """
    *elements, more = instruction.elements
    if not (isinstance(more, Work) and more.stitch == "k" and elements) or needles.counting.lost:
        return None
    first, *others = elements
    back = [one for one in elements if isinstance(one, Across) and one.name in needles.held]
    picks = [one for one in elements if isinstance(one, Work) and one.stitch == "pu"]
    across = isinstance(first, Across) and first.name not in needles.held
    to_end = isinstance(first, Until) and first.goal == "end"
    plain = all(isinstance(one, Work | Across) for one in others)
    last = elements[-1]
    closes_it = isinstance(last, Work) and last.stitch == "pu"
    if not plain or not picks or [one.name for one in back] != ["instep"] or not closes_it:
        return None
    whole = needles.count if across or to_end else fixed_uses(first, needles.size)
    if whole + sum(fixed_uses(one, needles.size) for one in others) != needles.count:
        return None
    return replace(instruction, elements=tuple(elements)), BeginFurther(more.times, more.place)


def _without_end(phrase: tuple[Item, ...], number: int) -> tuple[Item, ...] | None:
    """Return a round without its last stitches; None if they are not worked one by one."""
    runs = list(flatten(phrase))
    left = number
    while left:
        if not runs:
            return None
        run = runs.pop()
        if run.stitch == "sm":
            continue
        if run.uses != run.times or run.leaves != run.times or run.stitch == "rest":
            return None
        if run.times > left:
            runs.append(replace(run, times=run.times - left))
        left -= min(left, run.times)
    return condense(tuple(runs)) if runs else None


def _columns(needles: Needles, number: int) -> tuple[list[Column] | None, int]:
    """Return the columns from the new beginning on, with the stitches left one row behind; None if
    unknown."""
    try:
        columns, phase = columns_of(needles)
    except UnknownFabricError:
        return None, 0
    behind = [(*column[-1:], *column[:-1]) for column in columns[-number:]]
    return [*behind, *columns[:-number]], phase
