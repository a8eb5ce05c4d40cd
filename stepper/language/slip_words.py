"""Put into words what comes of slips that no count shows: a round worked twice, a wrong yarn, a marker lost.

How each is mended is common practice. No I/O.
"""

from __future__ import annotations

from collections.abc import Callable
from types import MappingProxyType
from typing import Any, Final

from stepper.craft.figures import list_words
from stepper.language.measures import many_stitches
from stepper.language.places import round_word
from stepper.plan.model import Plan
from stepper.session.effects import Effect
from stepper.session.questions.slips import Harm, TellMarkersLost, TellWayOut, TellWorkedTwice
from stepper.session.questions.topics import Topic


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


_WAYS_OUT: Final = MappingProxyType(
    {
        Topic.WRONG_YARN: "No count shows that. A few stitches: cover them in duplicate stitch when it is "
        "finished. Many: say unknit, and how many.",
        Topic.LONG_FLOAT: "In the round above, catch it from behind with the yarn in hand. Further down, sew "
        "it to the back when it is finished. If it draws the fabric in, say unknit, and how many.",
        Topic.YARN_OUT: "Leave a tail as long as your hand and knit on with the new yarn, with such a tail "
        "too; best where the next round begins. To hear what the rest takes, say: how much yarn is left.",
    }
)


def _way_out(effect: TellWayOut, plan: Plan) -> str:
    return _WAYS_OUT[effect.topic]


def _markers_lost(effect: TellMarkersLost, plan: Plan) -> str:
    word = round_word(plan.rounds[effect.index])
    begins = f"This {word} begins where the yarn comes from"
    if effect.worked:
        begins = f"This {word} begins {many_stitches(effect.worked)} before the last one worked, counted back"
    if not effect.after:
        return f"{begins}. No other marker is needed in it."
    after = list_words([str(each) for each in effect.after])
    return f"{begins}. Markers in it: behind stitch {after}."


LINES: Final[MappingProxyType[type[Effect], Callable[[Any, Plan], str]]] = MappingProxyType(
    {TellWorkedTwice: _worked_twice, TellWayOut: _way_out, TellMarkersLost: _markers_lost}
)
