from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given, settings

from stepper.language.event_words import EVENT_WORDS, journal_words, notes_words
from stepper.plan.model import OpenKind
from stepper.session import events
from stepper.session.fault.ways import RemedyKind
from stepper.session.respond import TOLD
from stepper.session.state import OpenAnswer, OpenWork, Position
from tests.plans import final_increase
from tests.playbook import AT
from tests.session.samples import of_kind

PLAN = final_increase()


def test_every_event_has_its_words() -> None:
    """An event without words would end the journal's page with an error."""
    assert set(EVENT_WORDS) == set(events.EVENTS)


def test_what_is_told_by_no_effect_of_its_own_has_words_to_be_told() -> None:
    """Else she says something, it is kept, and she hears nothing."""
    silent = [kind for kind in events.EVENTS if kind not in TOLD]

    for kind in silent:

        @settings(max_examples=15)
        @given(of_kind(kind))
        def told(event: events.Event) -> None:
            assert EVENT_WORDS[type(event)].told(event, PLAN)

        told()


REMEDIED = events.Remedied(
    at=AT,
    origin=Position(index=9),
    place=Position(index=8),
    remedy=RemedyKind.RIP,
    difference=-2,
    stitches=40,
    minutes=2.0,
)


@pytest.mark.parametrize("remedy", RemedyKind)
def test_every_remedy_is_told_apart_in_the_notes(remedy: RemedyKind) -> None:
    """Who reads the notes wants to know what was done to the fabric."""
    said = {kind: notes_words(replace(REMEDIED, remedy=kind), PLAN) for kind in RemedyKind}

    assert said[remedy].startswith("2 too few")
    assert list(said.values()).count(said[remedy]) == 1


@pytest.mark.parametrize(
    ("event", "journal", "notes"),
    [
        (events.Noted(at=AT, place=Position(), text="soft"), "note: soft", "soft"),
        (events.Counted(at=AT, place=Position(), stitches=9, expected=9, expected_end=9),
         "counted 9: as it should be", ""),
        (events.Counted(at=AT, place=Position(), stitches=8, expected=9, expected_end=9),
         "counted 8: 9 expected", "counted 8 where 9 were expected, neckband round 1"),
        (events.RowSaid(at=AT, said=OpenWork(rows=2)), "a row by its words: 2 rounds done", ""),
        (events.RowSaid(at=AT, said=OpenWork(rows=2, stitches=44)),
         "a row by its words: 2 rounds done, counted 44", ""),
        (events.RowSaid(at=AT, said=OpenWork(idle=True)), "a row by its words: nothing is knitted", ""),
        (events.RowAnswered(at=AT, meant=OpenAnswer(kind=OpenKind.ROWS, rows=2, stitches=44), words="Twirl."),
         "a row by its words answered: 2 rounds, then 44 stitches",
         "knitted by its words (2 rounds, then 44 stitches): Twirl."),
        (events.RowAnswered(at=AT, meant=OpenAnswer(kind=OpenKind.HOLD), words="Park 8."),
         "a row by its words answered: as proposed", "knitted by its words (as proposed): Park 8."),
        (events.RowAnswered(at=AT, meant=OpenAnswer(kind=OpenKind.IDLE), words="Tea."),
         "a row by its words answered: nothing to knit", "knitted by its words (nothing to knit): Tea."),
        (events.WokeUp(at=AT), "ears open", ""),
        (events.Advanced(at=AT, origin=Position(index=1), place=Position(index=2), stitches=225),
         "done: Neckband, round 2 of 2", ""),
        (events.Advanced(at=AT, origin=Position(index=1), place=Position(index=1), stitches=0),
         "heard what comes first, neckband round 2", ""),
        (events.Advanced(at=AT, origin=Position(index=3), place=Position(index=3, stitch=12), stitches=12),
         "worked 12 stitches, to Yoke, round 2 of 6, Final increase, stitch 12", ""),
    ],
)  # fmt: skip
def test_the_page_says_all_and_the_notes_what_is_worth_writing_down(
    event: events.Event, journal: str, notes: str
) -> None:
    """The page is for finding a place again, the notes for other knitters."""
    assert journal_words(event, PLAN) == journal
    assert notes_words(event, PLAN) == notes
