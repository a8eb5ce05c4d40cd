"""The pieces of a garment laid flat, with their measurements, as they follow from the plan. Pure.

A piece is what is knitted in one go from its first edge; worked in the round it lies double, half as wide as
it is around. A garment that divides for sleeves is one piece from neck to lower edge, and each sleeve is
another. Finished measurements: after blocking if the file has that gauge, otherwise as knitted. Every length
is the one in the table of measurements: the round that divides the sleeves is part of no length, and the yoke
is counted without its neckband.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace

from stepper.plan.model import Plan, Round
from stepper.project.model import Project
from stepper.records import dataclass
from stepper.report.measure.fabrics import Fabrics
from stepper.report.measure.garment_lines import yoke_without_band
from stepper.report.measure.roles import Roles, assign_roles
from stepper.report.measure.tape import is_whole
from stepper.report.sheet.pairs import join_words

KEPT_MM = 25.0
"""A width kept over this height has straight sides; one kept for less is a step on a slope. Chosen here.
Unit: mm."""
SHARE = 0.25
"""How much of a straight stretch may be drawn as part of the slopes beside it. Chosen here."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Level:
    """A piece at one height."""

    depth_mm: float
    """From its first edge. Unit: mm."""
    around_mm: float
    """All stitches side by side. Unit: mm."""
    wide_mm: float
    """As it lies. Unit: mm."""


@dataclass(frozen=True, slots=True, kw_only=True)
class SectionSpan:
    """A section in a piece."""

    name: str
    start_mm: float
    end_mm: float


@dataclass(frozen=True, slots=True, kw_only=True)
class GarmentPiece:
    """One piece laid flat."""

    levels: tuple[Level, ...]
    """From its first edge to its last; at least one level."""
    parts: tuple[SectionSpan, ...]
    doubled: bool
    """Whether it lies double."""
    divided_mm: float | None = None
    """Depth at which sleeves divide from it; None if none do. Unit: mm."""
    yoke_mm: float = 0.0
    """Depth at which its yoke begins below the neckband; 0 if it has none. Unit: mm."""
    sleeve: bool = False

    @property
    def long_mm(self) -> float:
        """From the first edge to the last. Unit: mm."""
        return self.levels[-1].depth_mm

    @property
    def widest(self) -> Level:
        """The first level where it is widest."""
        return max(self.levels, key=lambda level: level.wide_mm)

    @property
    def sides(self) -> tuple[Level, ...]:
        """The levels an outline is drawn through: steps of a few rounds become slopes."""
        return tuple(_sides(self.levels))


def lay_out_pieces(plan: Plan, project: Project) -> tuple[GarmentPiece, ...]:
    """Lay out every piece of a garment, in the order knitted, leaving out those without width or height."""
    split = _Split.of(plan.rounds)
    found: list[GarmentPiece] = []
    for rounds in _pieces(plan.rounds):
        piece = _laid(rounds, project, split)
        if piece is not None:
            found.append(piece)
    return tuple(found)


def merge_like_pieces(found: Iterable[GarmentPiece]) -> tuple[GarmentPiece, ...]:
    """Merge pieces of the same shape, such as a pair of mittens: one is drawn for both."""
    alike: dict[tuple[Level, ...], GarmentPiece] = {}
    for piece in found:
        first = alike.get(piece.levels)
        if first is None or len(first.parts) != len(piece.parts) or first.doubled is not piece.doubled:
            alike[piece.levels] = piece
            continue
        both = tuple(
            replace(part, name=join_words(part.name, other.name) or f"{part.name}, {other.name}")
            for part, other in zip(first.parts, piece.parts, strict=True)
        )
        alike[piece.levels] = replace(first, parts=both)
    return tuple(alike.values())


def _pieces(rounds: Sequence[Round]) -> Iterator[list[Round]]:
    """Split the rounds at each new cast-on, and wherever held stitches are taken up again."""
    held: list[Round] = []
    for each in rounds:
        taken_up = each.before == 0 or any(run.stitch == "return" for run in each.runs)
        if held and taken_up and held[-1].section != each.section:
            yield held
            held = []
        held.append(each)
    if held:
        yield held


@dataclass(frozen=True, slots=True)
class _Split:
    """Where sleeves divide from a yoke worked from the neck down."""

    at: int | None = None
    """Index of the round that divides them; None if none does."""
    tall: bool = False
    """Whether that round has a height of its own, as the first of the body; at the end of the yoke it has
    none."""
    yoke: frozenset[int] = frozenset()
    """Indexes of the rounds of the yoke, without its neckband."""

    @classmethod
    def of(cls, rounds: Sequence[Round]) -> _Split:
        """Find it."""
        roles: Roles = assign_roles(rounds)
        if roles.yoke is None or roles.yoke.upward:
            return cls()
        inside = yoke_without_band(rounds, roles, roles.yoke)
        own = rounds[roles.yoke.at].section
        return cls(roles.yoke.at, all(rounds[index].section != own for index in inside), frozenset(inside))

    def name_part(self, round_: Round) -> str:
        """Return what the part of the piece is called that a round belongs to."""
        return "yoke" if round_.index in self.yoke else round_.section

    def adds_height(self, round_: Round) -> bool:
        """Return whether a round adds to the length of its piece."""
        return is_whole(round_) and (round_.index != self.at or self.tall)


def _laid(rounds: Sequence[Round], project: Project, split: _Split) -> GarmentPiece | None:
    divided = any(each.index == split.at for each in rounds)
    sleeve = split.at is not None and any(run.stitch == "return" for run in rounds[0].runs)
    # The parts below the divide are worn closed, even if worked in rows.
    flat = all(each.flat for each in rounds if each.before and each.after)
    doubled = divided or sleeve or not flat
    levels: list[Level] = []
    parts: list[SectionSpan] = []
    depth, divided_mm = 0.0, None
    fabrics = Fabrics(project)
    for each in rounds:
        fabric = fabrics.of(each)
        if fabric is None:
            continue
        gauge = fabric.blocked or fabric.gauge
        before = depth
        if each.index == split.at:
            divided_mm = depth
        if split.adds_height(each):
            depth += gauge.round_mm
        edges = [(depth, each.after)]
        if each.index == split.at:  # the yoke ends above it; of a height of its own, it is of the body
            edges = [(before, each.before), *(edges if split.tall else ())]
        for deep, stitches in edges:
            if stitches:
                around = gauge.width_mm(stitches)
                wide = around / 2 if doubled else around
                levels.append(Level(depth_mm=deep, around_mm=around, wide_mm=wide))
        name = split.name_part(each)
        if parts and parts[-1].name == name:
            parts[-1] = SectionSpan(name=name, start_mm=parts[-1].start_mm, end_mm=depth)
        else:
            parts.append(SectionSpan(name=name, start_mm=before, end_mm=depth))
    if not levels or not depth:
        return None
    # Stitches taken up or picked up at the very start belong to the edge the piece begins with.
    edge = next((number for number, each in enumerate(rounds) if not _takes_up(each)), 0)
    first = replace(levels[max(0, min(edge, len(levels)) - 1)], depth_mm=0.0)
    kept = tuple(part for part in parts if part.end_mm > part.start_mm)
    return GarmentPiece(
        levels=(first, *(level for level in levels if level.depth_mm > 0)),
        parts=kept,
        doubled=doubled,
        divided_mm=divided_mm if divided else None,
        yoke_mm=next((part.start_mm for part in kept if divided and part.name == "yoke"), 0.0),
        sleeve=sleeve,
    )


def _takes_up(round_: Round) -> bool:
    return round_.before == 0 or any(run.stitch in ("return", "pu") for run in round_.runs)


def _sides(levels: Sequence[Level]) -> Iterator[Level]:
    """Yield a straight side wherever a width is kept long enough, and a slope otherwise."""
    first, last = levels[0], levels[-1]
    yield first
    for start, end in _kept(levels):
        middle = (start.depth_mm + end.depth_mm) / 2
        tall = end.depth_mm - start.depth_mm
        if tall < KEPT_MM:
            if first.depth_mm < middle < last.depth_mm:
                yield replace(start, depth_mm=middle)
            continue
        ease = min(SHARE * tall, KEPT_MM / 2)
        if start is not first:
            yield replace(start, depth_mm=start.depth_mm + ease)
        if end is not last:
            yield replace(start, depth_mm=end.depth_mm - ease)
    yield last


def _kept(levels: Sequence[Level]) -> Iterator[tuple[Level, Level]]:
    """Yield the stretches over which a width is kept, each by its first and last level."""
    start = end = levels[0]
    for level in levels[1:]:
        if level.wide_mm == end.wide_mm:
            end = level
            continue
        yield start, end
        start = end = level
    yield start, end
