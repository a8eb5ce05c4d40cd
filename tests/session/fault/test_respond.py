from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.plan.under_way.absorb import Mend
from stepper.session.answers import TellExpected
from stepper.session.cues import Again, HowMany, Next, WhatElse
from stepper.session.effects import (
    AskCount,
    AskLook,
    AskSections,
    TellCauses,
    TellFound,
    TellLifeline,
    TellMend,
    TellRemedies,
    TellSpot,
    TellStep,
    TellTally,
    TellTinked,
)
from stepper.session.events import Observed, Remedied, Tinked
from stepper.session.evolve import SILENCE_S, is_long_silence
from stepper.session.fault.inquiry import inquire
from stepper.session.fault.respond import (
    AskAgain,
    TellLadder,
    TellOtherWays,
    ask_again,
    ask_checks,
    ask_next,
    tell_causes,
    tell_mends,
    tell_other_ways,
    tell_remedied,
    tell_remedies,
    tell_search,
    tell_spot,
    tell_tally_so_far,
)
from stepper.session.fault.ways import RemedyKind
from stepper.session.machine import Session
from stepper.session.respond import TOLD
from stepper.session.state import (
    Answer,
    Asking,
    Fault,
    Knitting,
    Observation,
    Position,
    Seen,
    State,
    Verified,
)
from tests.plans import plan
from tests.playbook import after, check, opened

LACE = plan(("shawl", [("co40", {"markers": (10, 30)}), ("k40", {"markers": (10, 30)}), "(k2 yo k2tog)x10"]))


def test_the_place_is_told_from_the_last_marker() -> None:
    """Whoever looks at her needles finds it at once."""
    state = State(knitting=Knitting(place=Position(index=1, stitch=31)))
    assert list(tell_spot(LACE, state)) == [TellSpot(past=1, marker=2)]
    begun = State(knitting=Knitting(place=Position(index=1)))
    assert list(tell_spot(LACE, begun)) == [TellSpot(past=0, marker=0, index=1)]
    assert list(tell_spot(LACE, begun, marked=True)) == []


def test_after_a_long_silence_the_place_is_said_first() -> None:
    """Then what was asked; after a short one nothing is added."""
    earlier, later = "2025-03-03T20:00:00+01:00", "2025-03-03T20:40:00+01:00"
    state = State(knitting=Knitting(place=Position(index=1, stitch=31)), last_cue_at=earlier)
    session = Session(LACE, state)

    assert isinstance(session.consider(Again(at=later)).effects[0], TellSpot)
    assert not isinstance(session.consider(Again(at=earlier)).effects[0], TellSpot)
    asked = session.consider(HowMany(at=later)).effects
    assert [type(each) for each in asked] == [TellSpot, TellExpected, TellStep], "and what comes next"
    assert session.consider(Next(at=later)).state.breaks == (Position(index=1, stitch=31),)
    assert is_long_silence(earlier, later) is (SILENCE_S <= 40 * 60)
    assert not is_long_silence("", later)


def test_a_mend_is_told_in_its_round_and_not_before() -> None:
    """It is worked there."""
    mend = Mend(index=2, stitch=20, change=1)
    knitting = Knitting(place=Position(index=2), mends=(mend,))
    assert list(tell_mends(State(knitting=knitting))) == [TellMend(mend=mend)]
    assert list(tell_mends(State(knitting=replace(knitting, place=Position(index=1))))) == []


def test_a_lifeline_is_suggested_before_lace_and_the_count_with_it() -> None:
    """Lace cannot be ripped back without one."""
    state = State(knitting=Knitting(place=Position(index=2), asking=Asking.MORE))
    kinds = [type(effect) for effect in ask_checks(LACE, state, 1)]
    assert kinds == [AskCount, TellLifeline]


def test_what_tells_the_likeliest_causes_apart_is_asked_alone() -> None:
    """A repeat left out leaves stitches over at the end of its round, and an increase left out does not; where nothing is
    left to ask, the place is said. One thing at a time: the causes are told when she asks what happened."""

    def asked(difference: int) -> list[object]:
        fault = Fault(
            place=Position(index=3),
            difference=difference,
            answers=(Answer(first=0, end=1, stitches=9 + difference),),
            sights=(Observation(seen=Seen.LOOP, number=0),),
        )
        verified = Verified(place=Position(index=1), stitches=80)
        knitting = Knitting(place=Position(index=3), verified=verified, fault=fault)
        return list(ask_next(plan(("yoke", ["co80", "(k8 m1)x10", "k90"])), State(knitting=knitting)))

    (fewer,), (more,) = asked(-1), asked(1)
    assert isinstance(fewer, AskLook)
    assert fewer.seen is Seen.LEFT
    assert isinstance(more, TellFound)
    assert (more.first, more.end, more.difference) == (0, 1, 1)


def test_what_comes_off_is_named_stitch_by_stitch() -> None:
    """Who unknits has the stitches before her eyes in the order in which they come off."""
    lace = plan(("shawl", ["co10", "k2 yo k2tog k6"]))
    event = Tinked(at="", origin=Position(index=1, stitch=6), place=Position(index=1, stitch=2), stitches=4)
    told, _ = TOLD[Tinked](lace, State(), event, State(knitting=Knitting(place=event.place)))

    assert isinstance(told, TellTinked)
    assert [(run.stitch, run.times) for run in told.runs] == [("k", 2), ("k2tog", 1), ("yo", 1)]
    assert told.place == event.place


def _knitting(index: int, stitch: int = 0, **fields: object) -> State:
    place = Position(index=index, stitch=stitch)
    return State(knitting=Knitting(place=place, **fields))  # type: ignore[arg-type] # test notation


@pytest.mark.parametrize(
    ("stitch", "past", "marker"),
    [(1, 1, 0), (9, 9, 0), (10, 0, 1), (11, 1, 1), (29, 19, 1), (30, 0, 2), (39, 9, 2)],
)
def test_from_every_stitch_the_marker_behind_it_is_named(stitch: int, past: int, marker: int) -> None:
    """At a marker she is past none. By hand, with markers after ten and thirty of forty; where another line says the stitch,
    a place before the first marker is not worth a word."""
    assert list(tell_spot(LACE, _knitting(1, stitch))) == [TellSpot(past=past, marker=marker)]
    assert bool(list(tell_spot(LACE, _knitting(1, stitch), marked=True))) is (marker > 0)


def test_when_all_is_knitted_there_is_no_place_to_say() -> None:
    """Only what is said at the end."""
    assert list(tell_spot(LACE, _knitting(3))) == []


@pytest.mark.parametrize(
    ("place", "told"),
    [((1, 39), False), ((2, 0), True), ((2, 19), True), ((2, 20), True), ((2, 21), False), ((3, 0), False)],
)
def test_a_mend_is_told_until_the_stitch_it_is_made_at(place: tuple[int, int], *, told: bool) -> None:
    """Behind it, it is made, or too late."""
    state = _knitting(*place, mends=(Mend(index=2, stitch=20, change=1),))
    assert bool(list(tell_mends(state))) is told


def test_what_is_counted_aloud_is_added_up() -> None:
    """Before the first ten it is none."""
    for tens, total in ((None, 0), ((), 0), ((10,), 10), ((10, 14, 3), 27)):
        assert list(tell_tally_so_far(LACE, _knitting(1, tens=tens), HowMany())) == [TellTally(total=total)]


def test_the_round_of_a_mend_and_the_end_of_a_round_begun_with_a_fault_are_counted() -> None:
    """Whatever the interval says: a mend may have gone wrong, and at the end of the round there is more to be seen. With "ask
    less" nothing else is asked for in plain rounds; with "never" not even that."""
    plain = plan(("body", ["co40", "k40", "k40", "k40"]))
    mend, off = Mend(index=1, stitch=3, change=1), Fault(place=Position(index=1, stitch=5), difference=1)
    cases: list[tuple[dict[str, object], str | None]] = [
        ({}, None),
        ({"mends": (mend,)}, "after the mend"),
        ({"mends": (replace(mend, index=2),)}, None),
        ({"fault": off}, "to find the place"),
        ({"fault": replace(off, difference=0)}, None),
        ({"fault": replace(off, place=Position(index=1))}, None),
        ({"fault": replace(off, place=Position(index=2, stitch=5))}, None),
    ]
    for fields, reason in cases:
        asked = list(ask_checks(plain, _knitting(2, asking=Asking.LESS, **fields), 1))
        assert asked == ([] if reason is None else [AskCount(expect=40, reason=reason)]), fields
        assert list(ask_checks(plain, _knitting(2, asking=Asking.NEVER, **fields), 1)) == []


def test_once_a_loop_is_caught_the_stitches_are_counted() -> None:
    """It may not have been the only one; where none hung there is nothing to count anew."""
    for number, counted in ((1, True), (0, False)):
        hung = Fault(place=Position(index=2), difference=-1, sights=(Observation(seen=Seen.LOOP, number=number),))
        event = Observed(at="", place=Position(index=2), sight=Observation(seen=Seen.LOOP, number=0))
        before, after = _knitting(2, fault=hung), _knitting(2)
        told = [each for each in tell_search(LACE, before, event, after) if isinstance(each, AskCount)]
        assert [each.expect for each in told] == ([40] if counted else [])


@pytest.mark.parametrize(
    ("remedy", "undone", "runs", "expect"),
    [
        (RemedyKind.TINK, 3, [("k", 3)], 0),
        (RemedyKind.RIP, 3, [], 0),
        (RemedyKind.LADDER, 0, [], 40),
        (RemedyKind.PLAIN, 0, [], 0),
    ],
)
def test_what_comes_off_is_named_where_it_is_unknit_and_a_count_where_a_loop_is_caught(
    remedy: RemedyKind, undone: int, runs: list[tuple[str, int]], expect: int
) -> None:
    """Ripped stitches are not looked at one by one, and only a caught loop is counted at once. By hand."""
    origin, place = Position(index=1, stitch=8), Position(index=1, stitch=8 - undone)
    event = Remedied(
        at="",
        origin=origin,
        place=place,
        remedy=remedy,
        difference=-1,
        stitches=9,
        minutes=1.0,
        mend=None,
        undone=undone,
    )
    (told,) = tell_remedied(LACE, _knitting(1, 8), event, _knitting(1, 8 - undone))
    assert [(run.stitch, run.times) for run in told.undone] == runs  # type: ignore[attr-defined] # a TellRemedied
    assert (told.expect, told.stitches, told.place) == (expect, undone, place)  # type: ignore[attr-defined] # the same


YOKE = plan(
    (
        "yoke",
        [("co80", {"markers": (20, 40, 60)}), ("k80", {"markers": (20, 40, 60)}), "k80", "(k8 m1)x10", "k90"],
    )
)
OFF = Fault(place=Position(index=2), difference=-1, sights=(Observation(seen=Seen.LOOP, number=0),))


def _looking(fault: Fault | None = OFF, index: int = 2, stitch: int = 0) -> State:
    return _knitting(index, stitch, fault=fault, verified=Verified(place=Position(index=1), stitches=80))


def test_what_happened_and_what_can_be_done_is_told_while_a_fault_is_looked_for() -> None:
    """Asked in so many words, with all of them; where nothing is wrong there is nothing to tell. By hand: an increase round
    ahead has to be worked with its own count."""
    inquiry = inquire(YOKE, _looking())
    assert inquiry is not None
    assert inquiry.causes
    assert inquiry.remedies
    cue = WhatElse()
    assert list(tell_causes(YOKE, _looking(), cue)) == [TellCauses(causes=inquiry.causes, difference=-1)]
    assert list(tell_remedies(YOKE, _looking(), cue)) == [TellRemedies(remedies=inquiry.remedies)]
    assert list(tell_other_ways(YOKE, _looking(), cue)) == [
        TellOtherWays(remedies=inquiry.remedies, exact_at=3)
    ]
    for tell in (tell_causes, tell_remedies, tell_other_ways):
        assert list(tell(YOKE, _looking(None), cue)) == []
    unknown = replace(OFF, difference=0, index=1)
    (other,) = tell_other_ways(YOKE, _looking(unknown), cue)
    assert other.exact_at is None  # type: ignore[attr-defined] # a TellOtherWays


@pytest.mark.parametrize(
    ("remedy", "kind"),
    [
        (RemedyKind.RECOUNT, AskAgain),
        (RemedyKind.NARROW, AskSections),
        (RemedyKind.FINISH, AskAgain),  # there is nothing to finish between two rounds
    ],
)
def test_a_remedy_that_only_looks_closer_asks_for_what_it_needs(remedy: RemedyKind, kind: type) -> None:
    """She has chosen to count, so she is told what to count and how many there should be. By hand: up to the first marker
    twenty of eighty."""
    event = Remedied(
        at="", origin=Position(index=2), place=Position(index=2), remedy=remedy, difference=-1, stitches=9, minutes=1.0,
        mend=None,
    )  # fmt: skip
    (asked,) = tell_remedied(YOKE, _looking(), event, _looking())
    assert isinstance(asked, kind)
    if isinstance(asked, AskSections):
        assert (asked.stretch.first, asked.stretch.end, asked.stretch.expect) == (0, 1, 20)
    if isinstance(asked, AskAgain):
        assert (asked.expect, asked.plain) == (80, False)


def test_asked_for_a_count_once_more_she_is_told_how_many_and_how_to_find_them() -> None:
    """Markers help where nothing else tells one stitch from another. By hand."""
    assert list(ask_again(YOKE, _looking(), WhatElse())) == [AskAgain(expect=80, plain=False)]
    assert list(ask_again(YOKE, _looking(index=2, stitch=3), WhatElse())) == [
        AskAgain(expect=80, plain=False)
    ]
    bare = plan(("body", ["co40", "k40", "k40"]))
    assert list(ask_again(bare, _knitting(2), WhatElse())) == [AskAgain(expect=40, plain=True)]


def test_a_fault_she_has_seen_herself_is_not_counted_once_more() -> None:
    """She named the round it is in: to ask whether she counted right would be to doubt her eyes."""
    plain = plan(("body", ["co40", "k40", "k40", "k40"]))
    none_hangs = Observation(seen=Seen.LOOP, number=0)
    fault = Fault(place=Position(index=3), difference=-1, sights=(none_hangs,))
    for looked, asked in (
        (fault, True),
        (replace(fault, index=1), False),
        (replace(fault, confirmed=True), False),
    ):
        state = State(seq=1, knitting=Knitting(place=Position(index=3), fault=looked))
        assert (AskAgain in [type(each) for each in ask_next(plain, state)]) is asked


@pytest.mark.parametrize("flat", [False, True])
def test_a_loop_below_the_last_round_is_still_caught(flat: bool) -> None:
    """Seen when all is worked but nothing is sewn up: in rows its bars are seen from either side."""
    notes: dict[str, object] = {"flat": flat}
    piece = plan(("body", [("co20", notes), ("k20", notes), ("k20", notes)]))
    hanging = Fault(place=Position(index=3), difference=0, sights=(Observation(seen=Seen.LOOP, number=1),))
    state = State(seq=3, knitting=Knitting(place=Position(index=3), fault=hanging))
    (effect,) = ask_next(piece, state)
    assert isinstance(effect, TellLadder)
    assert effect.flat is flat


def test_where_no_count_is_off_none_is_asked_for_once_more() -> None:
    """She looked for a loop and there is none; nothing else says that her count is wrong."""
    piece = plan(("body", ["co20", "k20", "k20"]))
    looked = Fault(place=Position(index=2), difference=0, sights=(Observation(seen=Seen.LOOP, number=0),))
    state = State(seq=3, knitting=Knitting(place=Position(index=2), fault=looked))
    assert not any(isinstance(each, AskAgain) for each in ask_next(piece, state))


def test_an_open_fault_is_not_forgotten_by_a_step_and_named_where_she_asks_for_her_place() -> None:
    """She counted 48 fewer: the number of the pattern must not be told as what is on her needles."""
    session = after(opened(plan(("body", ["co144", *["k144"] * 4]))), "two rounds done", "count is 96")
    check(
        session,
        """
        > next step
        Still open: 48 too few, counted in round 3. Say: what happened; or: not now.
        Count now: 144 expected, 3 rounds without a count.
        Round 4: knit all one hundred forty four.
        > next step
        Round 5: knit all one hundred forty four.
        > where am i
        Body, round 5 of 5, at its beginning. 144 stitches by the pattern.
        Still open: 48 too few, counted in round 3. Say: what happened; or: not now.
        """,
    )
