from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.language.understanding.slots import (
    SLOTS,
    fill_slots,
    is_shared,
    place_called,
    read_tens,
    stitch_called,
)
from stepper.language.understanding.vocabulary import VOCABULARY
from tests.fixtures import plan_named

GARMENT = plan_named("switchback")



def test_a_sentence_in_place_of_a_number_is_not_told_to_be_none() -> None:
    """Whoever says what she sees meant no number, and wants the nearest wording instead."""
    row = next(each for each in VOCABULARY if "{number} too many" in each.spoken)
    assert fill_slots({"number": "it is a bit"}, "", row, "{number} too many", GARMENT) == ""
    assert fill_slots({"number": "lots"}, "", row, "{number} too many", GARMENT) == '"lots" is not a whole number that I know.'
    short = next(each for each in VOCABULARY if "i am {number} short" in each.spoken)
    assert fill_slots({"number": "a stitch"}, "", short, "i am {number} short", GARMENT) == ""
    assert fill_slots({"number": "three"}, "", row, "{number} too many", GARMENT) == {"number": 3}


@pytest.mark.parametrize(
    ("said", "mm"),
    [
        *(("an in and a quarter", 31.75), ("half an in", 12.7), ("three quarters of an in", 19.05), ("an in", 25.4)),
        *(("2 in and a half", 63.5), ("about ten cm", 100.0), ("ten cm and a half", 105.0)),
    ],
)
def test_a_length_is_read_as_it_is_said(said: str, mm: float) -> None:
    """Nobody with a tape in her hand says "one point two five inches"."""
    row = next(each for each in VOCABULARY if "it measures {length}" in each.spoken)
    filled = fill_slots({"length": said}, "", row, "it measures {length}", GARMENT)
    assert isinstance(filled, dict)
    assert filled["length_mm"] == pytest.approx(mm)


def test_a_place_is_known_by_its_name_or_a_word_no_other_has() -> None:
    """Two sleeves share theirs, and the session knows which is near."""
    assert place_called("the left sleeve", GARMENT) == "left sleeve"
    assert place_called("neckband", GARMENT) == "neckband"
    assert place_called("sleeve", GARMENT) is None
    assert is_shared("sleeves", GARMENT)
    assert not is_shared("hood", GARMENT)


def test_the_second_of_two_is_called_as_she_says_it() -> None:
    """Nobody says "sleeves, second", which is what the part is called that the page makes twice."""
    rounds = [replace(each, section=name) for each, name in zip(GARMENT.rounds, ("body", "sleeves", "sleeves, second"), strict=False)]
    twice = replace(GARMENT, rounds=tuple(rounds))
    assert place_called("the second sleeve", twice) == "sleeves, second"
    assert place_called("third sleeve", twice) is None


def test_what_was_counted_in_one_breath_is_added() -> None:
    """She says ten and ten and four as her finger moves."""
    assert read_tens("ten ten and four") == 24
    assert read_tens("ten and some") is None


def test_a_stitch_is_called_by_its_sign_or_its_name() -> None:
    """On the page it is the one, in her head the other."""
    assert stitch_called("k2tog") == stitch_called("knit two together") == "k2tog"
    assert stitch_called("nonsense") is None
    assert stitch_called("w t") == "w&t", "as a text is compared, signs left out"


def test_a_word_of_the_trade_is_called_as_the_page_writes_it() -> None:
    """She reads "BOR", "k2, p2 rib" and "a short row", and asks for these."""
    assert stitch_called("bor") == "beginning of round"
    assert stitch_called("k2 p2 rib") == "rib"
    assert stitch_called("a short round") == "short row"


def test_every_slot_of_the_vocabulary_can_be_read() -> None:
    """A slot that nothing reads would break on first use."""
    phrases = [phrase for row in VOCABULARY for phrase in (*row.spoken, *row.typed)]
    named = {part.split("}")[0] for phrase in phrases for part in phrase.split("{")[1:]}
    assert named <= SLOTS
