"""A knitter for tests: works rounds stitch by stitch into a fabric, and makes one mistake where she is told.

She knows nothing of how mistakes are looked for. The fabric is a row of columns; each remembers what made it.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from stepper.craft.stitches import Kind, stitch
from stepper.plan.model import Group, Item, Round, Run, flatten


@dataclass(frozen=True)
class Row:
    """What a round really left on the needles, and what can be seen of it."""

    made: tuple[str, ...]
    """For each stitch on the needles, the code that made it."""
    changes: int
    """Increases and decreases to be seen in it."""
    left: int
    """Stitches left over when the instruction ended; below 0 where they ran out before."""
    loops: int
    """Loose loops hanging below."""

    @property
    def count(self) -> int:
        """Stitches on the needles."""
        return len(self.made)


def operations(items: tuple[Item, ...]) -> list[str]:
    """Spell items out, stitch by stitch."""
    return [run.stitch for run in flatten(items) for _ in range(run.times)]


def work(todo: list[str], before: int, *, dropped: int | None = None, slipped_off: int | None = None) -> Row:
    """Work what is to do over a number of stitches.

    Args:
        todo: Codes in order.
        before: Stitches on the left needle.
        dropped: Which operation is a plain stitch that falls off.
        slipped_off: Which operation is a yarn over that falls off before it is worked again.
    """
    made: list[str] = []
    left, changes, loops, wanted = before, 0, 0, sum(stitch(code).uses for code in todo)
    short = False
    for at, code in enumerate(todo):
        entry = stitch(code)
        short = short or entry.uses > left
        if entry.uses > left or (short and not entry.uses):
            continue
        left -= entry.uses
        if at in (dropped, slipped_off):
            loops += 1
            continue
        changes += entry.kind in (Kind.INCREASE, Kind.DECREASE)
        made += [code] * entry.leaves
    made += ["k"] * left  # what is left is knitted, as anyone would
    return Row(made=tuple(made), changes=changes, left=before - wanted, loops=loops)


def right(round_: Round) -> Row:
    """Work a round as it should be."""
    return work(operations(round_.phrase), round_.before)


def without(round_: Round, at: int) -> Row:
    """Leave out the change that is the `at`th operation: its stitches are worked plain."""
    todo = operations(round_.phrase)
    todo[at : at + 1] = ["k"] * stitch(todo[at]).uses
    return work(todo, round_.before)


def with_one_more(round_: Round, at: int, code: str) -> Row:
    """Work a change too many at the `at`th operation, in place of the plain stitches it needs."""
    todo = operations(round_.phrase)
    todo[at : at + stitch(code).uses] = [code]
    return work(todo, round_.before)


def repeated(round_: Round, group: int, times: int) -> Row:
    """Work the repeat that is the `group`th item so many times in place of what is written."""
    item = round_.phrase[group]
    assert isinstance(item, Group)
    items = list(round_.phrase)
    items[group : group + 1] = [replace(item, times=times)] if times else []
    return work(operations(tuple(items)), round_.before)


def mended(round_: Round, before: int, at: int, change: int) -> Row:
    """Work a round over a number of stitches, some more or fewer at a place in it.

    A stitch that is missing is made there and stands for a plain one of the round; one too many is worked
    together with a plain one. They are the next plain ones, or else those before.
    """
    todo, place = operations(round_.phrase), 0
    if len(set(todo)) == 1 and stitch(todo[0]).kind is Kind.PLAIN:
        todo = todo[:1] * (before + change)  # the same stitch all along
    spot = len(todo)
    for number, code in enumerate(todo):
        if place >= at:
            spot = number
            break
        place += stitch(code).progress
    order = [*range(spot, len(todo)), *range(spot - 1, -1, -1)]
    plain = [number for number in order if stitch(todo[number]).kind is Kind.PLAIN]
    for number in plain[: abs(change)]:
        todo[number] = "m1" if change > 0 else "k2tog"
    return work(todo, before)


def runs_reversed(runs: tuple[Run, ...]) -> list[str]:
    """Spell runs out in the order they are said."""
    return [run.stitch for run in runs for _ in range(run.times)]


def between(round_: Round, start: int, end: int) -> list[str]:
    """Spell out what is worked between two places of a round."""
    found, place = [], 0
    for code in operations(round_.phrase):
        if start <= place < end:
            found.append(code)
        place += stitch(code).progress
    return found
