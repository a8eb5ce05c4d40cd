"""Stripe sequences of a pasted page."""

from __future__ import annotations

from stepper.plan.compile import compile_plan
from stepper.project.page.file_text import write_file
from stepper.project.page.own_stripes import read_sequences, stripe_rows
from stepper.project.page.pasted import take_apart
from stepper.project.page.pieces import Piece
from stepper.project.reader import read_project

PAGE = """Bramble cowl

Yarn
MC: oat, 1 skein
CC: moss, 1 skein

Stripe sequence
2 rnds MC
3 rnds CC

Cowl
With MC, cast on 72 sts. Join in the round.
Knit 1 round.
Knit 7 rounds in stripe sequence.
With MC, knit 1 round.
Bind off.
"""


def test_the_lines_of_a_page_are_read_by_its_stripes() -> None:
    """Two rounds of the first yarn, three of the second, two of the first again: by the page, by hand."""
    text = write_file(take_apart(PAGE)).text
    assert 'stripe sequence: "2 rows MC, 3 rows CC"' in text
    project = read_project(text.replace("LOOK", "looked at")).project
    assert project is not None
    plan = compile_plan(project).plan
    assert plan is not None
    yarns = [{run.yarn for run in one.runs} for one in plan.rounds]
    assert yarns == [{"MC"}] * 4 + [{"CC"}] * 3 + [{"MC"}] * 4


def test_only_rows_that_define_stripes_become_front_matter() -> None:
    """A line that is worked stays one, whatever it is called."""
    found = read_sequences(PAGE.splitlines())
    assert set(found.sequences.known) == {"stripe sequence"}
    listed = Piece(kind="note", text="Stripe sequence 2 rnds MC 3 rnds CC", row=7, why="?")
    assert found.mark(listed).kind == "comment"
    other = Piece(kind="note", text="Knit 7 rounds in stripe sequence.", row=13, why="?")
    assert found.mark(other) == other


def test_a_page_without_stripes_gets_no_key() -> None:
    """An empty key would be a problem of the file."""
    assert stripe_rows(read_sequences(["Knit 1 round."]).sequences) == []
