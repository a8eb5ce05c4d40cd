"""The session: considers a cue without changing, adopts what came of it once that is safely kept.

No I/O. Whoever runs it (`stepper.conductor`) commits the events between `consider` and `adopt` and performs
the effects after: consider → commit → adopt → perform. A crash at any point loses nothing that was told and
tells nothing that is lost.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from stepper.plan.absorb import Mend, absorbed
from stepper.plan.carry import carry, carry_corrections
from stepper.plan.lengthen import corrected
from stepper.plan.model import Plan
from stepper.plan.respace import respaced
from stepper.session.cues import Cue
from stepper.session.decide import decide
from stepper.session.decision import Refusal
from stepper.session.effects import Effect, Refuse
from stepper.session.events import Event, Opened, PlanChanged
from stepper.session.evolve import evolve_all
from stepper.session.respond import respond
from stepper.session.state import Knitting, Place, State


@dataclass(frozen=True, slots=True, kw_only=True)
class Considered:
    """What would come of a cue."""

    events: tuple[Event, ...]
    """To be kept before anything else; empty where nothing changes."""
    effects: tuple[Effect, ...]
    """To be told after that."""
    state: State
    """The state that follows."""
    base: Plan
    """The plan as compiled that the state belongs to."""
    plan: Plan
    """The same as it is knitted: lengths corrected, shaping spread anew."""


def as_knitted(plan: Plan, knitting: Knitting) -> Plan:
    """Give the plan as it is knitted: lengths corrected by measuring, counts that are off carried along,
    shaping spread anew on the way.

    Args:
        plan: As compiled.
        knitting: Where the session stands.
    """
    plan = absorbed(corrected(plan, knitting.corrections), knitting.mends)
    return respaced(plan, knitting.respacings) if knitting.respacings else plan


def _carried(old: Plan, new: Plan, mends: tuple[Mend, ...]) -> tuple[Mend, ...]:
    """Move the counts that are off to the rounds of another plan; one made good in a round that is gone goes
    with it."""
    moved = []
    for mend in mends:
        good = carry(old, new, index=mend.index, stitch=0)
        origin = carry(old, new, index=max(0, mend.origin), stitch=0)
        if good.found:
            moved.append(replace(mend, index=good.index, origin=min(origin.index, good.index)))
    return tuple(moved)


class Session:
    """A knitting session: a plan and where it stands."""

    def __init__(self, plan: Plan, state: State | None = None) -> None:
        """Take up a plan at a state, from the beginning without one.

        Args:
            plan: As compiled from the project file.
            state: As replayed from the journal.
        """
        self._state = state if state is not None else State()
        self._base = plan
        self._plan = as_knitted(plan, self._state.knitting)

    @property
    def state(self) -> State:
        """Where the session stands."""
        return self._state

    @property
    def plan(self) -> Plan:
        """The plan as it is knitted: lengths corrected, shaping spread anew."""
        return self._plan

    @property
    def base(self) -> Plan:
        """The plan as compiled."""
        return self._base

    def consider(self, cue: Cue) -> Considered:
        """Work out what comes of a cue. Changes nothing."""
        decision = decide(self._plan, self._state, cue)
        if isinstance(decision, Refusal):
            refusal = Refuse(sentence=decision.sentence, aloud=decision.aloud)
            return self._unchanged((refusal,))
        return self._considered(decision, cue)

    def consider_opening(self, at: str, fingerprint: str) -> Considered:
        """Work out the beginning of a sitting: the recap and what comes first.

        Args:
            at: Now. ISO 8601 with the offset from UTC.
            fingerprint: Of the plan.
        """
        return self._considered((Opened(at=at, fingerprint=fingerprint),), None)

    def consider_plan(self, plan: Plan, at: str, fingerprint: str, *, comparable: bool = True) -> Considered:
        """Work out what it means to go on with another plan.

        Args:
            plan: The new plan as compiled.
            at: Now. ISO 8601 with the offset from UTC.
            fingerprint: Of the new plan.
            comparable: Whether the plan here is the one really knitted so far; if not, only the place is
            kept.
        """
        place, knitting = self._state.place, self._state.knitting
        corrections = carry_corrections(self._base, plan, knitting.corrections)
        mends = _carried(self._plan, corrected(plan, corrections), knitting.mends)
        new = as_knitted(plan, replace(knitting, corrections=corrections, mends=mends))
        carried = carry(self._plan, new, index=place.index, stitch=place.stitch)
        event = PlanChanged(
            at=at,
            old_fingerprint=self._state.fingerprint,
            new_fingerprint=fingerprint,
            origin=place,
            place=Place(index=carried.index, stitch=carried.stitch),
            corrections=corrections,
            mends=mends,
            changes=carried.changes if comparable else (),
            have=carried.have,
            want=carried.want,
            found=carried.found,
            comparable=comparable,
        )
        after = evolve_all(self._state, (event,))
        return Considered(
            events=(event,),
            effects=respond(new, self._state, None, (event,), after),
            state=after,
            base=plan,
            plan=new,
        )

    def adopt(self, considered: Considered) -> None:
        """Take the state that was considered, once its events are kept."""
        self._state = considered.state
        self._base = considered.base
        self._plan = considered.plan

    def _considered(self, events: tuple[Event, ...], cue: Cue | None) -> Considered:
        after = evolve_all(self._state, events)
        plan = self._plan
        was, now = self._state.knitting, after.knitting
        before = (was.corrections, was.respacings, was.mends)
        if before != (now.corrections, now.respacings, now.mends):
            plan = as_knitted(self._base, now)
        effects = respond(plan, self._state, cue, events, after)
        return Considered(events=events, effects=effects, state=after, base=self._base, plan=plan)

    def _unchanged(self, effects: tuple[Effect, ...]) -> Considered:
        return Considered(events=(), effects=effects, state=self._state, base=self._base, plan=self._plan)
