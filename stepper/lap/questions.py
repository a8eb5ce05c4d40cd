"""What the session asks of her, as a list to touch: an answer, a place, a way to mend a fault. No I/O.

And what a number would mean before it is sent.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

from stepper.language.changes import name_place_choice
from stepper.language.effect_words import tell_effect
from stepper.language.places import sentence_case
from stepper.language.remedy_words import name_remedy
from stepper.language.understanding.fault_vocabulary import FAULT_WORDINGS
from stepper.plan.model import Plan
from stepper.records import dataclass
from stepper.screen.open_questions import OpenQuestions
from stepper.screen.ui_state import pick_number_cue
from stepper.session import cues
from stepper.session.cues import Cue
from stepper.session.effects import AskLook, AskSections, Effect, TellStep
from stepper.session.fault.inquiry import Inquiry
from stepper.session.fault.respond import TellLadder
from stepper.session.fault.ways import RemedyKind
from stepper.session.machine import Session
from stepper.session.open_row.telling import TellOpenRow
from stepper.session.state import Seen, State


@dataclass(frozen=True, slots=True, kw_only=True)
class Choice:
    """Something to touch for an answer."""

    says: str
    """What is on it."""
    ask: str
    """What the touch asks; see `stepper.lap.touches`."""
    value: int = 0
    """The number that goes with it."""
    text: str = ""
    """The words that go with it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class PageQuestion:
    """What is asked of her."""

    title: str
    """What it is about, in a few words."""
    says: str
    """The question, or what is known; empty if the choices say it all."""
    choices: tuple[Choice, ...] = ()


NOT_READ: Final = "A row that is not read"
"""What a page is headed where the pattern goes on with one."""
_CAUGHT: Final = "it is caught"
_CAUSES: Final = Choice(says="What probably went wrong", ask="what happened")


def find_question(plan: Plan, state: State, asked: OpenQuestions) -> PageQuestion | None:
    """Return what is asked of her now; None if nothing is.

    Args:
        plan: The plan as knitted.
        state: Where the session stands.
        asked: What is open in it.
    """
    if state.question is not None:
        places = (name_place_choice(each) for each in state.question.choices)
        listed = tuple(
            Choice(says=sentence_case(place), ask="choose", value=number)
            for number, place in enumerate(places, start=1)
        )
        return PageQuestion(title="Where do you go on?", says="The pattern has changed.", choices=listed)
    yes_or_no = (Choice(says="Yes, it is", ask="yes"), Choice(says="No, it is not", ask="no"))
    if state.knitting.doubt is not None:
        return PageQuestion(title="Is it so?", says=_told(asked.effects, plan), choices=yes_or_no)
    if asked.inquiry is None:
        if not any(isinstance(each, TellOpenRow) for each in asked.effects):
            return None
        return PageQuestion(title=NOT_READ, says=_told(asked.effects, plan), choices=yes_or_no)
    return _about_fault(asked.inquiry, asked.effects, plan)


def _about_fault(inquiry: Inquiry, asked: Sequence[Effect], plan: Plan) -> PageQuestion:
    answers = [answer for effect in asked for answer in _answers(effect)]
    first: list[Choice] = []
    last: list[Choice] = []
    for number, each in enumerate(inquiry.remedies, start=1):
        if each.kind.settles and each.kind is not RemedyKind.LADDER:
            way = Choice(says=f"{sentence_case(name_remedy(each, plan))}.", ask="choose", value=number)
            # Half an evening's work is not the first thing under a finger.
            (last if each.kind is RemedyKind.RIP else first).append(way)
    many = inquiry.fault.difference
    title = f"{abs(many)} too {'many' if many > 0 else 'few'}" if many else "A fault was seen"
    return PageQuestion(title=title, says=_told(asked, plan), choices=(*answers, *first, _CAUSES, *last))


def _answers(effect: Effect) -> Iterator[Choice]:
    """Yield the answers to a question about the fabric that take no number."""
    if isinstance(effect, AskSections):
        expect = effect.stretch.expect
        yield Choice(says=f"{expect}, as expected", ask="yes" if effect.yes else "part", value=expect)
    hangs = isinstance(effect, TellLadder)
    seen = effect.seen if isinstance(effect, AskLook) else Seen.LOOP if hangs else None
    for row in FAULT_WORDINGS:
        if row.cue is not cues.Saw or row.fixed.get("seen") is not seen or "number" not in row.fixed:
            continue
        if not hangs:
            yield Choice(says=_in_print(row.spoken[0]), ask="words", text=row.spoken[0])
        elif not row.fixed["number"]:
            yield Choice(says=_in_print(_CAUGHT), ask="words", text=_CAUGHT)


def _in_print(words: str) -> str:
    """Write spoken words as they are printed."""
    return sentence_case(words.replace(" i ", " I "))


def _told(asked: Sequence[Effect], plan: Plan) -> str:
    return " ".join(filter(None, (tell_effect(effect, plan) for effect in asked)))


@dataclass(frozen=True, slots=True, kw_only=True)
class NumberMeaning:
    """What a number typed now would be, and what would come of it."""

    ask: str
    """What a touch with it asks."""
    does: str
    """What that is, in a few words."""
    says: str = ""
    """What would be told."""


def say_what_number_does(plan: Plan, state: State) -> NumberMeaning:
    """Return what a number is taken for at this place."""
    return _meaning(pick_number_cue(plan, state, 0))


def foresee_number(session: Session, number: int) -> NumberMeaning:
    """Work out what would come of a number. Changes nothing.

    Args:
        session: The session as it stands.
        number: As typed. Range: 0 and up.
    """
    cue = pick_number_cue(session.plan, session.state, number)
    meant = _meaning(cue)
    considered = session.consider(cue)
    told = [effect for effect in considered.effects if not isinstance(effect, TellStep)]
    return NumberMeaning(ask=meant.ask, does=meant.does, says=_told(told, considered.plan))


def _meaning(cue: Cue) -> NumberMeaning:
    if isinstance(cue, cues.Choose):
        return NumberMeaning(ask="choose", does="takes the place of that number")
    if isinstance(cue, cues.Ten):
        return NumberMeaning(ask="ten", does="adds to the count aloud")
    if isinstance(cue, cues.SectionCount):
        return NumberMeaning(ask="part", does="answers with the stitches in between")
    return NumberMeaning(ask="count", does="is the count of all stitches")
