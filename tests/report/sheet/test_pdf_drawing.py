"""Drawings in a PDF, looked at as a picture: the right colour at the right place."""

from __future__ import annotations

import io
import shutil
import subprocess
from pathlib import Path

import pytest

pytest.importorskip("reportlab", reason="reportlab is not installed")
pytest.importorskip("font_source_sans_pro", reason="the typeface is not installed")

from PIL import Image
from reportlab.pdfgen.canvas import Canvas

from stepper.report.drawing.markup import svg, tag
from stepper.report.sheet.charts import SQUARE, draw_chart
from stepper.report.sheet.looks import assign_looks
from stepper.report.sheet.pdf_drawing import measure_drawing, put_drawing
from stepper.report.sheet.pdf_strips import PLAIN, load_typeface
from stepper.sitting.project_file import load_project

pytestmark = pytest.mark.skipif(shutil.which("pdftoppm") is None, reason="poppler-utils is not installed")
PULLOVER = Path(__file__).parents[3] / "sample_projects" / "pullover.yaml"


def looked_at(drawing: str, tmp_path: Path) -> Image.Image:
    """Put a drawing alone on a page, two pixels to its unit."""
    load_typeface()
    wide, high = measure_drawing(drawing)
    held = io.BytesIO()
    canvas = Canvas(held, pagesize=(wide, high))
    put_drawing(canvas, drawing, 0, high, wide, PLAIN)
    canvas.showPage()
    canvas.save()
    (tmp_path / "page.pdf").write_bytes(held.getvalue())
    subprocess.run(["pdftoppm", "-r", "144", "-png", "-singlefile", tmp_path / "page.pdf", tmp_path / "page"], check=True)
    return Image.open(tmp_path / "page.png").convert("RGB")


def test_a_chart_has_its_colours(tmp_path: Path) -> None:
    """Square by square as the file has it: `bbbbb.` is the bottom line of chart gable."""
    project = load_project(PULLOVER).project
    looks = assign_looks(project, ())
    picture = looked_at(draw_chart(project.charts["gable"], looks, "MC"), tmp_path)
    edge = 0.8 * SQUARE
    lines = [".....b", "......", "..b...", ".bbb..", "bbbbb."]
    for row, line in enumerate(lines):
        for column, sign in enumerate(line):
            # A corner of the square, where no letter stands.
            spot = (int(2 * (edge + (column + 0.15) * SQUARE)), int(2 * (edge + (row + 0.15) * SQUARE)))
            red, green, blue = picture.getpixel(spot)
            wanted = looks["B" if sign == "b" else "MC"].colour
            assert f"#{red:02x}{green:02x}{blue:02x}" == wanted, (row, column)


def test_a_ring_is_dashed_from_the_top_clockwise(tmp_path: Path) -> None:
    """A round of four stitches of which the first and third are red: upper right and lower left."""
    ring = tag("circle", r=30.0, stroke="#ff0000", stroke_width=10, fill="none", pathLength=4, stroke_dasharray="1 1", transform="rotate(-90)")  # fmt: skip
    picture = looked_at(svg(100, 100, [tag("g", [ring], transform="translate(50 50)")], title="ring"), tmp_path)
    red, white = (255, 0, 0), (255, 255, 255)
    found = [picture.getpixel((100 + 42 * x, 100 + 42 * y)) for x, y in ((1, -1), (1, 1), (-1, 1), (-1, -1))]
    assert found == [red, white, red, white]


def test_lines_follow_their_commands(tmp_path: Path) -> None:
    """A step down and to the right, relative and absolute, and words beside their point."""
    step = tag("path", d="M10 10v20h30M60 10L60 40H80V60", stroke="#0000ff", stroke_width=4, fill="none")
    words = [tag("text", "mm", x=50, y=80, font_size=20, text_anchor=each, fill="#00aa00") for each in ("end",)]
    picture = looked_at(svg(100, 100, [step, *words], title="step"), tmp_path)
    for x, y in ((10, 20), (30, 30), (60, 30), (70, 40), (80, 50)):
        assert picture.getpixel((2 * x, 2 * y)) == (0, 0, 255), (x, y)
    green = [x for x in range(200) for y in range(130, 165) if picture.getpixel((x, y)) == (0, 170, 0)]
    assert green
    assert max(green) <= 100
