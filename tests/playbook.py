"""Play a script of cues against a session and compare everything that is told, line by line.

A script reads as the sitting does: `> next step` is what the knitter says, the lines after it are what she is
told.
"""

from __future__ import annotations

from difflib import ndiff
from textwrap import dedent

import pytest

from stepper.language.effect_words import tell_effect
from stepper.language.understanding.understand import NotUnderstood, understand
from stepper.plan.model import Plan
from stepper.session.machine import Considered, Session

AT = "2025-03-03T20:15:00+01:00"
"""The moment every test happens at, unless it says otherwise."""

CONTINUED = "\n    "
"""Where a line that is too long goes on."""


def transcript(session: Session, script: str) -> str:
    """Return the cues of a script with what is really told after each."""
    lines: list[str] = []
    for line in dedent(script).strip().splitlines():
        if not line.startswith("> "):
            continue
        lines.append(line)
        counting = session.state.knitting.tens is not None
        cue = understand(line[2:], session.plan, at=AT, counting=counting, figures=True)
        if isinstance(cue, NotUnderstood):
            lines.append(cue.sentence)
        else:
            lines += tell(session, session.consider(cue))
    return "\n".join(lines)


def tell(session: Session, considered: Considered) -> list[str]:
    """Adopt what was considered and give its lines."""
    session.adopt(considered)
    return [line for effect in considered.effects if (line := tell_effect(effect, session.plan))]


def check(plan: Plan | Session, script: str) -> None:
    """Compare a whole script with what is told; a difference shows as a diff of the exchange."""
    session = plan if isinstance(plan, Session) else opened(plan)
    expected = dedent(script).strip().replace(CONTINUED, " ").splitlines()
    told_really = transcript(session, script).splitlines()

    if told_really != expected:
        pytest.fail("\n".join(ndiff(expected, told_really)))


def opened(plan: Plan) -> Session:
    """Return a session in its first sitting."""
    session = Session(plan)
    tell(session, session.consider_opening(AT, "first"))
    return session


def after(session: Session, *said: str) -> Session:
    """Say things to a session and give it back."""
    transcript(session, "\n".join(f"> {each}" for each in said))
    return session
