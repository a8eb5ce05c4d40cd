"""What should make her stop and think: mixed-up units, edges that will not go over the head. Pure.

Stretch is known from weak sources only. A rib may stretch to about twice its width, but the edge it begins
with does not; the factors here are on the careful side and from memory.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence

from stepper.language.measures import length
from stepper.plan.model import Group, Run
from stepper.project.model import Project
from stepper.report.measuring import AnyRound, Measurement

EDGE_STRETCH = 1.5
"""How many times its width a ribbed edge reaches at most. From memory; the rib itself stretches further."""
PLAIN_STRETCH = 1.3
"""The same for an edge of plain stitches. From memory."""
TIGHT = 0.15
"""Share of the chest by which a garment may be narrower before she is warned. From memory."""

_FAR, _NEAR = 1.9, (0.7, 1.6)
# Garment over body: no garment is meant to be beyond the first; within the second it may well be.


def find_cautions(
    found: Sequence[Measurement],
    rounds: Sequence[AnyRound],
    project: Project,
    sizes: Iterable[tuple[str, Sequence[Measurement]]],
) -> tuple[str, ...]:
    """List what should be looked at, each with its numbers and the nearest thing that works.

    Args:
        found: The garment measured.
        rounds: Its rounds, for how its first edge stretches.
        project: The checked file.
        sizes: Every size that can be knitted alone, with its name, measured.
    """
    alone = [(name, {line.name: line for line in measured}) for name, measured in sizes]
    return (
        *_units(found, project),
        *_over_the_head(found, rounds, project, alone),
        *_tight(found, project, alone),
    )


def _units(found: Iterable[Measurement], project: Project) -> Iterator[str]:
    """Warn of body measurements that make sense only in the other unit."""
    told = set()
    for line in found:
        if line.body_mm is None or line.measure in told:
            continue
        inches = project.units == "in"
        other_mm = line.body_mm / 2.54 if inches else line.body_mm * 2.54
        share, other = line.finished_mm / line.body_mm, line.finished_mm / other_mm
        off = share < 1 / _FAR if inches else share > _FAR
        if not off or not _NEAR[0] <= other <= _NEAR[1]:
            continue
        told.add(line.measure)
        number = length(line.body_mm, project.units).split()[0]
        wrong, right = ("in", "cm") if inches else ("cm", "in")
        garment = length(line.finished_mm, project.units)
        yield (
            f"{line.measure} is {number} {wrong}, and the {line.name} {garment}: "
            f"{number} {right}, which is {length(other_mm, project.units)}, would fit. "
            f"If it was meant, write `{line.measure}: {number} {right}`."
        )


def _over_the_head(
    found: Iterable[Measurement],
    rounds: Sequence[AnyRound],
    project: Project,
    alone: list[tuple[str, dict[str, Measurement]]],
) -> Iterator[str]:
    """Warn of a first edge that does not reach around the head."""
    head = project.body.get("head")
    edge = next((line for line in found if line.measure in ("neck", "head") and line.stitches), None)
    if head is None or edge is None or (edge.measure == "neck" and rounds[0].gauge == ""):
        return
    if edge.measure == "neck" and _open_in_front(rounds):
        return
    stretch = EDGE_STRETCH if _ribbed(rounds) else PLAIN_STRETCH
    if edge.needles_mm * stretch >= head:
        return
    units = project.units
    stitch_mm = edge.needles_mm / edge.stitches
    needed = math.ceil(head / stretch / stitch_mm)
    works = [name for name, measured in alone if measured[edge.name].needles_mm * stretch >= head]
    size = f"; size {works[0]} has {_stitches(alone, works[0], edge.name)}" if works else ""
    stretched = length(edge.needles_mm * stretch, units)
    yield (
        f"the {edge.name} of {edge.stitches} stitches is {length(edge.needles_mm, units)} and stretches to "
        f"about {stretched}: it would not go over a head of {length(head, units)}. "
        f"From {needed} stitches on it would{size}."
    )


def _stitches(alone: list[tuple[str, dict[str, Measurement]]], size: str, name: str) -> int:
    return next(measured[name].stitches for found, measured in alone if found == size)


def _open_in_front(rounds: Sequence[AnyRound]) -> bool:
    """Return whether the garment is worked in rows at the neck, as a cardigan is."""
    return rounds[min(1, len(rounds) - 1)].flat


def _ribbed(rounds: Sequence[AnyRound]) -> bool:
    """Return whether the rounds after the cast-on are a rib."""
    for each in rounds[1:3]:
        for item in each.phrase:
            if isinstance(item, Group) and {run.stitch for run in item.items if isinstance(run, Run)} == {
                "k",
                "p",
            }:
                return True
    return False


def _tight(
    found: Iterable[Measurement], project: Project, alone: list[tuple[str, dict[str, Measurement]]]
) -> Iterator[str]:
    """Warn of a chest that would have to stretch a lot, and name a size that would not."""
    chest = next((line for line in found if line.measure == "bust" and line.ease_mm is not None), None)
    if chest is None or chest.body_mm is None or chest.ease_mm is None:
        return
    if chest.ease_mm >= -TIGHT * chest.body_mm or chest.finished_mm * _FAR < chest.body_mm:
        return
    units = project.units
    body = chest.body_mm
    wider = [
        (measured["chest"].finished_mm, name)
        for name, measured in alone
        if "chest" in measured and measured["chest"].finished_mm >= (1 - TIGHT) * body
    ]
    nearest = min(wider, default=None)
    size = f" Nearest: size {nearest[1]}, {length(nearest[0], units)}." if nearest else ""
    yield (
        f"the chest is {length(-chest.ease_mm, units)} narrower than the body, "
        f"{-chest.ease_mm / body:.0%} of it: it would be worn stretched.{size}"
    )
