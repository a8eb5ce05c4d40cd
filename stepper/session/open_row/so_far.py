"""Say of what was asked how far it is known, while the pattern is not read to its end. Pure."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final

from stepper.plan.model import Plan
from stepper.session.answers import TellDue, TellFar, TellSpacing, TellTimeLeft
from stepper.session.effects import Effect, TellLasting
from stepper.session.open_row.telling import TellSoFar
from stepper.session.questions.about import TellFinishDate
from stepper.session.questions.about_ahead import (
    TellNextShaping,
    TellRoundsTo,
    TellShapingLeft,
    TellYarnNeeded,
)
from stepper.session.questions.about_named import TellLinesLeft
from stepper.session.questions.about_piece import (
    TellNextCount,
    TellNextSection,
    TellPartLength,
    TellSection,
    TellShareDone,
)

_OF_ALL: Final = frozenset(
    (TellTimeLeft, TellDue, TellFinishDate, TellLasting, TellYarnNeeded, TellShareDone)
)
"""Answers that need the whole garment: of a part of it they are wrong, and not told."""
_AHEAD: Final = frozenset(
    (
        TellFar,
        TellSpacing,
        TellNextShaping,
        TellShapingLeft,
        TellRoundsTo,
        TellLinesLeft,
        TellNextCount,
        TellNextSection,
        TellPartLength,
        TellSection,
    )
)
"""Answers that look ahead as far as rounds are known."""


def as_far_as_read(plan: Plan, told: Iterable[Effect]) -> tuple[Effect, ...]:
    """Return what is told; leave out what needs the whole garment where it is not read, and say that.

    Args:
        plan: The plan as knitted.
        told: What would be told of a whole garment.
    """
    effects = tuple(told)
    if plan.open is None:
        return effects
    kept = tuple(each for each in effects if type(each) not in _OF_ALL)
    if len(kept) == len(effects) and not any(type(each) in _AHEAD for each in effects):
        return effects
    known = any(type(each) in _AHEAD for each in kept)
    return (*kept, TellSoFar(row=plan.open, known=known))
