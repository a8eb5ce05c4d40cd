from __future__ import annotations

import pytest

from stepper.ears.over_speech import (
    KNOWN_CHUNKS,
    NEAR_CHUNKS,
    NEARER_DB,
    SETTLING_CHUNKS,
    WITHIN_CHUNKS,
    OverSpeech,
)

FILM_DB, LEFT_DB = -40.0, -60.0
"""How loud a film is, and what the canceller usually leaves."""


def in_a_room(level_db: float = FILM_DB, left_db: float = LEFT_DB) -> OverSpeech:
    """Listen to a room for a while, and to what is left of the program's own voice in it."""
    over = OverSpeech()
    for _ in range(KNOWN_CHUNKS + 16):
        over.take(left_db, 0.0)
    for _ in range(200):
        over.take_room(level_db)
    return over


def noticed_after(over: OverSpeech, chunks: list[tuple[float, float]]) -> int | None:
    """Return after how many chunks somebody near is noticed; None if never."""
    return next((at for at, chunk in enumerate(chunks, 1) if over.take(*chunk)), None)


def test_somebody_near_is_noticed_within_a_fifth_of_a_second() -> None:
    """She wants it to stop when she begins, not when she has said it all."""
    assert noticed_after(in_a_room(), [(-25.0, 0.9)] * 10) == NEAR_CHUNKS
    assert NEAR_CHUNKS * 0.032 <= 0.2


def test_she_is_noticed_where_the_canceller_leaves_every_second_chunk_of_her() -> None:
    """What takes the program's voice away takes some of hers too."""
    assert noticed_after(in_a_room(), [(-25.0, 0.9), (-70.0, 0.0)] * 5) is not None


@pytest.mark.parametrize(
    ("level_db", "speech"),
    [
        (FILM_DB + NEARER_DB - 1, 0.99),  # a film talks on, as loud as before
        (-20.0, 0.2),  # what is left of the program's own voice, or a cup put down
    ],
)
def test_neither_a_film_nor_noise_is_taken_for_her(level_db: float, speech: float) -> None:
    """Each stop for nothing costs her a sentence said twice."""
    assert noticed_after(in_a_room(), [(level_db, speech)] * 300) is None


def test_a_word_that_jumps_out_of_a_film_is_too_short() -> None:
    """A shout in a film is over soon."""
    shout = [(-25.0, 0.9)] * (NEAR_CHUNKS - 1) + [(FILM_DB, 0.9)] * WITHIN_CHUNKS
    assert noticed_after(in_a_room(), shout * 5) is None


def test_her_own_words_are_no_room() -> None:
    """Cue upon cue, each answered by a step: her voice must not become what she has to be louder than."""
    over = in_a_room(-60.0)
    for _ in range(10):
        for _ in range(20):
            over.take_room(-60.0)
        for _ in range(30):
            over.take_room(-25.0)
        over.leave_out_her_words()
    assert over.matters(-25.0)


def test_nobody_is_noticed_before_it_is_known_what_is_left_of_its_own_voice() -> None:
    """The canceller needs some seconds to find the echo; until then its own words are left, and are speech."""
    over = OverSpeech()
    assert noticed_after(over, [(-25.0, 0.9)] * (KNOWN_CHUNKS - 1)) is None


def test_where_a_device_was_late_nobody_is_noticed_until_the_echo_is_found_anew() -> None:
    """What is left for some seconds then is the program's own words, as loud as they come."""
    over = in_a_room()
    over.unsettle()
    assert noticed_after(over, [(-25.0, 0.9)] * SETTLING_CHUNKS) is None
    assert noticed_after(over, [(-25.0, 0.9)] * NEAR_CHUNKS) is not None


def test_where_much_is_left_she_has_to_be_louder_than_that() -> None:
    """A room that echoes for long: better not to be noticed there than to stop it for its own echo."""
    loud = [(-25.0, 0.9)] * 20
    assert noticed_after(in_a_room(-60.0, left_db=-27.0), loud) is None
    assert noticed_after(in_a_room(-60.0, left_db=-35.0), loud) is not None


def test_silence_between_lines_begins_anew() -> None:
    """Half a word over one line and half over the next are not one."""
    over = in_a_room()
    assert noticed_after(over, [(-25.0, 0.9)] * (NEAR_CHUNKS - 1)) is None
    over.take_room(FILM_DB)
    assert noticed_after(over, [(-25.0, 0.9)] * (NEAR_CHUNKS - 1)) is None
