"""Which of the lines told are worth showing as well: the step itself is on the screen already. No I/O."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from stepper.language.effect_words import tell_effect
from stepper.language.understanding.understand import NotUnderstood, understand
from stepper.session.answers import step_at
from stepper.session.effects import Lead
from stepper.session.machine import Session

_USUAL_FIRST: Final = (Lead.PART, Lead.ROUND, Lead.FULL, Lead.RUN)
# A step is told within its round more often than at the beginning of one.


def pick_answers(lines: Sequence[str], session: Session) -> tuple[str, ...]:
    """Leave out the lines that only say the current step.

    Args:
        lines: What was told, in order.
        session: The session after it.
    """
    return tuple(line for line in lines if not _says_the_step(line, session))


def _says_the_step(line: str, session: Session) -> bool:
    """Return whether a line is the current step with any lead, read out or called the same again."""
    plan, state = session.plan, session.state
    if any(line == tell_effect(step_at(plan, state, lead), plan) for lead in _USUAL_FIRST):
        return True
    return line == tell_effect(step_at(plan, state, Lead.PART, taught=True), plan)


def describe_result(lines: Sequence[str], text: str, session: Session, *, changed: bool) -> str:
    """Say what a spoken or typed cue did, or that it did nothing.

    Args:
        lines: What was told.
        text: The words.
        session: The session after them.
        changed: Whether anything was kept.
    """
    if not lines:
        return "nothing; the ears are closed" if session.state.asleep else "nothing"
    counting = session.state.knitting.tens is not None
    understood = understand(text, session.plan, counting=counting, figures=True)
    if isinstance(understood, NotUnderstood):
        return "nothing, not understood"
    return "done" if changed else "answered"
