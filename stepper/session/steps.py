"""A step: the part of a round that is read out at once and worked before the next cue.

A place is a round and a number of stitches worked in it; which part that is follows from the stitches. So the
knitter can change how much one step reads out in mid-round without losing her place. No part is without
stitches (except the only part of a round that has none), because two parts that begin at the same stitch
could not be told apart: markers and turns go with the part before them.

A part is read out in one stretch of speech, so it holds no more than can be kept in mind (`BREATH`) and takes
no longer than `stepper.session.speech_length` allows; what does is read phrase by phrase.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from enum import Enum
from functools import lru_cache
from itertools import chain, takewhile

from stepper.craft.pace_by_kind import KnittingKind
from stepper.craft.stitches import stitch
from stepper.plan.kinds import kind_of
from stepper.plan.model import Group, Item, Round, Run, flatten
from stepper.plan.stitches.run_repeats import join_runs
from stepper.records import dataclass
from stepper.session.speech_length import (
    MOST_S,
    REPEAT_S,
    YarnsSaid,
    seconds_of_items,
    seconds_of_later_lead,
    seconds_of_lead,
    yarns_said,
)

BREATH = 4
"""Most items read out in one breath; a repeat counts as its contents, a plain end not at all.
Source: about four things fit in working memory (Cowan 2001, "The magical number 4 in short-term memory"),
from memory."""


MARKS = ("pm", "sm")
"""Codes of what stands for a marker in a round. Both are common practice."""
_BOUNDARY = Run("sm", 1, "")
# Stands for a marker that the round does not name.


class By(Enum):
    """How much one step reads out."""

    ROUND = "round"
    """The whole round, in as few breaths as it takes."""
    REPEAT = "repeat"
    """One repeat of a chart or of what is between the asterisks."""
    COLOUR = "colour"
    """The stitches up to the next change of yarn."""
    MARKER = "marker"
    """The stitches up to the next marker."""
    GAP = "gap"
    """The stitches up to and with the next increase or decrease."""


RAGLAN_MARKERS = 2
"""From how many markers on a round shapes beside them. Chosen here: one marks the beginning of a round."""
TAUGHT_S = 3.0
"""From how long on a repeat that was read out is only called the same. Unit: s. Chosen here: a shorter one is
said as fast."""


class RoundSort(Enum):
    """Rounds that are read out alike: how much one step reads is chosen for each sort of its own."""

    COLOURS = "colours"
    """Of two yarns or more."""
    TEXTURE = "texture"
    """Lace and cables."""
    SHAPED = "shaped"
    """With increases or decreases of any sort; in journals of before, where they shared a choice."""
    RAGLAN = "raglan"
    """With increases or decreases beside markers."""
    EVEN = "even"
    """With increases or decreases spread evenly."""
    SHAPING = "shaping"
    """With other increases or decreases, as those of a sleeve."""
    PLAIN = "plain"


def sort_of(round_: Round) -> RoundSort:
    """Return which rounds a round is read out like."""
    kind = kind_of(round_)
    if kind is KnittingKind.COLOURWORK:
        return RoundSort.COLOURS
    if kind is KnittingKind.TEXTURE and not round_.evenly:
        return RoundSort.TEXTURE
    if not round_.shaping:
        return RoundSort.PLAIN
    if round_.evenly:
        return RoundSort.EVEN
    return RoundSort.RAGLAN if len(round_.markers) >= RAGLAN_MARKERS else RoundSort.SHAPING


@dataclass(frozen=True, slots=True, kw_only=True)
class StepPart:
    """One step of a round."""

    start: int = 0
    """Stitches of the round worked before it. Unit: stitches, as counted on the right needle."""
    end: int = 0
    """Stitches of the round worked after it; 0 before it is laid out."""
    items: tuple[Item, ...]
    """What is worked."""
    repeat: tuple[int, int] | None = None
    """Which repeat it is, from 1, and of how many; None if it is not one."""
    again: bool = False
    """Whether it is a repeat already read out, to be worked once more or, read in parts, several times."""
    change: bool = False
    """Whether `repeat` numbers the increase or decrease that ends it."""
    at_marker: bool = False
    """Whether it begins at a marker and goes to the next, which tells her the place."""
    begun: bool = False
    """Whether it is the rest of what `repeat` numbers, of which some stitches are worked."""


def cut_into_steps(round_: Round, by: By) -> tuple[StepPart, ...]:
    """Cut a round into its steps.

    Returns:
        At least one part. Always: the parts follow on from 0 to `round_.progress` without a gap.
    """
    if round_.words:  # where in the words a stitch stands is not known
        return (StepPart(start=0, end=round_.progress, items=round_.phrase),)
    markers = round_.markers if by is By.MARKER else ()
    return _cut(round_.phrase, by, round_.evenly, markers, round(seconds_of_lead(round_), 1))


@lru_cache(maxsize=256)
def _cut(
    phrase: tuple[Item, ...], by: By, evenly: bool, markers: tuple[int, ...], lead_s: float
) -> tuple[StepPart, ...]:
    """Cut a phrase into its steps; cached, since it is needed several times for each cue."""
    later_s = seconds_of_later_lead(sum(item.progress for item in phrase))
    measure = _Measure(evenly, yarns_said(phrase), lead_s, later_s)
    if by is By.ROUND:
        pieces = _breaths(phrase, measure, first=True)
    elif by is By.REPEAT:
        pieces = _repeats(phrase, measure)
    elif by is By.MARKER:
        pieces = _sections(phrase, markers, measure)
    elif by is By.GAP:
        pieces = _gaps(phrase, measure)
    else:
        pieces = _colours(phrase, measure)
    return lay_out(pieces)


@dataclass(frozen=True, slots=True)
class _Measure:
    """How much of a round is a breath."""

    evenly: bool
    """Whether it is one of even changes, of which a gap with its change is one thing to be kept in mind."""
    yarns: YarnsSaid
    """How the yarns are said."""
    lead_s: float
    """How long the place takes that is said before the first step. Unit: s."""
    later_s: float
    """The same before a later one. Unit: s."""

    def seconds(self, items: Iterable[Item]) -> float:
        return seconds_of_items(items, self.yarns)

    def room_s(self, *, first: bool) -> float:
        """Return how long a step may take behind its place. Unit: s."""
        return MOST_S - (self.lead_s if first else self.later_s)

    def length(self, item: Item) -> int:
        """Count what has to be remembered for an item."""
        if isinstance(item, Run):
            return 0 if self.joins(item) else 1
        return sum(self.length(inner) for inner in item.items)

    def joins(self, item: Item) -> bool:
        """Return whether an item goes with the one in front of it: a change with its gap."""
        return self.evenly and isinstance(item, Run) and stitch(item.stitch).shapes

    def units(self, items: Iterable[Item]) -> Iterator[list[Item]]:
        """Put those together that are never parted."""
        unit: list[Item] = []
        for item in items:
            if unit and not (self.joins(item) and isinstance(unit[-1], Run)):
                yield unit
                unit = []
            unit.append(item)
        if unit:
            yield unit

    def is_long(self, group: Group, *, first: bool) -> bool:
        """Return whether a repeat is longer than a breath, not counting a plain end."""
        many = self.length(group) > BREATH if self.evenly else _worked(group) > BREATH + 1
        return many or self.seconds((group,)) > self.room_s(first=first)


def part_at(cut: Sequence[StepPart], stitches: int) -> StepPart:
    """Return the part of a round that a place is in; behind the end of the round, the last.

    Args:
        cut: All parts of the round.
        stitches: Stitches of it worked.
    """
    return next((part for part in cut if stitches < part.end), cut[-1])


def rest_of(part: StepPart, stitches: int) -> StepPart:
    """Leave out what is already worked of a part; a half-made stitch is made again."""
    if not part.start < stitches < part.end:
        return part
    items = tuple(_dropped(part.items, stitches - part.start))
    again = part.again and part.repeat is None and all(isinstance(item, Group) for item in items)
    begun = part.repeat is not None
    return replace(part, start=stitches, items=items, again=again, at_marker=False, begun=begun)


def _breaths(phrase: Iterable[Item], measure: _Measure, *, first: bool = False) -> Iterator[StepPart]:
    """Put items together until a breath is full; a single last run goes with the breath before it."""
    between: list[Item] = []
    for item in phrase:
        begins = first and not between
        if not isinstance(item, Run) and measure.is_long(item, first=begins):
            yield from _short_breaths(between, measure, first=first)
            between, first = [], False
            # Once read out in parts, it is in her fingers; then she only has to remember how often.
            yield from _repetition(item, 1, measure, first=begins)
            if item.times > 1:
                yield StepPart(items=(Group(item.items, item.times - 1, item.name),), again=True)
        else:
            between.append(item)
    yield from _short_breaths(between, measure, first=first)


def _works(item: Item) -> bool:
    """Return whether the hands do something in an item: stitches left unworked behind a turn are no step."""
    return any(run.progress and run.stitch != "rest" for run in flatten((item,)))


def _worked(item: Item) -> int:
    """Count what is worked in an item as said: no markers or turns, an inner repeat once."""
    if isinstance(item, Run):
        return int(item.progress > 0)
    return sum(_worked(inner) for inner in item.items)


def _repetition(group: Group, number: int, measure: _Measure, *, first: bool) -> Iterator[StepPart]:
    """Yield one repetition, in breaths if it is long."""
    numbered = replace(measure, lead_s=measure.lead_s + REPEAT_S if first else measure.later_s)
    short = measure.seconds(group.items) <= numbered.room_s(first=True)
    if short and not measure.is_long(replace(group, times=1), first=False):
        yield StepPart(items=group.items, repeat=(number, group.times))
        return
    for at, piece in enumerate(_breaths(group.items, numbered, first=True)):
        begins = at == 0 and group.times > 1 and piece.repeat is None
        repeat = (number, group.times) if begins else piece.repeat
        yield StepPart(items=piece.items, repeat=repeat, again=piece.again)


def _short_breaths(phrase: Iterable[Item], measure: _Measure, *, first: bool) -> Iterator[StepPart]:
    """Join short items until a breath is full."""
    breaths: list[list[list[Item]]] = [[]]
    units = list(measure.units(phrase))
    for number, unit in enumerate(units):
        joined = [*chain(*breaths[-1]), *unit]
        full = sum(map(measure.length, joined)) > BREATH
        marks = takewhile(lambda after: not any(item.progress for item in after), units[number + 1 :])
        long = measure.seconds((*joined, *chain(*marks))) > measure.room_s(first=first and len(breaths) == 1)
        if breaths[-1] and (full or long) and any(map(_works, unit)):
            breaths.append([])
        breaths[-1].append(unit)
    if len(breaths) > 1:
        _settle_last(breaths, measure, first=first and len(breaths) == 2)
    return (StepPart(items=tuple(chain(*units))) for units in breaths if units)


def _settle_last(breaths: list[list[list[Item]]], measure: _Measure, *, first: bool) -> None:
    """Leave no single run to a step of its own, as far as that is possible."""
    before, last = breaths[-2:]
    if len(last) != 1 or len(last[0]) != 1 or not isinstance(last[0][0], Run):
        return
    if measure.seconds(chain(*before, *last)) <= measure.room_s(first=first):
        # "... then knit six" is easy to remember and not worth a cue of its own.
        breaths[-2:] = [[*before, *last]]
    elif len(before) > 2 and any(item.progress for item in before[-1]):
        breaths[-2:] = [before[:-1], [before[-1], *last]]


def _repeats(phrase: Iterable[Item], measure: _Measure) -> Iterator[StepPart]:
    """Yield every repetition by itself, a long one read out once, and what lies between in breaths."""
    between: list[Item] = []
    first = True
    for item in phrase:
        if isinstance(item, Run):
            between.append(item)
            continue
        yield from _breaths(between, measure, first=first)
        first = first and not between
        between = []
        is_taught = measure.seconds(item.items) >= TAUGHT_S
        for number in range(1, item.times + 1):
            if number > 1 and is_taught:
                yield StepPart(items=item.items, repeat=(number, item.times), again=True)
            else:
                yield from _repetition(item, number, measure, first=first)
            first = False
    yield from _breaths(between, measure, first=first)


def _colours(phrase: tuple[Item, ...], measure: _Measure) -> Iterator[StepPart]:
    """Yield the stitches up to each change of yarn, in breaths."""
    held: list[Run] = []
    yarn, first = "", True
    for run in flatten(phrase):
        if held and run.progress and run.yarn != yarn:
            yield from _breaths(join_runs(held), measure, first=first)
            held, first = [], False
        if run.progress:
            yarn = run.yarn
        held.append(run)
    yield from _breaths(join_runs(held), measure, first=first)


def _sections(phrase: tuple[Item, ...], markers: tuple[int, ...], measure: _Measure) -> Iterator[StepPart]:
    """Yield the stitches up to each marker, in breaths only where they take too long to be said at once.

    A round that names no marker leaves those that are there where they are: after its stitches, as `markers`
    tells.
    """
    runs = tuple(flatten(phrase))
    if not any(run.stitch in MARKS for run in runs):
        runs = tuple(_split(runs, frozenset(markers)))
    held: list[Run] = []
    first = True
    for run in runs:
        held.append(run)
        if run.stitch in MARKS:
            yield from _section((each for each in held if each != _BOUNDARY), measure, first=first)
            held, first = [], False
    yield from _section(held, measure, first=first)


def _section(runs: Iterable[Run], measure: _Measure, *, first: bool) -> Iterator[StepPart]:
    """Yield what lies between two markers: a landmark a cue, as long as that can be said in one stretch."""
    items = join_runs(runs)
    if items and not first and measure.seconds(items) <= MOST_S:
        yield StepPart(items=items, at_marker=True)
    else:
        yield from _breaths(items, measure, first=first)


def _split(runs: Iterable[Run], places: frozenset[int]) -> Iterator[Run]:
    """Cut runs at places in the round, with a boundary there, which is nothing to be worked."""
    place = 0
    for run in runs:
        each = stitch(run.stitch).progress
        times = 0
        for _ in range(run.times):
            times, place = times + 1, place + each
            if place in places and each:
                yield Run(run.stitch, times, run.yarn)
                yield _BOUNDARY
                times = 0
        if times:
            yield Run(run.stitch, times, run.yarn)


def _gaps(phrase: tuple[Item, ...], measure: _Measure) -> Iterator[StepPart]:
    """Yield the stitches up to and with each increase or decrease, numbered."""
    runs = [
        run
        for run in flatten(phrase)
        for run in ([Run(run.stitch, 1, run.yarn)] * run.times if stitch(run.stitch).shapes else [run])
    ]
    total = sum(stitch(run.stitch).shapes for run in runs)
    held: list[Run] = []
    number = 0
    for run in runs:
        held.append(run)
        if stitch(run.stitch).shapes:
            number += 1
            yield StepPart(items=join_runs(held), repeat=(number, total), change=True)
            held = []
    yield from _breaths(join_runs(held), measure)


def lay_out(pieces: Iterable[StepPart]) -> tuple[StepPart, ...]:
    """Place pieces one after the other in a round; one without stitches joins its neighbour.

    Returns:
        At least one part. Always: they follow on from 0 without a gap.
    """
    laid: list[StepPart] = []
    waiting: tuple[Item, ...] = ()
    place = 0
    for piece in pieces:
        progress = sum(item.progress for item in piece.items)
        if progress:
            end = place + progress
            laid.append(replace(piece, start=place, end=end, items=waiting + piece.items))
            waiting, place = (), end
        elif laid:
            laid[-1] = replace(laid[-1], items=laid[-1].items + piece.items)
        else:
            waiting += piece.items
    return tuple(laid) or (StepPart(items=waiting),)


def _dropped(items: Iterable[Item], worked: int) -> Iterator[Item]:
    """Yield what is left of some items once a number of their stitches is worked."""
    for item in items:
        if worked <= 0:
            yield item
        elif item.progress <= worked:
            worked -= item.progress
        elif isinstance(item, Run):
            done = worked // stitch(item.stitch).progress
            yield Run(item.stitch, item.times - done, item.yarn)
            worked = 0
        else:
            yield from _dropped_from_group(item, worked)
            worked = 0


def _dropped_from_group(group: Group, worked: int) -> Iterator[Item]:
    """Yield the rest of the repetition that is begun, then the whole repetitions."""
    once = group.progress // group.times
    done, begun = divmod(worked, once)
    left = group.times - done
    if begun:
        yield from _dropped(group.items, begun)
        left -= 1
    if left == 1:
        yield from group.items
    elif left:
        yield Group(group.items, left, group.name)
