from __future__ import annotations

from dataclasses import replace

from stepper.plan.under_way.lengthen import LengthCorrection
from stepper.screen.garment_record import NO_RECORD, record_garment
from stepper.session import events
from stepper.session.events import Event
from stepper.session.fault.ways import RemedyKind
from stepper.session.state import Position
from tests.screen.scenes import garment


def _step(index: int, at: str) -> Event:
    origin, place = Position(index=index), Position(index=index + 1)
    return events.Advanced(at=at, origin=origin, place=place, stitches=60)


def _numbered(*found: Event) -> list[tuple[int, Event]]:
    return list(enumerate(found, start=1))


def test_evenings_and_hours_are_counted_from_the_journal() -> None:
    """Half past midnight still belongs to the evening before; two pauses of five minutes are ten at the needles."""
    record = record_garment(
        _numbered(
            _step(0, "2027-01-05T23:50:00+01:00"),
            _step(1, "2027-01-05T23:55:00+01:00"),
            _step(2, "2027-01-06T00:00:00+01:00"),
            _step(3, "2027-01-08T20:00:00+01:00"),
        ),
        garment(),
    )

    assert (record.begun, record.ended, record.evenings) == ("2027-01-05", "2027-01-08", 2)
    assert record.seconds == 600


def test_what_was_altered_is_told_once() -> None:
    """A correction of a length, a count made good, and what the file itself alters; a step is no alteration."""
    here = Position(index=4)
    rounds = garment().rounds
    altered = replace(garment(), rounds=(*rounds[:-2], *(replace(r, altered=("knitted longer",)) for r in rounds[-2:])))
    measured = events.Measured(
        at="x", place=here, length_mm=300, section="body", rounds_before=8, correction=_correction(6)
    )
    plain = events.Measured(at="x", place=here, length_mm=300, section="body")
    mended = events.Remedied(
        at="x", origin=here, place=here, remedy=RemedyKind.RESPACE, difference=-1, stitches=3, minutes=1
    )
    record = record_garment(_numbered(plain, measured, mended, mended, _step(4, "x")), altered)

    assert record.altered[0] == "Body: knitted longer"
    assert record.altered[1] == "Body measured 30 cm; worked for 6 rounds instead of 8"
    assert record.altered[2].startswith("1 too few")
    assert len(record.altered) == 3


def _correction(rounds: int) -> LengthCorrection:
    return LengthCorrection(stretch=0, rounds=rounds, rounds_per_10cm=30)


def test_what_was_taken_back_is_not_told() -> None:
    """A note undone was never made."""
    at = "2027-01-05T20:00:00+01:00"
    kept = _numbered(
        events.Noted(at=at, place=Position(), text="soft"),
        events.Noted(at=at, place=Position(), text="wrong"),
        events.Undone(at=at, seq=2),
    )

    assert record_garment(kept, garment()).notes == ("soft",)
    assert record_garment([], garment()) == NO_RECORD
