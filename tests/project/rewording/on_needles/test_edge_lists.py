"""Stitches picked up along edges of any name. Source: common practice."""

from __future__ import annotations

import pytest

from stepper.project.rewording.on_needles.edge_lists import write_edge_lists
from stepper.project.rewording.reworded import as_printed


def written(printed: str) -> str:
    """Return a line with its edges written one by one."""
    return write_edge_lists(as_printed(printed)).text


def test_where_is_said_in_any_words() -> None:
    """Each stretch is a picking up; its edge stays beside the work, and every letter keeps a place."""
    line = write_edge_lists(as_printed("Pick up and knit 62 to the start of the V, 41 up the V and the same number down the other V. 144 sts."))
    assert line.text == "Pick up and knit 62 sts, pick up and knit 41 sts, pick up and knit 41 sts. 144 sts."
    assert line.kept == ("to the start of the V", "up the V", "down the other V")
    assert len(line.places) == len(line.text) + 1


def test_a_marker_between_two_stretches_stays_there() -> None:
    """The edge where stitches were bound off is a place, no order."""
    line = write_edge_lists(as_printed("Pick up and knit 4 sts along underarm, 28 sts up to shoulder seam, pm, 28 sts down to underarm BO and 4 sts along underarm."))
    assert line.text == "Pick up and knit 4 sts, pick up and knit 28 sts, pm, pick up and knit 28 sts, pick up and knit 4 sts."
    assert line.kept == ("along underarm", "up to shoulder seam", "down to underarm BO", "along underarm")


def test_a_stitch_that_is_marked_has_a_marker_before_it() -> None:
    """The point of a V is worked to again."""
    assert written("Pick up 40 sts, 1 st at the point (mark it), 40 sts.") == "Pick up and knit 40 sts, pm for marked st, pick up and knit 1 sts, pick up and knit 40 sts."


def test_signs_and_older_verbs_join_them_too() -> None:
    """A plus sign joins two stretches; what is knitted up is picked up."""
    assert written("Pick up 1 in corner + 14 along other side of flap.") == "Pick up and knit 1 sts, pick up and knit 14 sts."
    assert written("Knit up 3, k across held sleeve sts, knit up 3 more.") == "Pick up and knit 3 sts, k across held sleeve sts, pick up and knit 3 sts."


@pytest.mark.parametrize("stretches", ["30 along the back, 12 down each side and 26 across the front", "40 at the back and 40 at the front"])
def test_a_sum_that_its_stretches_come_to_is_worked(stretches: str) -> None:
    """Each side counts twice."""
    assert written(f"Pick up 80 sts around the neck: {stretches}.") == "Pick up and knit 80 sts."


@pytest.mark.parametrize(
    "printed",
    [
        "Pick up 12 sts along each side.",
        "Pick up and knit 4 sts at underarm, 56 sts from held sleeve.",
        "Pick up and knit 4 sts at underarm, 56 sts across sleeve.",
        "Pick up and knit 4 sts along edge, 3 sts every 4 rows.",
        "K4, 20 sts along edge.",
        "Pick up and knit 20 sts down the side, 3 rows in garter st.",
        "Pick up 3 sts for every 4 rows along the edge.",
        "Pick up 40 sts along the edge every other row, 20 sts at the back.",
    ],
)
def test_what_may_be_another_order_stays(printed: str) -> None:
    """Stitches on hold are knitted, and a pace is no number."""
    assert written(printed) == printed


def test_a_sum_that_its_stretches_do_not_come_to_is_not_taken() -> None:
    """Nobody can tell which of the numbers is wrong."""
    assert "30 along the back" in written("Pick up 80 sts around the neck: 30 along the back, 12 down each side and 20 across the front.")


def test_sums_are_looked_at_in_every_size() -> None:
    """One size that does not agree is enough."""
    assert written("Pick up 20 (24) sts: 10 (12) along the back and 10 (12) along the front.") == "Pick up and knit 20 (24) sts."
    assert "along the back" in written("Pick up 20 (24) sts: 10 (12) along the back and 10 (10) along the front.")


@pytest.mark.parametrize("behind", ["108 sts in all", "108 altogether", "108 sts", "108"])
def test_a_number_that_comes_to_all_of_them_is_a_count(behind: str) -> None:
    """Picked up once more, the armhole would have twice as many."""
    assert written(f"Pick up and knit 54 sts to the shoulder and the same down again, {behind}.") == "Pick up and knit 54 sts, pick up and knit 54 sts. 108 sts."


def test_plus_is_a_joint_and_what_was_cast_off_an_edge() -> None:
    """An armband is picked up over both."""
    assert written("Pick up 10 (12) cast-off sts plus 88 (92) round armhole.") == "Pick up and knit 10 (12) sts, pick up and knit 88 (92) sts."
    assert written("Pick up, RS outside, 18 + 18 along the neck, 36 along the back, 18 left.") == "Pick up and knit 18 sts, pick up and knit 18 sts, pick up and knit 36 sts, pick up and knit 18 sts."


def test_a_bare_number_behind_stretches_with_a_place_counts_all_stitches() -> None:
    """ "…, pick up and knit 3 sts over gap, 70 sts" picked up seventy more; now the plan holds it against the needles."""
    assert written("Pick up and knit 3 sts over gap, 70 sts.") == "Pick up and knit 3 sts. 70 sts."
    assert written("Pick up and knit 20 sts along left front, 20 sts along right front, 38 sts.") == "Pick up and knit 20 sts, pick up and knit 20 sts. 38 sts."
