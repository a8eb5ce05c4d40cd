"""Orders off the needles are told from orders on them. All examples are invented; source: common practice."""

from __future__ import annotations

import pytest

from stepper.project.rewording.clauses.clause import Clause, Mood, clauses_of, words_of
from stepper.project.rewording.clauses.off_needle import forbids_nothing, orders_nothing


def only_clause(sentence: str, mood: Mood) -> Clause:
    """Return the one clause of a sentence, which is of a kind."""
    (clause,) = clauses_of(words_of(sentence))
    assert clause.mood is mood
    return clause


def does_nothing(sentence: str) -> bool:
    """Return whether an order works no stitch."""
    return orders_nothing(only_clause(sentence, Mood.ORDERS), frozenset(words_of(sentence)))


@pytest.mark.parametrize(
    "order",
    [
        "Take a deep breath",
        "Be careful",
        "Make a pot of tea",
        "Put the kettle on",
        "Weigh the yarn",
        "Count the stitches",
        "See the photo",
        "Measure your foot",
        "Soak the hat",
        "Leave a tail",
    ],
)
def test_orders_for_the_head_the_eye_and_the_bath_work_nothing(order: str) -> None:
    """They are said; a plan with a row for the tea would count wrong."""
    assert does_nothing(order)


@pytest.mark.parametrize(
    "order",
    [
        "Make a loop",
        "Put a stitch on a holder",
        "Leave the stitches",
        "Steam the rounds",
        "Imagine the row",
        "Read the chart",
        "Compare with the chart",
        "Mark the left side of the stitch",
    ],
)
def test_the_same_verbs_with_something_on_the_needles_are_doubted(order: str) -> None:
    """What may be worked is never passed over: in doubt the line is not read."""
    assert not does_nothing(order)


def test_closing_is_mending_only_where_a_hole_is_spoken_of() -> None:
    """What is closed may as well be the toe."""
    assert does_nothing("Close the hole")
    order = only_clause("Close it", Mood.ORDERS)
    assert not orders_nothing(order, frozenset(["close", "it", "toe"]))
    assert orders_nothing(order, frozenset(["close", "it", "gap"]))


@pytest.mark.parametrize(
    "sentence",
    [
        "Don't worry",
        "Never iron lace",
        "Don't pull the yarn",
        "Do not sell the hat",
        "Don't copy the pattern",
    ],
)
def test_what_nobody_should_do_anyway_leaves_no_stitch_out(sentence: str) -> None:
    """Care and the maker's rights change no row."""
    assert forbids_nothing(only_clause(sentence, Mood.FORBIDS))


@pytest.mark.parametrize(
    "sentence",
    ["Don't turn", "Don't join", "Don't cut the yarn", "Don't slip the stitch", "Don't copy the stitches"],
)
def test_what_is_left_out_of_the_work_is_never_passed_over(sentence: str) -> None:
    """A turn decides from which side the next row is worked."""
    assert not forbids_nothing(only_clause(sentence, Mood.FORBIDS))
