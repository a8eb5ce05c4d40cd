from __future__ import annotations

from pathlib import Path

import pytest

from stepper.project.yaml_file.indentation import find_slip
from stepper.project.yaml_file.source import read_nodes
from tests.tables import each_row

SAMPLES = Path(__file__).parents[3] / "sample_projects"

PAGE = """\
title: Cuff
sizes: 1
gauge:
  rib: {needle: 3.5 mm, stitches: 24, rounds: 30}
  plain: {needle: 4 mm,
    stitches: 22, rounds: 28}
charts:
  dots:
    key: {".": MC, a: A}
    rows: |
      .a..
      ...a
sections:
  - name: cuff
    gauge: rib
    work: |
      Cast on 24 sts.
      Join in the round.
      First increase: increase evenly to 28 sts.
      Knit 3 rounds.
  - name: end
    work: |
      Bind off.
"""
LINES = PAGE.splitlines()


def shifted(number: int, by: int) -> str:
    """Indent one line of the page otherwise."""
    lines = [*LINES]
    line = lines[number - 1]
    lines[number - 1] = " " * (len(line) - len(line.lstrip()) + by) + line.lstrip()
    return "\n".join(lines) + "\n"


@each_row(
    ("number", "by"),
    [
        *[(number, by) for number in (4, 9, 10, 14, 15, 16) for by in (-1, 1)],
        *[(number, by) for number in (11, 17) for by in (1, 2)],
        *[(number, -2) for number in (12, 15, 16, 18, 20)],
        (14, 2),
        (1, 1),
    ],
)
def test_a_slip_is_blamed_where_it_stands(number: int, by: int) -> None:
    """The parser notices it lines further down, where nothing is wrong."""
    _, problems = read_nodes(shifted(number, by))
    assert [problem.line for problem in problems] == [number]
    assert "does not stand in step" in problems[0].message


def test_a_page_in_step_and_other_slips_are_not_blamed_for_it() -> None:
    """A bracket or a quotation mark that is not closed is another problem."""
    assert read_nodes(PAGE)[1] == []
    assert find_slip(PAGE, 99) is None
    for slip, instead in (("rounds: 30}", "rounds: 30"), ("title: Cuff", 'title: "Cuff'), ("sizes: 1", "sizes: 1: 2")):
        _, problems = read_nodes(PAGE.replace(slip, instead))
        assert problems
        assert all("in step" not in problem.message for problem in problems)


def test_the_remedy_makes_the_file_readable() -> None:
    """Indented as the hint has it, it is read."""
    _, (problem,) = read_nodes(shifted(18, -2))
    assert problem.hint.startswith("Indent it by 6,")
    lines = shifted(18, -2).splitlines()
    lines[problem.line - 1] = " " * 6 + lines[problem.line - 1].lstrip()
    assert read_nodes("\n".join(lines))[1] == []


@pytest.mark.parametrize("name", ["hat", "socks"])
def test_in_a_whole_garment_nearly_every_slip_is_blamed_on_its_line(name: str) -> None:
    """Each line a column or a step off, wherever the parser refuses it: at most one in fifty is blamed elsewhere."""
    lines = (SAMPLES / f"{name}.yaml").read_text(encoding="utf-8").splitlines()
    told, elsewhere = 0, []
    for at, line in enumerate(lines):
        if not line.strip() or line.lstrip().startswith("#"):
            continue
        for by in (-2, -1, 1, 2):
            indent = len(line) - len(line.lstrip())
            if indent + by < 0:
                continue
            slipped = [*lines[:at], " " * (indent + by) + line.lstrip(), *lines[at + 1 :]]
            _, problems = read_nodes("\n".join(slipped))
            if problems:
                told += 1
                if problems[0].line != at + 1:
                    elsewhere.append((at + 1, by, problems[0].line))
    assert told > 50
    assert len(elsewhere) <= told / 50, elsewhere
