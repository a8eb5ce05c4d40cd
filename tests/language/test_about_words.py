from __future__ import annotations

import re
from functools import cache

import pytest

from stepper.language.aloud import spell_out
from stepper.language.effect_words import tell_effect
from stepper.session import cues
from stepper.session.effects import Effect
from stepper.session.machine import Session
from stepper.session.questions import about, about_ahead
from stepper.session.questions.topics import Topic
from stepper.session.state import Knitting, Position, State, Verified
from tests.fixtures import plan_named
from tests.playbook import AT, tell
from tests.tables import each_row

GARMENTS = ("switchback", "cardigan", "shawl", "socks", "mittens", "hat")
WORDS_PER_SECOND = 2.5
"""Of a clear voice; common practice for speech that is listened to."""


@cache
def answers(name: str) -> tuple[tuple[Topic, str], ...]:
    """Return what is answered to every question at a dozen rounds of a garment."""
    plan = plan_named(name)
    told = []
    for index in range(0, len(plan.rounds), max(1, len(plan.rounds) // 12)):
        session = Session(plan, State(seq=5, knitting=Knitting(place=Position(index=index)), last_cue_at=AT))
        for topic in Topic:
            (line,) = tell(session, session.consider(cues.About(at=AT, topic=topic)))
            told.append((topic, line))
    return tuple(told)


@pytest.mark.parametrize("name", GARMENTS)
def test_no_sentence_of_an_answer_is_longer_than_ten_seconds(name: str) -> None:
    """Whatever is asked wherever in a whole garment: the ear keeps no more. A name in the pattern's own words may
    be long, so the bound is loose; a whole round is as long as it is, and she asked for it."""
    for topic, line in answers(name):
        if topic is Topic.THIS_ROUND:
            continue
        for sentence in re.split(r"(?<=[.;:]) ", spell_out(line)):
            assert len(sentence.split()) / WORDS_PER_SECOND <= 10, sentence


@pytest.mark.parametrize("name", GARMENTS)
def test_no_number_stands_beside_another_without_a_pause(name: str) -> None:
    """ "In 3 4" cannot be told from 34: between two figures there is always a word or a mark."""
    for _, line in answers(name):
        assert not re.search(r"\d \d", line), line


def test_flat_knitting_is_told_in_rows() -> None:
    """A shawl has rows; by hand: 32 rows of the fixture increase."""
    session = Session(plan_named("shawl"), State(seq=5, knitting=Knitting(place=Position(index=20))))
    (line,) = tell(session, session.consider(cues.About(at=AT, topic=Topic.INCREASES_LEFT)))

    assert "increase rows left in shawl" in line


SHAWL = plan_named("shawl")
COUNT = Verified(place=Position(index=len(SHAWL.rounds)), stitches=7)


@each_row(
    ("effect", "said"),
    [
        (about_ahead.TellKnittedToday(stitches=0, rounds=0), "Nothing this evening yet."),
        (about_ahead.TellKnittedToday(stitches=30, rounds=0.4), "30 stitches this evening."),
        (about_ahead.TellKnittedToday(stitches=90, rounds=3.2), "About 3 rounds this evening, 90 stitches."),
        (about_ahead.TellReminders(reminders=(), here=0), "No reminders."),
        (about_ahead.TellLastCount(count=None), "No count stands for the stitches in hand."),
        (about_ahead.TellLastCount(count=COUNT), "7 stitches, at the very end."),
        (
            about_ahead.TellShapingLeft(
                increases=True, section="yoke", flat=False, rounds=2, changes=136, done=1, in_hand=(76, 90)
            ),
            "76 of the 90 increases of this round are left. Then 1 increase round in yoke, 60 stitches; 1 done.",
        ),
        (
            about_ahead.TellShapingLeft(
                increases=False, section="cuff", flat=True, rounds=1, changes=1, done=0, in_hand=(1, 2)
            ),
            "1 of the 2 decreases of this row is left. It is the last decrease row in cuff.",
        ),
        (about_ahead.TellAlterations(here=(), elsewhere=()), "Nothing: it is knitted as printed."),
        (
            about_ahead.TellAlterations(here=(), elsewhere=(("one size up", ("cuff",)),)),
            "Nothing here; elsewhere: one size up, in cuff.",
        ),
        (about_ahead.TellAlterations(here=(("one size up", ()),), elsewhere=()), "One size up."),
        (
            about_ahead.TellAlterations(
                here=(("one size up", ("cuff",)),), elsewhere=(("body 3 cm longer", ("body",)),)
            ),
            "One size up, also in cuff. Elsewhere: body 3 cm longer.",
        ),
        (about.TellMeaning(code="k2tog"), "Knit two together: 2 stitches become 1. Leans right."),
        (
            about.TellMeaning(code="ssk"),
            "Slip, slip, knit: 2 stitches become 1. Slip two one by one as if to knit, knit them together through "
            "the back loops; leans left.",
        ),
        (about.TellMeaning(code="yo"), "Yarn over: 1 stitch more. Bring the yarn over the needle for a new stitch with a hole below it."),
        (
            about.TellMeaning(code="p"),
            "Purl one. Yarn in front of the needle. Right needle into the stitch from right to left, its tip on your side; "
            "lay the yarn round it, draw the loop through to the back, let the old stitch off.",
        ),
        (
            about.TellMeaningHere(stitches=("k", "ssk"), words=("Change to 4 mm needles", "")),
            "Slip, slip, knit: 2 stitches become 1. Slip two one by one as if to knit, knit them together through "
            "the back loops; leans left.",
        ),
        (
            about.TellMeaningHere(stitches=("co",), words=("Use waste yarn",)),
            "Waste yarn: any smooth spare yarn. Drawn through stitches with a blunt needle it keeps them, and later it "
            "comes out again. Cast on: make the first loops on the needle, as many as are said; each loop is one stitch. "
            "Any way that you know will do, unless the pattern names one.",
        ),
        (
            about.TellMeaningHere(stitches=(), words=("Twirl",)),
            "There is no word in it that I can explain. Ask for one: what does marker mean.",
        ),
        (
            about.TellMeaning(code="place"),
            "Place: the stitch I take you to be at; to hear it, say: where am I.",
        ),
    ],
)
def test_an_answer_is_said_as_she_would_say_it(effect: Effect, said: str) -> None:
    """Also where there is nothing to tell; what a stitch takes and leaves is common practice."""
    assert tell_effect(effect, SHAWL) == said
