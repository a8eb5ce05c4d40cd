"""The sheet's own drawings, put on a page of a PDF: the few SVG elements that they are made of. No I/O.

What the style sheet says of a class on the page is said here again, since a PDF knows no style sheet.
"""

from __future__ import annotations

import math
import re
from dataclasses import replace
from types import MappingProxyType
from typing import Any, Final
from xml.etree import ElementTree

from stepper.records import dataclass
from stepper.regex import regex

_INK, _SOFT, _WASH = "#1c1b19", "#55514a", "#f4f1ea"
_TOKEN: Final = regex(r"[A-Za-z]|-?\d*\.?\d+")
_NUMBER: Final = regex(r"-?\d*\.?\d+")


@dataclass(frozen=True, slots=True)
class _Look:
    """How an element is painted; what it does not say it inherits."""

    fill: str = "#000000"
    """Colour, or `none`."""
    stroke: str = "none"
    width: float = 1.0
    """Of the stroke. Unit: of the drawing."""
    dash: tuple[float, ...] = ()
    size: float = 14.0
    """Of letters. Unit: of the drawing."""


_CLASSES: Final = MappingProxyType(
    {
        "piece": {"fill": _WASH, "stroke": _INK},
        "measure": {"fill": "none", "stroke": _SOFT},
        "seam": {"fill": "none", "stroke": _SOFT, "dash": (6.0, 5.0)},
        "grid": {"fill": "none", "stroke": "#77736b", "width": 0.6},
        "repeat": {"fill": "none", "stroke": _INK, "width": 2.2},
        "number": {"fill": _SOFT, "size": 9.0},
        "edge": {"fill": "none", "stroke": _INK, "width": 0.5},
    }
)


def measure_drawing(drawing: str) -> tuple[float, float]:
    """Return width and height of a drawing, in its own unit."""
    _, _, wide, high = ElementTree.fromstring(drawing).attrib["viewBox"].split()
    return float(wide), float(high)


def put_drawing(canvas: Any, drawing: str, left: float, top: float, wide: float, font: str) -> None:
    """Put a drawing on a page.

    Args:
        canvas: The page, of reportlab.
        drawing: SVG markup as the sheet's modules write it.
        left: Where its left edge lies. Unit: pt.
        top: Where its upper edge lies, upwards from the foot of the page. Unit: pt.
        wide: How wide it is. Unit: pt.
        font: Name of the typeface of its letters.
    """
    scale = wide / measure_drawing(drawing)[0]
    canvas.saveState()
    canvas.translate(left, top)
    canvas.scale(scale, -scale)
    for each in ElementTree.fromstring(drawing):
        _put(canvas, each, _Look(), font)
    canvas.restoreState()


def _put(canvas: Any, element: ElementTree.Element, above: _Look, font: str) -> None:
    look = _look_of(element, above)
    canvas.saveState()
    for name, given in re.findall(r"(translate|rotate)\(([^)]*)\)", element.attrib.get("transform", "")):
        numbers = [float(each) for each in _NUMBER.findall(given)]
        if name == "translate":
            canvas.translate(*numbers)
        elif element.tag != "circle":  # a ring begins at its top anyway
            canvas.rotate(numbers[0])
    if element.tag == "g":
        for inner in element:
            _put(canvas, inner, look, font)
    elif element.tag == "text":
        _put_text(canvas, element, look, font)
    elif element.tag != "title":
        _put_shape(canvas, element, look)
    canvas.restoreState()


def _look_of(element: ElementTree.Element, above: _Look) -> _Look:
    given = element.attrib
    look = replace(above, **_CLASSES.get(given.get("class", ""), {}))  # type: ignore[arg-type]
    return replace(
        look,
        fill=given.get("fill", look.fill),
        stroke=given.get("stroke", look.stroke),
        width=float(given.get("stroke-width", look.width)),
        dash=tuple(map(float, given["stroke-dasharray"].split()))
        if "stroke-dasharray" in given
        else look.dash,
        size=float(given.get("font-size", look.size)),
    )


def _put_text(canvas: Any, element: ElementTree.Element, look: _Look, font: str) -> None:
    words = element.text or ""
    canvas.setFillColor(look.fill)
    canvas.setFont(font, look.size)
    canvas.translate(float(element.attrib["x"]), float(element.attrib["y"]))
    canvas.scale(1, -1)
    anchor = element.attrib.get("text-anchor", "start")
    write = {"start": canvas.drawString, "middle": canvas.drawCentredString, "end": canvas.drawRightString}
    write[anchor](0, 0, words)


def _put_shape(canvas: Any, element: ElementTree.Element, look: _Look) -> None:
    dash = look.dash
    path = canvas.beginPath()
    given = element.attrib
    if element.tag == "rect":
        path.rect(*(float(given.get(name, 0)) for name in ("x", "y", "width", "height")))
    elif element.tag == "circle":
        x, y, radius = (float(given.get(name, 0)) for name in ("cx", "cy", "r"))
        # From the top clockwise: y runs down here, so angles do too.
        path.arc(x - radius, y - radius, x + radius, y + radius, -90, 360)
        if "pathLength" in given:
            step = 2 * math.pi * radius / float(given["pathLength"])
            dash = tuple(each * step for each in dash)
    elif element.tag == "path":
        _follow(path, given["d"])
    else:
        corners = [tuple(map(float, corner.split(","))) for corner in given["points"].split()]
        path.moveTo(*corners[0])
        for corner in corners[1:]:
            path.lineTo(*corner)
        if element.tag == "polygon":
            path.close()
    filled, stroked = look.fill != "none", look.stroke != "none"
    if filled:
        canvas.setFillColor(look.fill)
    if stroked:
        canvas.setStrokeColor(look.stroke)
        canvas.setLineWidth(look.width)
        canvas.setDash(list(dash)) if dash else canvas.setDash()
    canvas.drawPath(path, fill=int(filled), stroke=int(stroked))


def _follow(path: Any, commands: str) -> None:
    """Follow the commands M, L, V, H and v, h of a path."""
    tokens = _TOKEN.findall(commands)
    x = y = 0.0
    name = ""
    while tokens:
        if tokens[0].isalpha():
            name = tokens.pop(0)
        if name in "ML":
            x, y = float(tokens.pop(0)), float(tokens.pop(0))
        elif name in "Hh":
            x = float(tokens.pop(0)) + (x if name == "h" else 0.0)
        else:
            y = float(tokens.pop(0)) + (y if name == "v" else 0.0)
        if name == "M":
            path.moveTo(x, y)
        else:
            path.lineTo(x, y)
