"""Short answers about a row: what is read, and what is refused with a sentence."""

from __future__ import annotations

import pytest

from stepper.project.page.unread.answers import (
    AnsweredNumber,
    SaidNumbers,
    read_duration,
    read_each,
    read_held,
    read_numbers,
    split_numbers,
)


@pytest.mark.parametrize(
    ("answer", "text"),
    [("96", "96"), ("96 sts", "96"), ("88 (92, 96)", "88 (92, 96)"), ("88 92 96", "88 (92, 96)"), ("88 [92:96] sts.", "88 (92, 96)")],
)
def test_a_number_is_read_as_typed_or_as_printed(answer: str, text: str) -> None:
    """For her size alone, or the whole list of the page."""
    found = read_numbers(answer, 3, "stitches")
    assert isinstance(found, AnsweredNumber)
    assert found.text == text
    assert found.single == (text == "96")


@pytest.mark.parametrize(
    ("answer", "told"),
    [
        ("many", "Write a number of stitches, in figures: 88 (92, 96)."),
        ("", "Write a number of stitches, in figures: 88 (92, 96)."),
        ("96 loops", "Write a number of stitches, in figures: 88 (92, 96)."),
        ("9.5", "Write a number of stitches, in figures: 88 (92, 96)."),
        ("0", "A number of stitches is 1 or more."),
        ("88 (0, 96)", "A number of stitches is 1 or more."),
        ("-4", "A number of stitches is 1 or more."),
        ("2001", "More than 2000 stitches is taken for a slip."),
        ("9" * 5_000, "More than 2000 stitches is taken for a slip."),
        ("88 (92)", "There are 3 sizes, and 2 numbers are written: write 1, or 3."),
    ],
)
def test_what_cannot_be_a_number_is_refused(answer: str, told: str) -> None:
    """She is told what would do."""
    assert read_numbers(answer, 3, "stitches") == told


def test_one_size_has_one_number() -> None:
    """Where the file has no lists, none is asked for."""
    assert read_numbers("88 92", 1, "rows") == "The file has one size: write one number."


@pytest.mark.parametrize(
    ("answer", "found"),
    [
        ("until 12 cm", ("until piece measures 12 cm",)),
        ("until 12", ("until piece measures 12 cm",)),
        ("until armhole measures 20 (21, 22) cm", ("until armhole measures 20 (21, 22) cm",)),
        ("for 2½ in", ("for 2½ in",)),
        ("until 12 cm from underarm", ("until piece measures 12 cm from underarm",)),
        ("4", AnsweredNumber(values=(4,))),
        ("12 cm", 'Write "until 12 cm", measured as the piece is, or "for 12 cm", from here.'),
        ("until 0 cm", "That is no length. Write it as until 12 cm, or for 12 cm."),
        ("until 12 cm of loops", "That is no length. Write it as until 12 cm, or for 12 cm."),
        ("for ever", "Write a number of rows, in figures: 6 (6, 8)."),
    ],
)
def test_how_long_is_a_number_or_a_length(answer: str, found: object) -> None:
    """A bare length may be measured from two places, so it is asked again."""
    assert read_duration(answer, 3, inches=False) == found


def test_the_counts_of_several_rows_end_with_0_where_all_is_bound_off() -> None:
    """0 anywhere else, or letters, are no counts."""
    assert read_each("17 16, 15") == (17, 16, 15)
    assert read_each("3 2 0") == (3, 2, 0)
    assert [read_each(answer) for answer in ("3 0 2", "3 x", "", "3 (4)", "5000 4")] == [()] * 5


def test_what_goes_on_hold_has_a_number_and_may_have_a_name() -> None:
    """Several stand apart by a semicolon, since lists hold commas."""
    assert read_held("54 (58, 60) sts for first sleeve; 54 58 60 for second sleeve", 3) == "54 (58, 60) for first sleeve; 54 (58, 60) for second sleeve"
    assert read_held("12", 3) == "12"
    assert [read_held(answer, 3) for answer in ("", "for thumb", "12 (13)", "0 for thumb", "12 in thumb")] == [""] * 5


@pytest.mark.parametrize(
    ("answer", "found"),
    [
        ("12 rows, 84 sts", ("12 rows", "84 sts")),
        ("12 rnds 84 sts", ("12 rnds", "84 sts")),
        ("6 (6, 8) rows, then 88 (92, 96) sts after", ("6 (6, 8) rows", "88 (92, 96) sts after")),
        ("6 6 8 rows", ("6 6 8 rows", "")),
        ("88 92 96 sts", ("", "88 92 96 sts")),
        ("12, 84", ("12", "84")),
        ("until 12 cm", ("until 12 cm", "")),
        ("until 12, same", ("until 12", "same")),
        ("until 12 cm from underarm, 84", ("until 12 cm from underarm", "84")),
        ("for 2½ in; -4", ("for 2½ in", "-4")),
        ("the same", ("", "the same")),
    ],
)
def test_one_answer_is_split_into_rows_and_stitches(answer: str, found: tuple[str, str]) -> None:
    """What is a list and what are two numbers is told by the words between them."""
    assert split_numbers(answer, 3) == SaidNumbers(rows=found[0], count=found[1])


@pytest.mark.parametrize("answer", ["84", "88 (92, 96)", "rows", "note", "12 loops", "", "12 rows of 84 loops"])
def test_an_answer_of_another_kind_is_not_split(answer: str) -> None:
    """A number alone may be either; where rows are asked for, it is rows."""
    assert split_numbers(answer, 3) is None
    assert split_numbers("84", 3, bare=True) == SaidNumbers(rows="84")
    assert split_numbers("12, 84", 2) is None  # the list of two sizes
