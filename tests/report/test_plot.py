"""SVG from shapes, read back by a general XML parser."""

from __future__ import annotations

from xml.etree import ElementTree

from stepper.report.plot import Area, Drawing, Label, Path, svg

DRAWING = Drawing(
    width=100,
    height=50,
    title="A & B",
    shapes=(
        Area(points=((0, 0), (10, 0), (10, 5)), colour="#ffeeee"),
        Path(points=((0, 0), (10.5, 20.25)), colour="#112233", width=2, dash=(3, 1)),
        Label(at=(5, 6), text='"less" < 4 & more', colour="#000000", anchor="end", bold=True),
    ),
)
SVG = "{http://www.w3.org/2000/svg}"


def test_a_drawing_becomes_an_svg_with_its_shapes_in_order() -> None:
    """Read by the standard library: well-formed, signs escaped, numbers as given."""
    root = ElementTree.fromstring(svg(DRAWING))
    assert root.tag == f"{SVG}svg"
    assert root.get("viewBox") == "0 0 100 50"
    tags = [child.tag.removeprefix(SVG) for child in root]
    assert tags == ["title", "rect", "polygon", "polyline", "text"]
    assert root[0].text == "A & B"
    assert root[3].get("points") == "0,0 10.5,20.25"
    assert root[3].get("stroke-dasharray") == "3 1"
    assert root[4].text == '"less" < 4 & more'
    assert root[4].get("text-anchor") == "end"
