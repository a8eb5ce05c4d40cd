"""Whether a yarn lasts, in a sentence short enough to be heard. No I/O."""

from __future__ import annotations

from stepper.language.measures import plural
from stepper.language.places import round_word
from stepper.plan.model import Plan
from stepper.session.effects import TellLasting


def tell_yarn_left(effect: TellLasting, plan: Plan) -> str:
    """Say whether a yarn lasts, where it would run out, and what to buy by then unless in doubt."""
    beside = f"with {plural(effect.beside, 'whole skein')} beside it: " if effect.beside else ""
    line = f"{beside}{_lasts(effect, plan)}"
    if effect.doubtful:
        return (
            "I am not sure how to read that weight: weigh all that is left before you buy any. "
            f"As I read it, {line}"
        )
    return line[:1].upper() + line[1:]


def _lasts(effect: TellLasting, plan: Plan) -> str:
    it = plan.yarns.get(effect.yarn, effect.yarn) if effect.named else "it"
    if effect.out_soonest is None:
        return f"{it} lasts, with about {max(0, round(effect.over_g))} grams over."
    more = plural(effect.buy, "more skein")
    if effect.out is None:
        sure = "" if effect.doubtful else f" {more} would make sure."
        return f"{it} likely lasts, but may run out in {_where(effect.out_soonest, plan)}.{sure}"
    needed = "" if effect.doubtful else f" Buy {more}."
    return f"{it} does not last: it runs out about {_where(effect.out, plan)}.{needed}"


def _where(index: int, plan: Plan) -> str:
    round_ = plan.rounds[index]
    return f"{round_.section}, {round_word(round_)} {round_.number}"
