"""What is asked of the knitter and still open: the question itself, and how a fault can be mended.

An answer to a cue is shown until the next cue; a question stays until it is answered. Working out what is
known of a fault takes a while, so it is done once for each event and not for each redraw. No I/O.
"""

from __future__ import annotations

from stepper.language.effect_words import tell_effect
from stepper.language.places import sentence_case
from stepper.language.remedy_words import name_remedy
from stepper.plan.model import Plan
from stepper.records import dataclass
from stepper.session.effects import AskSections, Effect
from stepper.session.fault.inquiry import Inquiry, inquire
from stepper.session.fault.respond import AskAgain
from stepper.session.open_row.telling import ask_row
from stepper.session.respond import ask_open, ask_place
from stepper.session.state import State


@dataclass(frozen=True, slots=True, kw_only=True)
class OpenQuestions:
    """What is asked and still open."""

    questions: tuple[str, ...] = ()
    """Each in the words in which it was asked; none while she counts aloud."""
    expect: int | None = None
    """Stitches the count asked for should come to; None if no count is asked for. Unit: stitches."""
    remedies: tuple[str, ...] = ()
    """The ways to mend the fault in hand, the first to be taken first, each a whole sentence."""
    part: bool = False
    """Whether a number typed now is the count between two landmarks."""
    effects: tuple[Effect, ...] = ()
    """What is open, also while she counts aloud."""
    inquiry: Inquiry | None = None
    """What is known of the fault in hand; None if none is looked for."""


NOTHING_ASKED = OpenQuestions()


def find_asked(plan: Plan, state: State) -> OpenQuestions:
    """Find what is asked and still open."""
    effects = tuple(ask_place(state) if state.question is not None else ask_open(plan, state))
    effects = effects or tuple(ask_row(plan, state))
    counting = state.question is None and state.knitting.doubt is None and state.knitting.tens is not None
    shown = () if counting else effects
    inquiry = inquire(plan, state)
    ways = inquiry.remedies if inquiry is not None else ()
    return OpenQuestions(
        questions=tuple(tell_effect(effect, plan) for effect in shown),
        expect=next((found for effect in shown if (found := _expected(effect)) is not None), None),
        remedies=tuple(f"{sentence_case(name_remedy(way, plan)).rstrip('.')}." for way in ways),
        part=inquiry is not None and inquiry.asks_part(state.place),
        effects=effects,
        inquiry=inquiry,
    )


def _expected(effect: Effect) -> int | None:
    if isinstance(effect, AskSections):
        return effect.stretch.expect
    return effect.expect if isinstance(effect, AskAgain) else None
