"""The phrases of a sentence about shaping. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.rewording.told.phrases import split_phrases


def kinds(text: str) -> list[str] | None:
    """Return the kinds of the phrases of a sentence; None if a word belongs to none."""
    found = split_phrases(text, 0)
    return None if found is None else [phrase.kind for phrase in found[0]]


def test_one_sentence_is_made_of_the_same_phrases_in_any_order() -> None:
    """Designers begin with what is worked, or with the rows it falls on."""
    one = kinds("Repeat the increase round on every 6th round 4 times in all.")
    other = kinds("On every 6th round, repeat the increase round, 4 times in all.")
    assert one is not None
    assert other is not None
    assert sorted(one) == sorted(other) == ["all", "every", "noun", "rep"]


@pytest.mark.parametrize(
    "text",
    [
        "Repeat the increase round every 4th round, but skip it on round 12, 5 times in all.",
        "Repeat the increase round every 4th or 5th round until you have 60 sts.",
        "Stop increasing when there are 60 sts.",
        "If you want more ease, repeat the increase round 2 more times.",
    ],
)
def test_one_word_of_no_phrase_leaves_the_sentence_unread(text: str) -> None:
    """It may change all the others."""
    assert kinds(text) is None


def test_a_count_stands_behind() -> None:
    """It is checked once all rows are worked."""
    found = split_phrases("Decrease like this every 3rd round, 4 times altogether = 44 (46, 48) sts left.", 0)
    assert found is not None
    assert found[0][-1].kind == "count"
    assert found[0][-1].get("n") == "44 (46, 48)"


def test_a_semicolon_may_end_it() -> None:
    """What follows is read by itself."""
    text = "Repeat the decrease round every 4th round 3 times; work 2 cm."
    found = split_phrases(text, 0)
    assert found is not None
    assert text[found[1] :] == "; work 2 cm."
