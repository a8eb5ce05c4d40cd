"""The rounds for paper: none is left out, every one has its box, every count its length."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise
from pathlib import Path

import pytest

from stepper.language.places import sentence_case
from stepper.plan.model import Plan
from stepper.project.model import Project
from stepper.project.reader import read_project
from stepper.report.measure.measurements import measure_garment
from stepper.report.sheet.blocks import RoundRow, RoundTable, SheetHeading
from stepper.report.sheet.rounds import lay_out_rounds
from stepper.sitting.project_file import load_project, plan_of_text
from tests.plans import plan
from tests.project.samples import project

SAMPLES = sorted((Path(__file__).parents[2] / "fixtures").glob("*.yaml"))
SHIPPED = Path(__file__).parents[3] / "sample_projects"


def any_project() -> Project:
    """Read a project whose gauges no made-up plan uses."""
    found = read_project(project("Cast on 8 sts.")).project
    assert found is not None
    return found


def rows_of(*rounds: object) -> list[RoundRow]:
    """Lay out a made-up section."""
    blocks = lay_out_rounds(plan(("yoke", list(rounds))), any_project())
    return [row for block in blocks if isinstance(block, RoundTable) for row in block.rows]


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_every_round_has_one_box_that_says_whose_it_is(path: Path) -> None:
    """As many boxes as rounds, each named for its section and number."""
    loaded = load_project(path)
    tables = [each for each in lay_out_rounds(loaded.plan, loaded.project) if isinstance(each, RoundTable)]
    boxes = [box for table in tables for row in table.rows for piece in row.boxes for box in piece]
    assert sorted(box.said for box in boxes) == sorted(
        f"{sentence_case(each.section)}, {'row' if each.flat else 'round'} {each.number}"
        for each in loaded.plan.rounds
    )


def test_a_round_is_told_whole() -> None:
    """Remark, label, size, instruction, counts and what to count."""
    final = {"label": "Final <increase>", "remarks": ("change to 4 mm needles",), "checkpoint": "after it"}
    row = rows_of("co12", ("(k6 m1)x2", final))[-1]
    assert row.remarks == ("Change to 4 mm needles.",)
    assert row.label == "Final <increase>"
    assert row.stitches == "12 → 14"
    assert row.check is not None
    assert row.check.text == "Count 14: after it."


def test_a_round_in_one_colour_names_it_on_paper() -> None:
    """Behind the instruction, since its stitches name none."""
    said = [words for row in rows_of("co8", "k8", "k8:A", "(k1:A k1)x4", "k8") for words in row.words]
    assert [words for words in said if words.startswith("K8")] == ["K8.", "K8:A in A.", "K8 in MC."]


@pytest.mark.parametrize("name", ["pullover", "cardigan", "socks", "hat"])
def test_every_count_of_the_plan_stands_beside_its_round(name: str) -> None:
    """Number and round of each, in the order knitted; of two pieces alike, once."""
    loaded = load_project(SHIPPED / f"{name}.yaml")
    due = {
        f"{sentence_case(each.section)}, {'row' if each.flat else 'round'} {each.number}": each.checkpoint.expect
        for each in loaded.plan.rounds
        if each.checkpoint is not None
    }
    shown = {}
    for block in lay_out_rounds(loaded.plan, loaded.project):
        if isinstance(block, RoundTable):
            for row in block.rows:
                if row.check is not None:
                    shown.update({boxes[-1].said: row.check.expect for boxes in row.boxes})
    assert shown == due


def test_the_last_count_of_a_piece_has_the_length_of_the_measurements() -> None:
    """Body and sleeve of the pullover at their bind-off are as long on the needles as their table says."""
    loaded = load_project(SHIPPED / "pullover.yaml")
    measured = {line.name: line.needles_mm for line in measure_garment(loaded.plan.rounds, loaded.project)}
    last = {}
    for block in lay_out_rounds(loaded.plan, loaded.project):
        if isinstance(block, SheetHeading):
            title = block.text
        elif isinstance(block, RoundTable):
            last[title] = [row.check for row in block.rows if row.check is not None][-1].length
    assert last["Body"] == f"{measured['body, length'] / 10:.1f} cm"
    assert last["Left / right sleeve"] == f"{measured['left sleeve, length'] / 10:.1f} cm"


def test_a_reason_that_is_seen_is_not_said() -> None:
    """"72 → 70" says that it is after a decrease; before a chart nothing else says so."""
    rows = [
        row
        for block in lay_out_rounds(*_loaded("pullover"))
        if isinstance(block, RoundTable)
        for row in block.rows
        if row.check is not None
    ]
    reasons = {row.check.reason for row in rows if row.check is not None}
    assert "after the decreases" not in reasons
    assert {"before chart lattice", "after chart lattice", "before the bind-off"} <= reasons
    assert all(row.before != row.after for row in rows if row.check is not None and not row.check.reason)


def _loaded(name: str) -> tuple[Plan, Project]:
    loaded = load_project(SHIPPED / f"{name}.yaml")
    return loaded.plan, loaded.project


def test_what_is_printed_once_for_two_has_boxes_for_both(tmp_path: Path) -> None:
    """A sleeve to be made twice is ticked twice."""
    source = project("Cast on 30 sts.\nJoin in the round.\nKnit 5 rounds.\nBind off.").replace("name: body", "name: sleeves")
    found = read_project(source).project
    assert found is not None
    blocks = list(lay_out_rounds(plan_of_text(source, "strip", tmp_path), found))
    heading, table = next(
        (one, other) for one, other in pairwise(blocks) if isinstance(other, RoundTable)
    )
    assert isinstance(heading, SheetHeading)
    assert isinstance(table, RoundTable)
    assert heading.note == "7 rounds, worked twice"
    assert table.pieces == ("First", "Second")
    assert [len(boxes) for row in table.rows for boxes in row.boxes] == [1, 1, 5, 5, 1, 1]
    said = [box.said for row in table.rows for boxes in row.boxes for box in boxes]
    assert len(set(said)) == len(said) == 14


def test_an_alteration_is_said_where_it_begins_and_where_it_ends() -> None:
    """Her own needle beside each of three hundred rounds hides what else is altered."""
    made = plan(("yoke", ["co20", "k20", "k10 k2tog1 k8", "k19"]))
    rules = ((), ("one",), ("one",), ("one", "two"), ())
    rounds = tuple(replace(each, altered=now) for each, now in zip(made.rounds, rules, strict=False))
    blocks = lay_out_rounds(replace(made, rounds=rounds), any_project())
    said = [row.altered for block in blocks if isinstance(block, RoundTable) for row in block.rows]
    assert said == ["", "Altered from here: one.", "", "Altered from here: two."]
    ended = tuple(replace(each, altered=now) for each, now in zip(made.rounds, (("one",), (), (), ()), strict=True))
    (table,) = [each for each in lay_out_rounds(replace(made, rounds=ended), any_project()) if isinstance(each, RoundTable)]
    assert [row.altered for row in table.rows][:2] == ["Altered from here: one.", "As printed from here."]
