"""Two counts at once. Source: common practice ("at the same time"); the rows are counted by hand."""

from __future__ import annotations

from dataclasses import replace

from stepper.language.effect_words import tell_effect
from stepper.plan.model import Plan
from stepper.session.machine import Session
from stepper.session.questions.about_series import TellSeries, find_running_series, tell_due_now, tell_series
from stepper.session.state import Knitting, Position, State
from tests.fixtures import plan_named
from tests.plan.test_compile import plan_of
from tests.playbook import after, transcript
from tests.project.samples import project

ARMHOLE_AND_NECK = (
    "Cast on 40 sts.\nWork flat.\n"
    "Armhole dec row (RS): K1, ssk, k to end.\nNeck dec row (RS): K to last 3 sts, k2tog, k1.\n"
    "Work armhole dec row every 2nd row 6 times, at the same time work neck dec row every 4th row 3 times. 31 sts.\n"
    "Bind off."
)


def told(made: Plan, index: int) -> str:
    """Return what is said of the counts at the beginning of a round."""
    state = State(knitting=Knitting(place=Position(index=index)))
    return " ".join(tell_effect(each, made) for each in tell_series(made, state))


def test_neck_and_armhole_each_say_when_they_are_due() -> None:
    """Armhole at the beginning every 2nd row, neck at the end every 4th: rows 3, 7 and 11 have both."""
    made = plan_of(project(ARMHOLE_AND_NECK))
    assert told(made, 4) == "Side by side: decrease at the beginning in 1 row, decrease at the end in 3 rows."
    assert (
        told(made, 5) == "Side by side: decrease at the beginning in this row, decrease at the end in 2 rows."
    )
    assert told(made, 7) == (
        "Side by side: decrease at the beginning in this row, decrease at the end in this row."
    )


def test_where_am_i_gives_both() -> None:
    """She asks one question; the second count is what she would otherwise forget."""
    session = after(Session(plan_of(project(ARMHOLE_AND_NECK))), "go to row 5")
    assert "Side by side: decrease at the beginning" in transcript(session, "> where am i")


def test_before_the_second_begins_and_after_the_first_ends_there_is_one_count() -> None:
    """Nothing is said to run side by side that does not."""
    made = plan_of(project(ARMHOLE_AND_NECK))
    assert told(made, 1) == told(made, 2) == told(made, 12) == ""
    assert told(made, len(made.rounds)) == ""


def test_both_ends_and_all_markers_on_the_same_rounds_are_one_count() -> None:
    """A raglan and a sleeve have a single count, however many places it shapes at."""
    for name in ("cardigan", "switchback"):
        made = plan_named(name)
        assert all(len(find_running_series(made, each.index)) < 2 for each in made.rounds)


def test_cables_and_increases_are_two_counts() -> None:
    """Every fourth round crosses, every third increases at both ends."""
    lines = (
        "Cast on 24 sts. Join in the round.\n"
        + "Round 1: M1, k to last st, m1, k1. 26 sts.\nRound 2: K10, 2/2 RC, k12.\nRound 3: Knit.\n"
        + "Round 4: M1, k to last st, m1, k1. 28 sts.\nRound 5: Knit.\nRound 6: K11, 2/2 RC, k13.\n"
        + "Round 7: M1, k to last st, m1, k1. 30 sts.\nBind off."
    )
    made = plan_of(project(lines))
    assert told(made, 3) == "Side by side: increase in 1 round, cable in 3 rounds."
    assert isinstance(next(tell_series(made, State(knitting=Knitting(place=Position(index=3))))), TellSeries)


def test_a_round_that_is_due_names_its_count_and_how_far_that_is() -> None:
    """She works the decrease and knows at once which of the two to tick off, and how many are still to come."""
    made = plan_of(project(ARMHOLE_AND_NECK))
    both = [tell_effect(each, made) for each in tell_due_now(made, 3)]
    assert both == ["The second of 6 decreases at the beginning and the first of 3 decreases at the end."]
    assert [tell_effect(each, made) for each in tell_due_now(made, 5)] == [
        "The third of 6 decreases at the beginning."
    ]
    assert list(tell_due_now(made, 4)) == list(tell_due_now(made, len(made.rounds))) == []
    session = after(Session(made), "go to row 3")
    assert "first of 3 decreases at the end.\nRow 4:" in transcript(session, "> next")


def test_changes_spread_over_a_row_lie_at_neither_of_its_ends() -> None:
    """The first of even changes may stand near the edge; it is no shaping of that edge."""
    made = plan_of(project(ARMHOLE_AND_NECK))
    spread = replace(
        made, rounds=tuple(replace(round_, evenly=bool(round_.shaping)) for round_ in made.rounds)
    )
    assert "at the beginning" in told(made, 5)
    for index in range(len(spread.rounds)):
        assert "beginning" not in told(spread, index)
        assert "at the end" not in told(spread, index)
