from __future__ import annotations

import pytest

from stepper.ears.gate import CHUNK_S
from stepper.ears.loudness import Loudness


def heard(*stretches: tuple[float, float]) -> Loudness:
    """Let stretches of sound pass: how long, and how loud."""
    loudness = Loudness()
    for seconds, level_db in stretches:
        for _ in range(round(seconds / CHUNK_S)):
            loudness.take(level_db)
    return loudness


def test_where_she_ends_the_sound_falls_to_what_is_behind() -> None:
    """By hand: a cue of 1 s at -20 dB, 0.4 s of a film at -30 dB behind it."""
    assert heard((10, -30), (1, -20), (0.4, -30)).fall_db(1.4, 0.4) == pytest.approx(10)


def test_a_film_s_own_words_that_go_on_do_not_fall() -> None:
    """A cue cut out of a sentence has the rest of the sentence behind it, as loud as itself."""
    assert heard((10, -30), (1.4, -20)).fall_db(1.4, 0.4) == pytest.approx(0)


def test_the_end_of_its_last_sound_is_not_yet_what_is_behind() -> None:
    """A voice takes a tenth of a second to die away, and its end is no film."""
    assert heard((10, -40), (1, -20), (0.09, -21), (0.3, -40)).fall_db(1.4, 0.4) == pytest.approx(20, abs=0.5)


def test_nothing_is_told_before_anything_is_behind() -> None:
    """A tenth of a second after a cue nobody knows whether it goes on."""
    assert heard((10, -30), (1, -20), (0.1, -30)).fall_db(1.1, 0.1) is None
    assert Loudness().fall_db(1.0, 0.4) is None


def test_her_cue_stands_above_the_loud_stretches_of_the_room() -> None:
    """By hand: talk at -30 dB for half of the time, silence for the other; its loud thirds are all talk."""
    talk = ((0.4, -30), (0.4, -60)) * 20
    assert heard(*talk, (1, -24), (0.4, -60)).above_db(1.4, 0.4) == pytest.approx(6)


def test_what_was_longer_ago_than_three_quarters_of_a_minute_is_no_longer_the_room() -> None:
    """A film that is turned down must not keep her from being heard for long."""
    assert heard((20, -10), (44, -40), (1, -24), (0.4, -40)).above_db(1.4, 0.4) == pytest.approx(16)


def test_nothing_stands_above_a_room_that_nobody_has_heard_yet() -> None:
    """The very first sound has nothing to stand out of."""
    assert heard((1, -24), (0.4, -40)).above_db(1.5, 0.4) is None


def test_a_short_word_is_measured_by_its_loudest_sound_against_the_loudest_of_each_stretch_before() -> None:
    """By hand: talk in bursts at -30 dB, a word of a fifth of a second at -20 dB."""
    talk = ((0.4, -30), (0.4, -60)) * 20
    assert heard(*talk, (0.2, -20), (0.4, -60)).over_room_db(0.55, 0.45) == pytest.approx(10)


def test_one_loud_line_of_a_film_counts_for_little() -> None:
    """A shout of a second within forty at -30 dB: nine in ten of the stretches are without it."""
    talk = ((20, -30), (1, -12), (20, -30))
    assert heard(*talk, (0.2, -20), (0.4, -60)).over_room_db(0.55, 0.45) == pytest.approx(10)


def test_what_was_hers_is_no_room_for_her_next_word() -> None:
    """She said three cues within the last half minute, each as loud as the next."""
    loudness = heard((10, -50))
    for _ in range(3):
        for level_db in [-20.0] * 40 + [-50.0] * 15:
            loudness.take(level_db)
        loudness.leave_out(55 * CHUNK_S)
    for level_db in [-50.0] * 40 + [-20.0] * 6 + [-50.0] * 12:
        loudness.take(level_db)
    assert loudness.over_room_db(17 * CHUNK_S, 13 * CHUNK_S) == pytest.approx(30)


@pytest.mark.parametrize(("seconds", "silent_s", "over_db"), [(60, 60, 10), (60, 295, 40), (5, 60, 40)])
def test_a_film_that_was_silent_for_a_minute_is_not_forgotten(
    seconds: float, silent_s: float, over_db: float
) -> None:
    """By hand: talk at -30 dB for a minute, silence at -60 dB, a word at -20 dB. Five minutes later it is forgotten,
    and so is what lasted for a few seconds, as a call from the next room does."""
    talk = ((0.4, -30), (0.4, -60)) * round(seconds / 0.8)
    room = heard(*talk, (silent_s, -60), (0.2, -20), (0.4, -60))
    assert room.over_room_db(0.55, 0.45) == pytest.approx(over_db)


def test_a_room_that_was_heard_for_a_few_seconds_is_not_known() -> None:
    """Nine and a half seconds are too few, eleven are enough."""
    for seconds, is_known in ((9.5, False), (11, True)):
        room = heard((seconds, -50), (0.2, -20), (0.4, -60))
        assert (room.over_room_db(0.55, 0.45) is not None) is is_known


HER_TALK = ((10, -60), *((1.2, -20), (0.8, -60)) * 20, (5, -60))
"""Forty seconds of her own voice at -20 dB in a quiet room, and five of silence."""


@pytest.mark.parametrize(("word_db", "over_db"), [(-22, 0), (-26, 0), (-29, -9), (-17, 3)])
def test_in_silence_her_answer_is_no_softer_than_her_own_talk_before(word_db: float, over_db: float) -> None:
    """She talked with somebody: her own voice was what was loud, and an answer in a word is 2 dB softer. One that
    is much softer may come from the next room."""
    room = heard(*HER_TALK, (0.3, word_db), (0.4, -60))
    assert room.over_room_db(0.65, 0.45) == pytest.approx(over_db)


@pytest.mark.parametrize(
    ("before", "behind"), [((0.8, -60), (0.4, -30)), ((0.8, -30), (0.4, -60)), ((1.2, -36), (0.4, -36))]
)
def test_a_film_s_word_stands_in_no_silence(before: tuple[float, float], behind: tuple[float, float]) -> None:
    """By hand: its sentence before it, its sentence behind it, or its music 14 dB softer around it."""
    room = heard(*HER_TALK, (0.5, -30), before, (0.3, -22), behind)
    assert room.over_room_db(0.65, 0.45) == pytest.approx(-2)
