from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.language.numbers import words
from stepper.language.understanding.normal_text import drop_articles, normalise
from stepper.language.understanding.understand import NotUnderstood, understand
from stepper.session import cues
from stepper.session.cues import Cue
from stepper.session.steps import By
from tests.plans import final_increase
from tests.tables import each_row

GARMENT = final_increase()
INCHES = GARMENT.__class__(title="x", rounds=GARMENT.rounds, units="in", yarns=GARMENT.yarns)


@each_row(
    ("said", "cue"),
    [
        ("next step", cues.Next()),
        ("Next step!", cues.Next()),
        ("okay, next step please", cues.Next()),
        ("n", cues.Next()),
        ("go back", cues.Back()),
        ("Where am I?", cues.Where()),
        ("where's the next increase", cues.Spacing()),
        ("where is the next increase", cues.Spacing()),
        ("count is two hundred forty six", cues.Count(stitches=246)),
        ("count is two hundred and forty-six", cues.Count(stitches=246)),
        ("the count is two four six", cues.Count(stitches=246)),
        ("count 1,024", cues.Count(stitches=1024)),
        ("I have 246 sts", cues.Count(stitches=246)),
        ("count is a hundred", cues.Count(stitches=100)),
        ("count is for", cues.Count(stitches=4)),
        ("stitch eighty four", cues.AtStitch(stitch=84)),
        ("at stitch 84.", cues.AtStitch(stitch=84)),
        ("at marker", cues.AtMarker()),
        ("by color", cues.Stride(by=By.COLOUR)),
        ("by row", cues.Stride(by=By.ROUND)),
        ("how many rows to go", cues.HowFar()),
        ("measures thirty centimetres", cues.Length(length_mm=300.0)),
        ("it measures 30cm", cues.Length(length_mm=300.0)),
        ("measures thirty two point five", cues.Length(length_mm=325.0)),
        ("measures 12 1/2 inches", cues.Length(length_mm=317.5)),
        ("measures twelve and a half inches", cues.Length(length_mm=317.5)),
        ('piece measures 12½"', cues.Length(length_mm=317.5)),
        ("the length is 310 mm", cues.Length(length_mm=310.0)),
        ("Pine weighs forty two grams", cues.Weight(yarn="A", grams=42.0)),
        ("the pine yarn weighs 42.5 g", cues.Weight(yarn="A", grams=42.5)),
        ("a weighs 40", cues.Weight(yarn="A", grams=40.0)),
        ("weight of the chalk is 12 grams", cues.Weight(yarn="MC", grams=12.0)),
        ("make a note: Cuff K2, P2 (tight)!", cues.Note(text="Cuff K2, P2 (tight)!")),
        ("note please ask about the cuff", cues.Note(text="please ask about the cuff")),
        ("make a note", cues.Note(text="")),
        ("i started a new ball", cues.Note(text="a new ball")),
        ("go to round twelve", cues.GoTo(round_number=12)),
        ("go to row 12", cues.GoTo(round_number=12)),
        ("go back to row 12", cues.GoTo(round_number=12)),
        ("back to body round 3", cues.GoTo(place="body", round_number=3)),
        ("I see a mistake three rounds down", cues.FaultIn(back=3)),
        ("there is a mistake 2 rows back", cues.FaultIn(back=2)),
        ("go to the final increase", cues.GoTo(place="Final increase")),
        ("go to Body round 3", cues.GoTo(place="body", round_number=3)),
        ("go to round 3 of the body", cues.GoTo(place="body", round_number=3)),
        ("that's all for tonight", cues.Enough()),
        ("That is all, thanks", cues.Enough()),
        ("?", cues.Help()),
    ],
)
def test_what_is_said_is_understood(said: str, cue: Cue | None) -> None:
    """Case, signs, fillers, articles, American and British words, and numbers in every form."""
    found = understand(said, GARMENT)

    if cue is None:
        assert isinstance(found, NotUnderstood)
    else:
        assert found == cue


@given(st.integers(0, 9999))
def test_every_count_is_understood(n: int) -> None:
    """In words and in figures, up to more than any garment has."""
    assert understand(f"count is {words(n)}", GARMENT) == cues.Count(stitches=n)
    assert understand(f"count {n}", GARMENT) == cues.Count(stitches=n)


def test_a_bare_length_is_in_the_unit_of_the_pattern() -> None:
    """Twelve is twelve inches where the pattern is in inches."""
    assert understand("measures twelve", INCHES) == cues.Length(length_mm=12 * 25.4)
    assert understand("measures twelve", GARMENT) == cues.Length(length_mm=120.0)
    assert understand("measures twelve cm", INCHES) == cues.Length(length_mm=120.0)


@pytest.mark.parametrize(
    ("said", "answer"),
    [
        ("nxt step", 'Not understood: "nxt step". Did you mean: next step?'),
        ("cuont 246", 'Not understood: "cuont 246". Say: what can I say.'),
        ("count is lots", '"lots" is not a whole number that I know.'),
        ("measures a bit", '"a bit" is not a length that I know.'),
        ("pine weighs nothing much", '"nothing much" is not a weight that I know.'),
        ("go to the boddy", 'Nothing here is called "boddy". Nearest: body.'),
        ("go to jail", 'Nothing here is called "jail".'),
        ("", "I heard nothing. Say: what can I say."),
        ("246", 'Not understood: "246". Say: what can I say.'),
        ("xyzzy", 'Not understood: "xyzzy". Say: what can I say.'),
        ("count is -5", '"-5" is not a whole number that I know.'),
    ],
)
def test_what_is_not_understood_is_answered_with_the_nearest(said: str, answer: str) -> None:
    """Nothing is guessed; the knitter hears what was missing or what is nearest."""
    found = understand(said, GARMENT)

    assert isinstance(found, NotUnderstood)
    assert found.sentence == answer


def test_a_cue_inside_a_sentence_is_no_cue() -> None:
    """The film says "what is the next step, inspector"; only a whole utterance counts."""
    assert isinstance(understand("what is the next step inspector", GARMENT), NotUnderstood)
    assert isinstance(understand("she said go back home", GARMENT), NotUnderstood)


def test_her_own_wordings_are_understood() -> None:
    """The project file or the settings may add hers; they mean what they are set to."""
    own = {"Onward, ho!": "next step", "tally twelve": "count is twelve"}

    assert understand("onward ho", GARMENT, own=own) == cues.Next()
    assert understand("tally twelve", GARMENT, own=own) == cues.Count(stitches=12)


def test_the_time_goes_into_the_cue() -> None:
    """Understanding has no clock of its own."""
    found = understand("next step", GARMENT, at="2030-01-01T00:00:00+00:00")

    assert found == cues.Next(at="2030-01-01T00:00:00+00:00")


@given(st.text(max_size=60))
def test_any_text_gives_a_cue_or_a_sentence(text: str) -> None:
    """Whatever a cat types on the keyboard, there is an answer."""
    found = understand(text, GARMENT)

    assert isinstance(found, Cue) or found.sentence


@given(st.text(max_size=60))
def test_reducing_a_text_twice_changes_no_more(text: str) -> None:
    """One form for each meaning: the reduced form is its own."""
    once = drop_articles(normalise(text))

    assert drop_articles(normalise(once)) == once


def test_what_is_nearly_right_is_taken_where_one_meaning_is_near() -> None:
    """Typed it is any cue, heard it is a question; two meanings, a slot or the end of the evening are asked back."""
    plan = final_increase()

    assert understand("nxt step", plan, nearly=cues.Cue) == cues.Next()
    assert isinstance(understand("nxt step", plan, nearly=cues.Asks), NotUnderstood)
    assert understand("where am", plan, nearly=cues.Asks) == cues.Where()
    for said in ("film o", "good nigt", "take remedi", "zzz"):
        assert isinstance(understand(said, plan, nearly=cues.Cue), NotUnderstood), said


@pytest.mark.parametrize(
    "said",
    [
        *("the round is not done", "the lifeline isn't in", "no lifeline here"),
        *("the increases aren't right", "the decreases are not right", "changes are not right", "no next step"),
        *("I did not do that round twice", "the yarn is not finished"),
    ],
)
def test_what_is_denied_is_never_taken_for_what_it_denies(said: str) -> None:
    """Two letters turn it round: a loop that is not caught would run, a round not done would be counted."""
    assert isinstance(understand(said, final_increase(), nearly=Cue), NotUnderstood)


def test_a_line_is_found_by_the_word_that_only_it_has() -> None:
    """ "The increase" is the line called "Final increase"."""
    assert understand("how far to the next increase", final_increase()) == cues.HowFarTo(place="Final increase")


def test_a_longer_word_that_no_wording_has_asks_for_more() -> None:
    """What she asks of one yarn is not answered with the stitches of all; a slip of the fingers still is."""
    plan = final_increase()
    assert isinstance(understand("how many ember stitches", plan, nearly=Cue), NotUnderstood)
    assert isinstance(understand("how many stiches", plan, nearly=Cue), cues.HowMany)


def test_words_for_a_reminder_may_stand_in_front() -> None:
    """ "Remind me to try it on in five rounds", as it is said."""
    cue = understand("remind me to try it on in five rounds", final_increase())
    assert cue == cues.RemindMe(at="", rounds=5, text="try it on")
