from __future__ import annotations

from stepper.language.same_words import ARTICLES, FILLERS, SAME_WORDS
from stepper.language.understanding.normal_text import normalise
from stepper.language.understanding.understand import list_phrases


def test_the_form_understood_is_not_itself_replaced() -> None:
    """One pass over a text is enough: no form leads to another."""
    assert not {word for form in SAME_WORDS.values() for word in form.split()} & set(SAME_WORDS)


def test_no_wording_is_made_of_words_that_mean_nothing() -> None:
    """A wording of fillers and articles alone could never be told from silence."""
    assert all(set(normalise(phrase).split()) - FILLERS - ARTICLES for phrase in list_phrases())
