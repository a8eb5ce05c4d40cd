from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.craft.stitches import STITCHES, stitch
from stepper.screen.cells import (
    LEGEND,
    SquareLook,
    draw_square,
    draw_squares,
    is_turned,
    list_catches,
    repetition_at,
    sign_of,
)
from tests.plans import plan
from tests.screen.scenes import garment, terminal, yarns
from tests.tables import each_row


@each_row("code", STITCHES)
def test_every_stitch_has_a_sign_of_one_letter(code: str) -> None:
    """A square is one stitch; only a knit stitch shows its yarn instead."""
    sign = sign_of(stitch(code))

    assert len(sign) == (0 if code == "k" else 1)
    assert sign.isascii()


def test_signs_lean_as_the_stitches_do() -> None:
    """Source: chart symbols of the Craft Yarn Council: k2tog leans right, ssk left; from memory."""
    assert [sign_of(stitch(code)) for code in ("k2tog", "ssk", "s2kp", "yo", "m1", "2/2 rc", "p")] == [
        "/", "\\", "^", "o", "+", "x", "-",
    ]  # fmt: skip
    assert {"/", "\\", "^", "o", "+", "x", "-"} <= {sign for sign, _ in LEGEND}


def test_there_are_as_many_squares_as_stitches() -> None:
    """For every round of a garment with everything in it."""
    for round_ in garment().rounds:
        assert len(draw_squares(round_)) == round_.progress


def test_a_wrong_side_row_is_seen_from_the_right_side() -> None:
    """A purl from behind is a knit from the front, and the last stitch of the row lies at the right edge."""
    row = garment().rounds[-2]
    seen = draw_squares(row)

    assert is_turned(row)
    assert [square.sign for square in seen[:2]] == ["/", ""]


def test_three_yarns_are_three_letters() -> None:
    """Told apart without any colour."""
    round_ = garment().rounds[5]
    letters = {
        draw_square(each, yarns(), terminal(), 1, SquareLook()).text for each in draw_squares(round_)
    }

    assert letters == {".", "A", "B"}


@pytest.mark.parametrize(
    ("stitch_", "expected"),
    [(0, None), (3, (1, 3)), (6, (1, 3)), (7, (2, 3)), (14, (3, 3)), (15, None), (16, None)],
)
def test_repeats_are_counted(stitch_: int, expected: tuple[int, int] | None) -> None:
    """Three stitches, four of them three times, four more: counted by hand."""
    round_ = plan(("body", ["co19", "k3 (k2 p2)x3 k4"])).rounds[1]

    assert repetition_at(round_, stitch_) == expected


def test_a_float_is_caught_behind_the_same_stitch_from_either_side() -> None:
    """The third stitch of a wrong-side row of ten is the eighth from the right edge (arithmetic)."""
    here = replace(garment().rounds[-1], caught=(("A", (3,)),))
    wrong = replace(garment().rounds[-2], caught=(("A", (3,)),))

    assert list_catches(here) == {2}
    assert list_catches(wrong) == {wrong.progress - 3}


def test_one_column_still_shows_where_a_float_is_caught() -> None:
    """A small window must not hide it."""
    square = draw_squares(garment().rounds[5])[0]

    assert draw_square(square, yarns(), terminal(), 1, SquareLook(caught=True)).text == "~"
    assert draw_square(square, yarns(), terminal(), 2, SquareLook(caught=True)).text == "~."
    assert draw_square(square, yarns(), terminal(), 2, SquareLook(caught=True, marker=True)).text == "|."


@pytest.mark.parametrize("code", ["own", "own 90 to 96"])
def test_stitches_of_own_words_have_a_sign_that_claims_nothing(code: str) -> None:
    """A yarn over or a knit stitch drawn there would be made up."""
    assert sign_of(stitch(code)) == "?"
    assert "?" in {sign for sign, _ in LEGEND}
