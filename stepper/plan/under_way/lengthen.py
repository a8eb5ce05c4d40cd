"""Change the number of rounds of a stretch worked to a length, once the work itself has been measured.

Pure: a plan in, a plan out. Corrections are always applied to the plan as compiled, never to one already
corrected, so the same list of corrections gives the same plan whenever a session is replayed, and a stretch
that was cut short can be continued.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from dataclasses import replace
from math import lcm

from stepper.craft.gauge import SPAN_MM, correct_gauge, half_up
from stepper.plan.model import Plan, Round, Stretch
from stepper.records import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class LengthCorrection:
    """What measuring said about one stretch."""

    stretch: int
    """Place of the stretch in `Plan.stretches`, from 0."""
    rounds: int
    """Rounds the stretch has now. Range: 0 and up."""
    rounds_per_10cm: float
    """The gauge as actually knitted. Unit: rounds per 10 cm."""


def correct_lengths(plan: Plan, corrections: Iterable[LengthCorrection]) -> Plan:
    """Apply every correction to a plan as compiled; one that names no stretch of it is ignored."""
    for correction in sorted(corrections, key=lambda each: each.stretch):
        if correction.stretch < len(plan.stretches):
            plan = with_rounds(plan, correction.stretch, correction.rounds)
    return plan


def with_rounds(plan: Plan, stretch: int, rounds: int) -> Plan:
    """Make a stretch longer or shorter.

    Added rounds go on with the pattern the stretch repeats. Rounds are renumbered, later stretches move, and
    a count asked for at the end of the stretch stays at its end.

    Args:
        plan: The plan to change.
        stretch: Place of the stretch in `Plan.stretches`, from 0.
        rounds: How many rounds it should have. Range: 0 and up.

    Raises:
        ValueError: `rounds` is below 0, or the stretch has no round to repeat.
        IndexError: The plan has no such stretch.
    """
    if rounds < 0:
        raise ValueError(f"rounds must be 0 or more (got {rounds}).")
    old = plan.stretches[stretch]
    worked = plan.rounds[old.first : old.last + 1]
    if not worked and rounds:
        raise ValueError("a stretch without a round has nothing to repeat.")
    longer_by = rounds - len(worked)
    if not longer_by:
        return plan
    before, after = plan.rounds[: old.first], plan.rounds[old.last + 1 :]
    kept = _resized(worked, rounds, old.cycle)
    if not kept and before:
        before = (*before[:-1], _with_checkpoint_of(before[-1], worked[-1]))
    stretches = tuple(_moved(each, past=old.last, by=longer_by, ended=each is old) for each in plan.stretches)
    return replace(plan, rounds=renumber_rounds((*before, *kept, *after)), stretches=stretches)


def in_rows(plan: Plan, stretch: Stretch) -> bool:
    """Return whether a stretch is worked in rows; one cut down to nothing, whether the round before it is."""
    return plan.rounds[min(stretch.first, stretch.last)].flat


def rounds_to_reach(
    stretch: Stretch, *, measured_mm: float, worked: int, at_least: int, flat: bool
) -> LengthCorrection:
    """Work out how many rounds a stretch needs now that the piece has been measured.

    Args:
        stretch: The stretch as it stands.
        measured_mm: Length of the piece from the stretch's origin. Range: above 0. Unit: mm.
        worked: Finished rounds in that length. Range: 1 and up.
        at_least: Rounds of the stretch that are begun and cannot be taken back. Range: 0 and up.
        flat: Whether it is worked in rows (`in_rows`).

    Returns:
        The correction, its `stretch` still 0. A piece already long enough ends with the current round, in
        rows with the first that ends on the side it should; otherwise as `rounds_at_gauge` says.

    Raises:
        ValueError: An argument is out of range.

    Source: `stepper.craft.gauge.correct_gauge`; to change by whole repeats is common practice.
    """
    gauge = correct_gauge(worked=worked, measured_mm=measured_mm)
    if measured_mm >= stretch.target_mm:
        rounds = at_least + (stretch.last - stretch.first + 1 - at_least) % 2 * flat
    else:
        rounds = rounds_at_gauge(stretch, gauge, at_least=at_least, flat=flat)
    return LengthCorrection(stretch=0, rounds=rounds, rounds_per_10cm=gauge)


def rounds_at_gauge(stretch: Stretch, rounds_per_10cm: float, *, at_least: int = 0, flat: bool) -> int:
    """Work out how many rounds a stretch has at a gauge.

    Args:
        stretch: The stretch. What follows it is worked out for the round of its pattern, and in rows for the
            side, that it was planned to end with.
        rounds_per_10cm: Range: above 0. Unit: rounds per 10 cm.
        at_least: Rounds of it that are begun and cannot be taken back. Range: 0 and up.
        flat: Whether it is worked in rows (`in_rows`).

    Returns:
        The nearest number of rounds that differs from the stretch's by whole repeats of its pattern, in rows
        by an even number too; a half counts up.

    Source: count per length, common practice; a right-side row follows a wrong-side row.
    """
    exact = stretch.target_mm * rounds_per_10cm / SPAN_MM - (stretch.first - stretch.origin)
    planned = stretch.last - stretch.first + 1
    every = lcm(stretch.cycle, 2 if flat else 1)
    over = planned % every
    rounds = half_up((max(exact, at_least) - over) / every) * every + over
    return rounds if rounds >= at_least else rounds + every


def renumber_rounds(rounds: tuple[Round, ...]) -> tuple[Round, ...]:
    """Renumber rounds, over the garment and within each section."""
    totals, seen = Counter(round_.section for round_ in rounds), Counter[str]()
    numbered = []
    for index, round_ in enumerate(rounds):
        seen[round_.section] += 1
        number, of = seen[round_.section], totals[round_.section] if round_.of else 0
        if (round_.index, round_.number, round_.of) != (index, number, of):
            round_ = replace(round_, index=index, number=number, of=of)
        numbered.append(round_)
    return tuple(numbered)


def _resized(worked: tuple[Round, ...], rounds: int, cycle: int) -> tuple[Round, ...]:
    """Cut or continue the rounds of a stretch."""
    if not rounds:
        return ()
    sides = 2 if worked[0].flat and cycle % 2 else 1  # in rows, a row is repeated on its own side
    step = min(cycle * sides, len(worked))
    plain = (*worked[:-1], replace(worked[-1], checkpoint=None))
    kept = [plain[at] if at < len(plain) else _again(plain, at, step) for at in range(rounds)]
    kept[-1] = _with_checkpoint_of(kept[-1], worked[-1])
    return tuple(kept)


def _again(worked: tuple[Round, ...], at: int, step: int) -> Round:
    """Return the round that the pattern has at an offset past the end, copied from the latest like it.

    What is said once, at the beginning of the line (its label, a needle change), is not repeated.
    """
    source = at - step * ((at - len(worked)) // step + 1)
    return replace(worked[source], label=None, remarks=(), checkpoint=None)


def _with_checkpoint_of(round_: Round, last: Round) -> Round:
    """Move the count that is asked for at the end of a stretch to the round it now ends with."""
    if last.checkpoint is None or round_.after != last.after:
        return round_
    return replace(round_, checkpoint=last.checkpoint)


def _moved(stretch: Stretch, *, past: int, by: int, ended: bool) -> Stretch:
    """Shift what comes after the changed stretch."""
    if ended:
        return replace(stretch, last=stretch.last + by)
    return replace(
        stretch,
        first=stretch.first + (by if stretch.first > past else 0),
        last=stretch.last + (by if stretch.last > past else 0),
        origin=stretch.origin + (by if stretch.origin > past else 0),
    )
