"""A part worked once more by an answer. All rows are invented."""

from __future__ import annotations

from pathlib import Path

import pytest

from stepper.plan.compile import compile_plan
from stepper.project.page.unread.left_open import find_left_open
from stepper.project.reader import read_project
from stepper.settling.file_in_hand import take_in_hand
from stepper.settling.row_questions import ask_row
from stepper.settling.rows_asked import look_at
from tests.settling.typed import type_answers

RIGHT = """\
title: Paws
units: cm
sizes: one
yarn: {MC: oat}
gauge: {plain: {needle: 4 mm, stitches: 20, rounds: 28}}
sections:
  - name: "right paw, cuff"
    work: |
      Cast on 8 sts. Join in the round.
      Knit 3 rounds.
  - name: "right paw, gusset"
    work: |
      Inc rnd: K4, m1r, k to end. 9 sts.
      Knit 2 rounds.
      Bind off.
  - name: left paw
    work: |
"""


def settle(left: str, words: str) -> tuple[str, list[int]]:
    """Ask about words below some rows of the left paw; return its rows and its counts."""
    text = f"{RIGHT}{left}      # LOOK (row 9 of the text).\n      Note: {words}\n"
    (opened,) = find_left_open(text)
    made = ask_row(look_at(opened, text), take_in_hand(text, Path()))
    project = read_project(made).project
    assert project is not None
    plan = compile_plan(project).plan
    counts = [each.after for each in plan.rounds if each.section == "left paw"] if plan is not None else []
    return made.removeprefix(RIGHT), counts


def test_the_second_is_all_of_the_first_by_enter(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    """Its lines are shown first; what is written is one line that the program works out."""
    type_answers(monkeypatch, "")
    rows, counts = settle("", "Work it same as for right paw.")
    assert rows == "      Work as for right paw.\n"
    assert counts == [8, 8, 8, 8, 9, 9, 9, 0]
    shown = capsys.readouterr().out
    assert "  1. Cast on 8 sts. Join in the round." in shown
    assert "[again, lines 1 to 5 of right paw]" in shown


def test_the_rest_of_the_first_comes_behind_her_own_rows(monkeypatch: pytest.MonkeyPatch) -> None:
    """From the line behind the one that is alike; the page's words stay as a note."""
    own = "      Cast on 8 sts. Join in the round.\n      Knit 3 rounds.\n      Inc rnd: K4, m1l, k to end. 9 sts.\n"
    type_answers(monkeypatch, "")
    rows, counts = settle(own, "Work it to the end as for right paw.")
    assert rows == f"{own}      Note: Work it to the end as for right paw.\n      Knit 2 rounds.\n      Bind off.\n"
    assert counts == [8, 8, 8, 8, 9, 9, 9, 0]


def test_words_that_say_more_ask_which_lines_and_what_is_otherwise(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """Enter alone never takes the same for what the page says is not."""
    type_answers(monkeypatch, "", "", "1 to 9", "1 to 3", "Knit 6 rounds.", "Bind off.", "")
    rows, counts = settle("", "Work it as for right paw, but with 6 rounds, on the opposite side.")
    assert rows.endswith("Inc rnd: K4, m1r, k to end. 9 sts.\n      Knit 6 rounds.\n      Bind off.\n")
    assert counts == [8, 8, 8, 8, *[9] * 7, 0]
    shown = capsys.readouterr().out
    assert "It refers to right paw, and says more" in shown
    assert "not mirrored" in shown
    assert "From which line to which? Please answer" in shown
    assert "Write two numbers from 1 to 5" in shown


def test_lines_of_any_part_can_be_asked_for(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> None:
    """Where the words name none."""
    type_answers(monkeypatch, "again right paw 1-2")
    assert settle("", "Loop the other one.")[1] == [8, 8, 8, 8]
    type_answers(monkeypatch, "again", "wrong paw", "right paw", "")
    assert settle("", "Loop the other one.")[1] == [8, 8, 8, 8, 9, 9, 9, 0]
    assert "The parts are right paw." in capsys.readouterr().out


FRONTS = """\
title: Waistcoat
units: cm
sizes: one
yarn: {MC: oat}
gauge: {plain: {needle: 4 mm, stitches: 20, rounds: 28}}
sections:
  - name: left front
    work: |
      Cast on 12 sts. Work flat.
      Next row (RS): K to last 3 sts, k2tog, k1.
      Next row: Purl.
      Bind off.
  - name: right front
    work: |
"""


def test_a_second_front_is_the_image_of_the_first(monkeypatch: pytest.MonkeyPatch) -> None:
    """Its lines once more would make two left fronts. By hand: the decrease leans the other way, at the other end."""
    type_answers(monkeypatch, "")
    text = f"{FRONTS}      # LOOK (row 9 of the text).\n      Note: Work it same as for left front.\n"
    (opened,) = find_left_open(text)
    made = ask_row(look_at(opened, text), take_in_hand(text, Path()))
    assert made.removeprefix(FRONTS) == "      Work as for left front, reversing shaping.\n"
    project = read_project(made).project
    assert project is not None
    plan = compile_plan(project).plan
    assert plan is not None
    assert [each.instruction for each in plan.rounds if each.section == "right front"][1] == "k1, ssk, k9"


def test_lines_that_shape_one_edge_are_not_copied_to_the_other_side(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """Behind a row of her own only lines could be copied, and they are for the other front; the row that follows is written out."""
    type_answers(monkeypatch, "again left front 2-4", "out")
    own = "      Cast on 12 sts. Work flat.\n"
    text = f"{FRONTS}{own}      # LOOK (row 9 of the text).\n      Note: Work the rest same as for left front.\n"
    (opened,) = find_left_open(text)
    made = ask_row(look_at(opened, text), take_in_hand(text, Path()))
    assert "k2tog" not in made.removeprefix(FRONTS)
    assert "the same side as left front again" in " ".join(capsys.readouterr().out.split())
