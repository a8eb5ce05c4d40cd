from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.ears.early import Early
from stepper.ears.gate import Gate
from stepper.ears.ports import Heard

CHUNK = bytes(1024)
CUE = Heard(text="next step", score=1.0)
QUIET = [(False, -60.0)]
SAID = [(True, -30.0)] * 25


class Listener:
    """A gate with a look ahead, which remembers what it was asked about."""

    def __init__(self, heard: Heard | None) -> None:
        self.gate = Gate()
        self.asked: list[bytes] = []
        self.heard = heard
        self.hears_alone = self.goes_on = False
        self.followed: list[bytes] = []
        self.early = Early(
            self.gate, self._recognise, hears_alone=lambda: self.hears_alone, goes_on=self._goes_on
        )

    def _recognise(self, segment: bytes) -> Heard | None:
        self.asked.append(segment)
        return self.heard

    def _goes_on(self, segment: bytes, heard: Heard) -> bool:
        self.followed.append(segment)
        return self.goes_on

    def take(self, chunks: list[tuple[bool, float]]) -> list[tuple[int, str]]:
        """Return what is known early, each with the number of the chunk by which it is."""
        found = []
        for at, (speech, level_db) in enumerate(chunks):
            if self.gate.take(CHUNK, speech=speech, level_db=level_db) is not None:
                found.append((at, "whole"))
            heard = self.early.take()
            if heard is not None:
                found.append((at, heard.text))
        return found


def test_a_cue_is_known_after_a_fifth_of_a_second_and_its_silence_ends_nothing_more() -> None:
    """She waits for the answer with her hands full; six chunks of 32 ms are enough, where the gate needs twelve."""
    listener = Listener(CUE)
    assert listener.take([*QUIET * 30, *SAID, *QUIET * 40]) == [(30 + 25 + 5, "next step")]
    assert not listener.gate.is_open
    assert listener.take([*SAID, *QUIET * 40]) == [(25 + 5, "next step")], "the next cue opens it again"


def test_it_is_recognised_while_the_silence_lasts() -> None:
    """Recognition takes as long as the silence needs to be sure of, so neither waits for the other."""
    listener = Listener(CUE)
    assert listener.take([*QUIET * 30, *SAID, *QUIET * 3]) == []
    assert len(listener.asked) == 1


def test_near_a_film_a_silence_that_does_not_last_costs_nothing() -> None:
    """It is recognised once the silence is sure, in the very sound that would have been taken before."""
    listener, room = Listener(replace(CUE, addressed=True)), [(False, -40.0)]
    assert listener.take([*room * 60, *SAID, *room * 5, *SAID]) == []
    assert listener.asked == []
    assert listener.take(room * 8) == [(5, "next step")]
    assert len(listener.asked) == 1
    quiet = Listener(CUE)
    quiet.take([*QUIET * 60, *SAID, *QUIET * 5, *SAID, *QUIET * 3])
    assert len(quiet.asked) == 2
    assert len(quiet.asked[1]) == len(listener.asked[0])


def test_a_film_that_talks_on_for_longer_than_a_cue_is_not_looked_at_anew_at_each_of_its_pauses() -> None:
    """The gate drops what is longer than five seconds; a look takes the longer the longer the film has talked."""
    listener, room = Listener(None), [(False, -40.0)]
    line = [*[(True, -30.0)] * 50, *room * 7]  # behind each a pause of 0.22 s, which is sure and ends nothing
    assert listener.take([*room * 60, *line * 6]) == []
    assert listener.gate.is_open
    seconds = [len(each) / 32_000 for each in listener.asked]
    assert len(seconds) == 3
    assert max(seconds) <= 6


def test_what_is_no_whole_cue_ends_as_it_always_did() -> None:
    """A number may go on, and what was not understood may be more of something."""
    listener = Listener(None)
    assert listener.take([*QUIET * 30, *SAID, *QUIET * 40]) == [(30 + 25 + 11, "whole")]


def test_a_stop_within_a_word_ends_nothing() -> None:
    """ "Next st-ep": a sixth of a second of silence between, and all of it is one utterance."""
    listener = Listener(CUE)
    parted = [*QUIET * 30, *SAID, *QUIET * 5, *SAID]
    assert listener.take(parted) == []
    assert listener.take(QUIET * 40) == [(5, "next step")]
    assert len(listener.asked[-1]) > 2 * 25 * len(CHUNK)


@pytest.mark.parametrize(("addressed", "known"), [(True, [(60 + 25 + 5, "next step")]), (False, [])])
def test_where_a_film_is_near_only_what_has_the_address_word_is_known_early(
    addressed: bool, known: list[tuple[int, str]]
) -> None:
    """A film 10 dB softer pauses within its sentences, and "next step" may be the beginning of one."""
    listener = Listener(Heard(text="next step", score=1.0, addressed=addressed))
    room = [(False, -40.0)]
    assert listener.take([*room * 60, *SAID, *room * 8]) == known


def test_near_a_film_it_is_not_even_looked_at_while_the_address_word_is_not_asked_for() -> None:
    """It would not be taken without the word, and a film pauses all evening."""
    listener = Listener(CUE)
    listener.hears_alone = True
    room = [(False, -40.0)]
    assert listener.take([*room * 60, *SAID, *room * 8]) == []
    assert listener.asked == []
    quiet = Listener(CUE)
    quiet.hears_alone = True
    assert quiet.take([*QUIET * 30, *SAID, *QUIET * 8]) == [(30 + 25 + 5, "next step")]


def test_what_goes_on_with_other_talk_is_not_known_early() -> None:
    """Somebody in the room says "… and that is the next step", with a pause in it."""
    listener = Listener(None)
    talk = [(True, -30.0)] * 15
    assert listener.take([*QUIET * 30, *talk, *QUIET * 12]) == [(30 + 15 + 11, "whole")]
    listener.heard = CUE
    assert listener.take([*talk, *QUIET * 8]) == []
    assert len(listener.asked) == 2


def test_what_goes_on_behind_a_short_silence_ends_with_the_whole_one() -> None:
    """ "Step back from there": a stop and a soft sound are as silent as the end; all that followed is told."""
    listener = Listener(CUE)
    listener.goes_on = True
    assert listener.take([*QUIET * 30, *SAID, *QUIET * 40]) == [(30 + 25 + 11, "whole")]
    assert len(listener.followed) == 1
    assert len(listener.followed[0]) - len(listener.asked[0]) == 3 * len(CHUNK)
