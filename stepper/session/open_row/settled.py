"""Find the place in a plan that goes on behind a row that was not read. Pure."""

from __future__ import annotations

from typing import Final

from stepper.plan.model import OpenKind, Plan, Round, runs_written
from stepper.plan.under_way.carry import Carried
from stepper.session.open_row.by_parts import question_of
from stepper.session.state import OpenAnswer, Position, State

_LAID_ASIDE: Final = frozenset(("rest", "hold"))
_TAKEN_BACK: Final = ({"return"}, {"rest", "return"})


def behind_open_row(old: Plan, new: Plan, state: State, carried: Carried) -> tuple[Position, int]:
    """Return a place carried over, behind the rows that she has worked by the words of a row that was open.

    The second number is how many of these the new plan does not have, so that the place is in front of them.

    Args:
        old: The plan knitted so far, which may end at such a row.
        new: The plan to go on with.
        state: Where the session stands, in the old plan.
        carried: The place in the new one.
    """
    place, work = Position(index=carried.index, stitch=carried.stitch), state.knitting.open
    if old.open is None or work is None or state.place.index < len(old.rounds):
        return place, 0
    question = question_of(old.open, work) if work.answers else None
    answer = question.answer if question is not None else None
    if answer is not None:
        return _behind_stitches(new, place, answer)
    by_words = new.rounds[place.index : place.index + work.rows]
    hers = all(each.words or not (each.before and each.after) for each in by_words)
    if len(by_words) == work.rows and hers:
        return Position(index=place.index + work.rows), 0
    return place, work.rows


def _behind_stitches(new: Plan, place: Position, answer: OpenAnswer) -> tuple[Position, int]:
    """Return a place behind a row of whose stitches she was asked, once it was knitted."""
    at = place.index
    if answer.kind is OpenKind.IDLE:
        return place, 0
    while answer.comes_back and at < len(new.rounds) and _codes(new.rounds[at]) in _TAKEN_BACK:
        at += 1
    taken = at - place.index
    came = taken and new.rounds[at - 1].after == answer.left
    rows = 0 if came else answer.rows or 1
    for each in new.rounds[at : at + rows]:
        if not (each.words or not each.before or any(code.startswith("own") for code in _codes(each))):
            return place, rows
        at += 1
    if at < place.index + taken + rows:
        return place, rows
    if answer.kind is OpenKind.PARTS and at < len(new.rounds) and _codes(new.rounds[at]) <= _LAID_ASIDE:
        at += new.rounds[at].line == new.rounds[at - 1].line  # they lie on the thread already
    return Position(index=at), 0


def _codes(round_: Round) -> set[str]:
    return {run.stitch for run in runs_written(round_.phrase)}
