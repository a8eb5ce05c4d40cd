"""Measurements of what goes around a body and arms: yokes up and down, pieces sewn up, cardigans. Pure."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import groupby

from stepper.report.measure.fabrics import is_rib
from stepper.report.measure.measuring import AnyRound, Measurement
from stepper.report.measure.roles import Roles, SleevePart, Torso, YokeRole, count_before_edges
from stepper.report.measure.tape import Tape, is_whole

_UNDERARM = 0.15
# An underarm takes at most this share of a piece at once; a neck takes more. Chosen here: in the percentage
# system it is 8 % of the body in all, 16 % of a half, at both its ends together.
_LEAST_ARMHOLE_MM = 100.0
# Shaping over less height than this is a shoulder. Chosen here.


def measure_yoke(
    rounds: Sequence[AnyRound], roles: Roles, yoke: YokeRole, tape: Tape
) -> Iterator[Measurement]:
    """Measure a garment whose body and sleeves meet in a yoke, from whichever end it is worked."""
    body = tuple(yoke.body[: count_before_edges(roles.flow, yoke.body)])
    edge = rounds[neck_edge(roles, yoke)]
    yield tape.around("neck", edge, edge.after or edge.before, "neck")
    for index in yoke.yoke:
        each = rounds[index]
        if each.evenly and each.label:
            yield tape.around(each.label, each, each.before if yoke.upward else each.after)
    parted = rounds[yoke.at]
    yield tape.around("full yoke", parted, parted.after if yoke.upward else parted.before)
    band = front_band(rounds, roles, tape)
    if body:
        below = rounds[body[-1] if yoke.upward else body[0]]
        around = below.after if yoke.upward else parted.after
        wider = band if below.flat else None
        yield add_band(tape.around("chest", below, around, "bust"), wider)
        lower = rounds[body[0] if yoke.upward else body[-1]]
        yield add_band(tape.around("lower edge", lower, lower.after, "hip"), wider)
    yield tape.long("yoke depth", [rounds[index] for index in yoke_without_band(rounds, roles, yoke)])
    yield from _yoke_lengths(rounds, roles, yoke, tape)


def _yoke_lengths(
    rounds: Sequence[AnyRound], roles: Roles, yoke: YokeRole, tape: Tape
) -> Iterator[Measurement]:
    """Measure the length of every section other than the yoke itself, with the sleeves in their places."""
    inside = {*yoke_without_band(rounds, roles, yoke)}
    parted = rounds[yoke.at].section
    if yoke.upward or any(rounds[index].section == parted for index in inside):
        inside.add(yoke.at)  # otherwise it is the first round of the body
    inside.update(yoke.body[count_before_edges(roles.flow, yoke.body) :])
    sleeves = {index: sleeve for sleeve in yoke.sleeves for index in sleeve.rounds}
    for name, group in groupby(range(len(rounds)), key=lambda index: rounds[index].section):
        indexes = list(group)
        sleeve = sleeves.get(indexes[0])
        if sleeve is not None:
            if indexes[0] == sleeve.rounds[0]:
                yield from measure_sleeve(rounds, sleeve, roles, tape)
            continue
        outside = [index for index in indexes if index not in inside]
        mixed = len(outside) < len(indexes) and yoke.yoke and all(index in yoke.yoke for index in outside)
        line = tape.long(f"{'neckband' if mixed else name}, length", [rounds[index] for index in outside])
        if line.needles_mm:
            yield line


def _is_band(rounds: Sequence[AnyRound], indexes: Sequence[int]) -> bool:
    """Return whether a section neither grows nor shrinks between its edges: a neckband is not shaped."""
    return all(rounds[index].before == rounds[index].after for index in indexes if is_whole(rounds[index]))


def neck_edge(roles: Roles, yoke: YokeRole) -> int:
    """Return the index of the round whose stitches are at the neck edge."""
    if not yoke.upward:
        return yoke.yoke[0] if yoke.yoke else yoke.at
    return yoke.yoke[count_before_edges(roles.flow, yoke.yoke) - 1]


def yoke_without_band(rounds: Sequence[AnyRound], roles: Roles, yoke: YokeRole) -> tuple[int, ...]:
    """Return the rounds of a yoke without its neckband, in working order.

    A neckband is a rib at the neck, or a section of its own there without shaping.
    """
    inside = list(yoke.yoke[: count_before_edges(roles.flow, yoke.yoke)]) if yoke.upward else list(yoke.yoke)
    from_neck = inside[::-1] if yoke.upward else inside
    section = rounds[from_neck[0]].section if from_neck else ""
    named = [index for index in from_neck if rounds[index].section == section]
    straight = section != rounds[yoke.at].section and _is_band(rounds, named) and len(named) < len(from_neck)
    count = 0
    for index in from_neck:
        ends = not is_whole(rounds[index])
        if not (ends or is_rib(rounds[index].phrase) or (straight and rounds[index].section == section)):
            break
        count += 1
    rest = from_neck[count:]
    return tuple(rest[::-1] if yoke.upward else rest)


def measure_sleeve(
    rounds: Sequence[AnyRound], sleeve: SleevePart, roles: Roles, tape: Tape
) -> Iterator[Measurement]:
    """Measure a sleeve at the upper arm and the wrist, and from the underarm to the wrist."""
    taken_up = 0
    while taken_up < len(sleeve.rounds) and roles.flow.has(sleeve.rounds[taken_up], "return"):
        taken_up += 1
    inside = list(sleeve.rounds[taken_up : count_before_edges(roles.flow, sleeve.rounds)])
    if not inside:
        return
    cap: list[int] = []
    if sleeve.sewn:
        inside, cap = _to_the_cap(rounds, roles, inside)
    top = rounds[inside[-1] if sleeve.upward else inside[0]]
    wrist = rounds[inside[0] if sleeve.upward else inside[-1]]
    widest = max((rounds[index] for index in inside), key=lambda each: each.after) if sleeve.sewn else top
    yield tape.around(f"{sleeve.name}, upper arm", widest, widest.after, "upper_arm")
    yield tape.around(f"{sleeve.name}, wrist", wrist, wrist.after, "wrist")
    yield tape.long(f"{sleeve.name}, length", [rounds[index] for index in inside], "arm_length")
    if cap:
        yield tape.long(f"{sleeve.name}, cap height", [rounds[index] for index in cap])


def _to_the_cap(rounds: Sequence[AnyRound], roles: Roles, indexes: list[int]) -> tuple[list[int], list[int]]:
    """Divide a piece where some stitches are first bound off: there the cap or armhole begins."""
    for place, index in enumerate(indexes):
        if rounds[index].after and rounds[index].before and roles.flow.has(index, "bo"):
            return indexes[:place], indexes[place:]
    return indexes, []


def front_band(rounds: Sequence[AnyRound], roles: Roles, tape: Tape) -> Measurement | None:
    """Measure the width of a cardigan's band: buttoned, one lies over the other. None without a band."""
    strands = [roles.flow.strands[number] for number in roles.bands]
    found = [tape.long("band", [rounds[index] for index in strand.rounds]) for strand in strands]
    return max(found, key=lambda each: each.needles_mm, default=None)


def measure_torso(
    rounds: Sequence[AnyRound], roles: Roles, torso: Torso, tape: Tape
) -> Iterator[Measurement]:
    """Measure a garment without a yoke: a body divided at the armholes, or flat pieces side by side."""
    widths = [_widest(rounds, roles, torso, name, indexes, tape) for name, indexes in torso.parts]
    if len(widths) > 1:
        yield from widths
    if not torso.missing:
        chest = tape.side_by_side("chest", widths, "bust")
        open_ = any(rounds[index].flat for _, indexes in torso.parts for index in indexes[1:2])
        band = front_band(rounds, roles, tape) if open_ else None
        yield add_band(chest, band)
        hems = [tape.around("", rounds[indexes[0]], rounds[indexes[0]].after) for _, indexes in torso.parts]
        yield add_band(tape.side_by_side("lower edge", hems, "hip"), band)
    elif len(widths) == 1:
        yield from widths
    yield from _lengths(rounds, roles, torso, tape)
    for sleeve in roles.sleeves:
        yield from measure_sleeve(rounds, sleeve, roles, tape)


def add_band(line: Measurement, band: Measurement | None) -> Measurement:
    """Add the width of a band in front to a width; return it unchanged without a band."""
    if band is None:
        return line
    blocked = line.blocked_mm + band.finished_mm if line.blocked_mm is not None else None
    return replace(line, needles_mm=line.needles_mm + band.needles_mm, blocked_mm=blocked)


def _widest(
    rounds: Sequence[AnyRound], roles: Roles, torso: Torso, name: str, indexes: tuple[int, ...], tape: Tape
) -> Measurement:
    """Measure a piece of the body where the chest is: just below the armholes, or else where it is widest."""
    inside, cut = _to_the_cap(rounds, roles, list(indexes))
    if torso.divided is not None or cut:
        here = rounds[inside[-1]]
        return tape.around(f"{name}, width", here, here.after)
    here = max((rounds[index] for index in inside), key=lambda each: each.after)
    worked = [rounds[index] for index in inside]
    straight = [each for each in worked if each.after == here.after == each.before]
    here = straight[-1] if straight else here
    return tape.around(f"{name}, width", here, here.after)


def _lengths(rounds: Sequence[AnyRound], roles: Roles, torso: Torso, tape: Tape) -> Iterator[Measurement]:
    sleeves = {index for sleeve in roles.sleeves for index in sleeve.rounds}
    for name, indexes in torso.parts:
        inside, cut = _to_the_cap(rounds, roles, list(indexes))
        if torso.divided is not None:
            yield tape.long(f"{name}, to the armhole", [rounds[index] for index in indexes])
            yield tape.long("armhole depth", [rounds[index] for index in torso.above])
        elif cut and roles.flow.edges[cut[0]]["bo"] <= _UNDERARM * rounds[cut[0]].before:
            depth = tape.long(f"{name}, armhole depth", [rounds[index] for index in cut])
            if depth.needles_mm >= _LEAST_ARMHOLE_MM:
                yield tape.long(f"{name}, to the armhole", [rounds[index] for index in inside])
                yield depth
        yield tape.long(f"{name}, length", [rounds[index] for index in (*indexes, *torso.above)])
    own = {index for _, indexes in torso.parts for index in indexes} | set(torso.above) | sleeves
    own.add(-1 if torso.divided is None else torso.divided)
    for name, group in groupby(range(len(rounds)), key=lambda index: rounds[index].section):
        rest = [rounds[index] for index in group if index not in own]
        line = tape.long(f"{name}, length", rest)
        if line.needles_mm:
            yield line
