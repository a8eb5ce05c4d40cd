from __future__ import annotations

import io
import re

import numpy as np
import pytest

from stepper.lap.code import draw_in_terminal, draw_svg

URL = "http://192.168.178.123:8642/abcDEF0123456789_-xyzQ/"


def rows_of(drawn: str) -> np.ndarray:
    """Return a drawing of half blocks as light and dark points."""
    lines = [re.sub(r"\x1b\[[0-9;]*m", "", line) for line in drawn.splitlines()]
    looks = {"█": (1, 1), "▀": (1, 0), "▄": (0, 1), " ": (0, 0)}
    return np.array([[looks[sign][half] for sign in line] for line in lines for half in (0, 1)], dtype=np.uint8)


def test_the_code_is_square_and_fits_a_terminal() -> None:
    """Three finder patterns of 7 by 7 in its corners (ISO/IEC 18004, 6.3.3), in no more than 80 by 24 cells."""
    drawn = draw_in_terminal(URL)
    assert max(len(re.sub(r"\x1b\[[0-9;]*m", "", line)) for line in drawn.splitlines()) <= 80
    assert len(drawn.splitlines()) <= 22


def test_a_camera_reads_the_address() -> None:
    """Read again by another library than the one that drew it, from the terminal's cells and from the picture."""
    reader = pytest.importorskip("zxingcpp", reason="zxing-cpp is not installed")
    light = rows_of(draw_in_terminal(URL)) * 255
    picture = np.kron(light, np.ones((4, 4), dtype=np.uint8))
    assert [each.text for each in reader.read_barcodes(picture)] == [URL]
    assert b"<svg" in draw_svg(URL)


def test_the_picture_has_its_quiet_zone() -> None:
    """Four modules of white around it. Source: ISO/IEC 18004, 6.3.8."""
    text = io.BytesIO(draw_svg(URL)).read().decode()
    assert "#fff" in text
    size = re.search(r'viewBox="0 0 (\d+) (\d+)"', text)
    assert size is not None
    assert int(size[1]) == int(size[2])
    assert (int(size[1]) - 8 - 17) % 4 == 0  # sides of 21, 25, 29 ... modules
