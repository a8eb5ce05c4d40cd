"""SVG from shapes, read back by a general XML parser."""

from __future__ import annotations

from xml.etree import ElementTree

from stepper.report.drawing.shapes import Area, Box, Drawing, Label, Path, write_svg

DRAWING = Drawing(
    width=100,
    height=50.5,
    title='A & "B" <c>',
    shapes=(
        Area(points=((0, 0), (10, 0), (10, 5)), colour="#ffeeee"),
        Path(points=((0, 0), (10.5, 20.25)), colour="#112233", width=2, dash=(3, 1)),
        Label(at=(5, 6), text='"less" < 4 & more', colour="#000000", anchor="end", bold=True),
        Box(at=(10, 20), width=7.5, height=8, colour="#c80a14"),
    ),
    ground="#fcfbf8",
)
SVG = "{http://www.w3.org/2000/svg}"


def test_a_drawing_becomes_an_svg_with_its_shapes_in_order() -> None:
    """Read by the standard library: well-formed, signs escaped, numbers as given, told to those who do not see it."""
    root = ElementTree.fromstring(write_svg(DRAWING))
    assert root.tag == f"{SVG}svg"
    assert (root.get("viewBox"), root.get("width"), root.get("height")) == ("0 0 100 50.5", "100", "50.5")
    tags = [child.tag.removeprefix(SVG) for child in root]
    assert tags == ["title", "rect", "polygon", "polyline", "text", "rect"]
    assert root[0].text == root.get("aria-label") == 'A & "B" <c>'
    assert (root[1].get("width"), root[1].get("fill")) == ("100%", "#fcfbf8")
    assert root[3].get("points") == "0,0 10.5,20.25"
    assert root[3].get("stroke-dasharray") == "3 1"
    assert root[4].text == '"less" < 4 & more'
    assert (root[4].get("text-anchor"), root[4].get("font-weight")) == ("end", "bold")
    assert [root[5].get(name) for name in ("x", "y", "width", "height")] == ["10", "20", "7.5", "8"]


def test_only_a_drawing_of_boxes_is_left_without_smoothing() -> None:
    """The squares of a chart meet without a seam; a slanting line drawn so would be a stair."""
    boxes = Drawing(
        width=10, height=10, title="", shapes=(Box(at=(0, 0), width=5, height=5, colour="#000000"),)
    )
    assert ElementTree.fromstring(write_svg(boxes)).get("shape-rendering") == "crispEdges"
    assert ElementTree.fromstring(write_svg(DRAWING)).get("shape-rendering") is None
