"""Find the place in a plan that goes on behind a row that was not read. Pure."""

from __future__ import annotations

from stepper.plan.model import Plan
from stepper.plan.under_way.carry import Carried
from stepper.session.state import Position, State


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
    by_words = new.rounds[place.index : place.index + work.rows]
    if len(by_words) == work.rows and all(each.words or not each.before for each in by_words):
        return Position(index=place.index + work.rows), 0
    return place, work.rows
