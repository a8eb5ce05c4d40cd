"""The name of a plan's numbers changes when they do, and only then."""

from __future__ import annotations

from dataclasses import replace

from stepper.plan.under_way.fingerprint import describe_knitted, fingerprint, placed_alike
from tests.plan.test_compile import plan_of
from tests.plans import plan
from tests.project.samples import project

WORK = "Cast on 8 sts.\nKnit 4 rounds.\nIncrease evenly to 12 sts.\nBind off."


def test_words_do_not_change_it() -> None:
    """A note or another title leaves the place in the knitting as it is."""
    other = project(WORK + "\nNote: done.").replace("Bramble", "Thistle")
    assert fingerprint(plan_of(project(WORK))) == fingerprint(plan_of(other))


def test_every_number_changes_it() -> None:
    """One stitch or one round more is another plan."""
    marks = {
        fingerprint(plan_of(project(text)))
        for text in (WORK, WORK.replace("8", "9"), WORK.replace("4", "5"), WORK.replace("12", "13"))
    }
    assert len(marks) == 4
    assert all(len(mark) == 32 for mark in marks)


def test_a_length_to_reach_is_part_of_it() -> None:
    """28 rounds, or 10 cm that come to 28: the second is corrected when the gauge turns out otherwise."""
    counted, measured = (
        plan_of(project(f"Cast on 8 sts.\nJoin in the round.\n{words}\nBind off."))
        for words in ("Knit 28 rounds.", "Knit for 10 cm.")
    )
    assert [round_.runs for round_ in counted.rounds] == [round_.runs for round_ in measured.rounds]
    assert fingerprint(counted) != fingerprint(measured)


def test_markers_are_not_knitted() -> None:
    """A round with a marker in it is the same fabric, and what stands on both sides of it is one stretch."""
    plain, marked = (
        plan_of(project(f"Cast on 12 sts.\nJoin in the round.\n{words}\nBind off.")).rounds[1]
        for words in ("K5, p3, k4.", "K2, pm, k3, p1, pm, p2, k4.")
    )
    assert describe_knitted(plain) == describe_knitted(marked)
    assert describe_knitted(marked) == (12, 12, False, "RS", (("k", "MC", 5), ("p", "MC", 3), ("k", "MC", 4)))


def test_another_yarn_is_other_knitting() -> None:
    """Stitches of one kind in two yarns are two stretches."""
    (round_,) = plan_of(project("Cast on 6 sts.\nJoin in the round.\nK2, k4 in A.\nBind off.")).rounds[1:2]
    assert describe_knitted(round_)[4] == (("k", "MC", 2), ("k", "A", 4))


def test_where_evenly_spread_changes_stand_is_another_manner_and_not_another_round() -> None:
    """"Increase evenly" beginning at another stitch is the same round of the garment; written out it is another."""
    early, late = (
        plan(("body", ["co40", line])).rounds[1] for line in ("k5 m1 k10 m1 k25", "k10 m1 k10 m1 k20")
    )
    assert placed_alike(replace(early, evenly=True)) == placed_alike(replace(late, evenly=True))
    assert placed_alike(early) != placed_alike(late)
    assert describe_knitted(replace(early, evenly=True)) != describe_knitted(replace(late, evenly=True))


def test_a_cast_on_is_the_same_whether_rows_or_rounds_follow() -> None:
    """She who joins in place of turning has cast on nothing else."""
    rows, rounds = (
        plan_of(project(f"Cast on 8 sts.\n{words}\nBind off.")).rounds
        for words in ("Work in rows.\nKnit 4 rows.", "Join in the round.\nKnit 4 rounds.")
    )
    assert (rows[0].flat, rounds[0].flat) == (True, False)
    assert describe_knitted(rows[0]) == describe_knitted(rounds[0])
    assert describe_knitted(rows[1]) != describe_knitted(rounds[1])


def test_other_own_words_are_other_knitting() -> None:
    """The words are all that is known of such a row, so they tell one from another when a file is changed."""
    work = "Cast on 8 sts.\nJoin in the round.\nOwn words: {words}.\nBind off."
    one, same, other = (plan_of(project(work.format(words=each))).rounds[1] for each in ("twist", "twist", "loop"))
    assert describe_knitted(one) == describe_knitted(same) != describe_knitted(other)
