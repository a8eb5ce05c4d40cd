"""The length of a loop against Munden's published constants, a handbook and a rule of thumb."""

from __future__ import annotations

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.craft.gauge import Gauge
from stepper.craft.loop_length import (
    DRY,
    WET,
    Relaxation,
    loop_by_rule_mm,
    loop_by_state,
    loop_estimate,
    loop_mm,
)

# GATE Textile Engineering 2015, question 54. The package works with the dry and the wet state; the third shows that its
# relation is the published one.
FULL = Relaxation(name="tumbled", rounds=5.5, stitches=4.2)

GAUGE = Gauge(stitches=22, rounds=30)


@pytest.mark.parametrize(
    ("state", "printed_area", "printed_ratio"), [(DRY, 19.0, 1.3), (WET, 21.6, 1.3), (FULL, 23.1, 1.3)]
)
def test_constants_agree_with_print(state: Relaxation, printed_area: float, printed_ratio: float) -> None:
    """Munden (1959): Ks to 1 % (wet is printed 21.6, the product is 21.73), Kc/Kw to 2 %."""
    assert state.area == pytest.approx(printed_area, rel=0.01)
    assert state.rounds / state.stitches == pytest.approx(printed_ratio, rel=0.02)


def _relaxed(loop_mm_: float, state: Relaxation) -> Gauge:
    """Return the gauge a loop settles to: rounds per cm = Kc / l, stitches per cm = Kw / l (Munden 1959)."""
    return Gauge(stitches=100 * state.stitches / loop_mm_, rounds=100 * state.rounds / loop_mm_)


def test_examination_question() -> None:
    """GATE Textile Engineering 2015, Q54: Kw 4.2, Kc 5.5, loop 0.5 cm give 92 stitches a cm2, and 92 give the loop."""
    gauge = _relaxed(5, FULL)
    assert round(gauge.stitches * gauge.rounds / 100) == 92
    side = 10 * math.sqrt(92)
    assert loop_mm(Gauge(stitches=side, rounds=side), FULL) == pytest.approx(5, rel=0.005)


@given(st.floats(0.5, 100), st.sampled_from([DRY, WET, FULL]))
def test_a_loop_goes_to_its_gauge_and_back(loop: float, state: Relaxation) -> None:
    """Munden (1959) read forwards and backwards; else a swatch would give another loop than the garment has."""
    assert loop_mm(_relaxed(loop, state), state) == pytest.approx(loop)


def test_handbook_weight_formula() -> None:
    """Texcoms Textile Technical Handbook (2023) p. 147: CPI x WPI x l x 39.37^2 x tex / 10^6, 217.0 g/m2."""
    courses, wales, loop, tex = 20, 28, 5, 50
    by_handbook = courses * wales * loop * 39.37**2 * tex / 1e6
    assert by_handbook == pytest.approx(217.0, abs=0.05)
    gauge = Gauge(stitches=wales / 0.254, rounds=courses / 0.254)
    area = (courses / 2.54) * (wales / 2.54) * (loop / 10) ** 2
    state = Relaxation(name="as measured", rounds=math.sqrt(area), stitches=math.sqrt(area))
    metres_a_square_metre = gauge.stitches * gauge.rounds / 10 * loop_mm(gauge, state)
    assert metres_a_square_metre * tex / 1000 == pytest.approx(by_handbook, rel=1e-3)


@pytest.mark.parametrize(
    ("state", "courses", "wales", "metres"),
    [(DRY, 10.0, 7.6, 3800), (WET, 10.6, 8.2, 4346), (FULL, 11.0, 8.4, 4620)],
)
def test_chain_of_three_states(state: Relaxation, courses: float, wales: float, metres: float) -> None:
    """Loop 5 mm: courses, wales and metres a square metre by the published constants (arithmetic)."""
    gauge = Gauge(stitches=10 * wales, rounds=10 * courses)
    assert loop_mm(gauge, state) == pytest.approx(5)
    assert gauge.stitches * gauge.rounds * 100 * loop_mm(gauge, state) / 1000 == pytest.approx(
        metres, rel=1e-4
    )


@pytest.mark.parametrize(
    ("stitches", "rounds", "state", "loop", "ratio", "metres"),
    [
        (22, 30, DRY, 16.97, 3.73, 1119.8),
        (22, 30, WET, 18.09, 3.98, 1194.0),
        (18, 24, DRY, 20.97, 3.78, 906.0),
        (28, 36, DRY, 13.73, 3.84, 1383.9),
        (20, 28, DRY, 18.42, 3.68, 1031.5),
    ],
)
def test_chain_for_hand_gauges(
    stitches: float, rounds: float, state: Relaxation, loop: float, ratio: float, metres: float
) -> None:
    """Loop, loop to width and metres a square metre (arithmetic on the published constants)."""
    # The printed chain used Ks 21.6 for wet and rounds stages, so 0.5 % is the tolerance.
    gauge = Gauge(stitches=stitches, rounds=rounds)
    assert loop_mm(gauge, state) == pytest.approx(loop, rel=0.005)
    assert loop_mm(gauge, state) / gauge.stitch_mm == pytest.approx(ratio, rel=0.005)
    assert loop_mm(gauge, state) * stitches * rounds / 10 == pytest.approx(metres, rel=0.005)


def test_each_state_is_read_with_its_own_constants() -> None:
    """22 x 30 as knitted, 21.5 x 29 blocked: 16.97 mm by the dry relation, 18.67 by the wet one, of one yarn (Munden)."""
    blocked = Gauge(stitches=21.5, rounds=29)
    as_knitted, washed = loop_by_state(GAUGE, blocked)
    assert as_knitted == pytest.approx(16.97, abs=0.01)
    assert washed == pytest.approx(18.67, abs=0.01)
    estimate = loop_estimate(GAUGE, blocked)
    assert estimate.likely_mm == pytest.approx(math.sqrt(16.97 * 18.67), abs=0.01)
    assert estimate.low_mm < as_knitted < estimate.likely_mm < washed < estimate.high_mm


def test_a_gauge_of_an_untold_state_is_taken_between_both() -> None:
    """The mill rule for plain fabric, GSM = 12068.59 / (Ne x SL), has a Ks of 12068.59 / 590.54 between dry and wet."""
    mill = math.sqrt(12068.59 / 590.54 * GAUGE.stitch_mm * GAUGE.round_mm)
    assert loop_estimate(GAUGE).likely_mm == pytest.approx(mill, rel=0.01)


def test_width_and_height_disagree_so_a_range_is_given() -> None:
    """At 22 x 30: 16.67 mm from the height, dry; 18.64 from the width, wet; a tenth beyond on each side."""
    estimate = loop_estimate(GAUGE)
    assert estimate.low_mm == pytest.approx(16.67 * 0.9, abs=0.01)
    assert estimate.high_mm == pytest.approx(18.64 * 1.1, abs=0.01)


gauges = st.builds(Gauge, stitches=st.floats(4, 60), rounds=st.floats(4, 80))


@given(gauges, st.one_of(st.none(), gauges))
def test_likely_lies_inside_the_range_and_so_does_the_rule_of_area(gauge: Gauge, blocked: Gauge | None) -> None:
    """Who buys by the handbook's rule is never told that it cannot come to that."""
    estimate = loop_estimate(gauge, blocked)
    assert estimate.low_mm < estimate.likely_mm < estimate.high_mm
    assert loop_by_rule_mm(gauge, blocked) <= estimate.high_mm


def test_the_rule_of_area_gives_a_stitch_six_heights() -> None:
    """48 x 8 in at 5 stitches to the inch are 320 yd (rule of thumb in print), whatever the rounds to the inch."""
    for rounds in (6, 7):
        gauge = Gauge(stitches=5 / 0.254, rounds=rounds / 0.254)
        yards = 48 * rounds * 8 * 5 * loop_by_rule_mm(gauge) / 914.4
        assert yards == pytest.approx(320)


def test_rule_of_thumb_for_plain_knitting_has_its_margin() -> None:
    """Yards = length x width x sts per in / 6 (48 x 8 x 5 / 6 = 320 yd) lies 5 to 15 % above Munden."""
    yards = 48 * 8 * 5 / 6
    assert yards == 320
    gauge = Gauge(stitches=5 / 0.254, rounds=5 * 1.35 / 0.254)
    stitches = 8 * 5 * 48 * 5 * 1.35
    by_rule_mm = yards * 914.4 / stitches
    assert 1.0 < by_rule_mm / loop_mm(gauge, WET) < 1.2


def test_a_stitch_is_given_the_taller_round_of_both_states() -> None:
    """Wool that blocks taller needs more yarn than the swatch on the needle shows, and never less than that."""
    tall, short = Gauge(stitches=20, rounds=25), Gauge(stitches=20, rounds=32)
    heights = loop_by_rule_mm(tall) / tall.round_mm
    assert loop_by_rule_mm(short, tall) == loop_by_rule_mm(tall, short) == pytest.approx(heights * 4.0)
    assert loop_by_rule_mm(short) == pytest.approx(heights * 100 / 32)
