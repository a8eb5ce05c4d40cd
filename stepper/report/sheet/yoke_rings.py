"""The yoke from above as a drawing for print. Pure.

Every round is a ring, with the neck inside. A ring is one circle in its main yarn; each further yarn is a
circle over it, dashed stitch by stitch, so the drawing stays small whatever the pattern. The beginning of the
round is at the top, the centre back; seen from above the work runs clockwise.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from itertools import groupby
from typing import Final

from stepper.craft.figures import format_number
from stepper.language.measures import plural
from stepper.plan.model import Round
from stepper.plan.yoke import Yoke
from stepper.report.drawing.markup import svg, tag
from stepper.report.sheet.looks import YarnLooks

_RADIUS: Final = 100.0
_MARGIN: Final = 4.0


def draw_yoke_rings(yoke: Yoke, shades: Mapping[str, YarnLooks], title: str) -> str:
    """Draw a yoke.

    Args:
        yoke: Its rounds.
        shades: How every yarn looks, by its key.
        title: Of the garment.
    """
    count = len(yoke.rounds)
    thick = _RADIUS * (1 - yoke.inner) / count
    inner: list[str] = []
    for place, round_ in enumerate(yoke.rounds):
        radius = _RADIUS * yoke.inner + (place + 0.5) * thick
        inner += _ring(round_, radius, thick, shades)
    edges = [_RADIUS * yoke.inner, _RADIUS]
    edges += [
        _RADIUS * yoke.inner + place * thick
        for place, round_ in enumerate(yoke.rounds)
        if round_.label and place
    ]
    inner += [tag("circle", r=each, class_="edge") for each in edges]
    inner.append(tag("path", d=f"M0 {format_number(-_RADIUS - 3)}v6", class_="edge"))
    labels = [f"{each.label} to {each.after} stitches" for each in yoke.rounds if each.label]
    first, last = yoke.rounds[0].after, yoke.rounds[-1].after
    words = f"{title}: the yoke from above, {plural(count, 'round')} from {first} stitches at the neck"
    words += f" to {last} at the outer edge{'; ' if labels else ''}{', '.join(labels)}."
    side = 2 * (_RADIUS + _MARGIN)
    moved = f"translate({format_number(side / 2)} {format_number(side / 2)})"
    return svg(side, side, [tag("g", inner, transform=moved)], title=words, class_="yoke")


def _ring(round_: Round, radius: float, thick: float, shades: Mapping[str, YarnLooks]) -> Iterator[str]:
    runs = [(run.yarn, run.progress) for run in round_.runs if run.progress and run.yarn in shades]
    held = Counter[str]()
    for yarn, stitches in runs:
        held[yarn] += stitches
    if not held:
        return
    ground = max(held, key=lambda yarn: held[yarn])
    yield _circle(radius, thick * 1.04, shades[ground].colour)
    for yarn in held:
        if yarn == ground:
            continue
        shade, dashes = shades[yarn], _dashes(runs, yarn)
        yield _circle(radius, thick * 1.04, shade.colour, dashes, held.total())
        # A second contrast yarn would be the same grey as the first in a black-and-white print.
        for stripe in range(shade.stripes):
            aside = (stripe - (shade.stripes - 1) / 2) * thick * 0.4
            yield _circle(radius + aside, thick * 0.16, shade.ink, dashes, held.total())


def _circle(radius: float, thick: float, colour: str, dashes: str = "", around: int = 0) -> str:
    return tag(
        "circle",
        r=radius,
        stroke=colour,
        stroke_width=thick,
        fill="none",
        pathLength=around or None,
        stroke_dasharray=dashes or None,
        transform="rotate(-90)" if dashes else None,
    )


def _dashes(runs: Sequence[tuple[str, int]], yarn: str) -> str:
    """Return stitches in the yarn and those between, in turn, as SVG dashes; a repeat is written once."""
    parts: list[int] = []
    for own, group in groupby(runs, key=lambda run: run[0] == yarn):
        stitches = sum(each for _, each in group)
        if own and not parts:
            parts = [stitches]
        elif not parts:
            parts = [0, stitches]
        else:
            parts.append(stitches)
    if len(parts) % 2:
        parts.append(0)
    for size in range(2, len(parts) // 2 + 1, 2):
        if len(parts) % size == 0 and parts == parts[:size] * (len(parts) // size):
            return " ".join(map(str, parts[:size]))
    return " ".join(map(str, parts))
