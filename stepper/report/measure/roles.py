"""What each strand of a garment is (yoke, body, sleeve, band), judged by its edges and what joins it.
Pure."""

from __future__ import annotations

import re
from collections.abc import Sequence

from stepper.records import dataclass
from stepper.regex import regex
from stepper.report.measure.flow import Flow, Passage, Strand, follow_stitches
from stepper.report.measure.measuring import AnyRound
from stepper.report.measure.tape import is_whole

TAPERED = 0.85
"""A piece that ends with at most this share of its stitches narrows as a sleeve does. Chosen here."""
HALVED = 0.4
"""Where a body is divided at the armholes, at least this share goes to its other half. Chosen here."""
_WIDEST = 0.9
# A body is divided at the armholes while it is about at its widest, not at its neck.
_JOIN_ROUNDS = 8
# Body and sleeves are joined within this many rounds.

_TORSO = regex(r"\b(?:back|fronts?|body)\b", re.IGNORECASE)
_HALF = regex(r"\b(?:back|fronts?)\b", re.IGNORECASE)
_SLEEVE = regex(r"\bsleeves?\b", re.IGNORECASE)
_BAND = regex(r"\b(?:button\s*-?\s*(?:hole\s*)?|front\s+|left\s+|right\s+)bands?\b", re.IGNORECASE)
_FRONT_EDGE = regex(r"\bfronts?\b", re.IGNORECASE)


@dataclass(frozen=True, slots=True, kw_only=True)
class SleevePart:
    """A sleeve."""

    name: str
    rounds: tuple[int, ...]
    """Indexes of its rounds."""
    upward: bool
    """Whether it is worked from the wrist up."""
    sewn: bool = False
    """Whether it is a separate piece, which may end in a cap."""


@dataclass(frozen=True, slots=True, kw_only=True)
class YokeRole:
    """Where body and sleeves meet."""

    at: int
    """Index of the round that divides or joins them."""
    upward: bool
    """Whether it is worked from the hem up."""
    yoke: tuple[int, ...]
    """Indexes of its rounds in working order, including the neckband."""
    body: tuple[int, ...]
    sleeves: tuple[SleevePart, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Torso:
    """A body without a yoke: one piece that is divided at the armholes, or flat ones side by side."""

    parts: tuple[tuple[str, tuple[int, ...]], ...]
    """Pieces worn side by side: name and indexes of the rounds of each."""
    divided: int | None = None
    """Index of the round that divides one piece at the armholes; None if none does."""
    above: tuple[int, ...] = ()
    """Indexes of the rounds between that and the shoulder."""
    missing: str = ""
    """Which part of it is not in the file; empty if nothing is known to be missing."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Roles:
    """What was found."""

    flow: Flow
    yoke: YokeRole | None = None
    torso: Torso | None = None
    sleeves: tuple[SleevePart, ...] = ()
    bands: tuple[int, ...] = ()
    """Numbers of the strands that close the fronts."""


def assign_roles(rounds: Sequence[AnyRound]) -> Roles:
    """Find the yoke, body, sleeves and bands of a garment; a hat, mitten, sock or shawl has none."""
    flow = follow_stitches(rounds)
    yoke = _divided(flow, rounds) or _joined(flow, rounds)
    if yoke is not None:
        return Roles(flow=flow, yoke=yoke, sleeves=yoke.sleeves, bands=_bands(flow, rounds))
    torso = _halves(flow, rounds) or _split(flow, rounds) or _whole(flow, rounds)
    if torso is None:
        return Roles(flow=flow)
    return Roles(flow=flow, torso=torso, sleeves=_sleeves(flow, rounds), bands=_bands(flow, rounds))


def count_before_edges(flow: Flow, indexes: Sequence[int]) -> int:
    """Return how many of these rounds come before the edges and holders at their end."""
    end = len(indexes)
    while end > 1 and flow.has(indexes[end - 1], "bo", "hold", "graft", "draw"):
        end -= 1
    return end


def _divided(flow: Flow, rounds: Sequence[AnyRound]) -> YokeRole | None:
    """Find a yoke worked from the neck down: one round puts the stitches of two future sleeves on hold."""
    by_round: dict[int, list[Passage]] = {}
    for one in flow.passages:
        if not one.closes:
            by_round.setdefault(one.left_at, []).append(one)
    for at, held in sorted(by_round.items()):
        if len(held) < 2 or not _are_sleeves(flow, rounds, at, held):
            continue
        strand = flow.strands[held[0].source]
        return YokeRole(
            at=at,
            upward=False,
            yoke=tuple(index for index in strand.rounds if index < at),
            body=tuple(index for index in strand.rounds if index > at),
            sleeves=tuple(
                SleevePart(name=one.name, rounds=tuple(flow.strands[one.target].rounds), upward=False)
                for one in held
                if one.opens
            ),
        )
    return None


def _are_sleeves(flow: Flow, rounds: Sequence[AnyRound], at: int, held: Sequence[Passage]) -> bool:
    """Return whether parts put on hold are sleeves, and not fronts or underarms to be grafted."""
    if flow.has(at, "co") or all(_SLEEVE.search(one.name) for one in held):
        return True
    opened = [flow.strands[one.target] for one in held if one.opens]
    if len(opened) < 2:
        return False
    if any(flow.has(index, "pu") for strand in opened for index in strand.rounds[:3]):
        return True
    return all(_tapers(strand, rounds) for strand in opened)


def _joined(flow: Flow, rounds: Sequence[AnyRound]) -> YokeRole | None:
    """Find a yoke worked from the hem up: a body and two sleeves joined on one needle."""
    for strand in flow.strands:
        whole = [one for one in flow.joining(strand.number) if one.closes]
        joins = sorted(whole, key=lambda one: one.taken_at)
        joins = [one for one in joins if one.taken_at - joins[0].taken_at < _JOIN_ROUNDS]
        if len(joins) < 2:
            continue
        own = tuple(index for index in strand.rounds if index < joins[0].taken_at)
        members = [(one.stitches, tuple(flow.strands[one.source].rounds)) for one in joins]
        if own and rounds[own[-1]].after:
            members.append((rounds[own[-1]].after, own))
        if len(members) < 3:
            continue
        at = joins[-1].taken_at
        widest = max(members, key=lambda member: member[0])
        return YokeRole(
            at=at,
            upward=True,
            yoke=tuple(index for index in strand.rounds if index >= at),
            body=widest[1],
            sleeves=tuple(
                SleevePart(name=rounds[indexes[0]].section, rounds=indexes, upward=True)
                for member in members
                if member is not widest
                for indexes in [member[1]]
            ),
        )
    return None


def _halves(flow: Flow, rounds: Sequence[AnyRound]) -> Torso | None:
    """Find a back and fronts knitted separately, by the names of their sections."""
    found = [
        (rounds[strand.rounds[0]].section, tuple(strand.rounds))
        for strand in flow.strands
        if strand.begins == "cast-on"
        and _HALF.search(rounds[strand.rounds[0]].section)
        and not _SLEEVE.search(rounds[strand.rounds[0]].section)
    ]
    if not found:
        return None
    names = " ".join(name.lower() for name, _ in found)
    missing = "" if "front" in names and "back" in names else ("a front" if "back" in names else "a back")
    return Torso(parts=tuple(found), missing=missing)


def _split(flow: Flow, rounds: Sequence[AnyRound]) -> Torso | None:
    """Find a body in one piece that is divided at the armholes."""
    for strand in flow.strands:
        widest = max(rounds[index].after for index in strand.rounds)
        parts: dict[int, int] = {}
        for one in flow.leaving(strand.number):
            if one.opens and not one.closes and not _tapers(flow.strands[one.target], rounds):
                parts[one.left_at] = parts.get(one.left_at, 0) + one.stitches
        for at, stitches in sorted(parts.items()):
            before = rounds[at].before
            if before >= _WIDEST * widest and stitches >= HALVED * before:
                below = tuple(index for index in strand.rounds if index < at)
                above = tuple(index for index in strand.rounds if index > at)
                return Torso(parts=((rounds[at].section, below),), divided=at, above=above)
    return None


def _whole(flow: Flow, rounds: Sequence[AnyRound]) -> Torso | None:
    """Find a body that is one tube or one piece from edge to edge, by the name of its section."""
    for strand in flow.strands:
        names = {rounds[index].section for index in strand.rounds}
        if strand.begins == "cast-on" and any(_TORSO.search(name) for name in names):
            return Torso(parts=((rounds[strand.rounds[0]].section, tuple(strand.rounds)),))
    return None


def _sleeves(flow: Flow, rounds: Sequence[AnyRound]) -> tuple[SleevePart, ...]:
    """Find sleeves that are separate pieces or picked up around an armhole."""
    found = []
    for strand in flow.strands:
        name = rounds[strand.rounds[0]].section
        named = bool(_SLEEVE.search(name))
        picked = strand.begins == "pick-up"
        if strand.begins != "return" and (named or (picked and _tapers(strand, rounds))):
            part = SleevePart(name=name, rounds=tuple(strand.rounds), upward=not picked, sewn=not picked)
            found.append(part)
    return tuple(found)


def _tapers(strand: Strand, rounds: Sequence[AnyRound]) -> bool:
    """Return whether a strand is worked in the round and narrows towards its end."""
    whole = [rounds[index] for index in strand.rounds if is_whole(rounds[index])]
    if not whole or 2 * sum(each.flat for each in whole) > len(whole):
        return False
    return whole[-1].after <= TAPERED * whole[0].after


def _bands(flow: Flow, rounds: Sequence[AnyRound]) -> tuple[int, ...]:
    """Find bands picked up along the fronts, by the remark at the pick-up or by their name."""
    found = []
    for strand in flow.strands:
        if strand.begins != "pick-up":
            continue
        first = rounds[strand.rounds[0]]
        rows = [rounds[index] for index in strand.rounds if is_whole(rounds[index])]
        if not rows or not all(each.flat for each in rows):
            continue
        said = " ".join(first.remarks)
        if _BAND.search(first.section) or (_FRONT_EDGE.search(said) and "neck" not in first.section.lower()):
            found.append(strand.number)
    return tuple(found)
