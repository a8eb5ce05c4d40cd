"""What is cast on around a marker is two cast-ons with the marker between them."""

from __future__ import annotations

import pytest

from stepper.project.reading.wording import reads
from stepper.project.rewording.on_needles.parted_cast_ons import write_parted_cast_ons
from stepper.project.rewording.reworded import as_printed
from tests.tables import each_row

PARTED = {
    "K17, hold 20 sts, CO 8 (8, 10) sts, placing BOR marker at the center of these sts, k to end.": (
        "K17, hold 20 sts, CO 4 (4, 5) sts, pm for BOR, CO 4 (4, 5) sts, k to end."
    ),
    "Cast on 12 sts for underarm using the backward loop method and place a marker in the middle, k to end.": (
        "Cast on 6 sts for underarm using the backward loop method, pm, Cast on 6 sts, k to end."
    ),
    "CO 8 (8, 10) sts, placing a marker after 3 (4, 4) sts for beg of rnd.": (
        "CO 3 (4, 4) sts, pm for BOR, CO 5 (4, 6) sts."
    ),
    "Cast on 10 underarm sts (with a marker at the midpoint for the side), k to end.": (
        "Cast on 5 underarm sts, pm, Cast on 5 sts, k to end."
    ),
    "*Hold 9 sts, CO 4, pm in the middle of these*, k20, rep * to * once, k to end.": (
        "*Hold 9 sts, CO 2 sts, pm, CO 2 sts*, k20, rep * to * once, k to end."
    ),
    "CO 10 sts, pm halfway, k20, CO 10 sts, pm in the middle of the new sts, k20.": (
        "CO 5 sts, pm, CO 5 sts, k20, CO 5 sts, pm, CO 5 sts, k20."
    ),
}


@each_row("printed", PARTED)
def test_a_cast_on_is_parted_at_the_marker_amid_it(printed: str) -> None:
    """Every round of the body would begin beside its place. Common practice in the print of such pages."""
    assert write_parted_cast_ons(as_printed(printed)).text == PARTED[printed]
    assert "*" in printed or reads(printed, ("S", "M", "L"))


@pytest.mark.parametrize(
    "printed",
    [
        "CO 7 (8, 10) sts, placing a marker at the center, k to end.",
        "CO 8 sts, k4, pm in the middle of the round, k to end.",
        "CO 8 (8, 10) sts, placing a marker after 4 (5) sts, k to end.",
        "CO 8 sts, placing a marker after 9 sts, k to end.",
        "CO 8 sts, pm, k to end.",
        "CO 8 sts, knit to the middle of the underarm, pm, k to end.",
    ],
)
def test_what_has_no_such_middle_is_left_as_it_is(printed: str) -> None:
    """Seven stitches have none; a marker behind what is knitted is another's."""
    assert write_parted_cast_ons(as_printed(printed)).text == printed
