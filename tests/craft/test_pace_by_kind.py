"""Pace by kind, against arithmetic and the published working range."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.craft.pace import TimedStretch
from stepper.craft.pace_by_kind import LEANING, USUAL_PER_MINUTE, KnittingKind, measure_pace_by_kind

KINDS = sorted(USUAL_PER_MINUTE)


def _rounds(per_minute: float, count: int = 40, stitches: int = 200) -> list[TimedStretch]:
    return [TimedStretch(stitches=stitches, seconds=stitches * 60 / per_minute)] * count


def test_nothing_measured_is_the_usual_and_says_so() -> None:
    """Common practice: 20 to 45 a minute, about 30 plain; slower for rib and colourwork."""
    paces = measure_pace_by_kind({})
    assert not paces.measured
    assert paces.of("plain").stitches_per_minute == 30
    assert all(20 <= paces.of(kind).stitches_per_minute <= 45 for kind in KINDS)
    pace = {kind: paces.of(kind).stitches_per_minute for kind in KINDS}
    assert pace["plain"] > pace["rib"] > pace["texture"] > pace["colourwork"] >= pace["edge"]
    assert all(paces.of(kind).break_seconds == 0 for kind in KINDS)


def test_one_kind_measured_is_measured_and_a_kind_without_a_stretch_is_not() -> None:
    """The finish is told as a guess only as long as nothing is known of her."""
    assert measure_pace_by_kind({"rib": _rounds(25)}).measured
    assert not measure_pace_by_kind({"rib": []}).measured


def test_an_hour_of_plain_knitting_weighs_six_times_the_usual_pace() -> None:
    """1,800 stitches at the usual 30 a minute, against the 300 that the usual pace stands for (this project's choice)."""
    assert 60 * USUAL_PER_MINUTE["plain"] / LEANING == 6


def test_a_kind_well_measured_has_its_own_pace() -> None:
    """8000 stitches at 24 a minute outweigh the usual 20 (arithmetic)."""
    paces = measure_pace_by_kind({"colourwork": _rounds(24), "plain": _rounds(36)})
    assert paces.of("colourwork").stitches_per_minute == pytest.approx(24, rel=0.02)
    assert paces.of("plain").stitches_per_minute == pytest.approx(36, rel=0.02)


def test_a_kind_never_knitted_follows_her_tempo() -> None:
    """Who knits plain rounds at 45 instead of 30 is taken to rib half as fast again too (arithmetic)."""
    paces = measure_pace_by_kind({"plain": _rounds(45)})
    assert paces.tempo == pytest.approx(1.5, rel=0.02)
    assert paces.of("rib").stitches_per_minute == pytest.approx(37.5, rel=0.02)
    assert not paces.of("rib").measured
    assert paces.of("plain").measured


def test_a_break_in_one_kind_slows_no_other() -> None:
    """A film watched over the colourwork is no slower rib."""
    slow = TimedStretch(stitches=200, seconds=4000)
    paces = measure_pace_by_kind({"colourwork": [*_rounds(20), slow], "rib": _rounds(25)})
    assert paces.of("rib").stitches_per_minute == pytest.approx(25, rel=0.01)
    assert paces.of("colourwork").stitches_per_minute == pytest.approx(20, rel=0.01)
    assert paces.of("colourwork").break_seconds == pytest.approx(3400)


@given(st.sampled_from(KINDS), st.floats(8, 110), st.integers(1, 60))
def test_the_pace_lies_between_measured_and_usual(kind: str, per_minute: float, count: int) -> None:
    """However little or much is measured; twelve thousand stitches leave hardly anything of the usual."""
    paces = measure_pace_by_kind({kind: _rounds(per_minute, count)})
    low, high = sorted((per_minute, USUAL_PER_MINUTE[kind]))
    assert low - 1e-9 <= paces.of(kind).stitches_per_minute <= high + 1e-9
    if count == 60:
        assert paces.of(kind).stitches_per_minute == pytest.approx(per_minute, rel=0.1)


def test_a_break_lasts_as_long_as_was_more_than_her_own_pace() -> None:
    """By hand: 600 stitches of rib at 2 s each outweigh the usual 300, so 2 s are hers; 30 stitches that took 600 s are 20 s
    each, more than three times that, and 600 - 30 x 2 = 540 s of them were a break. Of shorter steps it is the same."""
    for stitches in (30, 6):
        steady = [TimedStretch(stitches=stitches, seconds=2.0 * stitches)] * (600 // stitches)
        paces = measure_pace_by_kind({KnittingKind.RIB: [*steady, TimedStretch(stitches=30, seconds=600)]})
        assert paces.of(KnittingKind.RIB).break_seconds == pytest.approx(540)


def test_what_was_a_little_faster_or_slower_is_no_break() -> None:
    """By hand, as above: 60 stitches at a second and a half were quick, not 30 s less of a break."""
    steady = [TimedStretch(stitches=60, seconds=120)] * 10
    quick, rung = TimedStretch(stitches=60, seconds=90), TimedStretch(stitches=30, seconds=600)
    paces = measure_pace_by_kind({KnittingKind.RIB: [*steady, quick, rung]})
    assert paces.of(KnittingKind.RIB).break_seconds == pytest.approx(540)


def test_the_tempo_weighs_the_usual_pace_as_so_many_stitches() -> None:
    """By hand: 300 stitches at 4 s and the usual 300 at 2 s are 1,800 s where 1,200 are usual."""
    paces = measure_pace_by_kind(
        {KnittingKind.PLAIN: [TimedStretch(stitches=LEANING, seconds=4.0 * LEANING)]}
    )
    assert paces.tempo == pytest.approx(1200 / 1800)


def test_a_doorbell_in_the_first_step_does_not_move_a_garment() -> None:
    """Three stitches in 75 s are a break, not a pace: by hand, 25 s a stitch against 2 s, more than three times as
    slow. Nothing is known of her yet."""
    paces = measure_pace_by_kind({"plain": [TimedStretch(stitches=3, seconds=75)]})
    assert paces.of("plain").stitches_per_minute == 30
    assert paces.tempo == 1


@given(st.integers(1, 40), st.integers(1, 300), st.floats(60, 7200))
def test_one_interrupted_step_hardly_changes_the_time_left(steps: int, stitches: int, seconds: float) -> None:
    """Whatever it is and whenever it comes: it either counts for what its stitches weigh or is left out."""
    before = measure_pace_by_kind({"plain": _rounds(30, steps, 100)})
    after = measure_pace_by_kind(
        {"plain": [*_rounds(30, steps, 100), TimedStretch(stitches=stitches, seconds=seconds)]}
    )
    # At most three times as slow as usual, over its share of the stitches and of those the usual stands for.
    most = 1 + 2 * stitches / (LEANING + 100 * steps + stitches)
    assert after.seconds_for({"plain": 1}) <= most**2 * before.seconds_for({"plain": 1}) * (1 + 1e-9)


def test_a_slow_hand_is_believed_once_she_has_knitted_some_rounds() -> None:
    """Eight stitches a minute is slow, not a break, when a thousand stitches were knitted so."""
    paces = measure_pace_by_kind({"texture": _rounds(5, 10)})
    assert paces.of("texture").stitches_per_minute == pytest.approx(5, rel=0.35)


def test_little_measured_leans_on_the_usual() -> None:
    """As many stitches as the usual weighs: half of the time from each (arithmetic)."""
    paces = measure_pace_by_kind(
        {"plain": _rounds(30, 300), "rib": [TimedStretch(stitches=LEANING, seconds=1200)]}
    )
    usual = 25 * paces.tempo
    assert paces.of("rib").stitches_per_minute == pytest.approx(2 * LEANING / (20 + LEANING / usual))


def test_times_of_kinds_add_up() -> None:
    """300 plain and 200 in two colours at the usual pace are ten minutes each (arithmetic)."""
    paces = measure_pace_by_kind({})
    assert paces.seconds_for({"plain": 300, "colourwork": 200}) == pytest.approx(1200)
    assert paces.seconds_for({"unheard of": 30}) == pytest.approx(60)
    with pytest.raises(ValueError, match="stitches"):
        paces.seconds_for({"plain": -1})


def test_a_few_stitches_that_took_for_ever_say_nothing_of_the_other_kinds() -> None:
    """Four single stitches, each with the doorbell in it, weigh four stitches, and her usual tempo stands."""
    usual = measure_pace_by_kind({}).of(KnittingKind.RIB).stitches_per_minute
    rung = measure_pace_by_kind({KnittingKind.PLAIN: [TimedStretch(stitches=1, seconds=60.0)] * 4})
    assert rung.of(KnittingKind.RIB).stitches_per_minute == pytest.approx(usual, rel=0.02)
    assert rung.of(KnittingKind.PLAIN).stitches_per_minute == pytest.approx(
        measure_pace_by_kind({}).of(KnittingKind.PLAIN).stitches_per_minute, rel=0.05
    )
