from __future__ import annotations

from itertools import combinations

import pytest

from stepper.screen.drawing.numerals import FIELD, Scale, draw_numeral
from stepper.screen.drawing.rows import row_width, text_of


def test_no_two_numerals_look_alike() -> None:
    """At a glance a 3 must not be an 8: every two differ in three places of the field or more."""
    for one, other in combinations(FIELD, 2):
        places = zip("".join(FIELD[one]), "".join(FIELD[other]), strict=True)
        assert sum(a != b for a, b in places) >= 3, (one, other)


@pytest.mark.parametrize("scale", Scale)
@pytest.mark.parametrize("blocks", [True, False])
def test_a_number_is_as_big_as_its_scale_says(scale: Scale, blocks: bool) -> None:
    """The layout counts on it."""
    for number in (0, 7, 30, 128, 9999):
        drawn = draw_numeral(number, scale, blocks=blocks)
        assert len(drawn) == scale.rows
        places = 5 * len(str(number)) - 1  # four for a digit, one between two of them
        assert {row_width(each) for each in drawn} == {places * scale.value[0]}


def test_a_numeral_is_what_it_is() -> None:
    """Read by eye."""
    assert [text_of(each).rstrip() for each in draw_numeral(47, Scale.LARGE)] == [
        "██    ██  ████████",
        "██    ██        ██",
        "██    ██      ████",
        "████████      ██",
        "      ██      ██",
        "      ██      ██",
    ]
    assert [text_of(each) for each in draw_numeral(20, Scale.SMALL)] == [
        "▀▀▀▄ ▄▀▀▄",
        " ▄█▀ █  █",
        "██▄▄ ▀▄▄▀",
    ]
    assert all(text_of(each).isascii() for each in draw_numeral(20, Scale.SMALL, blocks=False))
