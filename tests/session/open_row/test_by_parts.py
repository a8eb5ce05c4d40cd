"""What is asked of the stitches of a row that turns or binds off in its middle: each answer a yes, a no or a number."""

from __future__ import annotations

from dataclasses import replace

import pytest

from stepper.language.aloud import spell_out
from stepper.language.open_words import ask_parts, say_parts, tell_open_row
from stepper.language.stretches import part_long_sentences
from stepper.plan.model import CountWanted, OpenKind, OpenRow, PartKind, Plan, RowPart
from stepper.session.cues import Back, Count, Cue, Next, No, RoundsDone, Yes
from stepper.session.events import RowAnswered, RowSaid
from stepper.session.open_row.by_parts import Ask, PartQuestion, question_of
from stepper.session.open_row.telling import TellOpenRow
from stepper.session.speech_length import seconds_of
from stepper.session.state import OpenAnswer, OpenWork, PartAnswer
from tests.playbook import AT, check
from tests.session.open_row.evening import ROW, cowl, evening
from tests.session.open_row.test_rules import say
from tests.tables import each_row

PIECES = (("sleeve", 12), ("body", 40))
LONGEST_S = 12.0
"""The longest that one sentence is to take. Unit: s."""


def worked(many: int, to: int = 0) -> RowPart:
    """Return stitches that are worked."""
    return RowPart(kind=PartKind.WORKED, stitches=many, leaves=to or many)


def part(kind: PartKind, many: int, name: str = "", to: int = 0) -> RowPart:
    """Return stitches of which something else becomes."""
    return RowPart(kind=kind, stitches=many, name=name, leaves=to or (many if kind is PartKind.BACK else 0))


def asked(*kinds: PartKind, flat: bool = True, **more: object) -> Plan:
    """Return a garment of 40 stitches that goes on with a row asked stretch by stretch."""
    row = replace(ROW, flat=flat, by_parts=frozenset(kinds), **more)  # type: ignore[arg-type]
    return replace(cowl(), open=row)


def cue_of(said: int | bool) -> Cue:
    """Return the cue that answers with a number, yes or no."""
    return (Yes() if said else No()) if isinstance(said, bool) else Count(stitches=said)


OFF, HELD, ON, BACK = PartKind.OFF, PartKind.HELD, PartKind.ON, PartKind.BACK
TURNS = asked(turns=True)
ODD = replace(asked(ON, stitches=0, wanted=CountWanted(multiple=2, over=1, least=95, most=107)), rounds=())
"""Stitches are to be picked up, an odd number of them."""


@each_row(
    ("garment", "said", "answer"),
    [
        # Bound off in the middle of a flat row: the first of them wait or not.
        (asked(OFF), (True, 15, 10, True, True, True), OpenAnswer(kind=OpenKind.PARTS, parts=(worked(15), part(PartKind.FIRST_HELD, 15), part(OFF, 10), worked(15)))),
        (asked(OFF), (True, 15, 10, True, False, True), OpenAnswer(kind=OpenKind.PARTS, parts=(worked(15), part(OFF, 10), worked(15)))),
        # At the beginning none is worked before, and a number in place of the yes is the next stretch.
        (asked(OFF), (True, False, 6, 28, 6, True), OpenAnswer(kind=OpenKind.PARTS, parts=(part(OFF, 6), worked(28), part(OFF, 6)))),
        (asked(OFF), (True, False, 6, False, 28, 6, True), OpenAnswer(kind=OpenKind.PARTS, parts=(part(OFF, 6), worked(28), part(OFF, 6)))),
        # A yoke divided: the names of the page, one for both.
        (
            asked(HELD, ON, flat=False, names=("sleeve",)),
            (True, 5, 8, 3, 14, 8, 3, True, True),
            OpenAnswer(kind=OpenKind.PARTS, parts=(worked(5), part(HELD, 8, "sleeve"), part(ON, 3), worked(14), part(HELD, 8, "sleeve"), part(ON, 3), worked(5))),
        ),
        # A turn: what is beyond it waits, or is a short row; less than there was is worked together.
        (TURNS, (True, False, 12, True, True, True), OpenAnswer(kind=OpenKind.PARTS, parts=(worked(12), part(PartKind.BEYOND, 28)))),
        (TURNS, (True, False, 11, 28, True, True), OpenAnswer(kind=OpenKind.PARTS, parts=(worked(12, 11), part(PartKind.BEYOND, 28)))),
        (TURNS, (True, False, 11, False, 28, True, True), OpenAnswer(kind=OpenKind.PARTS, parts=(worked(12, 11), part(PartKind.BEYOND, 28)))),
        (TURNS, (True, False, 12, True, False, True), OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=40)),
        (TURNS, (True, True, True), OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=40)),
        (TURNS, (True, True, 38, True), OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=38)),
        # Short rows, all at their end: as many rows as bring the side that faces her.
        (asked(turns=True, several=True), (True, True, True, True), OpenAnswer(kind=OpenKind.SHORT_ROWS, rows=2, stitches=40)),
        (asked(turns=True, several=True), (True, 36, False, True), OpenAnswer(kind=OpenKind.SHORT_ROWS, rows=1, stitches=36)),
        (asked(turns=True, several=True, wrong=True), (True, True, True, True), OpenAnswer(kind=OpenKind.SHORT_ROWS, rows=1, stitches=40)),
        (asked(turns=True, several=True, flat=False), (True, True), OpenAnswer(kind=OpenKind.SHORT_ROWS, rows=1, stitches=40)),
        # Onto empty needles comes what waits, or what she says.
        (asked(HELD, stitches=0, held=(("thumb", 9),)), (True, True, True, True), OpenAnswer(kind=OpenKind.TAKEN, rows=1, stitches=9, name="thumb", round=True)),
        (asked(HELD, stitches=0, held=(("thumb", 9),)), (True, 12, False, False, True), OpenAnswer(kind=OpenKind.TAKEN, rows=1, stitches=12, name="thumb", round=False, right=False)),
        (asked(HELD, stitches=0, held=(("thumb", 9),)), (False, 30, False, True, True), OpenAnswer(kind=OpenKind.COME, rows=1, stitches=30, round=False)),
        (asked(ON, stitches=0, held=(("thumb", 9),)), (30, False, False, True), OpenAnswer(kind=OpenKind.COME, rows=1, stitches=30, round=False, right=False)),
        (replace(asked(ON, stitches=0), rounds=()), (30, True, True), OpenAnswer(kind=OpenKind.COME, rows=1, stitches=30, round=True)),
        (asked(HELD, stitches=0, held=(("thumb", 9),)), (False, False, True), OpenAnswer(kind=OpenKind.IDLE)),
        # Or several parts that the words join, each by itself; a count of her own is one of them grown or shrunk.
        (asked(HELD, BACK, stitches=0, held=PIECES), (True, True, True, True, True), OpenAnswer(kind=OpenKind.PARTS, parts=(part(BACK, 12, "sleeve"), part(BACK, 40, "body")), round=True)),
        (asked(HELD, BACK, stitches=0, held=PIECES), (True, True, 56, False, False, True), OpenAnswer(kind=OpenKind.PARTS, parts=(part(BACK, 12, "sleeve"), part(BACK, 40, "body", 44)), round=False, right=False)),
        (asked(HELD, BACK, stitches=0, held=PIECES), (False, True, True, True, True), OpenAnswer(kind=OpenKind.TAKEN, rows=1, stitches=40, name="body", round=True)),
        (ODD, (101, False, False, True), OpenAnswer(kind=OpenKind.COME, rows=1, stitches=101, round=False, right=False)),
        (asked(HELD, BACK, stitches=0, held=PIECES), (False, False, 30, True, True), OpenAnswer(kind=OpenKind.COME, rows=1, stitches=30, round=True)),
        # Or comes back within the row.
        (asked(BACK, flat=False, held=(("sleeve", 12),)), (True, True, 50, True), OpenAnswer(kind=OpenKind.PARTS, parts=(worked(40, 38), part(BACK, 12, "sleeve")))),
        # A count that is higher by what waits, which is not asked for once more.
        (replace(cowl(), open=replace(ROW, held=(("instep", 20),))), (70, True, True), OpenAnswer(kind=OpenKind.PARTS, parts=(worked(40, 50), part(BACK, 20, "instep")))),
        (replace(cowl(), open=replace(ROW, held=(("instep", 20),))), (70, False, True), OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=70)),
    ],
)
def test_the_answers_tell_the_whole_row(garment: Plan, said: tuple[int | bool, ...], answer: OpenAnswer) -> None:
    """Nothing is written before the last yes; the number that was just asked answers as well."""
    session = evening(garment)
    first = [Next()] if garment.open is not None and not garment.open.is_asked_by_parts else []
    events = say(session, *first, *map(cue_of, said[:-1]))
    assert not any(isinstance(each, RowAnswered) for each in events)
    (event,) = say(session, cue_of(said[-1]))
    assert event == RowAnswered(at=AT, meant=answer, words=ROW.words)


@each_row(
    ("garment", "cues"),
    [
        (asked(OFF), (Yes(), Count(stitches=41))),  # more than there are
        (asked(OFF), (Yes(), Count(stitches=15), Count(stitches=26))),
        (asked(OFF), (Yes(), Count(stitches=15), Yes())),
        (asked(OFF), (Yes(), RoundsDone(rounds=2))),
        (asked(OFF), (Count(stitches=12),)),  # is it knitted?
        (TURNS, (Yes(), No(), No())),  # how many?
        (TURNS, (Yes(), No(), Count(stitches=12), Count(stitches=40))),
        (TURNS, (Yes(), No(), Count(stitches=12), Yes(), Yes(), Count(stitches=13))),
        (asked(turns=True, several=True), (Yes(), Count(stitches=300))),
        (ODD, (Count(stitches=100),)),  # the page asks for an odd number
    ],
)
def test_a_sum_that_does_not_come_out_changes_nothing(garment: Plan, cues: tuple[Cue, ...]) -> None:
    """It is said, and asked for again."""
    session = evening(garment)
    say(session, *cues[:-1])
    before = session.state
    assert say(session, cues[-1]) == ()
    assert session.state == before


@pytest.mark.parametrize("cue", [Back(), No()])
def test_one_answer_is_taken_back_at_a_time(cue: Cue) -> None:
    """By a "back" anywhere, by a no where all of it is read back."""
    session = evening(asked(OFF))
    said = (Yes(), Count(stitches=15), Count(stitches=10), Yes(), Yes())
    say(session, *said)
    (event,) = say(session, cue)
    assert isinstance(event, RowSaid)
    assert len(event.said.answers) == 4
    for left in (3, 2, 1):
        (event,) = say(session, Back())
        assert isinstance(event, RowSaid)
        assert len(event.said.answers) == left


def test_it_is_nothing_if_she_says_so_before_it_is_knitted() -> None:
    """A remark that only speaks of stitches on hold."""
    (event,) = say(evening(asked(HELD)), No(), Yes())
    assert event == RowAnswered(at=AT, meant=OpenAnswer(kind=OpenKind.IDLE), words=ROW.words)


def test_an_evening_comes_to_a_row_that_divides() -> None:
    """Every number is said back with what is asked next, and all of them at the end."""
    check(
        evening(asked(OFF), index=2),
        """
        > next step
        Body goes on with words that I do not read: Twirl the loops over the thumb. Knit it by its words; when it is done say yes. Is nothing knitted, say no.
        > next step
        How many did you work before the first that are bound off? If none, say no.
        > 15
        15. How many are bound off there? If none, say no.
        > 30
        30 cannot be: it is at most 25.
        > 10
        10. 15 stitches to go: all worked to the end?
        > say again
        Body goes on with words that I do not read: Twirl the loops over the thumb. 10. 15 stitches to go: all worked to the end?
        > yes
        Do the first 15 wait on hold now?
        > yes
        15 worked, these 15 then on hold, 10 bound off, 15 worked; 15 on the needles: is that so?
        """,
    )


def test_no_sentence_is_longer_than_can_be_kept_in_mind() -> None:
    """Read at the usual rate, with the names and numbers of a large garment."""
    row = replace(ROW, by_parts=frozenset((OFF, HELD, ON)), stitches=388, flat=True)
    parts = (worked(60), part(HELD, 72, "left sleeve"), part(ON, 12), worked(124), part(HELD, 72, "right sleeve"), part(ON, 12), worked(60))
    said = [say_parts(parts)]
    for ask in Ask:
        answer = OpenAnswer(kind=OpenKind.PARTS, parts=parts) if ask is Ask.SUM else None
        said.append(ask_parts(row, PartQuestion(ask=ask, number=388, name="second left sleeve", answer=answer)))
    for kind in (OpenKind.IDLE, OpenKind.SHORT_ROWS, OpenKind.TAKEN, OpenKind.ROWS):
        answer = OpenAnswer(kind=kind, rows=2, stitches=388, round=True)
        said.append(ask_parts(row, PartQuestion(ask=Ask.SUM, answer=answer)))
    for each in said:
        for sentence in part_long_sentences(spell_out(each)).split(". "):
            assert seconds_of(sentence) <= LONGEST_S, sentence


def test_what_is_proposed_is_asked_before_its_stitches() -> None:
    """A yes to it is enough; a no leads to the questions."""
    row: OpenRow = asked(turns=True).open  # type: ignore[assignment]
    assert question_of(replace(row, trouble="It is worked again."), OpenWork()) is None
    question = question_of(row, OpenWork(answers=(PartAnswer(yes=True),), declined=True))
    assert question is not None
    assert question.ask is Ask.TO_END
    told = TellOpenRow(row=row, work=OpenWork(idle=True))
    assert told.question is None
    assert tell_open_row(told, cowl()).endswith("Nothing is knitted for these words: is that so?")
