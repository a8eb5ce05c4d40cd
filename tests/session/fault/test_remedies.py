from __future__ import annotations

from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest

from stepper.plan.model import Plan, Round
from stepper.plan.under_way.absorb import apply_mends
from stepper.session.cues import Choose
from stepper.session.fault.diagnosis import diagnose
from stepper.session.fault.inquiry import inquire
from stepper.session.fault.landmarks import sections_at
from stepper.session.fault.remedies import list_remedies
from stepper.session.fault.search import search
from stepper.session.fault.ways import Remedy, RemedyKind
from stepper.session.fault.workable import find_exact_round
from stepper.session.state import Answer, Fault, Knitting, Observation, Position, Seen, State, Verified
from stepper.sitting.project_file import load_project
from tests import fabric, hunt
from tests.hunt import Trial
from tests.plans import final_increase, plan
from tests.session.fault.test_diagnosis import SAMPLES


def ways(garment: Plan, state: State, fault: Fault) -> tuple[Remedy, ...]:
    """Return the remedies of a fault."""
    causes = diagnose(garment, state, fault)
    return list_remedies(garment, state.knitting, fault, search(garment, state, fault), causes)


def after(round_: Round, lifelines: tuple[Position, ...] = ()) -> State:
    """Stand at the end of a round that was right three rounds before."""
    verified = Verified(place=Position(index=max(0, round_.index - 3)), stitches=1)
    place = Position(index=round_.index + 1)
    return State(knitting=Knitting(place=place, verified=verified, lifelines=lifelines))


def carried_out(trial: Trial, number: int, photographs: list[fabric.Knitting]) -> None:
    """Choose a remedy and carry it out in the fabric, stitch by stitch, as the session then says; check that
    no round leaves stitches over, and that the count is right where it was to be made good."""
    inquiry = inquire(trial.session.plan, trial.session.state)
    assert inquiry is not None
    way = inquiry.remedies[number - 1]
    chosen = trial.session.consider(Choose(number=number))
    place, garment = chosen.state.place, chosen.plan
    if not way.kind.settles:
        assert (place, garment) == (trial.session.state.place, trial.session.plan)
        return
    if way.kind is RemedyKind.LADDER:
        assert trial.knitting.count + trial.knitting.loose == garment.rounds[place.index - 1].after
        return
    if way.mend is None:
        _taken_back(trial, place, garment, photographs)
        return
    knitting = trial.knitting.copy()
    stop = min(way.mend.index + 1, len(garment.rounds))
    for round_ in garment.rounds[place.index : stop]:
        if not round_.before:
            break
        if round_.index > place.index:
            hunt.turned(garment, knitting, round_.index)
        assert knitting.count == round_.before, (way, round_.instruction)
        knitting.work(round_.index, fabric.steps(round_.phrase))
        assert (knitting.left[round_.index], knitting.count) == (0, round_.after), (way, round_.instruction)
    if way.mend.index < len(garment.rounds) and garment.rounds[way.mend.index].before:
        assert knitting.count == trial.session.plan.rounds[way.mend.index].after


def _taken_back(trial: Trial, place: Position, garment: Plan, photographs: list[fabric.Knitting]) -> None:
    """Knit again from a place, without a mistake; what stays on the needle has to be sound."""
    assert place.index <= trial.index
    knitting = photographs[place.index].copy()
    knitting.work(place.index, fabric.steps(garment.rounds[place.index].phrase))
    assert knitting.count == garment.rounds[place.index].after
    if place.stitch:
        worked = trial.knitting.copy()
        if place.index + 1 < len(garment.rounds):
            hunt.turned(garment, worked, place.index + 1)
        kept = [
            [each for each in needle if isinstance(each, str)][: place.stitch]
            for needle in (worked.needle, knitting.needle)
        ]
        assert kept[0] == kept[1]


PLACES = 4
"""Random places for each kind in each garment."""


@pytest.mark.parametrize("path", SAMPLES, ids=[path.stem for path in SAMPLES])
def test_every_remedy_brings_the_count_right(path: Path) -> None:
    """Whatever is chosen, carried out in the fabric of a second knitter it leaves the stitches the pattern
    wants, and no round on the way comes out wrong."""
    garment = load_project(path).plan
    photographs = fabric.knitted_right(garment)
    tried = set()
    for mistake in fabric.MISTAKES:
        for trial in hunt.trials(garment, photographs, mistake, PLACES, 11):
            inquiry = inquire(trial.session.plan, trial.session.state)
            assert inquiry is not None
            for number, way in enumerate(inquiry.remedies, 1):
                tried.add(way.kind)
                carried_out(trial, number, photographs)
    assert "rip" in tried
    assert tried & {"plain", "accept"}


NO_LOOP = Observation(seen=Seen.LOOP, number=0)


def test_what_mends_comes_before_what_takes_back_and_ripping_is_last() -> None:
    """She hears the way that costs least before the others, then how to live with it, and ripping at the end."""
    garment = plan(("body", ["co156", *["k156"] * 12, "bo156"]))
    kinds = [way.kind for way in ways(garment, after(garment.rounds[9]), _off(10, -1))]

    assert kinds[0] is RemedyKind.PLAIN
    assert kinds[-1] is RemedyKind.RIP


def _off(index: int, difference: int) -> Fault:
    """Count it twice in plain fabric, where no loop hangs."""
    return Fault(place=Position(index=index), difference=difference, confirmed=True, sights=(NO_LOOP,))


def test_nothing_is_offered_before_the_loop_is_looked_for() -> None:
    """A live loop runs while she reads the other ways."""
    garment = final_increase()
    fault = Fault(place=Position(index=10), difference=-1, confirmed=True)
    (only,) = ways(garment, after(garment.rounds[9]), fault)
    assert (only.kind, only.look, only.place) == (RemedyKind.LOOK, (Seen.LOOP, 9), Position(index=10))
    hangs = replace(fault, sights=(Observation(seen=Seen.LOOP, number=1),))
    assert [way.kind for way in ways(garment, after(garment.rounds[9]), hangs)] == [RemedyKind.LADDER]


def test_no_stitch_is_made_before_the_place_is_known() -> None:
    """Between two markers it is another stretch than the one beside it: she counts there first."""
    marked = plan(("yoke", [("co80", {"markers": (20, 40, 60)}), ("k80", {"markers": (20, 40, 60)}), "k80", "k80"]))
    kinds = [way.kind for way in ways(marked, after(marked.rounds[1]), _off(2, -1))]
    assert kinds[0] is RemedyKind.NARROW
    assert not {RemedyKind.PLAIN, RemedyKind.ACCEPT} & set(kinds)


def test_nothing_is_worked_over_a_chart_that_no_longer_divides() -> None:
    """After the increases a chart begins at once, so no plain round is left to mend in."""
    garment = final_increase()
    kinds = {way.kind for way in ways(garment, after(garment.rounds[3]), _off(4, -1))}

    assert "plain" not in kinds
    assert "rip" in kinds
    assert find_exact_round(garment, Position(index=4)) == 4


def test_the_shaping_takes_up_what_is_off() -> None:
    """A stitch too few before the increases is one increase more in them, spread anew."""
    garment = final_increase()
    accept = next(way for way in ways(garment, after(garment.rounds[1]), _off(2, -1)) if way.kind == "accept")

    assert accept.mend is not None
    assert (accept.mend.origin, accept.mend.index, accept.mend.change) == (2, 3, 1)
    assert accept.mend.spread
    assert len(apply_mends(garment, [accept.mend]).rounds[3].shaping) == 22


def test_a_whole_repeat_is_gone_on_with() -> None:
    """A repeat of the chart too many divides: the chart is worked once more in each round, and what has to be
    right is the division."""
    garment = final_increase()
    assert find_exact_round(garment, Position(index=4), 1) == 4
    assert find_exact_round(garment, Position(index=4), 6) == 7
    assert {way.kind for way in ways(garment, after(garment.rounds[3]), _off(4, 6))} == {"narrow", "rip"}


@pytest.mark.parametrize(
    "known",
    [
        {"confirmed": True},
        {"answers": (Answer(first=0, end=1, stitches=3),)},
        {"sights": (Observation(seen=Seen.LOOP, number=1),)},
        {"index": 9},
    ],
    ids=lambda known: next(iter(known)),
)
def test_counting_once_more_is_offered_only_while_a_single_count_speaks_of_a_fault(
    known: dict[str, Any],
) -> None:
    """Else it would be offered for ever, and she would be sent to count where a loop runs."""
    garment = final_increase()
    fault = replace(Fault(place=Position(index=10), difference=-1), **known)

    assert all(way.kind is not RemedyKind.RECOUNT for way in ways(garment, after(garment.rounds[9]), fault))


def test_what_needs_no_exact_count_is_bound_off_as_it_is() -> None:
    """To the end of the piece, whatever divides; nothing has to be mended by then."""
    scarf = plan(("scarf", ["co40", *["k40"] * 5, "bo40"]))
    accept = next(way for way in ways(scarf, after(scarf.rounds[3]), _off(4, -1)) if way.kind == "accept")

    assert find_exact_round(scarf, Position(index=4), -1) is None
    assert accept.mend is not None
    assert accept.mend.index == len(scarf.rounds)
    assert [each.before for each in apply_mends(scarf, [accept.mend]).rounds[4:]] == [39, 39, 39]


def test_a_lifeline_is_where_ripping_ends() -> None:
    """It holds the stitches, so it is cheaper than the last good count and is taken only where it lies below the fault."""
    garment = final_increase()
    state = after(garment.rounds[11], lifelines=(Position(index=9),))
    seen_there = Fault(place=Position(index=12), difference=-1, index=10, sights=(NO_LOOP,))
    rip = next(way for way in ways(garment, state, seen_there) if way.kind == "rip")

    assert rip.lifeline
    assert rip.place == Position(index=9)


def test_a_round_of_decreases_alone_is_not_mended_in() -> None:
    """Where no plain stitch is left, none can be worked together with another, and none can be made for one."""
    crown = plan(("crown", ["co24", "(k1 k2tog)x8", "(k2tog)x8", "draw8"]))

    assert "accept" not in {way.kind for way in ways(crown, after(crown.rounds[1]), _off(2, 1))}


def test_in_a_chart_a_known_spot_is_made_good() -> None:
    """Once it is found between which increases the stitch is missing, the first chart round can make it good,
    and its repeats divide again."""
    garment = final_increase()
    state = after(garment.rounds[3])
    counts = sections_at(garment, Position(index=4))
    assert counts is not None
    answers = tuple(
        Answer(first=at, end=at + 1, stitches=want - (at == 9)) for at, want in enumerate(counts.counts)
    )
    fault = Fault(place=Position(index=4), difference=-1, answers=answers, sights=(NO_LOOP,))
    accept = next(way for way in ways(garment, state, fault) if way.kind == "accept")

    assert accept.mend is not None
    assert counts.edges[9] <= accept.mend.stitch <= counts.edges[10]
    chart = apply_mends(garment, [accept.mend]).rounds[4]
    assert (chart.before, chart.after, len(chart.shaping)) == (245, 246, 1)


def test_ripping_stops_at_the_last_good_count_where_nothing_tells_the_round() -> None:
    """What was right there need not be knitted again; where nothing was ever counted and nothing tells the round, ripping
    to the cast-on is no advice."""
    garment = final_increase()
    here = Knitting(place=Position(index=9))
    counted = Knitting(place=Position(index=9), verified=Verified(place=Position(index=6), stitches=246))
    fault = _off(9, 17)

    def rip_to(knitting: Knitting) -> Position:
        (way,) = [
            each for each in ways(garment, State(knitting=knitting), fault) if each.kind is RemedyKind.RIP
        ]
        return way.place

    assert rip_to(counted) == Position(index=6)
    assert RemedyKind.RIP not in {each.kind for each in ways(garment, State(knitting=here), fault)}


def test_no_piece_is_mended_in_the_next_one() -> None:
    """Stitches short at the end of the cuff are no business of the thumb, however plain it is."""
    garment = plan(("cuff", ["co40", "k40", "bo40"]), ("thumb", ["co20", "k20", "k20", "bo20"]))
    found = ways(garment, after(garment.rounds[1]), _off(2, -1))

    assert found
    assert RemedyKind.PLAIN not in {way.kind for way in found}


def _midway(garment: Plan, index: int, stitch: int, sights: tuple[Observation, ...]) -> tuple[Remedy, ...]:
    """Count one too few twice in the middle of a round; the last good count was at the beginning of the one before."""
    place = Position(index=index, stitch=stitch)
    verified = Verified(place=Position(index=index - 1), stitches=1)
    fault = Fault(place=place, difference=-1, confirmed=True, sights=sights)
    return ways(garment, State(knitting=Knitting(place=place, verified=verified)), fault)


def test_in_the_middle_of_a_plain_round_its_end_is_waited_for() -> None:
    """The increases of the round below lie on two needles; once the round is done they tell where the stitch is missing,
    and one made anywhere would be in another section."""
    yoke = plan(("yoke", ["co80", "k20 m1 k40 m1 k20", "k82", "k82", "k82"]))

    first = _midway(yoke, 2, 30, (NO_LOOP,))[0]

    assert (first.kind, first.expect, first.by_eye) == (RemedyKind.FINISH, 82, False)


def test_a_round_that_shapes_beside_its_ends_is_finished_by_eye() -> None:
    """Nobody rips three rounds of a sleeve because its decrease round cannot be counted out: the decrease before the end
    shows where it belongs."""
    sleeve = plan(("sleeve", ["co60", "k60", "k60", "k1 k2tog k54 k2tog k1", "k58", "k58"]))

    first = _midway(sleeve, 3, 12, (NO_LOOP,))[0]

    assert (first.kind, first.expect, first.by_eye) == (RemedyKind.FINISH, 58, True)


def test_where_the_fault_is_known_to_lie_ahead_a_shaped_round_is_finished_by_eye_all_the_same() -> None:
    """Counted between the markers, the stitch is missing behind the second one, at stitch 12 of a round that takes two in:
    the loops ahead are still on the left needle, and the decrease before the end shows where it belongs."""
    marked = ("k60", {"markers": (20, 40)})
    shaped = ("k1 k2tog k54 k2tog k1", {"markers": (19, 39)})
    sleeve = plan(("sleeve", ["co60", marked, marked, shaped, "k58", "k58"]))
    place, verified = Position(index=3, stitch=12), Verified(place=Position(index=2), stitches=1)
    state = State(knitting=Knitting(place=place, verified=verified))
    counts = (19, 20, 19)
    answers = tuple(Answer(first=at, end=at + 1, stitches=each) for at, each in enumerate(counts))
    fault = Fault(place=place, difference=-1, confirmed=True, sights=(NO_LOOP,), answers=answers)

    assert search(sleeve, state, fault).found == (39, 59)
    first = ways(sleeve, state, fault)[0]
    assert (first.kind, first.expect, first.by_eye) == (RemedyKind.FINISH, 58, True)


def test_lace_is_not_finished_by_eye() -> None:
    """One stitch off and every repeat behind it is off: there is no plain run to take it up."""
    lace = plan(("shawl", ["co60", "k60", "k60", "(k1 yo k3 k2tog)x10", "k60"]))

    assert all(way.kind is not RemedyKind.FINISH for way in _midway(lace, 3, 12, (NO_LOOP,)))


def test_where_nothing_can_be_seen_at_the_end_of_the_round_either_it_is_not_waited_for() -> None:
    """Plain fabric is as plain there: she would knit on with the fault for nothing."""
    body = plan(("body", ["co40", "k40", "k40", "k40"]))
    assert RemedyKind.FINISH not in {way.kind for way in _midway(body, 2, 10, (NO_LOOP,))}
