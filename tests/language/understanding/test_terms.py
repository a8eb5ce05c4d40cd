from __future__ import annotations

import re

from stepper.language.aloud import spell_out
from stepper.language.understanding.normal_text import drop_articles, normalise
from stepper.language.understanding.terms import ALSO_CALLED, BY_HAND, OTHERWISE_ASKED, PLAIN, TERMS
from tests.tables import each_row


@each_row("told", [*TERMS.values(), *BY_HAND.values()])
def test_what_a_word_means_is_said_in_stretches_that_the_ear_keeps(told: str) -> None:
    """She hears it once with both hands full: no sentence of more than ten seconds at two and a half words a second."""
    assert not told.endswith((".", ";", ","))
    for sentence in re.split(r"(?<=[.;:]) ", spell_out(told)):
        assert len(sentence.split()) <= 25, sentence


def test_a_name_stands_for_one_word_alone() -> None:
    """A name that stood for two would be explained as the wrong one of them, by the order of a table."""
    stands: dict[str, str] = {}
    for term in TERMS:
        for name in (term, *ALSO_CALLED.get(term, term).split(", ")):
            plain = drop_articles(normalise(name))
            assert stands.setdefault(plain, term) == term, name


def test_every_list_speaks_of_words_that_are_explained() -> None:
    """Otherwise a name would lead to nothing."""
    assert {*ALSO_CALLED, *OTHERWISE_ASKED, *PLAIN} <= set(TERMS)
