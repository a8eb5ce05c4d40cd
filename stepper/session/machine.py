"""The session: it considers a cue without changing, and adopts the outcome once that is safely kept.

No I/O. The caller (`stepper.sitting.conductor`) commits the events between `consider` and `adopt` and
performs the effects afterwards: consider → commit → adopt → perform. A crash at any point loses nothing that
was told and tells nothing that is lost.
"""

from __future__ import annotations

from dataclasses import replace

from stepper.plan.model import Plan
from stepper.plan.under_way.absorb import apply_mends
from stepper.plan.under_way.carry import Carried, carry
from stepper.plan.under_way.lengthen import correct_lengths
from stepper.plan.under_way.respace import apply_respacings
from stepper.records import dataclass
from stepper.session.changed_plan.carry_over import adapt
from stepper.session.cues import Choose, Cue
from stepper.session.decide import decide
from stepper.session.decision import Refusal
from stepper.session.effects import Effect, Refuse, TellStep
from stepper.session.events import Event, Opened, PlaceAsked, PlanChanged
from stepper.session.evolve import evolve_all
from stepper.session.open_row.settled import behind_open_row
from stepper.session.respond import respond
from stepper.session.state import Adapted, Knitting, Question, State


@dataclass(frozen=True, slots=True, kw_only=True)
class Considered:
    """The outcome of a cue, not yet adopted."""

    events: tuple[Event, ...]
    """To be kept before anything else; empty if nothing changes."""
    effects: tuple[Effect, ...]
    """To be performed after that."""
    state: State
    """The state that follows."""
    base: Plan
    """The plan as compiled that the state belongs to."""
    plan: Plan
    """The same as it is knitted, with lengths corrected and shaping respaced."""
    awaiting: Plan | None = None
    """The plan as compiled to go on with once the place is chosen; None if no place is being asked for."""


def as_knitted(plan: Plan, said: Knitting | Adapted) -> Plan:
    """Return the plan as it is knitted: lengths corrected, wrong counts carried along, shaping respaced.

    Args:
        plan: As compiled.
        said: What was said about it: where the session stands, or what of that holds for another plan.
    """
    plan = apply_mends(correct_lengths(plan, said.corrections), said.mends)
    return apply_respacings(plan, said.respacings) if said.respacings else plan


class Session:
    """A knitting session: a plan and where it stands."""

    def __init__(self, plan: Plan, state: State | None = None) -> None:
        """Take up a plan at a state, or at the beginning if there is none.

        Args:
            plan: As compiled from the project file.
            state: As replayed from the journal.
        """
        self._state = state if state is not None else State()
        self._base = plan
        self._plan = as_knitted(plan, self._state.knitting)
        self._awaiting: Plan | None = None

    @property
    def state(self) -> State:
        """Where the session stands."""
        return self._state

    @property
    def plan(self) -> Plan:
        """The plan as it is knitted, with lengths corrected and shaping respaced."""
        return self._plan

    @property
    def base(self) -> Plan:
        """The plan as compiled."""
        return self._base

    def consider(self, cue: Cue) -> Considered:
        """Work out what comes of a cue. Changes nothing."""
        if self._state.question is not None and self._awaiting is None and isinstance(cue, Choose):
            # A state taken up without its project file: the question is asked again with the file.
            return self._refused("Open the project file again; it is asked anew.")
        decision = decide(self._plan, self._state, cue)
        if isinstance(decision, Refusal):
            return self._refused(decision.sentence, aloud=decision.aloud)
        return self._considered(decision, cue)

    def consider_opening(self, at: str, fingerprint: str) -> Considered:
        """Work out the beginning of a sitting: the recap and what comes first.

        Args:
            at: Now. ISO 8601 with the offset from UTC.
            fingerprint: That of the plan.
        """
        return self._considered((Opened(at=at, fingerprint=fingerprint),), None)

    def consider_plan(
        self, plan: Plan, at: str, fingerprint: str, *, comparable: bool = True, settled: bool = False
    ) -> Considered:
        """Work out how to go on with another plan: the place in it, or a question about the place.

        A question also opens the sitting, on the plan knitted so far, and nothing moves before the answer.

        Args:
            plan: The new plan as compiled.
            at: Now. ISO 8601 with the offset from UTC.
            fingerprint: That of the new plan.
            comparable: Whether the plan here is the one actually knitted so far; otherwise only the place is
            kept.
            settled: Whether she has just answered what the row is at which the plan here ends.
        """
        place = self._state.place
        adapted = adapt(self._base, plan, self._state.knitting)
        new = as_knitted(plan, adapted)
        carried = carry(self._plan, new, index=place.index, stitch=place.stitch)
        if carried.choices:
            return self._asked(plan, at, fingerprint, carried, adapted)
        behind, unplaced = behind_open_row(self._plan, new, self._state, carried)
        event = PlanChanged(
            at=at,
            old_fingerprint=self._state.fingerprint,
            new_fingerprint=fingerprint,
            origin=place,
            place=behind,
            corrections=adapted.corrections,
            mends=adapted.mends,
            respacings=adapted.respacings,
            lifelines=adapted.lifelines,
            changes=carried.changes if comparable else (),
            have=carried.have,
            want=carried.want,
            found=carried.found,
            comparable=comparable,
            settled=settled,
            unplaced=unplaced,
            worked=sum(each.progress for each in new.rounds[carried.index : behind.index]),
        )
        considered = self._led_to((event,), None, evolve_all(self._state, (event,)), plan, new)
        return self._without_heard(considered) if settled else considered

    def _without_heard(self, considered: Considered) -> Considered:
        """Leave out of the next step what she has just heard with the row that she settled."""
        row = self._plan.open
        told = () if row is None else tuple(each.rstrip(".") for each in (*row.remarks, row.words))
        effects = []
        for each in considered.effects:
            if isinstance(each, TellStep):
                stop = tuple(words for words in each.stop if words.rstrip(".") not in told)
                each = replace(each, told=told, stop=stop or each.stop)
            effects.append(each)
        return replace(considered, effects=tuple(effects))

    def adopt(self, considered: Considered) -> None:
        """Take over the state that was considered, once its events are kept."""
        self._state = considered.state
        self._base = considered.base
        self._plan = considered.plan
        self._awaiting = considered.awaiting

    def _asked(self, plan: Plan, at: str, fingerprint: str, carried: Carried, adapted: Adapted) -> Considered:
        """Open the sitting with the question where to go on."""
        was = self._state.fingerprint
        question = Question(new_fingerprint=fingerprint, choices=carried.choices, adapted=adapted)
        events = (
            Opened(at=at, fingerprint=was),
            PlaceAsked(at=at, old_fingerprint=was, question=question, changes=carried.changes),
        )
        return replace(self._considered(events, None), awaiting=plan)

    def _considered(self, events: tuple[Event, ...], cue: Cue | None) -> Considered:
        """Work out what events lead to; with the answer to the question for the place, to the new plan."""
        was, after = self._state.knitting, evolve_all(self._state, events)
        now = after.knitting
        if self._awaiting is not None and after.question is None:
            return self._led_to(events, cue, after, self._awaiting, as_knitted(self._awaiting, now))
        plan = self._plan
        before = (was.corrections, was.respacings, was.mends)
        if before != (now.corrections, now.respacings, now.mends):
            plan = as_knitted(self._base, now)
        return replace(self._led_to(events, cue, after, self._base, plan), awaiting=self._awaiting)

    def _led_to(
        self, events: tuple[Event, ...], cue: Cue | None, after: State, base: Plan, plan: Plan
    ) -> Considered:
        """Return the outcome of events on a plan, as compiled and as knitted."""
        effects = respond(plan, self._state, cue, events, after)
        return Considered(events=events, effects=effects, state=after, base=base, plan=plan)

    def _refused(self, sentence: str, *, aloud: bool = True) -> Considered:
        return Considered(
            events=(),
            effects=(Refuse(sentence=sentence, aloud=aloud),),
            state=self._state,
            base=self._base,
            plan=self._plan,
            awaiting=self._awaiting,
        )
