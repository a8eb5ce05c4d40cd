"""How wide a yoke is at each depth, and how wide the wearer is there. Pure."""

from __future__ import annotations

from collections.abc import Sequence

from stepper.craft.yoke import joined_width
from stepper.project.model import Project
from stepper.records import dataclass
from stepper.report.measure.garment_lines import yoke_without_band
from stepper.report.measure.measuring import AnyRound
from stepper.report.measure.roles import Roles, YokeRole, assign_roles, count_before_edges
from stepper.report.measure.tape import Tape, is_whole


@dataclass(frozen=True, slots=True, kw_only=True)
class YokeRound:
    """One round of a yoke."""

    depth_mm: float
    """From the first edge to its lower edge. Unit: mm."""
    around_mm: float
    """Finished, blocked if that is known. Unit: mm."""
    label: str | None
    """Label of the line it is the first round of, if it spreads changes evenly; otherwise None."""
    before: int
    after: int


@dataclass(frozen=True, slots=True, kw_only=True)
class WearerOutline:
    """The wearer from the neck to the level of the underarm."""

    neck_mm: float
    underarm_mm: float
    """Around body and both arms. Unit: mm."""
    collar_mm: float = 0.0
    """How far down the neck is straight: the height of the neckband. Unit: mm."""


def follow_yoke(rounds: Sequence[AnyRound], project: Project) -> tuple[YokeRound, ...]:
    """Follow a yoke from the neck down to the underarm, whichever way it is worked; empty if there is none.

    Args:
        rounds: The garment, in the order knitted.
        project: The checked file, for its gauges.
    """
    roles = assign_roles(rounds)
    if roles.yoke is None:
        return ()
    tape = Tape(project)
    steps = []
    depth = 0.0
    for each in _from_the_neck(rounds, roles, roles.yoke):
        fabric = tape.fabrics.of(each)
        if fabric is None:
            continue
        gauge = fabric.blocked or fabric.gauge
        if is_whole(each):
            depth += gauge.round_mm
        steps.append(
            YokeRound(
                depth_mm=depth,
                around_mm=gauge.width_mm(each.before if roles.yoke.upward else each.after),
                label=each.label if each.evenly else None,
                before=each.before,
                after=each.after,
            )
        )
    return tuple(steps)


def _from_the_neck(rounds: Sequence[AnyRound], roles: Roles, yoke: YokeRole) -> list[AnyRound]:
    """Return the rounds of a yoke from the neck to the underarm."""
    if not yoke.upward:
        return [rounds[index] for index in yoke.yoke if rounds[index].after]
    inside = [
        rounds[index] for index in yoke.yoke[: count_before_edges(roles.flow, yoke.yoke)] if index != yoke.at
    ]
    return [each for each in reversed(inside) if each.before]


def collar_mm(rounds: Sequence[AnyRound], steps: Sequence[YokeRound]) -> float:
    """Return the height of a neckband; 0 without one. Unit: mm."""
    roles = assign_roles(rounds)
    if roles.yoke is None:
        return 0.0
    inside = _from_the_neck(rounds, roles, roles.yoke)
    below = {index for index in yoke_without_band(rounds, roles, roles.yoke) if index != roles.yoke.at}
    worked = len(inside) - len(below)
    return steps[worked - 1].depth_mm if 0 < worked <= len(steps) else 0.0


def outline_wearer(project: Project, collar_mm: float = 0.0) -> WearerOutline | None:
    """Work out the wearer's outline; None if neck, bust or upper arm is not measured.

    Body and arms together measure the bust and both arms minus the four places where they meet, each a share
    of the bust as in the percentage system.

    Source: joined = body + 2 sleeves - 4 underarms, the underarm 8 % of the body (yoke cheat sheet citing
        Knitting Without Tears; see `stepper.craft.yoke`). An estimate: nobody is measured there.
    """
    bust = project.body.get("bust", project.body.get("chest"))
    neck, arm = project.body.get("neck"), project.body.get("upper_arm")
    if bust is None or neck is None or arm is None:
        return None
    return WearerOutline(neck_mm=neck, underarm_mm=joined_width(bust, arm), collar_mm=collar_mm)


def find_tight_rounds(steps: Sequence[YokeRound], body: WearerOutline) -> tuple[YokeRound, ...]:
    """Find the rounds narrower than the wearer, whose outline is assumed to widen evenly."""
    depth = steps[-1].depth_mm
    return tuple(step for step in steps if step.around_mm < wearer_around(body, step.depth_mm, depth))


def wearer_around(body: WearerOutline, depth_mm: float, underarm_depth_mm: float) -> float:
    """Return how wide the wearer is at a depth: straight along the neck, then widening evenly. Unit: mm."""
    slope = underarm_depth_mm - body.collar_mm
    share = max(0.0, depth_mm - body.collar_mm) / slope if slope > 0 else 1.0
    return body.neck_mm + (body.underarm_mm - body.neck_mm) * share
