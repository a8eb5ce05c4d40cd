"""Whether the count stands: a short verdict on a badge, and the figures beside it. No I/O."""

from __future__ import annotations

import re
from types import MappingProxyType
from typing import Final

from stepper.craft.rows import row_word
from stepper.language.measures import length, plural
from stepper.plan.model import Plan, Round
from stepper.records import dataclass
from stepper.screen.drawing.rows import Row, Styled, clean, paragraph, row_width, text_width
from stepper.screen.drawing.style import Badge, Depth, paint_badge
from stepper.screen.open_questions import NOTHING_ASKED, OpenQuestions
from stepper.session.changed_plan.plan_question import first_say
from stepper.session.counting.checks import expected_at_end
from stepper.session.counting.count_timing import why_count
from stepper.session.counting.tally import count_at
from stepper.session.state import Doubt, DoubtKind, Fault, Position, State


@dataclass(frozen=True, slots=True, kw_only=True)
class CountVerdict:
    """How the count stands."""

    badge: Badge
    word: str
    detail: str


def judge_count(plan: Plan, state: State, asked: OpenQuestions = NOTHING_ASKED) -> CountVerdict:
    """Return how the count stands: a fault first, then a count asked for, then the last good count.

    Args:
        plan: The plan as knitted.
        state: Where the session stands.
        asked: What is asked and still open.
    """
    knitting = state.knitting
    if state.question is not None:
        return CountVerdict(badge=Badge.ASKS, word="which place", detail=first_say(state))
    if knitting.doubt is not None:
        return CountVerdict(badge=Badge.ASKS, word="is it so", detail=_asked_back(knitting.doubt, plan))
    if knitting.tens is not None:
        so_far = f"{sum(knitting.tens)} so far"
        return CountVerdict(badge=Badge.ASKS, word="counting", detail=so_far)
    if knitting.fault is not None:
        return _fault(knitting.fault, asked)
    due = _due(plan, state)
    if due is not None:
        return due
    if knitting.stands is None:
        worked = f"in {plural(knitting.uncounted, 'stitch', 'stitches')}" if knitting.uncounted else "yet"
        return CountVerdict(badge=Badge.CALM, word="not counted", detail=worked)
    return _stands(plan, state, knitting.stands.place, knitting.stands.stitches)


def _asked_back(doubt: Doubt, plan: Plan) -> str:
    """Return what is asked back, in figures."""
    if doubt.kind is DoubtKind.LENGTH:
        return f"{length(doubt.length_mm, plan.units)}?"
    if doubt.kind is DoubtKind.ROUNDS:
        return f"{plural(doubt.number, 'round')} back?" if doubt.number else "how many rounds back?"
    end = " and the round finished" if doubt.kind is DoubtKind.FINISHED else ""
    return f"{doubt.number}{end}?"


def count_expected(plan: Plan, state: State) -> tuple[int, int]:
    """Count the stitches there should be now and at the end of the round. Unit: stitches."""
    place = state.place
    return count_at(plan, place), expected_at_end(plan, place)


def _fault(fault: Fault, asked: OpenQuestions) -> CountVerdict:
    many = abs(fault.difference)
    off = f"{many} too {'many' if fault.difference > 0 else 'few'}" if many else "a fault was seen"
    questions = " ".join(asked.questions)
    said = asked.expect is None or re.search(rf"\b{asked.expect}\b", questions) is not None
    detail = off if said else f"{off}; the count asked for should be {asked.expect}"
    return CountVerdict(badge=Badge.OFF, word="count is off", detail=detail)


def _due(plan: Plan, state: State) -> CountVerdict | None:
    """Return the verdict if a count is asked for between the last round and this one, or None."""
    place, verified = state.place, state.knitting.stands
    if place.stitch or not 0 < place.index <= len(plan.rounds):
        return None
    if verified is not None and verified.place == place:
        return None
    reason = why_count(plan, state, place.index - 1)
    if reason is None or _verified_at_end(plan, state, place.index - 1):
        return None
    detail = f"{count_expected(plan, state)[0]} expected, {reason}"
    return CountVerdict(badge=Badge.ASKS, word="count now", detail=detail)


def _verified_at_end(plan: Plan, state: State, index: int) -> bool:
    """Return whether the count at the end of a round was already made from within it."""
    verified = state.knitting.stands
    return (
        verified is not None
        and verified.place.index == index
        and (verified.stitches == plan.rounds[index].after != plan.rounds[index].before)
    )


def _stands(plan: Plan, state: State, at: Position, stitches: int) -> CountVerdict:
    """Return the verdict on the last good count, with how much has been worked since."""
    place = state.place
    rounds = place.index - at.index
    if rounds <= 0:
        since = "here" if place == at else "in this round"
    else:
        since = f"{plural(rounds, 'round')} ago" if not at.stitch else f"in {_name(plan.rounds[at.index])}"
    return CountVerdict(badge=Badge.STANDS, word="count stands", detail=f"{stitches} counted {since}")


def _name(round_: Round) -> str:
    return f"{row_word(round_.flat)} {round_.number}"


_MARKS: Final = MappingProxyType({Badge.STANDS: "✓", Badge.ASKS: "?", Badge.OFF: "!", Badge.CALM: "–"})
_MARKS_IN_ASCII: Final = MappingProxyType(_MARKS | {Badge.STANDS: "=", Badge.CALM: "-"})


def draw_badge(kind: Badge, word: str, depth: Depth, *, blocks: bool) -> Styled:
    """Write a word on its badge, with a sign that says the same without colour."""
    marks = _MARKS if blocks else _MARKS_IN_ASCII
    return Styled(f" {marks[kind]} {clean(word)} ", paint_badge(kind, depth))


def draw_verdict(verdict: CountVerdict, depth: Depth, columns: int, *, blocks: bool) -> list[Row]:
    """Write a verdict on one row, or its detail on rows of its own if it does not fit beside the badge.

    Args:
        verdict: How the count stands.
        depth: What the terminal shows.
        columns: Room. Unit: columns.
        blocks: Whether the terminal has signs beyond ASCII.
    """
    badge = draw_badge(verdict.badge, verdict.word, depth, blocks=blocks)
    detail = clean(verdict.detail)
    if row_width((badge,)) + 1 + text_width(detail) <= columns:
        return [(badge, Styled(f" {detail}"))]
    return [(badge,), *paragraph(detail, columns)]
