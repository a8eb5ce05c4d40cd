"""Which cues answer what is open: a word or a bare number, or that she cannot tell. Pure."""

from __future__ import annotations

from collections.abc import Iterable
from types import MappingProxyType
from typing import Final

from stepper.plan.model import Plan
from stepper.session.counting.doubts import COUNTS, AskBack
from stepper.session.cues import Count, Cue, No, Yes
from stepper.session.effects import AskCount, AskLook, AskSections, Effect
from stepper.session.fault.respond import AskAgain
from stepper.session.open_row.telling import TellOpenRow, ask_row
from stepper.session.respond import ask_open
from stepper.session.state import DoubtKind, State

_A_COUNT: Final[frozenset[type[Cue]]] = frozenset((Count, No))
_ANSWERED_BY: Final = MappingProxyType(
    {
        AskCount: _A_COUNT,
        AskSections: _A_COUNT,
        AskAgain: _A_COUNT,
        AskLook: frozenset({Yes, No}),
    }
)


def list_answers(plan: Plan, state: State, told: Iterable[Effect]) -> frozenset[type[Cue]]:
    """List the kinds of cue that answer what is open.

    A no without a yes stands for one that only leaves it: "not now".

    Args:
        plan: The plan as knitted.
        state: Where the session stands.
        told: What has just been said; a count that falls due is asked for there alone.
    """
    answers: set[type[Cue]] = set()
    for effect in (*told, *ask_open(plan, state), *ask_row(plan, state)):
        answers |= _ANSWERED_BY.get(type(effect), frozenset())
        if isinstance(effect, AskSections) and effect.yes:
            answers.add(Yes)
        if isinstance(effect, AskBack):
            answers |= {Yes, No, Count} if effect.doubt.kind in {*COUNTS, DoubtKind.ROUNDS} else {Yes, No}
        if isinstance(effect, TellOpenRow):  # a film says yes and no too, and the file is written after a yes
            answers |= {Yes, No, Count} if effect.asks else {Count}
    return frozenset(answers)
