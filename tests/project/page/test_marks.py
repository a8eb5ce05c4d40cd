"""Marks that a pasted page leaves, and when they still stand."""

from __future__ import annotations

import pytest

from stepper.project.page.marks import find_standing_marks
from tests.plan.test_compile import plan_of
from tests.project.samples import project

FILE = """\
# Where LOOK stands, something was not found or not understood.
title: A hat
gauge:
  plain: {stitches: 22, rounds: 30}  # LOOK: no gauge was found
sections:
  - name: brim
    work: |
      # LOOK (row 5 of the text): "twirl" is not understood here.
      Note: Twirl.
      # LOOK (rows 7-8 of the text).
      Note: Look at the picture. LOOK: it is pretty.
"""


def test_each_mark_is_told_where_it_stands_with_what_it_says() -> None:
    """Line and column of the comment, and the reason that was written when the page was read."""
    value, row, bare = find_standing_marks(FILE)
    assert (value.line, value.column) == (4, FILE.splitlines()[3].index("#") + 1)
    assert value.message == "LOOK still stands here: no gauge was found"
    assert (row.line, row.column, row.length) == (8, 7, len(FILE.splitlines()[7].strip()))
    assert row.message == 'row 5 of the text is not read, so not knitted: "twirl" is not understood here.'
    assert "as a note" in row.hint
    assert bare.message == "rows 7-8 of the text are not read, so not knitted."


@pytest.mark.parametrize(
    ("said", "form"),
    [
        ("With the woolly yarn cast on 14 stitches as you like.", "Own words, cast on 38 sts: …"),
        ("Pick up what lies along the edge.", "Own words, pick up 31 sts: …"),
        ("Slip the last 9 onto a thread to wait.", "Own words, hold 12 sts for thumb: …"),
        ("Cast off all in the manner of the picture.", "Own words, bind off all sts: …"),
        ("Go on as pictured until it measures 9 in.", "Own words, until piece measures 12 cm: …"),
        ("Twirl three times.", "Own words: … 96 sts."),
    ],
)
def test_the_form_in_which_a_row_may_be_kept_goes_by_what_it_says(said: str, form: str) -> None:
    """She need not look up which of them the program has to know more of."""
    (mark,) = find_standing_marks(f"work: |\n  # LOOK (row 5 of the text): told.\n  Note: {said}\n")
    assert f'"{form}"' in mark.hint


def test_only_the_mark_of_a_comment_counts() -> None:
    """The word in the head of the file, in a note or in a title is no mark."""
    assert find_standing_marks("title: LOOK here\n# Where LOOK stands, look.\nwork: LOOK: a note\nhref: a#LOOK: b\n") == ()


@pytest.mark.parametrize(
    ("said", "form"),
    [
        ("Twist across as in the picture. 38 sts.", "Own words: Twist across as in the picture. 38 sts."),
        ("Twist across as in the picture. (38 (42, 46) sts)", "Own words: Twist across as in the picture. (38 (42, 46) sts)"),
        ("Twist 38 sts as in the picture.", "Own words: … 96 sts."),
        ("Row 3: Twist across. 38 sts.", "Own words: … 96 sts."),
    ],
)
def test_a_row_with_its_count_is_offered_as_it_may_be_kept(said: str, form: str) -> None:
    """With the count behind it nothing has to be added; a count in its midst may be of a part of the row."""
    (mark,) = find_standing_marks(f"work: |\n  # LOOK (row 5 of the text): told.\n  Note: {said}\n")
    assert f'"{form}"' in mark.hint


@pytest.mark.parametrize("count", ["38 sts.", "38 stitches", "(38 sts)", "[38 sts]", "= 38 sts."])
def test_what_is_offered_is_read_with_its_count(count: str) -> None:
    """A form that is offered and then refused would send her round in a circle."""
    note = f"Twist across as in the picture. {count}"
    (mark,) = find_standing_marks(f"work: |\n  # LOOK (row 5 of the text): told.\n  Note: {note}\n")
    kept = f"Own words: {note}"
    assert f'"{kept}"' in mark.hint
    plan = plan_of(project(f"Cast on 40 sts. Work flat.\n{kept}\nPurl 1 row."))
    assert [round_.after for round_ in plan.rounds] == [40, 38, 38]


def test_a_mark_is_settled_by_the_line_that_takes_the_place_of_its_note() -> None:
    """One row of the file is changed and not two; the line is judged by itself."""
    page = "work: |\n  # LOOK (row 5 of the text): told.\n  {}\n  Knit 2 rows.\n"
    assert find_standing_marks(page.format("Own words: Twist across.")) == ()
    assert find_standing_marks(page.format("K2, p2 to end.")) == ()
    for left in ("Note: Twist across.", "note: Twist across.", "", "# Twist across.", "- name: sleeve", "work: |"):
        assert len(find_standing_marks(page.format(left))) == 1


def test_a_mark_stands_in_a_file_with_the_line_ends_of_windows_too() -> None:
    """Or a page saved there by an editor would count as sound with all that was left open."""
    text = "a: 1  # LOOK: which?\nwork: |\n  # LOOK (row 3 of the text): no.\n  Note: Twirl.\n"
    assert len(find_standing_marks(text)) == 2
    assert [(each.line, each.length, each.message) for each in find_standing_marks(text.replace("\n", "\r\n"))] == [
        (each.line, each.length, each.message) for each in find_standing_marks(text)
    ]
