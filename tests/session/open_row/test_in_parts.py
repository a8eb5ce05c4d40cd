"""Words that are too long to be said at once are said in parts."""

from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.session.cues import Again, Back, Next, No, Yes
from stepper.session.events import RowSaid
from stepper.session.open_row.in_parts import begins_with, parts_of
from stepper.session.open_row.telling import TellOpenRow
from stepper.session.speech_length import seconds_of
from tests.playbook import AT
from tests.session.open_row.evening import ROW, cowl, evening
from tests.session.open_row.test_rules import say

TABLE = "1 A12 2 C1, A1 3 A12 4 B1, A11 5 A3, B3 (twice) 6 C1, A1 7 B12 8 A2, B2, C2 9 B12 10 C3, A1 11 B12 12 A12"


@pytest.mark.parametrize(
    "words", [TABLE, "Twirl.", "Twirl one. Twirl two. " * 20, "twirl " * 80, f"Twirl ({TABLE}) round."]
)
def test_no_part_is_longer_than_can_be_said_with_what_leads_to_it(words: str) -> None:
    """Nothing is lost and nothing said twice; what stands in brackets stays together."""
    parts = parts_of(words)
    assert " ".join(parts) == " ".join(words.split())
    assert all(seconds_of(each) <= 9.0 or "(" in each for each in parts)
    begins = begins_with(words)
    assert " ".join(words.split()).startswith(begins)
    assert seconds_of(begins) <= 4.0 or "(" in begins


def test_next_step_goes_on_in_the_words_and_again_repeats_the_part() -> None:
    """What is asked comes with the last."""
    session = evening(replace(cowl(), open=replace(ROW, words=TABLE)))
    parts = len(parts_of(TABLE))
    assert parts > 2
    for heard in range(1, parts):
        assert say(session, Yes()) == ()
        assert say(session, No()) == ()  # nor is it a remark before all of it is heard
        (event,) = say(session, Next())
        assert isinstance(event, RowSaid)
        assert event.said.heard == heard
        (told,) = (each for each in session.consider(Again(at=AT)).effects if isinstance(each, TellOpenRow))
        assert not told.brief
        assert told.more is (heard < parts - 1)
    (event,) = say(session, Back())
    assert isinstance(event, RowSaid)
    assert event.said.heard == parts - 2


def test_a_part_does_not_end_in_the_middle_of_a_short_form() -> None:
    """Said alone, "on the needle no." is no end of a sentence for the ear."""
    words = "Twirl all the loops of the body onto the same circular needle no. 9½, with a twirl over each of the loops: 276 loops. The round begins where the body and the loops meet."
    assert parts_of(words)[0].endswith("needle no. 9½,")
