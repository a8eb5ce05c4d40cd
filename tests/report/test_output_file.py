"""A drawing in a file of the kind its name says."""

from __future__ import annotations

from pathlib import Path
from xml.etree import ElementTree

import pytest
from PIL import Image

from stepper.errors import SurroundingsError
from stepper.report.drawing.shapes import Box, Drawing
from stepper.report.output_file import PICTURE_ENDINGS, write_picture

DRAWING = Drawing(width=20, height=10, title="a box", shapes=(Box(at=(0, 0), width=5, height=5, colour="#112233"),))


def test_the_ending_says_what_is_written(tmp_path: Path) -> None:
    """Read back by the standard library and by Pillow; a name in capitals is the same ending."""
    write_picture(tmp_path / "one.SVG", DRAWING)
    assert ElementTree.parse(tmp_path / "one.SVG").getroot().get("aria-label") == "a box"
    write_picture(tmp_path / "two.png", DRAWING)
    assert Image.open(tmp_path / "two.png").getpixel((1, 1)) == (0x11, 0x22, 0x33)
    assert set(PICTURE_ENDINGS) == {".svg", ".png"}


def test_a_folder_that_is_not_there_is_told(tmp_path: Path) -> None:
    """One sentence with the name, no traceback."""
    with pytest.raises(SurroundingsError, match=r"gone/one\.svg cannot be written: No such file"):
        write_picture(tmp_path / "gone" / "one.svg", DRAWING)
