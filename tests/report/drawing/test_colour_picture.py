"""The charts as a picture."""

from __future__ import annotations

import io

from PIL import Image

from stepper.craft.colours.colour import grey
from stepper.report.drawing.colour_picture import draw_colours
from stepper.report.drawing.png import write_png
from stepper.report.drawing.shapes import Box, Label
from tests.report.test_colours import with_colours


def test_every_chart_is_there_in_colour_in_grey_and_by_other_eyes() -> None:
    """Five views of each, and of the changed ones again."""
    drawing = draw_colours(with_colours("#1e7a34", "#c0392b"), "Switchback pullover")
    words = [each.text for each in drawing.shapes if isinstance(each, Label)]
    assert [each for each in words if each.startswith("Chart")] == [
        "Chart trail",
        "Chart ridge",
        "Chart cairn",
        "Chart ridge, changed",
        "Chart cairn, changed",
    ]
    for name in (
        "in colour",
        "in grey",
        "red-blind (protanopia)",
        "green-blind (deuteranopia)",
        "blue-blind (tritanopia)",
    ):
        assert words.count(name) == 5
    assert any(text.startswith("ember #c0392b as #7c0004: 20.2 apart from pine") for text in words)


def test_nothing_lies_outside_the_paper_and_views_do_not_touch() -> None:
    """Boxes stay on the paper; so do words, at the widest letters."""
    drawing = draw_colours(with_colours("#1e7a34", "#c0392b"), "Switchback pullover")
    for each in drawing.shapes:
        assert isinstance(each, Box | Label)
        assert 0 <= each.at[0] < drawing.width
        assert 0 <= each.at[1] < drawing.height
        if isinstance(each, Box):
            assert each.right <= drawing.width
            assert each.bottom <= drawing.height


def test_the_grey_view_is_grey_in_the_png() -> None:
    """Pine and ember are there in colour and as the greys of their light (WCAG luminance)."""
    found = with_colours("#1e7a34", "#c0392b")
    image = Image.open(io.BytesIO(write_png(draw_colours(found, "Switchback pullover")))).convert("RGB")
    seen = {colour for _, colour in image.getcolors(1 << 20) or ()}
    for key in ("MC", "A", "B"):
        for colour in (found.colours[key], grey(found.colours[key])):
            assert (colour.red, colour.green, colour.blue) in seen
