"""Marks that a pasted page leaves, and when they still stand."""

from __future__ import annotations

import pytest

from stepper.project.page.marks import find_standing_marks

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
