"""Turns of phrase that mean the same, and some that must not be taken for each other."""

from __future__ import annotations

import pytest

from stepper.language.understanding.normal_text import drop_articles, normalise
from stepper.language.understanding.paraphrases import in_plain_words
from stepper.language.understanding.understand import NotUnderstood, understand
from stepper.language.understanding.vocabulary import VOCABULARY
from stepper.session.cues import About, Asks, Cue, Enough, GoOn
from stepper.session.questions.topics import Topic
from tests.fixtures import plan_named
from tests.tables import each_row


@each_row(
    ("said", "topic"),
    [
        ("how many rounds till i increase", Topic.NEXT_INCREASE),
        ("how many decreases are still to come", Topic.DECREASES_LEFT),
        ("how many increases remaining", Topic.INCREASES_LEFT),
        ("give me the next round", Topic.NEXT_ROUND),
        ("when must i turn", Topic.TURN),
        ("how many stitches to do", Topic.STITCHES_LEFT),
    ],
)
@each_row("nearly", [Cue, Asks])
def test_another_turn_of_phrase_is_answered(said: str, topic: Topic, nearly: type[Cue]) -> None:
    """Typed or heard: a question changes nothing, so it need not be asked back."""
    found = understand(said, plan_named("switchback"), nearly=nearly)
    assert isinstance(found, About)
    assert found.topic is topic


def test_what_moves_the_place_is_done_in_another_turn_of_phrase_only_where_it_was_typed() -> None:
    """A wrong step costs more than asking again."""
    plan = plan_named("switchback")
    assert isinstance(understand("carry on with reading", plan, nearly=Cue), GoOn)
    assert isinstance(understand("carry on with reading", plan, nearly=Asks), NotUnderstood)
    assert isinstance(understand("carry on with reading", plan), NotUnderstood)


@pytest.mark.parametrize("said", ["how many neck decreases are left", "how many raglan increases are left"])
def test_one_count_of_two_is_not_taken_for_both(said: str) -> None:
    """Neck and armhole are two counts: an answer for both would be wrong for either."""
    assert isinstance(understand(said, plan_named("switchback"), nearly=Cue), NotUnderstood)


def test_opposites_stay_apart() -> None:
    """Increase and decrease, next and last, done and left are never the same words."""
    texts = [
        "how many increases are left", "how many decreases are left", "how many increases have i done",
        "what is the next round", "what was the last round", "how many stitches are left",
    ]  # fmt: skip
    assert len({in_plain_words(each) for each in texts}) == len(texts)


def test_no_two_meanings_that_change_something_come_to_the_same_words() -> None:
    """Where two do, neither is taken; for what moves the place that would be a lost wording."""
    found: dict[str, set[object]] = {}
    for row in VOCABULARY:
        if issubclass(row.cue, Asks) or row.cue is Enough:
            continue
        for phrase in (*row.spoken, *row.typed):
            if "{" not in phrase:
                plain = in_plain_words(drop_articles(normalise(phrase)))
                found.setdefault(plain, set()).add((row.cue, *row.fixed.values()))
    assert [plain for plain, meanings in found.items() if len(meanings) > 1] == []
