from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.plan.under_way.absorb import Mend
from stepper.plan.under_way.lengthen import LengthCorrection
from stepper.plan.under_way.respace import Respacing
from stepper.session.amendments import go_back_to, move_mends, replace_correction, replace_respacing
from stepper.session.state import Knitting, Position, Verified

HERE = Knitting(
    place=Position(index=9, stitch=4),
    verified=Verified(place=Position(index=5), stitches=80),
    lifelines=(Position(index=2), Position(index=6)),
    mends=(Mend(index=10, stitch=0, change=1, origin=7),),
)


@pytest.mark.parametrize(
    ("index", "counted", "lifelines", "mended"),
    [
        (8, True, (2, 6), True),
        (7, True, (2, 6), True),  # the round in which it went wrong is still on the needles
        (6, True, (2, 6), True),  # ripped, but not to where a count was right: it may lie further down
        (5, True, (2,), False),
        (4, False, (2,), False),
        (1, False, (), False),
    ],
)
def test_what_is_ripped_takes_its_counts_lifelines_and_faults_with_it(
    index: int, counted: bool, lifelines: tuple[int, ...], mended: bool
) -> None:
    """By hand: good at the beginning of round 5, off from round 7 on, lifelines at the beginning of 2 and 6."""
    back = go_back_to(HERE, Position(index=index))

    assert back.place == Position(index=index)
    assert (back.verified is not None) is counted
    assert tuple(each.index for each in back.lifelines) == lifelines
    assert bool(back.mends) is mended


def test_without_a_good_count_what_is_off_goes_only_with_the_whole_piece() -> None:
    """Nobody knows then from where on it was right but for the very beginning."""
    uncounted = replace(HERE, verified=None)
    assert go_back_to(uncounted, Position(stitch=1)).mends == HERE.mends
    assert go_back_to(uncounted, Position()).mends == ()


def test_a_mend_behind_a_stretch_moves_with_its_end() -> None:
    """Three rounds shorter: what comes from its old end on comes three rounds earlier; what is within it stays."""
    mends = tuple(Mend(index=index, stitch=2, change=1) for index in (19, 20, 21))
    assert [each.index for each in move_mends(mends, 20, -3)] == [19, 17, 18]
    assert [each.index for each in move_mends(mends, 20, 3)] == [19, 23, 24]


def test_a_stretch_has_one_correction_and_a_round_one_respacing() -> None:
    """The last that was said counts, and leaves those of the others alone."""
    first, second, again = (
        LengthCorrection(stretch=stretch, rounds=rounds, rounds_per_10cm=30.0)
        for stretch, rounds in ((0, 20), (1, 40), (0, 24))
    )
    assert replace_correction((first, second), again) == (again, second)
    assert replace_correction((second,), first) == (first, second)
    yoke, sleeve, anew = (
        Respacing(index=index, section=section, before=20, after=22, places=places)
        for index, section, places in ((4, "yoke", (5, 15)), (4, "sleeve", (3, 9)), (4, "yoke", (6, 16)))
    )
    assert replace_respacing((yoke, sleeve), anew) == (sleeve, anew)
