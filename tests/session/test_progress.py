from __future__ import annotations

from dataclasses import replace

from hypothesis import given
from hypothesis import strategies as st

from stepper.session.progress import measure_progress
from stepper.session.state import Knitting, Position, State
from tests.plans import final_increase
from tests.playbook import AT

GARMENT = final_increase()


def _at(index: int, stitch: int = 0) -> State:
    return State(seq=5, knitting=Knitting(place=Position(index=index, stitch=stitch)), last_cue_at=AT)


def test_the_round_being_worked_is_told_with_its_figures() -> None:
    """The scenario's final increase after its first 17 stitches, counted by hand: 5 and 1, 11."""
    standing = measure_progress(GARMENT, _at(3, 17))

    assert (standing.title, standing.section, standing.round, standing.of) == (
        "Switchback pullover",
        "yoke",
        2,
        6,
    )
    assert (standing.stitch, standing.stitches, standing.label) == (17, 226, "Final increase")
    assert (standing.rounds_done, standing.rounds_left, standing.finished) == (3, 20, False)
    assert (standing.stitches_done, standing.last_cue_at) == (3 * 225 + 17, AT)


def test_all_done_is_told_from_the_last_round() -> None:
    """Finished: the last round of the last section, nothing on the needles, nothing left."""
    standing = measure_progress(GARMENT, _at(23))

    assert (standing.section, standing.round, standing.of, standing.finished) == ("body", 15, 15, True)
    assert (standing.stitch, standing.stitches) == (156, 0)
    assert (standing.rounds_left, standing.stitches_left) == (0, 0)


def test_before_the_first_cue_there_is_no_time() -> None:
    """Nothing knitted is told as nothing, not as an empty text."""
    assert measure_progress(GARMENT, State()).last_cue_at is None
    empty = measure_progress(replace(GARMENT, rounds=(), stretches=()), State())
    assert (empty.section, empty.round, empty.finished) == ("", 0, True)


@given(st.integers(0, 23), st.integers(0, 100))
def test_done_and_left_are_the_whole(index: int, stitch: int) -> None:
    """Nothing counted twice, nothing missing, wherever she is."""
    standing = measure_progress(GARMENT, _at(index, stitch if index < 23 else 0))

    assert standing.rounds_done + standing.rounds_left == 23
    assert standing.stitches_done + standing.stitches_left == sum(r.progress for r in GARMENT.rounds)


def test_a_plan_without_rounds_has_none_of_none() -> None:
    """ "Round 0 of 1" would be a round that is nowhere."""
    empty = measure_progress(replace(GARMENT, rounds=(), stretches=()), State())
    assert (empty.round, empty.of, empty.stitches, empty.rounds_left) == (0, 0, 0, 0)
