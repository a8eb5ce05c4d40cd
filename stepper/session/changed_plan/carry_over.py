"""Carry over to another plan what was said about one: corrections, mends, respacings, lifelines. Pure.

The rounds are matched on both plans as measured, before any mend or respacing is applied: these change what
is knitted in a round, not where it is.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from stepper.plan.model import Plan
from stepper.plan.under_way.absorb import Mend
from stepper.plan.under_way.carry import carry_corrections
from stepper.plan.under_way.lengthen import correct_lengths
from stepper.plan.under_way.respace import Respacing, apply_respacings, spread_of
from stepper.plan.under_way.resuming import follow, resume
from stepper.session.state import Adapted, Knitting, Position


def adapt(old: Plan, new: Plan, knitting: Knitting) -> Adapted:
    """Return what was said about one plan as it applies to another.

    Args:
        old: The plan knitted so far, as compiled.
        new: The plan to go on with, as compiled.
        knitting: What was said. Whatever belongs to a removed round is dropped.
    """
    corrections = carry_corrections(old, new, knitting.corrections)
    before, after = correct_lengths(old, knitting.corrections), correct_lengths(new, corrections)
    return Adapted(
        corrections=corrections,
        mends=tuple(_mends(before, after, knitting.mends)),
        respacings=_with_round_in_hand(
            before, after, knitting, tuple(_respacings(before, after, knitting.respacings))
        ),
        lifelines=tuple(_lifelines(before, after, knitting.lifelines)),
    )


def _mends(old: Plan, new: Plan, mends: tuple[Mend, ...]) -> Iterator[Mend]:
    for mend in mends:
        index = follow(old, new, mend.index)
        if index is not None:
            origin = resume(old, new, index=max(0, mend.origin), stitch=0).index
            yield replace(mend, index=index, origin=min(origin, index))


def _respacings(old: Plan, new: Plan, respacings: tuple[Respacing, ...]) -> Iterator[Respacing]:
    for each in respacings:
        alike = [
            round_.index
            for round_ in old.rounds
            if (round_.section, round_.before, round_.after) == (each.section, each.before, each.after)
        ]
        nearest = min(alike, key=lambda index: abs(index - each.index), default=None)
        index = follow(old, new, nearest) if nearest is not None else None
        if index is not None:
            yield replace(each, index=index, section=new.rounds[index].section)


def _with_round_in_hand(
    old: Plan, new: Plan, knitting: Knitting, carried: tuple[Respacing, ...]
) -> tuple[Respacing, ...]:
    """Let a half-worked even round go on as it was begun, if the other plan spaces it differently."""
    place = knitting.place
    if not place.stitch or not old.rounds[place.index].evenly:
        return carried
    index = follow(old, new, place.index)
    if index is None or index >= len(new.rounds) or any(each.index == index for each in carried):
        return carried
    here, there = apply_respacings(old, knitting.respacings).rounds[place.index], new.rounds[index]
    if not there.evenly or (here.before, here.after) != (there.before, there.after):
        return carried
    if here.shaping == there.shaping or spread_of(here) is None or spread_of(here) != spread_of(there):
        return carried
    return (*carried, Respacing.of(there, here.shaping))


def _lifelines(old: Plan, new: Plan, lifelines: tuple[Position, ...]) -> Iterator[Position]:
    for each in lifelines:
        found = resume(old, new, index=each.index, stitch=0)
        if not found.choices:
            yield Position(index=found.index)
