"""Which lines of which part a row works once more. All rows are invented."""

from __future__ import annotations

import pytest

from stepper.project.page.unread.same_lines import find_same, line_meant, lines_between, parts_above

FILE = """\
sections:
  - name: right paw, cuff
    work: |
      Cast on 36 sts.
      Knit 3 rounds.
  - name: right paw, thumb gusset
    work: |
      # gusset
      Inc rnd: Knit to marker, m1r, knit to end.
      Note: Be kind.
      Knit 2 rounds.
      Bind off.
  - name: left paw
    work: |
      Inc rnd: Knit to marker, m1l, knit to end.
      Note: here.
"""
ROW = FILE.split("\n").index("      Note: here.") + 1


def test_the_parts_above_are_whole_pieces_with_their_lines() -> None:
    """Comments are no lines, notes are."""
    right, left = parts_above(FILE, ROW)
    assert (right.name, right.last, left.name) == ("right paw", 6, "left paw")
    assert lines_between(right, 5, 6) == ("Knit 2 rounds.", "Bind off.")
    assert [line.row for line in right.lines][:2] == [4, 5]


@pytest.mark.parametrize(
    ("words", "first", "last", "plain"),
    [
        ("Complete as for right paw.", 4, 6, True),
        ("Complete as for the right paw, working the loops at the other side.", 4, 6, False),
        ("Work to match right paw, but knit 6 rounds.", 4, 6, False),
        ("Complete to correspond with right paw.", 4, 6, False),
    ],
)
def test_the_rest_is_what_comes_behind_the_line_that_is_alike(words: str, first: int, last: int, *, plain: bool) -> None:
    """The left one has its own increases; what says more is never taken as the same."""
    same = find_same(words, FILE, ROW)
    assert same is not None
    assert (same.first, same.last, same.plain) == (first, last, plain)
    assert line_meant(same) == ""


def test_it_ends_before_the_section_that_is_named() -> None:
    """In one line that is read, where it is the beginning of the part."""
    begin = FILE.replace("      Inc rnd: Knit to marker, m1l, knit to end.\n", "")
    same = find_same("Work the cuff same as for right paw, to the gusset.", begin, ROW - 1)
    assert same is not None
    assert (same.first, same.last, same.upto) == (1, 2, "gusset")
    assert line_meant(same) == "Work as for right paw to gusset."


@pytest.mark.parametrize("words", ["Knit 2 rounds.", "As for the tail.", "Work the right paw.", "Work as for left paw."])
def test_words_that_refer_to_no_part_above_find_none(words: str) -> None:
    """Nor to the part they stand in."""
    assert find_same(words, FILE, ROW) is None
