"""A drawing as a list of shapes, and the SVG it makes. Pure; `plot_png` makes a PNG of the same."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from html import escape
from typing import Literal

Point = tuple[float, float]
"""Across from the left and down from the top. Unit: px."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Path:
    """A line through points."""

    points: tuple[Point, ...]
    colour: str
    """`#rrggbb`."""
    width: float = 1.0
    """Unit: px."""
    dash: tuple[float, ...] = ()
    """Lengths of stroke and gap in turn; none for a whole line. Unit: px."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Area:
    """A filled shape."""

    points: tuple[Point, ...]
    colour: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Label:
    """Words at a place."""

    at: Point
    """The place of the baseline."""
    text: str
    colour: str
    size: float = 14.0
    """Height of the letters. Unit: px."""
    anchor: Literal["start", "middle", "end"] = "start"
    bold: bool = False


Shape = Path | Area | Label


@dataclass(frozen=True, slots=True, kw_only=True)
class Drawing:
    """Shapes on a sheet, the first at the bottom."""

    width: int
    """Unit: px."""
    height: int
    title: str
    """What it shows, for those who do not see it."""
    shapes: tuple[Shape, ...]
    ground: str = "#ffffff"


def svg(drawing: Drawing) -> str:
    """Write a drawing as SVG, in plain text that needs nothing else."""
    head = (
        f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {drawing.width} {drawing.height}" '
        f'width="{drawing.width}" height="{drawing.height}" role="img" '
        f'font-family="Helvetica, Arial, sans-serif">'
    )
    ground = f'<rect width="100%" height="100%" fill="{drawing.ground}"/>'
    body = [f"<title>{escape(drawing.title)}</title>", ground, *_elements(drawing.shapes)]
    return "\n".join([head, *(f"  {line}" for line in body), "</svg>", ""])


def _elements(shapes: Iterable[Shape]) -> Iterator[str]:
    for shape in shapes:
        if isinstance(shape, Label):
            bold = ' font-weight="bold"' if shape.bold else ""
            x, y = map(_short, shape.at)
            yield (
                f'<text x="{x}" y="{y}" fill="{escape(shape.colour)}" '
                f'font-size="{_short(shape.size)}" text-anchor="{shape.anchor}"{bold}>'
                f"{escape(shape.text)}</text>"
            )
            continue
        points = " ".join(f"{_short(x)},{_short(y)}" for x, y in shape.points)
        if isinstance(shape, Area):
            yield f'<polygon points="{points}" fill="{escape(shape.colour)}"/>'
            continue
        dash = f' stroke-dasharray="{" ".join(map(_short, shape.dash))}"' if shape.dash else ""
        yield (
            f'<polyline points="{points}" fill="none" stroke="{escape(shape.colour)}" '
            f'stroke-width="{_short(shape.width)}" stroke-linejoin="round"{dash}/>'
        )


def _short(value: float) -> str:
    return f"{value:.2f}".rstrip("0").rstrip(".")
