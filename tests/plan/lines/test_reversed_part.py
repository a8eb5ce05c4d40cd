"""A part worked from the other edge, row by row by hand. Source: common practice ("reversing shaping")."""

from __future__ import annotations

import pytest

from stepper.craft.stitches import stitch
from stepper.plan.lines.reversed_part import MIRRORED
from tests.plan.lines.test_another_part import knit, refused

RIGHT = (
    "== right front",
    "CO 20 sts. Work flat.",
    "Work 2 rows in stockinette st.",
    "Next row (RS): K1, ssk, k to end. 19 sts.",
    "Purl 1 row.",
    "Next row (RS): Bind off 5 sts, k to end. 14 sts.",
    "Purl 1 row.",
    "Bind off.",
)
LEFT = ("== left front", "As right front, reversing shaping.")


def rows(*lines: str) -> list[str]:
    """Return the rows of the left front."""
    return [f"{round_.side} {round_.instruction}" for round_ in knit(*lines).rounds if round_.section == "left front"]


def test_shaping_changes_edges_and_lean_and_bind_offs_come_a_row_later() -> None:
    """The left front has its neck and armhole on the other side."""
    assert rows(*RIGHT, *LEFT)[3:] == ["RS k17, k2tog, k1", "WS purl", "RS knit", "WS bind off 5, p14", "RS bind off"]


def test_the_mirror_image_of_the_mirror_image_is_the_row() -> None:
    """Every lean goes to the other and comes back, or to one that looks like it."""
    for code, other in MIRRORED.items():
        assert MIRRORED[other] == code or stitch(code).change == stitch(other).change


def test_two_edges_bound_off_in_turn_are_exchanged() -> None:
    """4 at the beginning of a right-side row and 2 of the wrong-side row after it."""
    right = (*RIGHT[:3], "Next row (RS): Bind off 4 sts, k to end.", "Next row: Bind off 2 sts, p to end.", "Knit 1 row.", "Bind off.")
    assert rows(*right, *LEFT)[3:5] == ["RS bind off 2, k18", "WS bind off 4, p14"]


def test_a_bind_off_in_the_last_row_takes_a_row_more() -> None:
    """The wrong side has the edge, and there is no wrong-side row left."""
    right = (*RIGHT[:3], "Next row (RS): Bind off 4 sts, k to end.", "Bind off.")
    assert rows(*right, *LEFT)[3:] == ["RS knit", "WS bind off 4, p16", "RS bind off"]


def test_it_is_told() -> None:
    """She should look at the first rows of it."""
    assert any("shaping is mirrored" in caution.text for caution in knit(*RIGHT, *LEFT).warnings)


@pytest.mark.parametrize(
    "line", ["K1, yo, k2tog, k to end.", "K2, 2/2 RC, k to end.", "K10, turn.", "*K1 in CC, k1 in MC; rep from * to end."]
)
def test_what_has_no_mirror_image_is_refused(line: str) -> None:
    """Lace, cables, short rows and colours are no shaping."""
    assert refused(*RIGHT[:3], f"Next row (RS): {line}", "Bind off.", *LEFT)


def test_the_second_side_goes_on_as_the_first_from_the_other_edge() -> None:
    """Complete to match first side: the rows after those it has, mirrored."""
    front = (
        "== left front", "CO 30 sts. Work flat.", "Next row (RS): K12, turn and leave rem 18 sts on a holder.", "Purl 1 row.",
        "Next row: K to last 3 sts, k2tog, k1.", "Bind off all sts.", "With RS facing, rejoin yarn to held sts, bind off 6 sts, k to end.",
        "Complete to match first side.",
    )  # fmt: skip
    assert rows(*front)[-3:] == ["WS purl", "RS k1, ssk, k9", "WS bind off"] or rows(*front)[-3:-1] == ["WS purl", "RS k1, ssk, k9"]


def test_a_second_side_without_a_first_is_refused() -> None:
    """Nothing was put on hold."""
    assert "no first side" in refused("== left front", "CO 30 sts. Work flat.", "Knit 2 rows.", "Complete to match first side.")
