"""Turn an evenly spread increase or decrease round into stitches, from a phrase or from places. No I/O."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from functools import lru_cache

from stepper.craft.even import spacing
from stepper.craft.even.manners import Manner, space_changes
from stepper.craft.even.ordered_gaps import write_gaps
from stepper.craft.even.phrases import KNIT_TOGETHER, MAKE_ONE, Part, Plain, Repeat, SpacedStretch
from stepper.craft.stitches import Kind, stitch
from stepper.plan.model import Group, Item, Run, flatten
from stepper.plan.stitches.run_repeats import condense, join_runs
from stepper.records import dataclass


@dataclass(frozen=True, slots=True, kw_only=True)
class Change:
    """What a round of even changes is worked in."""

    code: str
    """Code of the increase or decrease in the stitch table."""
    yarn: str
    plain: str = "k"
    """Code of the stitch between the changes."""

    @property
    def uses(self) -> int:
        """Stitches it takes up besides the gaps: none for one made, two for two worked together.

        A stitch worked into twice is the last of its gap.
        """
        uses = stitch(self.code).uses
        return uses if uses > 1 else 0

    @property
    def inside(self) -> int:
        """Stitches of its gap that it is worked into: 1 for `kfb`, else 0."""
        return stitch(self.code).uses - self.uses

    @property
    def adds(self) -> int:
        """Stitches that one of it adds; below 0 for a decrease."""
        return stitch(self.code).change

    @property
    def direction(self) -> int:
        """+1 for an increase, -1 for a decrease."""
        return 1 if stitch(self.code).kind is Kind.INCREASE else -1

    @property
    def word(self) -> str:
        """What it does: `increase` or `decrease`."""
        return "increase" if self.direction == 1 else "decrease"


def usual_change(before: int, after: int, yarn: str, worked_in: str = "") -> Change:
    """Return the change that an even round is worked in.

    Args:
        before: Stitches before it.
        after: Stitches behind it.
        yarn: Key of the yarn in hand.
        worked_in: Code of the stitch in which the page makes such a change; empty where it says none. One
            that goes the other way is not used.
    """
    code = MAKE_ONE if after >= before else KNIT_TOGETHER
    own = worked_in and stitch(worked_in).kind is stitch(code).kind
    return Change(code=worked_in if own else code, yarn=yarn)


@dataclass(frozen=True, slots=True, kw_only=True)
class EvenRound:
    """A round of even changes."""

    items: tuple[Item, ...]
    places: tuple[int, ...]
    """Stitches of the old round worked before each change."""


def even_places(before: int, number: int, change: Change, *, flat: bool, manner: Manner) -> tuple[int, ...]:
    """Return after how many old stitches each change comes; one worked into a stitch comes after it.

    Raises:
        ValueError: So many changes do not fit.
    """
    if manner is Manner.MIXED and number:  # in this manner the places do not depend on the phrase
        if change.uses:
            return spacing.decrease_positions(before, number, uses=change.uses, flat=flat)
        return spacing.increase_positions(before, number, flat=flat)
    return _spaced(before, number, change=_as_spaced(change), flat=flat, manner=manner).positions


def even_round(before: int, number: int, change: Change, *, flat: bool, manner: Manner) -> EvenRound:
    """Spread changes evenly over a round.

    Args:
        before: Stitches on the needles. Unit: stitches. Range: 1 and up.
        number: Changes to make. Range: 0 and up, as many as fit.
        change: What they are worked in.
        flat: Whether the row has ends, which then get half gaps.
        manner: How larger and smaller gaps follow each other.

    Raises:
        ValueError: So many changes do not fit.
    """
    made = _spaced(before, number, change=_as_spaced(change), flat=flat, manner=manner)
    return EvenRound(items=_items(made.phrase, change), places=_worked_before(made.positions, change))


def round_at(before: int, places: Sequence[int], change: Change) -> EvenRound:
    """Write a round with its changes at places, in the fewest words that keep their order.

    Args:
        before: Stitches on the needles.
        places: As `even_places` returns them.
        change: What the changes are worked in.
    """
    gaps, worked = [], 0
    for place in places:
        gaps.append(place - worked)
        worked = place + change.uses
    phrase: list[Part] = list(write_gaps(tuple(gaps), change.code))
    if before > worked:
        phrase.append(Plain(before - worked))
    return EvenRound(items=_items(phrase, change), places=_worked_before(places, change))


def shaping_places(runs: tuple[Run, ...]) -> tuple[int, ...]:
    """Return the stitches of the old round worked before each increase or decrease."""
    places: list[int] = []
    used = 0
    for run in runs:
        entry = stitch(run.stitch)
        if entry.shapes:
            places.extend(used + number * entry.uses for number in range(run.times))
        used += run.uses
    return tuple(places)


def carry_mark(mark: int, places: Sequence[int], change: str) -> int:
    """Return where a marker hangs after a round of changes: between the stitches it hung between.

    Args:
        mark: Stitches of the old round before it; one inside a decrease goes before that decrease.
        places: Stitches of the old round worked before each change.
        change: Code of the increase or decrease.
    """
    entry = stitch(change)
    inside = next((at for at in places if at < mark < at + entry.uses), mark)
    return inside + entry.change * sum(at + entry.uses <= mark for at in places)


def formerly_written(before: int, places: Sequence[int], change: Change) -> EvenRound:
    """Write a round as plans did before there were manners, to recognise the plan of a journal from then."""
    runs, worked = [], 0
    for place in places:
        if place > worked:
            runs.append(Run(change.plain, place - worked, change.yarn))
        runs.append(Run(change.code, 1, change.yarn))
        worked = place + change.uses
    if before > worked:
        runs.append(Run(change.plain, before - worked, change.yarn))
    return EvenRound(items=condense(tuple(runs)), places=tuple(places))


def tally_changes(before: int, number: int, change: Change) -> tuple[Item, ...]:
    """Write a round with the right stitches in no particular order, for when only its counts are wanted."""
    plain = before - stitch(change.code).uses * number
    runs = (Run(change.plain, plain, change.yarn), Run(change.code, number, change.yarn))
    return tuple(run for run in runs if run.times)


def purl_instead(items: tuple[Item, ...]) -> tuple[Item, ...]:
    """Write a knitted round in purl stitches, each of which looks from behind as the knitted one does."""
    return tuple(
        replace(item, items=purl_instead(item.items))
        if isinstance(item, Group)
        else replace(item, stitch=stitch(item.stitch).wrong_side or item.stitch)
        for item in items
    )


def in_fabric(items: tuple[Item, ...], cells: tuple[tuple[str, str], ...]) -> tuple[Run, ...]:
    """Write a round in the stitches of the fabric, its changes where they are.

    A change all of whose stitches are purls is purled, so that it does not stand out.

    Args:
        items: The round, knitted.
        cells: How each stitch of the old round is worked in the fabric: a stitch, and a yarn or none.
            Stitches after the last are knitted.

    Raises:
        ValueError: a cable crosses in the round.
    """
    made: list[Run] = []
    at = 0
    for run in flatten(items):
        each = stitch(run.stitch).uses
        if run.stitch != "k":
            for number in range(run.times):
                below = cells[at + number * each : at + (number + 1) * each]
                purled = run.stitch in _PURLED and {code for code, _ in below} == {"p"}
                made.append(Run(_PURLED[run.stitch] if purled else run.stitch, 1, run.yarn))
            at += run.uses
            continue
        for number in range(run.times):
            code, yarn = cells[at + number] if at + number < len(cells) else ("k", "")
            if "#" in code:
                raise ValueError("a cable crosses in this round; write it out")
            made.append(Run(code, 1, yarn or run.yarn))
        at += run.times * each
    return join_runs(made)


_PURLED = {"k2tog": "p2tog", "kfb": "pfb"}
"""What a change becomes where all of its stitches are purls."""

# Blends are tried by the hundred, and most of them meet in the same few counts.
_spaced = lru_cache(maxsize=2048)(space_changes)


def _as_spaced(change: Change) -> str:
    """Return a stitch that takes up as much of the round besides its gaps."""
    return MAKE_ONE if change.inside else change.code


def _worked_before(places: Sequence[int], change: Change) -> tuple[int, ...]:
    return tuple(place - change.inside for place in places)


def _items(phrase: Sequence[Part], change: Change) -> tuple[Item, ...]:
    """Turn a phrase into stitches."""
    items: list[Item] = []
    for part in phrase:
        if isinstance(part, Plain):
            items.append(Run(change.plain, part.stitches, change.yarn))
        elif isinstance(part, Repeat):
            items.append(Group(_items(part.parts, change), part.times))
        else:
            items += _stretch(part, change)
    return tuple(items)


def _stretch(part: SpacedStretch, change: Change) -> tuple[Item, ...]:
    gap = part.gap - change.inside
    if gap <= 0:
        return (Run(change.code, part.times, change.yarn),)
    pair = (Run(change.plain, gap, change.yarn), Run(change.code, 1, change.yarn))
    return (Group(pair, part.times),) if part.times > 1 else pair
