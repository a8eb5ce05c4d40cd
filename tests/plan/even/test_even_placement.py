"""Changes kept off markers and motifs where that can be done, and off a centre because she says so."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from stepper.craft.even.spacing import count_gaps, gaps_between
from stepper.plan.compile import work_as_knitted
from stepper.plan.even.even_placement import markers_ahead, motif_stitches
from stepper.plan.model import Plan, Round, flatten
from stepper.plan.state.needles import Needles
from stepper.plan.under_way.respace import spread_of
from stepper.project.reader import read_project
from tests.invariants import broken_invariants
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import HEAD, project


def even(plan: Plan) -> Round:
    """Find the evenly spread round."""
    return next(round_ for round_ in plan.rounds if round_.evenly)


def test_an_increase_does_not_stand_at_a_marker_and_the_gaps_stay_even() -> None:
    """225 to 246 with a marker after 26 stitches, where an increase would stand: still 15 gaps of 11 and 6 of 10.

    Source: 225 = 21 × 10 + 15.
    """
    work = "Cast on 225 sts.\nJoin in the round.\nK{at}, pm, k to end.\nIncrease evenly to 246 sts."
    plain = even(plan_of(project("Cast on 225 sts.\nJoin in the round.\nIncrease evenly to 246 sts.")))
    at = plain.shaping[2]
    round_ = even(plan_of(project(work.format(at=at))))
    assert at not in round_.shaping
    assert count_gaps(gaps_between(round_.shaping, 225)) == ((11, 15), (10, 6))


def test_a_decrease_does_not_take_the_stitches_beside_a_marker() -> None:
    """Neither across the marker nor with the stitch at its side, as long as the gaps are even."""
    work = "Cast on 80 sts.\nJoin in the round.\nK{at}, pm, k to end.\nDecrease evenly to 70 sts."
    for at in range(2, 79):
        round_ = even(plan_of(project(work.format(at=at))))
        assert not {at - 2, at - 1, at} & set(round_.shaping)
        assert sorted(gaps_between(round_.shaping, 80, uses=2)) == [6] * 10  # *k6, k2tog* x 10, check-values 3.2.4


@settings(deadline=None, max_examples=60)
@given(st.integers(12, 60), st.data())
def test_every_round_with_markers_stays_within_one(stitches: int, data: st.DataObject) -> None:
    """Whatever hangs on the needles, the invariant of every plan is kept and the count is met."""
    every = data.draw(st.integers(2, stitches // 2))
    after = data.draw(st.integers(stitches // 2 + 1, 2 * stitches))
    word = "Increase" if after > stitches else "Decrease"
    work = (
        f"Cast on {stitches} sts.\nJoin in the round.\nPlace marker every {every} sts.\n"
        f"{word} evenly to {after} sts."
    )
    assert broken_invariants(plan_of(project(work))) == ()


def test_where_no_even_place_is_left_she_is_told() -> None:
    """30 to 45 stitches puts an increase after every second one; a marker after each second stitch leaves the odd
    places, one after each stitch leaves none."""
    work = "Cast on 30 sts.\nJoin in the round.\nPlace marker every {every} sts.\nIncrease evenly to 45 sts."
    assert plan_of(project(work.format(every=2))).warnings == ()
    told = [warning.text for warning in plan_of(project(work.format(every=1))).warnings]
    assert any("stands at a marker" in text for text in told)


def test_an_increase_does_not_part_a_motif_of_the_chart_round_below() -> None:
    """The last round of the chart has its motif on two stitches of four; increases go beside them.

    `.aa.`: stitches 2 and 3 of each repeat are moss, so places 2, 6, 10, … would part them.
    """
    work = "Cast on 24 sts.\nJoin in the round.\nChart peak, rounds 1-1.\nIncrease evenly to {to} sts."
    for to in (26, 27, 28, 30):
        round_ = even(plan_of(project(work.format(to=to))))
        assert not [place for place in round_.shaping if place % 4 == 2], to
        gaps = gaps_between(round_.shaping, 24)
        assert max(gaps) - min(gaps) <= 1


def test_a_motif_that_cannot_be_spared_costs_no_evenness() -> None:
    """8 increases over 24 stitches stand 3 apart and so meet every stitch of a repeat of 4 (arithmetic)."""
    work = "Cast on 24 sts.\nJoin in the round.\nChart peak, rounds 1-1.\nIncrease evenly to 32 sts."
    assert gaps_between(even(plan_of(project(work))).shaping, 24) == (3,) * 8


def kept_free(rule: str, *, to: int = 246, rows: bool = False) -> Plan:
    """Compile 225 stitches and a rule."""
    head = HEAD.replace("sections:", f"alterations:\n  - {rule}\nsections:")
    begin = "Work flat." if rows else "Join in the round."
    return plan_of(project(f"Cast on 225 sts.\n{begin}\nIncrease evenly to {to} sts.", head=head))


@pytest.mark.parametrize(
    ("rule", "free"),
    [
        ("keep 40 sts free at centre front", range(92, 132)),  # 225 // 2 = 112, 20 either side
        ("keep 20 cm free at centre front", range(92, 132)),  # 20 stitches to 10 cm
        ("keep 40 sts free at centre front, from the side", range(36, 76)),  # 225 // 4 = 56
        ("keep 40 sts free at centre back, from the side", range(148, 188)),
    ],
)
def test_a_centre_is_kept_free_and_the_round_says_so(rule: str, free: range) -> None:
    """No increase parts two of the stitches kept; the others are as even as they can be, and the count is met."""
    plan = kept_free(rule)
    round_ = even(plan)
    assert not [place for place in round_.shaping if place - 1 in free and place in free]
    assert (round_.before, round_.after, len(round_.shaping)) == (225, 246, 21)
    assert round_.altered == (rule,)
    widest, *others = sorted(gaps_between(round_.shaping, 225), reverse=True)
    assert widest >= 39
    assert max(others) - min(others) <= 2
    assert broken_invariants(plan) == ()
    assert spread_of(round_) is not None


def test_front_and_back_are_kept_free_together() -> None:
    """The back lies across the beginning of the round."""
    round_ = even(kept_free("keep 30 sts free at centre front and back"))
    assert min(round_.shaping) >= 15
    assert max(round_.shaping) <= 225 - 15
    assert not [place for place in round_.shaping if 97 < place < 127]


def test_in_rows_the_front_is_at_the_ends() -> None:
    """A cardigan opens at the front."""
    round_ = even(kept_free("keep 30 sts free at centre front", rows=True))
    assert min(round_.shaping) >= 15
    assert max(round_.shaping) <= 225 - 15


def test_a_centre_that_leaves_no_room_is_refused_with_the_numbers() -> None:
    """224 increases need every gap but the join's."""
    head = HEAD.replace("sections:", "alterations:\n  - keep 100 sts free at centre front\nsections:")
    told = faults(project("Cast on 225 sts.\nJoin in the round.\nIncrease evenly to 440 sts.", head=head))
    assert "keep 100 sts free at centre front" in told
    assert "215 changes cannot be placed" in told


def test_a_printed_size_is_checked_as_printed() -> None:
    """The rule is the knitter's, not the pattern's: it keeps no other size from coming out."""
    head = HEAD.replace("sections:", "alterations:\n  - keep 100 sts free at centre front\nsections:")
    work = "Cast on 225 (225, 225) sts.\nJoin in the round.\nIncrease evenly to 440 (246, 440) sts."
    assert even(plan_of(project(work, head=head))).after == 246


def worked(work: str, *, rows: bool) -> Needles:
    """Work a few lines, with the stitches left on the needles."""
    head = HEAD.replace("      a..a\n      .aa.\n", "      ...a\n")
    begin = "Work flat." if rows else "Join in the round."
    reading = read_project(project(f"Cast on 8 sts.\n{begin}\n{work}", sizes="S", size="S", head=head))
    assert reading.project is not None
    return work_as_knitted(reading.project, frozenset())


def test_a_wrong_side_row_meets_the_markers_from_the_other_end() -> None:
    """A marker 3 stitches from the right-hand edge is 5 from the left, where the row back begins."""
    assert markers_ahead(worked("K3, pm, k5.", rows=True)) == (5,)
    assert markers_ahead(worked("K3, pm, k5.\nPurl 1 row.", rows=True)) == (3,)
    assert markers_ahead(worked("K3, pm, k5.", rows=False)) == (3,)


def test_a_wrong_side_row_meets_the_motif_from_the_other_end() -> None:
    """The chart is read from the right: its coloured squares are stitches 1 and 5, from the left 8 and 4."""
    assert motif_stitches(worked("Work chart peak, round 1.", rows=False)) == (1, 5)
    assert motif_stitches(worked("Work chart peak, round 1.", rows=True)) == (4, 8)
    assert motif_stitches(worked("Work chart peak, round 1.\nKnit 1 round.", rows=False)) == ()


@given(
    count=st.integers(24, 90),
    marks=st.lists(st.integers(3, 87), min_size=1, max_size=3, unique=True),
    change=st.integers(-10, 20).filter(bool),
    rows=st.sampled_from(["round", "RS", "WS"]),
)
@settings(max_examples=30, deadline=None, derandomize=True)
def test_markers_stay_between_the_stitches_they_hung_between(count: int, marks: list[int], change: int, rows: str) -> None:
    """A second knitter reads the round stitch by stitch: where she comes to the old place of a marker, there it hangs, on either side
    of a stitch that is made just there; two stitches it hung between are knitted together only where that is told."""
    places = sorted(each for each in marks if each < count - 2)
    if not places:
        return
    steps = [one - other for one, other in zip(places, [0, *places], strict=False)]
    hung = ", pm, ".join(f"k{each}" for each in steps)
    word = f"Increase {change}" if change > 0 else f"Decrease {-change}"
    between = {"round": "Knit 1 round.\n", "RS": "Purl 1 row.\n", "WS": ""}[rows]
    start = f"Cast on {count} sts.\n{'Join in the round.' if rows == 'round' else 'Work flat.'}\n{hung}, pm, k to end.\n"
    plan = plan_of(project(f"{start}{between}{word} sts evenly.", sizes="S", size="S"))
    if rows == "WS":  # met from the other end
        places = sorted(count - each for each in places)
    round_, old, new = plan.rounds[-1], 0, 0
    low, high, split = dict.fromkeys(places, -1), dict.fromkeys(places, -1), set()
    for run in flatten(round_.phrase):
        for _ in range(run.times):
            if old in low and low[old] < 0:
                low[old] = new
            old, new = old + run.uses // run.times, new + run.leaves // run.times
            split |= {place for place in places if old - run.uses // run.times < place < old}
            if old in low:
                low[old] = new if low[old] < 0 else low[old]
                high[old] = new
    assert (old, new) == (count, count + change)
    assert len(round_.markers) == len(places)
    for place, marker in zip(places, round_.markers, strict=True):
        assert place in split or low[place] <= marker <= high[place]
    assert not split or any("a change stands at a marker" in each.text for each in plan.warnings)
