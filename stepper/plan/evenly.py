"""The evenly spaced increase or decrease round, the blended one above all. No I/O."""

from __future__ import annotations

from dataclasses import replace

from stepper.craft.spacing import decrease_positions, increase_positions
from stepper.craft.stitches import stitch
from stepper.plan.model import Group, Item, Run, flatten
from stepper.plan.run_repeats import condense, joined


def even_round(
    before: int, after: int, *, yarn: str, flat: bool, grouped: bool = True
) -> tuple[tuple[Item, ...], tuple[int, ...]]:
    """Spread an increase or decrease evenly over a round.

    Args:
        before: Stitches on the needles. Unit: stitches. Range: 1 and up.
        after: Stitches to reach. Range: half of `before` to twice `before`.
        yarn: Key of the yarn in hand.
        flat: Whether the row has ends, which then get half gaps.
        grouped: Whether to look for repeats; a count alone does not need them.

    Returns:
        The round, and the stitches of the old round worked before each change.

    Raises:
        ValueError: No such round is possible.
    """
    positions = even_places(before, after, flat=flat)
    return even_phrase(before, positions, uses_of(before, after), yarn=yarn, grouped=grouped), positions


def even_places(before: int, after: int, *, flat: bool) -> tuple[int, ...]:
    """Say after how many stitches of the old round each change comes.

    Raises:
        ValueError: No such round is possible.
    """
    if after > before:
        return increase_positions(before, after - before, flat=flat)
    return decrease_positions(before, before - after, flat=flat) if after < before else ()


def uses_of(before: int, after: int) -> int:
    """Return the stitches each change takes up: none for one made, two for two worked together."""
    return 0 if after >= before else 2


def even_phrase(
    before: int, positions: tuple[int, ...], uses: int, *, yarn: str, grouped: bool = True
) -> tuple[Item, ...]:
    """Write a round with its changes at places.

    Args:
        before: Stitches on the needles.
        positions: Stitches of the old round worked before each change.
        uses: As `uses_of` gives them.
        yarn: Key of the yarn in hand.
        grouped: Whether to look for repeats.
    """
    runs = _decreases(before, positions, yarn) if uses else _increases(before, positions, yarn)
    return condense(runs) if grouped else runs


def tallied(before: int, after: int, *, yarn: str) -> tuple[Item, ...]:
    """Write a round that has the right stitches in no particular order, where only its counts are wanted."""
    changes = abs(after - before)
    plain = before - uses_of(before, after) * changes
    runs = (Run("k", plain, yarn), Run("m1" if after > before else "k2tog", changes, yarn))
    return tuple(run for run in runs if run.times)


def purled(items: tuple[Item, ...]) -> tuple[Item, ...]:
    """Write a knitted round in purl stitches, each of which looks from behind as the knitted one does."""
    return tuple(
        replace(item, items=purled(item.items))
        if isinstance(item, Group)
        else replace(item, stitch=stitch(item.stitch).wrong_side or item.stitch)
        for item in items
    )


def in_fabric(items: tuple[Item, ...], cells: tuple[tuple[str, str], ...]) -> tuple[Run, ...]:
    """Write a round in the stitches of the fabric, its changes where they are.

    Args:
        items: The round, knitted.
        cells: How each stitch of the old round is worked in the fabric: a stitch, and a yarn or none.
            Stitches behind the last are knitted.
    """
    made: list[Run] = []
    at = 0
    for run in flatten(items):
        each = run.uses // run.times if run.times else 0
        if run.stitch != "k":
            made.append(run)
            at += run.uses
            continue
        for number in range(run.times):
            code, yarn = cells[at + number] if at + number < len(cells) else ("k", "")
            made.append(Run(code, 1, yarn or run.yarn))
        at += run.times * each
    return joined(made)


def _increases(before: int, positions: tuple[int, ...], yarn: str) -> tuple[Run, ...]:
    runs: list[Run] = []
    worked = 0
    for position in positions:
        if position > worked:
            runs.append(Run("k", position - worked, yarn))
        runs.append(Run("m1", 1, yarn))
        worked = position
    if before > worked:
        runs.append(Run("k", before - worked, yarn))
    return tuple(runs)


def _decreases(before: int, positions: tuple[int, ...], yarn: str) -> tuple[Run, ...]:
    runs: list[Run] = []
    worked = 0
    for position in positions:
        if position > worked:
            runs.append(Run("k", position - worked, yarn))
        runs.append(Run("k2tog", 1, yarn))
        worked = position + 2
    if before > worked:
        runs.append(Run("k", before - worked, yarn))
    return tuple(runs)
