"""Work out how much of each yarn every round takes: stitches, floats, edges and ends. No I/O.

Every round is gone through run by run: a chart round by the colours in it, a row of lace by its yarn overs,
a bind-off by its manner. Identical rounds are worked out once.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import field
from types import MappingProxyType
from typing import Final, Literal

from stepper.craft.stitch_yarn import (
    CAST_ON,
    END_MM,
    FLOAT_SLACK,
    RIB_AT_MOST,
    SEWN_BIND_OFF,
    STRETCHY_BIND_OFF,
    StitchYarn,
    Three,
    stitch_yarn,
)
from stepper.craft.stitches import Kind, stitch
from stepper.plan.materials import Loop
from stepper.plan.model import Plan, Round, Run
from stepper.records import dataclass

YarnPart = Literal["stitches", "floats", "edges", "ends"]
"""What yarn goes into. Edges: cast on, picked up, bound off, grafted. Ends: woven in."""
PARTS: Final[tuple[YarnPart, ...]] = ("stitches", "floats", "edges", "ends")

Cause = Literal["hand", "kinds", "ribbing", "floats", "edges", "ends", "spare"]
"""Why an amount is not known better. Hand: the loop length from gauge or swatch. Kinds: yarn overs, cables,
bobbles and the like. Spare: the trade's allowance, where the others do not come to it."""
CAUSES: Final[tuple[Cause, ...]] = ("hand", "kinds", "ribbing", "floats", "edges", "ends", "spare")

CARRIED_ROUNDS: Final = 10
"""A yarn unused for longer is cut and joined again. Common practice."""
_RIB_SHARE: Final = 0.25
"""Least share of both knit and purl for a round to count as ribbing. Chosen here."""
_NEEDLES: Final = (0.7, 1.4)
"""How far a needle may be off the gauge's for the loop to change with it. Chosen here."""

_NOTHING: Final[Mapping[str, float]] = MappingProxyType({})


@dataclass(frozen=True, slots=True, kw_only=True)
class Amount:
    """A length of yarn, what it goes into, and why it is not known better."""

    parts: Mapping[str, float] = field(default_factory=lambda: _NOTHING)
    """Likely length by `Part`. Unit: mm."""
    down: Mapping[str, float] = field(default_factory=lambda: _NOTHING)
    """How much less it may be, by `Cause`. Unit: mm."""
    up: Mapping[str, float] = field(default_factory=lambda: _NOTHING)
    """How much more it may be, by `Cause`. Unit: mm."""

    @property
    def likely_mm(self) -> float:
        """Unit: mm."""
        return sum(self.parts.values())

    @property
    def low_mm(self) -> float:
        """All causes at once in her favour. Unit: mm."""
        return self.likely_mm - sum(self.down.values())

    @property
    def high_mm(self) -> float:
        """All causes at once against her. Unit: mm."""
        return self.likely_mm + sum(self.up.values())

    def times(self, factor: float) -> Amount:
        """Return a share of it, or a multiple."""
        return Amount(
            parts={key: value * factor for key, value in self.parts.items()},
            down={key: value * factor for key, value in self.down.items()},
            up={key: value * factor for key, value in self.up.items()},
        )


def total(amounts: Iterable[Amount]) -> Amount:
    """Add amounts up. All of them are off in the same direction, so their uncertainties add up too."""
    parts: dict[str, float] = {}
    down: dict[str, float] = {}
    up: dict[str, float] = {}
    for amount in amounts:
        for into, values in ((parts, amount.parts), (down, amount.down), (up, amount.up)):
            for key, value in values.items():
                into[key] = into.get(key, 0.0) + value
    return Amount(parts=parts, down=down, up=up)


def yarn_use(plan: Plan) -> tuple[dict[str, Amount], ...]:
    """Return for each round what it takes of each yarn, by the key of the yarn.

    Always as many as the plan has rounds; empty ones if the plan knows no gauge.
    """
    known: dict[tuple[object, ...], dict[str, Amount]] = {}
    ends = _ends(plan)
    found: list[dict[str, Amount]] = []
    for round_ in plan.rounds:
        loop = plan.materials.loop(round_.gauge)
        if loop is None:
            found.append({})
            continue
        # Alike rounds share one tuple of runs; the plan keeps it alive, so its identity stands for it.
        key = (id(round_.runs), round_.gauge, round_.needle_mm, round_.flat, not round_.before)
        if key not in known:
            known[key] = round_use(round_, loop)
        use = known[key]
        if round_.index in ends:
            use = _with_ends(use, ends[round_.index])
        found.append(use)
    return tuple(found)


def round_use(round_: Round, loop: Loop) -> dict[str, Amount]:
    """Return what the stitches and floats of one round take of each yarn, without ends."""
    needle = _needle_factor(round_, loop)
    ribbing = RIB_AT_MOST - 1 if is_ribbing(round_.runs) else 0.0
    counted: dict[tuple[str, str], int] = {}
    for run in round_.runs:
        counted[run.stitch, run.yarn] = counted.get((run.stitch, run.yarn), 0) + run.times
    each: dict[str, list[Amount]] = {}
    for (code, yarn), times in counted.items():
        if stitch(code).kind is not Kind.SHIFT:
            amount = _run(Run(code, times, yarn), round_, loop, needle, ribbing)
            if amount is not None:
                each.setdefault(yarn, []).append(amount)
    for yarn, stitches in carried_stitches(round_.runs, flat=round_.flat).items():
        each.setdefault(yarn, []).append(_floats(stitches * loop.stitch_mm))
    return {yarn: total(amounts) for yarn, amounts in each.items()}


def is_ribbing(runs: tuple[Run, ...]) -> bool:
    """Return whether a round is ribbing: knit and purl beside each other throughout."""
    counts = {"k": 0, "p": 0}
    changes, last = 0, ""
    for run in runs:
        letter = run.stitch[:1]
        if letter in counts and stitch(run.stitch).kind is Kind.PLAIN:
            counts[letter] += run.leaves
            changes += letter != last
            last = letter
    stitches = sum(counts.values())
    often = changes * 6 >= stitches  # no column of one of them is wider than six on the average
    return bool(stitches) and min(counts.values()) >= _RIB_SHARE * stitches and often


def carried_stitches(runs: tuple[Run, ...], *, flat: bool) -> dict[str, int]:
    """Return how many stitches each yarn passes behind in a round, if there is more than one yarn.

    In the round a yarn goes all the way round; in a row from its first stitch to its last.
    Unit: stitches.
    """
    worked = [run for run in runs if run.leaves and stitch(run.stitch).kind not in (Kind.EDGE, Kind.SHIFT)]
    yarns = dict.fromkeys(run.yarn for run in worked)
    if len(yarns) < 2:
        return {}
    carried = {}
    for yarn in yarns:
        places = [at for at, run in enumerate(worked) if run.yarn == yarn]
        span = worked[places[0] : places[-1] + 1] if flat else worked
        carried[yarn] = sum(run.leaves for run in span if run.yarn != yarn)
    return carried


def _run(run: Run, round_: Round, loop: Loop, needle: float, ribbing: float) -> Amount | None:
    take = _take(run, round_)
    edge = stitch(run.stitch).kind is Kind.EDGE
    low, likely, high = _mm(take, loop, needle, run.times)
    if not high:
        return None
    loops = take.loops[1] * run.times * needle
    kind = "edges" if edge else "kinds"
    part = "edges" if edge else "floats" if not take.loops[2] else "stitches"
    length = loop.length
    down = {"hand": loops * (length.likely_mm - length.low_mm)}
    up = {"hand": loops * (length.high_mm - length.likely_mm)}
    if low != high:
        down[kind], up[kind] = likely - low, high - likely
    if ribbing and not edge:
        up["ribbing"] = loops * length.likely_mm * ribbing
    return Amount(parts={part: likely}, down=down, up=up)


def _take(run: Run, round_: Round) -> StitchYarn:
    if run.stitch == "co" and not round_.before:
        return CAST_ON
    if run.stitch == "bo":
        words = round_.instruction
        if "sewn" in words:
            return SEWN_BIND_OFF
        if "stretch" in words or "loose" in words:
            return STRETCHY_BIND_OFF
    return stitch_yarn(run.stitch)


def _mm(take: StitchYarn, loop: Loop, needle: float, times: int) -> Three:
    low, likely, high = (
        times * (loops * needle * loop.length.likely_mm + widths * loop.stitch_mm)
        for loops, widths in zip(take.loops, take.widths, strict=True)
    )
    return low, likely, high


def _needle_factor(round_: Round, loop: Loop) -> float:
    """Return the factor by which the loop changes with the needle in hand, if that is not the gauge's.

    Source: loops are drawn around the needle, so their length goes with its thickness; an assumption.
    """
    if round_.needle_mm is None or loop.needle_mm is None:
        return 1.0
    return min(_NEEDLES[1], max(_NEEDLES[0], round_.needle_mm / loop.needle_mm))


def _floats(straight_mm: float) -> Amount:
    low, likely, high = (straight_mm * slack for slack in FLOAT_SLACK)
    return Amount(parts={"floats": likely}, down={"floats": likely - low}, up={"floats": high - likely})


def _ends(plan: Plan) -> dict[int, list[str]]:
    """Find the rounds in which yarns begin or end, with a yarn's key for each end to weave in."""
    ends: dict[int, list[str]] = {}
    last: dict[str, int] = {}
    for round_ in plan.rounds:
        # The name of what goes on hold or comes back stands in place of a yarn's key, and takes none.
        for yarn in {run.yarn for run in round_.runs}:
            before = last.get(yarn)
            new = before is None or round_.index - before > CARRIED_ROUNDS or not round_.before
            if new and before is not None:
                ends.setdefault(before, []).append(yarn)
            if new:
                ends.setdefault(round_.index, []).append(yarn)
            last[yarn] = round_.index
    for yarn, index in last.items():
        ends.setdefault(index, []).append(yarn)
    return ends


def _with_ends(use: dict[str, Amount], yarns: list[str]) -> dict[str, Amount]:
    low, likely, high = END_MM
    end = Amount(parts={"ends": likely}, down={"ends": likely - low}, up={"ends": high - likely})
    more = dict(use)
    for yarn in yarns:
        if yarn in more:
            more[yarn] = total((more[yarn], end))
    return more
