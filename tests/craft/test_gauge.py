"""Gauge arithmetic against published worked examples and the definition of the inch."""

from __future__ import annotations

import pytest
import scipy
from hypothesis import given
from hypothesis import strategies as st

from stepper.craft.gauge import Gauge, correct_gauge, from_mm, half_up, to_mm

GAUGE = Gauge(stitches=22, rounds=30)


def test_units_agree_with_scipy() -> None:
    """The inch, centimetre and millimetre are those of scipy.constants."""
    assert to_mm(1, "in") == pytest.approx(scipy.constants.inch / scipy.constants.milli)
    assert to_mm(1, "cm") == pytest.approx(scipy.constants.centi / scipy.constants.milli)
    assert (to_mm(7, "mm"), from_mm(7, "mm")) == (7, 7)
    assert from_mm(254, "in") == pytest.approx(10)
    assert from_mm(254, "cm") == pytest.approx(25.4)


@given(st.floats(-1e6, 1e6), st.sampled_from(["mm", "cm", "in"]))
def test_units_go_there_and_back(length: float, unit: str) -> None:
    """A length survives the round trip."""
    there = to_mm(length, unit)  # type: ignore[arg-type]  # sampled words
    assert from_mm(there, unit) == pytest.approx(length)  # type: ignore[arg-type]  # sampled words


def test_four_inches_are_not_ten_centimetres() -> None:
    """22 per 4 in are 21.654 per 10 cm: 3.5 stitches over a metre (arithmetic on 4 in = 10.16 cm)."""
    inches = Gauge.over_four_inches(stitches=22, rounds=30)
    assert inches.stitches == pytest.approx(21.654, abs=5e-4)
    assert GAUGE.stitches * 1.016 == pytest.approx(22.352)
    assert 1000 / GAUGE.stitch_mm - 1000 / inches.stitch_mm == pytest.approx(3.5, abs=0.05)
    assert inches.width_mm(22) == pytest.approx(101.6)


@pytest.mark.parametrize(
    ("per_inch", "width_in", "stitches"),
    [
        (5.0, 40, 200),  # Zimmermann's key number: 5 per inch, 40 in
        (5.0, 50, 250),  # 5 per inch, 50 in
        (4.6, 40, 184),  # Interweave "Focus on Fit": chest 40 in = 184
        (4.6, 13, 60),  # same, sleeve 13 in = 60
        (5.5, 9, 50),  # knittingunplugged, 23 May 2016: 49.5 -> 50, half up
        (5.5, 13, 72),  # same: 71.5 -> 72
    ],
)
def test_published_stitch_counts(per_inch: float, width_in: float, stitches: int) -> None:
    """Inch patterns' own counts come out."""
    gauge = Gauge.over_four_inches(stitches=4 * per_inch, rounds=28)
    assert half_up(to_mm(width_in, "in") / gauge.stitch_mm) == stitches


def _rounds(length_mm: float, gauge: Gauge) -> int:
    return half_up(length_mm / gauge.round_mm)


def test_rounds_for_a_length_are_nearest_half_up() -> None:
    """3 cm at 32 are 9.6, so 10; 5 mm at 30 are 1.5, so 2; papermoonknits: 84."""
    assert _rounds(30, Gauge(stitches=24, rounds=32)) == 10
    assert _rounds(5, GAUGE) == 2
    assert _rounds(to_mm(14, "in"), Gauge.over_four_inches(stitches=20, rounds=24)) == 84
    assert _rounds(to_mm(19, "in"), Gauge.over_four_inches(stitches=20, rounds=30)) == 143  # 142.5


@pytest.mark.parametrize(("value", "whole"), [(0.5, 1), (1.5, 2), (2.5, 3), (2.4999, 2), (0.0, 0), (7.2, 7)])
def test_a_half_goes_up(value: float, whole: int) -> None:
    """Unlike Python's round, which takes 0.5 and 2.5 down to the even neighbour."""
    assert half_up(value) == whole


def test_binary_fractions_do_not_lose_a_round() -> None:
    """Decimal arithmetic: 4.35 x 100 / 10 - 40 is 3.5, but 3.4999999999999964 in binary fractions."""
    assert 4.35 * 100 / 10 - 40 < 3.5
    assert half_up(4.35 * 100 / 10 - 40) == 4


@given(st.floats(1, 60), st.floats(1, 80), st.integers(1, 2000))
def test_counts_go_to_lengths_and_back(stitches: float, rounds: float, count: int) -> None:
    """The length of a count gives the count."""
    gauge = Gauge(stitches=stitches, rounds=rounds)
    assert gauge.width_mm(count) / gauge.stitch_mm == pytest.approx(count)
    assert _rounds(gauge.height_mm(count), gauge) == count


def test_a_measurement_corrects_the_rounds_left() -> None:
    """60 rounds that measure 21 cm make 28.57 a 10 cm; 32 cm are 91.4 rounds: 31 left (proportion)."""
    knitted = correct_gauge(worked=60, measured_mm=210)
    assert knitted == pytest.approx(28.571, abs=1e-3)
    assert _rounds(320, Gauge(stitches=20, rounds=knitted)) - 60 == 31


@pytest.mark.parametrize("value", [0, -1, float("nan"), float("inf")])
def test_impossible_gauges_are_refused(value: float) -> None:
    """A gauge of nothing would divide by nought."""
    with pytest.raises(ValueError, match="above 0"):
        Gauge(stitches=value, rounds=30)
    with pytest.raises(ValueError, match="above 0"):
        Gauge.over_four_inches(stitches=22, rounds=value)


def test_bad_arguments_are_refused() -> None:
    """Every range in a docstring is kept."""
    with pytest.raises(ValueError, match="mm, cm or in"):
        to_mm(1, "ell")  # type: ignore[arg-type]  # the point of the test
    with pytest.raises(ValueError, match="finite"):
        to_mm(float("nan"), "cm")
    with pytest.raises(ValueError, match="stitches must be 0 or more"):
        GAUGE.width_mm(-1)
    with pytest.raises(ValueError, match="rounds must be 0"):
        GAUGE.height_mm(-1)
    with pytest.raises(ValueError, match="worked"):
        correct_gauge(worked=0, measured_mm=1)
    with pytest.raises(ValueError, match="measured"):
        correct_gauge(worked=1, measured_mm=0)
