"""What should make the knitter stop and think: units, edges too narrow, shallow yokes, stretched fits. Pure.

Sources on stretch are weak. A rib may stretch to about twice its width, but the edge it begins with does not;
the factors here are cautious and from memory.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence

from stepper.craft.fit import STRETCHED_SHARE
from stepper.craft.yoke import DEPTH_SHARE
from stepper.language.measures import length, plural
from stepper.plan.blend import Blend
from stepper.project.model import Project
from stepper.report.measure.fabrics import is_rib
from stepper.report.measure.garment_lines import neck_edge, yoke_without_band
from stepper.report.measure.measuring import AnyRound, Measurement, body_of
from stepper.report.measure.roles import Roles, assign_roles
from stepper.report.measure.tape import Tape, is_whole

EDGE_STRETCH = 1.5
"""How many times its width a ribbed edge stretches to at most. From memory; the rib itself stretches
further."""
PLAIN_STRETCH = 1.3
"""The same for an edge of plain stitches. From memory."""

_FAR, _NEAR = 1.9, (0.7, 1.6)
# Garment divided by body: no garment is meant to be beyond the first range; within the second it may well be.


def find_cautions(
    found: Sequence[Measurement],
    rounds: Sequence[AnyRound],
    project: Project,
    sizes: Iterable[tuple[str, Sequence[Measurement]]],
) -> tuple[str, ...]:
    """List what should be checked, each item with its numbers and the nearest thing that works.

    Args:
        found: The garment measured.
        rounds: Its rounds, which show how its edges stretch and how deep its yoke is.
        project: The checked file.
        sizes: Every size that can be knitted alone: its name and its measurements.
    """
    alone = [(name, {line.name: line for line in measured}) for name, measured in sizes]
    own = [line for line in found if not line.from_table]
    roles = assign_roles(rounds)
    return (
        *_units(own, project),
        *_too_narrow(own, rounds, roles, project, alone),
        *_tight(own, project, alone),
        *_shallow(own, rounds, roles, project),
    )


def find_unblended(tried: Iterable[Blend]) -> Iterator[str]:
    """Name the sizes that cannot be blended with any other, if a line could carry a switch at all."""
    tried = tuple(tried)
    blended = [each for each in tried if each.label]
    counts: dict[str, list[bool]] = {each.size: [] for each in tried if not each.label} if blended else {}
    for each in blended:
        for size in (each.size, each.then):
            counts.setdefault(size, []).append(each.works)
    if blended and not any(each.works for each in blended):
        yield f"no two sizes can be blended: of {plural(len(blended), 'way')} tried, none can be knitted."
        return
    for size, works in counts.items():
        if not works:
            yield f"no blend fits size {size}: no line that can be switched at is in it."
        elif not any(works):
            yield (
                f"no blend fits size {size}: of {plural(len(works), 'way')} to begin or to end with it, "
                "none can be knitted."
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


def _too_narrow(
    found: Iterable[Measurement],
    rounds: Sequence[AnyRound],
    roles: Roles,
    project: Project,
    alone: list[tuple[str, dict[str, Measurement]]],
) -> Iterator[str]:
    """Warn of an edge too narrow for what has to go through it: a head, a foot."""
    for edge, part in _edges(found, rounds, roles):
        around = project.body.get(part)
        if around is None or not edge.stitches:
            continue
        ribbed = _ribbed_edge(rounds, roles)
        stretch = EDGE_STRETCH if ribbed else PLAIN_STRETCH
        if edge.needles_mm * stretch >= around:
            continue
        needed = math.ceil(around / stretch / (edge.needles_mm / edge.stitches))
        works = [
            (name, measured[edge.name].stitches)
            for name, measured in alone
            if edge.name in measured and measured[edge.name].needles_mm * stretch >= around
        ]
        size = f"; size {works[0][0]} has {works[0][1]}" if works else ""
        units = project.units
        yield (
            f"the {edge.name.removesuffix(', around')} of {edge.stitches} stitches is "
            f"{length(edge.needles_mm, units)} and stretches to about "
            f"{length(edge.needles_mm * stretch, units)}: it would not go over a {part} of "
            f"{length(around, units)}. From {needed} stitches on it would{size}."
        )


def _edges(
    found: Iterable[Measurement], rounds: Sequence[AnyRound], roles: Roles
) -> Iterator[tuple[Measurement, str]]:
    """Yield the edges that a part of the body has to go through, each with that part."""
    told = set()
    for line in found:
        pulled_on = line.measure == "neck" and rounds[0].gauge and not _open_in_front(rounds, roles)
        if pulled_on or line.measure == "head":
            part = "head"
        elif line.name.endswith("cuff") and not line.measure:
            part = "foot"
        else:
            continue
        if part not in told:
            told.add(part)
            yield line, part


def _open_in_front(rounds: Sequence[AnyRound], roles: Roles) -> bool:
    """Return whether the garment is worked in rows at the neck, as a cardigan is."""
    if roles.yoke is None:
        return rounds[min(1, len(rounds) - 1)].flat
    inside = roles.yoke.yoke[::-1] if roles.yoke.upward else roles.yoke.yoke
    return next((rounds[index].flat for index in inside if is_whole(rounds[index])), False)


def _ribbed_edge(rounds: Sequence[AnyRound], roles: Roles) -> bool:
    """Return whether the rounds beside the edge are a rib."""
    if roles.yoke is not None and roles.yoke.upward:
        return is_rib(rounds[neck_edge(roles, roles.yoke)].phrase)
    return any(is_rib(each.phrase) for each in rounds[1:3])


def _shallow(
    found: Iterable[Measurement], rounds: Sequence[AnyRound], roles: Roles, project: Project
) -> Iterator[str]:
    """Warn of a yoke that does not reach the underarm, and say how many rounds are missing."""
    lines = {line.name: line for line in found}
    depth, chest = lines.get("yoke depth"), lines.get("chest")
    if roles.yoke is None or depth is None or chest is None:
        return
    body = body_of(project, "bust")
    bust = body if body is not None else chest.finished_mm
    if chest.finished_mm * _FAR < bust or bust * _FAR < chest.finished_mm:
        return  # probably the units are wrong, which is told already
    inside = yoke_without_band(rounds, roles, roles.yoke)
    each_mm = Tape(project).round_mm(rounds[inside[-1]]) if inside else 0.0
    short_mm = DEPTH_SHARE * bust - depth.finished_mm
    missing = math.ceil(round(short_mm / each_mm, 6)) if each_mm else 0
    if missing < 2:
        return  # one round is within the tape's own error
    units = project.units
    whose = "the bust" if body is not None else "the chest"
    yield (
        f"the yoke is {length(depth.finished_mm, units)} deep without its neckband; a quarter of {whose} is "
        f"{length(DEPTH_SHARE * bust, units)}, the depth of the percentage system for yokes: about "
        f"{missing} rounds are missing, and it would pull under the arms."
    )


def _tight(
    found: Iterable[Measurement], project: Project, alone: list[tuple[str, dict[str, Measurement]]]
) -> Iterator[str]:
    """Warn of a chest that would have to stretch a lot, and name a size that would not."""
    chest = next((line for line in found if line.measure == "bust" and line.ease_mm is not None), None)
    if chest is None or chest.body_mm is None or chest.ease_mm is None:
        return
    if chest.word != "stretched" or chest.finished_mm * _FAR < chest.body_mm:
        return
    units = project.units
    body = chest.body_mm
    wider = [
        (measured["chest"].finished_mm, name)
        for name, measured in alone
        if "chest" in measured and measured["chest"].finished_mm >= (1 - STRETCHED_SHARE) * body
    ]
    nearest = min(wider, default=None)
    size = f" Nearest: size {nearest[1]}, {length(nearest[0], units)}." if nearest else ""
    yield (
        f"the chest is {length(-chest.ease_mm, units)} narrower than the body, "
        f"{-chest.ease_mm / body:.0%} of it: beyond {STRETCHED_SHARE:.0%} that is no longer a close fit: it "
        f"would be worn stretched.{size}"
    )
