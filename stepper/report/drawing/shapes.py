"""A drawing as a list of shapes, and the SVG file made of it; `png` makes a PNG file. Pure."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from typing import Literal

from stepper.craft.figures import format_number
from stepper.records import dataclass
from stepper.report.drawing.markup import svg, tag, text

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
class Box:
    """A filled rectangle whose edges stay sharp."""

    at: Point
    """The upper left corner."""
    width: float
    """Unit: px."""
    height: float
    """Unit: px."""
    colour: str

    @property
    def right(self) -> float:
        """The right edge. Unit: px."""
        return self.at[0] + self.width

    @property
    def bottom(self) -> float:
        """The lower edge. Unit: px."""
        return self.at[1] + self.height


@dataclass(frozen=True, slots=True, kw_only=True)
class Label:
    """Text at a point."""

    at: Point
    """Where the baseline starts, is centred or ends, depending on `anchor`."""
    text: str
    colour: str
    size: float = 14.0
    """Height of the letters. Unit: px."""
    anchor: Literal["start", "middle", "end"] = "start"
    bold: bool = False


Shape = Path | Area | Box | Label


@dataclass(frozen=True, slots=True, kw_only=True)
class Drawing:
    """Shapes on a sheet, the first at the back."""

    width: float
    """Unit: px."""
    height: float
    """Unit: px."""
    title: str
    """What it shows, for those who cannot see it."""
    shapes: tuple[Shape, ...]
    ground: str = "#ffffff"

    @property
    def upright(self) -> bool:
        """Whether it consists of upright shapes alone, boxes and labels, so that no edge needs smoothing."""
        return all(isinstance(shape, Box | Label) for shape in self.shapes)


def write_svg(drawing: Drawing) -> str:
    """Return a drawing as the text of a self-contained SVG file."""
    ground = tag("rect", width="100%", height="100%", fill=drawing.ground)
    return svg(
        drawing.width,
        drawing.height,
        [f"\n  {line}" for line in (ground, *_elements(drawing.shapes))],
        title=drawing.title,
        alone=True,
        shape_rendering="crispEdges" if drawing.upright else None,
    )


def _elements(shapes: Iterable[Shape]) -> Iterator[str]:
    for shape in shapes:
        match shape:
            case Label():
                yield tag(
                    "text",
                    text(shape.text),
                    x=shape.at[0],
                    y=shape.at[1],
                    fill=shape.colour,
                    font_size=shape.size,
                    text_anchor=shape.anchor,
                    font_weight="bold" if shape.bold else None,
                )
            case Box():
                x, y = shape.at
                yield tag("rect", x=x, y=y, width=shape.width, height=shape.height, fill=shape.colour)
            case Area():
                yield tag("polygon", points=list_points(shape.points), fill=shape.colour)
            case Path():
                yield tag(
                    "polyline",
                    points=list_points(shape.points),
                    fill="none",
                    stroke=shape.colour,
                    stroke_width=shape.width,
                    stroke_linejoin="round",
                    stroke_dasharray=" ".join(map(format_number, shape.dash)) or None,
                )


def list_points(points: Iterable[Point]) -> str:
    """Return points as SVG writes them: `0,0 10.5,20.25`."""
    return " ".join(f"{format_number(x)},{format_number(y)}" for x, y in points)
