"""Rules for the cues that check something: counts and lengths; and which yarn is meant."""

from __future__ import annotations

from dataclasses import replace
from itertools import chain

from stepper.craft.gauge import SPAN_MM
from stepper.plan.model import Plan
from stepper.plan.under_way.lengthen import in_rows, rounds_to_reach
from stepper.session.counting.count_timing import why_count
from stepper.session.counting.tally import count_at, is_counted_at
from stepper.session.cues import Count, Length, OffBy
from stepper.session.decision import Decision, Refusal
from stepper.session.events import Counted, Measured
from stepper.session.state import Position, State

FARTHEST_OFF = 20.0
"""By what factor a length may differ from the file's gauge before it is taken for a slip of the tongue."""


def count(plan: Plan, state: State, cue: Count) -> Decision:
    """Compare a count with those expected here and at the end of the round."""
    place = state.place
    if not is_counted_at(plan, place):
        return Refusal(sentence=_uncounted(plan, place))
    expected, end = count_at(plan, place), expected_at_end(plan, place)
    if not place.stitch and place.index and why_count(plan, state, place.index - 1) is not None:
        # She was asked for it here, so the count after the next round is not a right answer.
        end = expected
    within = place.stitch and place.index < len(plan.rounds) and plan.rounds[place.index].words
    if within and cue.stitches != end:
        return Refusal(sentence=f"Within its own words nobody can tell; {end} when all of it is done.")
    if cue.stitches < 0 or cue.stitches > 2 * max(expected, end):
        return Refusal(sentence=f"{cue.stitches} cannot be; {expected} are expected.")
    if not expected and cue.stitches != end:
        return Refusal(sentence=f"Nothing is on the needles yet; this round makes {end}.")
    return (
        Counted(
            at=cue.at,
            place=place,
            stitches=cue.stitches,
            expected=expected,
            expected_end=end,
        ),
    )


def _uncounted(plan: Plan, place: Position) -> str:
    """Say that no count can be wrong among rows of which only the last was counted, and which can."""
    last = next((each for each in plan.rounds[place.index :] if not each.is_uncounted), None)
    then = f" {last.after} are expected after the last of them." if last is not None else ""
    return f"Among these rows nobody knows the count.{then}"


def expected_at_end(plan: Plan, place: Position) -> int:
    """Count the stitches there should be when the current round is done."""
    if place.index < len(plan.rounds):
        return plan.rounds[place.index].after
    return count_at(plan, place)


def measure(plan: Plan, state: State, cue: Length) -> Decision:
    """Record a length; in a stretch worked to a length, work out the rounds it takes."""
    if cue.length_mm <= 0:
        return Refusal(sentence="A length is more than nothing.")
    place = state.place
    section = plan.rounds[min(place.index, len(plan.rounds) - 1)].section if plan.rounds else ""
    kept = Measured(at=cue.at, place=place, length_mm=cue.length_mm, section=section)
    number = stretch_to_measure(plan, place)
    if number is None:
        return (kept,)
    stretch = plan.stretches[number]
    worked = place.index - stretch.origin
    gauge = worked * SPAN_MM / cue.length_mm
    if not stretch.rounds_per_10cm / FARTHEST_OFF <= gauge <= stretch.rounds_per_10cm * FARTHEST_OFF:
        many = "1 round" if f"{gauge:.3g}" == "1" else f"{gauge:.3g} rounds"
        return Refusal(
            sentence=f"That would be {many} to 10 cm instead of {stretch.rounds_per_10cm:.3g}. Measure again."
        )
    begun = place.index - stretch.first + (1 if place.stitch else 0)
    correction = rounds_to_reach(
        stretch, measured_mm=cue.length_mm, worked=worked, at_least=begun, flat=in_rows(plan, stretch)
    )
    return (
        replace(
            kept,
            section=plan.rounds[stretch.first].section if stretch.first < len(plan.rounds) else section,
            rounds_worked=worked,
            rounds_before=stretch.last - stretch.first + 1,
            rounds_left=stretch.first + correction.rounds - place.index,
            target_mm=stretch.target_mm,
            planned_per_10cm=stretch.rounds_per_10cm,
            correction=replace(correction, stretch=number),
        ),
    )


def stretch_to_measure(plan: Plan, place: Position) -> int | None:
    """Return the index in `plan.stretches` of the stretch that a measurement taken here belongs to.

    A stretch that has just ended still counts: a piece that turns out short is continued.
    """
    begun = [(number, each) for number, each in enumerate(plan.stretches) if place.index > each.origin]
    inside = (number for number, each in begun if each.first <= place.index <= each.last)
    ended = (number for number, each in begun if place.index == each.last + 1 and not place.stitch)
    return next(chain(inside, ended), None)


def off_by(plan: Plan, state: State, cue: OffBy) -> Decision:
    """Take a number of stitches too many or too few as a count that is off by as many."""
    if cue.stitches < 1:
        return Refusal(sentence="Say how many.")
    now = count_at(plan, state.place)
    if cue.sign < 0 and cue.stitches > now:
        return Refusal(sentence=f"There are only {now}.")
    return count(plan, state, Count(at=cue.at, stitches=now + cue.sign * cue.stitches))


def yarn_called(plan: Plan, name: str) -> str | None:
    """Find a yarn by its key or its name, in any case."""
    wanted = name.casefold()
    for key, called in plan.yarns.items():
        if wanted in (key.casefold(), called.casefold()):
            return key
    return None
