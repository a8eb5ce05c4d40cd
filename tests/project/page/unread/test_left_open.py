"""What a pasted page left open: each with its words, its place and what is said of it."""

from __future__ import annotations

from stepper.project.page.unread.left_open import (
    LeftKind,
    find_left_open,
    is_work_row,
    line_at,
    lines_below,
    part_of,
)

FILE = """\
# LOOK (rows 3-4 of the text): this may be an instruction, and stands in front of the pattern.
# Wind the wool twice,
# then begin.
# --- yarn ---
# Yarn: wool
title: A hat
sizes: S (M, L)
knit:
  size: S  # LOOK: which size do you knit?
gauge:
  plain: {stitches: 22, rounds: 30}
sections:
  - name: "brim: folded"
    work: |
      Cast on 80 sts.
      # LOOK (row 9 of the text): "twirl" is not understood here.
      Note: Twirl, …
      Knit 2 rows.
  - name: crown
    work: |
      # Crown
      # LOOK (row 12 of the text).
      Note: Lift the loops.
      Purl 2 rows.

      Knit 2 rows.
"""


def test_each_is_found_with_its_words_and_its_place() -> None:
    """She looks for it on the page by its row and its part, and reads the words as printed there."""
    front, size, twirl, lift = find_left_open(FILE)
    assert (front.kind, front.first, front.last, front.where) == (LeftKind.FRONT, 1, 3, "rows 3-4")
    assert front.text == "Wind the wool twice, then begin."
    assert (size.kind, size.key, size.text) == (LeftKind.VALUE, "size", "size: S")
    assert size.why == "which size do you knit?"
    assert (twirl.kind, twirl.first, twirl.last) == (LeftKind.ROW, 16, 17)
    assert (twirl.where, twirl.part, twirl.text) == ("row 9", "brim: folded", "Twirl,")
    assert twirl.why == '"twirl" is not understood here.'
    assert (lift.part, lift.why, lift.text) == ("crown", "", "Lift the loops.")


def test_what_is_settled_is_no_longer_open() -> None:
    """A line in the place of the note settles it, as `check` has it."""
    assert len(find_left_open(FILE.replace("Note: Lift", "Own words: Lift"))) == 3
    assert find_left_open("title: A hat\n") == ()


def test_only_a_line_under_work_can_be_asked_about() -> None:
    """A key, a comment, a row behind the end of the file have no words to be kept."""
    line = line_at(FILE, 18, "it does not fit.")
    assert line is not None
    assert (line.kind, line.text, line.part, line.why) == (LeftKind.LINE, "Knit 2 rows.", "brim: folded", "it does not fit.")
    assert [line_at(FILE, number, "") for number in (0, 6, 13, 16, 21, 25, 99)] == [None] * 7
    rows = FILE.split("\n")
    assert [number for number in range(1, len(rows)) if is_work_row(rows, number)] == [15, 17, 18, 23, 24, 26]
    assert (part_of(rows, 5), part_of(rows, 24)) == ("", "crown")


def test_the_lines_below_end_with_the_part() -> None:
    """What hangs on a line that does not fit is in its own part; notes stay as they are."""
    first = line_at(FILE, 15, "why")
    assert first is not None
    assert [each.first for each in lines_below(FILE, first)] == [15, 18]
