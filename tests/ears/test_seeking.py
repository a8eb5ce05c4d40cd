from __future__ import annotations

import math

import pytest

from stepper.ears.gate import CHUNK_S
from stepper.ears.ports import Place
from stepper.ears.seeking import Seeking

CHUNK_BYTES = 1024
BYTES_S = 32_000
ROOM_DB, NEAR_DB = -30.0, -25.0


class Finder:
    """Finds what it is told to, that far behind the beginning of the sound, and remembers what it looked into."""

    def __init__(self, *places: Place | None) -> None:
        self.places = places
        self.looked_into: list[float] = []

    def find(self, sound: bytes) -> Place | None:
        """Find the next; the last again and again."""
        self.looked_into.append(len(sound) / BYTES_S)
        return self.places[min(len(self.looked_into), len(self.places)) - 1]


class Said:
    """Finds a cue where it was said, in any window that holds its beginning; but for those that hide it."""

    def __init__(self, began_s: float, ended_s: float, *, may_go_on: bool, hidden_in_s: float = math.inf) -> None:
        self.began_s, self.ended_s, self.may_go_on, self.hidden_in_s = began_s, ended_s, may_go_on, hidden_in_s
        self.now_s = 0.0
        self.looked_into: list[float] = []

    def find(self, sound: bytes) -> Place | None:
        """Find it as far as it is said."""
        length_s = len(sound) / BYTES_S
        self.looked_into.append(length_s)
        first_s = self.now_s - length_s
        if not first_s <= self.began_s < self.now_s or length_s > self.hidden_in_s:
            return None
        so_far_s = min(self.now_s, self.ended_s)  # of a number there is a whole one mostly
        end_s = so_far_s - first_s if self.may_go_on or so_far_s == self.ended_s else None
        return Place(start_s=self.began_s - first_s, end_s=end_s, may_go_on=self.may_go_on, fit=0.0)

    def play(self, seeking: Seeking, seconds: float, level_db: float) -> list[bytes]:
        """Let sound of one loudness pass; return what was cut out."""
        cuts = []
        for _ in range(round(seconds / CHUNK_S)):
            self.now_s += CHUNK_S
            cuts.append(seeking.take(bytes(CHUNK_BYTES), level_db))
        return [cut for cut in cuts if cut is not None]


def play(seeking: Seeking, seconds: float, level_db: float) -> list[bytes]:
    """Let sound of one loudness pass; return what was cut out."""
    cuts = [seeking.take(bytes(CHUNK_BYTES), level_db) for _ in range(round(seconds / CHUNK_S))]
    return [cut for cut in cuts if cut is not None]


def test_sound_as_loud_as_it_mostly_is_is_not_looked_into() -> None:
    """The networks cost most of the processor's time, and a film goes on for two hours."""
    finder = Finder(None)
    seeking = Seeking(finder.find)
    assert play(seeking, 20.0, ROOM_DB) == []
    assert finder.looked_into == []


@pytest.mark.parametrize(("film_db", "is_looked_into"), [(-36.0, True), (-28.0, False)])
def test_after_a_talk_of_her_own_what_is_far_louder_than_a_moment_ago_is_looked_into(
    film_db: float, is_looked_into: bool
) -> None:
    """Her own talk was most of the last 15 s, so that nothing is louder than that; the film is what she falls to."""
    finder = Finder(None)
    seeking = Seeking(finder.find)
    play(seeking, 20, film_db)
    play(seeking, 14, NEAR_DB)
    play(seeking, 2.5, film_db)
    before = len(finder.looked_into)
    play(seeking, 1, NEAR_DB)
    assert (len(finder.looked_into) > before) is is_looked_into


def test_a_line_behind_a_pause_of_a_film_is_not_looked_into() -> None:
    """It is as loud as the film mostly was in the last minutes, though not in the last moment."""
    finder = Finder(None)
    seeking = Seeking(finder.find)
    for _ in range(6):
        play(seeking, 12, NEAR_DB)
        play(seeking, 2.5, -36.0)
    before = len(finder.looked_into)
    play(seeking, 1, NEAR_DB)
    assert len(finder.looked_into) == before


def test_what_stands_clear_of_the_room_is_left_to_the_gate() -> None:
    """In a quiet room the gate knows where her words end, and a second opinion would only come before it."""
    finder = Finder(None)
    seeking = Seeking(finder.find)
    play(seeking, 15.0, ROOM_DB)
    assert play(seeking, 3.0, ROOM_DB + 20) == []
    assert len(finder.looked_into) <= 2
    # the loudest third of the last 1.3 s rises in steps, one of which may lie between


def test_what_is_louder_is_looked_into_every_four_tenths_of_a_second_without_the_word_in_a_small_window() -> (
    None
):
    """Two and a half seconds hold the address word; what was said with it is looked for only once it is there."""
    finder = Finder(None)
    seeking = Seeking(finder.find)
    play(seeking, 15.0, ROOM_DB)
    assert play(seeking, 3.0, NEAR_DB) == []
    assert 5 <= len(finder.looked_into) <= 8
    assert max(finder.looked_into) == pytest.approx(2.4, abs=CHUNK_S)


def test_while_cues_alone_count_what_goes_on_is_looked_into_half_as_often_and_what_falls_at_once() -> None:
    """Nothing can be over while the sound goes on, and a film does all evening; she waits for the answer."""
    finder = Finder(None)
    seeking = Seeking(finder.find, lambda: True)
    play(seeking, 15.0, ROOM_DB)
    play(seeking, 3.0, NEAR_DB)
    assert 2 <= len(finder.looked_into) <= 4
    before = len(finder.looked_into)
    play(seeking, 0.4, NEAR_DB - 5)
    assert len(finder.looked_into) > before


def test_a_cue_that_is_over_is_cut_out_with_a_little_around_it() -> None:
    """From a quarter second before the word to 0.22 s behind the cue, out of the wide window."""
    seeking = Seeking(Finder(*[Place(start_s=2.0, end_s=3.5, may_go_on=False)] * 2, None).find)
    play(seeking, 15.0, ROOM_DB)
    first, *_ = play(seeking, 1.0, NEAR_DB)
    assert len(first) / BYTES_S == pytest.approx(0.25 + 1.5 + 0.22, abs=0.001)


@pytest.mark.parametrize(
    ("place", "is_cut"),
    [
        (Place(start_s=2.0, end_s=4.55, may_go_on=False), True),
        (Place(start_s=2.0, end_s=4.75, may_go_on=False), False),
        (Place(start_s=2.0, end_s=4.0, may_go_on=True), True),
        (Place(start_s=2.0, end_s=4.2, may_go_on=True), False),
        (Place(start_s=2.0, end_s=None, may_go_on=True), False),
    ],
    ids=["a cue, over", "a cue, just said", "a number, over", "a number that may go on", "the word alone"],
)
def test_what_may_still_go_on_is_waited_for(place: Place, is_cut: bool) -> None:
    """ "Count is two hundred" is no count before 0.9 s have passed; "stepper" alone never is a cue."""
    seeking = Seeking(Finder(place, place, None).find)
    play(seeking, 15.0, ROOM_DB)
    assert bool(play(seeking, 0.6, NEAR_DB)) is is_cut


def test_after_the_word_it_is_looked_on_though_she_is_no_louder_by_then() -> None:
    """For two seconds, in the wide window, or the soft end of a cue would be missed."""
    finder = Finder(*[Place(start_s=0.0, end_s=None, may_go_on=True)] * 3, None)
    seeking = Seeking(finder.find)
    play(seeking, 15.0, ROOM_DB)
    play(seeking, 0.6, NEAR_DB)
    before = len(finder.looked_into)
    play(seeking, 6.0, ROOM_DB - 20)
    assert before + 3 <= len(finder.looked_into) <= before + 6


def test_where_the_word_was_seen_to_begin_it_is_looked_from_then_on() -> None:
    """In a wide window what a film says hides what she says: "go by marker" fitted at 0 in the narrow one, and at the next
    look not at all in the wide one."""
    said = Said(15.5, 16.7, may_go_on=False, hidden_in_s=2.5)
    seeking = Seeking(said.find)
    said.play(seeking, 15.5, ROOM_DB)
    cut = list[bytes]()
    while not cut and said.now_s < 18.5:
        cut = said.play(seeking, CHUNK_S, NEAR_DB)
    assert len(cut[0]) / BYTES_S == pytest.approx(0.25 + 1.2 + 0.22, abs=2 * CHUNK_S)
    assert max(said.looked_into) == pytest.approx(5.0, abs=CHUNK_S)
    assert said.looked_into[-1] == pytest.approx(said.now_s - 15.5 + 0.25, abs=2 * CHUNK_S)


def test_of_what_the_windows_show_the_whole_cue_that_fits_best_is_taken() -> None:
    """A window with more of the film in it shows half of a cue, or another."""
    whole = Place(start_s=1.0, end_s=1.9, may_go_on=False, fit=-0.4)
    others = (
        Place(start_s=1.0, end_s=None, may_go_on=True, fit=0.0),
        Place(start_s=2.0, end_s=3.1, may_go_on=False, fit=-3.0),
    )
    for other in others:
        seeking = Seeking(Finder(whole, other, other).find)
        play(seeking, 15.0, ROOM_DB)
        cut, *_ = play(seeking, 0.6, NEAR_DB)
        assert len(cut) / BYTES_S == pytest.approx(0.25 + 0.9 + 0.22, abs=0.001)


def test_a_count_that_takes_longer_than_two_seconds_is_looked_at_until_it_is_over() -> None:
    """ "Stepper, i have two hundred and fifty seven stitches" takes three, and is soft at its end by then: 12 of 64
    counts behind the word were lost so, 10 dB above a film."""
    said = Said(15.1, 18.1, may_go_on=True)
    seeking = Seeking(said.find)
    said.play(seeking, 15.0, ROOM_DB)
    assert said.play(seeking, 0.6, NEAR_DB) == []
    cut, *_ = said.play(seeking, 4.0, ROOM_DB - 20)
    assert len(cut) / BYTES_S == pytest.approx(0.25 + 3.0 + 0.22, abs=2 * CHUNK_S)


def test_what_is_dealt_with_is_not_heard_again() -> None:
    """A cue must step once, however often the window still holds it."""
    finder = Finder(None)
    seeking = Seeking(finder.find)
    play(seeking, 15.0, ROOM_DB)
    seeking.forget()
    play(seeking, 0.5, NEAR_DB)
    assert finder.looked_into
    assert max(finder.looked_into) <= 0.5


def test_while_a_count_is_being_said_the_wide_window_is_looked_into_however_soft_its_end() -> None:
    """Two seconds and a half do not hold "my count is two hundred and seventy nine" and the wait behind it."""
    seeking = Seeking(Finder(None).find, lambda: True)
    play(seeking, 15.0, ROOM_DB)
    looks = list[float]()

    def listen_on(seconds: float, level_db: float) -> None:
        for _ in range(round(seconds / CHUNK_S)):
            seeking.take(bytes(CHUNK_BYTES), level_db)
            if seeking.looked_into:
                looks.append(len(seeking.looked_into) / BYTES_S)

    listen_on(1.0, NEAR_DB)
    assert looks
    assert max(looks) == pytest.approx(2.4, abs=CHUNK_S)
    seeking.await_more()
    looks.clear()
    listen_on(4.0, ROOM_DB - 2)
    assert 4 <= sum(each == pytest.approx(5.0, abs=CHUNK_S) for each in looks) <= 6
    seeking.await_more()
    seeking.forget()
    looks.clear()
    listen_on(1.0, ROOM_DB - 2)
    assert looks == []


def test_a_short_number_is_waited_for_in_the_narrow_window() -> None:
    """ "Four six" and the wait behind it stand in 2.4 s, and the wide window costs more than twice the time."""
    seeking = Seeking(Finder(None).find, lambda: True)
    play(seeking, 15.0, ROOM_DB)
    seeking.await_more(is_long=False)
    looks = list[float]()
    for _ in range(round(3.0 / CHUNK_S)):
        seeking.take(bytes(CHUNK_BYTES), ROOM_DB - 2)
        if seeking.looked_into:
            looks.append(len(seeking.looked_into) / BYTES_S)
    assert 4 <= len(looks) <= 6
    assert max(looks) == pytest.approx(2.4, abs=CHUNK_S)


def test_what_has_been_over_for_long_is_neither_cut_out_nor_in_the_way_of_what_is_said_next() -> None:
    """Three seconds later she has said it again, or something else, and it would be taken for the answer."""
    long_over = Place(start_s=1.0, end_s=2.0, may_go_on=False)
    finder = Finder(long_over, long_over, None, Place(start_s=1.0, end_s=None, may_go_on=False))
    seeking = Seeking(finder.find)
    play(seeking, 15.0, ROOM_DB)
    assert play(seeking, 1.0, NEAR_DB) == []
    _, first, _, _, then, *_ = finder.looked_into
    assert first == pytest.approx(5.0, abs=CHUNK_S)
    assert then < 5.0 - 2.0 + 0.5
