"""Words for what is asked back: a number read back with what would follow. No I/O."""

from __future__ import annotations

from collections.abc import Callable
from types import MappingProxyType
from typing import Any, Final, assert_never

from stepper.language.measures import length, plural
from stepper.plan.model import Plan
from stepper.session.counting.doubts import AskBack, TellDismissed
from stepper.session.effects import Effect
from stepper.session.state import DoubtKind

ANSWERS: Final = "Say: yes it is, no it is not, or the number again."
"""What can be answered to a number that is read back."""
DIGIT_BY_DIGIT: Final = "Say: yes it is, no it is not, or the number digit by digit."
"""The same where one was misheard just before: digits are heard best over other sounds."""


def _ask_back(effect: AskBack, plan: Plan) -> str:
    doubt = effect.doubt
    match doubt.kind:
        case DoubtKind.COUNT | DoubtKind.PART:
            answers = DIGIT_BY_DIGIT if effect.misheard else ANSWERS
            return f"{doubt.number}? {_off(doubt.number - effect.expected, effect.expected)}{answers}"
        case DoubtKind.LENGTH:
            return f"{length(doubt.length_mm, plan.units)}? {_rounds(effect)}{ANSWERS}"
        case DoubtKind.LEFT:
            side = "left over" if doubt.number > 0 else "short"
            return f"{abs(doubt.number)} {side}? {ANSWERS}"
        case DoubtKind.FINISHED:
            asked = f"{doubt.number} is what the whole round leaves. Is it finished?"
            return f"{asked} Say: yes it is, or: no it is not."
    assert_never(doubt.kind)


def _off(difference: int, expected: int) -> str:
    if not difference:
        return ""
    return f"That is {abs(difference)} {'more' if difference > 0 else 'fewer'} than {expected}. "


def _rounds(effect: AskBack) -> str:
    if not effect.longer_by:
        return ""
    many = plural(abs(effect.longer_by), "round")
    does = "adds" if effect.longer_by > 0 else "cuts"
    return f"That {does} {many}, {effect.rounds_left} left. "


def _dismissed(effect: TellDismissed, plan: Plan) -> str:
    how = ", digit by digit" if effect.count else ""
    return f"Nothing is changed. Say the number again{how}."


LINES: Final[MappingProxyType[type[Effect], Callable[[Any, Plan], str]]] = MappingProxyType(
    {AskBack: _ask_back, TellDismissed: _dismissed}
)
"""The words of each effect."""
