"""The schematic: its measurements are those of the pieces, and nothing of it lies outside the sheet."""

from __future__ import annotations

import re
from pathlib import Path
from xml.etree import ElementTree

import pytest

from stepper.report.sheet.pieces import lay_out_pieces
from stepper.report.sheet.schematic import describe_pieces, draw_schematic
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
