"""Respace the rest of an increase or decrease round, from where she is and what she has made. No I/O.

Pure: a plan in, a plan out, as in `stepper.plan.under_way.lengthen`. A respacing holds every place of the
round's changes, so that replaying a journal needs no lookup; one that fits no round of the plan is ignored.

The gaps still to come differ by one at most, the larger first, so that they are said in one breath. The gap
she is in and the one across the join are filled up to theirs where they are not longer already.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from itertools import pairwise

from stepper.craft.even.respacing import respread
from stepper.craft.even.spacing import decrease_positions, gaps_between, increase_positions
from stepper.craft.stitches import Kind, Stitch, stitch
from stepper.plan.model import Plan, Round
from stepper.plan.stitches.abbreviate import instruction
from stepper.plan.stitches.evenly import Change, carry_mark, round_at
from stepper.plan.stitches.run_repeats import laid_flat
from stepper.records import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Respacing:
    """Where the changes of one round are now."""

    index: int
    """The round, from 0 over the whole garment, when it was respaced."""
    section: str
    """Its section; with the two counts it identifies the round even if others were inserted before it."""
    before: int
    """Stitches it begins with. Unit: stitches."""
    after: int
    """Stitches it ends with. Unit: stitches."""
    places: tuple[int, ...]
    """Stitches of the old round worked before each change, including those already made."""

    @classmethod
    def of(cls, round_: Round, places: tuple[int, ...]) -> Respacing:
        """Return the changes of a round at other places."""
        return cls(
            index=round_.index,
            section=round_.section,
            before=round_.before,
            after=round_.after,
            places=places,
        )


@dataclass(frozen=True, slots=True, kw_only=True)
class SpacedRound:
    """A round of one kind of change in plain stitches, the only kind that can be respaced."""

    plain: str
    """Code of the stitch between the changes."""
    change: Stitch
    """The increase or decrease."""
    yarn: str
    changes: int
    """How many the round has."""


ALTERED = "spaced anew while it was knitted"
"""How a round says that its changes are elsewhere than planned."""


class NoRoomError(ValueError):
    """The target cannot be met from there; the message says why, in one short sentence."""


def spread_of(round_: Round) -> SpacedRound | None:
    """Return how a round can be respaced; None if its changes have fixed places, as in a chart."""
    kinds = {run.stitch: stitch(run.stitch) for run in round_.runs}
    changes = [each for each in kinds.values() if each.shapes]
    plain = [each for each in kinds.values() if each.kind is Kind.PLAIN]
    yarns = {run.yarn for run in round_.runs}
    if len(changes) != 1 or len(plain) > 1 or len(kinds) != 1 + len(plain) or len(yarns) != 1 or round_.chart:
        return None
    (change,) = changes
    number = sum(run.times for run in round_.runs if run.stitch == change.code)
    return SpacedRound(plain=plain[0].code if plain else "k", change=change, yarn=yarns.pop(), changes=number)


def respace(round_: Round, *, used: int, made: int) -> tuple[int, ...]:
    """Place the changes still due in the rest of a round.

    Args:
        round_: One that `spread_of` knows.
        used: Stitches of the old round she has worked. Range: 0 and up. Unit: stitches.
        made: Changes she has made. Range: 0 and up.

    Returns:
        Stitches of the old round worked before each change of the round; the first `made` are those behind
        her, where the plan has them or, if she made more than it has so far, evenly. Always: the round meets
        its target, and the gaps to come differ by one at most.

    Raises:
        NoRoomError: She has made more than the round takes, the stitches left have no room for the rest, or a
            marker would hang elsewhere.
        ValueError: The round cannot be respaced.

    Source: `stepper.craft.even.respacing.respread`.
    """
    spread = spread_of(round_)
    if spread is None:
        raise ValueError("the round has no even shaping.")
    uses, left = spread.change.uses, round_.before - used
    word = "increases" if spread.change.change > 0 else "decreases"
    if made > spread.changes:
        over = made - spread.changes
        raise NoRoomError(f"This round takes {spread.changes} {word}; {made} are too many by {over}.")
    if left < 0 or made < 0 or used < 0:
        raise NoRoomError(f"This round is worked over {round_.before} stitches.")
    done = _behind(round_, spread, used, made)
    due = spread.changes - made
    if not made and (not due or used <= round_.shaping[0]):
        ordered = _larger_first(round_.shaping)
        return round_.shaping if moves_marker(round_, ordered) else ordered
    try:
        ahead = _ahead(round_, done, used=used, due=due, uses=uses)
    except ValueError:
        room = _room(round_, done, used=used, due=due, uses=uses)
        raise NoRoomError(f"{due} {word} do not fit into the {left} stitches left; {room} would.") from None
    places = (*done, *(used + place for place in ahead))
    if moves_marker(round_, places):
        raise NoRoomError(
            f"With the {word} elsewhere, a marker would hang elsewhere than the next rounds expect it."
        )
    return places


def moves_marker(round_: Round, places: tuple[int, ...]) -> bool:
    """Return whether a marker would not hang where it does with the changes of the plan.

    The rounds that follow are worked out already, up to the marker and on from there.
    """
    spread = spread_of(round_)
    if spread is None or not round_.markers:
        return False
    marks = {mark for mark in round_.markers if 0 < mark < round_.after}
    marks = {round_.after - mark for mark in marks} if round_.side == "WS" else marks
    code, uses = spread.change.code, spread.change.uses

    def hangs(mark: int, changes: tuple[int, ...]) -> tuple[int, bool]:
        return carry_mark(mark, changes, code), any(at < mark < at + uses for at in changes)

    hung = (mark for mark in range(1, round_.before) if carry_mark(mark, round_.shaping, code) in marks)
    return any(hangs(mark, places) != hangs(mark, round_.shaping) for mark in hung)


def _behind(round_: Round, spread: SpacedRound, used: int, made: int) -> tuple[int, ...]:
    """Say where the changes made lie: as planned, or evenly where more are made than the plan has so far."""
    uses = spread.change.uses
    planned = round_.shaping[:made]
    if not planned or planned[-1] + uses <= used:
        return planned
    try:
        if uses > 1:
            return decrease_positions(used, made, uses=uses, flat=round_.flat)
        return increase_positions(used, made, flat=round_.flat)
    except ValueError:
        word = "increases" if spread.change.change > 0 else "decreases"
        raise NoRoomError(f"{made} {word} do not lie in {used} stitches.") from None


def _ahead(round_: Round, done: tuple[int, ...], *, used: int, due: int, uses: int) -> tuple[int, ...]:
    """Place the changes due, counted from where she is, larger gaps first."""
    left = round_.before - used
    if not due:
        return ()
    if done:
        since, beyond = used - done[-1] - uses, done[0]
    elif round_.flat:
        # Half a gap belongs to the beginning of the row, the other half to its end.
        since, beyond = used + round_.shaping[0], round_.shaping[0]
    else:
        # All she has worked is the gap across the join: longer than half a one, so the first comes at once.
        if left < uses:
            raise ValueError("the first change does not fit.")
        rest = respread(left - uses, due - 1, beyond=used, uses=uses) if due > 1 else ()
        return _larger_first((0, *(uses + place for place in rest)))
    return _larger_first(respread(left, due, worked_since=since, beyond=beyond, uses=uses))


def _larger_first(places: tuple[int, ...]) -> tuple[int, ...]:
    """Put the larger of the gaps between places first; the place of the first stays."""
    gaps = sorted((later - earlier for earlier, later in pairwise(places)), reverse=True)
    ordered = list(places[:1])
    for gap in gaps:
        ordered.append(ordered[-1] + gap)
    return tuple(ordered)


def _room(round_: Round, done: tuple[int, ...], *, used: int, due: int, uses: int) -> int:
    """Count the changes that would still fit: fewer than are due."""
    for fewer in range(due - 1, 0, -1):
        try:
            _ahead(round_, done, used=used, due=fewer, uses=uses)
        except ValueError:
            continue
        return fewer
    return 0


def gaps_ahead(places: tuple[int, ...], *, used: int, made: int) -> tuple[int, tuple[int, ...]]:
    """Return the stitches to the first change from where she is, and from each change to the next.

    Args:
        places: All places of the round, as from `respace`.
        used: Stitches of the old round worked.
        made: Changes made.

    Returns:
        Plain stitches before the first; then for each further one the plain stitches and those a change takes
        up, so that 11 is "every eleventh".
    """
    ahead = places[made:]
    if not ahead:
        return 0, ()
    return ahead[0] - used, tuple(later - earlier for earlier, later in pairwise(ahead))


def apply_respacings(plan: Plan, respacings: Iterable[Respacing]) -> Plan:
    """Apply every respacing to a plan; one that fits no round of it is ignored."""
    rounds = list(plan.rounds)
    for each in respacings:
        index = _found(plan, each)
        if index is not None:
            rounds[index] = _with_places(rounds[index], each.places)
    return replace(plan, rounds=tuple(rounds))


def _found(plan: Plan, respacing: Respacing) -> int | None:
    """Find the round of a respacing: at its index, or the nearest with the same section and counts."""
    fitting = [
        round_.index
        for round_ in plan.rounds
        if (round_.section, round_.before, round_.after)
        == (respacing.section, respacing.before, respacing.after)
        and _fits(round_, respacing.places)
    ]
    return min(fitting, key=lambda index: abs(index - respacing.index), default=None)


def _fits(round_: Round, places: tuple[int, ...]) -> bool:
    spread = spread_of(round_)
    if spread is None or len(places) != spread.changes:
        return False
    try:
        gaps_between(places, round_.before, flat=round_.flat, uses=spread.change.uses)
    except ValueError:
        return False
    return True


def _with_places(round_: Round, places: tuple[int, ...]) -> Round:
    """Rewrite a round with its changes in other places."""
    if places == round_.shaping:
        return round_
    spread = spread_of(round_)
    assert spread is not None
    change = Change(code=spread.change.code, yarn=spread.yarn, plain=spread.plain)
    phrase = round_at(round_.before, [place + change.inside for place in places], change).items
    return replace(
        round_,
        phrase=phrase,
        runs=laid_flat(phrase),
        shaping=places,
        instruction=instruction(phrase, evenly=True),
        altered=(*round_.altered, ALTERED),
    )
