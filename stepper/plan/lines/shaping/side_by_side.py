"""Shapings worked side by side, alone or beside rounds of a fabric or of stripes. No I/O.

Common practice ("at the same time"): every shaping counts its own rounds, from the same round on or from
where the line has it begin. Two that fall on one row share it: one changes its beginning, the other its end.
Rounds beside which they run say how long the whole lasts, so no shaping may fall behind their end.
"""

from __future__ import annotations

from dataclasses import field, replace

from stepper.craft.gauge import half_up
from stepper.plan.drafts import Template
from stepper.plan.fabric.established import as_it_looks, establish, even, ground
from stepper.plan.lines.durations import cycle_of, last_for
from stepper.plan.lines.rounds import repeat, work_template
from stepper.plan.lines.shaping.intervals import (
    alternates,
    as_shown,
    goes_on_with,
    legs,
    plain_cycle,
    round_of,
    take_right_side,
    worked_since,
)
from stepper.plan.lines.shaping.schedule import tell_sides_around
from stepper.plan.lines.stripes import yarns_of
from stepper.plan.model import other_side
from stepper.plan.state.measuring_places import measured_from, without_heel, without_held
from stepper.plan.state.needle_and_yarn import take_yarn
from stepper.plan.state.needles import Needles
from stepper.plan.stitches.row_elements import MisfitError, fixed_uses
from stepper.project.duration import Rounds, UntilCount, UntilLength
from stepper.project.instructions import AtIntervals, Leg, Striped, Together, WithYarn, WorkRounds
from stepper.project.problems import Span
from stepper.project.stitchwork import Element, Numbers, Until
from stepper.records import dataclass


@dataclass(slots=True)
class _Schedule:
    """On which rounds, counted from 1 from here, something other than the fabric comes."""

    stripes: list[str]
    """Yarn of every round of the stripes; empty without them."""
    rounds: int | None
    """Rounds that the base lasts; None where the shapings alone say how long."""
    due: dict[int, list[Template]] = field(default_factory=dict)
    yarns: dict[int, list[WithYarn]] = field(default_factory=dict)
    """Changes of yarn before a round."""
    waiting: list[tuple[AtIntervals, Template, Numbers]] = field(default_factory=list)
    """Shapings that begin at a count not yet reached, with that count."""

    @property
    def end(self) -> int:
        """The last round that has to be worked one by one."""
        changes = self.yarns if self.rounds is not None else ()
        return max((*self.due, *changes), default=0)

    def plain_after(self, number: int) -> int:
        """Return how many rounds of the fabric come behind a round before anything else does."""
        if self.stripes:
            return 1
        later = (at for at in (*self.due, *self.yarns) if at > number + 1)
        return min(later, default=number + 2) - number - 1

    def yarn_of(self, number: int) -> str:
        """Return the yarn of a round by its stripe; empty without stripes."""
        return self.stripes[(number - 1) % len(self.stripes)] if self.stripes else ""


def work_together(instruction: Together, needles: Needles) -> None:
    """Work shapings side by side, each at its own intervals, to the end of the last and of the base."""
    begin, before, base = len(needles.drafts), len(needles.findings), instruction.base
    templates = [found for part in instruction.parts if (found := round_of(part, needles)) is not None]
    if len(templates) < len(instruction.parts) or needles.counting.lost:
        return
    schedule = _Schedule(yarns_of(base, needles) if isinstance(base, Striped) else [], None)
    if base is not None:
        schedule.rounds = _lasts(base, needles)
        _check_fabric(base, templates, needles)
        if schedule.rounds is not None:
            _check_filling(instruction, base, needles)
    for part, template in zip(instruction.parts, templates, strict=True):
        if isinstance(part.after, UntilCount):
            schedule.waiting.append((part, template, part.after.number))
        else:
            _put_down(part, template, _begins(part, needles), schedule, needles, beside=base is not None)
    for length, yarn in instruction.yarns:
        schedule.yarns.setdefault(_rounds_to(length, needles) + 1, []).append(yarn)
    _check_end(schedule, instruction, needles)
    if len(needles.findings) > before:
        needles.lose()
        return
    number = _work_shapings(schedule, instruction, needles)
    if len(needles.findings) == before and base is not None and not needles.counting.lost:
        _finish(base, number, schedule, needles, begin)


def _work_shapings(schedule: _Schedule, instruction: Together, needles: Needles) -> int:
    """Work to the last shaping; return how many rounds that took."""
    number, before = 0, len(needles.findings)
    _begin_waiting(number, schedule, instruction, needles)
    while number < schedule.end and len(needles.findings) == before:
        for yarn in schedule.yarns.pop(number + 1, ()):
            take_yarn(yarn, needles)
        striped, plain = schedule.yarn_of(number + 1), 0
        if number + 1 in schedule.due:
            both = join_shapings(schedule.due[number + 1], instruction.place, needles)
            if both is not None:
                work_template(replace(both, yarn=striped) if striped else both, needles)
        elif instruction.base is None:
            work_template(plain_cycle(needles)[0], needles)
        else:
            plain = schedule.plain_after(number)
            _work_base(instruction.base, plain, needles, striped)
        number += plain or 1
        _begin_waiting(number, schedule, instruction, needles)
    if len(needles.findings) == before and not needles.counting.lost:
        _tell_not_begun(schedule, instruction, needles)
    return number


def _tell_not_begun(schedule: _Schedule, instruction: Together, needles: Needles) -> None:
    """Report what the line has begin at a count or a length that its rounds never reach."""
    for _, _, count in schedule.waiting:
        wanted = count.of(needles.size)
        told = f"the rounds before it never leave {wanted} stitches, at which this shaping begins."
        needles.report(count.place, told)
    if schedule.yarns:
        needles.report(instruction.place, "the shaping ends before the length at which the yarn changes.")


def _begin_waiting(number: int, schedule: _Schedule, instruction: Together, needles: Needles) -> None:
    """Put down the shapings that begin now, since the stitches they wait for are on the needles."""
    for part, template, count in tuple(schedule.waiting):
        if count.of(needles.size) == needles.count:
            schedule.waiting.remove((part, template, count))
            _put_down(part, template, number, schedule, needles, here=number)
            _check_end(schedule, instruction, needles)


def _put_down(
    part: AtIntervals,
    template: Template,
    at: int,
    schedule: _Schedule,
    needles: Needles,
    *,
    here: int = 0,
    beside: bool = False,
) -> None:
    """Put down the rounds on which a shaping falls.

    Args:
        part: The shaping.
        template: The round that shapes.
        at: Rounds from the beginning of the line behind which the shaping begins.
        schedule: Where it is put down.
        needles: The knitting in hand.
        here: Rounds of the line worked by now.
        beside: Whether it runs beside rounds that are no shaping: it then counts from the last such shaping,
            as it does alone.
    """
    since = worked_since(part, template, needles) if beside and part.after is None else 0
    literal, template = template, take_right_side(part, template, since, needles, behind=at - here)
    as_it_falls = literal if template is not literal else None
    tell_sides_around(part, needles)
    if not any(leg.side for leg in part.legs):
        template = as_shown(template, needles)
    if part.first is not None:
        at += part.first.of(needles.size)
        schedule.due.setdefault(at, []).append(template)
    rounds = schedule.rounds if beside else None
    for leg in _filled(legs(part, template, needles), rounds, at - since, needles):
        if leg.side and not template.side:
            template = replace(template, side=leg.side)
        if leg.side not in ("", template.side):
            told = f"the shaping is written for {template.side} rows, and asked for on {leg.side} rows."
            needles.report(leg.every.place, told)
            return
        if leg.times is None or leg.length is not None:
            told = "side by side, shapings each need rows between them and a number of times."
            needles.report(leg.every.place, told, "Write every how many rows, and how often.")
            return
        odd = leg.every.of(needles.size) % 2 == 1
        worked = as_it_falls if as_it_falls is not None and odd else template
        for _ in range(leg.times.of(needles.size)):
            plain, since = leg.every.of(needles.size) - 1 - since, 0
            if needles.flat and worked.side:
                lands = needles.side if (at - here + plain) % 2 == 0 else other_side(needles.side)
                if lands != worked.side:
                    if alternates(leg, worked, part, needles):
                        return
                    plain = plain - 1 if plain else 1
            at += plain + 1
            schedule.due.setdefault(at, []).append(worked)


def _filled(every: tuple[Leg, ...], rounds: int | None, at: int, needles: Needles) -> tuple[Leg, ...]:
    """Return the intervals; one without an end goes on as often as it fits into the rounds beside it."""
    (leg, *more) = every
    if rounds is None or more or leg.times is not None or leg.until is not None or leg.upto is not None:
        return every
    times = max(0, rounds - at) // max(1, leg.every.of(needles.size))
    return (replace(leg, times=Numbers((times,), leg.every.place)),)


def _begins(part: AtIntervals, needles: Needles) -> int:
    """Return how many rounds pass before a shaping beside another begins."""
    return max(0, _rounds_to(part.after, needles)) if isinstance(part.after, UntilLength) else 0


def _rounds_to(duration: UntilLength, needles: Needles) -> int:
    """Return how many rounds are left to a length, those of this line from its beginning."""
    duration = without_held(without_heel(duration, needles), needles)
    origin = measured_from(duration, needles) if duration.measured else len(needles.drafts)
    return half_up(needles.length_in_rounds(duration.length, origin=origin, blocked=duration.blocked)[0])


def _check_end(schedule: _Schedule, instruction: Together, needles: Needles) -> None:
    """Report a shaping or a change of yarn that falls outside the rounds of the line."""
    last = max(schedule.due, default=0)
    if schedule.rounds is not None and last > schedule.rounds:
        told = f"the shaping takes {last} rounds, and {schedule.rounds} are worked beside it."
        needles.report(instruction.place, told, "Check how often it is worked, or how long the rounds go on.")
    if any(at < 1 or (schedule.rounds is not None and at > schedule.rounds) for at in schedule.yarns):
        needles.report(instruction.place, "the yarn changes at a length that these rounds do not reach.")
    if schedule.stripes and schedule.yarns:
        needles.report(instruction.place, "beside stripes, no other change of yarn is read.")


def join_shapings(templates: list[Template], place: Span, needles: Needles) -> Template | None:
    """Make one round of two shapings that fall together: one at the beginning, one at the end of the row.

    Args:
        templates: The rounds that shape, one for each.
        place: Where the line tells of both.
        needles: The knitting in hand.

    Returns:
        The round; None, and reported, if they change the same end or are otherwise unlike.
    """
    if len(templates) == 1:
        return templates[0]
    heads: list[Element] = []
    tails: list[Element] = []
    middles: list[Until] = []
    for template in templates:
        split = [at for at, element in enumerate(template.elements) if isinstance(element, Until)]
        if len(split) != 1:
            needles.report(
                template.place,
                "two shapings side by side each need one stretch that is worked plain.",
                'Write them as "k1, ssk, k to end" and "k to last 3 sts, k2tog, k1".',
            )
            return None
        middles += [element for element in template.elements if isinstance(element, Until)]
        head, tail = template.elements[: split[0]], template.elements[split[0] + 1 :]
        if (heads and head) or (tails and tail):
            needles.report(place, "both shapings change the same end of the row; they cannot share it.")
            return None
        heads += head
        tails += tail
    if len({(middle.stitch, middle.yarn) for middle in middles}) > 1:
        needles.report(place, "the two shapings are worked otherwise between their ends; they share no row.")
        return None
    try:
        short = sum(fixed_uses(element, needles.size) for element in tails)
    except MisfitError as misfit:
        needles.miss(misfit.place, misfit.message, misfit.hint)
        return None
    goal = Until(middles[0].stitch, "last", Numbers((short,), place), middles[0].yarn, place)
    return Template((*heads, goal, *tails), place, side=templates[0].side)


# --- the rounds beside which they run -----------------------------------------------------------------


def _lasts(base: WorkRounds | Striped, needles: Needles) -> int | None:
    """Return how many rounds the base lasts from here; None, reported, if none or if it does not say so."""
    duration = base.duration
    if isinstance(duration, Rounds) and not duration.total:
        return duration.number.of(needles.size)
    if isinstance(duration, UntilLength) and not (_ends_with_row(duration) and isinstance(base, Striped)):
        left = _rounds_to(duration, needles)
        if left >= 1:
            return left
        needles.report(duration.length.place, f"the piece measures {duration.length.printed} already.")
        return None
    told = "beside a shaping, rounds are read that last a number of rounds or to a length."
    needles.report(base.place, told, "Write how many rounds are worked in all.")
    return None


def _ends_with_row(duration: UntilLength) -> bool:
    """Return whether a length says with which row it ends."""
    return duration.ending is not None or bool(duration.ending_side)


def _check_fabric(base: WorkRounds | Striped, templates: list[Template], needles: Needles) -> None:
    """Report a base that the shaped rounds do not go on with, or of which nobody can tell what it is."""
    below, going_on = ground(needles), [goes_on_with(template) for template in templates]
    particular = isinstance(base, WorkRounds) and (base.first or base.edges or base.but_last)
    if base.manner not in ("k", "stockinette", "pattern") or particular:
        told = "beside a shaping, the fabric is read that goes on, knit rounds or stockinette."
        needles.report(base.place, told, 'Set the fabric up before this line, and write "in pattern" here.')
    elif base.manner == "pattern" and not needles.section.pattern and not _is_plainly_even(base):
        needles.report(base.place, "no pattern has been set up before this line.")
    elif base.manner == "pattern" and _is_figured(below, needles) and not all(going_on):
        told = "the pattern goes on beside a shaped round that is written plain."
        needles.report(base.place, told, 'Write "work in pattern" in that round if the pattern goes on.')
    elif any(going_on) and (not below or (base.manner != "pattern" and below != "plain")):
        needles.report(base.place, "the shaped round goes on in a pattern that these rounds do not have.")


def _is_figured(below: str, needles: Needles) -> bool:
    """Return whether a pattern goes on that a plain round works over, or that one has just worked over."""
    known = needles.established
    rows = needles.drafts[known.start : known.end] if known.cycle else []
    several = any(len(row.codes) > 1 for row in rows)
    return several or below not in ("plain", "garter", "")


def _check_filling(instruction: Together, base: WorkRounds | Striped, needles: Needles) -> None:
    """Report a shaping that ends with its base where that is a length, which may be made longer."""
    for leg in (leg for part in instruction.parts for leg in part.legs):
        endless = leg.times is None and leg.until is None and leg.upto is None
        if endless and not isinstance(base.duration, Rounds):
            needles.report(leg.every.place, "how often it is shaped to a length is not said.")


def _is_plainly_even(base: WorkRounds | Striped) -> bool:
    """Return whether a base says no more of its fabric than that nothing is shaped."""
    return isinstance(base, Striped) or base.bare or base.even


def _fabric_of(base: WorkRounds | Striped, needles: Needles) -> tuple[tuple[Template, ...], int] | None:
    """Return the rounds of the base, and which is next; None, reported, if nobody can tell."""
    if base.manner == "pattern":
        going = even(needles, base.place, straight=_is_plainly_even(base))
        return None if going is None else (as_it_looks(going[0], needles, base.place), going[1])
    cycle = cycle_of(WorkRounds(base.manner, base.duration, base.place), needles)
    return None if cycle is None else (cycle, 0)


def _work_base(base: WorkRounds | Striped, rounds: int, needles: Needles, striped: str = "") -> None:
    """Work rounds of the base between two shapings, or one in the yarn of its stripe."""
    fabric = _fabric_of(base, needles)
    if fabric is None:
        return
    (cycle, first), begin = fabric, len(needles.drafts)
    if striped:
        work_template(replace(cycle[first % len(cycle)], yarn=striped), needles)
        return
    repeat(cycle, rounds, needles, base.place, start=first)
    if base.manner != "pattern":
        establish(cycle, needles, start=begin)


def _finish(
    base: WorkRounds | Striped, number: int, schedule: _Schedule, needles: Needles, begin: int
) -> None:
    """Work what is left of the base behind the last shaping."""
    left, duration = (schedule.rounds or 0) - number, base.duration
    if left < 1:
        if isinstance(duration, UntilLength) and _ends_with_row(duration):
            told = "the shaping ends where the length does: which row is last is unclear."
            needles.report(base.place, told)
        return
    if schedule.stripes:
        for at in range(number + 1, number + left + 1):
            _work_base(base, 1, needles, schedule.yarn_of(at))
        return
    if not isinstance(duration, UntilLength):
        _work_base(base, left, needles)
        return
    fabric = _fabric_of(base, needles)
    if fabric is None:
        return
    (cycle, first), here = fabric, len(needles.drafts)
    last_for(cycle, duration, needles, base.place, start=begin, first=first - (here - begin))
    if base.manner != "pattern":
        establish(cycle, needles, start=here)
