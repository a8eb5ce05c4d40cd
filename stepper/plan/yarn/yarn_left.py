"""Forecast whether a yarn lasts: what is left in the balls against what the rest takes. No I/O.

A weighing says two things at once: what is left and, given what was bought, how much her own knitting took so
far. The second corrects the estimate for all that is still to be knitted. The more that was knitted by then,
the more this counts: estimate and weighing are joined by the inverse of their squared uncertainties (the
usual weighted mean of two measurements).
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from stepper.craft.skeins import metres_to_be_sure, skeins_to_buy
from stepper.plan.materials import HAND_VARIES, SCALE_G, Stock
from stepper.plan.model import Plan
from stepper.plan.yarn.worked_twice import with_second_pieces
from stepper.plan.yarn.yarn_use import Amount, total, yarn_use
from stepper.records import dataclass

LABEL_OFF: Final = 0.05
"""How far a skein may be off its label. Common practice: a twentieth."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Weighing:
    """What was left of a yarn at a place."""

    index: int
    """Round in hand, from 0."""
    stitch: int
    """Stitches of it worked. Unit: stitches."""
    grams: float
    """Unit: g."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Forecast:
    """How a yarn lasts."""

    yarn: str
    left_m: float | None
    """Length available from the place of the weighing on; None if the file says too little."""
    rest_low_m: float
    """What is still needed from there on, at least. Unit: m."""
    rest_m: float
    """The same, likely."""
    rest_high_m: float
    """The same, at most."""
    factor: float = 1.0
    """What her knitting takes relative to the estimate from the gauge."""
    weighed: bool = False
    beside: int = 0
    """Whole skeins assumed to be there besides the ball that was weighed."""
    doubtful: bool = False
    """Whether another number of whole skeins would fit as well, or none does."""
    out: int | None = None
    """Index of the round in which it likely runs out; None if it lasts."""
    out_soonest: int | None = None
    """The same if it takes the most that it may."""
    buy: int = 0
    """Further skeins to buy so that it lasts even then."""

    @property
    def over_m(self) -> float | None:
        """What is likely left when the garment is finished; below 0 for what is missing. Unit: m."""
        return None if self.left_m is None else self.left_m - self.rest_m


def forecast(
    plan: Plan,
    yarn: str,
    weighing: Weighing | None = None,
    uses: Sequence[dict[str, Amount]] | None = None,
) -> Forecast | None:
    """Forecast whether a yarn lasts.

    Args:
        plan: The plan as it is knitted.
        yarn: Key of the yarn.
        weighing: The last one of this yarn, if there is one.
        uses: What each round takes, if at hand: from `yarn_use`, with the second pieces.

    Returns:
        None if the plan takes none of it, or nothing is known of its skein.
    """
    uses = with_second_pieces(plan, yarn_use(plan)) if uses is None else uses
    stock = plan.materials.stocks.get(yarn)
    amounts = [use.get(yarn, Amount()) for use in uses]
    if stock is None or not any(amount.parts for amount in amounts):
        return None
    if weighing is None:
        return _ahead(yarn, stock, _with_allowance(amounts), 0, stock.metres, 1.0, None)
    done, ahead = _parted(plan, amounts, weighing)
    reading = _reading(stock, weighing.grams, total(done))
    factor, off = _corrected(stock, reading.used_g, weighing.grams, total(done))
    left_m = stock.skein.metres_in(weighing.grams + reading.beside * stock.skein.grams)
    found = _ahead(yarn, stock, ahead, weighing.index, left_m, factor, off)
    return replace(found, factor=factor, weighed=True, beside=reading.beside, doubtful=reading.doubtful)


def _with_allowance(amounts: list[Amount]) -> list[Amount]:
    """Include the trade's allowance in the most it may take, as when buying to be on the safe side."""
    whole = total(amounts)
    short = metres_to_be_sure(whole.likely_mm, whole.high_mm) - whole.high_mm
    if short <= 0:
        return amounts
    share = short / whole.likely_mm
    return [
        replace(each, up={**each.up, "spare": each.likely_mm * share}) if each.parts else each
        for each in amounts
    ]


def _parted(plan: Plan, amounts: list[Amount], at: Weighing) -> tuple[list[Amount], list[Amount]]:
    """Divide what is knitted from what is to come, within the current round by its stitches."""
    if at.index >= len(amounts):
        return amounts, []
    share = min(1.0, at.stitch / (plan.rounds[at.index].progress or 1))
    done = [*amounts[: at.index], amounts[at.index].times(share)]
    return done, [amounts[at.index].times(1 - share), *amounts[at.index + 1 :]]


@dataclass(frozen=True, slots=True, kw_only=True)
class _Reading:
    """What a weighing is taken to mean."""

    beside: int
    doubtful: bool
    used_g: float | None
    """What was knitted with; None if the file does not say what was bought. Unit: g."""


def _reading(stock: Stock, grams: float, done: Amount) -> _Reading:
    """Decide whether all that is left was weighed, or only the current ball, with whole skeins besides.

    The knitter only says what the scale says; the reading nearest to the estimate is taken.
    """
    if stock.bought is None:
        return _Reading(beside=0, doubtful=False, used_g=None)
    each, bought_g = stock.skein.grams, stock.bought * stock.skein.grams
    low, likely, high = (
        stock.skein.grams_of(max(0.0, mm) / 1000) for mm in (done.low_mm, done.likely_mm, done.high_mm)
    )
    if grams > bought_g * (1 + LABEL_OFF):
        return _Reading(beside=0, doubtful=True, used_g=None)
    # More than a skein's weight cannot be one ball: then it is all there is.
    whole = grams <= each * (1 + LABEL_OFF)
    most = max(0, math.floor((bought_g - grams) / each + 1e-9)) if whole else 0
    used = {beside: max(0.0, bought_g - grams - beside * each) for beside in range(most + 1)}
    # The added gram keeps the ratio finite at the cast-on.
    best = min(used, key=lambda beside: (abs(math.log((used[beside] + 1) / (likely + 1))), beside))
    margin = LABEL_OFF * bought_g
    fitting = [beside for beside, value in used.items() if low - margin <= value <= high + margin]
    return _Reading(beside=best, doubtful=fitting != [best], used_g=used[best])


def _corrected(
    stock: Stock, used_g: float | None, left_g: float, done: Amount
) -> tuple[float, float | None]:
    """Join what was used with what was expected.

    Args:
        stock: The yarn.
        used_g: What was knitted with; None if it is not known. Unit: g.
        left_g: What was weighed of the same skeins. Unit: g.
        done: What was expected to be knitted with.

    Returns:
        Factor on the estimate, and how far it may be off, as a share; None if it says nothing.
    """
    expected_g = stock.skein.grams_of(max(0.0, done.likely_mm) / 1000)
    if not used_g or expected_g < 2 * SCALE_G:
        return 1.0, None
    hand = max(done.down.get("hand", 0.0), done.up.get("hand", 0.0)) / done.likely_mm
    # Early on, skeins a little lighter than their label look like a hand that takes twice the yarn. They are
    # so all at once, as damp or dry as the room; at most is taken for twice what they usually are.
    label = LABEL_OFF / 2 * (used_g + left_g) / expected_g
    scale = math.hypot(HAND_VARIES + 2 * SCALE_G / expected_g, label)
    by_scale, by_gauge = 1 / scale**2, 1 / max(hand, 0.01) ** 2
    factor = (by_scale * used_g / expected_g + by_gauge) / (by_scale + by_gauge)
    return factor, math.sqrt(1 / (by_scale + by_gauge))


def _ahead(
    yarn: str,
    stock: Stock,
    ahead: list[Amount],
    first: int,
    left_m: float | None,
    factor: float,
    off: float | None,
) -> Forecast:
    """Follow the yarn from a place until it is used up or the garment is done."""
    low = likely = high = 0.0
    out = soonest = None
    for index, amount in enumerate(ahead, start=first):
        less, about, more = _scaled(amount, factor, off)
        low, likely, high = low + less, likely + about, high + more
        if left_m is not None and out is None and likely > left_m:
            out = index
        if left_m is not None and soonest is None and high > left_m:
            soonest = index
    missing = 0.0 if left_m is None else max(0.0, high - left_m)
    return Forecast(
        yarn=yarn,
        left_m=left_m,
        rest_low_m=max(0.0, low),
        rest_m=likely,
        rest_high_m=high,
        out=out,
        out_soonest=soonest,
        buy=skeins_to_buy(missing, stock.skein.metres),
    )


def _scaled(amount: Amount, factor: float, off: float | None) -> tuple[float, float, float]:
    """Return an amount as low, likely and high. Unit: m."""
    likely = amount.likely_mm * factor
    if off is None:
        return amount.low_mm / 1000, likely / 1000, amount.high_mm / 1000
    less = sum(value for cause, value in amount.down.items() if cause != "hand")
    more = sum(value for cause, value in amount.up.items() if cause != "hand")
    return (likely * (1 - off) - less) / 1000, likely / 1000, (likely * (1 + off) + more) / 1000
