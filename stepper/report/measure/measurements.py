"""What the garment measures, line by line, beside the wearer, and what cannot be known. Pure."""

from __future__ import annotations

from collections.abc import Sequence

from stepper.project.model import Project
from stepper.records import dataclass
from stepper.report.measure.garment_lines import measure_torso, measure_yoke
from stepper.report.measure.measuring import AnyRound, Measurement
from stepper.report.measure.roles import Roles, assign_roles
from stepper.report.measure.small_lines import kind_of, measure_small
from stepper.report.measure.table_sizes import fill_from_table
from stepper.report.measure.tape import Tape


@dataclass(frozen=True, slots=True, kw_only=True)
class GarmentMeasurements:
    """A garment measured."""

    lines: tuple[Measurement, ...]
    left_out: tuple[str, ...]
    """What was not measured, or how something was measured, each as a sentence."""


def measure_garment(rounds: Sequence[AnyRound], project: Project) -> tuple[Measurement, ...]:
    """Measure a garment at every place that matters and that it has."""
    return measure_fully(rounds, project).lines


def measure_fully(rounds: Sequence[AnyRound], project: Project) -> GarmentMeasurements:
    """Measure a garment, and list what cannot be measured.

    Its kind follows from its stitches: a round that divides two sleeves from a body or joins them to it makes
    a yoke; a body divided at the armholes, or pieces named back and front, make a garment without one;
    anything else is a hat, mitten, sock, tube or flat piece, judged by its heel, its thumb and its ends.

    Args:
        rounds: In the order knitted.
        project: The checked file, for gauges and the wearer.
    """
    tape = Tape(project)
    roles = assign_roles(rounds)
    if roles.yoke is not None:
        found = tuple(measure_yoke(rounds, roles, roles.yoke, tape))
    elif roles.torso is not None:
        found = tuple(measure_torso(rounds, roles, roles.torso, tape))
    else:
        found = tuple(measure_small(rounds, roles.flow, tape))
    left_out = tuple(_left_out(rounds, roles, found, tape))
    return GarmentMeasurements(lines=fill_from_table(found, project), left_out=left_out)


def _left_out(
    rounds: Sequence[AnyRound], roles: Roles, found: Sequence[Measurement], tape: Tape
) -> list[str]:
    said = []
    measured = {line.measure for line in found}
    if roles.torso is not None:
        if roles.torso.missing:
            said.append(f"The chest is left out: {roles.torso.missing} to go with it is not in the file.")
        if "neck" not in measured:
            said.append("The neck is left out: the stitches do not show which edges meet there.")
        if not roles.sleeves and "upper_arm" in tape.project.body:
            said.append("The upper arm is left out: no piece is known to be a sleeve.")
        if len(roles.torso.parts) > 1 and not roles.torso.missing:
            said.append("Pieces are added up edge to edge; what a seam takes up is not deducted.")
    if roles.bands and (roles.yoke is not None or roles.torso is not None):
        said.append("The chest counts one band: buttoned, the bands lie over each other.")
    if roles.yoke is None and roles.torso is None:
        kinds = {kind_of(strand, rounds, roles.flow, tape) for strand in roles.flow.strands}
        first = kind_of(roles.flow.strands[0], rounds, roles.flow, tape) if roles.flow.strands else "flat"
        if first == "closed":
            said.append("What it goes around is left out: nothing says whether it is for head, hand or foot.")
        if "flat" in kinds and any("widest row" in line.name for line in found):
            said.append(
                "A shaped flat piece is described by its widest row and its rows: which edges it runs "
                "along is not known."
            )
    return said
