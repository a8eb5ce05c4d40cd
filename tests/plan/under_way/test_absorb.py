from __future__ import annotations

from itertools import pairwise

import pytest

from stepper.plan.model import Plan, flatten
from stepper.plan.under_way.absorb import Mend, apply_mends, made_good, refit_round
from tests.plans import final_increase, plan


def follows(garment: Plan, start: int) -> bool:
    """Tell whether every round from one on uses what the one before leaves, and says what it does."""
    rounds = garment.rounds[start:]
    joined = all(now.after == ahead.before for now, ahead in pairwise(rounds) if ahead.before)
    return joined and all(
        sum(run.uses for run in flatten(each.phrase)) == each.before
        and each.before + sum(run.leaves - run.uses for run in each.runs) == each.after
        for each in rounds
    )


def test_the_following_shaping_takes_it_up() -> None:
    """One too few before 225 become 246: the plain round is worked over 224, and 22 increases are spread
    evenly in place of 21. Source: 246 - 224."""
    mend = Mend(index=3, stitch=100, change=1, origin=2, spread=True)
    garment = apply_mends(final_increase(), [mend])

    assert [each.before for each in garment.rounds[2:5]] == [224, 224, 246]
    assert len(garment.rounds[3].shaping) == 22
    gaps = [later - earlier for earlier, later in pairwise(garment.rounds[3].shaping)]
    assert max(gaps) - min(gaps) <= 1
    assert garment.rounds[4:] == final_increase().rounds[4:]
    assert follows(garment, 2)


def test_too_many_need_one_increase_less() -> None:
    """227 become 246 with nineteen."""
    garment = apply_mends(final_increase(), [Mend(index=3, stitch=0, change=-2, origin=2, spread=True)])
    assert len(garment.rounds[3].shaping) == 19
    assert follows(garment, 2)


def test_a_spot_is_made_good_with_the_pattern_around_it_unchanged() -> None:
    """In the chart round the missing stitch is made where it is missing, in the yarn it would have had."""
    garment = final_increase()
    made = made_good(garment.rounds[4], Mend(index=4, stitch=100, change=1))
    assert made is not None
    stitches = [run.stitch for run in made.runs for _ in range(run.times)]
    yarns = [run.yarn for run in made.runs for _ in range(run.times)]
    assert (stitches.count("m1"), stitches[100]) == (1, "m1")
    assert yarns == [run.yarn for run in garment.rounds[4].runs for _ in range(run.times)]
    assert (made.before, made.after) == (245, 246)
    saved = made_good(garment.rounds[4], Mend(index=4, stitch=100, change=-1))
    assert saved is not None
    assert (saved.before, saved.after) == (247, 246)


def test_repeats_are_refitted_where_they_divide() -> None:
    """A whole repeat more is worked once more; half a one is not."""
    chart = final_increase().rounds[4]
    longer = refit_round(chart, 6)
    assert longer is not None
    assert (longer.before, longer.after, longer.phrase[0].uses) == (252, 252, 252)
    assert refit_round(chart, 3) is None
    assert refit_round(final_increase().rounds[3], 6) is None, "shaping has its places"


def test_a_plain_round_keeps_its_markers() -> None:
    """The stretch in which the stitch is missing is one shorter, and the markers behind it move."""
    marked = plan(
        (
            "yoke",
            [("co80", {"markers": (20, 40, 60)}), ("k20 sm k20 sm k20 sm k20", {"markers": (20, 40, 60)})],
        )
    )
    shorter = refit_round(marked.rounds[1], -1, at=50)
    assert shorter is not None
    assert [run.times for run in shorter.runs if run.stitch == "k"] == [20, 20, 19, 20]
    assert shorter.markers == (20, 40, 59)
    assert refit_round(marked.rounds[1], -20, at=50) is None


def test_it_can_be_carried_to_the_bind_off() -> None:
    """Where nothing asks for the exact count, what is on the needles is bound off."""
    scarf = plan(("scarf", ["co40", "k40", "k40", "bo40"]), ("hat", ["co60", "k60"]))
    garment = apply_mends(scarf, [Mend(index=4, stitch=0, change=1, origin=2)])
    assert [each.before for each in garment.rounds] == [0, 40, 39, 39, 0, 60]
    assert garment.rounds[3].after == 0
    assert garment.rounds[4:] == scarf.rounds[4:]


def test_two_mends_add_up() -> None:
    """One more is found off while the first is still carried along."""
    first = Mend(index=3, stitch=0, change=1, origin=1, spread=True)
    second = Mend(index=3, stitch=0, change=1, origin=2, spread=True)
    garment = apply_mends(final_increase(), [first, second])
    assert [each.before for each in garment.rounds[1:4]] == [224, 223, 223]
    assert len(garment.rounds[3].shaping) == 23
    assert apply_mends(final_increase(), []) == final_increase()


def test_a_round_half_worked_stays_as_it_was_read() -> None:
    """What she has in hand is not said anew in the middle; only its count is off."""
    rib = plan(("cuff", ["co40", "(k2 p2)x10", "k40"]))
    garment = apply_mends(rib, [Mend(index=2, stitch=5, change=1, origin=1)])
    assert garment.rounds[1].phrase == rib.rounds[1].phrase
    assert (garment.rounds[1].before, garment.rounds[1].after) == (39, 39)
    assert (garment.rounds[2].before, garment.rounds[2].after) == (39, 40)


@pytest.mark.parametrize(
    ("line", "change", "spread"),
    [("(k1 k2tog)x8", 17, True), ("(k2tog)x12", -1, False), ("(k2 m1)x12", -13, True)],
)
def test_what_cannot_be_taken_up_is_said(line: str, change: int, spread: bool) -> None:
    """Fewer than no changes, more decreases than stitches, or no plain stitch to spare."""
    crown = plan(("crown", ["co24", line])).rounds[1]
    assert made_good(crown, Mend(index=1, stitch=0, change=change, spread=spread)) is None


def test_increases_worked_into_a_stitch_are_spread_too() -> None:
    """Twenty stitches with five knit front and back become twenty five; with one missing, six of them do."""
    round_ = plan(("yoke", ["co20", "(k3 kfb)x5"])).rounds[1]
    made = made_good(round_, Mend(index=1, stitch=0, change=1, spread=True))
    assert made is not None
    assert (made.before, made.after, len(made.shaping)) == (19, 25, 6)
