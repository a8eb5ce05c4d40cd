"""Words for remedies: the first way to mend a fault, the others, and what to do for the one chosen. No I/O.

The first way is said alone, in at most 25 words before the possible answers; the others when asked for.
"""

from __future__ import annotations

from collections.abc import Callable
from types import MappingProxyType
from typing import Any, Final, assert_never

from stepper.craft.stitches import Kind, stitch
from stepper.language.fault_words import LADDERED, ask_again, ask_stretch, finish_round, look_words
from stepper.language.measures import plural
from stepper.language.phrasing import said_items
from stepper.language.places import place_name, round_word, sentence_case
from stepper.plan.model import Plan, Round, Run
from stepper.plan.under_way.absorb import Mend, made_good
from stepper.session import effects
from stepper.session.effects import Effect
from stepper.session.events import Remedied
from stepper.session.fault.respond import TellOtherWays
from stepper.session.fault.ways import Remedy, RemedyKind
from stepper.session.state import Position

RUNS_TOLD: Final = 4
"""Most kinds of stitches read out when stitches are undone; beyond that, only how many come off. Source:
chosen here."""
OTHERS_TOLD: Final = 3
"""Most other ways told; more cannot be compared by ear."""


def _remedies(effect: effects.TellRemedies, plan: Plan) -> str:
    if not effect.remedies:
        return "Look for it by eye. When you see it, say: mistake in round, and the number."
    first, *others = effect.remedies
    said = sentence_case(name_remedy(first, plan))
    if (not first.kind.settles and first.kind is not RemedyKind.FINISH) or first.kind is RemedyKind.LADDER:
        return f"{said}."
    more = ", or: what else" if others else ""
    return f"{said}. Say: take remedy 1{more}."


def _other_ways(effect: TellOtherWays, plan: Plan) -> str:
    others = effect.remedies[1:]
    if not others:
        return "That is the only way now."
    listed = "; ".join(
        f"{at}, {_briefly(each, plan)}" for at, each in enumerate(others[:OTHERS_TOLD], start=2)
    )
    exact = effect.exact_at
    kept = (each.mend for each in others[:OTHERS_TOLD] if each.kind is RemedyKind.ACCEPT)
    within = any(mend is not None and mend.index == exact for mend in kept)
    by = f" It has to be right before {place_name(plan.rounds[exact])}." if exact and not within else ""
    return f"{sentence_case(listed)}.{by}"


def name_remedy(remedy: Remedy, plan: Plan) -> str:
    """Say a remedy as the first one is said."""
    match remedy.kind:
        case RemedyKind.LOOK:
            assert remedy.look is not None
            return f"look first: {look_words(*remedy.look, plan)}".rstrip(".")
        case RemedyKind.RECOUNT:
            return ask_again(remedy.expect, plain=remedy.plain)
        case RemedyKind.NARROW:
            assert remedy.stretch is not None
            return f"{ask_stretch(remedy.stretch, plan)}. Say: there are, and the number"
        case RemedyKind.FINISH:
            return finish_round(remedy.expect, by_eye=remedy.by_eye)
        case RemedyKind.LADDER:
            return f"catch the loop first: {LADDERED}. Then say: it is caught"
        case RemedyKind.RESPACE:
            return _respaced(remedy, plan)
        case RemedyKind.PLAIN:
            return f"{_mended(_made_good_by(remedy), plan)}; {_shows(remedy)}"
        case RemedyKind.ACCEPT:
            return _accepted(remedy, plan)
        case RemedyKind.DROP:
            return "drop down one column to the fault and work it up again"
        case RemedyKind.TINK | RemedyKind.RIP:
            return f"{_taken_back(remedy, plan)}, {_minutes(remedy)}"
    assert_never(remedy.kind)


def note_remedy(event: Remedied) -> str:
    """Return how a fault was mended as the notes of the garment say it, to be put behind what was off."""
    side = "fewer" if event.difference > 0 else "more"
    made_good = f"made good by working {abs(event.difference)} {side}"
    match event.remedy:
        case RemedyKind.RECOUNT:
            return ", to be counted again"
        case RemedyKind.NARROW:
            return ", to be counted between landmarks"
        case RemedyKind.FINISH:
            return ", to be counted at the end of the round"
        case RemedyKind.LOOK:
            return ", to be looked at"
        case RemedyKind.LADDER:
            return ", a dropped stitch caught and laddered up"
        case RemedyKind.RESPACE:
            return ", the rest of the round spaced anew"
        case RemedyKind.ACCEPT:
            return f" accepted; {made_good}"
        case RemedyKind.PLAIN:
            return f", {made_good}"
        case RemedyKind.DROP:
            return ", mended by dropping a stitch down to the fault"
        case RemedyKind.TINK:
            return ", unknit back to the fault"
        case RemedyKind.RIP:
            return ", ripped back"
    assert_never(event.remedy)


def _briefly(remedy: Remedy, plan: Plan) -> str:
    """Say a remedy in a few words, with what it costs."""
    match remedy.kind:
        case RemedyKind.PLAIN:
            return _mended(_made_good_by(remedy), plan)
        case RemedyKind.ACCEPT:
            return _accepted(remedy, plan).partition("; ")[0]
        case RemedyKind.NARROW:
            return "count part by part"
        case RemedyKind.FINISH:
            return "finish the round and count then"
    return name_remedy(remedy, plan)


def _minutes(remedy: Remedy) -> str:
    return f"about {plural(max(1, round(remedy.minutes)), 'minute')}"


def _taken_back(remedy: Remedy, plan: Plan) -> str:
    """Say what comes off: stitches while they are few, else rounds."""
    one_by_one = remedy.kind is RemedyKind.TINK
    if one_by_one or not remedy.rounds:
        many = plural(remedy.undone, "stitch", "stitches")
    else:
        many = plural(remedy.rounds, "round")
    to = "the lifeline, " if remedy.lifeline else ""
    return f"{'undo' if one_by_one else 'rip'} {many} back to {to}{_at(remedy.place, plan)}"


def _respaced(remedy: Remedy, plan: Plan) -> str:
    assert remedy.respacing is not None
    round_ = plan.rounds[remedy.place.index]
    many = len(remedy.respacing.places)
    made = f"{remedy.made} of {many} are made, {many - remedy.made} to come"
    return f"space the rest of this {round_word(round_)} anew: {made}"


def _shows(remedy: Remedy) -> str:
    """Say where a mend will show. Source: common practice: a stitch made one round above its place is not
    found again in plain fabric, one made rounds above is a small step in its line."""
    if not remedy.above:
        return "it hardly shows"
    return f"a small step shows, {plural(remedy.above + 1, 'round')} up"


def _made_good_by(way: Remedy | effects.TellRemedied) -> Mend:
    """Return how a count that is kept is made good; asked only of ways that have it."""
    assert way.mend is not None, way
    return way.mend


def _accepted(way: Remedy, plan: Plan) -> str:
    """Say where a count that is kept is made good, by the plan in which it is not yet."""
    mend = _made_good_by(way)
    round_ = plan.rounds[mend.index] if mend.index < len(plan.rounds) else None
    good = made_good(round_, mend) if round_ is not None and round_.before else None
    if round_ is None or good is None:
        last = plan.rounds[mend.index - 1]
        return f"go on, with {last.before - mend.change} stitches to the end of {last.section}"
    if not mend.spread:
        wait = "" if way.place == Position(index=mend.index) else "go on, then "
        return f"{wait}{_mended(mend, plan)}; {_shows(way)}"
    was, now = len(round_.shaping), len(good.shaping)
    if not now:
        return f"go on, and work {_name(round_)} without {_changes_of(round_)}"
    instead = f"{now} {_changes_of(round_)} instead of {was}"
    return f"go on, and the shaping takes it up: {_name(round_)} with {instead}"


def _changes_of(round_: Round) -> str:
    up = any(stitch(run.stitch).kind is Kind.INCREASE for run in round_.runs)
    return "increases" if up else "decreases"


def _name(round_: Round) -> str:
    return f"{round_.section} {round_word(round_)} {round_.number}"


def _at(place: Position, plan: Plan) -> str:
    where = _name(plan.rounds[place.index])
    return f"stitch {place.stitch} of {where}" if place.stitch else f"the beginning of {where}"


def _mended(mend: Mend, plan: Plan) -> str:
    """Say what to work where: "make one after stitch 50 of yoke round 3"."""
    round_ = plan.rounds[min(mend.index, len(plan.rounds) - 1)]
    how = "make one" if mend.change > 0 else "work two together"
    times = "" if abs(mend.change) == 1 else f" {plural(abs(mend.change), 'time')}"
    if abs(mend.change) == 2:
        times = " twice"
    where = f"after stitch {mend.stitch} of" if mend.stitch else "first in"
    return f"{how}{times} {where} {_name(round_)}"


def _remedied(effect: effects.TellRemedied, plan: Plan) -> str:
    match effect.remedy:
        case RemedyKind.LOOK | RemedyKind.RECOUNT | RemedyKind.NARROW | RemedyKind.FINISH:
            return "Nothing is changed."
        case RemedyKind.LADDER:
            return f"{sentence_case(LADDERED)}. Then count: {effect.expect} expected."
        case RemedyKind.RESPACE:
            return "The rest is spaced anew."
        case RemedyKind.TINK:
            return f"Undo {_undone(effect.undone, effect.stitches, effect.place, plan)}. Then count."
        case RemedyKind.RIP:
            return f"Rip back to {_at(effect.place, plan)}, pick up the stitches, then count."
        case RemedyKind.DROP:
            return "Drop down one column to the fault and work it up again, then count."
        case RemedyKind.PLAIN | RemedyKind.ACCEPT:
            return _gone_on(_made_good_by(effect), plan)
    assert_never(effect.remedy)


def _gone_on(mend: Mend, plan: Plan) -> str:
    if mend.index >= len(plan.rounds) or not plan.rounds[mend.index].before:
        return "Go on; all that follows is said for the stitches you have."
    if mend.spread:
        round_ = plan.rounds[mend.index]
        return f"Go on; {_name(round_)} then has {len(round_.shaping)} {_changes_of(round_)}, spread anew."
    return f"{sentence_case(_mended(mend, plan))}; I will say so there."


def _undone(runs: tuple[Run, ...], stitches: int, place: Position, plan: Plan) -> str:
    """Say what comes off, the last first; if it is much, how much."""
    if not runs:
        return "nothing"
    if len(runs) > RUNS_TOLD:
        many = plural(stitches, "stitch", "stitches")
        return f"{many}, the last first, back to {_at(place, plan)}"
    return f"the last first: {said_items(runs, plan.rounds[place.index], plan)}"


def _tinked(effect: effects.TellTinked, plan: Plan) -> str:
    stitches = sum(run.progress for run in effect.runs)
    undone = _undone(effect.runs, stitches, effect.place, plan)
    return f"Undo {undone}. Then you are at {_at(effect.place, plan)}."


LINES: Final[MappingProxyType[type[Effect], Callable[[Any, Plan], str]]] = MappingProxyType(
    {
        effects.TellRemedies: _remedies,
        TellOtherWays: _other_ways,
        effects.TellRemedied: _remedied,
        effects.TellTinked: _tinked,
    }
)
"""The words of each effect."""
