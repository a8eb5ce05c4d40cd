"""A drawing of the yoke's profile: circumference against depth for printed sizes, blend and body. Pure.

Every line has its own dash pattern and its name beside it, so that nothing is conveyed by colour alone.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence

from stepper.language.measures import length
from stepper.plan.blend import Blend
from stepper.plan.model import Plan
from stepper.project.model import Project
from stepper.records import dataclass
from stepper.report.drawing.shapes import Area, Drawing, Label, Path, Point, Shape
from stepper.report.drawing.yoke_profile import (
    WearerOutline,
    YokeRound,
    collar_mm,
    find_tight_rounds,
    follow_yoke,
    outline_wearer,
    wearer_around,
)

WIDTH, HEIGHT = 960, 620
_LEFT, _RIGHT, _TOP, _BOTTOM = 70, 190, 92, 64
_INK, _FAINT, _GRID = "#1d2733", "#5d6975", "#dfe4e8"
_BLEND, _BODY, _BINDS = "#0b5fa5", "#b3411a", "#f6d9cc"
_PRINTED = (("#3f7d4e", (9.0, 4.0)), ("#7a4fa0", (2.5, 3.5)), ("#77621b", (12.0, 3.0, 2.0, 3.0)))
_STEPS = (10.0, 20.0, 25.0, 50.0, 100.0, 200.0)


@dataclass(frozen=True, slots=True, kw_only=True)
class YokeCurve:
    """One yoke to draw."""

    name: str
    steps: tuple[YokeRound, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class _Scales:
    """The scales from lengths to points on the sheet."""

    widest_mm: float
    deepest_mm: float
    unit_mm: float
    """10 for centimetres, 25.4 for inches."""

    def at(self, around_mm: float, depth_mm: float) -> Point:
        """Return the point for a circumference at a depth."""
        x = _LEFT + around_mm / self.widest_mm * (WIDTH - _LEFT - _RIGHT)
        return x, _TOP + depth_mm / self.deepest_mm * (HEIGHT - _TOP - _BOTTOM)


def draw_yoke_of(
    project: Project, plan: Plan, tried: Sequence[Blend], *, trouble: str = ""
) -> Drawing | None:
    """Draw the yoke of a garment beside the printed sizes it is blended from; None if it has no yoke.

    Args:
        project: The checked file.
        plan: As the file knits it.
        tried: The single sizes among the blends, as `stepper.plan.blend.blends` returns them.
        trouble: Why the file's blend cannot be knitted, in which case the single size is drawn.
    """
    steps = follow_yoke(plan.rounds, project)
    if not steps:
        return None
    switches = () if trouble else project.switches
    sizes = [project.sizes[size] for size in (project.size, *(each.size for each in switches))]
    printed = [
        YokeCurve(name=f"size {blend.size}", steps=follow_yoke(blend.rounds, project))
        for size in dict.fromkeys(sizes)
        for blend in tried
        if blend.works and not blend.label and blend.size == size and len(sizes) > 1
    ]
    body = outline_wearer(project, collar_mm(plan.rounds, steps))
    name = f"as knitted: {', then '.join(sizes)}" if len(sizes) > 1 else f"size {sizes[0]}"
    knitted = YokeCurve(name=name, steps=steps)
    return draw_yoke(knitted, printed, body, title=project.title, units=project.units)


def draw_yoke(
    knitted: YokeCurve, printed: Sequence[YokeCurve], body: WearerOutline | None, *, title: str, units: str
) -> Drawing:
    """Draw the profile.

    Args:
        knitted: As the file knits it, with at least one step.
        printed: The single sizes it is blended from; none if it is one size.
        body: The wearer; None if she is not measured.
        title: Of the garment.
        units: `cm` or `in`.
    """
    outlines = [knitted, *printed]
    widest = max(step.around_mm for each in outlines for step in each.steps)
    deepest = max(each.steps[-1].depth_mm for each in outlines)
    if body is not None:
        widest = max(widest, body.underarm_mm)
    scales = _Scales(
        widest_mm=widest * 1.04, deepest_mm=deepest * 1.03, unit_mm=25.4 if units == "in" else 10.0
    )
    shapes: list[Shape] = [*_grid(scales, units)]
    if body is not None:
        shapes += _bound(knitted.steps, body, scales)
    names: list[tuple[Point, str, str, bool]] = []
    for number, each in enumerate(printed):
        colour, dash = _PRINTED[number % len(_PRINTED)]
        shapes.append(Path(points=_stairs(each.steps, scales), colour=colour, width=1.8, dash=dash))
        names.append((_end(each.steps, scales), each.name, colour, False))
    if body is not None:
        shapes += _body(knitted.steps, body, scales)
        names.append((scales.at(body.underarm_mm, knitted.steps[-1].depth_mm), "body and arms", _BODY, False))
    shapes.append(Path(points=_stairs(knitted.steps, scales), colour=_BLEND, width=3.4))
    names.append((_end(knitted.steps, scales), knitted.name, _BLEND, True))
    shapes += _names(names)
    shapes += _increases(knitted.steps, scales)
    shapes += _heading(knitted, body, title, units)
    return Drawing(
        width=WIDTH, height=HEIGHT, title=_in_words(knitted, body, title, units), shapes=tuple(shapes)
    )


def _stairs(steps: Iterable[YokeRound], scales: _Scales) -> tuple[Point, ...]:
    """Follow the rounds down: each keeps its width from its upper to its lower edge."""
    points: list[Point] = []
    above = 0.0
    for step in steps:
        points += [scales.at(step.around_mm, above), scales.at(step.around_mm, step.depth_mm)]
        above = step.depth_mm
    return tuple(points)


def _end(steps: Sequence[YokeRound], scales: _Scales) -> Point:
    return scales.at(steps[-1].around_mm, steps[-1].depth_mm)


def _grid(scales: _Scales, units: str) -> Iterator[Shape]:
    right, bottom = WIDTH - _RIGHT, HEIGHT - _BOTTOM
    for at in _marks(scales.widest_mm / scales.unit_mm):
        x, _ = scales.at(at * scales.unit_mm, 0)
        yield Path(points=((x, _TOP), (x, bottom)), colour=_GRID)
        yield Label(at=(x, bottom + 20), text=f"{at:g}", colour=_FAINT, size=13, anchor="middle")
    for at in _marks(scales.deepest_mm / scales.unit_mm, 7):
        _, y = scales.at(0, at * scales.unit_mm)
        yield Path(points=((_LEFT, y), (right, y)), colour=_GRID)
        yield Label(at=(_LEFT - 10, y + 4.5), text=f"{at:g}", colour=_FAINT, size=13, anchor="end")
    yield Path(points=((_LEFT, _TOP), (_LEFT, bottom), (right, bottom)), colour=_FAINT, width=1.2)
    middle = (_LEFT + right) / 2
    yield Label(at=(middle, bottom + 44), text=f"around, {units}", colour=_FAINT, size=14, anchor="middle")
    yield Label(at=(_LEFT, _TOP - 12), text=f"depth from the neck edge, {units}", colour=_FAINT, size=14)


def _marks(most: float, most_marks: int = 9) -> list[float]:
    """Choose round numbers for an axis."""
    for step in (1.0, 2.0, 5.0, *_STEPS):
        if most / step <= most_marks:
            return [step * number for number in range(int(most / step) + 1)]
    return [0.0]


def _bound(steps: Sequence[YokeRound], body: WearerOutline, scales: _Scales) -> Iterator[Shape]:
    """Shade the area between the garment and a wider body."""
    above = 0.0
    deep = steps[-1].depth_mm
    for step in steps:
        outer = [wearer_around(body, at, deep) for at in (above, step.depth_mm)]
        if step.around_mm < max(outer):
            wide = [max(each, step.around_mm) for each in outer]
            yield Area(
                points=(
                    scales.at(step.around_mm, above),
                    scales.at(wide[0], above),
                    scales.at(wide[1], step.depth_mm),
                    scales.at(step.around_mm, step.depth_mm),
                ),
                colour=_BINDS,
            )
        above = step.depth_mm


def _body(steps: Sequence[YokeRound], body: WearerOutline, scales: _Scales) -> Iterator[Shape]:
    deep = steps[-1].depth_mm
    points = (
        scales.at(body.neck_mm, 0),
        scales.at(body.neck_mm, body.collar_mm),
        scales.at(body.underarm_mm, deep),
    )
    yield Path(points=points, colour=_BODY, width=2.2, dash=(1.5, 5.0))


def _names(names: Sequence[tuple[Point, str, str, bool]]) -> Iterator[Shape]:
    """Write the name of each line at its lower end, one below the other if the ends are close together."""
    taken = HEIGHT - _BOTTOM - 6.0
    for (x, y), text, colour, bold in sorted(names, key=lambda each: -each[0][0]):
        at = min(y, taken)
        taken = at - 22
        yield Path(points=((x, y), (WIDTH - _RIGHT + 4, at - 4.5)), colour=colour, width=0.8)
        yield Label(at=(WIDTH - _RIGHT + 8, at), text=text, colour=colour, size=14, bold=bold)


def _increases(steps: Sequence[YokeRound], scales: _Scales) -> Iterator[Shape]:
    """Name the rounds with evenly spread changes at the left, where there are no lines."""
    above = 0.0
    for step in steps:
        if step.label:
            _, y = scales.at(0, above)
            x, _ = scales.at(step.around_mm, above)
            yield Path(points=((_LEFT, y), (x, y)), colour=_INK, width=0.8, dash=(2.0, 4.0))
            yield Label(
                at=(_LEFT + 8, y - 6),
                text=f"{step.label}: {step.before} to {step.after}",
                colour=_INK,
                size=12.5,
            )
        above = step.depth_mm


def _heading(knitted: YokeCurve, body: WearerOutline | None, title: str, units: str) -> Iterator[Shape]:
    yield Label(at=(_LEFT, 34), text=title, colour=_INK, size=21, bold=True)
    yield Label(at=(_LEFT, 58), text=_verdict(knitted, body, units), colour=_INK, size=15)


def _verdict(knitted: YokeCurve, body: WearerOutline | None, units: str) -> str:
    """Return a sentence on what the drawing shows."""
    if body is None:
        return "Write neck, bust and upper_arm under body to see the wearer beside it."
    tight = find_tight_rounds(knitted.steps, body)
    if not tight:
        return "Nowhere narrower than the wearer, whose line is an estimate between neck and underarm."
    deep = knitted.steps[-1].depth_mm
    worst = max(tight, key=lambda step: wearer_around(body, step.depth_mm, deep) - step.around_mm)
    short = wearer_around(body, worst.depth_mm, deep) - worst.around_mm
    deepest = length(worst.depth_mm, units)
    return (
        f"Shaded: narrower than the wearer, by {length(short, units)} at {deepest} deep. "
        "Her line is an estimate."
    )


def _in_words(knitted: YokeCurve, body: WearerOutline | None, title: str, units: str) -> str:
    first, last = knitted.steps[0], knitted.steps[-1]
    return (
        f"{title}: yoke of {knitted.name}, from {length(first.around_mm, units)} around at the neck to "
        f"{length(last.around_mm, units)} at {length(last.depth_mm, units)} deep. "
        f"{_verdict(knitted, body, units)}"
    )
