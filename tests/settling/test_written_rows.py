"""An answer that leaves nothing open is written in the first form that is read."""

from __future__ import annotations

from pathlib import Path

from stepper.project.page.unread.left_open import find_left_open
from stepper.project.page.unread.proposals import Kept
from stepper.settling.file_in_hand import take_in_hand
from stepper.settling.number_questions import CountAnswer, RowNumbers
from stepper.settling.replies import Reply
from stepper.settling.rows_asked import RowAsked, look_at
from stepper.settling.written_rows import forms_of, write_first_read, write_reply
from tests.project.samples import project
from tests.tables import each_row

WORK = "Cast on 40 sts.\n# LOOK (row 3 of the text).\nNote: {}\nKnit 1 row."


def asked_about(words: str) -> tuple[str, RowAsked]:
    """Return a file with an open row, and what is known of it."""
    text = project(WORK.format(words), sizes="one", size="one")
    (left,) = find_left_open(text)
    return text, look_at(left, text)


def rows(number: str, count: str = "", each: tuple[int, ...] = ()) -> RowNumbers:
    """Return numbers as answered."""
    return RowNumbers(rows=number, count=CountAnswer(text=count, each=each))


@each_row(
    ("words", "reply", "first"),
    [
        ("Twirl them.", Reply(kept=Kept.NOTE), ("Note: Twirl them.",)),
        ("Twirl them.", Reply(kept=Kept.BIND_OFF), ("Own words, bind off all sts: Twirl them.",)),
        ("Twirl them.", Reply(kept=Kept.CAST_ON, moved="38"), ("Own words, cast on 38 sts: Twirl them.",)),
        ("Twirl them.", Reply(kept=Kept.HOLD, moved="8 for thumb", count="32"), ("Own words, hold 8 sts for thumb: Twirl them. 32 sts.",)),
        ("Twirl them.", Reply(kept=Kept.ROWS, numbers=rows("4")), ("Own words, 4 rows: Twirl them.",)),
        ("Row 5 (RS): Twirl them.", Reply(kept=Kept.ROWS, numbers=rows("1", "44")), ("Row 5 (RS): Own words: Twirl them. 44 sts.",)),
        (
            "Twirl them.",
            Reply(kept=Kept.ROWS, numbers=rows("2", each=(40, 44))),
            (
                "Note: Twirl them.",
                "Own words: by the words above, row 1 of 2. 40 sts.",
                "Own words: by the words above, row 2 of 2. 44 sts.",
            ),
        ),
        (
            "Twirl them. Bind off.",
            Reply(kept=Kept.SPLIT, kinds=(Kept.NOTE, Kept.BIND_OFF)),
            ("Note: Twirl them.", "Own words, bind off all sts: Bind off."),
        ),
    ],
)
def test_each_kind_of_answer_has_its_rows(words: str, reply: Reply, first: tuple[str, ...]) -> None:
    """The same whether it was typed or said: there is one place that writes them."""
    text, asked = asked_about(words)
    assert forms_of(reply, asked)[0] == first
    written = write_reply(reply, asked, take_in_hand(text, Path()))
    assert written.rows == first
    assert "LOOK" not in written.text
    assert written.trouble == ()
    assert all(f"      {row}\n" in written.text for row in first)


def test_the_next_form_is_tried_and_what_is_wrong_with_the_last_is_told() -> None:
    """What stands before the colon of an old page may not be read; then the words are kept whole."""
    text, asked = asked_about("Twirl them.")
    file = take_in_hand(text, Path())
    second = write_first_read((("Twirl: 7 of them.",), ("Own words: x.",)), asked.left, file)
    assert second.rows == ("Own words: x.",)
    none = write_first_read((("Whirl 7 of the them.",),), asked.left, file)
    assert none.text == ""
    assert none.trouble
    assert write_first_read(((),), asked.left, file).text == ""
