"""Say a round of even changes, as the phrases of `stepper.craft.even.phrases` are said. No I/O.

Also say in a sentence what each manner of spacing does to the look.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from stepper.craft.even.manners import MOST_GAPS_OFF, Manner
from stepper.craft.even.phrases import Part, Plain, Repeat, SpacedStretch, speak_phrase
from stepper.craft.stitches import Kind, stitch
from stepper.plan.model import Item, Round, Run

LOOKS = {
    Manner.MIXED: "wider and narrower gaps alternate all the way, so it looks the same everywhere.",
    Manner.SAYABLE: "wider and narrower gaps stand in groups, but no change is more than "
    f"{MOST_GAPS_OFF} gaps from its even place.",
    Manner.RUNS: "all wider gaps stand in one stretch and all narrower ones in the other, so the work "
    "is fuller in one of them.",
}
"""What each manner does to the look of a round."""
NAMES = {Manner.MIXED: "evenly mixed", Manner.SAYABLE: "sayable", Manner.RUNS: "in two runs"}
"""What each manner is called."""

_PLAIN = ("k", "p")


def said_evenly(items: Sequence[Item], round_: Round) -> str | None:
    """Say some items of a round of even changes, with the numbers in figures.

    Args:
        items: The whole round or a part of it.
        round_: The round they are from.

    Returns:
        None if the round is not one of even changes: of more than one kind, or with other stitches among
        them.
    """
    codes = {run.stitch for run in round_.runs}
    changes = [code for code in codes if stitch(code).kind in (Kind.INCREASE, Kind.DECREASE)]
    plain = [code for code in codes if code in _PLAIN]
    if len(changes) != 1 or len(plain) > 1 or len(codes) != 1 + len(plain):
        return None
    if len({run.yarn for run in round_.runs}) != 1:
        return None
    return speak_phrase(_phrase(items, changes[0]), changes[0], plain[0] if plain else "k")


def _phrase(items: Iterable[Item], change: str) -> tuple[Part, ...]:
    """Read stitches as a phrase of plain stretches and changes."""
    parts: list[Part] = []
    gap = 0
    for item in _opened(items):
        if isinstance(item, Run) and item.stitch != change:
            gap += item.times
            continue
        if isinstance(item, Run):
            first = 1 if gap else item.times
            parts.append(SpacedStretch(gap, first))
            if item.times > first:
                parts.append(SpacedStretch(0, item.times - first))
        else:
            if gap:
                parts.append(Plain(gap))
            inside = _phrase(item.items, change)
            alone = inside[0] if len(inside) == 1 else None
            if isinstance(alone, SpacedStretch) and alone.times == 1:
                parts.append(SpacedStretch(alone.gap, item.times))
            else:
                parts.append(Repeat(inside, item.times))
        gap = 0
    if gap:
        parts.append(Plain(gap))
    return tuple(parts)


def _opened(items: Iterable[Item]) -> Iterable[Item]:
    """Unwrap repeats that are worked once."""
    for item in items:
        if isinstance(item, Run) or item.times > 1:
            yield item
        else:
            yield from _opened(item.items)
