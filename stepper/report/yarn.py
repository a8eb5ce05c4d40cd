"""Work out how much of each yarn the garment takes, what to buy, what is left and where it runs short. Pure.

The rows are plain records, so that a terminal, a JSON document and a page for print show the same figures.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from stepper.craft.skeins import Skein, metres_to_be_sure, skeins_to_buy
from stepper.plan.model import Plan
from stepper.plan.yarn.worked_twice import second_pieces, with_second_pieces
from stepper.plan.yarn.yarn_left import Forecast, Weighing, forecast
from stepper.plan.yarn.yarn_use import CAUSES, PARTS, Amount, total, yarn_use
from stepper.records import dataclass
from stepper.session.events import Event, Weighed
from stepper.session.replay import list_standing

USUAL_SKEINS_G = (25.0, 50.0, 100.0)
"""Skeins as shops sell them. Common practice. Unit: g."""
SAME_SKEIN = 0.02
"""Share by which a skein may be off a usual one and still count as it: 3.5 oz, 100 g. Chosen here."""
FEW_METRES = 10.0
"""What counts as a few metres if nothing is known of the skein. Chosen here. Unit: m."""
FEW_OF_A_SKEIN = 0.25
"""Share of a skein up to which a remnant will do. Chosen here."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Quantity:
    """A length of yarn as low, likely and high, and its weight."""

    low_m: float
    """Unit: m."""
    likely_m: float
    """Unit: m."""
    high_m: float
    """Unit: m."""
    low_g: float | None = None
    """Unit: g; None if the file names no skein."""
    likely_g: float | None = None
    """Unit: g."""
    high_g: float | None = None
    """Unit: g."""


@dataclass(frozen=True, slots=True, kw_only=True)
class SectionRow:
    """What one section takes of one yarn."""

    section: str
    quantity: Quantity
    times: int = 1
    """How often it is worked: 2 for a sleeve that is printed once for both."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Buying:
    """What to buy of one size of skein."""

    grams: float
    """Weight of a skein. Unit: g."""
    metres: float
    """Length of a skein. Unit: m."""
    skeins: int
    """Skeins that last even if the knitting takes the most it may, including the trade's allowance."""
    likely_skeins: int
    """Skeins that last if the knitting takes what is likely."""
    over_m: float
    """What is likely left over of `skeins`. Unit: m."""
    over_g: float
    """The same. Unit: g."""
    own: bool = False
    """Whether it is the skein of the file."""


@dataclass(frozen=True, slots=True, kw_only=True)
class YarnRow:
    """Everything about one yarn."""

    key: str
    name: str
    colour: str | None
    """`#rrggbb`."""
    sections: tuple[SectionRow, ...]
    quantity: Quantity
    """In all."""
    parts_m: dict[str, float]
    """What it goes into: stitches, floats, edges, ends. Unit: m."""
    less_m: dict[str, float]
    """How much less it may be, by cause. Unit: m."""
    more_m: dict[str, float]
    """How much more it may be, by cause. Unit: m."""
    buying: tuple[Buying, ...]
    """The skein of the file first; empty if it names none."""
    bought: float | None
    """Skeins in the house."""
    forecast: Forecast | None
    """Whether it lasts; None without a skein."""
    few: bool
    """Whether it is only a few metres, so that a remnant will do."""


def list_yarns(
    plan: Plan, colours: dict[str, str | None] | None = None, events: Iterable[tuple[int, Event]] = ()
) -> tuple[YarnRow, ...]:
    """Work out every yarn that the garment uses, in the order of the file.

    Args:
        plan: The plan as it is knitted.
        colours: The colour of each yarn by its key, `#rrggbb`, if it has one.
        events: What happened, with its numbers and in order, for the weighings in it.
    """
    uses = yarn_use(plan)
    weighings = find_last_weighings(events)
    keys = list(dict.fromkeys((*plan.yarns, *(key for use in uses for key in use))))
    taken = [key for key in keys if any(key in use for use in uses)]
    return tuple(_row(plan, key, uses, (colours or {}).get(key), weighings.get(key)) for key in taken)


def find_last_weighings(events: Iterable[tuple[int, Event]]) -> dict[str, Weighing]:
    """Find the last weighing of each yarn that was not undone."""
    return {
        event.yarn: Weighing(index=event.place.index, stitch=event.place.stitch, grams=event.grams)
        for _, event in list_standing(events)
        if isinstance(event, Weighed)
    }


def work_out_buying(quantity: Quantity, skein: Skein, *, own: bool = False) -> Buying:
    """Work out how many skeins to buy and what is left over of them."""
    sure = skeins_to_buy(metres_to_be_sure(quantity.likely_m, quantity.high_m), skein.metres)
    over = sure * skein.metres - quantity.likely_m
    return Buying(
        grams=skein.grams,
        metres=skein.metres,
        skeins=sure,
        likely_skeins=skeins_to_buy(quantity.likely_m, skein.metres),
        over_m=over,
        over_g=skein.grams_of(over),
        own=own,
    )


def _row(
    plan: Plan,
    key: str,
    uses: Sequence[dict[str, Amount]],
    colour: str | None,
    weighing: Weighing | None,
) -> YarnRow:
    stock = plan.materials.stocks.get(key)
    skein = stock.skein if stock is not None else None
    whole = with_second_pieces(plan, uses)
    amount = total(use[key] for use in whole if key in use)
    quantity = _quantity(amount, skein)
    few = quantity.likely_m <= (
        FEW_METRES if skein is None else max(FEW_METRES, FEW_OF_A_SKEIN * skein.metres)
    )
    return YarnRow(
        key=key,
        name=plan.yarns.get(key, key),
        colour=colour,
        sections=tuple(_section_rows(plan, key, uses, skein)),
        quantity=quantity,
        parts_m={part: amount.parts[part] / 1000 for part in PARTS if amount.parts.get(part)},
        less_m={cause: amount.down[cause] / 1000 for cause in CAUSES if amount.down.get(cause)},
        more_m={cause: amount.up[cause] / 1000 for cause in CAUSES if amount.up.get(cause)},
        buying=_all_buying(quantity, skein),
        bought=stock.bought if stock is not None else None,
        forecast=forecast(plan, key, weighing, whole),
        few=few,
    )


def _section_rows(
    plan: Plan, key: str, uses: Sequence[dict[str, Amount]], skein: Skein | None
) -> Iterator[SectionRow]:
    again = {index for piece in second_pieces(plan) for index in piece}
    for name in plan.sections:
        own = [each.index for each in plan.rounds if each.section == name and key in uses[each.index]]
        if own:
            amounts = [uses[index][key] for index in (*own, *(index for index in own if index in again))]
            times = 2 if again.issuperset(own) else 1
            yield SectionRow(section=name, quantity=_quantity(total(amounts), skein), times=times)


def _all_buying(quantity: Quantity, skein: Skein | None) -> tuple[Buying, ...]:
    if skein is None:
        return ()
    others = [
        Skein(grams=grams, metres=skein.metres_in(grams))
        for grams in USUAL_SKEINS_G
        if abs(grams - skein.grams) > SAME_SKEIN * grams
    ]
    return (
        work_out_buying(quantity, skein, own=True),
        *(work_out_buying(quantity, other) for other in others),
    )


def _quantity(amount: Amount, skein: Skein | None) -> Quantity:
    low, likely, high = (mm / 1000 for mm in (amount.low_mm, amount.likely_mm, amount.high_mm))
    if skein is None:
        return Quantity(low_m=low, likely_m=likely, high_m=high)
    return Quantity(
        low_m=low,
        likely_m=likely,
        high_m=high,
        low_g=skein.grams_of(low),
        likely_g=skein.grams_of(likely),
        high_g=skein.grams_of(high),
    )
