"""Rules while the session asks where to go on in a changed pattern. Nothing moves before the answer."""

from __future__ import annotations

from stepper.plan.model import Plan
from stepper.plan.under_way.respace import Respacing
from stepper.plan.under_way.resuming import PlaceChoice
from stepper.session.cues import Choose, Count, Cue
from stepper.session.decision import Decision, Refusal
from stepper.session.events import PlanChanged
from stepper.session.state import Position, State


def answer(plan: Plan, state: State, cue: Choose) -> Decision:
    """Go on at the chosen place."""
    question = state.question
    if question is None:
        return Refusal(sentence="Nothing is asked.")
    if not 1 <= cue.number <= len(question.choices):
        return Refusal(sentence=first_say(state))
    choice, adapted = question.choices[cue.number - 1], question.adapted
    anew = _spread_anew(choice)
    return (
        PlanChanged(
            at=cue.at,
            old_fingerprint=state.fingerprint,
            new_fingerprint=question.new_fingerprint,
            origin=state.place,
            place=Position(index=choice.index, stitch=choice.stitch),
            corrections=adapted.corrections,
            changes=(),
            have=choice.have,
            want=choice.want,
            mends=adapted.mends,
            respacings=(*adapted.respacings, *anew),
            lifelines=adapted.lifelines,
            answer=cue.number,
        ),
    )


def _spread_anew(choice: PlaceChoice) -> tuple[Respacing, ...]:
    """Return the spacing of the round in hand if the rest of its changes is respaced."""
    if not choice.places:
        return ()
    return (
        Respacing(
            index=choice.index,
            section=choice.section,
            before=choice.before,
            after=choice.after,
            places=choice.places,
        ),
    )


def take_number(plan: Plan, state: State, cue: Count) -> Decision:
    """Take a number that stands alone as that of a place; a count has to wait."""
    if not cue.bare:
        return not_yet(plan, state, cue)
    return answer(plan, state, Choose(at=cue.at, heard=cue.heard, number=cue.stitches))


def not_yet(plan: Plan, state: State, cue: Cue) -> Decision:
    """Refuse what has to wait for the answer."""
    return Refusal(sentence=first_say(state))


def first_say(state: State) -> str:
    """Return a sentence that says what must be answered first."""
    many = len(state.question.choices) if state.question is not None else 0
    numbers = "take number 1" if many == 1 else f"take number 1 to {many}"
    return f"First say where you go on: {numbers}."
