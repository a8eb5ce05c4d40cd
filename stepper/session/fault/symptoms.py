"""Predict what each kind of single fault in a round leads to. Pure.

There are seven kinds. Each predicts four things of its round: by how many stitches the count is off, how many
changes too many or too few the round shows, how many stitches are left over at its end (or missing), and
whether a loose loop hangs below; it also says where in the round it can lie. How often a kind occurs is not
published; the odds are assumptions.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from enum import Enum
from functools import lru_cache

from stepper.craft.stitches import Kind, stitch
from stepper.plan.model import Group, Item, Plan, Run, flatten
from stepper.records import dataclass


class Cause(Enum):
    """What can have happened."""

    LEFT_OUT = "left out"
    """An increase or decrease left out."""
    ONE_TOO_MANY = "one too many"
    """An increase or decrease where none belongs."""
    REPEAT_TWICE = "repeat twice"
    REPEAT_LEFT_OUT = "repeat left out"
    YARN_OVER = "yarn over dropped"
    DROPPED = "stitch dropped"
    OTHER_ROUND = "other round"
    """A round worked for another."""


ODDS = {
    Cause.LEFT_OUT: 8.0,
    Cause.ONE_TOO_MANY: 3.0,
    Cause.REPEAT_TWICE: 3.0,
    Cause.REPEAT_LEFT_OUT: 3.0,
    Cause.YARN_OVER: 6.0,
    Cause.DROPPED: 3.0,
    Cause.OTHER_ROUND: 2.0,
}
"""How often each occurs, against the others, in a round that has room for it. Assumptions; no source was
found. That the shaping is looked at first is common practice."""

SPREAD = (Cause.OTHER_ROUND, Cause.REPEAT_TWICE, Cause.REPEAT_LEFT_OUT)
"""Faults that shift a whole round or the rest of it, and so can show far from where they happened."""

Spans = tuple[tuple[float, float, float], ...]
"""Where a fault can lie: from and to, as shares of the stitches after the round, and how many places."""


@dataclass(frozen=True, slots=True)
class Symptoms:
    """What a kind of fault in a round leads to."""

    cause: Cause
    code: str
    """The stitch it happens to; empty for repeats and rounds."""
    difference: int
    """Stitches too many. Unit: stitches."""
    changes: int
    """Surplus increases and decreases to be seen in the round."""
    left: int
    """Stitches left over at its end; below 0 if it comes out short."""
    loop: bool
    """Whether a loose loop hangs below."""
    odds: float
    """How likely it is, against all others. Range: above 0."""
    spans: Spans
    other: int | None = None
    """The round worked in its place."""

    def inside(self, start: float, end: float, *, turned: bool = False) -> float:
        """Return the share of the places that lies between two shares of the round. Range: 0 to 1.

        Args:
            start: Where the stretch begins, as a share of the stitches.
            end: Where it ends.
            turned: Whether both are measured from the other end of the row.
        """
        if turned:
            start, end = 1 - end, 1 - start
        total = sum(places for _, _, places in self.spans)
        found = 0.0
        for low, high, places in self.spans:
            if high - low < _POINT:
                found += places * (start < low < end)
            else:
                found += places * max(0.0, min(high, end) - max(low, start)) / (high - low)
        return found / total


_POINT = 1e-9
WHOLE: Spans = ((0.0, 1.0, 1.0),)


def list_symptoms(plan: Plan, index: int) -> Iterator[Symptoms]:
    """Predict each fault that may occur alone in a round."""
    round_ = plan.rounds[index]
    yield from _within(round_.phrase, round_.before, round_.after)
    yield from _of_rounds(plan, index)


@lru_cache(maxsize=512)
def _within(phrase: tuple[Item, ...], before: int, after: int) -> tuple[Symptoms, ...]:
    """Predict the faults within a phrase, which many rounds may share."""
    return (*_of_stitches(phrase, after), *_of_repeats(phrase, before, after))


def _of_stitches(phrase: tuple[Item, ...], after: int) -> Iterator[Symptoms]:
    """Predict the faults of single stitches."""
    plain: list[tuple[float, float, float]] = []
    changes: dict[str, list[tuple[float, float, float]]] = {}
    place, total = 0, max(1, after)
    for run in flatten(phrase):
        entry = stitch(run.stitch)
        if entry.kind in (Kind.PLAIN, Kind.OWN):  # where in its own words a slip happened is not known
            plain.append((place / total, (place + run.leaves) / total, float(run.times)))
        if entry.shapes:
            # A change is where its last stitch is: half a stitch before its end.
            spots = [(place + entry.leaves * (at + 1) - 0.5) / total for at in range(run.times)]
            changes.setdefault(run.stitch, []).extend((spot, spot, 1.0) for spot in spots)
        place += run.leaves
    everywhere, total_changes = tuple(plain), sum(map(len, changes.values()))
    for code, spans in changes.items():
        entry = stitch(code)
        share = len(spans) / total_changes
        out, over, off = ODDS[Cause.LEFT_OUT] * share, ODDS[Cause.ONE_TOO_MANY] * share, entry.change
        if code in ("yo", "yo2"):
            # A yarn over that slips off leaves a slack strand; one never made leaves nothing.
            slipped = ODDS[Cause.YARN_OVER] * share
            yield Symptoms(Cause.YARN_OVER, code, -off, -1, 0, True, slipped, tuple(spans))
        yield Symptoms(Cause.LEFT_OUT, code, -off, -1, 0, False, out, tuple(spans))
        yield Symptoms(Cause.ONE_TOO_MANY, code, off, 1, 0, False, over, everywhere or tuple(spans))
    if plain:
        yield Symptoms(Cause.DROPPED, "", -1, 0, 0, True, ODDS[Cause.DROPPED], everywhere)
        odds = ODDS[Cause.ONE_TOO_MANY] * BY_MISTAKE
        if not changes:
            yield Symptoms(Cause.ONE_TOO_MANY, "yo", 1, 1, 0, False, odds, everywhere)
        if not any(stitch(code).change == -1 for code in changes):
            yield Symptoms(Cause.ONE_TOO_MANY, "k2tog", -1, 1, 0, False, odds, everywhere)


BY_MISTAKE = 0.25
"""How much rarer a yarn over, a split stitch or two worked together is where nothing is shaped that way.
Assumption."""


def _of_repeats(phrase: tuple[Item, ...], before: int, after: int) -> Iterator[Symptoms]:
    """Predict the faults of whole repeats: the round no longer works out at its end."""
    place = 0
    right = _changes_in(flatten(phrase))
    for at, item in enumerate(phrase):
        start, place = place, place + item.leaves
        if not isinstance(item, Group) or not item.uses:
            continue
        once = sum(run.uses for run in flatten(item.items))
        span = ((start / max(1, after), place / max(1, after), float(item.times)),)
        for more, cause in ((True, Cause.REPEAT_TWICE), (False, Cause.REPEAT_LEFT_OUT)):
            times = item.times + (1 if more else -1)
            items = phrase[:at] + ((Group(item.items, times),) if times else ()) + phrase[at + 1 :]
            change, changes = work_items(items, before)
            left = -once if more else once
            off, off_changes = change - (after - before), changes - right
            yield Symptoms(cause, "", off, off_changes, left, False, ODDS[cause], span)


def _changes_in(runs: Iterable[Run]) -> int:
    return sum(run.times for run in runs if stitch(run.stitch).shapes)


def _of_rounds(plan: Plan, index: int) -> Iterator[Symptoms]:
    """Predict a neighbouring round worked in place of this one."""
    round_ = plan.rounds[index]
    right = _changes_in(round_.runs)
    for other in (index + 1, index - 1, index + 2):
        if not 0 <= other < len(plan.rounds) or plan.rounds[other].runs == round_.runs:
            continue
        wrong = plan.rounds[other]
        looks = {(run.stitch, run.yarn) for run in (*round_.runs, *wrong.runs)}
        if len(looks) == 1 and not round_.shaping:
            continue  # knit is knit: that there were more stitches then makes it no other round
        if round_.words or wrong.words:
            continue  # what a row in own words would do to other stitches is not known
        if any(stitch(run.stitch).kind in (Kind.EDGE, Kind.SHIFT) for run in wrong.runs):
            continue  # nobody binds off or divides in the place of a round by mistake
        change, changes = work_items(wrong.phrase, round_.before)
        left = round_.before - sum(run.uses for run in wrong.runs)
        off, off_changes = change - (round_.after - round_.before), changes - right
        yield Symptoms(
            Cause.OTHER_ROUND, "", off, off_changes, left, False, ODDS[Cause.OTHER_ROUND], WHOLE, other
        )


@lru_cache(maxsize=1024)
def work_items(items: tuple[Item, ...], before: int) -> tuple[int, int]:
    """Work items over a count of stitches; what is left over is worked plain, what is missing is left.

    Returns:
        Stitches gained, and changes made.
    """
    used = change = changes = 0
    short = False
    for run in flatten(items):
        entry = stitch(run.stitch)
        if entry.uses:
            fit = min(run.times, (before - used) // entry.uses)
            short = short or fit < run.times
        else:
            fit = 0 if short else run.times  # nothing is made once the stitches have run out
        used += fit * entry.uses
        change += fit * entry.change
        changes += fit * entry.shapes
    return change, changes
