"""Drawings side by side on a PDF, with their words."""

from __future__ import annotations

import io

import pytest

pytest.importorskip("reportlab", reason="reportlab is not installed")
pytest.importorskip("font_source_sans_pro", reason="the typeface is not installed")

from pdfminer.high_level import extract_text

from stepper.report.drawing.markup import svg
from stepper.report.sheet.blocks import Gallery, Picture, Sign
from stepper.report.sheet.pdf import write_pdf
from stepper.report.sheet.pdf_pictures import lay_gallery
from stepper.report.sheet.pdf_strips import MM, load_typeface

ROOM = 184 * MM


def picture(wide_mm: float, *, high: float = 10.0, title: str = "Chart", caption: str = "") -> Picture:
    """Make an empty drawing ten units wide."""
    return Picture(drawing=svg(10, high, [], title="empty"), wide_mm=wide_mm, title=title, caption=caption)


def test_as_many_stand_in_a_row_as_fit() -> None:
    """Three of 55 mm with 6 mm between them fit 184 mm (arithmetic: 177); a fourth begins the next row."""
    load_typeface()
    assert len(list(lay_gallery(Gallery(pictures=(picture(55),) * 3), ROOM))) == 1
    assert len(list(lay_gallery(Gallery(pictures=(picture(55),) * 4), ROOM))) == 2


def test_small_drawings_stand_beside_a_large_one() -> None:
    """Beside a yoke of 80 mm there are 98 mm: two charts of 45 mm in a row, as many rows as it is high, none lost."""
    load_typeface()
    yoke = Picture(drawing=svg(10, 10, [], title="yoke"), wide_mm=80, title="Yoke", beside=True)
    charts = tuple(picture(45, high=7.0, title=f"Chart {number}") for number in range(7))
    assert len(list(lay_gallery(Gallery(pictures=(yoke, *charts[:4])), ROOM))) == 1
    assert len(list(lay_gallery(Gallery(pictures=(yoke, *charts)), ROOM))) == 2
    pdf = write_pdf([Gallery(pictures=(yoke, *charts))], title="Scarf")
    words = extract_text(io.BytesIO(pdf.content))
    assert all(f"Chart {number}" in words for number in range(7))


def test_a_drawing_is_never_taller_than_a_sheet() -> None:
    """Letter holds 250 mm between its margins: a long chart is drawn smaller rather than cut off."""
    load_typeface()
    (strip,) = lay_gallery(Gallery(pictures=(picture(180, high=40.0),)), ROOM)
    assert strip.high <= 250 * MM


def test_title_caption_and_signs_are_written() -> None:
    """What the signs mean stands below their chart."""
    sign = Sign(drawing=svg(14, 14, [], title="ssk"), words="ssk, tarn")
    shown = Picture(drawing=svg(10, 10, [], title="x"), wide_mm=60, title="Chart fern", caption="By turns.", signs=(sign,) * 6)
    pdf = write_pdf([Gallery(pictures=(shown,))], title="Scarf")
    words = extract_text(io.BytesIO(pdf.content))
    assert "Chart fern" in words
    assert "By turns." in words
    assert words.count("ssk, tarn") == 6
