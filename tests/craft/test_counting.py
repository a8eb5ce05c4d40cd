"""When to count, against numeric optima of scipy and a simulated knitter."""

from __future__ import annotations

import numpy as np
import pytest
import scipy
from hypothesis import given
from hypothesis import strategies as st

from stepper.craft.counting import (
    BackTo,
    CountCosts,
    count_interval,
    learned_fault_rate,
    young_interval,
)
from tests.overhead import overhead

RATIOS = [1e-6, 1e-4, 1e-3, 0.01]


def _exact(cost: float, mean: float) -> float:
    """Minimise the expected running time (e^((t+C)/M) - 1) / t with scipy (J. T. Daly, FGCS 22(3), 2006)."""
    found = scipy.optimize.minimize_scalar(
        lambda t: np.expm1((t + cost) / mean) / t, bounds=(1e-9 * mean, 3 * mean), method="bounded",
        options={"xatol": 1e-10 * mean},
    )  # fmt: skip
    return float(found.x)


@pytest.mark.parametrize("ratio", RATIOS)
def test_young_is_the_optimum_to_first_order(ratio: float) -> None:
    """Young (1974) agrees where a check costs little against the work between faults; it is sqrt(2 C M). The optimum is
    scipy's, and Lambert's W has it in closed form."""
    mean = 500.0
    by_lambert = mean * (1 + float(scipy.special.lambertw(-np.exp(-ratio - 1)).real))
    assert _exact(ratio * mean, mean) == pytest.approx(by_lambert, rel=1e-3)
    assert young_interval(ratio * mean, mean) == pytest.approx(mean * np.sqrt(2 * ratio))
    assert young_interval(ratio * mean, mean) == pytest.approx(_exact(ratio * mean, mean), rel=0.06)


costs_strategy = st.builds(
    CountCosts,
    faults_per_stitch=st.floats(1e-6, 2e-4),
    knit_s=st.floats(1, 4),
    count_s=st.floats(0.1, 1),
    back_to=st.sampled_from(["fault", "count"]),
)


@given(st.integers(40, 400), costs_strategy)
def test_interval_is_the_numeric_optimum_of_the_overhead(stitches: int, costs: CountCosts) -> None:
    """Counting at the interval given costs hardly more than at scipy's best one."""
    ours = count_interval(stitches, costs)
    best = scipy.optimize.minimize_scalar(
        lambda log_w: overhead(float(np.exp(log_w)), stitches, costs),
        bounds=(np.log(ours / 20), np.log(ours * 20)),
        method="bounded",
    )
    assert overhead(ours, stitches, costs) <= best.fun * 1.02
    assert ours == pytest.approx(float(np.exp(best.x)), rel=0.2)


@pytest.mark.parametrize("back_to", ["fault", "count"])
def test_overhead_is_what_a_simulated_knitter_loses(back_to: BackTo) -> None:
    """A quarter of a million stretches with faults drawn stitch by stitch cost what the formula says."""
    costs = CountCosts(faults_per_stitch=1 / 2000, knit_s=2, count_s=0.5, rip_s=0.5, back_to=back_to)
    work, stitches = 1200, 208
    # The first of independent faults comes after a geometric number of stitches.
    first = np.random.default_rng(2006).geometric(costs.faults_per_stitch, 250_000)
    faulty = first <= work
    redone = np.where(faulty, work - first + 0.5 if back_to == "fault" else work, 0)
    lost = (stitches * costs.count_s + redone.mean() * costs.redo_s) / work
    assert overhead(work, stitches, costs) == pytest.approx(lost, rel=0.005)


def test_overhead_joins_where_the_series_takes_over() -> None:
    """No step between the series for rare faults and the exact form."""
    costs = CountCosts(faults_per_stitch=1e-7, knit_s=2)
    assert overhead(999.9, 200, costs) == pytest.approx(overhead(1000.1, 200, costs), rel=1e-3)


def test_stitches_to_count_after() -> None:
    """208 stitches, a fault in 3000, 2 s a stitch, half a second to count: every 499 stitches."""
    costs = CountCosts(faults_per_stitch=1 / 3000, knit_s=2)
    # sqrt(2 * 208 * 0.5 * 3000 / 2.5)
    assert count_interval(208, costs) == pytest.approx(499.6, abs=0.1)


def test_ripping_to_the_last_count_asks_for_more_counts() -> None:
    """A fault that cannot be seen costs twice as much, so the interval shrinks by the root of two."""
    seen = CountCosts(faults_per_stitch=1e-4, knit_s=2, back_to="fault")
    unseen = CountCosts(faults_per_stitch=1e-4, knit_s=2, back_to="count")
    assert count_interval(200, seen) / count_interval(200, unseen) == pytest.approx(2**0.5)


def test_her_own_counts_outweigh_the_assumption() -> None:
    """The rate starts at one in 3000 and goes to her own (gamma and Poisson, arithmetic)."""
    assert learned_fault_rate(0, 0) == pytest.approx(1 / 3000)
    assert learned_fault_rate(0, 27_000) == pytest.approx(1 / 30_000)
    assert learned_fault_rate(1000, 1_000_000) == pytest.approx(1e-3, rel=0.01)


def test_bad_arguments_are_refused() -> None:
    """Every range in a docstring is kept."""
    with pytest.raises(ValueError, match="cost"):
        young_interval(0, 1)
    with pytest.raises(ValueError, match="faults"):
        young_interval(1, 0)
    with pytest.raises(ValueError, match="faults per stitch"):
        CountCosts(faults_per_stitch=0, knit_s=2)
    with pytest.raises(ValueError, match="faults per stitch"):
        CountCosts(faults_per_stitch=1, knit_s=2)
    with pytest.raises(ValueError, match="knit"):
        CountCosts(faults_per_stitch=0.1, knit_s=0)
    with pytest.raises(ValueError, match="count"):
        CountCosts(faults_per_stitch=0.1, knit_s=1, count_s=0)
    with pytest.raises(ValueError, match="rip"):
        CountCosts(faults_per_stitch=0.1, knit_s=1, rip_s=-1)
    with pytest.raises(ValueError, match="goes back"):
        CountCosts(faults_per_stitch=0.1, knit_s=1, back_to="start")  # type: ignore[arg-type]  # the point
    costs = CountCosts(faults_per_stitch=0.1, knit_s=1)
    with pytest.raises(ValueError, match="round"):
        count_interval(0, costs)
    with pytest.raises(ValueError, match="0 or more"):
        learned_fault_rate(-1, 0)
    with pytest.raises(ValueError, match=r"got 0, -1"):
        learned_fault_rate(0, -1)


def test_ripping_may_cost_no_time_and_a_round_may_have_one_stitch() -> None:
    """The smallest that make sense are taken, and what is just below is refused."""
    assert CountCosts(faults_per_stitch=0.001, knit_s=1.0, count_s=1.0, rip_s=0.0).rip_s == 0
    for rip_s in (-0.001, float("nan")):
        with pytest.raises(ValueError, match="0 or more"):
            CountCosts(faults_per_stitch=0.001, knit_s=1.0, count_s=1.0, rip_s=rip_s)
