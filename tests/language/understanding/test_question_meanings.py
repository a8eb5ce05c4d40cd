from __future__ import annotations

from itertools import combinations

from stepper.language.understanding.question_meanings import REMARKS, SENSES
from stepper.language.understanding.slip_vocabulary import SLIP_WORDINGS
from stepper.language.understanding.trade_words import IDEA_OF, JOINED
from stepper.language.understanding.vocabulary import VOCABULARY
from stepper.session.cues import About, Asks
from stepper.session.questions.topics import Topic

OPENINGS = {"which", "when", "where", "whether", "much", "many", "far", "read", "length", "time", "time past", "wide"}


def test_only_what_changes_nothing_is_meant_by_its_ideas() -> None:
    """A wrong step costs more than asking again; an answer to another question costs a sentence."""
    assert all(isinstance(each.cue, Asks) for each in SENSES)


def test_every_idea_in_a_row_can_be_named() -> None:
    """A slip of the pen in a row would make it one that nobody can ask for."""
    ideas = {*IDEA_OF.values(), *JOINED.values(), *OPENINGS, "place", "named"}
    for sense in SENSES:
        for idea in frozenset().union(*sense.needs, sense.may):
            assert idea.removeprefix("many ") in ideas, idea


def test_no_two_rows_need_the_same() -> None:
    """Neither would ever be taken."""
    for one, other in combinations(SENSES, 2):
        if one.cue != other.cue and len(one.needs) == len(other.needs):
            same = all(any(mine & theirs for theirs in other.needs) for mine in one.needs)
            assert not (same and set(one.needs) == set(other.needs)), (one, other)


def test_every_topic_can_be_asked_for_by_its_ideas() -> None:
    """A topic without a row would be answered to a few set phrases alone."""
    told = {each.cue.topic for each in SENSES if isinstance(each.cue, About)}
    slips = {row.fixed["topic"] for row in SLIP_WORDINGS}
    assert set(Topic) - told == {Topic.STEP_AFTER, Topic.ROUND_AFTER, *slips}  # in set phrases alone


def test_what_is_offered_for_a_remark_is_a_wording() -> None:
    """She is told to say it, so that it has to be known."""
    phrases = {phrase for row in VOCABULARY for phrase in (*row.spoken, *row.typed)}
    numbered = {"i have one too many": "i have {number} too many", "one stitch is missing": "{number} stitch is missing"}
    assert all(numbered.get(wording, wording) in phrases for wording in (each.wording for each in REMARKS))
