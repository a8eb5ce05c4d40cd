"""The yoke from above: stitch by stitch what the plan says, by reading the dashes back."""

from __future__ import annotations

from itertools import pairwise
from pathlib import Path
from xml.etree import ElementTree

from stepper.plan.model import Round
from stepper.plan.yoke import yoke_of
from stepper.report.sheet.looks import assign_looks
from stepper.report.sheet.yoke_rings import draw_yoke_rings
from stepper.sitting.project_file import load_project

LOADED = load_project(Path(__file__).parents[2] / "fixtures" / "switchback.yaml")
YOKE = yoke_of(LOADED.plan.rounds)
SHADES = assign_looks(LOADED.project, ())


def rings() -> list[tuple[float, list[ElementTree.Element]]]:
    """Return the circles of each ring, the innermost first."""
    assert YOKE is not None
    root = ElementTree.fromstring(draw_yoke_rings(YOKE, SHADES, "Test"))
    found: dict[float, list[ElementTree.Element]] = {}
    fills = {shade.colour for shade in SHADES.values()}
    for each in root.iter("circle"):
        if each.attrib.get("stroke") in fills:
            found.setdefault(float(each.attrib["r"]), []).append(each)
    return sorted(found.items())


def stitches_of(circles: list[ElementTree.Element], count: int) -> list[str]:
    """Read a ring back: the colour of every stitch, from the top clockwise."""
    colours = [circles[0].attrib["stroke"]] * count
    for circle in circles[1:]:
        parts = list(map(int, circle.attrib["stroke-dasharray"].split()))
        assert int(circle.attrib["pathLength"]) == count
        at = place = 0
        while at < count:
            part = parts[place % len(parts)]
            if place % 2 == 0:
                colours[at : at + part] = [circle.attrib["stroke"]] * part
            at, place = at + part, place + 1
    return colours


def wanted(round_: Round) -> list[str]:
    """Return the colour of every stitch of a round, from the plan."""
    return [SHADES[run.yarn].colour for run in round_.runs for _ in range(run.progress)]


def test_every_ring_is_its_round_stitch_by_stitch() -> None:
    """Colours, numbers and places, from the first stitch of the round to the last."""
    assert YOKE is not None
    drawn = rings()
    assert len(drawn) == len(YOKE.rounds)
    for (_, circles), round_ in zip(drawn, YOKE.rounds, strict=True):
        assert stitches_of(circles, round_.progress) == wanted(round_)


def test_rings_touch_and_fill_the_circle() -> None:
    """The neck inside, the last round outside, equal steps between."""
    assert YOKE is not None
    radii = [radius for radius, _ in rings()]
    step = 100 * (1 - YOKE.inner) / len(YOKE.rounds)
    assert all(abs(other - one - step) < 0.02 for one, other in pairwise(radii))
    assert abs(radii[-1] + step / 2 - 100) < 0.02


def test_the_second_contrast_yarn_has_a_line_along_it() -> None:
    """In black and white ember is still not pine."""
    assert YOKE is not None
    root = ElementTree.fromstring(draw_yoke_rings(YOKE, SHADES, "Test"))
    ember = [each for each in root.iter("circle") if each.attrib.get("stroke") == SHADES["B"].colour]
    inks = [each for each in root.iter("circle") if each.attrib.get("stroke") == SHADES["B"].ink]
    dashes = [each.attrib.get("stroke-dasharray") for each in inks]
    assert [each.attrib.get("stroke-dasharray") for each in ember if "stroke-dasharray" in each.attrib]
    assert {each.attrib["stroke-dasharray"] for each in ember if "stroke-dasharray" in each.attrib} == set(
        dashes
    )


def test_it_is_told_to_those_who_do_not_see_it() -> None:
    """How many rounds, from how many stitches to how many, and the increases by name."""
    assert YOKE is not None
    said = ElementTree.fromstring(draw_yoke_rings(YOKE, SHADES, "Test")).attrib["aria-label"]
    assert "to 246 at the outer edge" in said
    assert "Final increase to 246 stitches" in said
