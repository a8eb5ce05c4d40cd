"""Yarn numbers and skeins against published relations and exact units."""

from __future__ import annotations

import pytest
import scipy
from hypothesis import given
from hypothesis import strategies as st

from stepper.craft.skeins import (
    OUNCE_G,
    YARD_M,
    Skein,
    loop_mm_from_weight,
    metres_to_be_sure,
    skeins_to_buy,
)


def test_the_yard_agrees_with_scipy() -> None:
    """It is exact by definition."""
    assert scipy.constants.yard == pytest.approx(YARD_M)


def test_the_ounce_agrees_with_scipy() -> None:
    """Avoirdupois, exact by definition."""
    assert scipy.constants.ounce * 1000 == pytest.approx(OUNCE_G)


@pytest.mark.parametrize(("likely", "high", "sure"), [(1000, 1050, 1150), (1000, 1200, 1200), (0, 0, 0)])
def test_to_be_sure_is_the_allowance_or_the_most(likely: float, high: float, sure: float) -> None:
    """10 to 15 % over for swatch and spare (elizabethsmithknits, 24 May 2024)."""
    assert metres_to_be_sure(likely, high) == pytest.approx(sure)

@pytest.mark.parametrize(
    ("grams", "metres", "tex", "count"),
    [(50, 100, 500, 2.0), (50, 120, 416.7, 2.4), (50, 210, 238.1, 4.2), (100, 400, 250, 4.0)],
)
def test_labels_to_yarn_numbers(grams: float, metres: float, tex: float, count: float) -> None:
    """tex = g per 1000 m, Nm = 1000 / tex (textilelearner, Dec 2012)."""
    skein = Skein(grams=grams, metres=metres)
    assert skein.tex == pytest.approx(tex, abs=0.05)
    assert skein.metric_count == pytest.approx(count)


def test_exact_ceilings() -> None:
    """1100 yd at 109 yd a ball are 10.09, so 11; 460 at 220 are 2.09, so 3 (arithmetic)."""
    assert skeins_to_buy(1100, 109) == 11
    assert skeins_to_buy(460, 220) == 3
    assert skeins_to_buy(0, 220) == 0


def test_a_whole_number_of_skeins_is_not_one_more() -> None:
    """0.1 + 0.2 metres in skeins of 0.3 is one skein, though binary fractions say a hair more."""
    assert (0.1 + 0.2) / 0.1 > 3
    assert skeins_to_buy(0.1 + 0.2, 0.1) == 3
    assert skeins_to_buy(1100, 110) == 10


@given(st.integers(0, 10**6), st.integers(1, 10**4))
def test_enough_and_not_one_too_many(metres: int, skein: int) -> None:
    """That many hold it, one fewer does not (whole-number oracle)."""
    assert skeins_to_buy(metres, skein) == -(-metres // skein)


@given(st.floats(0, 1e4))
def test_weight_goes_to_length_and_back(grams: float) -> None:
    """The label converts both ways."""
    skein = Skein(grams=50, metres=175)
    assert skein.grams_of(skein.metres_in(grams)) == pytest.approx(grams)


def test_a_weighing_tells_the_loop() -> None:
    """10 g of 50 g / 175 m are 35 m; over 2000 loops 17.5 mm each (proportion)."""
    assert loop_mm_from_weight(10, Skein(grams=50, metres=175), loops=2000) == pytest.approx(17.5)


def test_bad_arguments_are_refused() -> None:
    """Every range in a docstring is kept."""
    with pytest.raises(ValueError, match="grams"):
        Skein(grams=0, metres=1)
    with pytest.raises(ValueError, match="metres"):
        Skein(grams=1, metres=float("nan"))
    with pytest.raises(ValueError, match="metres"):
        Skein(grams=1, metres=float("inf"))
    skein = Skein(grams=50, metres=175)
    with pytest.raises(ValueError, match="grams"):
        skein.metres_in(-1)
    with pytest.raises(ValueError, match="grams"):
        skein.metres_in(float("inf"))
    with pytest.raises(ValueError, match="grams"):
        loop_mm_from_weight(float("inf"), skein, loops=1)
    with pytest.raises(ValueError, match="metres"):
        skein.grams_of(-1)
    with pytest.raises(ValueError, match="skein"):
        skeins_to_buy(1, 0)
    with pytest.raises(ValueError, match="metres"):
        skeins_to_buy(-1, 1)
    with pytest.raises(ValueError, match="loops"):
        loop_mm_from_weight(1, skein, loops=0)
