"""How a line was read, round by round and stitch by stitch, for a printed count that differs. No I/O."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import groupby

from stepper.plan.drafts import DraftRound
from stepper.plan.model import Item, Run
from stepper.plan.stitches.abbreviate import instruction

_MOST_ROUNDS = 5
"""Most different rounds that are told; if there are more, the first two and the last two."""
_MOST_ITEMS = 14


def read_as(drafts: Sequence[DraftRound]) -> str:
    """Say how the rounds of a line were read.

    Args:
        drafts: The rounds worked since the line began.

    Returns:
        `k1, k2tog (2 to 1), k48, ssk (2 to 1), k1: 54 stitches to 52`; like rounds together; empty for no
        rounds.
    """
    alike = [list(group) for _, group in groupby(drafts, key=_looks)]
    if len(alike) <= _MOST_ROUNDS:
        return "; then ".join(map(_told, alike))
    # Only what is told is worded: a long line with many counts would be worded as often as it has counts.
    told = [*map(_told, alike[:2]), f"… {len(alike) - 4} more …", *map(_told, alike[-2:])]
    return "; then ".join(told)


def _looks(draft: DraftRound) -> tuple[object, ...]:
    change = draft.after - draft.before
    return (draft.phrase, change) if not change else (draft.phrase, draft.before, draft.after)


def _told(drafts: list[DraftRound]) -> str:
    first = drafts[0]
    often = f"{len(drafts)} rounds of " if len(drafts) > 1 else ""
    if first.before == first.after:
        short = len(first.phrase) <= _MOST_ITEMS
        words = instruction(first.phrase) if short else "stitches that keep the count"
        return f"{often}{words}: {first.before} stitches"
    return f"{often}{_items(first.phrase)}: {first.before} stitches to {first.after}"


def _items(phrase: tuple[Item, ...]) -> str:
    """Write the items of a round, each with its effect on the count if it has one."""
    if len(phrase) <= _MOST_ITEMS:
        return ", ".join(map(_item, phrase))
    first, left = phrase[: _MOST_ITEMS - 2], len(phrase) - _MOST_ITEMS + 1
    return ", ".join([*map(_item, first), f"… {left} more …", _item(phrase[-1])])


def _item(item: Item) -> str:
    """Write one item; `instruction` writes a round, so a single item must be kept from saying just "knit"."""
    if isinstance(item, Run):
        words = f"{item.stitch}{item.times}" if item.stitch in ("k", "p") else instruction((item,))
    else:
        inside = ", ".join(_plain(inner) for inner in item.items)
        words = f"({inside}) {item.times} times" if item.times > 1 else inside
    return words if item.uses == item.leaves else f"{words} ({item.uses} to {item.leaves})"


def _plain(item: Item) -> str:
    return _item(item).split(" (")[0] if isinstance(item, Run) else _item(item)
