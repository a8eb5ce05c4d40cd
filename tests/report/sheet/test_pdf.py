"""The sheet as a PDF, read back by another library: the words of the page, in letters that are in the file."""

from __future__ import annotations

import io
import re
from html import unescape
from pathlib import Path

import pytest

pytest.importorskip("reportlab", reason="reportlab is not installed")
pytest.importorskip("font_source_sans_pro", reason="the typeface is not installed")

from pdfminer.high_level import extract_text
from pdfminer.pdfpage import PDFPage

from stepper.commands.yarn import list_rows
from stepper.report.sheet.blocks import Bullets, Grid, Paragraph, SheetHeading, TableCell, Terms
from stepper.report.sheet.contents import lay_out_sheet
from stepper.report.sheet.page import write_page
from stepper.report.sheet.pdf import PdfSheet, write_pdf
from stepper.sitting.project_file import load_project

SHIPPED = Path(__file__).parents[3] / "sample_projects"


def made(name: str) -> tuple[PdfSheet, str]:
    """Write the sheet of a sample as a PDF and as a page."""
    loaded = load_project(SHIPPED / f"{name}.yaml")
    plan, yarns = list_rows(loaded)
    blocks = lay_out_sheet(plan, loaded.project, yarns)
    return write_pdf(blocks, title=plan.title), write_page(plan, loaded.project, yarns)


def words_of_page(markup: str) -> set[str]:
    """List the words that a page shows, without those it reads out in place of its drawings."""
    shown = re.sub(r"<head>.*?</head>|<title>.*?</title>", " ", markup, flags=re.DOTALL)
    return set(unescape(re.sub(r"<(?!/?b>)[^>]*>", " ", shown).replace("<b>", "").replace("</b>", "")).split())


@pytest.mark.parametrize("name", ["pullover", "shawl"])
def test_it_says_what_the_page_says(name: str) -> None:
    """Every word and figure of the page, and few others: a count that is on one of them alone would be believed."""
    pdf, markup = made(name)
    found = set(extract_text(io.BytesIO(pdf.content)).split())
    asked = words_of_page(markup) - {"below"}
    assert asked - found == set()
    assert len(found - asked) < 10  # the foot of each sheet
    assert pdf.missing == ""


def test_it_is_few_sheets_with_their_numbers() -> None:
    """Eight at most for a pullover, as from a browser."""
    pdf, _ = made("pullover")
    count = len(list(PDFPage.get_pages(io.BytesIO(pdf.content))))
    assert count <= 8
    assert f"Quillmere pullover · {count} / {count}" in extract_text(io.BytesIO(pdf.content))


def test_every_letter_is_in_the_file() -> None:
    """A typeface that is only named is replaced by whatever the printer has: here all are embedded."""
    pdf, _ = made("hat")
    assert pdf.content.count(b"/FontFile2") == pdf.content.count(b"/Type /FontDescriptor") > 0
    assert b"/Type1" not in pdf.content


def test_names_in_latin_greek_and_cyrillic_are_printed() -> None:
    """Accents of every Latin language, Greek and Cyrillic come back as they were written."""
    title = "Żółć Ångström çığ Ёлка їжак ήλιος"
    pdf = write_pdf([SheetHeading(level=1, text=title)], title=title)
    assert extract_text(io.BytesIO(pdf.content)).split()[:6] == title.split()
    assert pdf.missing == ""


def test_letters_it_has_not_are_reported() -> None:
    """Hebrew and Japanese are not covered; silence would leave boxes on the paper."""
    pdf = write_pdf([Paragraph(text="yarn שלג and 編み物")], title="Scarf")
    assert set(pdf.missing) == set("שלג編み物")


def test_a_letter_that_is_missing_is_found_wherever_it_stands() -> None:
    """In a cell, a remark, an abbreviation, a note; and one that Python would write as its number, too."""
    digit = "\U0001fbf0"
    private = "\ue001"  # of nobody: `repr` writes it as a number
    blocks = [
        Grid(key="g", head=("yarn", "g"), rows=((TableCell(text="編", remark="み"), TableCell(text="50")),)),
        Terms(key="t", items=(("k", "物"),)),
        Bullets(items=(f"snow {private}",)),
        SheetHeading(level=1, text="Yarn", note=f"note {digit}"),
    ]
    assert set(write_pdf(blocks, title="Scarf").missing) == {*"編み物", private, digit}


def test_the_same_sheet_is_the_same_file() -> None:
    """No date in it: a folder kept under version control shows no change where there is none."""
    assert made("hat")[0] == made("hat")[0]


@pytest.mark.parametrize(("size", "box"), [("A4", (595, 842)), ("Letter", (612, 792))])
def test_the_paper_is_the_one_asked_for(size: str, box: tuple[int, int]) -> None:
    """ISO 216: 210 by 297 mm; ANSI/ASME Y14.1: 8.5 by 11 in; 72 points to the inch."""
    pdf = write_pdf([SheetHeading(level=1, text="Scarf")], title="Scarf", size=size)
    (page,) = PDFPage.get_pages(io.BytesIO(pdf.content))
    assert tuple(round(each) for each in page.mediabox[2:]) == box
