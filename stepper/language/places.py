"""Where in the garment, in words. No I/O."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date, datetime
from typing import Final

from stepper.craft.rows import row_word
from stepper.plan.model import Plan, Round
from stepper.session.state import Position
from stepper.session.steps import RoundSort

_MONTHS: Final = (
    "January",
    "February",
    "March",
    "April",
    "May",
    "June",
    "July",
    "August",
    "September",
    "October",
    "November",
    "December",
)


def place_name(round_: Round) -> str:
    """Say where a round is: section, round of how many, label, side."""
    parts = [sentence_case(round_.section), f"{round_word(round_)} {round_.numbered}"]
    return ", ".join(parts + list_marks(round_))


def round_name(round_: Round) -> str:
    """Say which round of its section a round is: "round 35, Second increase"."""
    return ", ".join([f"{round_word(round_)} {round_.number}", *list_marks(round_)])


def name_from(index: int, here: int, plan: Plan) -> str:
    """Say which round lies ahead or behind, with its section where that is another than the one in hand.

    Args:
        index: Of the round.
        here: Index of the round in hand.
        plan: The plan as knitted.
    """
    round_, now = plan.rounds[index], plan.rounds[min(here, len(plan.rounds) - 1)]
    return round_name(round_) if round_.section == now.section else f"{round_.section}, {round_name(round_)}"


def round_word(round_: Round) -> str:
    """Return "row" for flat knitting, otherwise "round"."""
    return row_word(round_.flat)


def list_marks(round_: Round) -> list[str]:
    """Return what else identifies a round."""
    found = []
    if round_.label and round_.label.lower() != "next":  # "Next: k to end" names no round
        found.append(round_.label)
    if round_.chart is not None and round_.chart_round is not None:
        found.append(f"chart {round_.chart} {round_word(round_)} {round_.chart_round}")
    if round_.flat and round_.side == "WS":
        found.append("wrong side")
    return found


def done_name(place: Position, plan: Plan) -> str:
    """Say how far the knitting is done."""
    if place.stitch:
        return f"{place_name(plan.rounds[place.index])}, stitch {place.stitch}"
    index = min(place.index, len(plan.rounds)) - 1
    return place_name(plan.rounds[index]) if index >= 0 else "nothing yet"


def on_day(at: str) -> str:
    """Say the day of a time, as in " on 12 March"; empty if it is not a time."""
    try:
        day = datetime.fromisoformat(at)
    except ValueError:
        return ""
    return f" on {day.day} {_MONTHS[day.month - 1]}"


def full_date(day: str) -> str:
    """Write a day as in "12 March 2027"; as it stands if it is not one.

    Args:
        day: ISO 8601, without a time.
    """
    try:
        found = date.fromisoformat(day)
    except ValueError:
        return day
    return f"{found.day} {_MONTHS[found.month - 1]} {found.year}"


def sentence_case(text: str) -> str:
    """Capitalise the first letter and leave the rest as it is."""
    return text[:1].upper() + text[1:]


def end_sentence(text: str) -> str:
    """End a text as a sentence: with a full stop, unless it has its end already."""
    said = text.rstrip(".:;, ")  # "as follows:" leads on to a step of its own
    return said if said.endswith(("!", "?", ".)", "!)", "?)")) else f"{said}."


def rounds_of_sort(sort: RoundSort, *, flat: bool) -> str:
    """Say which rounds are read out alike, as a knitter calls them: "in plain rounds".

    Args:
        sort: Of the rounds.
        flat: Whether they are rows.
    """
    return _SORTS[sort].format(rounds="rows" if flat else "rounds")


_SORTS: Final[Mapping[RoundSort, str]] = {
    RoundSort.COLOURS: "in colourwork",
    RoundSort.TEXTURE: "in lace and cables",
    RoundSort.SHAPED: "in {rounds} with shaping",
    RoundSort.RAGLAN: "in {rounds} that shape at markers",
    RoundSort.EVEN: "in {rounds} of even changes",
    RoundSort.SHAPING: "in {rounds} with shaping",
    RoundSort.PLAIN: "in plain {rounds}",
}
