from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.ears.answers import AGAIN_DB, SURE_DB, Answers
from stepper.ears.ports import Heard

SAID = 0.8
"""How long after it was said an answer is understood. Unit: s."""
YES = Heard(text="yes", score=0.9, is_answer=True)
NO = Heard(text="no", score=0.9, is_answer=True)


def take(answers: Answers, heard: Heard, db: float | None, at_s: float) -> Heard | None:
    """Take what was said at a moment."""
    return answers.take(heard, db, at_s, at_s + SAID)


def text(heard: Heard | None) -> str:
    """Return what counts of it; "-" where nobody is told that anything was heard."""
    return "-" if heard is None else heard.text


def test_an_answer_far_louder_than_the_room_counts_at_once() -> None:
    """In a quiet room every answer is."""
    assert take(Answers(), YES, SURE_DB, 10) is YES


def test_what_is_about_as_loud_as_the_room_counts_when_it_is_said_again() -> None:
    """The film says it once; she hears the low tone and says it again."""
    answers = Answers()
    assert text(take(answers, YES, SURE_DB - 1, 10)) == ""
    assert take(answers, YES, SURE_DB - 1, 13) is YES


def test_what_has_counted_is_done_with() -> None:
    """A third "yes" is as doubtful as the first."""
    answers = Answers()
    texts = [text(take(answers, YES, SURE_DB - 1, at)) for at in (10, 13, 16, 19)]
    assert texts == ["", "yes", "", "yes"]


@pytest.mark.parametrize(("again_s", "counts"), [(0.6, False), (1.0, True), (8.0, True), (9.0, False)])
def test_it_is_said_again_after_the_tone_and_soon(again_s: float, counts: bool) -> None:
    """"No, no" in one breath is one saying, and a film says "no" again after a while."""
    answers = Answers()
    take(answers, NO, SURE_DB - 1, 10)
    assert (text(take(answers, NO, SURE_DB - 1, 10 + again_s)) == "no") is counts


def test_another_word_does_not_confirm_the_first_and_neither_is_lost() -> None:
    """She says "yes", the film "no", and she "yes" again."""
    answers = Answers()
    assert [text(take(answers, each, SURE_DB - 1, at)) for at, each in ((10, YES), (11, NO), (13, YES))] == [
        "",
        "",
        "yes",
    ]


def test_what_is_softer_than_the_film_never_counts() -> None:
    """However often it is said, since a song repeats its words; and no tone tells of it."""
    answers = Answers()
    assert [text(take(answers, YES, AGAIN_DB - 1, at)) for at in (10, 13, 16)] == ["-", "-", "-"]


def test_a_loud_word_that_is_said_once_and_softly_once_does_not_count() -> None:
    """The soft one is the film's."""
    answers = Answers()
    assert [text(take(answers, YES, db, at)) for db, at in ((SURE_DB - 1, 10), (AGAIN_DB - 1, 13))] == ["", "-"]


def test_the_same_answer_in_other_words_is_said_again() -> None:
    """ "I do not know", the low tone, "I don't know"."""
    long, short = (Heard(text=each, score=0.9, is_answer=True, means="unsure") for each in ("long", "short"))
    answers = Answers()
    assert [text(take(answers, each, SURE_DB - 1, at)) for at, each in ((10, long), (13, short))] == ["", "short"]


def test_whatever_is_no_answer_counts_as_it_is() -> None:
    """A cue has rules of its own, and so has what was called and nothing more."""
    cue = Heard(text="next step", score=0.9)
    answers = Answers()
    assert take(answers, cue, -5, 10) is cue
    called = Heard(text="", score=0.0, goes_on=True)
    assert take(answers, called, -5, 11) is called


def test_in_a_room_that_is_not_known_yet_an_answer_is_said_twice() -> None:
    """A film may be on and just be silent."""
    answers = Answers()
    assert [text(take(answers, YES, None, at)) for at in (1, 4)] == ["", "yes"]


def test_a_cue_in_between_begins_anew() -> None:
    """She went on with something else, so that the "yes" from before is no half of an answer."""
    answers = Answers()
    take(answers, YES, SURE_DB - 1, 10)
    take(answers, Heard(text="next step", score=0.9), 20, 12)
    assert text(take(answers, YES, SURE_DB - 1, 14)) == ""


def test_an_answer_in_her_own_voice_counts_at_once_however_soft() -> None:
    """What tells a film's "yes" from hers is who says it; what was held back before is done with."""
    answers, hers = Answers(), replace(YES, hers=True)
    assert text(take(answers, YES, SURE_DB - 1, 7)) == ""
    assert take(answers, hers, AGAIN_DB - 3, 10) is hers
    assert text(take(answers, YES, SURE_DB - 1, 13)) == ""
