"""Put into words what comes of slips that no count shows: a round worked twice, a wrong yarn. No I/O."""

from __future__ import annotations

from collections.abc import Callable
from types import MappingProxyType
from typing import Any, Final

from stepper.language.measures import many_stitches
from stepper.language.places import round_word
from stepper.plan.model import Plan
from stepper.session.effects import Effect
from stepper.session.questions.slips import Harm, TellWorkedTwice, TellWrongYarn


def _worked_twice(effect: TellWorkedTwice, plan: Plan) -> str:
    round_ = plan.rounds[effect.index]
    word = round_word(round_)
    undo = f"undo its {many_stitches(round_.after)}, and your place stays"
    match effect.harm:
        case Harm.NONE:
            return f"The next {word} is worked alike, so it is done already. Say: finished the round."
        case Harm.LONGER:
            return f"The count is as before, the piece one {word} longer. Leave it; or {undo}."
        case Harm.SHOWS:
            return f"The count is as before, but the pattern has that {word} twice. Leave it; or {undo}."
        case Harm.SIDE:
            return f"The next {word} would fall on the other side. So {undo}."
        case Harm.COUNT:
            return f"Then the count may be off: {round_.after} expected. Say: count is, and the number."


def _wrong_yarn(effect: TellWrongYarn, plan: Plan) -> str:
    return (
        "No count shows that. A few stitches: cover them in duplicate stitch when it is finished. "
        "Many: say unknit, and how many."
    )


LINES: Final[MappingProxyType[type[Effect], Callable[[Any, Plan], str]]] = MappingProxyType(
    {TellWorkedTwice: _worked_twice, TellWrongYarn: _wrong_yarn}
)
