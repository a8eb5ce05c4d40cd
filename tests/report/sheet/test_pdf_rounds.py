"""The rounds on a PDF: a box for each, and the heads again on every sheet."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

pytest.importorskip("reportlab", reason="reportlab is not installed")
pytest.importorskip("font_source_sans_pro", reason="the typeface is not installed")

from stepper.report.sheet.blocks import RoundTable
from stepper.report.sheet.pdf_rounds import lay_rounds
from stepper.report.sheet.pdf_strips import MM, load_typeface, place_strips
from stepper.report.sheet.rounds import lay_out_rounds
from stepper.sitting.project_file import load_project

SHIPPED = Path(__file__).parents[3] / "sample_projects"
ROOM = 184 * MM
"""A4 between margins of 13 mm. Unit: pt."""


class Recorder:
    """A page that remembers its boxes, numbers and lines."""

    def __init__(self) -> None:
        self.boxes: list[tuple[float, float, float, float]] = []
        self.lines: list[tuple[float, ...]] = []
        self.numbers: list[str] = []

    def roundRect(self, x: float, y: float, wide: float, high: float, *rest: Any, **how: Any) -> None:  # noqa: N802
        """Remember a box."""
        self.boxes.append((x, y, x + wide, y + high))

    def drawCentredString(self, x: float, y: float, text: str) -> None:  # noqa: N802
        """Remember what stands in it."""
        self.numbers.append(text)

    def line(self, *ends: float) -> None:
        """Remember a line."""
        self.lines.append(ends)

    def __getattr__(self, name: str) -> Any:
        return lambda *given, **how: None


@pytest.mark.parametrize("name", ["pullover", "socks", "cardigan"])
def test_every_round_has_its_box_within_the_sheet(name: str) -> None:
    """As many boxes as rounds, none over another, none beyond the margin, each with its number."""
    load_typeface()
    loaded = load_project(SHIPPED / f"{name}.yaml")
    page = Recorder()
    asked: list[str] = []
    top = 0.0
    for block in lay_out_rounds(loaded.plan, loaded.project):
        if isinstance(block, RoundTable):
            asked += [str(box.number) for row in block.rows for boxes in row.boxes for box in boxes]
            for strip in lay_rounds(block, ROOM):
                before = len(page.boxes)
                strip.draw(page, 0.0, top)
                assert all(y >= top - strip.high - 0.01 for _, y, _, _ in page.boxes[before:])
                top -= strip.high
    assert sorted(page.numbers) == sorted(asked)
    assert len(page.boxes) == len(loaded.plan.rounds)
    assert all(left >= 0 and right <= ROOM + 0.01 for left, _, right, _ in page.boxes)
    assert all(end[2] <= ROOM + 0.01 for end in page.lines)
    spots = {(round(x), round(y)) for x, y, _, _ in page.boxes}
    assert len(spots) == len(page.boxes)


def test_the_last_round_never_has_a_sheet_for_itself() -> None:
    """A sheet with one box on it is mislaid, and with it the bind-off."""
    load_typeface()
    loaded = load_project(SHIPPED / "pullover.yaml")
    tables = [block for block in lay_out_rounds(loaded.plan, loaded.project) if isinstance(block, RoundTable)]
    longer = [block for block in tables if len(block.rows) > 3]
    assert longer
    for block in longer:
        strips = list(lay_rounds(block, ROOM))
        rounds = [place for place, strip in enumerate(strips) if not strip.keeps]
        assert len(rounds) == len(block.rows) - 1  # the last two hold together
        high = sum(strip.high for strip in strips[:-1]) + 1.0  # a sheet that has room for all but the last
        assert len(place_strips(strips, high)[-1].strips) > 2  # the head, the round before and the last
