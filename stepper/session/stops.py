"""Stops: what is told before a step, as a step of its own where both together go on for too long.

To change needles, take up a ball or pick up along an edge is something to do, so she hears it, does it, and
says "next step" to hear the stitches. What only tells something (how many rows a pattern has) is no stop, as
there is nothing to answer to. A stop has no stitches: the place stays, and the state counts how many stops
before its step are heard (`Knitting.heard`). Pure.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import chain
from typing import Final

from stepper.plan.model import Plan, Round
from stepper.plan.told_only import is_told_only, lead_in_once
from stepper.plan.yarn.strand_remarks import catches_of
from stepper.regex import regex
from stepper.session.speech_length import MOST_S, seconds_of, seconds_of_items, seconds_of_lead, yarns_said
from stepper.session.state import State
from stepper.session.steps import By, cut_into_steps

_FLOATS_OVER: Final = regex(r": it floats over \d+ stitch(?:es)?")
_FULL_STOP: Final = regex(r"\. (?=[A-Z])")


def stops_before(plan: Plan, round_: Round, by: By) -> tuple[tuple[str, ...], ...]:
    """Return what is told before the first step of a round, stop by stop; empty if it is told with the step.

    Args:
        plan: The plan as knitted.
        round_: A round of it.
        by: How much one step reads out.

    Returns:
        Sentences without their full stops, none of them empty.
    """
    if not round_.remarks:
        return ()
    before, catches = remarks_before(round_), list_first_catches(plan, round_)
    if not before and not catches:
        return ()
    doing = tuple(each for each in before if not is_told_only(each))
    first = cut_into_steps(round_, by)[0]
    step_s = seconds_of_lead(round_) + seconds_of_items(first.items, yarns_said(round_.phrase))
    if step_s + _seconds((*doing, *catches)) <= MOST_S:
        return ()  # a fact is no step of its own, however long it takes to say
    behind = catches if step_s + _seconds(catches) > MOST_S else ()
    return tuple(_shared_out((*before, *behind)))


def stops_at(plan: Plan, state: State) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Return what was told in stops before the step in hand, and the stop that is to be heard now.

    Both are empty in the middle of a round; the second is empty if it is the step's turn, or read along.
    """
    place = state.place
    if place.stitch or place.index >= len(plan.rounds):
        return (), ()
    round_, heard = plan.rounds[place.index], state.knitting.heard
    stops = stops_before(plan, round_, state.knitting.by_of(round_))
    waits = state.reading is None and heard < len(stops)
    return tuple(chain(*stops[:heard])), stops[heard] if waits else ()


def stop_in_hand(plan: Plan, state: State) -> tuple[str, ...]:
    """Return the stop to be heard before the step in hand; empty if it is the step's turn."""
    return stops_at(plan, state)[1]


def remarks_before(round_: Round) -> tuple[str, ...]:
    """Return what is to be done before a round."""
    catches = catches_of(round_)
    return tuple(each for each in round_.remarks if each not in catches)


def list_first_catches(plan: Plan, round_: Round) -> tuple[str, ...]:
    """Return where floats are caught, if the round is worked for the first time.

    What a chart catches is told once, and how long a float is can be asked for.
    """
    catches = catches_of(round_)
    if not catches:
        return ()
    like = (round_.chart, round_.chart_round) if round_.chart else round_.phrase
    for before in plan.rounds[: round_.index]:
        same = like == ((before.chart, before.chart_round) if before.chart else before.phrase)
        if same and catches_of(before) == catches:
            return ()
    return shorten_catches(catches)


def shorten_catches(catches: Iterable[str]) -> tuple[str, ...]:
    """Leave out of where floats are caught how long they are."""
    return tuple(one for each in catches for one in _sentences(_FLOATS_OVER.sub("", each)))


def _sentences(remark: str) -> list[str]:
    """Part a remark at its full stops, and leave these out."""
    return _FULL_STOP.split(remark.rstrip("."))


def _shared_out(remarks: Iterable[str]) -> Iterator[tuple[str, ...]]:
    """Put sentences together until a stop is full."""
    held: list[str] = []
    for each in (one for remark in remarks for one in _sentences(remark)):
        if held and _seconds(lead_in_once((*held, each))) > MOST_S:
            yield lead_in_once(held)
            held = []
        held.append(each)
    yield lead_in_once(held)


_UNITS: Final = regex(r"\b(mm|cm|sts|RS|WS)\b")
_SAID: Final = {
    "mm": "millimetre", "cm": "centimetre", "sts": "stitches", "RS": "right side", "WS": "wrong side",
}  # fmt: skip


def _seconds(sentences: Iterable[str]) -> float:
    """Estimate how long sentences take to say, one after another. Unit: s."""
    return sum(seconds_of(_UNITS.sub(lambda found: _SAID[found.group()], each)) for each in sentences)
