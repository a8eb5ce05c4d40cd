from __future__ import annotations

from dataclasses import replace

from stepper.language.changes import MOST_TOLD, ask_place, tell_change, tell_changes, tell_choice
from stepper.plan.under_way.carry import Difference
from stepper.plan.under_way.resuming import PlaceChoice
from stepper.session.effects import AskPlace, TellChanges, TellChosen

INCREASE = Difference(
    kind="changed",
    section="yoke",
    first=30,
    last=30,
    label="Final increase",
    rounds_before=1,
    rounds_after=1,
    count_before=246,
    count_after=250,
    knitted=True,
)
LONGER = replace(
    INCREASE, kind="added", section="body", first=97, last=100, label=None, rounds_before=0, rounds_after=4,
    count_before=164, count_after=164, knitted=False,
)  # fmt: skip
TOLD = TellChanges(changes=(), have=246, want=246, found=True, comparable=True)


def test_a_change_says_where_what_and_whether_it_is_knitted() -> None:
    """The count matters most, and whether it is too late."""
    assert tell_change(INCREASE) == (
        "Yoke, round 30, Final increase: changed, 250 stitches after it and not 246, already knitted."
    )
    assert tell_change(LONGER) == "Body, rounds 97 to 100: added, still to come."
    assert tell_change(replace(LONGER, kind="changed", rounds_before=2)) == (
        "Body, rounds 97 to 100: changed, 2 rounds before, still to come."
    )


def test_what_is_already_knitted_comes_first() -> None:
    """It cannot be changed by reading on, so it must not be the fifth thing said."""
    told = tell_changes(replace(TOLD, changes=(LONGER, INCREASE)))

    assert told.index("Final increase") < told.index("Body")


def test_many_changes_are_counted_and_not_recited() -> None:
    """Nobody listens to twelve changes; the check command shows them all."""
    told = tell_changes(replace(TOLD, changes=(LONGER,) * 7))

    assert told.count("Body") == MOST_TOLD
    assert told.endswith("And 3 more.")


def test_a_file_changed_in_words_only_is_told_too() -> None:
    """Never silently, also when no round is different."""
    assert tell_changes(TOLD) == "The pattern has changed since last time. No round is different."


def test_a_count_that_does_not_fit_and_a_lost_round_are_told() -> None:
    """The two things that need the knitter before she goes on."""
    told = tell_changes(replace(TOLD, changes=(INCREASE,), want=250, found=False))

    assert told.endswith(
        "The round you were in is no longer as it was; this is the nearest to it. "
        "You have 246 stitches where it now wants 250."
    )


def test_an_unreadable_past_is_admitted() -> None:
    """It does not claim that nothing changed when it cannot know."""
    assert "can no longer be read" in tell_changes(replace(TOLD, comparable=False))


CHOICE = PlaceChoice(index=9, stitch=12, section="yoke", number=3, flat=False, label="First", have=104, want=106)
BACK = replace(
    CHOICE, index=4, stitch=0, number=1, label=None, have=100, want=100, rounds_back=5, stitches_back=12
)


def test_another_name_is_told_as_that() -> None:
    """Seventy rounds gone and seventy come would be told to somebody who gave the body another name."""
    renamed = replace(LONGER, kind="renamed", section="trunk", was="body")

    assert tell_change(renamed) == "Body is now called trunk."


def test_the_question_says_of_each_place_what_fits_and_what_comes_off() -> None:
    """She answers with her hands full: all she has to know is in the question, and how to answer it."""
    assert tell_changes(TOLD)
    assert ask_place(AskPlace(choices=(CHOICE, BACK), later=False)) == (
        "Where do you go on? "
        "1: Yoke, round 3, First, stitch 12; you have 104 stitches and it wants 106. "
        "2: Yoke, round 1; 100 stitches, as it wants; take back 5 rounds and 12 stitches of the round in hand. "
        "Say: take number 1."
    )
    done = replace(CHOICE, number=0, stitch=0, label=None, have=0, want=0)
    assert "1: the end of yoke; 0 stitches, as it wants." in ask_place(AskPlace(choices=(done,), later=False))
    assert ask_place(AskPlace(choices=(CHOICE,), later=True)).endswith("where to go on in the changed pattern.")


def test_the_answer_is_told_with_what_is_to_be_done_first() -> None:
    """Rounds to take back, or a count that is off, before the next instruction."""
    assert tell_choice(TellChosen(choice=BACK)) == (
        "Going on in the changed pattern. Take back 5 rounds and 12 stitches of the round in hand."
    )
    assert tell_choice(TellChosen(choice=CHOICE)) == (
        "Going on in the changed pattern. You have 104 stitches where it wants 106."
    )


def test_a_round_that_can_be_spread_anew_says_how_much_of_it_is_made() -> None:
    """Beside going back: the changes already made stay, and the rest meets the count."""
    spread = replace(CHOICE, places=(5, 15, 25), made=1)
    assert "the rest spread anew, 1 of 3 made" in ask_place(AskPlace(choices=(spread,), later=False))


def test_rows_counted_of_a_row_that_was_not_read_are_told_with_what_to_say() -> None:
    """The pattern has them otherwise now, and she is in front of them."""
    told = tell_changes(
        TellChanges(changes=(), have=40, want=40, found=True, comparable=True, unplaced=3)
    )
    assert told.endswith(
        "You had counted 3 rounds of a row that was not read, and are in front of them: say 3 rounds done."
    )
