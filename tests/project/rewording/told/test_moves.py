"""A clause about stitches that are moved is taken apart phrase by phrase. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.rewording.told.moves import split_clause


@pytest.mark.parametrize(
    ("words", "kinds"),
    [
        ("slip the next 12 sts onto a holder", ["put", "next", "holder"]),
        ("place the middle 34 sts on a thread for the neck", ["put", "middle", "holder", "for"]),
        ("with RS facing", ["facing"]),
    ],
)
def test_each_phrase_is_of_one_kind(words: str, kinds: list[str]) -> None:
    """The order of the phrases is that of the words, whatever it is."""
    clause = split_clause(words, 0, len(words))
    assert clause is not None
    assert [phrase.kind for phrase in clause.phrases] == kinds
    assert (clause.start, clause.end) == (0, len(words))


@pytest.mark.parametrize("words", ["slip the next 12 sts gingerly onto a holder", "knit the next 12 sts", "a holder is handy here"])
def test_one_word_of_no_kind_leaves_the_clause(words: str) -> None:
    """What is not known may say where they go, or that they do not."""
    assert split_clause(words, 0, len(words)) is None
