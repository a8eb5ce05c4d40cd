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
