from __future__ import annotations

import pytest

from stepper.language.understanding.fault_vocabulary import FAULT_WORDINGS
from stepper.language.understanding.understand import understand
from stepper.language.understanding.vocabulary import VOCABULARY
from stepper.session import cues
from stepper.session.state import Seen
from tests.plans import final_increase
from tests.playbook import AT


def test_everything_that_can_be_seen_can_be_said() -> None:
    """She is asked what she sees; there must be words for every answer."""
    seen = {row.fixed["seen"] for row in FAULT_WORDINGS if row.cue is cues.Saw}

    assert seen == set(Seen)


def test_they_are_part_of_the_vocabulary() -> None:
    """One table feeds the recogniser, the help and the keyboard."""
    assert set(map(id, FAULT_WORDINGS)) <= set(map(id, VOCABULARY))


@pytest.mark.parametrize("said", ["I dropped a stitch", "I lost a stitch", "a stitch fell off", "I dropped a yarn over"])
def test_a_live_loop_is_understood_however_it_is_told(said: str) -> None:
    """It runs while she looks for the right words."""
    cue = understand(said, final_increase(), at=AT)
    assert isinstance(cue, cues.Saw)
    assert (cue.seen, cue.number) == (Seen.LOOP, 1)


@pytest.mark.parametrize(
    ("said", "number"),
    [
        *(("there is no loop", 0), ("there isn't a loose loop", 0), ("I can't see any loop", 0), ("I didn't drop a stitch", 0)),
        *(("it isn't caught", 1), ("the loop is not caught", 1)),
    ],
)
def test_that_there_is_no_loop_is_never_a_loop(said: str, number: int) -> None:
    """She is asked for it first, and would be sent to catch what is not there."""
    assert understand(said, final_increase(), at=AT, nearly=cues.Cue) == cues.Saw(at=AT, seen=Seen.LOOP, number=number)


@pytest.mark.parametrize(
    ("said", "back"),
    [("there is a mistake three rounds down", 3), ("I made a mistake two rows back", 2), ("I made a mistake in the last round", 1)],
)
def test_a_mistake_is_told_by_how_far_it_lies_below(said: str, back: int) -> None:
    """Nobody knows the number of the round she looks at."""
    assert understand(said, final_increase(), at=AT) == cues.FaultIn(at=AT, back=back)


def test_what_is_not_right_is_a_no() -> None:
    """Whatever was read back, it must not become a yes."""
    assert understand("that isn't right", final_increase(), at=AT, nearly=cues.Cue) == cues.No(at=AT)


@pytest.mark.parametrize("said", ["I miscounted", "I think I miscounted", "I counted wrong", "count again"])
def test_a_slip_in_counting_is_understood_however_it_is_told(said: str) -> None:
    """Counting once more costs least, and spoils nothing."""
    assert isinstance(understand(said, final_increase(), at=AT), cues.CountAgain)


@pytest.mark.parametrize("said", ["not now", "stop asking", "stop searching", "I'll look later", "leave the search"])
def test_a_search_is_left_however_it_is_told(said: str) -> None:
    """"Stop asking" is about the question, never about the evening."""
    assert understand(said, final_increase(), at=AT, nearly=cues.Cue) == cues.No(at=AT, later=True)


@pytest.mark.parametrize("said", ["I don't know", "I do not know", "I have no idea", "I am not sure"])
def test_not_to_know_is_an_answer(said: str) -> None:
    """A person says it more often than yes or no."""
    assert understand(said, final_increase(), at=AT, nearly=cues.Cue) == cues.No(at=AT, unsure=True)
