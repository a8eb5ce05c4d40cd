"""Charts for print, against the drawing in the project file and the reading conventions of the trade."""

from __future__ import annotations

from pathlib import Path
from xml.etree import ElementTree

import pytest

from stepper.craft.stitches import list_codes
from stepper.project.model import Cell, Chart
from stepper.project.problems import Span
from stepper.report.sheet.chart_parts import DrawnPart
from stepper.report.sheet.charts import SQUARE, draw_chart, list_signs, name_stitch
from stepper.report.sheet.looks import assign_looks
from stepper.sitting.project_file import load_project
from tests.tables import each_row

SAMPLES = Path(__file__).parents[2] / "fixtures"
PULLOVER = load_project(SAMPLES / "switchback.yaml").project
SHADES = assign_looks(PULLOVER, ())


def squares(chart: Chart) -> list[list[str]]:
    """Return the fills of a drawn chart, the first drawn line first."""
    root = ElementTree.fromstring(draw_chart(chart, SHADES, "MC"))
    rows: dict[float, list[tuple[float, str]]] = {}
    for each in root.iter("rect"):
        if each.attrib.get("width") == f"{SQUARE:g}":
            rows.setdefault(float(each.attrib["y"]), []).append(
                (float(each.attrib["x"]), each.attrib["fill"])
            )
    return [[fill for _, fill in sorted(row)] for _, row in sorted(rows.items())]


def test_the_drawing_is_the_one_in_the_file() -> None:
    """Line by line as printed, first round at the bottom: `aa......aa` is the top line of chart trail."""
    pine, chalk = SHADES["A"].colour, SHADES["MC"].colour
    drawn = squares(PULLOVER.charts["trail"])
    printed = ["aa......aa", ".aa....aa.", "..aa..aa..", "...aaaa...", "....aa...."]
    assert drawn == [[pine if sign == "a" else chalk for sign in line] for line in printed]


def test_rounds_and_stitches_are_numbered_from_the_corner_they_begin_in() -> None:
    """Round 1 at the bottom, stitch 1 at the right (common practice)."""
    root = ElementTree.fromstring(draw_chart(PULLOVER.charts["trail"], SHADES, "MC"))
    numbers = [each for each in root.iter("text") if each.attrib.get("class") == "number"]
    rounds = [each for each in numbers if "text-anchor" not in each.attrib]
    assert [each.text for each in rounds] == ["5", "4", "3", "2", "1"]
    across = sorted((float(each.attrib["x"]), each.text) for each in numbers if each not in rounds)
    assert [each for _, each in across] == ["10", "5", "1"]


def test_every_contrast_square_has_its_letter() -> None:
    """Without any colour the motif can still be read: as many letters A as pine squares."""
    chart = PULLOVER.charts["ridge"]
    root = ElementTree.fromstring(draw_chart(chart, SHADES, "MC"))
    letters = [each.text for each in root.iter("text") if "fill" in each.attrib]
    cells = [cell.yarn for cells in chart.rounds for cell in cells]
    assert {letter: letters.count(letter) for letter in "AB"} == {key: cells.count(key) for key in "AB"}


def test_it_is_read_out_to_those_who_do_not_see_it() -> None:
    """Round 1 of chart trail, from right to left: four chalk, two pine, four chalk."""
    root = ElementTree.fromstring(draw_chart(PULLOVER.charts["trail"], SHADES, "MC"))
    assert "Round 1: 4 chalk, 2 pine, 4 chalk." in root.attrib["aria-label"]


def test_lace_has_symbols_and_its_repeat() -> None:
    """The repeat of the shawl's chart is framed; only right-side rows are numbered."""
    project = load_project(SAMPLES / "shawl.yaml").project
    chart, looks = project.charts["ripple"], assign_looks(project, ())
    root = ElementTree.fromstring(draw_chart(chart, looks, "MC"))
    frame = next(each for each in root.iter("rect") if each.attrib.get("class") == "repeat")
    assert float(frame.attrib["width"]) == 8 * SQUARE
    assert len(list(root.iter("circle"))) == sum(cell.stitch == "yo" for row in chart.rounds for cell in row)
    said = [each.words for each in list_signs(chart, looks, "MC")]
    assert said[0] == "yarn over"
    assert {"no stitch", "knit", "k2tog", "ssk", "s2kp"} <= set(said)


@pytest.mark.parametrize(("code", "wide", "rising"), [("2/2 RC", 4, True), ("1/2 lc", 3, False), ("c6b", 6, True)])
def test_a_cable_is_drawn_over_its_squares_and_leans_as_it_crosses(code: str, wide: int, rising: bool) -> None:
    """The strand in front of a right cross goes up to the right; no square of it is "no stitch" (CYC cable symbols)."""
    cells = (Cell("p", None), Cell(code.lower(), None), *(Cell("", None),) * (wide - 1), Cell("p", None))
    chart = Chart(name="rope", rounds=(cells,), place=Span(line=1, column=1))
    drawn = draw_chart(chart, SHADES, "MC")
    root = ElementTree.fromstring(drawn)
    assert len(squares(chart)[0]) == wide + 2
    assert all(fill == SHADES["MC"].colour for fill in squares(chart)[0])
    (front,) = [each.attrib["d"].split("M")[1] for each in root.iter("path") if each.attrib["d"].count("M") == 3]
    (x0, y0), (x1, y1) = (map(float, point.split()) for point in front.split("L"))
    assert ((x1 - x0) * (y0 - y1) > 0) is rising
    said = [each.words for each in list_signs(chart, SHADES, "MC")]
    assert said == ["purl", code.upper()]
    assert f"1 purl, 1 {code.upper()}, 1 purl." in root.attrib["aria-label"]


def test_colourwork_is_explained_by_yarns() -> None:
    """In a chart of colours the plain stitches are named by their yarn, as the lines and the ball band name it."""
    assert [each.words for each in list_signs(PULLOVER.charts["cairn"], SHADES, "MC")] == ["B, ember", "MC, chalk"]


@each_row("code", list_codes())
def test_every_stitch_has_a_sign_or_its_abbreviation(code: str) -> None:
    """No square of a chart is left empty but for knit, and each is named in the legend."""
    chart = Chart(name="one", rounds=((Cell(code, None),),), place=Span(line=1, column=1))
    (found,) = list_signs(chart, SHADES, "MC")
    assert found.words == name_stitch(code)
    assert code == "k" or any(sign in found.drawing for sign in ("<path", "<circle", "<text"))


def test_a_part_of_a_chart_keeps_the_numbers_and_squares_of_the_whole() -> None:
    """Stitches 1 to 5 of ten, rounds 2 to 4 of five: who goes on in another part counts on."""
    chart = PULLOVER.charts["trail"]
    drawn = draw_chart(chart, SHADES, "MC", DrawnPart(5, 10, 1, 4))
    root = ElementTree.fromstring(drawn)
    numbers = [each.text for each in root.iter("text") if each.attrib.get("class") == "number"]
    assert numbers == ["4", "3", "2", "1", "5"]
    assert root.attrib["aria-label"].startswith("Chart trail: stitches 1 to 5 of 10, rounds 2 to 4. Round 2: 3 chalk")
    pine, chalk = SHADES["A"].colour, SHADES["MC"].colour
    whole = ["...aaaa...", "..aa..aa..", ".aa....aa."]
    rows: dict[float, list[str]] = {}
    for each in root.iter("rect"):
        if each.attrib.get("width") == f"{SQUARE:g}":
            rows.setdefault(float(each.attrib["y"]), []).append(each.attrib["fill"])
    shown = [row for _, row in sorted(rows.items())]
    assert shown == [[pine if sign == "a" else chalk for sign in line[5:]] for line in reversed(whole)]
