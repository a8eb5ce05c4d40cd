from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.plan.model import Plan, Stretch
from stepper.plan.under_way.carry import Carried, carry, carry_corrections
from stepper.plan.under_way.lengthen import LengthCorrection
from tests.plans import final_increase, plan

YOKE = ["k20", ("k10 m1 k10", {"label": "First increase"}), "k21", "p21", ("k21", {"label": "Chart"}), "p21"]


def _garment(yoke: list[object] = YOKE, *extra: tuple[str, list[object]]) -> Plan:
    return plan(("neck", ["co20", "k20"]), ("yoke", yoke), *extra)  # type: ignore[arg-type] # test notation


def _where(carried: Carried, new: Plan) -> tuple[str, int, int]:
    round_ = new.rounds[carried.index]
    return round_.section, round_.number, carried.stitch


@given(st.data())
def test_an_unchanged_plan_keeps_every_place(data: st.DataObject) -> None:
    """Nothing changed means nothing moved and nothing to tell, wherever the knitter is."""
    old = final_increase()
    index = data.draw(st.integers(0, len(old.rounds)))
    stitch = data.draw(st.integers(0, old.rounds[index].progress - 1)) if index < len(old.rounds) else 0

    carried = carry(old, old, index=index, stitch=stitch)

    assert (carried.index, carried.stitch, carried.found, carried.changes) == (index, stitch, True, ())
    assert carried.have == carried.want


def test_rounds_put_in_before_the_label_move_the_place_along() -> None:
    """Two rounds more before the increase: whoever stands after the increase stands after it still."""
    old, new = _garment(), _garment(["k20", "k20", "k20", *YOKE[1:]])

    carried = carry(old, new, index=4, stitch=7)

    assert _where(carried, new) == ("yoke", 5, 7)
    assert [(c.kind, c.rounds_after, c.knitted) for c in carried.changes] == [("added", 2, True)]
    assert carried.found


def test_rounds_put_in_behind_the_place_leave_it() -> None:
    """What changes further on is told as still to come and moves nothing."""
    old, new = _garment(), _garment([*YOKE, "k21", "k21"])

    carried = carry(old, new, index=3, stitch=0)

    assert carried.index == 3
    assert [(c.kind, c.first, c.last, c.knitted) for c in carried.changes] == [("added", 7, 8, False)]


def test_within_a_label_the_place_goes_with_its_round() -> None:
    """A round put in between the label and the place must not put the knitter into another round of the
    pattern."""
    old = _garment()
    new = _garment([*YOKE[:2], "k21", "k21", "k21", "p21", *YOKE[4:]])

    carried = carry(old, new, index=6, stitch=9)  # in the first round of the chart

    assert new.rounds[carried.index].label == "Chart"
    assert (_where(carried, new), carried.found) == (("yoke", 7, 9), True)


def test_rounds_put_in_just_before_the_round_in_hand_come_next() -> None:
    """Nobody has knitted them: going on behind them would leave them out without a word."""
    old = _garment()
    new = _garment([*YOKE[:2], "k21", "k21", "k21", "p21", *YOKE[4:]])

    carried = carry(old, new, index=5, stitch=0)  # the purl round after the increase comes next

    assert (_where(carried, new), carried.found) == (("yoke", 4, 0), True)
    assert [(each.kind, each.rounds_after, each.knitted) for each in carried.changes] == [("added", 2, False)]


def test_a_changed_round_in_hand_is_not_passed_off_as_the_same() -> None:
    """If the very round she is in has other stitches, she is asked: back to where both are the same, on as
    far as she is with a count that is off, or the round anew."""
    old = _garment()
    new = _garment(["k20", ("k4 m1 k4 m1 k4 m1 k8", {"label": "First increase"}), "k23", "p23", "k23", "p23"])

    carried = carry(old, new, index=3, stitch=11)

    assert not carried.found
    assert [(each.index, each.stitch, each.have, each.want) for each in carried.choices] == [
        (3, 4, 20, 20),
        (3, 11, 21, 22),
        (3, 0, 20, 20),
    ]
    assert [each.stitches_back for each in carried.choices] == [7, 0, 11]
    assert any(c.label == "First increase" and c.count_before == 21 for c in carried.changes)


def test_a_count_that_no_longer_fits_is_reported() -> None:
    """When what is on the needles is not what the new pattern expects there, both numbers are given."""
    old = _garment()
    new = _garment(["k20", ("k5 m1 k10 m1 k5", {"label": "First increase"}), "k22", "p22", "k22", "p22"])

    carried = carry(old, new, index=4, stitch=0)

    assert (carried.have, carried.want) == (21, 22)
    assert [(each.index, each.rounds_back, each.have, each.want) for each in carried.choices] == [
        (4, 0, 21, 22),
        (3, 1, 20, 20),
    ]
    assert carried.changes[0].knitted


def test_a_lost_section_leads_to_the_next_one_that_is_there() -> None:
    """If the section in hand was taken out, work goes on with what followed it."""
    old = _garment(YOKE, ("body", ["k21"] * 3), ("hem", ["p21", "bo21"]))
    new = _garment(YOKE, ("hem", ["p21", "bo21"]))

    carried = carry(old, new, index=9, stitch=3)

    assert _where(carried, new)[:2] == ("hem", 1)
    assert not carried.found
    assert [(c.kind, c.section, c.knitted) for c in carried.changes] == [("removed", "body", True)]


def test_a_renamed_label_is_found_by_what_is_worked() -> None:
    """A label spelled anew must not send the knitter to the beginning of the section."""
    old = _garment()
    new = _garment([YOKE[0], ("k10 m1 k10", {"label": "Increase no. 1"}), *YOKE[2:]])

    assert _where(carry(old, new, index=5, stitch=2), new) == ("yoke", 4, 2)


def test_a_finished_garment_goes_on_where_something_was_added() -> None:
    """All done, then a hem added to the file: the hem comes next."""
    old, new = _garment(), _garment(YOKE, ("hem", ["p21", "bo21"]))

    carried = carry(old, new, index=len(old.rounds), stitch=0)

    assert _where(carried, new) == ("hem", 1, 0)


@pytest.mark.parametrize(
    ("old", "new"), [(Plan(title="x", rounds=()), _garment()), (_garment(), Plan(title="x", rounds=()))]
)
def test_empty_plans_are_carried_too(old: Plan, new: Plan) -> None:
    """A file still being written must not break the session, wherever she is."""
    assert carry(old, new, index=0, stitch=0).index == 0
    for stitch in (0, 2) if old.rounds else (0,):
        found = carry(old, new, index=len(old.rounds) // 2, stitch=stitch)
        assert (found.index, found.stitch, found.want) == (0, 0, 0)


def _measured(target_mm: float, first: int = 2, cycle: int = 1) -> Plan:
    stretch = Stretch(first=first, last=5, origin=2, target_mm=target_mm, rounds_per_10cm=30.0, cycle=cycle)
    return plan(("neck", ["co20", "k20"]), ("body", ["k20"] * 5), stretches=(stretch,))


def test_a_correction_stays_where_the_length_is_the_same() -> None:
    """A file changed elsewhere must not undo what measuring said."""
    correction = LengthCorrection(stretch=0, rounds=9, rounds_per_10cm=33.0)

    assert carry_corrections(_measured(13), _measured(13), [correction]) == (correction,)


def test_a_correction_follows_another_length_by_the_gauge_as_knitted() -> None:
    """Asked for 10 cm now, at 33 rounds to 10 cm that is 33 rounds, whatever the old plan had."""
    correction = LengthCorrection(stretch=0, rounds=9, rounds_per_10cm=33.0)

    assert carry_corrections(_measured(13), _measured(100), [correction]) == (replace(correction, rounds=33),)


def test_a_correction_of_a_stretch_that_is_gone_is_dropped() -> None:
    """A stretch no longer worked to a length has nothing to correct."""
    correction = LengthCorrection(stretch=0, rounds=9, rounds_per_10cm=33.0)
    gone = replace(_measured(13), stretches=())

    assert carry_corrections(_measured(13), gone, [correction, replace(correction, stretch=4)]) == ()
    kept = carry_corrections(_measured(13), _measured(13), [replace(correction, stretch=4), correction])
    assert kept == (correction,), "and none of another stretch with it"


def test_a_change_across_the_place_is_told_in_two_parts() -> None:
    """A new count changes every round after it; what is knitted already is told apart from what is to come."""
    old = _garment()
    new = _garment(["k20", ("k5 m1 k10 m1 k5", {"label": "First increase"}), "k22", "p22", "k22", "p22"])

    changes = carry(old, new, index=5, stitch=3).changes

    assert [(c.first, c.last, c.count_before, c.count_after, c.knitted) for c in changes] == [
        (2, 3, 21, 22, True),
        (4, 6, 21, 22, False),
    ]
