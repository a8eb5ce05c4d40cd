from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.commands.loading import load
from stepper.plan.model import Plan, Round
from stepper.session.diagnosis import diagnose
from stepper.session.fault import search
from stepper.session.foretelling import Cause
from stepper.session.landmarks import sections_at
from stepper.session.remedy import Remedy, must_be_exact, off_by, remedies, tolerant
from stepper.session.state import Answer, Fault, Knitting, Mend, Place, Seen, Sight, State, Verified
from tests import knitter
from tests.knitter import Row
from tests.plans import final_increase, plan
from tests.session.test_diagnosis import GARMENTS, LACE, seeded


def ways(garment: Plan, state: State, fault: Fault) -> tuple[Remedy, ...]:
    """Give the remedies of a fault."""
    causes = diagnose(garment, state, fault)
    return remedies(garment, state.knitting, fault, search(garment, state, fault), causes)


def after(round_: Round, lifelines: tuple[Place, ...] = ()) -> State:
    """Stand at the end of a round that was right three rounds before."""
    verified = Verified(place=Place(index=max(0, round_.index - 3)), stitches=1)
    place = Place(index=round_.index + 1)
    return State(knitting=Knitting(place=place, verified=verified, lifelines=lifelines))


def carried_out(garment: Plan, way: Remedy, round_: Round, row: Row) -> tuple[int, int]:
    """Carry a remedy out in the fabric; give the count then and what it should be."""
    if way.kind == "drop":
        return row.count + row.loops, round_.after
    if way.mend is None:
        # Taken back to a place before the fault, and knitted again without one.
        assert (way.place.index, way.place.stitch) <= (round_.index, round_.progress)
        count = garment.rounds[way.place.index].before
        for again in garment.rounds[way.place.index : round_.index + 1]:
            count = knitter.work(knitter.operations(again.phrase), count).count
        return count, round_.after
    count = row.count
    for between in garment.rounds[round_.index + 1 : way.mend.index]:
        count = knitter.mended(between, count, 0, 0).count
    last = garment.rounds[way.mend.index]
    return knitter.mended(last, count, way.mend.stitch, way.mend.change).count, last.after


@pytest.mark.parametrize(("name", "path"), GARMENTS, ids=[name for name, _ in GARMENTS])
def test_every_remedy_brings_the_count_right(name: str, path: object) -> None:
    """Whatever is chosen, carried out in the fabric it leaves the stitches the pattern wants."""
    garment = load(path).plan if path else LACE if name == "lace" else final_increase()  # type: ignore[arg-type] # a path
    tried = set()
    for cause in Cause:
        for round_, row in seeded(garment, cause, 30, 2):
            if row.count == round_.after or round_.index + 1 >= len(garment.rounds):
                continue
            state = after(round_)
            sights = (Sight(seen=Seen.LOOP, number=int(row.loops > 0)),)
            fault = Fault(place=state.place, difference=row.count - round_.after, sights=sights)
            for way in ways(garment, state, fault):
                have, want = carried_out(garment, way, round_, row)
                assert have == want, (cause, way, round_.index)
                tried.add(way.kind)
    assert tried >= {"plain", "rip"}


def test_the_cheapest_comes_first() -> None:
    """She hears the way that costs least before the others."""
    garment = final_increase()
    costs = [way.stitches for way in ways(garment, after(garment.rounds[9]), _off(10, -1))]

    assert len(costs) >= 2
    assert costs == sorted(costs)


def _off(index: int, difference: int) -> Fault:
    return Fault(place=Place(index=index), difference=difference)


def test_nothing_is_worked_over_a_chart_that_no_longer_divides() -> None:
    """After the increases a chart begins at once, so no plain round is left to mend in."""
    garment = final_increase()
    kinds = {way.kind for way in ways(garment, after(garment.rounds[3]), _off(4, -1))}

    assert "plain" not in kinds
    assert "rip" in kinds
    assert must_be_exact(garment, Place(index=4)) == 4


def test_the_shaping_takes_up_what_is_off() -> None:
    """A stitch too few before the increases is one increase more in them."""
    garment = final_increase()
    accept = next(way for way in ways(garment, after(garment.rounds[1]), _off(2, -1)) if way.kind == "accept")

    assert accept.mend is not None
    assert (accept.mend.index, accept.mend.change) == (3, 1)


def test_a_lifeline_is_where_ripping_ends() -> None:
    """It holds the stitches, so it is cheaper than the last good count and is taken only where it lies below the fault."""
    garment = final_increase()
    state = after(garment.rounds[11], lifelines=(Place(index=9),))
    seen_there = Fault(place=Place(index=12), difference=-1, index=10)
    rip = next(way for way in ways(garment, state, seen_there) if way.kind == "rip")

    assert rip.lifeline
    assert rip.place == Place(index=9)


def test_the_count_is_off_until_it_is_mended() -> None:
    """What is expected on the needles follows the remedy."""
    knitting = Knitting(place=Place(index=4), mend=Mend(index=5, stitch=20, change=1))

    assert off_by(knitting, Place(index=5, stitch=20)) == -1
    assert off_by(knitting, Place(index=5, stitch=21)) == 0
    assert off_by(knitting, Place(index=6)) == 0


def test_a_rib_is_not_mended_out_of_step() -> None:
    """Only the same stitch all along takes one more or less."""
    rib, plain = plan(("cuff", ["co40", "(k2 p2)x10", "k40"])).rounds[1:]

    assert not tolerant(rib)
    assert tolerant(plain)


def test_a_round_of_decreases_alone_is_not_mended_in() -> None:
    """Where no plain stitch is left, none can be worked together with another, and none can be made for one."""
    crown = plan(("crown", ["co24", "(k1 k2tog)x8", "(k2tog)x8", "draw8"]))

    assert "accept" not in {way.kind for way in ways(crown, after(crown.rounds[1]), _off(2, 1))}


def test_in_a_chart_a_known_spot_is_made_good() -> None:
    """Once it is found between which increases the stitch is missing, the first chart round can make it good,
    and its repeats divide again."""
    garment = final_increase()
    state = after(garment.rounds[3])
    counts = sections_at(garment, Place(index=4))
    assert counts is not None
    answers = tuple(
        Answer(first=at, end=at + 1, stitches=want - (at == 9)) for at, want in enumerate(counts.counts)
    )
    fault = Fault(place=Place(index=4), difference=-1, answers=answers)
    accept = next(way for way in ways(garment, state, fault) if way.kind == "accept")
    row = knitter.without(garment.rounds[3], 100)

    assert accept.mend is not None
    assert counts.edges[9] <= accept.mend.stitch <= counts.edges[10]
    have, want = carried_out(garment, accept, garment.rounds[3], replace(row, made=row.made[:245]))
    assert have == want == 246
