from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.language.effect_words import tell_effect
from stepper.language.remedy_words import LINES, name_remedy
from stepper.plan.model import Run
from stepper.plan.under_way.absorb import Mend
from stepper.plan.under_way.respace import Respacing
from stepper.session import effects
from stepper.session.fault.landmarks import Landmark
from stepper.session.fault.respond import TellOtherWays
from stepper.session.fault.ways import Remedy, RemedyKind, StitchesToCount
from stepper.session.state import Position, Seen
from tests.plans import final_increase

GARMENT = final_increase()
REMEDY = Remedy(
    kind=RemedyKind.RIP,
    stitches=900,
    minutes=31.2,
    place=Position(index=3),
    undone=720,
    rounds=3,
    mend=Mend(index=9, stitch=40, change=1),
    look=(Seen.LOOP, 3),
    stretch=StitchesToCount(kind=Landmark.MARKER, first=1, end=2, expect=20),
    expect=246,
    respacing=Respacing(index=3, section="yoke", before=225, after=246, places=tuple(range(21))),
    made=5,
)


@pytest.mark.parametrize("kind", RemedyKind)
def test_the_first_way_is_said_in_a_breath(kind: RemedyKind) -> None:
    """At most 25 words before she may choose, and 8 seconds at 165 words a minute; each kind has words of its own."""
    line = tell_effect(effects.TellRemedies(remedies=(_of(kind), REMEDY)), GARMENT)
    assert len(line.partition("Say:")[0].split()) <= 25
    assert line.endswith(".")


def _of(kind: RemedyKind) -> Remedy:
    return replace(REMEDY, kind=kind)


def test_ripping_is_told_in_rounds_with_its_cost() -> None:
    """Nobody pictures 6,456 stitches."""
    assert name_remedy(REMEDY, GARMENT) == "rip 3 rounds back to the beginning of yoke round 2, about 31 minutes"


def test_where_it_will_show_is_said() -> None:
    """One round above nobody finds it; three rounds above it is a step."""
    near = name_remedy(_of(RemedyKind.PLAIN), GARMENT)
    far = name_remedy(replace(_of(RemedyKind.PLAIN), above=2), GARMENT)
    assert near == "make one after stitch 40 of body round 2; it hardly shows"
    assert far.endswith("a small step shows, 3 rounds up")


def test_undoing_is_never_read_out_as_a_long_list() -> None:
    """Four kinds of stitches are followed by ear; of more, how many come off and where that leads."""
    few = effects.TellRemedied(
        remedy=RemedyKind.TINK, undone=(Run("k", 9, "MC"),), place=Position(index=2, stitch=4), mend=None, stitches=9
    )
    assert tell_effect(few, GARMENT) == "Undo the last first: knit nine. Then count."
    runs = tuple(Run(code, 1, "MC") for code in ("k", "p") * 56)
    many = effects.TellRemedied(
        remedy=RemedyKind.TINK, undone=runs, place=Position(index=2, stitch=4), mend=None, stitches=112
    )
    assert tell_effect(many, GARMENT) == "Undo 112 stitches, the last first, back to stitch 4 of yoke round 1. Then count."


def test_without_a_way_she_is_told_how_to_go_on() -> None:
    """An honest end is better than a cast-on ripped back to."""
    assert "mistake in round" in tell_effect(effects.TellRemedies(remedies=()), GARMENT)
    assert tell_effect(TellOtherWays(remedies=(REMEDY,), exact_at=None), GARMENT) == "That is the only way now."
    assert len(LINES) == 4


def test_a_way_that_mends_in_a_round_is_not_told_to_come_before_it() -> None:
    """Told both, she would not know whether to go on."""
    rip = replace(REMEDY, mend=None)
    within = replace(REMEDY, kind=RemedyKind.ACCEPT, mend=Mend(index=9, stitch=40, change=1))
    assert "It has to be right before" in tell_effect(TellOtherWays(remedies=(rip, rip), exact_at=9), GARMENT)
    assert "It has to be right" not in tell_effect(TellOtherWays(remedies=(rip, within), exact_at=9), GARMENT)
