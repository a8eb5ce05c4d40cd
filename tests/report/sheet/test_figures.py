"""The figures of the sheet: in the units of the file, like figures once."""

from __future__ import annotations

from pathlib import Path

import pytest

from stepper.commands.yarn import list_rows
from stepper.report.sheet.blocks import Block, Gallery, Grid, Paragraph
from stepper.report.sheet.figures import lay_out_gauge, lay_out_measurements, lay_out_yarn, name_needle
from stepper.report.sheet.looks import assign_looks
from stepper.sitting.project_file import load_project

SHIPPED = Path(__file__).parents[3] / "sample_projects"


def blocks(name: str) -> list[Block]:
    """Lay out all figures of a sample."""
    loaded = load_project(SHIPPED / f"{name}.yaml")
    plan, yarns = list_rows(loaded)
    looks = assign_looks(loaded.project, ())
    return [
        *lay_out_measurements(plan, loaded.project),
        *lay_out_gauge(loaded.project),
        *lay_out_yarn(yarns, loaded.project, looks),
    ]


def cells(name: str, key: str) -> list[list[str]]:
    """Read a table."""
    (grid,) = [block for block in blocks(name) if isinstance(block, Grid) and block.key == key]
    return [list(grid.head), *([cell.text for cell in row] for row in grid.rows)]


def test_two_sleeves_of_the_same_figures_are_one_row() -> None:
    """Left and right would say the same three times over."""
    names = [row[0] for row in cells("pullover", "measurements")[1:]]
    assert [name for name in names if "sleeve" in name] == [
        "Left / right sleeve, upper arm",
        "Left / right sleeve, wrist",
        "Left / right sleeve, length",
    ]


def test_a_file_in_inches_is_answered_in_inches_yards_and_ounces() -> None:
    """No metric figure but the needle's diameter, which is on the needle: US 8 is 5 mm (table of needle sizes)."""
    assert cells("cardigan", "yarn")[0] == ["Yarn", "Yards", "Ounces", "To buy", "In the house"]
    assert cells("cardigan", "yarn")[1][3] == "6 of 3.5 oz"
    assert ["Stockinette", "US 8 (5 mm)", "16 sts, 22 rounds to 4 in"] in cells("cardigan", "gauge")
    whole = " ".join(text for key in ("measurements", "yarn", "gauge") for row in cells("cardigan", key) for text in row)
    assert " cm" not in whole
    assert " g" not in whole


def test_a_file_in_centimetres_is_answered_in_metres_and_grams() -> None:
    """And its needles go by their diameter."""
    assert cells("pullover", "yarn")[0] == ["Yarn", "Metres", "Grams", "To buy", "In the house"]
    assert cells("pullover", "yarn")[1][0] == "MC, tarn"
    assert ["Rib", "3.5 mm", "22 sts, 28 rounds to 10 cm", "–"] in cells("pullover", "gauge")


@pytest.mark.parametrize(
    ("mm", "units", "said"),
    [(5.0, "in", "US 8 (5 mm)"), (5.0, "cm", "5 mm"), (7.0, "in", "7 mm"), (None, "cm", "–")],
)
def test_a_needle_is_named_as_its_knitter_buys_it(mm: float | None, units: str, said: str) -> None:
    """Seven millimetres have no US number (table of needle sizes)."""
    assert name_needle(mm, units) == said


def test_what_cannot_be_measured_is_said() -> None:
    """Beside the drawing and the table."""
    said = [block.text for block in blocks("cardigan") if isinstance(block, Paragraph)]
    assert any("The chest counts one band" in words for words in said)
    assert any(isinstance(block, Gallery) for block in blocks("cardigan"))


def test_a_garment_without_yarn_has_no_table_of_it() -> None:
    """Nothing is said of nothing."""
    assert list(lay_out_yarn((), load_project(SHIPPED / "hat.yaml").project, {})) == []
