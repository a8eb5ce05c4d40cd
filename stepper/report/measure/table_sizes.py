"""The wearer's measurements from a table of sizes, marked as such, if she gave only her bust. Pure."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace

from stepper.craft.body_sizes import BodySize, Measure, sizes_for_bust
from stepper.craft.gauge import to_mm
from stepper.language.measures import length
from stepper.project.model import Project
from stepper.report.measure.measuring import Measurement, body_of

_COLUMNS: dict[str, Measure] = {"upper_arm": "upper_arm", "arm_length": "arm", "hip": "hip", "waist": "waist"}
# The wearer's measurements by their names in a file, and what the table calls them.

_TORSO = ("upper_arm", "arm_length", "hip", "waist", "neck", "back_length")


def fill_from_table(found: Iterable[Measurement], project: Project) -> tuple[Measurement, ...]:
    """Fill in the table's measurement on each line that lacks her own, if all she gave is her bust."""
    sizes = table_sizes(project)
    filled = []
    for line in found:
        column = _COLUMNS.get(line.measure)
        if column is None or line.body_mm is not None or not sizes:
            filled.append(line)
        else:
            filled.append(replace(line, body_mm=_middle_mm(sizes, column), from_table=True))
    return tuple(filled)


def table_sizes(project: Project) -> tuple[BodySize, ...]:
    """Return the size of the table she falls into, or the two she falls between.

    None if she gave more than her bust, or a bust outside the table.
    """
    bust = body_of(project, "bust")
    if bust is None or any(measure in project.body for measure in _TORSO):
        return ()
    return sizes_for_bust(bust)


def _middle_mm(sizes: tuple[BodySize, ...], column: Measure) -> float:
    """Return the middle of the printed ranges of the sizes. Unit: mm."""
    ranges = [getattr(size, column) for size in sizes]
    return to_mm(sum(least + most for least, most in ranges) / (2 * len(ranges)), "in")


def name_table(project: Project) -> str:
    """Say where marked measurements come from; empty if none do."""
    sizes = table_sizes(project)
    bust = body_of(project, "bust")
    if not sizes or bust is None:
        return ""
    names = " and ".join(size.name for size in sizes)
    said = f"size {names}" if len(sizes) == 1 else f"between sizes {names}"
    return (
        f"* taken from the Craft Yarn Council's table of women's sizes for a bust of "
        f"{length(bust, project.units)} ({said}), the middle of each range; the table is quoted from memory. "
        "Your own, under `body`, is better."
    )
