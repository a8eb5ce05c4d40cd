"""Reading along: a round read out run by run at her own pace, without a cue for each. Pure.

The session has no clock. The part that performs the effects is asked to send a `Beat` after a number of
seconds; a beat overtaken by something else is out of date and changes nothing. None is asked for while a
count is made, read back or found off: her hands are not knitting then. Her pace comes from the steps so
far, and "slower" and "faster" correct it. The last run of the round never finishes by itself: there she is
told how many stitches there should be, and the round is done when she says so.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from stepper.plan.kinds import kind_of
from stepper.plan.model import Plan, Round, Run, flatten
from stepper.plan.stitches.run_repeats import join_runs
from stepper.session import moves
from stepper.session.clock_cues import Beat
from stepper.session.counting.count_timing import stitches_per_minute
from stepper.session.cues import Cue, Faster, GoOn, Next, PauseReading, ReadAlong, Slower
from stepper.session.decision import Decision, Refusal
from stepper.session.effects import BeatIn, Effect, Lead, ReadingChange, TellReading, TellStep
from stepper.session.events import Advanced, ReadingSet
from stepper.session.state import Position, ReadingAlong, State
from stepper.session.steps import StepPart, lay_out, part_at, rest_of

SLOWER_BY = 1.25
"""Factor by which "slower" lengthens the time for a stitch and "faster" shortens it. Source: chosen here; two
of either make a noticeable difference, three nearly double it."""
SHORTEST_S = 1.2
"""Shortest time for a run, which takes about a second to say. Unit: s."""
LONGEST_FACTOR, SHORTEST_FACTOR = 4.0, 0.25
_NOTHING = Refusal(sentence="Nothing is being read along. Say: read along.")
_NOTHING_TO_STOP = Refusal(
    sentence="Nothing is being read along. To end the evening, say: that is all for tonight."
)


def cut_into_runs(round_: Round) -> tuple[StepPart, ...]:
    """Cut a round into its runs: neighbours of one stitch in one yarn, markers with what precedes them.

    Returns:
        At least one. Always: they follow on from 0 to `round_.progress` without a gap.
    """
    return lay_out(_runs(round_))


def _runs(round_: Round) -> Iterator[StepPart]:
    """Yield runs with identical neighbours joined; the first of a repetition says which one it is."""
    for item in round_.phrase:
        if isinstance(item, Run):
            yield StepPart(items=(item,))
            continue
        for number in range(1, item.times + 1):
            repeat: tuple[int, int] | None = (number, item.times) if item.times > 1 else None
            for run in join_runs(flatten(item.items)):
                yield StepPart(items=(run,), repeat=repeat)
                repeat = None


def run_at(round_: Round, stitches: int) -> StepPart:
    """Return the run that a place is in, or what is left of it."""
    return rest_of(part_at(cut_into_runs(round_), stitches), stitches)


# Rules


def begin_reading(plan: Plan, state: State, cue: ReadAlong) -> Decision:
    """Begin reading the current round along, from the place in it."""
    if state.reading is not None and not state.reading.held:
        return Refusal(sentence="I am reading along.")
    if len(cut_into_runs(plan.rounds[state.place.index])) < 2:
        return Refusal(sentence="This round is one run from end to end; there is nothing to read along.")
    factor = state.reading.factor if state.reading is not None else 1.0
    return (ReadingSet(at=cue.at, reading=ReadingAlong(index=state.place.index, factor=factor)),)


def correct_pace(plan: Plan, state: State, cue: Slower | Faster) -> Decision:
    """Read slower or faster from the next run on."""
    if state.reading is None:
        return _NOTHING
    by = SLOWER_BY if isinstance(cue, Slower) else 1 / SLOWER_BY
    factor = min(max(state.reading.factor * by, SHORTEST_FACTOR), LONGEST_FACTOR)
    return (ReadingSet(at=cue.at, reading=replace(state.reading, factor=factor)),)


def pause_reading(plan: Plan, state: State, cue: PauseReading) -> Decision:
    """Pause at the current run."""
    if state.reading is None:
        return _NOTHING_TO_STOP
    if state.reading.held:
        return Refusal(sentence="I am waiting. Say: go on.")
    return (ReadingSet(at=cue.at, reading=replace(state.reading, held=True)),)


def go_on_reading(plan: Plan, state: State, cue: GoOn) -> Decision:
    """Go on after a pause; otherwise the same as the next step."""
    if state.reading is not None and state.reading.held:
        return (ReadingSet(at=cue.at, reading=replace(state.reading, held=False)),)
    return finish_run(plan, state, Next(at=cue.at))


def finish_run(plan: Plan, state: State, cue: Next) -> Decision:
    """Finish the current run if reading along and it is not the last; otherwise finish the step."""
    if state.reading is not None:
        moved = _next_run(plan, state, cue)
        if moved is not None:
            return (moved,)
    return moves.advance(plan, state, cue)


def work_beat(plan: Plan, state: State, cue: Beat) -> Decision:
    """Assume that the current run is worked; at the last one the reading ends."""
    reading = state.reading
    if reading is None or state.seq != cue.seq:  # waiting, asleep and closed have later numbers
        return ()
    moved = _next_run(plan, state, cue)
    return (moved,) if moved is not None else (ReadingSet(at=cue.at, reading=None),)


def _next_run(plan: Plan, state: State, cue: Cue) -> Advanced | None:
    """Return the move to the next run of the round; None at the last one."""
    origin, round_ = state.place, plan.rounds[state.place.index]
    part = run_at(round_, origin.stitch)
    if part.end >= round_.progress:
        return None
    place = Position(index=origin.index, stitch=part.end)
    worked = part.end - origin.stitch
    return Advanced(at=cue.at, origin=origin, place=place, stitches=worked, work=kind_of(round_))


# What is told


def tell_run(plan: Plan, state: State) -> Effect:
    """Tell the current run and nothing else."""
    part = run_at(plan.rounds[state.place.index], state.place.stitch)
    return TellStep(index=state.place.index, part=part, lead=Lead.RUN)


def tell_setting(plan: Plan, before: State, event: ReadingSet, after: State) -> Iterator[Effect]:
    """Tell the current run if reading begins or goes on, the count if it ends, otherwise what changed."""
    if event.reading is None:
        here = plan.rounds[after.place.index]
        yield TellReading(change=ReadingChange.END, index=here.index, count=here.after)
        return
    old = before.reading
    if event.reading.held:
        yield TellReading(change=ReadingChange.HELD, index=event.reading.index)
    elif old is None or old.held:
        yield tell_run(plan, after)
    else:
        change = ReadingChange.LIMIT
        if event.reading.factor != old.factor:
            slower = event.reading.factor > old.factor
            change = ReadingChange.SLOWER if slower else ReadingChange.FASTER
        yield TellReading(change=change, index=event.reading.index)


def next_beat(plan: Plan, state: State) -> tuple[Effect, ...]:
    """Ask for the beat that ends the current run; no effect unless reading along while nothing is asked."""
    reading, knitting = state.reading, state.knitting
    if reading is None or reading.held:  # which ends with its round
        return ()
    if knitting.fault is not None or knitting.doubt is not None or knitting.tens is not None:
        return ()
    part = run_at(plan.rounds[state.place.index], state.place.stitch)
    each_s = 60 / stitches_per_minute(state) * reading.factor
    seconds = max(SHORTEST_S, (part.end - part.start) * each_s)
    return (BeatIn(seconds=seconds, seq=state.seq),)
