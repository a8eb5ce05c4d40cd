"""Yokes and raglans against the published percentage system and its known contradictions."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.craft.spacing import decrease_positions
from stepper.craft.yoke import (
    RISING,
    THIRDS,
    Rhythm,
    raglan,
    sleeve_decreases,
    yoke_counts,
    yoke_decrease_rounds,
    yoke_steps,
)


def test_key_number_of_200() -> None:
    """Yoke cheat sheet: sleeve 66, wrist 40, neck 80, underarm 16, joined 268."""
    counts = yoke_counts(200)
    assert (counts.sleeve, counts.wrist, counts.neck, counts.underarm) == (66, 40, 80, 16)
    assert counts.joined == 200 + 132 - 64 == 268
    assert yoke_counts(200, sleeve_share=0.35).sleeve == 70


def test_key_number_of_250() -> None:
    """Neck 100, wrist 50, underarm 20; the sleeve of 82.5 goes to the even 82; 335 is met to the stitch."""
    counts = yoke_counts(250)
    assert (counts.neck, counts.wrist, counts.underarm, counts.sleeve) == (100, 50, 20, 82)
    assert abs(counts.joined - 335) <= 1


@given(st.integers(60, 600))
def test_a_joined_yoke_is_134_percent(body: int) -> None:
    """1 + 2 x 33 % - 4 x 8 % = 134 %, to rounding."""
    assert abs(yoke_counts(body).joined - 1.34 * body) <= 2 * 1 + 4 * 0.5


def test_thirds_go_268_179_120_80() -> None:
    """Knitting Without Tears: 89, 59 and 40 decreases with leftovers knit plain, exactly."""
    steps = yoke_steps(268, 80, THIRDS)
    assert [(s.before, s.decreases, s.after) for s in steps] == [
        (268, 89, 179),
        (179, 59, 120),
        (120, 40, 80),
    ]
    assert all(s.decreases == s.by_rhythm for s in steps)


def test_rising_rhythm_misses_its_own_neck_so_the_target_leads() -> None:
    """Knitting Around: 268, 201, 134, then 52 decreases in whole groups give 82; the printed 80 needs 54."""
    steps = yoke_steps(268, 80, RISING)
    assert [s.after for s in steps] == [201, 134, 80]
    last = steps[-1]
    assert (last.by_rhythm, last.before - last.by_rhythm) == (52, 82)
    assert last.decreases == 54


def test_rhythms_agree_in_all() -> None:
    """8/27 and 3/10 each lie within 0.8 % of 40/134 (arithmetic on the printed fractions)."""

    def kept(rhythm: Rhythm) -> Fraction:
        share = Fraction(1)
        for group, decreases in rhythm.groups:
            share *= Fraction(group - decreases, group)
        return share

    assert kept(THIRDS) == Fraction(8, 27)
    assert kept(RISING) == Fraction(3, 10)
    target = Fraction(40, 134)
    assert abs(float(kept(THIRDS) / target) - 1) < 0.008
    assert abs(float(kept(RISING) / target) - 1) < 0.008


@given(st.integers(60, 600), st.sampled_from([THIRDS, RISING]))
def test_every_body_reaches_its_neck_with_rounds_that_can_be_knit(body: int, rhythm: Rhythm) -> None:
    """The steps join up, end at the neck, and each can be spaced with k2tog."""
    counts = yoke_counts(body)
    steps = yoke_steps(counts.joined, counts.neck, rhythm)
    assert steps[0].before == counts.joined
    assert steps[-1].after == counts.neck
    assert all(a.after == b.before for a, b in pairwise(steps))
    for step in steps:
        assert len(decrease_positions(step.before, step.decreases, flat=False)) == step.decreases


@pytest.mark.parametrize(("depth", "half", "three_quarters"), [(66, 33, 50), (75, 38, 56)])
def test_decrease_rounds_at_half_three_quarters_and_top(depth: int, half: int, three_quarters: int) -> None:
    """10 in at 6.6 to 7.5 a in: about rounds 33-38, 50-56 and the last (cheat sheet)."""
    assert yoke_decrease_rounds(depth) == (half, three_quarters, depth)


def test_raglan_sums() -> None:
    """K = 200: two sleeves of 50 and front and back of 84 make 268; 188 to go are 23 rounds of 8 and 4."""
    division = raglan(yoke_counts(200))
    assert (division.sleeve, division.front, division.back) == (50, 84, 84)
    assert 2 * division.sleeve + division.front + division.back == 268
    assert (division.shaping_rounds, division.left_over, division.rounds) == (23, 4, 46)


@given(st.integers(60, 600), st.integers(1, 12), st.integers(1, 4))
def test_raglan_loses_no_stitch(body: int, per_round: int, every: int) -> None:
    """The pieces sum to the join and the shaping to the way down to the neck."""
    counts = yoke_counts(body)
    division = raglan(counts, per_round=per_round, every=every)
    assert division.front + division.back + 2 * division.sleeve == counts.joined
    assert 0 <= division.back - division.front <= 1
    assert counts.joined - division.shaping_rounds * per_round - division.left_over == counts.neck
    assert 0 <= division.left_over < per_round
    assert division.rounds == division.shaping_rounds * every


def test_sleeve_pairs() -> None:
    """veronikavery 60 to 88: 14; kristentendyke 38 to 60: 11; knittingunplugged 50 to 72: 11."""
    assert sleeve_decreases(88, 60) == 14
    assert sleeve_decreases(60, 38) == 11
    assert sleeve_decreases(72, 50) == 11


def test_bad_arguments_are_refused() -> None:
    """Every range in a docstring is kept."""
    with pytest.raises(ValueError, match="20 stitches"):
        yoke_counts(19)
    with pytest.raises(ValueError, match="20 stitches"):
        yoke_counts(200, sleeve_share=1.5)
    with pytest.raises(ValueError, match="more stitches to fewer"):
        yoke_steps(80, 80)
    with pytest.raises(ValueError, match="from which 20 cannot be reached"):
        yoke_steps(268, 20)
    with pytest.raises(ValueError, match="from which 200 cannot be reached"):
        yoke_steps(268, 200)
    with pytest.raises(ValueError, match="need 6 rounds"):
        yoke_decrease_rounds(5)
    with pytest.raises(ValueError, match="1 or more"):
        raglan(yoke_counts(200), per_round=0)
    with pytest.raises(ValueError, match="underarms"):
        raglan(yoke_counts(20, sleeve_share=0.1))
    with pytest.raises(ValueError, match="parity"):
        sleeve_decreases(61, 38)
    with pytest.raises(ValueError, match="parity"):
        sleeve_decreases(38, 60)
