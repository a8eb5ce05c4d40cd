from __future__ import annotations

import pytest

from stepper.lap.squares import describe_strip, describe_yoke, list_yarns, yarn_numbers
from stepper.screen.cells import draw_squares
from stepper.screen.course import course_of
from stepper.screen.yarns import NO_YARNS
from tests.plans import plan
from tests.screen.scenes import Desk, yarns


def test_the_row_in_hand_is_what_the_chart_says() -> None:
    """Round 4 of the yoke from the chart's right edge: k1, k4 in A, k2, k3 in B."""
    strip = describe_strip(Desk().do("go to yoke round 4").scene(), 70)
    assert strip is not None
    here = next(row for row in strip["rows"] if row.get("here"))
    assert here["number"] == 4
    assert here["runs"][:4] == [[0, "", 1], [1, "", 4], [0, "", 2], [2, "", 3]]
    assert sum(many for _, _, many in here["runs"]) == 70


def test_a_window_holds_the_step_and_no_more_than_there_is_room_for() -> None:
    """Wherever she is in a round, what she works on is in sight."""
    for stitch in range(0, 70, 7):
        strip = describe_strip(Desk().do("go to yoke round 4", "by repeat", f"stitch {stitch}").scene(), 16)
        assert strip is not None
        assert strip["wide"] == 16
        assert strip["first"] <= strip["step"][0] < strip["first"] + 16
        assert all(sum(many for _, _, many in row["runs"]) <= 16 for row in strip["rows"])


def test_a_row_from_the_wrong_side_is_seen_from_the_right() -> None:
    """Its step begins at the chart's left edge, and its purls look like knits."""
    strip = describe_strip(Desk().do("go to body round 2").scene(), 60)
    assert strip is not None
    assert strip["turned"]
    here = next(row for row in strip["rows"] if row.get("here"))
    assert strip["step"][1] == 49
    assert {sign for _, sign, _ in here["runs"]} == {"", "/"}  # p2tog on the wrong side is k2tog on the right


def test_without_a_round_in_hand_there_is_no_strip() -> None:
    """The garment is finished."""
    assert describe_strip(Desk().do("go to body round 3", "next").scene(), 60) is None


def test_the_yoke_is_all_its_stitches_in_rings() -> None:
    """Each ring holds the stitches of its round, neck first, in working order."""
    course = course_of(Desk().plan)
    yoke = describe_yoke(course, yarns())
    assert yoke is not None
    assert 0 < yoke["inner"] < 1
    for number, ring in enumerate(yoke["rings"]):
        round_ = course.rounds[yoke["first"] + number]
        assert sum(many for _, many in ring) == round_.progress == len(draw_squares(round_))


def test_a_garment_in_rows_has_no_yoke() -> None:
    """A shawl is not drawn as rings."""
    flat = plan(("shawl", [("co3", {"flat": True}), ("k3", {"flat": True, "side": "WS"})]))
    assert describe_yoke(course_of(flat), NO_YARNS) is None


@pytest.mark.parametrize("known", [True, False])
def test_yarns_are_numbered_as_in_the_file(known: bool) -> None:
    """A run names its yarn by this number; a yarn that only the plan knows has one too."""
    scene = Desk().scene()
    found = yarns() if known else NO_YARNS
    numbers = yarn_numbers(scene.course, found)
    assert list(numbers) == ["MC", "A", "B"]
    if known:
        assert [each["name"] for each in list_yarns(scene)] == ["chalk", "pine", "ember"]
        assert [each["colour"] for each in list_yarns(scene)] == ["#ece6d8", "#1f4d3a", "#c4512d"]
