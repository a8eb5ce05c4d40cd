from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.ears.gate import CHUNK_S
from stepper.ears.loudness import Loudness
from stepper.ears.ports import FoundAlone, Heard
from stepper.ears.seeking_alone import SeekingAlone

SOUND = bytes(32_000 * 2)
CUE = FoundAlone(text="what happened", start_s=0.7, end_s=1.6, fit=0.0, length=9, before=0, behind=0)
HEARD = Heard(text="what happened", score=1.0)


def look(
    found: FoundAlone | None, heard: Heard | None = HEARD, behind_db: float = -29.0
) -> tuple[Heard | None, list[float]]:
    """Look through two seconds; return what was taken, and the lengths of what was recognised. Unit: s."""
    loudness, cut = Loudness(), list[float]()
    for at in range(round(20 / CHUNK_S)):
        ago = 20 - at * CHUNK_S
        loudness.take(-20.0 if 0.4 < ago <= 1.3 else behind_db if ago <= 0.4 else -24.0)

    def recognise(segment: bytes) -> Heard | None:
        cut.append(len(segment) / 32_000)
        return heard

    return SeekingAlone(lambda sound: found, recognise, loudness).look(SOUND), cut


def test_a_cue_that_is_over_and_stands_out_is_taken() -> None:
    """It is cut out with a quarter second before it and 0.22 s behind, and recognised like any other."""
    taken, cut = look(CUE)
    assert taken == HEARD
    assert cut == [pytest.approx(0.25 + 0.9 + 0.22, abs=0.001)]


@pytest.mark.parametrize(
    "found",
    [None, replace(CUE, end_s=1.75), replace(CUE, start_s=0.1, end_s=1.0), replace(CUE, behind=4)],
    ids=["nothing there", "just said", "long over", "in a sentence"],
)
def test_what_is_not_hers_by_its_sounds_is_not_even_recognised(found: FoundAlone | None) -> None:
    """The decoder takes most of the time, and a film says such things all evening."""
    assert look(found) == (None, [])


def test_where_the_sound_does_not_fall_nothing_is_taken() -> None:
    """The film that said it goes on as loud."""
    assert look(CUE, behind_db=-21.0) == (None, [])


@pytest.mark.parametrize(
    "heard",
    [
        None,
        replace(HEARD, text="what happened here"),
        replace(HEARD, score=0.6),
        replace(HEARD, addressed=True),
    ],
    ids=["nothing", "something else", "unsure", "with the address word"],
)
def test_what_was_found_has_to_be_heard_again_once_it_is_cut_out(heard: Heard | None) -> None:
    """Two opinions on one sound: amid other sound, and alone."""
    taken, cut = look(CUE, heard)
    assert taken is None
    assert len(cut) == 1


COUNT = replace(CUE, text="i count forty", length=12, has_number=True, clear=8.0)
HEARD_COUNT = replace(HEARD, text="i count forty")


def test_a_count_has_to_be_over_for_longer_than_a_cue_and_longest_where_it_may_go_on() -> None:
    """ "Two hundred", a breath, "forty six": half a number, taken, is a hunt for a fault that is not there."""

    def is_taken(over_s: float, *, may_go_on: bool) -> bool:
        loudness = Loudness()
        for at in range(round(20 / CHUNK_S)):
            ago = 20 - at * CHUNK_S
            loudness.take(-20.0 if over_s < ago <= over_s + 0.9 else -30.0 if ago <= over_s else -24.0)
        end_s = 2.0 - over_s
        found = replace(COUNT, start_s=end_s - 0.9, end_s=end_s, may_go_on=may_go_on)
        seeking = SeekingAlone(lambda sound: found, lambda segment: HEARD_COUNT, loudness)
        return seeking.look(SOUND) is not None

    assert [is_taken(over_s, may_go_on=False) for over_s in (0.4, 0.6, 1.0)] == [False, True, True]
    assert [is_taken(over_s, may_go_on=True) for over_s in (0.6, 0.8, 1.0)] == [False, False, True]


def count_said(behind_db: float) -> Loudness:
    """Return how loud it was with a count 1 s ago, and this loud since."""
    loudness = Loudness()
    for at in range(round(20 / CHUNK_S)):
        ago = 20 - at * CHUNK_S
        loudness.take(-20.0 if 1.0 < ago <= 1.9 else behind_db if ago <= 1.0 else -24.0)
    return loudness


def look_for_count(
    found: FoundAlone, behind_db: float = -30.0, heard: Heard | None = HEARD_COUNT, whole: Heard | None = None
) -> Heard | None:
    """Look through two seconds with a count 1 s before their end; `whole` is what is heard with all behind it."""
    found = replace(found, start_s=0.3, end_s=1.0)
    answers = iter([heard, whole])
    return SeekingAlone(lambda sound: found, lambda segment: next(answers), count_said(behind_db)).look(SOUND)


def test_a_number_needs_a_clearer_win_than_a_cue() -> None:
    """ "Forty" and "fourteen" a little apart are asked for again; a cue beside its rivals is not."""
    assert look_for_count(COUNT) == HEARD_COUNT
    assert look_for_count(replace(COUNT, clear=5.0)) is None
    assert look_for_count(replace(COUNT, behind=3), behind_db=-36.0) is None


@pytest.mark.parametrize(
    ("found", "hers", "taken"),
    [
        (replace(COUNT, clear=5.0), True, True),
        (replace(COUNT, clear=5.0), False, False),
        (replace(COUNT, clear=2.0), True, False),
        (replace(COUNT, clear=5.0, is_answer=True), True, False),
    ],
    ids=["hers", "unsure whose", "hardly told from another", "a bare number in answer"],
)
def test_a_number_of_a_voice_that_is_known_needs_less_of_a_win(
    found: FoundAlone, hers: bool, taken: bool
) -> None:
    """A film's own are what the clearer win is for; who says it is asked before the number is recognised."""
    cut = list[bytes]()

    def recognise(segment: bytes) -> Heard:
        cut.append(segment)
        return replace(HEARD_COUNT, hers=hers)

    found = replace(found, start_s=0.3, end_s=1.0)
    heard = SeekingAlone(lambda sound: found, recognise, count_said(-30.0), lambda sound: hers).look(SOUND)
    assert (heard is not None, len(cut)) == (taken, taken)


def test_a_number_that_goes_on_is_not_taken_without_its_end() -> None:
    """What follows as loud is its rest, and so is what makes another number of it."""
    may_go_on = replace(COUNT, may_go_on=True)
    assert look_for_count(may_go_on) == HEARD_COUNT
    assert look_for_count(may_go_on, behind_db=-27.0) is None
    assert look_for_count(COUNT, behind_db=-27.0) == HEARD_COUNT
    assert look_for_count(may_go_on, whole=replace(HEARD_COUNT, text="i count forty two")) is None
    assert look_for_count(may_go_on, whole=replace(HEARD_COUNT, text="")) == HEARD_COUNT


@pytest.mark.parametrize(("fit", "sees"), [(-2.0, True), (-9.0, False)])
def test_only_what_is_surely_a_number_is_waited_for(fit: float, sees: bool) -> None:
    """The longer stretch costs more than twice the time, and a film often has something a little like a number."""
    found = replace(COUNT, fit=fit, end_s=1.9)
    seeking = SeekingAlone(lambda sound: found, lambda segment: None, Loudness())
    assert seeking.look(SOUND) is None
    assert seeking.sees_number == sees


DIGIT = FoundAlone(
    text="two", start_s=1.4, end_s=1.8, fit=0.0, length=2, before=4, behind=4,
    is_answer=True, has_number=True, may_go_on=True, clear=8.0,
)  # fmt: skip


@pytest.mark.parametrize(
    ("found", "own_db", "sees", "is_long"),
    [
        (DIGIT, -24.0, False, False),
        (DIGIT, -14.0, True, False),
        (replace(DIGIT, text="two two five", start_s=0.5, length=9), -14.0, True, True),
        (replace(DIGIT, is_answer=False), -24.0, True, True),
    ],
    ids=["as loud as the film", "near", "near and long", "a count with its words"],
)
def test_a_bare_number_is_waited_for_only_where_it_may_be_hers(
    found: FoundAlone, own_db: float, sees: bool, is_long: bool
) -> None:
    """A film says "two" or "for" all the time; waiting for the rest of each doubled what an open question cost.

    By hand for a digit amid other words that stands 8 dB out and behind which the sound will have fallen far:
    7.5 - 0.48 × 4 + 0.55 × 4 + 0.52 × 14 + 0.40 × 8 - 17.8 - 0.5 + 2.1 = 2.06; 2 dB below the room, 0.40 × 10
    less: -1.94.
    """
    loudness = Loudness()
    for at in range(round(20 / CHUNK_S)):
        ago = 20 - at * CHUNK_S
        own = 2.0 - found.end_s < ago <= 2.0 - found.start_s
        loudness.take(own_db if own else -22.0)
    seeking = SeekingAlone(lambda sound: found, lambda segment: None, loudness)
    assert seeking.look(SOUND) is None
    assert (seeking.sees_number, seeking.sees_long_number) == (sees, is_long)


def test_another_wording_of_the_same_count_agrees() -> None:
    """ "I count" and "I counted" mean the same; another number does not."""
    found = replace(COUNT, alike=frozenset({"i counted forty"}))
    counted = replace(HEARD_COUNT, text="i counted forty")
    assert look_for_count(found, heard=counted) == counted
    assert look_for_count(COUNT, heard=counted) is None


@pytest.mark.parametrize("hers", [True, False])
def test_what_hardly_stands_out_is_taken_from_a_voice_that_is_known(hers: bool) -> None:
    """The film is nearly as loud behind it; somebody else's is not even recognised."""
    loudness, cut = Loudness(), list[bytes]()
    for at in range(round(20 / CHUNK_S)):
        ago = 20 - at * CHUNK_S
        loudness.take(-20.0 if 0.4 < ago <= 1.3 else -24.5)

    def recognise(segment: bytes) -> Heard | None:
        cut.append(segment)
        return replace(HEARD, hers=hers)

    taken = SeekingAlone(lambda sound: CUE, recognise, loudness, lambda sound: hers).look(SOUND)
    assert (taken is not None, len(cut)) == (hers, hers)
    assert look(CUE, behind_db=-24.5) == (None, [])
