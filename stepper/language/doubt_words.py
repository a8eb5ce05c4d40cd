"""Words for what is asked back, a number with what would follow, and for why anything is asked. No I/O."""

from __future__ import annotations

from collections.abc import Callable
from types import MappingProxyType
from typing import Any, Final, assert_never

from stepper.language.measures import length, plural
from stepper.plan.model import Plan
from stepper.session.counting.doubts import AskBack, TellDismissed
from stepper.session.effects import Effect
from stepper.session.moves import ask_how_far
from stepper.session.questions.why import Ground, TellWhy
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
        case DoubtKind.ROUNDS:
            return _rounds_back(doubt.number, effect.lifeline)
    assert_never(doubt.kind)


def _rounds_back(number: int, lifeline: int) -> str:
    if not number:
        return ask_how_far(lifeline)
    mend = "A few stitches are covered in duplicate stitch later."
    return f"{plural(number, 'round')} ripped back? Say: yes it is, or: no it is not. {mend}"


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
    if not effect.number:
        return "Nothing is changed."
    how = ", digit by digit" if effect.count else ""
    return f"Nothing is changed. Say the number again{how}."


_WHY: Final[MappingProxyType[Ground, str]] = MappingProxyType(
    {
        Ground.PLACE: "The pattern has changed, and more than one place in it may be yours.",
        Ground.DOUBT: "That number does not fit what you told before; misheard, it would lose your place.",
        Ground.SEARCH: "Your count was off, and each further number says in which part the fault lies.",
        Ground.OPEN: "I do not read this row, and those behind it hang on the stitches it leaves.",
        Ground.LIFELINE: "Lace and cables run down when they are ripped back, and a lifeline holds them.",
    }
)
_OF_COUNTS: Final = (
    ("after the cast-on", "All rows stand on the cast-on, and now it costs least to put it right."),
    ("before an edge", "What is bound off cannot be counted any more."),
    ("before a bind-off", "What is bound off cannot be counted any more."),
    ("before the bind-off", "What is bound off cannot be counted any more."),
    ("before the end", "Behind it the stitches cannot be counted any more."),
    ("before the division", "Once they are divided, nobody sees where a stitch is missing."),
    ("after the divide", "A stitch in the wrong part is moved easily now, and not once it is knitted."),
    ("before the shaping", "Shaping hides a stitch too many or too few; in even rounds it is found at once."),
    ("before chart", "With a stitch too many or too few a chart runs off all the way round."),
    ("after chart", "A fault in the chart is nearest now, before other rounds lie on it."),
    ("after the mend", "A mend that went wrong is found at once so."),
    ("to find the place", "It says whether the fault lies before this place or behind it."),
    ("as printed", "The page prints it here, and I do not know the stitches in between."),
    ("on the needles again", "A stitch dropped from the thread is caught now, and runs down later."),
    ("end of", "The next part stands on these stitches."),
    ("after", "A change that went wrong is put right most easily in the round just worked."),
)
"""What the reason of a count begins with, and why that is one; the first that fits.

Source of what a fault costs where: common practice.
"""
_LONG: Final = "You have not counted for a while, and the later a fault is found the more is ripped back."


def _why(effect: TellWhy, plan: Plan) -> str:
    if effect.ground is Ground.COUNT:
        return next((said for begins, said in _OF_COUNTS if effect.reason.startswith(begins)), _LONG)
    if effect.ground is Ground.NOTHING:
        called = f", which calls it {effect.label}" if effect.label else ""
        return f"I asked for nothing here. The step is as it stands on your page{called}."
    return _WHY[effect.ground]


LINES: Final[MappingProxyType[type[Effect], Callable[[Any, Plan], str]]] = MappingProxyType(
    {AskBack: _ask_back, TellDismissed: _dismissed, TellWhy: _why}
)
"""The words of each effect."""
