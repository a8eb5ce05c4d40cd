"""What is a rib, told by its stitches. Ribs of print have one to five stitches alike side by side (common practice)."""

from __future__ import annotations

import pytest

from stepper.plan.stitches.rib_cells import WIDEST, has_plain_stretch, is_ribbed


def _row(text: str) -> list[tuple[str, str]]:
    return [(sign, "") for sign in text]


@pytest.mark.parametrize("rib", ["kp" * 9, "kkpp" * 5, "kkkp" * 4, "k" + "kkkkkpp" * 3])
def test_ribs_of_print_are_ribs(rib: str) -> None:
    """One and one, two and two, three and one, a wide one of five and two."""
    assert is_ribbed(_row(rib), _row(rib))


def test_a_band_picked_up_beside_a_ribbed_one_is_no_rib() -> None:
    """"Work 3 rows in rib" over it would knit the knitted stitches, and make no rib of them."""
    beside = "kpkpkpkpk" + "k" * 30 + "kpkpkpkpk"
    assert not is_ribbed(_row(beside), _row(beside))
    assert is_ribbed(_row(beside), _row(beside[:4])), "the first four stitches are ribbed"


def test_a_row_of_one_kind_is_no_rib() -> None:
    """Stockinette has no purl on its right side, however few stitches it has."""
    assert not is_ribbed(_row("kkkk"), _row("kkkk"))


def test_the_widest_rib_is_told_by_a_number() -> None:
    """As many stitches alike as in no rib are a plain stretch, wherever they stand."""
    assert not has_plain_stretch("p" + "k" * WIDEST + "p")
    assert has_plain_stretch("p" + "k" * (WIDEST + 1) + "p")
