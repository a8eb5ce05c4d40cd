from __future__ import annotations

import dataclasses
import inspect
import typing
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from stepper.plan.model import OpenKind
from stepper.plan.under_way.carry import Difference
from stepper.plan.under_way.lengthen import LengthCorrection
from stepper.plan.under_way.respace import Respacing
from stepper.plan.under_way.resuming import PlaceChoice
from stepper.session import events
from stepper.session.codec import (
    KINDS,
    VERSIONS,
    CodecError,
    decode_event,
    decode_state,
    encode_event,
    encode_state,
    kind_of,
)
from stepper.session.events import Event
from stepper.session.evolve import evolve_all
from stepper.session.state import (
    Adapted,
    Answer,
    Asking,
    Doubt,
    DoubtKind,
    Mend,
    Observation,
    OpenAnswer,
    OpenWork,
    Position,
    Question,
    ReadingAlong,
    Reminder,
    Seen,
    State,
)
from stepper.session.steps import By, RoundSort
from tests.agreed import compare
from tests.session.samples import EVENTS, of_kind
from tests.tables import each_row

AT = "2025-03-03T20:15:00+01:00"

FROZEN: tuple[tuple[str, int, str, Event], ...] = (
    (
        "reminder-set",
        1,
        '{"at":"2025-03-03T20:15:00+01:00","place":{"index":4,"stitch":2},'
        '"reminder":{"index":14,"text":"try it on"}}',
        events.ReminderSet(
            at=AT, place=Position(index=4, stitch=2), reminder=Reminder(index=14, text="try it on")
        ),
    ),
    (
        "reading-set",
        1,
        '{"at":"2025-03-03T20:15:00+01:00","reading":{"index":4,"factor":1.25,"held":true}}',
        events.ReadingSet(at=AT, reading=ReadingAlong(index=4, factor=1.25, held=True)),
    ),
    (
        "opened",
        1,
        '{"at":"2025-03-03T20:15:00+01:00","fingerprint":"ab12"}',
        events.Opened(at=AT, fingerprint="ab12"),
    ),
    (
        "plan-changed",
        1,
        '{"at":"2025-03-03T20:15:00+01:00","old_fingerprint":"a","new_fingerprint":"b","origin":{"index":4},'
        '"place":{"index":5,"stitch":7},"corrections":[{"stretch":0,"rounds":9,"rounds_per_10cm":33.5}],'
        '"changes":[{"kind":"added","section":"yoke","first":2,"last":3,"label":null,"rounds_before":0,'
        '"rounds_after":2,"count_before":20,"count_after":20,"knitted":true}],"have":20,"want":21,"found":false}',
        events.PlanChanged(
            at=AT,
            old_fingerprint="a",
            new_fingerprint="b",
            origin=Position(index=4),
            place=Position(index=5, stitch=7),
            corrections=(LengthCorrection(stretch=0, rounds=9, rounds_per_10cm=33.5),),
            changes=(
                Difference(
                    kind="added",
                    section="yoke",
                    first=2,
                    last=3,
                    label=None,
                    rounds_before=0,
                    rounds_after=2,
                    count_before=20,
                    count_after=20,
                    knitted=True,
                ),
            ),
            have=20,
            want=21,
            found=False,
        ),
    ),
    (
        "plan-changed",
        2,
        '{"at":"2025-03-03T20:15:00+01:00","old_fingerprint":"a","new_fingerprint":"b","origin":{"index":4},'
        '"place":{"index":5,"stitch":7},"corrections":[],"changes":[],"have":20,"want":20,'
        '"respacings":[{"index":3,"section":"yoke","before":8,"after":9,"places":[4]}],'
        '"lifelines":[{"index":3}],"answer":2}',
        events.PlanChanged(
            at=AT,
            old_fingerprint="a",
            new_fingerprint="b",
            origin=Position(index=4),
            place=Position(index=5, stitch=7),
            corrections=(),
            changes=(),
            have=20,
            want=20,
            respacings=(Respacing(index=3, section="yoke", before=8, after=9, places=(4,)),),
            lifelines=(Position(index=3),),
            answer=2,
        ),
    ),
    (
        "plan-changed",
        2,
        '{"at":"2025-03-03T20:15:00+01:00","old_fingerprint":"a","new_fingerprint":"b","origin":{"index":4},'
        '"place":{"index":6},"corrections":[],"changes":[],"have":20,"want":20,"settled":true}',
        events.PlanChanged(
            at=AT,
            old_fingerprint="a",
            new_fingerprint="b",
            origin=Position(index=4),
            place=Position(index=6),
            corrections=(),
            changes=(),
            have=20,
            want=20,
            settled=True,
        ),
    ),
    (
        "row-said",
        1,
        '{"at":"2025-03-03T20:15:00+01:00","said":{"rows":2,"stitches":44,"declined":true}}',
        events.RowSaid(at=AT, said=OpenWork(rows=2, stitches=44, declined=True)),
    ),
    (
        "row-answered",
        1,
        '{"at":"2025-03-03T20:15:00+01:00","meant":{"kind":"rows","rows":2,"stitches":44},"words":"Twirl."}',
        events.RowAnswered(
            at=AT, meant=OpenAnswer(kind=OpenKind.ROWS, rows=2, stitches=44), words="Twirl."
        ),
    ),
    (
        "place-asked",
        1,
        '{"at":"2025-03-03T20:15:00+01:00","old_fingerprint":"a","question":{"new_fingerprint":"b","choices":'
        '[{"index":5,"stitch":7,"section":"yoke","number":4,"flat":false,"label":null,"have":20,"want":21},'
        '{"index":2,"stitch":0,"section":"yoke","number":1,"flat":false,"label":"Inc","have":19,"want":19,'
        '"rounds_back":3,"stitches_back":7}],"adapted":{"lifelines":[{"index":2}]}},"changes":[]}',
        events.PlaceAsked(
            at=AT,
            old_fingerprint="a",
            question=Question(
                new_fingerprint="b",
                choices=(
                    PlaceChoice(
                        index=5, stitch=7, section="yoke", number=4, flat=False, label=None, have=20, want=21
                    ),
                    PlaceChoice(
                        index=2, stitch=0, section="yoke", number=1, flat=False, label="Inc", have=19,
                        want=19, rounds_back=3, stitches_back=7,
                    ),
                ),
                adapted=Adapted(lifelines=(Position(index=2),)),
            ),
            changes=(),
        ),
    ),
    (
        "place-asked",
        2,
        '{"at":"2025-03-03T20:15:00+01:00","old_fingerprint":"a","question":{"new_fingerprint":"b","choices":'
        '[{"index":5,"stitch":7,"section":"yoke","number":4,"flat":false,"label":null,"have":20,"want":20,'
        '"places":[3,6,9],"made":1,"before":18,"after":21}],"adapted":{}},"changes":[]}',
        events.PlaceAsked(
            at=AT,
            old_fingerprint="a",
            question=Question(
                new_fingerprint="b",
                choices=(
                    PlaceChoice(
                        index=5, stitch=7, section="yoke", number=4, flat=False, label=None, have=20, want=20,
                        places=(3, 6, 9), made=1, before=18, after=21,
                    ),
                ),
            ),
            changes=(),
        ),
    ),
    (
        "advanced",
        1,
        '{"at":"2025-03-03T20:15:00+01:00","origin":{"index":4,"stitch":2},"place":{"index":5},"stitches":18}',
        events.Advanced(at=AT, origin=Position(index=4, stitch=2), place=Position(index=5), stitches=18),
    ),
    (
        "returned",
        1,
        '{"at":"2025-03-03T20:15:00+01:00","origin":{"index":4},"place":{"index":3,"stitch":12}}',
        events.Returned(at=AT, origin=Position(index=4), place=Position(index=3, stitch=12)),
    ),
    (
        "placed",
        1,
        '{"at":"2025-03-03T20:15:00+01:00","origin":{"index":4},"place":{"index":4,"stitch":84}}',
        events.Placed(at=AT, origin=Position(index=4), place=Position(index=4, stitch=84)),
    ),
    (
        "jumped",
        1,
        '{"at":"2025-03-03T20:15:00+01:00","origin":{"index":4},"place":{}}',
        events.Jumped(at=AT, origin=Position(index=4), place=Position()),
    ),
    (
        "jumped",
        3,
        '{"at":"2025-03-03T20:15:00+01:00","origin":{"index":4},"place":{"index":40},"off_path":true}',
        events.Jumped(at=AT, origin=Position(index=4), place=Position(index=40), off_path=True),
    ),
    (
        "advanced",
        2,
        '{"at":"2025-03-03T20:15:00+01:00","origin":{"index":4,"stitch":2},"place":{"index":5},"stitches":18,'
        '"work":"rib"}',
        events.Advanced(
            at=AT, origin=Position(index=4, stitch=2), place=Position(index=5), stitches=18, work="rib"
        ),
    ),
    (
        "returned",
        2,
        '{"at":"2025-03-03T20:15:00+01:00","origin":{"index":4},"place":{"index":3,"stitch":12},"stitches":20}',
        events.Returned(at=AT, origin=Position(index=4), place=Position(index=3, stitch=12), stitches=20),
    ),
    (
        "placed",
        2,
        '{"at":"2025-03-03T20:15:00+01:00","origin":{"index":4},"place":{"index":4,"stitch":84},"stitches":84,'
        '"work":"colourwork"}',
        events.Placed(
            at=AT, origin=Position(index=4), place=Position(index=4, stitch=84), stitches=84, work="colourwork"
        ),
    ),
    (
        "jumped",
        2,
        '{"at":"2025-03-03T20:15:00+01:00","origin":{"index":4},"place":{},"stitches":700}',
        events.Jumped(at=AT, origin=Position(index=4), place=Position(), stitches=700),
    ),
    (
        "stride-set",
        2,
        '{"at":"2025-03-03T20:15:00+01:00","by":"gap","sort":"shaped"}',
        events.StrideSet(at=AT, by=By.GAP, sort=RoundSort.SHAPED),
    ),
    (
        "stride-set",
        1,
        '{"at":"2025-03-03T20:15:00+01:00","by":"repeat"}',
        events.StrideSet(at=AT, by=By.REPEAT),
    ),
    (
        "counted",
        1,
        '{"at":"2025-03-03T20:15:00+01:00","place":{"index":4},"stitches":245,"expected":246,"expected_end":246}',
        events.Counted(at=AT, place=Position(index=4), stitches=245, expected=246, expected_end=246),
    ),
    (
        "counted",
        2,
        '{"at":"2025-03-03T20:15:00+01:00","place":{"index":4},"stitches":245,"expected":246,"expected_end":246,"worked":21}',
        events.Counted(at=AT, place=Position(index=4), stitches=245, expected=246, expected_end=246, worked=21),
    ),
    (
        "doubted",
        1,
        '{"at":"2025-03-03T20:15:00+01:00","doubt":{"kind":"count","place":{"index":4},"number":146}}',
        events.Doubted(at=AT, doubt=Doubt(kind=DoubtKind.COUNT, place=Position(index=4), number=146)),
    ),
    (
        "measured",
        1,
        '{"at":"2025-03-03T20:15:00+01:00","place":{"index":60},"length_mm":190.5,"section":"body",'
        '"rounds_worked":50,"rounds_before":96,"rounds_left":34,"target_mm":320,"planned_per_10cm":30,'
        '"correction":{"stretch":1,"rounds":84,"rounds_per_10cm":26.2}}',
        events.Measured(
            at=AT,
            place=Position(index=60),
            length_mm=190.5,
            section="body",
            rounds_worked=50,
            rounds_before=96,
            rounds_left=34,
            target_mm=320.0,
            planned_per_10cm=30.0,
            correction=LengthCorrection(stretch=1, rounds=84, rounds_per_10cm=26.2),
        ),
    ),
    (
        "weighed",
        1,
        '{"at":"2025-03-03T20:15:00+01:00","place":{"index":4},"yarn":"A","grams":42.5}',
        events.Weighed(at=AT, place=Position(index=4), yarn="A", grams=42.5),
    ),
    (
        "noted",
        1,
        '{"at":"2025-03-03T20:15:00+01:00","place":{"index":4},"text":"tight \\u2014 cuff"}',
        events.Noted(at=AT, place=Position(index=4), text="tight — cuff"),
    ),
    ("undone", 1, '{"at":"2025-03-03T20:15:00+01:00","seq":17}', events.Undone(at=AT, seq=17)),
    ("fell-asleep", 1, '{"at":"2025-03-03T20:15:00+01:00"}', events.FellAsleep(at=AT)),
    ("woke-up", 1, '{"at":"2025-03-03T20:15:00+01:00"}', events.WokeUp(at=AT)),
    (
        "closed",
        1,
        '{"at":"2025-03-03T20:15:00+01:00","place":{"index":4,"stitch":2}}',
        events.Closed(at=AT, place=Position(index=4, stitch=2)),
    ),
    (
        "searched",
        1,
        '{"at":"2025-03-03T20:15:00+01:00","answers":[{"first":0,"end":2,"stitches":61}]}',
        events.Searched(at=AT, answers=()),  # its landmarks may have been numbered otherwise; counted anew
    ),
    (
        "searched",
        2,
        '{"at":"2025-03-03T20:15:00+01:00","answers":[{"first":0,"end":2,"stitches":61}]}',
        events.Searched(at=AT, answers=(Answer(first=0, end=2, stitches=61),)),
    ),
    (
        "observed",
        1,
        '{"at":"2025-03-03T20:15:00+01:00","place":{"index":4},"sight":{"seen":"left","number":-11},"index":3}',
        events.Observed(at=AT, place=Position(index=4), sight=Observation(seen=Seen.LEFT, number=-11), index=3),
    ),
    (
        "remedied",
        1,
        '{"at":"2025-03-03T20:15:00+01:00","origin":{"index":4},"place":{"index":4},"remedy":"plain",'
        '"difference":-1,"stitches":3,"minutes":0.1,"mend":{"index":4,"stitch":37,"change":1}}',
        events.Remedied(
            at=AT,
            origin=Position(index=4),
            place=Position(index=4),
            remedy="plain",
            difference=-1,
            stitches=3,
            minutes=0.1,
            mend=Mend(index=4, stitch=37, change=1),
        ),
    ),
    (
        "tinked",
        1,
        '{"at":"2025-03-03T20:15:00+01:00","origin":{"index":4,"stitch":9},"place":{"index":4},"stitches":9}',
        events.Tinked(at=AT, origin=Position(index=4, stitch=9), place=Position(index=4), stitches=9),
    ),
    (
        "respaced",
        1,
        '{"at":"2025-03-03T20:15:00+01:00","origin":{"index":4,"stitch":9},"place":{"index":4,"stitch":8},"made":1,'
        '"planned":2,"respacing":{"index":4,"section":"yoke","before":20,"after":23,"places":[3,7,14]}}',
        events.Respaced(
            at=AT,
            origin=Position(index=4, stitch=9),
            place=Position(index=4, stitch=8),
            made=1,
            planned=2,
            respacing=Respacing(index=4, section="yoke", before=20, after=23, places=(3, 7, 14)),
        ),
    ),
    (
        "lifeline-laid",
        1,
        '{"at":"2025-03-03T20:15:00+01:00","place":{"index":4}}',
        events.LifelineLaid(at=AT, place=Position(index=4)),
    ),
    (
        "reminders-forgotten",
        1,
        '{"at":"2025-03-03T20:15:00+01:00"}',
        events.RemindersForgotten(at=AT),
    ),
    (
        "asking-set",
        1,
        '{"at":"2025-03-03T20:15:00+01:00","asking":"less"}',
        events.AskingSet(at=AT, asking=Asking.LESS),
    ),
    (
        "search-left",
        1,
        '{"at":"2025-03-03T20:15:00+01:00"}',
        events.SearchLeft(at=AT),
    ),
    (
        "tallied",
        1,
        '{"at":"2025-03-03T20:15:00+01:00","tens":[10,14]}',
        events.Tallied(at=AT, tens=(10, 14)),
    ),
)
"""One entry of every kind and version ever written. Only ever added to: journals on disk hold these."""


@each_row(("kind", "version", "body", "event"), FROZEN)
def test_what_was_ever_written_is_still_read(kind: str, version: int, body: str, event: Event) -> None:
    """A journal of years ago is still this garment's history."""
    assert decode_event(kind, version, body) == event


def test_every_kind_and_version_has_its_frozen_sample() -> None:
    """A new kind, or a new version of one, comes with a sample that is kept for ever."""
    assert {(kind, version) for kind, version, _, _ in FROZEN} >= set(VERSIONS.items())


def test_every_event_class_is_known_to_the_codec() -> None:
    """An event that cannot be written would be lost at the first crash."""
    defined = {
        each
        for _, each in inspect.getmembers(events, inspect.isclass)
        if issubclass(each, Event) and each not in (Event, events.Moved)
    }

    assert defined == set(events.EVENTS) == set(KINDS.values())


@pytest.mark.parametrize("kind", events.EVENTS, ids=kind_of)
def test_every_event_comes_back_as_it_was(kind: type[Event]) -> None:
    """Written and read again, an event is the same, field by field."""

    @settings(max_examples=30)  # of each of nearly thirty kinds
    @given(of_kind(kind))
    def check(event: Event) -> None:
        assert decode_event(*encode_event(event)) == event

    check()


@given(st.lists(EVENTS, max_size=40))
def test_every_state_comes_back_as_it_was(found: list[Event]) -> None:
    """A snapshot that is not the state would be worse than none."""
    state = evolve_all(State(), found)

    assert decode_state(encode_state(state)) == state


@pytest.mark.parametrize(
    ("kind", "version", "body"),
    [
        ("knotted", 1, "{}"),
        ("advanced", 99, "{}"),
        ("advanced", 1, "{}"),
        ("advanced", 1, "not json"),
        ("undone", 1, '{"at":"x","seq":"17"}'),
        ("undone", 1, '{"at":"x","seq":true}'),
        ("undone", 1, '{"at":"x","seq":17,"more":1}'),
        ("stride-set", 1, '{"at":"x","by":"row"}'),
        ("placed", 1, '{"at":"x","origin":[],"place":{}}'),
    ],
)
def test_what_cannot_be_read_is_said_and_not_guessed(kind: str, version: int, body: str) -> None:
    """A damaged entry, or one from a newer program, stops with a sentence instead of another history."""
    with pytest.raises(CodecError, match="journal"):
        decode_event(kind, version, body)


@pytest.mark.parametrize("body", ["", "[]", '{"seq":"x"}', '{"unheard":1}', '{"knitting":{"by":"row"}}'])
def test_a_snapshot_that_cannot_be_read_is_left(body: str) -> None:
    """A snapshot is only a cache; a bad one costs time and nothing else."""
    assert decode_state(body) is None


def _kept_records(kind: object, known: set[type]) -> None:
    """Add to those known a type and all that its fields hold."""
    for part in typing.get_args(kind):
        _kept_records(part, known)
    if isinstance(kind, type) and dataclasses.is_dataclass(kind) and kind not in known:
        known.add(kind)
        for hint in typing.get_type_hints(kind).values():
            _kept_records(hint, known)


def test_what_is_left_out_of_a_journal_means_what_it_always_meant() -> None:
    """A field at its default is not written. Were the default another one day, the journals of last winter would say
    something else: a field that is added is added to the text, and no row of it is ever changed."""
    known: set[type] = set()
    for kind in (State, *KINDS.values()):
        _kept_records(kind, known)
    rows = [
        f"{kind.__name__}.{each.name} = {each.default!r}"
        for kind in sorted(known, key=lambda kind: kind.__name__)
        for each in dataclasses.fields(kind)
        if each.default is not dataclasses.MISSING
    ]
    assert decode_state("{}") == State()
    compare(Path(__file__).parent / "kept" / "left_out.txt", rows)
