from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.plan.model import Plan, Stretch
from stepper.plan.under_way.absorb import Mend
from stepper.plan.under_way.lengthen import LengthCorrection
from stepper.plan.under_way.respace import Respacing
from stepper.session.changed_plan.carry_over import adapt
from stepper.session.state import Adapted, Knitting, Position
from tests.plans import plan

BODY = ["k20", "k10 m1 k10", "p21", "k21", "k10 k2tog k9", "bo20"]
OLD = plan(("neck", ["co20", "k20"]), ("body", BODY))


def test_all_that_belongs_to_a_round_goes_with_it() -> None:
    """A round put in below moves lifelines, mends and respacings along; a name does not lose them."""
    new = plan(("neck", ["co20", "k20", "p20"]), ("trunk", BODY))
    knitting = Knitting(
        mends=(Mend(index=6, stitch=3, change=1, origin=4),),
        respacings=(Respacing(index=3, section="body", before=20, after=21, places=(8,)),),
        lifelines=(Position(index=4),),
    )

    assert adapt(OLD, new, knitting) == Adapted(
        mends=(Mend(index=7, stitch=3, change=1, origin=5),),
        respacings=(Respacing(index=4, section="trunk", before=20, after=21, places=(8,)),),
        lifelines=(Position(index=5),),
    )


def test_what_belongs_to_a_round_that_is_gone_goes_with_it() -> None:
    """A respacing of an increase that is no more has nothing to space."""
    gone = plan(("neck", ["co20", "k20"]), ("body", ["k20", "p20", "k20", "bo20"]))
    knitting = Knitting(respacings=(Respacing(index=3, section="body", before=20, after=21, places=(8,)),))

    assert adapt(OLD, gone, knitting).respacings == ()


def test_a_length_measured_is_kept_under_another_name() -> None:
    """Measured in the body; the body is called trunk now and is as long as it was."""
    stretch = Stretch(first=2, last=5, origin=2, target_mm=100.0, rounds_per_10cm=30.0)
    rounds = ["k20"] * 4 + ["bo20"]
    old = plan(("neck", ["co20", "k20"]), ("body", rounds), stretches=(stretch,))
    new = plan(("neck", ["co20", "k20"]), ("trunk", rounds), stretches=(stretch,))
    measured = LengthCorrection(stretch=0, rounds=6, rounds_per_10cm=33.0)

    assert adapt(old, new, Knitting(corrections=(measured,))).corrections == (measured,)


def test_a_respacing_belongs_to_the_round_it_was_made_for() -> None:
    """Where rounds were added by a measurement its number is off by some; the nearest round that shapes so is meant."""
    made = Respacing(index=4, section="body", before=20, after=21, places=(8,))

    assert adapt(OLD, OLD, Knitting(respacings=(made,))).respacings == (
        Respacing(index=3, section="body", before=20, after=21, places=(8,)),
    )


def _even(line: str, *, evenly: bool = True) -> Plan:
    made = plan(("yoke", ["co20", line, "k24" if line.endswith("x4") else "k25"]))
    rounds = (made.rounds[0], replace(made.rounds[1], evenly=evenly), made.rounds[2])
    return replace(made, rounds=rounds)


BEGUN = "(k4 m1)x5"
SPREAD_ANEW = "k2 m1 (k4 m1)x4 k2"
AS_BEGUN = Respacing(index=1, section="yoke", before=20, after=25, places=(4, 8, 12, 16, 20))


@pytest.mark.parametrize(
    ("old", "new", "stitch", "kept"),
    [
        (_even(BEGUN), _even(SPREAD_ANEW), 10, (AS_BEGUN,)),
        (_even(BEGUN), _even(SPREAD_ANEW), 0, ()),  # not begun: it may as well be worked as the new file spreads it
        (_even(BEGUN), _even(BEGUN), 10, ()),  # nothing has changed
        (_even(BEGUN, evenly=False), _even(SPREAD_ANEW), 10, ()),  # each increase had its place
        (_even(BEGUN), _even(SPREAD_ANEW, evenly=False), 10, ()),  # each has its place now
        (_even(BEGUN), _even("(k5 m1)x4"), 10, ()),  # other stitches come of it
    ],
    ids=["begun", "not begun", "as it was", "old places", "new places", "another count"],
)
def test_a_round_half_worked_goes_on_as_it_was_begun(
    old: Plan, new: Plan, stitch: int, kept: tuple[Respacing, ...]
) -> None:
    """What is on the needle cannot be spread anew. By hand: increases after 4, 8, 12, 16 and 20 of 20 stitches."""
    assert adapt(old, new, Knitting(place=Position(index=1, stitch=stitch))).respacings == kept


def test_a_round_she_spaced_anew_herself_is_carried_once() -> None:
    """Her own spacing of the round in hand goes along and is not doubled; that of another round stays beside it."""
    hers = replace(AS_BEGUN, places=(3, 8, 12, 16, 20))
    knitting = Knitting(place=Position(index=1, stitch=10), respacings=(hers,))
    assert adapt(_even(BEGUN), _even(SPREAD_ANEW), knitting).respacings == (hers,)


def test_a_mend_and_a_lifeline_of_a_round_that_is_gone_are_let_go() -> None:
    """Told to make a stitch in a round put in its place she would add one that belongs nowhere, and a lifeline said to
    be where it is not would be ripped to."""
    gone = plan(("neck", ["co20", "k20"]), ("body", ["k20", "p20", "k20", "bo20"]))
    kept = adapt(
        OLD,
        gone,
        Knitting(mends=(Mend(index=3, stitch=3, change=1, origin=2),), lifelines=(Position(index=1), Position(index=4))),
    )
    assert (kept.mends, kept.lifelines) == ((), (Position(index=1),))
