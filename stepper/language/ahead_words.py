"""Words for what is due on the way: things to have at hand, and counts that run side by side. No I/O."""

from __future__ import annotations

from collections.abc import Callable
from types import MappingProxyType
from typing import Any, Final

from stepper.craft.figures import format_number, list_words
from stepper.craft.stitches import Kind
from stepper.language.measures import plural
from stepper.language.numbers import ordinal_words
from stepper.language.places import round_word
from stepper.plan.model import Plan
from stepper.plan.yarn.skein_ends import SkeinEnd
from stepper.session.due.next_skein import GetSkein
from stepper.session.due.to_fetch import GetReady
from stepper.session.effects import Effect
from stepper.session.questions.about_series import Series, TellDueNow, TellSeries

_KINDS: Final = {Kind.INCREASE: "increase", Kind.DECREASE: "decrease", Kind.CABLE: "cable"}


def _ready(effect: GetReady, plan: Plan) -> str:
    ahead = effect.index - effect.here
    when = f"In the next {round_word(plan.rounds[effect.index])}"
    if ahead > 1:  # most of them are such as the one in hand
        when = f"In {plural(ahead, round_word(plan.rounds[effect.here]))}"
    return f"{when} you need {list_words(name_things_needed(effect, plan))}."


def name_things_needed(effect: GetReady, plan: Plan) -> list[str]:
    """Name what has to be at hand: "the 3.5 mm needle", "a holder"."""
    things = []
    if effect.needle_mm is not None:
        things.append(f"the {format_number(effect.needle_mm, 2)} mm needle")
    if effect.holder:
        things.append("a holder")
    if effect.markers:
        things.append("a marker" if effect.markers == 1 else "markers")
    return [*things, *(plan.yarns.get(yarn, yarn) for yarn in effect.yarns)]


def _skein(effect: GetSkein, plan: Plan) -> str:
    """Say about when a skein ends, and what to do about the last one."""
    end = effect.end
    ahead, word = end.likely - effect.here, round_word(plan.rounds[effect.here])
    when = f"In about {plural(ahead, word)}" if ahead > 1 else f"In about a {word}"
    if end.more:
        return f"{when} you need {name_skein(end, plan)}."
    yarn = plan.yarns.get(end.yarn, end.yarn)
    return f"{when} the last skein of {yarn} may end. Weigh it and say: {yarn} weighs, and the grams."


def name_skein(end: SkeinEnd, plan: Plan) -> str:
    """Name what is needed where a skein ends: "another skein of chalk"."""
    yarn = plan.yarns.get(end.yarn, end.yarn)
    return f"another skein of {yarn}" if end.more else f"more {yarn} than there is"


def _series(effect: TellSeries, plan: Plan) -> str:
    due = [_due(each, effect.here, plan) for each in effect.series]
    return f"Side by side: {', '.join(due)}."


def _due(series: Series, here: int, plan: Plan) -> str:
    ahead, word = series.index - here, round_word(plan.rounds[series.index])
    what = f"{_KINDS[series.kind]} {series.where.value}".strip()
    return f"{what} in {plural(ahead, word)}" if ahead else f"{what} in this {word}"


def _due_now(effect: TellDueNow, plan: Plan) -> str:
    """Name each count and how far it is: "The third of eight decreases at the end"."""
    said = list_words([_which(each) for each in effect.series])
    return f"{said[:1].upper()}{said[1:]}."


def _which(series: Series) -> str:
    what = f"{_KINDS[series.kind]}s {series.where.value}".strip()
    which = "last" if series.number == series.of else ordinal_words(series.number)
    return f"the {which} of {series.of} {what}"


LINES: Final[MappingProxyType[type[Effect], Callable[[Any, Plan], str]]] = MappingProxyType(
    {GetReady: _ready, GetSkein: _skein, TellDueNow: _due_now, TellSeries: _series}
)
"""The words of each effect."""
