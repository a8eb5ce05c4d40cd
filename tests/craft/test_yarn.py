"""Yarn lengths against Munden's published constants and published rules of thumb."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.craft.gauge import Gauge, to_mm
from stepper.craft.skeins import Skein
from stepper.craft.yarn import (
    DRY,
    FULL,
    WET,
    Estimate,
    Relaxation,
    cast_on_tail_mm,
    fabric_mm,
    grams_per_square_metre,
    longest_free_float,
    loop_estimate,
    loop_mm,
    relaxed_gauge,
    sewn_bind_off_tail_mm,
    stranding_share,
    wrapped_tail_mm,
)

GAUGE = Gauge(stitches=22, rounds=30)


@pytest.mark.parametrize(
    ("state", "printed_area", "printed_ratio"), [(DRY, 19.0, 1.3), (WET, 21.6, 1.3), (FULL, 23.1, 1.3)]
)
def test_constants_agree_with_print(state: Relaxation, printed_area: float, printed_ratio: float) -> None:
    """Munden (1959): Ks to 1 % (wet is printed 21.6, the product is 21.73), Kc/Kw to 2 %."""
    assert state.area == pytest.approx(printed_area, rel=0.01)
    assert state.rounds / state.stitches == pytest.approx(printed_ratio, rel=0.02)


def test_examination_question() -> None:
    """GATE Textile Engineering 2015, Q54: Kw 4.2, Kc 5.5, loop 0.5 cm give 92 stitches a cm2."""
    gauge = relaxed_gauge(5, FULL)
    assert round(gauge.stitches * gauge.rounds / 100) == 92


@pytest.mark.parametrize(
    ("state", "courses", "wales", "metres", "grams"),
    [(DRY, 10.0, 7.6, 3800, 190.0), (WET, 10.6, 8.2, 4346, 217.3), (FULL, 11.0, 8.4, 4620, 231.0)],
)
def test_chain_of_three_states(
    state: Relaxation, courses: float, wales: float, metres: float, grams: float
) -> None:
    """Loop 5 mm, 50 tex: courses, wales, metres and grams by the published constants (arithmetic)."""
    gauge = relaxed_gauge(5, state)
    assert (gauge.rounds / 10, gauge.stitches / 10) == pytest.approx((courses, wales))
    assert loop_mm(gauge, state) == pytest.approx(5)
    per_m2 = gauge.stitches * gauge.rounds * 100 * loop_mm(gauge, state) / 1000
    assert per_m2 == pytest.approx(metres, rel=1e-4)
    assert grams_per_square_metre(gauge, 50, state) == pytest.approx(grams, rel=1e-3)


def test_handbook_weight_formula() -> None:
    """Texcoms Textile Technical Handbook (2023) p. 147: CPI x WPI x l x 39.37^2 x tex / 10^6, 217.0 g/m2."""
    courses, wales, loop, tex = 20, 28, 5, 50
    by_handbook = courses * wales * loop * 39.37**2 * tex / 1e6
    assert by_handbook == pytest.approx(217.0, abs=0.05)
    gauge = Gauge(stitches=wales / 0.254, rounds=courses / 0.254)
    area = (courses / 2.54) * (wales / 2.54) * (loop / 10) ** 2
    state = Relaxation(name="as measured", rounds=math.sqrt(area), stitches=math.sqrt(area))
    assert grams_per_square_metre(gauge, tex, state) == pytest.approx(by_handbook, rel=1e-3)


@pytest.mark.parametrize(
    ("stitches", "rounds", "run", "state", "loop", "ratio", "metres", "grams"),
    [
        (22, 30, 240, DRY, 16.97, 3.73, 1119.8, 466.6),
        (22, 30, 240, WET, 18.09, 3.98, 1194.0, 497.5),
        (18, 24, 200, DRY, 20.97, 3.78, 906.0, 453.0),
        (28, 36, 400, DRY, 13.73, 3.84, 1383.9, 346.0),
        (20, 28, 220, DRY, 18.42, 3.68, 1031.5, 468.9),
    ],
)
def test_chain_for_hand_gauges(
    stitches: float, rounds: float, run: float, state: Relaxation, loop: float, ratio: float, metres: float,
    grams: float,
) -> None:  # fmt: skip
    """Loop, loop to width, metres and grams a square metre (arithmetic on the published constants)."""
    # The printed chain used Ks 21.6 for wet and rounds stages, so 0.5 % is the tolerance.
    gauge = Gauge(stitches=stitches, rounds=rounds)
    assert loop_mm(gauge, state) == pytest.approx(loop, rel=0.005)
    assert loop_mm(gauge, state) / gauge.stitch_mm == pytest.approx(ratio, rel=0.005)
    assert loop_mm(gauge, state) * stitches * rounds / 10 == pytest.approx(metres, rel=0.005)
    tex = Skein(grams=100, metres=run).tex
    assert grams_per_square_metre(gauge, tex, state) == pytest.approx(grams, rel=0.005)


def test_width_and_height_disagree_so_a_range_is_given() -> None:
    """At 22 x 30 dry: 17.27 mm from the width, 16.67 mm from the height; a tenth beyond on each side."""
    estimate = loop_estimate(GAUGE)
    assert estimate.low_mm == pytest.approx(16.67 * 0.9, abs=0.01)
    assert estimate.high_mm == pytest.approx(17.27 * 1.1, abs=0.01)
    assert estimate.likely_mm == pytest.approx(16.97, abs=0.01)


@given(st.floats(4, 60), st.floats(4, 80), st.sampled_from([DRY, WET, FULL]))
def test_likely_lies_inside_the_range(stitches: float, rounds: float, state: Relaxation) -> None:
    """The geometric mean of two figures lies between them."""
    estimate = loop_estimate(Gauge(stitches=stitches, rounds=rounds), state)
    assert estimate.low_mm < estimate.likely_mm < estimate.high_mm


@given(st.floats(0.5, 100), st.sampled_from([DRY, WET, FULL]))
def test_loop_goes_to_gauge_and_back(loop: float, state: Relaxation) -> None:
    """`loop_mm` undoes `relaxed_gauge`."""
    assert loop_mm(relaxed_gauge(loop, state), state) == pytest.approx(loop)


def test_rule_of_thumb_for_plain_knitting_has_its_margin() -> None:
    """Yards = length x width x sts per in / 6 (48 x 8 x 5 / 6 = 320 yd) lies 5 to 15 % above Munden."""
    yards = 48 * 8 * 5 / 6
    assert yards == 320
    gauge = Gauge(stitches=5 / 0.254, rounds=5 * 1.35 / 0.254)
    stitches = 8 * 5 * 48 * 5 * 1.35
    by_rule_mm = yards * 914.4 / stitches
    assert 1.0 < by_rule_mm / loop_mm(gauge, WET) < 1.2


@pytest.mark.parametrize(("state", "percent"), [(DRY, 26.3), (WET, 24.4), (FULL, 23.8)])
def test_stranding_adds_a_quarter(state: Relaxation, percent: float) -> None:
    """Every stitch knit in one colour and floated in the other: 1 / Kw more (arithmetic on constants)."""
    assert stranding_share(state) * 100 == pytest.approx(percent, abs=0.05)


def test_a_rare_colour_is_mostly_float() -> None:
    """One stitch in eight at a loop of four widths: 4 knit, 7 carried, 64 % float (arithmetic)."""
    width = GAUGE.stitch_mm
    loop = Estimate(low_mm=4 * width, likely_mm=4 * width, high_mm=4 * width)
    length = fabric_mm(GAUGE, loops=1, carried=7, loop=loop)
    assert 7 * width / length.likely_mm == pytest.approx(0.64, abs=0.005)
    assert fabric_mm(GAUGE, loops=0, carried=7, slack=0.1).likely_mm == pytest.approx(7.7 * width)


@pytest.mark.parametrize(("per_10cm", "stitches"), [(22, 5), (28, 7), (16, 4)])
def test_an_inch_of_float_in_stitches(per_10cm: float, stitches: int) -> None:
    """1 in is 5.6 stitches at 22, 7.1 at 28, 4.1 at 16 (J. Richards's inch, arithmetic)."""
    assert longest_free_float(Gauge(stitches=per_10cm, rounds=30)) == stitches


def test_a_whole_number_of_stitches_to_the_inch_is_not_lost() -> None:
    """Ten stitches of a tenth of an inch are exactly an inch."""
    assert longest_free_float(Gauge.over_four_inches(stitches=40, rounds=50)) == 10
    assert longest_free_float(Gauge.over_four_inches(stitches=28, rounds=50)) == 7


def test_long_tail_cast_on() -> None:
    """Righetti as cited at ehow 7701638: 8 in wide takes 24 + 10 = 34 in; 100 at 4 per in are 25 in wide."""
    gauge = Gauge.over_four_inches(stitches=16, rounds=20)
    assert gauge.width_mm(100) == pytest.approx(to_mm(25, "in"))
    assert cast_on_tail_mm(32, gauge) == pytest.approx(to_mm(34, "in"))


def test_wrap_rule() -> None:
    """20 wraps of a 4 mm needle are 25.1 cm or 9.9 in (pi x 4 mm)."""
    assert wrapped_tail_mm(20, 4) == pytest.approx(251, abs=0.5)
    assert wrapped_tail_mm(20, 4) / 25.4 == pytest.approx(9.9, abs=0.05)


def test_sewn_bind_off_is_three_to_five_times_the_edge() -> None:
    """Zimmermann's takes 3 times the edge (A. Rangel's tutorial), the stretchy sewn kind up to 5 (Bestor)."""
    assert sewn_bind_off_tail_mm(400) == (1200, 2000)


def test_bad_arguments_are_refused() -> None:
    """Every range in a docstring is kept."""
    with pytest.raises(ValueError, match="loop length"):
        relaxed_gauge(0, DRY)
    with pytest.raises(ValueError, match="loops"):
        fabric_mm(GAUGE, loops=-1)
    with pytest.raises(ValueError, match="limit"):
        longest_free_float(GAUGE, limit_mm=0)
    with pytest.raises(ValueError, match="stitches"):
        wrapped_tail_mm(-1, 4)
    with pytest.raises(ValueError, match="needle"):
        wrapped_tail_mm(1, 0)
    with pytest.raises(ValueError, match="edge"):
        sewn_bind_off_tail_mm(-1)
    with pytest.raises(ValueError, match="tex"):
        grams_per_square_metre(GAUGE, 0)
    with pytest.raises(ValueError, match="stitches"):
        cast_on_tail_mm(-1, GAUGE)
