"""The rounds for print: none is left out, every one has its box."""

from __future__ import annotations

from pathlib import Path

import pytest

from stepper.language.places import sentence_case
from stepper.report.sheet.rounds import write_rounds
from stepper.sitting.project_file import load_project
from tests.plans import plan
from tests.report.drawing.test_markup import parsed

SAMPLES = sorted((Path(__file__).parents[2] / "fixtures").glob("*.yaml"))


@pytest.mark.parametrize("path", SAMPLES, ids=lambda path: path.stem)
def test_every_round_has_one_box_that_says_whose_it_is(path: Path) -> None:
    """As many boxes as rounds, in order, each named for its section and number."""
    loaded = load_project(path)
    seen = parsed("".join(write_rounds(loaded.plan)))
    boxes = [attributes["aria-label"] for name, attributes in seen.tags if name == "input"]
    assert boxes == [
        f"{sentence_case(each.section)}, {'row' if each.flat else 'round'} {each.number}"
        for section in loaded.plan.sections
        for each in loaded.plan.rounds
        if each.section == section
    ]


def test_a_round_is_told_whole() -> None:
    """Remark, label, size, instruction, counts and what to count."""
    final = {"label": "Final <increase>", "remarks": ("change to 4 mm needles",), "checkpoint": "after it"}
    said = parsed("".join(write_rounds(plan(("yoke", ["co12", ("(k6 m1)x2", final)]))))).data
    for words in ("Change to 4 mm needles.", "Final <increase>:", "12 → 14", "Count 14: after it."):
        assert words in said


def test_many_boxes_have_a_row_of_their_own() -> None:
    """Ninety-six rounds of a body are ticked across the sheet, not down a narrow column."""
    seen = parsed("".join(write_rounds(plan(("body", ["co8", *["k8"] * 96])))))
    cells = [attributes for name, attributes in seen.tags if name == "td"]
    assert [each.get("colspan") for each in cells if each.get("class") == "many"] == ["4"]
    assert sum(name == "input" for name, _ in seen.tags) == 97


def test_a_round_in_one_colour_names_it_on_paper() -> None:
    """Behind the instruction, since its stitches name none."""
    said = parsed("".join(write_rounds(plan(("yoke", ["co8", "k8", "k8:A", "(k1:A k1)x4", "k8"]))))).data
    assert [words for words in ("K8.", "K8:A in A.", "K8 in MC.") if words in said] == [
        "K8.",
        "K8:A in A.",
        "K8 in MC.",
    ]
