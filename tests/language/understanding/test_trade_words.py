from __future__ import annotations

from stepper.language.same_words import SAME_WORDS
from stepper.language.understanding.trade_words import ASKS_NOTHING, IDEA_OF, JOINED, PHRASES, TRADE


def test_a_word_either_stands_for_something_or_asks_nothing() -> None:
    """One that did both would be left out of some questions and count in others."""
    assert not ASKS_NOTHING & set(IDEA_OF)


def test_the_trade_has_several_words_for_one_thing() -> None:
    """Skein and ball, gauge and tension: British and American hands, one idea."""
    assert IDEA_OF["skein"] == IDEA_OF["ball"] == IDEA_OF["hank"]
    assert IDEA_OF["tension"] == IDEA_OF["gauge"]
    assert IDEA_OF["increase"] != IDEA_OF["decrease"]
    assert IDEA_OF["next"] != IDEA_OF["last"]


def test_words_stand_in_the_form_in_which_texts_are_compared() -> None:
    """A word that `normalise` turns into another would never be met."""
    assert not set(IDEA_OF) & set(SAME_WORDS)
    assert not ASKS_NOTHING & set(SAME_WORDS)


def test_what_several_words_stand_for_is_known() -> None:
    """Each replacement comes to words that are looked up again."""
    openings = {"how", "many", "times", "much", "long", "far", "when", "where", "what", "left", "done", "wide"}
    for _, plain in PHRASES:
        assert all(word in {*IDEA_OF, *JOINED, *openings, *ASKS_NOTHING} for word in plain.split()), plain
    assert {*IDEA_OF.values(), *JOINED.values()} >= TRADE
