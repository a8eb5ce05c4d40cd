"""Rows worked turn and turn about: one entry for all, and nothing of it lost."""

from __future__ import annotations

from pathlib import Path

from stepper.project.reader import read_project
from stepper.report.sheet.blocks import RoundRow, RoundTable
from stepper.report.sheet.rounds import lay_out_rounds
from stepper.sitting.project_file import load_project, plan_of_text
from tests.project.samples import project


def rows_of(work: str, tmp_path: Path) -> list[RoundRow]:
    """Lay out the rows of a section."""
    source = project(work)
    found = read_project(source).project
    assert found is not None
    blocks = lay_out_rounds(plan_of_text(source, "strip", tmp_path), found)
    return [row for block in blocks if isinstance(block, RoundTable) for row in block.rows]


def test_stockinette_in_rows_is_one_entry(tmp_path: Path) -> None:
    """Twenty rows, knit and purl by turns, with a box for each; the sides are named, since a knitter turns."""
    rows = rows_of("Cast on 30 sts. Work flat.\nRow 1 (WS): Purl.\nRow 2 (RS): Knit.\nRep rows 1 and 2 9 times more.\nBind off.", tmp_path)
    (entry,) = [row for row in rows if len(row.words) == 2]
    assert entry.words == ("WS rows: Purl.", "RS rows: Knit.")
    assert [box.number for box in entry.boxes[0]] == list(range(2, 22))
    assert entry.numbers == "2–21"
    assert [box.number for row in rows for box in row.boxes[0]] == list(range(1, 23))


def test_rounds_that_alternate_are_odd_and_even(tmp_path: Path) -> None:
    """Garter stitch in the round has no sides; the last round's count is kept."""
    rows = rows_of("Cast on 30 sts.\nJoin in the round.\nRnd 1: Knit.\nRnd 2: Purl.\nRep rnds 1 and 2 4 times more.\nBind off.", tmp_path)
    (entry,) = [row for row in rows if len(row.words) == 2]
    assert entry.words == ("Even rounds: Knit.", "Odd rounds: Purl.")
    assert len(entry.boxes[0]) == 10
    assert entry.check is not None


def test_three_rows_are_left_as_they_are(tmp_path: Path) -> None:
    """Two lines for three rows would be harder to read than three."""
    rows = rows_of("Cast on 30 sts.\nJoin in the round.\nKnit 1 rnd.\nPurl 1 rnd.\nKnit 1 rnd.\nBind off.", tmp_path)
    assert all(len(row.words) == 1 for row in rows)


def test_a_count_or_a_change_ends_what_alternates() -> None:
    """In a cardigan worked in rows no entry holds a count before its last row, or rows of different counts."""
    loaded = load_project(Path(__file__).parents[3] / "sample_projects" / "cardigan.yaml")
    plan = loaded.plan
    by_name = {(each.section, each.number): each for each in plan.rounds}
    folded = 0
    for block in lay_out_rounds(plan, loaded.project):
        if isinstance(block, RoundTable):
            for row in block.rows:
                section = row.boxes[0][0].said.rpartition(",")[0].lower()
                rounds = [by_name[section, box.number] for box in row.boxes[0]]
                assert all(each.checkpoint is None for each in rounds[:-1])
                assert len({each.after for each in rounds}) == 1
                if len(row.words) == 2 and row.words[0].startswith(("RS rows", "WS rows")):
                    folded += 1
                    sides = {words[:2]: words[9:].lower().rstrip(".") for words in row.words}
                    assert all(sides[each.side] == each.instruction for each in rounds)
    assert folded > 4
