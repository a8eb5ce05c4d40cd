from __future__ import annotations

from dataclasses import replace

from stepper.language.places import (
    done_name,
    end_sentence,
    full_date,
    name_from,
    on_day,
    place_name,
    round_word,
    sentence_case,
)
from stepper.session.state import Position
from tests.plans import final_increase, plan

GARMENT = final_increase()


def test_a_place_is_section_round_and_label() -> None:
    """What she needs to find herself in the printed pattern, and no more."""
    assert place_name(GARMENT.rounds[3]) == "Yoke, round 2 of 6, Final increase"
    assert place_name(GARMENT.rounds[4]) == "Yoke, round 3 of 6, chart cairn round 1"
    assert place_name(replace(GARMENT.rounds[3], label="Next")) == "Yoke, round 2 of 6"


def test_flat_work_has_rows_and_sides() -> None:
    """Rows, and the wrong side is said because it is the one that surprises."""
    back = plan(("back", [("co8", {"flat": True}), ("p8", {"flat": True, "side": "WS"})]))

    assert place_name(back.rounds[1]) == "Back, row 2 of 2, wrong side"
    assert [round_word(round_) for round_ in (back.rounds[0], GARMENT.rounds[0])] == ["row", "round"]


def test_what_is_done_is_named_by_its_end() -> None:
    """In the middle of a round the stitch, between rounds the round before, and all of it at the end."""
    assert done_name(Position(index=3, stitch=84), GARMENT) == "Yoke, round 2 of 6, Final increase, stitch 84"
    assert done_name(Position(index=3), GARMENT) == "Yoke, round 1 of 6"
    assert done_name(Position(index=23), GARMENT) == "Body, round 15 of 15"
    assert done_name(Position(), GARMENT) == "nothing yet"


def test_a_day_is_said_where_there_is_one() -> None:
    """A journal without a time says nothing about one."""
    assert on_day("2025-03-03T20:15:00+01:00") == " on 3 March"
    assert on_day("") == ""


def test_a_sentence_begins_with_a_capital_and_keeps_the_rest() -> None:
    """A label's own capitals are the printed pattern's."""
    assert [sentence_case(text) for text in ("yoke MC", "")] == ["Yoke MC", ""]


def test_a_day_is_written_as_in_a_letter() -> None:
    """Day, month, year; what is no day stays as it is."""
    assert full_date("2027-03-02") == "2 March 2027"
    assert full_date("some day") == "some day"


def test_a_round_of_another_section_is_named_with_it() -> None:
    """"Clover in round 1" may be any first round of the garment."""
    socks = plan(("leg", ["co8", "k8", "k8"]), ("heel", ["k8", "k8"]))
    assert name_from(2, 1, socks) == "round 3"
    assert name_from(3, 1, socks) == "heel, round 1"
    assert name_from(3, 99, socks) == "round 1", "behind the last round she is in the last section"


def test_a_sentence_that_has_its_end_gets_no_full_stop() -> None:
    """A page that cheers her on ends with a mark of its own."""
    assert [end_sentence(each) for each in ("Whew!", "twist", "Snug it up.", "(Really.)", "Turn the heel:")] == [
        "Whew!",
        "twist.",
        "Snug it up.",
        "(Really.)",
        "Turn the heel.",
    ]
