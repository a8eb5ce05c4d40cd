"""The schematic: its measurements are those of the pieces, and nothing of it lies outside the sheet."""

from __future__ import annotations

import math
import re
from pathlib import Path
from xml.etree import ElementTree

import pytest

from stepper.report.measure.measurements import measure_garment
from stepper.report.sheet.pieces import lay_out_pieces
from stepper.report.sheet.schematic import describe_pieces, draw_schematic, find_corner
from stepper.sitting.project_file import load_project

SAMPLES = sorted((Path(__file__).parents[2] / "fixtures").glob("*.yaml"))


def drawn(path: Path) -> ElementTree.Element:
    """Draw a sample and read the drawing."""
    loaded = load_project(path)
    found = lay_out_pieces(loaded.plan, loaded.project)
    return ElementTree.fromstring(draw_schematic(found, title="A & B", units=loaded.plan.units))


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_everything_lies_on_the_sheet(path: Path) -> None:
    """Every corner of every shape, once moved, is inside the box of the drawing."""
    root = drawn(path)
    _, _, wide, high = map(float, root.attrib["viewBox"].split())
    group = root.find("g")
    assert group is not None
    right, down = map(float, re.findall(r"-?[\d.]+", group.attrib["transform"]))
    for shape in group:
        if "points" in shape.attrib:
            for point in shape.attrib["points"].split():
                x, y = map(float, point.split(","))
                assert 0 <= x + right <= wide
                assert 0 <= y + down <= high


def test_a_pullover_has_its_measurements() -> None:
    """Neck, chest, lower edge, upper arm, wrist and the lengths of yoke, body and sleeves: the counts over
    the gauges, worked out by hand (100/24, 164/21.5, 60/21.5 of 10 cm; 164/24 and 44/24 in the rib)."""
    words = " ".join("".join(each.itertext()) for each in drawn(SAMPLES[-1]).iter("text"))
    assert SAMPLES[-1].stem == "switchback"
    for said in ("neck 41.7 cm", "chest 76.3 cm", "lower edge 68.3 cm", "upper arm 27.9 cm", "wrist 18.3 cm"):
        assert said in words
    assert "Body 38.1 cm" in words
    assert words.count("44.3 cm") == 2


def test_it_is_symmetrical() -> None:
    """What is knitted alike is drawn alike: the left sleeve is the right one mirrored."""
    group = drawn(SAMPLES[-1]).find("g")
    assert group is not None
    left, right, body = (
        {tuple(round(float(each)) for each in point.split(",")) for point in shape.attrib["points"].split()}
        for shape in group.iter("polygon")
    )
    assert {(-x, y) for x, y in left} == right
    assert {(-x, y) for x, y in body} == body


def test_it_is_told_to_those_who_do_not_see_it() -> None:
    """Every piece with its widths and its length, in the units of the file."""
    loaded = load_project(SAMPLES[-1])
    said = describe_pieces(lay_out_pieces(loaded.plan, loaded.project), "cm")
    assert "Neckband, yoke and body: 41.7 cm around at its beginning" in said
    assert drawn(SAMPLES[-1]).attrib["aria-label"].startswith("A & B: the pieces flat and to scale.")


def test_inches_are_inches() -> None:
    """A file in inches gets no centimetres."""
    words = " ".join("".join(each.itertext()) for each in drawn(SAMPLES[0]).iter("text"))
    assert SAMPLES[0].stem == "cardigan"
    assert " in" in words
    assert " cm" not in words


Corner = tuple[float, float]


def outlines(path: Path) -> list[list[Corner]]:
    """Read the corners of every outline as drawn: both sleeves, then the body, then what else there is."""
    return [
        [(float(x), float(y)) for x, y in (point.split(",") for point in shape.attrib["points"].split())]
        for shape in drawn(path).iter("polygon")
    ]


def figures(path: Path) -> dict[str, float]:
    """Read the table of measurements, which the drawing has to agree with. Unit: mm."""
    loaded = load_project(path)
    return {line.name: line.finished_mm for line in measure_garment(loaded.plan.rounds, loaded.project)}


SHIPPED = SAMPLES[0].parents[2] / "sample_projects"
WITH_SLEEVES = [SAMPLES[-1], SAMPLES[0], SHIPPED / "pullover.yaml", SHIPPED / "cardigan.yaml"]


@pytest.mark.parametrize("path", WITH_SLEEVES, ids=lambda path: f"{path.parent.name}-{path.stem}")
def test_lines_that_carry_a_figure_are_as_long_as_it_says(path: Path) -> None:
    """Laid a ruler on, the side from underarm to hem is the body, the shoulder the yoke, and the top of a sleeve the upper
    arm laid flat: a drawing that is called to scale is measured by whoever doubts a figure."""
    asked = figures(path)
    _, right, body = outlines(path)[:3]
    corners = [point for point in body if point[0] > 0]
    hem = corners[-1]
    corner = max(corners)
    underarm = corners[corners.index(corner) + 1]
    neck = corners[corners.index(corner) - 1]
    below = asked["body, length"] + asked.get("hem, length", 0.0)
    assert hem[1] - underarm[1] == pytest.approx(below, abs=0.2)
    assert math.dist(neck, corner) == pytest.approx(asked["yoke depth"], abs=0.2)
    assert underarm[1] - neck[1] == pytest.approx(asked["yoke depth"], abs=0.2)
    assert 2 * math.dist(corner, underarm) == pytest.approx(asked["left sleeve, upper arm"], abs=0.2)
    assert 4 * body[0][0] == pytest.approx(asked["neck"], abs=0.2)
    half = len(right) // 2
    top = math.dist(right[0], right[-1])
    assert 2 * top == pytest.approx(asked["left sleeve, upper arm"], abs=0.2)
    assert 2 * math.dist(right[half - 1], right[half]) == pytest.approx(asked["left sleeve, wrist"], abs=0.2)
    middles = [[(a + b) / 2 for a, b in zip(one, other, strict=True)] for one, other in ((right[0], right[-1]), (right[half - 1], right[half]))]
    assert math.dist(*middles) == pytest.approx(asked["left sleeve, length"], abs=0.2)


@pytest.mark.parametrize("path", WITH_SLEEVES, ids=lambda path: f"{path.parent.name}-{path.stem}")
def test_the_yoke_has_one_figure(path: Path) -> None:
    """The one of the table, in the drawing and in its description: the dividing round is in neither."""
    loaded = load_project(path)
    body = next(each for each in lay_out_pieces(loaded.plan, loaded.project) if each.divided_mm is not None)
    assert body.divided_mm is not None
    assert body.divided_mm - body.yoke_mm == pytest.approx(figures(path)["yoke depth"])
    assert [part.end_mm - part.start_mm for part in body.parts if part.name == "body"] == [
        pytest.approx(figures(path)["body, length"])
    ]


def test_a_shoulder_too_short_for_its_sleeve_still_leaves_the_sleeve_its_width() -> None:
    """Three and four meet at a right angle over five (Euclid I.48); two and two do not reach over five."""
    assert find_corner((0, 0), (0, 5), 3, 4) == pytest.approx((2.4, 1.8))
    corner = find_corner((0, 0), (3, 4), 2, 2)
    assert math.dist(corner, (3, 4)) == pytest.approx(2)
    assert corner[0] / corner[1] == pytest.approx(3 / 4)
