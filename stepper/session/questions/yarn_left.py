"""What a weighing says about the rest of the garment: whether the yarn lasts, and where it would run out.

No I/O.
"""

from __future__ import annotations

from collections.abc import Iterator

from stepper.plan.model import Plan
from stepper.plan.yarn.yarn_left import Weighing, forecast
from stepper.session.effects import TellLasting


def forecast_ball(plan: Plan, yarn: str, weighing: Weighing, *, named: bool = False) -> Iterator[TellLasting]:
    """Forecast from the last weighing of a yarn; no effect if the file does not say how much a skein holds.

    Args:
        plan: The plan as it is knitted.
        yarn: Key of the yarn.
        weighing: The weighing.
        named: Whether the sentence has to name the yarn.
    """
    found = forecast(plan, yarn, weighing)
    stock = plan.materials.stocks.get(yarn)
    if found is None or stock is None or found.over_m is None:
        return
    yield TellLasting(
        yarn=yarn,
        named=named,
        beside=found.beside,
        doubtful=found.doubtful,
        over_g=found.over_m / stock.skein.metric_count,
        out=found.out,
        out_soonest=found.out_soonest,
        buy=found.buy,
    )
