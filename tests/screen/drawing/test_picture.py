from __future__ import annotations

import xml.etree.ElementTree as ET

from stepper.screen.drawing.picture import CELL, write_svg
from stepper.screen.drawing.rows import row, text_of
from stepper.screen.drawing.style import Depth
from stepper.screen.view import draw_screen
from tests.screen.scenes import MOMENTS, terminal
from tests.tables import each_row

NS = "{http://www.w3.org/2000/svg}"


@each_row("moment", MOMENTS)
@each_row("depth", Depth)
def test_every_screen_is_a_picture_that_can_be_read(moment: str, depth: Depth) -> None:
    """Well-formed (read by an XML parser), and every word of the screen is in it, once."""
    rows = draw_screen(MOMENTS[moment](), terminal(depth=depth))
    root = ET.fromstring(write_svg(rows, 80, title=moment))
    written = sorted("".join(each.itertext()) for each in root.iter(f"{NS}text"))

    letters = "".join(text_of(each) for each in rows)
    kept = "".join(sign for sign in letters if sign not in " █▀▄▔─┃╵▏░▘▝▖▗▌▐▛▜▙▟▚▞")
    assert sorted("".join(written)) == sorted(kept)


def test_words_of_hers_cannot_break_it() -> None:
    """A title is escaped."""
    root = ET.fromstring(write_svg([row("<b>&\"'")], 10, title='a "<&'))

    assert root.attrib["aria-label"] == 'a "<&'
    assert "".join(root.find(f".//{NS}text").itertext()) == "<b>&\"'"  # type: ignore[union-attr]


def test_blocks_fill_the_cells_they_stand_for() -> None:
    """Two full blocks are two cells, a lower half is half a cell high."""
    root = ET.fromstring(write_svg([row("██ ▄")], 4, title=""))
    full, half = list(root.iter(f"{NS}rect"))[1:]

    assert (float(full.attrib["width"]), float(full.attrib["height"])) == (2 * CELL[0], CELL[1])
    assert float(half.attrib["height"]) == CELL[1] / 2
    assert float(half.attrib["x"]) - float(full.attrib["x"]) == 3 * CELL[0]


def test_quarters_of_a_cell_are_drawn_as_such() -> None:
    """Three quarters are an upper half and a quarter below it: three quarters of the cell's area."""
    root = ET.fromstring(write_svg([row("▛")], 4, title=""))
    areas = [float(each.attrib["width"]) * float(each.attrib["height"]) for each in list(root.iter(f"{NS}rect"))[1:]]

    assert sum(areas) == 0.75 * CELL[0] * CELL[1]
