"""Rounds on which a garment in the round hangs. Source: common practice, US, UK and Nordic print."""

from __future__ import annotations

import pytest

from stepper.project.rewording.on_needles.hub_rounds import announces_one_row, write_hub_rounds
from stepper.project.rewording.reworded import as_printed


def test_each_step_is_written_by_itself_and_what_stitches_are_for_is_said() -> None:
    """Known parts in a new combination are the row that most pages stop at."""
    line = write_hub_rounds(as_printed("K1, put the next 42 sts on a thread (= sleeve), cast on 6 new sts under the arm, k58 (front), knit the rest of the sts (back) = 107 sts."))
    assert line.text == "K1, hold 42 sts for sleeve, cast on 6 sts, k58, knit to end. 107 sts."
    assert line.kept == ("front", "back")
    assert len(line.places) == len(line.text) + 1


def test_steps_between_stars_stand_where_they_are_worked() -> None:
    """What stands between two times of a repeat is worked between them."""
    line = write_hub_rounds(as_printed("*Hold 9 sts for sleeve, k20*."))
    assert line.text == "*Hold 9 sts for sleeve, k20*."
    line = write_hub_rounds(as_printed("K1, *put the next 9 sts (sleeve) on waste yarn, cast on 2 sts, pm, cast on 2 sts*, k20, rep * to * once, k to end."))
    apart = "hold 9 sts for sleeve, cast on 2 sts, pm, cast on 2 sts"
    assert line.text == f"K1, {apart}, k20, {apart}, k to end."


@pytest.mark.parametrize(
    "printed",
    [
        "K28 (front), pm, k10 (sleeve) every other round, k28 (back), pm.",
        "K10 (sleeve), yo, k28 (front).",
        "K14 (front), put the next 10 sts on a thread, cast on 7 sts, pm in the middle of these, k to end.",
        "*K10 (sleeve), pm, k28 (front), pm*, work from *-* twice.",
        "*K10 (sleeve), pm, k28 (front), pm*, k2.",
        "K28, pm, k10, pm, k28.",
        "Now put the sleeves on hold: k28 (back), pm, k10 (front).",
        "Cast off 5 sts on both sides of both side threads = 11 sts at each side and 28 sts for front and back each.",
    ],
)
def test_other_rows_stay(printed: str) -> None:
    """A word that belongs to no step, a repeat of two numbers and a middle of an odd number are left to be asked about."""
    assert write_hub_rounds(as_printed(printed)).text == printed


def test_a_head_that_tells_one_row_goes_with_the_row_below() -> None:
    """Read alone it would be a round of its own, or lost."""
    assert announces_one_row("Change to needle 4 mm. Now place markers while you knit 1 rnd:")
    assert announces_one_row("The yoke is now divided for body and sleeves:")
    assert not announces_one_row("Knit 1 rnd:")
    assert not announces_one_row("Divide for body and sleeves.")
