"""What each strand of a garment is."""

from __future__ import annotations

import pytest

from stepper.report.measure.roles import assign_roles, count_before_edges
from tests.garments import NAMES, read_garment
from tests.plans import plan


@pytest.mark.parametrize(
    ("name", "yoke", "torso", "sleeves", "bands"),
    [
        ("hem_up_yoke", True, False, 2, 0),
        ("top_down_yoke", True, False, 2, 0),
        ("raglan", True, False, 2, 0),
        ("drop_shoulder", False, True, 2, 0),
        ("set_in", False, True, 2, 0),
        ("cardigan", False, True, 2, 2),
        ("sock", False, False, 0, 0),
        ("mitten", False, False, 0, 0),
        ("hat", False, False, 0, 0),
        ("shawl", False, False, 0, 0),
    ],
)
def test_each_construction_has_its_roles(
    name: str, yoke: bool, torso: bool, sleeves: int, bands: int
) -> None:
    """Yoke or body without one, sleeves, bands; a sock's instep and a thumb on hold are neither."""
    _, garment = read_garment(name)
    roles = assign_roles(garment.rounds)
    found = (roles.yoke is not None, roles.torso is not None, len(roles.sleeves), len(roles.bands))
    assert found == (yoke, torso, sleeves, bands)


def test_every_invented_garment_has_a_row_above() -> None:
    """None is forgotten."""
    assert len(NAMES) == 10


def test_a_yoke_from_the_hem_up_is_no_divide() -> None:
    """Underarms on hold, two in one round, part no sleeves from a body."""
    for name in ("hem_up_yoke", "cardigan"):
        yoke = assign_roles(read_garment(name)[1].rounds).yoke
        assert yoke is None or yoke.upward, name
    divided = assign_roles(read_garment("raglan")[1].rounds).yoke
    assert divided is not None
    assert not divided.upward


def test_the_body_is_the_widest_of_what_is_joined() -> None:
    """Whatever is knitted first: here the yoke is begun with the stitches of a sleeve."""
    rounds = plan(
        ("body", ["co20", "k20", "hold20:body"]),
        ("left sleeve", ["co6", "k6", "hold6:left"]),
        ("right sleeve", ["co6", "k6", "hold6:right"]),
        ("yoke", ["return6:left return20:body return6:right", "k32", "bo32"]),
    ).rounds
    yoke = assign_roles(rounds).yoke
    assert yoke is not None
    assert yoke.upward
    assert yoke.body == (0, 1, 2)
    assert [sleeve.name for sleeve in yoke.sleeves] == ["left sleeve", "right sleeve"]


def test_a_back_alone_has_no_chest() -> None:
    """What is missing is known, so that nothing is made up."""
    torso = assign_roles(plan(("back", ["co20", ("k20", {"flat": True}), "bo20"])).rounds).torso
    assert torso is not None
    assert torso.missing == "a front"


def test_the_edges_at_the_end_are_not_part_of_the_width() -> None:
    """Two rounds that bind off."""
    rounds = plan(("a", ["co6", "k6", "bo2 k4", "bo4"])).rounds
    assert count_before_edges(assign_roles(rounds).flow, (0, 1, 2, 3)) == 2
