from __future__ import annotations

import itertools
import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.ears.bundled.sound_tree import Endings, SoundTree, find_span, log_anything, log_silence
from stepper.mouth.pronunciation import SOUNDS, Sounds

FEW = SOUNDS[:3]
rows = st.lists(st.lists(st.sampled_from(FEW), min_size=1, max_size=3).map(tuple), min_size=1, max_size=4)
seeds = st.integers(0, 2**32 - 1)


def frames(seed: int, count: int) -> np.ndarray:
    """Draw log-probabilities for nothing and the first three sounds; the others cannot be."""
    likely = np.full((count, len(SOUNDS) + 1), -math.inf)
    likely[:, : len(FEW) + 1] = np.log(np.random.default_rng(seed).dirichlet(np.ones(len(FEW) + 1), count))
    return likely


def likeliest(likely: np.ndarray, row: Sounds) -> float:
    """Try every way to give each frame a sound or nothing that comes to the row once repetitions are joined.

    Source: the definition of the collapsing map of connectionist temporal classification (Graves, Fernández,
    Gomez and Schmidhuber, 2006, section 3.1): repeated labels first, then blanks, are removed.
    """
    best = -math.inf
    wanted = [SOUNDS.index(sound) + 1 for sound in row]
    for way in itertools.product(range(len(FEW) + 1), repeat=len(likely)):
        joined = [label for label, _ in itertools.groupby(way)]
        if [label for label in joined if label] == wanted:
            best = max(best, sum(likely[at, label] for at, label in enumerate(way)))
    return best


@given(rows, seeds, st.integers(1, 5))
def test_each_row_is_laid_in_its_likeliest_way(rows: list[Sounds], seed: int, count: int) -> None:
    """By every point of the utterance as when all ways are tried one by one."""
    likely = frames(seed, count)
    points = SoundTree(rows).points(likely)
    assert points.shape == (count + 1, len(rows))
    for at in range(count + 1):
        for number, row in enumerate(rows):
            assert points[at, number] == pytest.approx(likeliest(likely[:at], row), abs=1e-4)


@given(rows, rows, seeds)
def test_what_is_in_front_and_what_follows_are_counted_once(
    fronts: list[Sounds], backs: list[Sounds], seed: int
) -> None:
    """One row, then another, then an ending: the best place to pass from each to the next.

    Source: every pair of places to pass at, tried one by one. The rows are kept apart, since two rows that
    touch on the same sound may share a frame only when they are one row.
    """
    likely = frames(seed, 6)
    start = SoundTree(fronts[:1]).points(likely)[:, 0]
    ends = Endings([(), backs[0]]).points(likely)
    for at in range(7):
        assert ends[at, 0] == pytest.approx(float(likely[at:, 0].sum()), abs=1e-4)
        assert ends[at, 1] == pytest.approx(likeliest(likely[at:], backs[0]), abs=1e-4)
        assert start[at] == pytest.approx(likeliest(likely[:at], fronts[0]), abs=1e-4)
    if fronts[0][-1] != backs[0][0]:
        through = (SoundTree(backs[:1]).points(likely, start)[:, 0] + ends[:, 0]).max()
        assert through == pytest.approx(likeliest(likely, fronts[0] + backs[0]), abs=1e-4)


def test_the_same_sound_twice_needs_a_gap() -> None:
    """Three frames of one sound are that sound once; with a gap between they can be twice that sound."""
    sound = FEW[0]
    likely = np.log(np.full((3, len(SOUNDS) + 1), 1e-9))
    likely[:, 1] = 0.0
    once, twice = SoundTree([(sound,), (sound, sound)]).points(likely)[-1]
    assert once == pytest.approx(0.0)
    assert twice == pytest.approx(math.log(1e-9), rel=1e-5)


def test_silence_and_anything_at_all_are_sums() -> None:
    """Of what each frame gives to nothing, and of the best of each frame."""
    likely = frames(1, 4)
    assert log_silence(likely) == pytest.approx([0, *np.cumsum(likely[:, 0])], abs=1e-5)
    assert log_anything(likely) == pytest.approx([0, *np.cumsum(likely.max(1))], abs=1e-5)


def spoken(*labels: int) -> np.ndarray:
    """Make frames that each are one label for sure, or nearly so."""
    likely = np.full((len(labels), len(SOUNDS) + 1), math.log(1e-3))
    likely[range(len(labels)), labels] = math.log(0.9)
    return likely


def test_a_row_amid_other_sounds_is_found_where_it_stands() -> None:
    """The best of two rows, from its first sound to the frame behind its last, once that has sounded: by hand."""
    frames_said = spoken(0, 3, 3, 0, 1, 0, 2, 2, 0, 0, 3, 0)
    assert find_span(frames_said, [(SOUNDS[1], SOUNDS[0]), (SOUNDS[0], SOUNDS[1])]) == (4, 7)


def test_an_ending_may_have_anything_behind_it_if_asked() -> None:
    """What is said behind costs nothing then, and all its likelihood otherwise."""
    likely = spoken(1, 0, 3, 3)
    endings = Endings([(SOUNDS[0],), ()])
    everything = log_anything(likely)[-1]
    assert endings.points(likely, amid=True)[0] == pytest.approx([everything, everything], abs=1e-4)
    assert (endings.points(likely)[0] < everything - 5).all()
