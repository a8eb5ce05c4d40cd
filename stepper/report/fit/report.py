"""Everything that `stepper fit` shows, for the page, the JSON document and the picture. Pure."""

from __future__ import annotations

from collections.abc import Sequence

from stepper.plan.blend import Blend
from stepper.plan.model import Plan
from stepper.project.model import Project
from stepper.records import dataclass
from stepper.report.fit.cautions import find_cautions, find_unblended
from stepper.report.fit.lines import describe_spacing
from stepper.report.fit.ranking import RankedBlend, find_wishes, rank_blends, wanted_ease
from stepper.report.measure.measurements import measure_fully
from stepper.report.measure.measuring import Measurement
from stepper.report.measure.table_sizes import name_table, table_sizes

FORMAT = 1
"""Version of the document; raised by every change that breaks readers."""


@dataclass(frozen=True, slots=True, kw_only=True)
class FitReport:
    """A garment measured, and every way to blend its sizes."""

    project: Project
    now: tuple[Measurement, ...]
    """As the file knits it."""
    ranked: tuple[RankedBlend, ...]
    """What can be knitted, nearest to the ease wanted first."""
    rejected: tuple[Blend, ...]
    """What cannot."""
    cautions: tuple[str, ...]
    """What should be checked."""
    left_out: tuple[str, ...]
    """What was not measured, or how something was measured."""


def report_fit(project: Project, plan: Plan, tried: Sequence[Blend]) -> FitReport:
    """Measure and rank.

    Args:
        project: The checked file.
        plan: The garment as the file knits it.
        tried: Every blend, as `stepper.plan.blend.blends` returns them.
    """
    measured = measure_fully(plan.rounds, project)
    now = measured.lines
    found = rank_blends(tried, project, now)
    alone = [(one.blend.size, one.lines) for one in found if not one.blend.label]
    order = {size: place for place, size in enumerate(project.sizes)}
    alone.sort(key=lambda pair: order[pair[0]])
    return FitReport(
        project=project,
        now=now,
        ranked=found,
        rejected=tuple(each for each in tried if not each.works),
        cautions=(*find_cautions(now, plan.rounds, project, alone), *find_unblended(tried)),
        left_out=measured.left_out,
    )


def fit_document(found: FitReport) -> dict[str, object]:
    """Return the JSON document: plain values only, lengths in mm."""
    return {
        "format": FORMAT,
        "title": found.project.title,
        "lines": [_line(line) for line in found.now],
        "wanted_ease_mm": wanted_ease(found.project),
        "ranked_by": [
            {"measure": each.measure, "ease_mm": each.ease_mm, "assumed": each.assumed}
            for each in find_wishes(found.project)
        ],
        "table_sizes": [each.name for each in table_sizes(found.project)],
        "table_note": name_table(found.project) or None,
        "cautions": list(found.cautions),
        "left_out": list(found.left_out),
        "blends": [_ranked(one) for one in found.ranked],
        "rejected": [{"why": each.why_not, **_blend(each)} for each in found.rejected],
    }


def _line(line: Measurement) -> dict[str, object]:
    return {
        "name": line.name,
        "stitches": line.stitches or None,
        "needles_mm": line.needles_mm,
        "blocked_mm": line.blocked_mm,
        "measure": line.measure or None,
        "body_mm": line.body_mm,
        "body_from_table": line.from_table,
        "ease_mm": line.ease_mm if line.compared else None,
        "fit": line.word or None,
    }


def _ranked(one: RankedBlend) -> dict[str, object]:
    return {
        "off_by_mm": one.off_mm,
        **_blend(one.blend),
        "spacing": describe_spacing(one.blend) if one.blend.label else None,
        "lines": [{**_line(line), "change_mm": one.changes_mm.get(line.name)} for line in one.lines],
        "divides": [
            {"what": each.name, "stitches": each.stitches, "times": each.times} for each in one.later
        ],
    }


def _blend(blend: Blend) -> dict[str, object]:
    return {
        "size": blend.size,
        "then": blend.then,
        "from": blend.label or None,
        "before": blend.before,
        "after": blend.after,
        "gaps": [list(pair) for pair in blend.gaps],
    }
