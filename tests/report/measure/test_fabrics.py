"""The fabric of a round."""

from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.report.measure.fabrics import Fabrics, is_rib
from tests.garments import read_garment
from tests.plans import phrase


@pytest.mark.parametrize(
    ("text", "rib"),
    [("(k2 p2)x5", True), ("p2 (k2 p2)x4 k2", True), ("(k_tbl1 p1)x4", True), ("k20", False), ("p20", False),
     ("(k2 yo k2tog)x5", False)],
)  # fmt: skip
def test_a_rib_is_knit_and_purl_and_both(text: str, rib: bool) -> None:
    """Plain rounds, purl rounds and lace are none."""
    assert is_rib(phrase(text)) is rib


def test_the_needle_in_hand_says_which_gauge_counts() -> None:
    """A leg under the rib's name on 3 mm needles has the gauge of 3 mm; its first rounds on 2.5 mm the rib's."""
    project, plan = read_garment("sock")
    fabrics = Fabrics(project)
    leg = [each for each in plan.rounds if each.section == "leg"]
    found = [fabrics.of(each) for each in (leg[1], leg[-1])]
    assert [each.name for each in found if each is not None] == ["rib", "foot"]


def test_without_needles_the_stitches_say_it() -> None:
    """Rib in a section of stockinette, where the file tells no needle."""
    project, plan = read_garment("top_down_yoke")
    bare = {name: replace(each, needle_mm=None) for name, each in project.fabrics.items()}
    fabrics = Fabrics(replace(project, fabrics=bare))
    body = [each for each in plan.rounds if each.section == "body"]
    found = [fabrics.of(replace(each, needle_mm=None)) for each in (body[5], body[-2])]
    assert [each.name for each in found if each is not None] == ["stockinette", "rib"]


def test_a_needle_without_a_gauge_of_its_own_keeps_the_sections() -> None:
    """Nothing is known of it; and a section without a gauge has none."""
    project, plan = read_garment("raglan")
    found = Fabrics(project).of(replace(plan.rounds[3], needle_mm=6.0))
    assert found is not None
    assert found.name == "stockinette"
    assert Fabrics(project).of(replace(plan.rounds[3], gauge="")) is None
