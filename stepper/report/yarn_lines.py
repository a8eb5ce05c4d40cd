"""The yarn table in words: what to buy, what it is made of, how sure it is, and where it runs short. Pure."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from types import MappingProxyType
from typing import Final

from stepper.craft.skeins import OUNCE_G, YARD_M, Skein, skeins_to_buy
from stepper.language.measures import plural, weight
from stepper.language.places import round_word
from stepper.plan.materials import Loop
from stepper.plan.model import Plan, Round
from stepper.plan.yarn.yarn_left import Forecast
from stepper.report.leftovers import Leftover
from stepper.report.yarn import Buying, Quantity, YarnRow

_WHY: Final[Mapping[str, str]] = MappingProxyType(
    {
        "hand": "the length of a loop",
        "kinds": "yarn overs, cables and the like",
        "ribbing": "ribbing, if its gauge was counted drawn in",
        "floats": "slack in the floats",
        "edges": "cast-on and bind-off, by how they are worked",
        "ends": "ends to weave in",
    }
)
_NAME: Final = 35
_SKEIN_HEAD: Final = f"  {'skeins to buy':<{_NAME}}{'to be sure':>12}{'likely':>8}{'left over':>20}"


def yarn_lines(
    plan: Plan, rows: tuple[YarnRow, ...], remnants: Mapping[str, tuple[Leftover, ...]]
) -> Iterator[str]:
    """Write the whole table.

    Args:
        plan: The plan as it is knitted.
        rows: Every yarn.
        remnants: What is left of it from other garments, by the key of the yarn.
    """
    yield f"{plan.title}: yarn"
    if not rows:
        yield "No gauge is known, so no length of yarn can be worked out. Add one under `gauge`."
        return
    for row in rows:
        yield ""
        yield from _table(row, plan.units)
        yield ""
        yield from _to_buy(row, plan)
        for sentence in _sentences(row, plan, remnants.get(row.key, ())):
            yield f"  {sentence}"
    yield ""
    yield from _why(plan, rows)


def yarn_length(metres: float, units: str) -> str:
    """Return a length of yarn in words: in metres, or in yards if the file is in inches."""
    value, unit = (metres / YARD_M, "yd") if units == "in" else (metres, "m")
    return f"{value:.0f} {unit}" if value >= 9.95 or not value else f"{value:.1f} {unit}"


def _table(row: YarnRow, units: str) -> Iterator[str]:
    colour = f"  {row.colour}" if row.colour else ""
    head = f"{row.name} ({row.key}){colour}"
    yield f"{head:<{_NAME + 2}}{'likely':>8}{'between':>18}{'weight':>14}"
    for each in row.sections:
        yield _quantity(each.section + (", twice" if each.times > 1 else ""), each.quantity, units)
    yield _quantity("in all", row.quantity, units)
    parts = ", ".join(f"{name} {yarn_length(metres, units)}" for name, metres in row.parts_m.items())
    yield f"  of which {parts}"


def _quantity(name: str, quantity: Quantity, units: str) -> str:
    likely = yarn_length(quantity.likely_m, units)
    # The unit is said once; both ends of the range have the same.
    low, high = yarn_length(quantity.low_m, units), yarn_length(quantity.high_m, units)
    between = f"{low.split()[0]} to {high}"
    grams = "" if quantity.likely_g is None else f"{_grams(quantity.likely_g)}"
    return f"  {name:<{_NAME}}{likely:>8}{between:>18}{grams:>14}".rstrip()


def _grams(grams: float) -> str:
    return f"{grams:.0f} g" if grams >= 9.95 else weight(grams)


def _to_buy(row: YarnRow, plan: Plan) -> Iterator[str]:
    if not row.buying:
        yield f"  The file names no skein of {row.name}, so there is no weight and nothing to buy by:"
        yield "  write skein: {grams: 50, metres: 175} beside its name."
        return
    yield _SKEIN_HEAD
    for each in row.buying:
        yield _buying(each, plan.units)


def _buying(each: Buying, units: str) -> str:
    ounces = f" ({each.grams / OUNCE_G:.2g} oz)" if units == "in" else ""
    own = " (the file)" if each.own else ""
    name = f"{_grams(each.grams)}{ounces}, {yarn_length(each.metres, units)}{own}"
    over = f"{yarn_length(each.over_m, units)}, {_grams(each.over_g)}"
    return f"  {name:<{_NAME}}{each.skeins:>12}{each.likely_skeins:>8}{over:>20}"


def _sentences(row: YarnRow, plan: Plan, remnants: tuple[Leftover, ...]) -> Iterator[str]:
    stock = plan.materials.stocks.get(row.key)
    if row.few:
        much = f" ({_grams(row.quantity.high_g)})" if row.quantity.high_g is not None else ""
        yield f"Only a few metres: a remnant of {yarn_length(row.quantity.high_m, plan.units)}{much} will do."
    for entry in remnants:
        enough = "enough" if entry.metres >= row.quantity.high_m else "not enough"
        yield f"{_grams(entry.grams)} of {entry.yarn} are left from {entry.garment}: {enough}."
    if stock is not None and row.forecast is not None:
        yield from forecast_sentences(row.forecast, plan, stock.skein, row.bought)


def forecast_sentences(found: Forecast, plan: Plan, skein: Skein, bought: float | None) -> Iterator[str]:
    """Write whether a yarn lasts: what there is, where it runs out, what to buy and by when."""
    units = plan.units
    if found.left_m is None:
        yield "The file does not say how much is bought."
        return
    left = f"{yarn_length(found.left_m, units)}, {_grams(skein.grams_of(found.left_m))}"
    if found.weighed:
        beside = f" with {plural(found.beside, 'whole skein')} beside the ball" if found.beside else ""
        yield f"Weighed: {left} left{beside}. {_factor(found.factor)}"
        low, high = yarn_length(found.rest_low_m, units).split()[0], yarn_length(found.rest_high_m, units)
        yield f"Still needed: {yarn_length(found.rest_m, units)} ({low} to {high})."
        if found.doubtful:
            yield "That weighing can be read in more than one way, or fits none well: weigh all that is left."
    else:
        yield f"Bought: {bought:g} ({left})."
    over = found.over_m or 0.0
    if found.out_soonest is None:
        yield f"It lasts; {yarn_length(over, units)}, {_grams(skein.grams_of(over))}, are likely left over."
        return
    yield from _shortage(found, plan)
    more = skeins_to_buy(max(0.0, -over), skein.metres)
    likely = "" if found.buy == more else f" to be sure; {more} if it goes as is likely"
    yield f"Buy {plural(found.buy, 'more skein')} before then{likely}."


def _shortage(found: Forecast, plan: Plan) -> Iterator[str]:
    assert found.out_soonest is not None  # the caller has looked
    soonest = _place(plan.rounds[found.out_soonest])
    if found.out is None:
        yield f"It likely lasts, but may run out in {soonest}."
        return
    likely = _place(plan.rounds[found.out])
    yield f"It does not last: it likely runs out in {likely}, at the soonest in {soonest}."


def _place(round_: Round) -> str:
    return f"{round_.section}, {round_word(round_)} {round_.numbered}"


def _factor(factor: float) -> str:
    percent = round(100 * (factor - 1))
    if not percent:
        return "Your knitting takes what the gauge says."
    return f"Your knitting takes {abs(percent)} % {'more' if percent > 0 else 'less'} than the gauge says."


def _why(plan: Plan, rows: tuple[YarnRow, ...]) -> Iterator[str]:
    yield "How sure this is"
    worked = {each.gauge for each in plan.rounds}
    for name, loop in plan.materials.loops.items():
        if name in worked or (loop is plan.materials.loop("") and "" in worked):
            yield f"  A loop of {name}: {loop.length.likely_mm:.1f} mm ({_loop_source(loop)})."
    yield (
        "  "
        "The length of a loop follows from the gauge by Munden's relation for plain knitting, in the state "
        "in which the gauge was counted, and may be off by a tenth or more in your hands. To be sure is the "
        "most it may take, by the handbooks' rule of area too, and at least 15 % over what is likely, for a "
        "swatch and to spare. Weigh a swatch "
        "(`swatch: {stitches: 30, rounds: 40, grams: 7}` beside its gauge), or what is left while you knit "
        f'("{rows[0].name} weighs forty grams"), and the figures become your own.'
    )
    for row in rows:
        causes = [
            f"{_WHY[cause]} {_span(row.less_m.get(cause, 0.0), row.more_m.get(cause, 0.0), plan.units)}"
            for cause in _WHY
            if row.less_m.get(cause, 0.0) >= 1 or row.more_m.get(cause, 0.0) >= 1
        ]
        if causes:
            yield f"  {row.name}: {'; '.join(causes)}."


def _loop_source(loop: Loop) -> str:
    if loop.weighed:
        return "by the weighed swatch"
    states = ("if counted as knitted", "if after blocking")
    if loop.both_states:
        states = ("as knitted", "as blocked")
    by_state = f"{loop.as_knitted_mm:.1f} {states[0]}, {loop.washed_mm:.1f} {states[1]}"
    return f"{by_state}; {loop.by_rule_mm:.1f} by the rule of area"


def _span(less: float, more: float, units: str) -> str:
    """Return how much less and more in words; anything under half a metre is left out."""
    down, up = f"-{yarn_length(less, units)}", f"+{yarn_length(more, units)}"
    if less < 0.5:
        return up
    return down if more < 0.5 else f"{down.split()[0]} to {up}"
