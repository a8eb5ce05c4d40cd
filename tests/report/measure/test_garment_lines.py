"""Garments with body and sleeves, of each construction, against sums by hand.

Gauge of all: 20 stitches and 25 rounds to 10 cm, so a stitch is 5 mm and a round 4 mm; the rib has 25 stitches, 4 mm.
"""

from __future__ import annotations

import pytest

from stepper.report.measure.garment_lines import (
    front_band,
    measure_torso,
    measure_yoke,
    neck_edge,
    yoke_without_band,
)
from stepper.report.measure.measurements import measure_garment
from stepper.report.measure.measuring import Measurement
from stepper.report.measure.roles import assign_roles
from stepper.report.measure.tape import Tape
from tests.garments import read_garment
from tests.tables import each_row


def measured(name: str) -> dict[str, Measurement]:
    """Measure an invented garment as its file knits it."""
    project, plan = read_garment(name)
    return {line.name: line for line in measure_garment(plan.rounds, project)}


HEM_UP = [
    ("neck", 80 * 4),  # 80 stitches of rib: 40 % of K
    ("full yoke", 268 * 5),  # 168 + 2 × 50
    ("chest", 200 * 5),  # K, below the underarms
    ("lower edge", 200 * 4),  # in rib
    ("yoke depth", 61 * 4),  # joining round, 29, 1, 14, 1, 14, 1
    ("left sleeve, upper arm", 66 * 5),
    ("left sleeve, wrist", 40 * 4),  # in rib
    ("right sleeve, length", 440),  # printed
    ("body, length", 400),  # printed
    ("neckband, length", 40),  # printed
]
TOP_DOWN = [
    ("neck", 96 * 4),
    ("full yoke", 288 * 5),
    ("chest", 204 * 5),  # 46 + 10 + 92 + 10 + 46
    ("yoke depth", 39 * 4),  # three times an increase and 12 rounds, over two sections
    ("neckband, length", 32),
    ("body, length", 320 + 60),  # printed; the round that divides is the first of this section
    ("left sleeve, upper arm", 62 * 5),  # 52 + 10
    ("left sleeve, wrist", 44 * 4),
    ("left sleeve, length", 420 + 60),
]
RAGLAN = [
    ("neck", 80 * 5),
    ("full yoke", 272 * 5),  # 80 + 24 × 8
    ("chest", 180 * 5),  # 272 - 2 × 58 + 2 × 12
    ("yoke depth", 48 * 4),  # the set-up round, 24 increase rounds, 23 between
    ("left sleeve, upper arm", 70 * 5),  # 58 + 12
    ("left sleeve, wrist", 44 * 5),
]
DROP_SHOULDER = [
    ("back, width", 102 * 5),
    ("chest", 2 * 102 * 5),
    ("lower edge", 2 * 102 * 4),  # in rib
    ("back, length", (16 + 135) * 4),  # 16 rows of rib, 54 cm of 4 mm are 135 rows
    ("first sleeve, upper arm", 74 * 5),  # 46 + 2 × 14
    ("first sleeve, wrist", 46 * 4),
]
SET_IN = [
    ("back, width", 100 * 5),
    ("chest", (100 + 50 + 50) * 5),
    ("back, to the armhole", 360),
    ("back, armhole depth", 56 * 4),  # 2 bound off, 5 × 2 decreasing, 40 even, 4 at the shoulders
    ("left sleeve, upper arm", 66 * 5),  # 44 + 2 × 11
    ("left sleeve, wrist", 44 * 5),
    ("left sleeve, length", 440),
    ("left sleeve, cap height", 32 * 4),  # 2 bound off, 15 × 2 decreasing
]
CARDIGAN = [
    ("chest", 184 * 5 + 8 * 4),  # and one band of 8 rows: the other lies under it
    ("body, to the armhole", 86 * 4),  # 34 cm are 85 rows, and one more to end on the wrong side
    ("armhole depth", 51 * 4),  # 20 cm are 50 rows, and one more
    ("left sleeve, upper arm", 80 * 5),
    ("left sleeve, wrist", 48 * 4),
    ("left band, length", 32),
]


@each_row(
    ("garment", "name", "mm"),
    [
        (garment, *line)
        for garment, lines in {
            "hem_up_yoke": HEM_UP,
            "top_down_yoke": TOP_DOWN,
            "raglan": RAGLAN,
            "drop_shoulder": DROP_SHOULDER,
            "set_in": SET_IN,
            "cardigan": CARDIGAN,
        }.items()
        for line in lines
    ],
)
def test_every_construction_is_measured_as_by_hand(garment: str, name: str, mm: float) -> None:
    """Source: printed counts times the stitch, rows counted from the printed lines times the round."""
    assert measured(garment)[name].needles_mm == pytest.approx(mm)


def test_the_percentage_system_is_found_again() -> None:
    """K 200: upper sleeve 33 %, wrist 20 %, neck 40 %, joined yoke 134 %, depth a quarter of the circumference.

    Source: check-values 4.1.2 to 4.1.7, published, but for the wrist (from memory).
    """
    found = measured("hem_up_yoke")
    assert found["chest"].stitches == 200
    assert found["left sleeve, upper arm"].stitches == 0.33 * 200
    assert found["left sleeve, wrist"].stitches == 0.2 * 200
    assert found["neck"].stitches == 0.4 * 200
    assert found["full yoke"].stitches == 1.34 * 200
    assert found["yoke depth"].needles_mm == pytest.approx(0.25 * 1000, abs=10)


def test_a_flat_back_is_no_chest() -> None:
    """A chest is what goes all the way around."""
    for name in ("drop_shoulder", "set_in"):
        found = measured(name)
        assert found["chest"].needles_mm == 2 * found["back, width"].needles_mm
        assert found["back, width"].measure == ""


def test_fronts_on_hold_are_no_sleeves() -> None:
    """The cardigan puts two parts on hold in one row, as a yoke does; they are its fronts."""
    project, plan = read_garment("cardigan")
    roles = assign_roles(plan.rounds)
    assert roles.yoke is None
    assert roles.torso is not None
    lines = list(measure_torso(plan.rounds, roles, roles.torso, Tape(project)))
    assert not {"neck", "full yoke"} & {line.name for line in lines}


def test_the_band_of_a_cardigan_is_measured_across() -> None:
    """Eight rows of 4 mm; a pullover has none."""
    project, plan = read_garment("cardigan")
    band = front_band(plan.rounds, assign_roles(plan.rounds), Tape(project))
    assert band is not None
    assert band.needles_mm == pytest.approx(8 * 4)
    project, plan = read_garment("raglan")
    assert front_band(plan.rounds, assign_roles(plan.rounds), Tape(project)) is None


@pytest.mark.parametrize(("name", "edge"), [("hem_up_yoke", 80), ("top_down_yoke", 96)])
def test_the_neck_is_at_the_end_away_from_the_underarm(name: str, edge: int) -> None:
    """Bound off last, or cast on first; the yoke between has no rib in it."""
    project, plan = read_garment(name)
    roles = assign_roles(plan.rounds)
    assert roles.yoke is not None
    assert plan.rounds[neck_edge(roles, roles.yoke)].after == edge
    inside = yoke_without_band(plan.rounds, roles, roles.yoke)
    assert {plan.rounds[index].needle_mm for index in inside} == {4.5}
    assert "neck" in {line.name for line in measure_yoke(plan.rounds, roles, roles.yoke, Tape(project))}
