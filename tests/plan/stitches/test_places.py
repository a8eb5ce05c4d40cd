"""Places to which a row works. Source: common practice."""

from __future__ import annotations

import pytest

from stepper.plan.stitches.places import begins_round
from tests.plan.fabric.test_established import knit, told
from tests.plan.test_compile import faults, plan_of
from tests.project.samples import project

MARKED = "Cast on 40 sts.\nJoin in the round.\nK10, pm, k20, pm, k10.\n"
FLAT = "Cast on 21 sts. Work flat.\n"


@pytest.mark.parametrize(
    ("head", "line", "runs"),
    [
        (MARKED, "K to second marker, p to end.", [("k", 30), ("p", 10)]),
        (MARKED, "K to 3 sts past m, p to end.", [("k", 13), ("p", 27)]),
        (MARKED, "K to 2 sts after 2nd m, p to end.", [("k", 32), ("p", 8)]),
        (MARKED, "K to centre 10 sts, p10, k to end.", [("k", 15), ("p", 10), ("k", 15)]),
        (FLAT, "K to centre st, p1, k to end.", [("k", 10), ("p", 1), ("k", 10)]),
        (FLAT, "K to 2 sts before center st, p5, k to end.", [("k", 8), ("p", 5), ("k", 8)]),
        (FLAT, "K3, yo, p to center, k1, p to last 3 sts, yo, k3.", [("k", 3), ("p", 7), ("k", 1), ("p", 7), ("k", 3)]),
    ],
)
def test_a_place_is_where_it_says(head: str, line: str, runs: list[tuple[str, int]]) -> None:
    """A marker by its number, so many past it, the middle of the row."""
    rounds = plan_of(project(f"{head}{line}\nBind off.")).rounds
    assert [(run.stitch, run.times) for run in rounds[-2].runs if run.uses] == runs


@pytest.mark.parametrize(
    ("head", "line", "why"),
    [
        (MARKED, "K to third marker, p to end.", "no such one"),
        (MARKED, "K to second m, sm, k to 2nd m, p to end.", "behind this place"),
        (MARKED, "K32, k to 2nd m, p to end.", "behind this place"),
        (MARKED, "K to 12 sts past 2nd m.", "past the end"),
        (MARKED, "K to centre st, p to end.", "have no 1 in the middle"),
        (FLAT, "Ssk, k to centre st, p to end.", "changed before the middle"),
        (FLAT, "Yo, k to centre 3 sts, p to end.", "changed before the middle"),
        (
            "Cast on 20 sts. Work flat.\nK15, turn.\nP10, turn.\n",
            "K to 6 sts past last turn, turn.",
            "past the end",
        ),
        (
            "Cast on 40 sts. Work flat.\nK8, pm, k12, pm, k20.\n",
            "P to second marker, k to end.",
            "from which end",
        ),
    ],
)
def test_a_place_that_nobody_can_find_is_refused(head: str, line: str, why: str) -> None:
    """On the wrong side a number counts from either end; a place behind is none to work to."""
    assert why in faults(project(f"{head}{line}\nBind off."))


GUSSET = "Cast on 40 sts.\nJoin in the round.\nK20, pm, k to end.\nK to m, sm, k4, pm, m1l, k1, m1r, pm, k to end.\n"


def test_from_either_side_the_gusset_lies_where_it_was_shaped() -> None:
    """A wrong-side row meets it from the other end; a side marker is none of its two. By hand: three stitches behind ten
    from the right, behind thirty from the left."""
    work = (
        "Cast on 41 sts. Work flat.\nK5, pm, k5, pm, m1l, k1, m1r, pm, k to end.\nP to gusset m, sm, k to m, sm, p to end.\n"
        "K to gusset m, sm, p to m, sm, k to end.\n"
    )
    rounds = plan_of(project(work)).rounds
    assert [(each.side, each.instruction) for each in rounds[2:]] == [
        ("WS", "p30, sm, k3, sm, p10"), ("RS", "k10, sm, p3, sm, k30"),
    ]  # fmt: skip


def test_the_gusset_markers_are_those_between_which_the_last_shaping_fell() -> None:
    """A side marker stands before them; the gusset grew between its own two."""
    rounds = plan_of(project(f"{GUSSET}K to gusset m, sm, p to m, sm, k to end.\nBind off.")).rounds
    assert [(run.stitch, run.times) for run in rounds[-2].runs if run.uses] == [
        ("k", 24),
        ("p", 3),
        ("k", 15),
    ]


def test_after_shaping_elsewhere_nobody_can_tell_which_they_are() -> None:
    """A decrease in another section leaves no sign of which two belong together."""
    work = f"{GUSSET}K2tog, k to end.\nK to gusset m, p to end.\nBind off."
    assert "which is the gusset marker" in faults(project(work))


@pytest.mark.parametrize(
    ("name", "begins"), [("new bor", True), ("beg of rnd", True), ("raglan", False), ("beginning", True)]
)
def test_a_marker_for_the_beginning_of_the_round_is_told_by_its_name(name: str, begins: bool) -> None:
    """The round begins there from then on."""
    assert begins_round(name) == begins


def test_rounds_begin_at_a_new_marker() -> None:
    """Markers are counted from it, and the stitches up to it are worked with that round."""
    work = "Cast on 20 sts.\nJoin in the round.\nK6, pm for new BOR, k4, pm, k10.\nK to marker, p to end."
    plan = knit(work)
    assert told(plan, 1) == ["k4, p16"]
    assert "work 6 more stitches, to the new beginning of the round" in plan.rounds[2].remarks


def test_a_new_beginning_in_a_pattern_is_refused() -> None:
    """The pattern would have to move with it."""
    work = "Cast on 20 sts.\nJoin in the round.\n*K2, p2; rep from * to end. Work 3 rounds.\nWork 6 sts in rib, pm for new BOR, work in pattern to end.\nKnit 1 round."
    plan = project(work, sizes="S", size="S")
    assert "the pattern with it" in faults(plan)


@pytest.mark.parametrize("words", ["first marker", "marker", "last marker", "second marker"])
def test_where_no_marker_hangs_none_is_worked_to(words: str) -> None:
    """It is told, whatever the marker is called."""
    told = faults(project(f"Cast on 40 sts.\nJoin in the round.\nK to {words}, p to end.\nBind off."))
    assert "no marker is left" in told or "no such one" in told


def test_half_of_the_round_is_where_half_of_its_stitches_are_worked() -> None:
    """By hand: 24 stitches, half of them 12; three before it is the ninth, whatever was decreased on the way."""
    work = "Cast on 24 sts.\nJoin in the round.\nK1, ssk, k to 3 sts before halfway, k2tog, k2, ssk, k to last 3 sts, k2tog, k1."
    assert told(knit(work), 1) == ["k1, ssk, k6, k2tog, k2, ssk, k6, k2tog, k1"]
    odd = faults(project("Cast on 25 sts.\nJoin in the round.\nK to halfway, p to end."))
    assert "half of 25 stitches" in odd


def test_a_short_row_goes_so_many_past_a_marker_beyond_the_beginning_of_the_round() -> None:
    """As the back of a neck is raised: 13 to the beginning of the round, then the 10 to the marker and 3 more."""
    work = (
        "Cast on 40 sts. Join in the round.\nK10, pm, k20, pm, k10.\n"
        "Short row 1 (RS): K to 3 sts past first marker, turn.\n"
        "Short row 2 (WS): DS, p to BOR, p to 3 sts past marker, turn.\nDS, k to BOR.\nKnit 1 round.\nBind off."
    )
    row = plan_of(project(work)).rounds[3]
    assert [(run.stitch, run.times) for run in row.runs if run.uses and run.stitch != "rest"] == [("ds", 1), ("p", 25)]
