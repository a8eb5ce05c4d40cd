"""Rules for the cues about the session itself: undo, redo, listening, closing, and those that only ask."""

from __future__ import annotations

from stepper.plan.model import Plan
from stepper.session.cues import Cue, Enough, Listen, Redo, Undo, Wait
from stepper.session.decision import Decision, Refusal
from stepper.session.events import Closed, FellAsleep, Undone, WokeUp
from stepper.session.state import State


def undo(plan: Plan, state: State, cue: Undo) -> Decision:
    """Take the last thing back."""
    if not state.undo:
        return Refusal(sentence="There is nothing to take back.")
    return (Undone(at=cue.at, seq=state.undo[-1].seq),)


def redo(plan: Plan, state: State, cue: Redo) -> Decision:
    """Do again what was taken back last, by taking that undo back."""
    if not state.redo:
        return Refusal(sentence="There is nothing to do again.")
    return (Undone(at=cue.at, seq=state.redo[-1].seq),)


def fall_asleep(plan: Plan, state: State, cue: Wait) -> Decision:
    """Close the ears; keys, pedals and typed cues go on working."""
    if state.asleep:
        return Refusal(sentence="I am not listening. Say: start listening.")
    return (FellAsleep(at=cue.at),)


def wake_up(plan: Plan, state: State, cue: Listen) -> Decision:
    """Open the ears."""
    if not state.asleep:
        return Refusal(sentence="I am listening.")
    return (WokeUp(at=cue.at),)


def close(plan: Plan, state: State, cue: Enough) -> Decision:
    """End the sitting."""
    return (Closed(at=cue.at, place=state.place),)


def ask(plan: Plan, state: State, cue: Cue) -> Decision:
    """Change nothing; there is only an answer."""
    return ()


def switch_view(plan: Plan, state: State, cue: Cue) -> Decision:
    """Change nothing; only the screen or the ears are switched."""
    return ()


def refuse_done(plan: Plan, state: State, cue: Cue) -> Decision:
    """Refuse what needs a round to work when none is left."""
    return Refusal(sentence="The garment is finished; no round is left.")


def refuse(plan: Plan, state: State, cue: Cue) -> Decision:
    """Refuse everything after the end of the sitting."""
    return Refusal(sentence="This sitting is over.")
