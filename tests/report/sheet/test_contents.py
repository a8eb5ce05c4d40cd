"""The sheet stands alone: blend, yarns, abbreviations, only the charts that are knitted."""

from __future__ import annotations

from pathlib import Path

import pytest

from stepper.commands.yarn import list_rows
from stepper.project.reader import read_project
from stepper.report.sheet.blocks import Block, Bullets, Gallery, Paragraph, SheetHeading, Terms
from stepper.report.sheet.contents import lay_out_sheet, tell_sizes
from stepper.sitting.project_file import load_project, plan_of_text

SHIPPED = Path(__file__).parents[3] / "sample_projects"


def sheet(name: str) -> tuple[Block, ...]:
    """Lay out the sheet of a sample."""
    loaded = load_project(SHIPPED / f"{name}.yaml")
    plan, yarns = list_rows(loaded)
    return lay_out_sheet(plan, loaded.project, yarns)


def test_a_blend_is_told_in_words() -> None:
    """From which line another size is knitted, and with how many stitches: 116 and 162 are in the file's own account."""
    loaded = load_project(SHIPPED / "pullover.yaml")
    assert tell_sizes(loaded.plan, loaded.project) == (
        "A blend of sizes: size 2 from the beginning; from “Second increase” (yoke, round 11) size 3, so this round "
        "goes from 116 to 162 stitches."
    )
    assert sheet("pullover")[1] == Paragraph(text=tell_sizes(loaded.plan, loaded.project))


def test_one_size_is_told_shortly() -> None:
    """Of several, and of one alone."""
    cardigan, shawl = (load_project(SHIPPED / f"{name}.yaml") for name in ("cardigan", "shawl"))
    assert tell_sizes(cardigan.plan, cardigan.project) == "Size M."
    assert tell_sizes(shawl.plan, shawl.project) == "One size."


def test_the_yarns_are_explained_on_the_sheet() -> None:
    """MC stands in the lines; a reader of the sheet alone has to know what it is."""
    (terms,) = [block for block in sheet("pullover") if isinstance(block, Terms)]
    assert terms.items[:3] == (
        ("MC", "main colour, tarn"), ("A", "the yarn curd"), ("B", "the yarn madder"),
    )  # fmt: skip


@pytest.mark.parametrize(
    ("name", "titles"),
    [
        ("pullover", ["The yoke from above", "Chart mesh", "Chart gable", "Chart seed", "Chart lattice"]),
        ("shawl", ["Chart ripple"]),
        ("hat", ["Chart plait"]),
        ("socks", []),
    ],
)
def test_every_chart_that_is_knitted_is_shown(name: str, titles: list[str]) -> None:
    """Whether a round follows it all around or for some of its stitches."""
    shown = [
        picture.title for block in sheet(name) if isinstance(block, Gallery) for picture in block.pictures if picture.title
    ]
    assert shown == titles


def test_a_chart_that_no_round_follows_is_left_out(tmp_path: Path) -> None:
    """A motif of another version of the pattern would be taken for one of hers."""
    text = (SHIPPED / "pullover.yaml").read_text(encoding="utf-8").replace("Chart mesh.", "Knit 5 rounds.")
    text = text.replace("      Break A.\n      Knit 1 (2, 3, 4, 4, 5) rounds.", "      Knit 1 (2, 3, 4, 4, 5) rounds.")
    project = read_project(text).project
    assert project is not None
    assert "mesh" in project.charts
    blocks = lay_out_sheet(plan_of_text(text, "pullover", tmp_path), project, ())
    shown = [picture.title for block in blocks if isinstance(block, Gallery) for picture in block.pictures]
    assert "Chart mesh" not in shown
    assert "Chart lattice" in shown


def test_cautions_and_alterations_are_on_it() -> None:
    """What she has to know before she begins, and what differs from print."""
    bullets = [block.items for block in sheet("pullover") if isinstance(block, Bullets)]
    assert bullets[-1][:2] == ("k1, p1 rib instead of k2, p2 in neckband", "left sleeve 2 cm longer")
    assert Paragraph(text="None: knitted as printed.") in sheet("hat")
    assert [block.text for block in sheet("hat") if isinstance(block, SheetHeading) and block.level == 1] == ["Brackenfold hat"]
