"""Answers written into the text of a file: each form is read, and nothing else changes."""

from __future__ import annotations

import pytest

from stepper.project.page.unread.kept_rows import (
    keep_for_size,
    marked_rows,
    put_rows,
    put_value,
    split_sentences,
    take_mark_off,
    write_each,
    write_kept,
    write_numbered,
)
from stepper.project.page.unread.left_open import find_left_open
from stepper.project.page.unread.proposals import Kept
from tests.plan.test_compile import plan_of
from tests.project.samples import project

TWIRL = "Twirl the loops across, as drawn"


def test_rows_kept_in_their_words_are_worked_with_the_count_given() -> None:
    """As many rows as she says, and the count behind the last."""
    (three,) = write_kept(f"{TWIRL}.", Kept.ROWS, rows="3", flat=False)
    (more,) = write_kept(f"{TWIRL};", Kept.ROWS, count="48 (50, 52)")
    assert three == f"Own words, 3 rounds: {TWIRL}."
    assert more == f"Own words: {TWIRL}. 48 (50, 52) sts."
    plan = plan_of(project(f"Cast on 40 sts.\nJoin in the round.\n{three}\n{more}\nBind off.", size="M"))
    assert [(each.before, each.after) for each in plan.rounds] == [(0, 40), (40, 40), (40, 40), (40, 40), (40, 50), (50, 0)]


@pytest.mark.parametrize(
    ("flat", "words", "word"),
    [(True, TWIRL, "rows"), (False, TWIRL, "rounds"), (None, TWIRL, "rows"), (None, "Twirl every rnd", "rounds")],
)
def test_rows_are_called_as_the_piece_is_worked(flat: bool | None, words: str, word: str) -> None:
    """"Rows" would turn a piece in the round into one that is not."""
    assert write_kept(words, Kept.ROWS, rows="2", flat=flat)[-1].startswith(f"Own words, 2 {word}: ")


@pytest.mark.parametrize(
    ("words", "count", "row"),
    [
        (f"{TWIRL}. 48 sts.", "48", f"Own words: {TWIRL}. 48 sts."),
        (f"{TWIRL} (48 (50, 52) sts).", "50", f"Own words: {TWIRL}. 50 sts."),
        (f"{TWIRL} = 48 (50) 52 sts.", "48 (50, 52)", f"Own words: {TWIRL}. 48 (50, 52) sts."),
        (f"{TWIRL}—4 sts dec'd.", "4 sts dec'd", f"Own words: {TWIRL}. 4 sts dec'd."),
        (f"{TWIRL} (= 48 sts).", "48", f"Own words: {TWIRL}. 48 sts."),
        (f"{TWIRL}. 48 sts.", "60", f"Own words: {TWIRL}. 48 sts. 60 sts."),
    ],
)
def test_a_count_is_not_said_twice(words: str, count: str, row: str) -> None:
    """Where she says another than the page prints, both stand there."""
    assert write_kept(words, Kept.ROWS, count=count)[-1] == row


def test_a_row_keeps_its_head() -> None:
    """A numbered row of a stitch pattern is found by its number."""
    assert write_kept("Row 4 (RS): P2, loop, p2.", Kept.ROWS) == (
        "Row 4 (RS): Own words: P2, loop, p2.",
        "Own words: Row 4 (RS): P2, loop, p2.",
    )
    assert write_numbered("Rows 8-12: loops.", "") == ("Rows 8-12: Own words: loops.",)
    assert write_numbered("1st row. Loop, p2.", "9") == ("1st row. Own words: Loop, p2. 9 sts.",)
    assert write_numbered(TWIRL, "") == ()


def test_what_comes_and_goes_by_the_words_is_written_before_the_colon() -> None:
    """All four forms are read, and what is held comes back under its name."""
    rows = [
        *write_kept("Begin softly.", Kept.CAST_ON, moved="40 (44, 48)"),
        *write_kept("Twirl, the thumb waits on a thread.", Kept.HOLD, moved="8 for thumb", count="32 (36, 40)"),
        *write_kept("Off they go!", Kept.BIND_OFF),
        "Return thumb sts to needles.",
        "Bind off.",
        *write_kept("Along the hem.", Kept.PICK_UP, moved="12"),
        "Bind off.",
    ]
    plan = plan_of(project("\n".join(rows), size="M"))
    assert [each.after for each in plan.rounds] == [44, 36, 0, 8, 0, 12, 0] or [each.after for each in plan.rounds] == [44, 36, 0, 0, 12, 0]


def test_rows_that_change_the_number_have_each_its_own_count() -> None:
    """The words stand once, as a note; 0 at the end binds off."""
    rows = write_each("Take off 1 at the neck each row, at the same time let the loops go.", ("7", "5", "0"))
    assert rows[0] == "Note: Take off 1 at the neck each row, at the same time let the loops go."
    plan = plan_of(project("\n".join(["Cast on 9 sts.", "Work flat.", *rows]), size="M"))
    assert [each.after for each in plan.rounds] == [9, 7, 5, 0]
    assert write_each("Go on.", ("", "8 (9)")) == (
        "Note: Go on.",
        "Own words: by the words above, row 1 of 2.",
        "Own words: by the words above, row 2 of 2. 8 (9) sts.",
    )
    assert write_each("Go on.", ("8",))[1:] == ("Own words: by the words above. 8 sts.",)


def test_a_note_and_a_comment_keep_all_words() -> None:
    """Nothing of the page is dropped."""
    assert write_kept("Look at  her.", Kept.NOTE) == ("Note: Look at her.",)
    assert write_kept("Look at her.", Kept.OUT) == ("# Look at her.",)


def test_sentences_get_a_mark_each() -> None:
    """They are asked about one by one, and are open until then."""
    sentences = split_sentences("Lay it flat. Graft the sts.")
    rows = marked_rows(sentences, "row 7", "")
    text = put_rows("work: |\n  # LOOK (row 7 of the text).\n  Note: Lay it flat. Graft the sts.\n", 2, 3, rows)
    assert [(each.text, each.where) for each in find_left_open(text)] == [("Lay it flat.", "row 7"), ("Graft the sts.", "row 7")]


def test_only_the_rows_named_change() -> None:
    """Comments, empty rows and the indentation stay."""
    text = "a: 1  # one\n\nwork: |\n    old\n    older\n# end\n"
    assert put_rows(text, 4, 5, ["new"]) == "a: 1  # one\n\nwork: |\n    new\n# end\n"
    assert put_rows(text, 4, 5, []) == "a: 1  # one\n\nwork: |\n# end\n"


def test_a_mark_is_taken_off_with_its_row_or_alone() -> None:
    """A value stays, a row with nothing else goes."""
    assert take_mark_off("a: 1  # LOOK: made up\nb: 2\n", 1) == "a: 1\nb: 2\n"
    assert take_mark_off("# LOOK (row 3 of the text): why\n# words\n", 1) == "# words\n"
    assert put_value("  size: S  # LOOK: which?\n", 1, r"(?<=size:)\s*\w+", " M") == "  size: M\n"


@pytest.mark.parametrize(
    ("text", "kept"),
    [
        ("knit:\n  size: M  # hers\nyarn:\n", "knit:\n  size: M  # hers\n  only: M\nyarn:\n"),
        ("knit: {size: M}\n", "knit: {size: M, only: M}\n"),
        ("title: x\n", "title: x\n"),
    ],
)
def test_the_file_can_be_kept_for_one_size(text: str, kept: str) -> None:
    """Below the size, in whichever form that is written."""
    assert keep_for_size(text, "M") == kept


def test_a_name_in_the_head_of_a_row_comes_behind_it() -> None:
    """ "Rnd 15 (loop rnd):" would be no row with a number; the side of a row stays in its head."""
    assert write_kept("Rnd 15 (loop rnd): Twirl.", Kept.ROWS)[0] == "Rnd 15: Own words: loop rnd: Twirl."
    assert write_numbered("Rnd 15 (loop rnd): Twirl.", "") == ("Rnd 15: Own words: loop rnd: Twirl.",)
    assert write_numbered("Row 1 (RS): Twirl.", "") == ("Row 1 (RS): Own words: Twirl.",)
