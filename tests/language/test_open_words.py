"""A row that is not read is said as the page prints it, and what it may be in a few words."""

from __future__ import annotations

from dataclasses import replace

from stepper.language.effect_words import tell_effect
from stepper.language.open_words import ask_parts, say_proposed
from stepper.language.understanding.understand import understand
from stepper.plan.model import CountWanted, OpenKind, PartKind, Proposed, RowPart
from stepper.session.cues import About
from stepper.session.open_row.by_parts import Ask, PartQuestion
from stepper.session.open_row.telling import SettleRow, TellOpenAhead, TellOpenRow, TellSettled, TellSoFar
from stepper.session.questions.about import TellUnread
from stepper.session.questions.topics import Topic
from stepper.session.state import OpenAnswer, OpenWork
from tests.session.open_row.evening import ONE_ROUND, ROW, cowl
from tests.tables import each_row


@each_row(
    ("proposed", "flat", "said"),
    [
        (Proposed(kind=OpenKind.ROWS, rows=1, stitches=54, printed=True), False, "1 round, 54 stitches after it as printed"),
        (Proposed(kind=OpenKind.ROWS, rows=4, stitches=1), True, "4 rows, 1 stitch after them as before"),
        (
            Proposed(kind=OpenKind.ROWS, lasts="until piece measures 12 cm", stitches=60),
            False,
            "rounds until piece measures 12 cm, 60 stitches after them as before",
        ),
        (Proposed(kind=OpenKind.IDLE), False, "nothing to knit"),
        (Proposed(kind=OpenKind.CAST_ON, moved="38"), False, "38 stitches cast on"),
        (Proposed(kind=OpenKind.PICK_UP, moved="31"), False, "31 stitches picked up"),
        (Proposed(kind=OpenKind.HOLD, moved="8 for thumb", stitches=32), False, "8 for thumb on hold, 32 stitches left"),
        (Proposed(kind=OpenKind.BIND_OFF), False, "all stitches bound off"),
        (Proposed(kind=OpenKind.AGAIN, part="left sleeve"), False, "left sleeve once more"),
    ],
)
def test_each_kind_of_proposal_is_said_with_its_numbers(proposed: Proposed, flat: bool, said: str) -> None:
    """She says yes to it or no: so all that will be written is said."""
    assert say_proposed(proposed, flat=flat) == said
    asked = tell_effect(TellOpenRow(row=replace(ROW, proposed=proposed, flat=flat), work=OpenWork(), brief=True), cowl())
    assert "is that so?" in asked


def test_what_comes_first_is_said_first_and_the_words_as_they_are_printed() -> None:
    """A note's "Note:" is the file's, not the page's; three dots stand for the rest of a sentence."""
    row = replace(ROW, remarks=("change to 4 mm needles.",), words="Note: Twirl the loops …")
    said = tell_effect(TellOpenRow(row=row, work=OpenWork()), cowl())
    assert said.startswith("Change to 4 mm needles. Body goes on with words that I do not read: Twirl the loops. Knit it")


def test_why_a_count_is_not_enough_is_said_with_what_to_do() -> None:
    """She stops there, with the needles in her hands."""
    said = tell_effect(TellOpenRow(row=replace(ROW, trouble="It turns in the row."), work=OpenWork(), brief=True), cowl())
    assert said == (
        "It turns in the row. Stepper settle asks about it, at the keyboard. Is nothing knitted, say no."
    )


def test_the_row_ahead_the_answer_kept_and_what_is_not_known() -> None:
    """Each in one line."""
    garment = cowl()
    assert tell_effect(TellOpenAhead(row=ROW), garment) == (
        "Behind this comes a row that I do not read: Twirl the loops over the thumb. "
        "Look whether it speaks of what you knit now."
    )
    long = replace(ROW, words="Twirl the loops over the thumb, the back of the hand and the wrist, then slip each of them to the end of its own thread. Rep three times.")
    assert tell_effect(TellOpenAhead(row=long), garment) == (
        "Behind this comes a row that I do not read. It begins: Twirl the loops over the thumb. "
        "Look whether it speaks of what you knit now; to hear all of it say: read that row."
    )
    assert understand("read that row", garment) == About(topic=Topic.UNREAD)
    assert tell_effect(TellUnread(row=long), garment) == long.words
    assert tell_effect(TellUnread(row=None), garment) == "Every row of the pattern is read."
    assert tell_effect(TellSettled(), garment) == "Kept so."
    assert tell_effect(TellSoFar(row=ROW, known=True), garment) == "That is as far as the pattern is read."
    assert tell_effect(TellSoFar(row=ROW, known=False), garment) == (
        "That is not known while a row of the pattern is not read."
    )


def test_words_are_ended_once() -> None:
    """However the page ends them; a dash of a list is not read out."""
    row = replace(ROW, words="(If so, rip it.)", remarks=("- Stripes do not match?", "Work as follows:"))
    told = tell_effect(TellOpenRow(row=row, work=OpenWork()), cowl())
    assert told.startswith("Stripes do not match? Work as follows. ")
    assert "(If so, rip it.) " in told


@each_row(
    ("work", "said"),
    [
        (OpenWork(idle=True), "Nothing is knitted for these words: is that so?"),
        (OpenWork(rows=2, stitches=44), "2 rounds, 44 stitches after them: is that so?"),
        (OpenWork(stitches=35), "1 round, 35 stitches after it: is that so?"),
        (OpenWork(rows=1), "Round 1 of these words is done. Are they done, with 36 stitches as printed? Say yes, or the count."),
        (OpenWork(rows=2), "Round 2 of these words is done. Say next step after the next, or the count if it was the last."),
        (OpenWork(declined=True), "Knit it by its words: next step after each round, then the count. Is nothing knitted, say no."),
    ],
)
def test_what_is_not_known_yet_is_asked_for(work: OpenWork, said: str) -> None:
    """One thing at a time."""
    row = replace(ROW, proposed=ONE_ROUND)
    assert tell_effect(TellOpenRow(row=row, work=work, brief=True), cowl()) == said
    assert tell_effect(SettleRow(answer=OpenAnswer(kind=OpenKind.IDLE)), cowl()) == ""


def test_what_she_says_yes_to_besides_the_count_is_said() -> None:
    """Rounds after rows are no matter of a number."""
    row = replace(ROW, besides="in rounds from here")
    said = tell_effect(TellOpenRow(row=row, work=OpenWork(rows=1, stitches=40), brief=True), cowl())
    assert said == "1 round, 40 stitches after it, in rounds from here: is that so?"


WORKED = RowPart(kind=PartKind.WORKED, stitches=25, leaves=24)
OFF = RowPart(kind=PartKind.OFF, stitches=10)
BEYOND = RowPart(kind=PartKind.BEYOND, stitches=35, name="right shoulder")
FIRST = RowPart(kind=PartKind.FIRST_HELD, stitches=24, name="front")
BACK = RowPart(kind=PartKind.BACK, stitches=8, leaves=8, name="thumb")
FLAT = replace(ROW, flat=True, by_parts=frozenset({PartKind.OFF, PartKind.HELD}))


@each_row(
    ("question", "said"),
    [
        (PartQuestion(ask=Ask.DONE), "Knit it by its words; when it is done say yes. Is nothing knitted, say no."),
        (PartQuestion(ask=Ask.ALL_DONE), "Knit all these rows; when the last is done say yes. Is nothing knitted, say no."),
        (PartQuestion(ask=Ask.TO_END), "Did you work it to the end of the row?"),
        (PartQuestion(ask=Ask.MADE), "How many stitches are on the needle that you knit on?"),
        (PartQuestion(ask=Ask.BEYOND, number=35), "Then 35 are left beyond the turn: is that so?"),
        (PartQuestion(ask=Ask.LEFT), "How many are left beyond the turn?"),
        (PartQuestion(ask=Ask.WAIT, number=35), "Do the 35 beyond the turn wait on hold?"),
        (PartQuestion(ask=Ask.BEFORE), "How many did you work before the first that wait or are bound off? If none, say no."),
        (PartQuestion(ask=Ask.MORE), "How many then, before the next that wait or are bound off? If none, say no."),
        (PartQuestion(ask=Ask.OFF), "How many are bound off there? If none, say no."),
        (PartQuestion(ask=Ask.HELD), "How many wait on hold there? If none, say no."),
        (PartQuestion(ask=Ask.ON), "How many are cast on there? If none, say no."),
        (PartQuestion(ask=Ask.REST, number=25), "25 stitches to go: all worked to the end?"),
        (PartQuestion(ask=Ask.FIRST, number=24), "Do the first 24 wait on hold now?"),
        (PartQuestion(ask=Ask.SAME, number=60), "60 stitches on the needles now: is that so?"),
        (PartQuestion(ask=Ask.AFTER), "How many stitches are on the needles now?"),
        (PartQuestion(ask=Ask.FACING), "Does the right side face you now?"),
        (PartQuestion(ask=Ask.COME), "How many stitches come onto the needles? If none, say no."),
        (
            PartQuestion(ask=Ask.COME, wanted=CountWanted(multiple=2, over=1, least=95, most=107)),
            "How many stitches come onto the needles? It is to be an odd number, about 95 to 107. If none, say no.",
        ),
        (PartQuestion(ask=Ask.COME, wanted=CountWanted(multiple=4, over=2)), "How many stitches come onto the needles? It is to be a multiple of 4 and 2 more. If none, say no."),
        (PartQuestion(ask=Ask.ROUND), "Do you go on in rounds?"),
    ],
)
def test_each_question_about_the_stitches_is_one_short_sentence(question: PartQuestion, said: str) -> None:
    """She answers with yes, no or a number, and both hands full."""
    assert ask_parts(FLAT, question) == said


@each_row(
    ("answer", "said"),
    [
        (
            OpenAnswer(kind=OpenKind.PARTS, parts=(WORKED, OFF, BACK, BEYOND), round=False),
            "25 worked to 24, 10 bound off, 8 from hold for thumb, turned, the other 35 on hold for right shoulder; "
            "32 on the needles, in rows from here: is that so?",
        ),
        (
            OpenAnswer(kind=OpenKind.PARTS, parts=(replace(WORKED, leaves=25), FIRST)),
            "25 worked, these 24 then on hold for front; 1 on the needles: is that so?",
        ),
        (OpenAnswer(kind=OpenKind.IDLE), "Nothing is knitted for these words: is that so?"),
        (
            OpenAnswer(kind=OpenKind.SHORT_ROWS, rows=2, stitches=60),
            "These rows are done, 60 stitches on the needles, the right side facing: is that so?",
        ),
        (
            OpenAnswer(kind=OpenKind.TAKEN, stitches=54, round=True),
            "54 stitches on the needles, in rounds: is that so?",
        ),
        (
            OpenAnswer(kind=OpenKind.TAKEN, stitches=54, round=False, right=False),
            "54 stitches on the needles, in rows, the wrong side facing: is that so?",
        ),
        (OpenAnswer(kind=OpenKind.ROWS, rows=1, stitches=25), "One row, 25 stitches on the needles: is that so?"),
    ],
)
def test_all_that_she_answered_is_said_before_it_is_written(answer: OpenAnswer, said: str) -> None:
    """The last yes is for the whole of it."""
    assert ask_parts(FLAT, PartQuestion(ask=Ask.SUM, answer=answer)) == said
