from __future__ import annotations

from stepper.plan.model import Stretch
from stepper.plan.under_way.absorb import Mend
from stepper.plan.under_way.lengthen import LengthCorrection
from stepper.plan.under_way.respace import Respacing
from stepper.session.carry_over import adapt
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
