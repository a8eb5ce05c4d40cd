"""PDFs printed by Chromium from the pages beside them, read again.

`chromium --headless --no-pdf-header-footer --print-to-pdf=NAME.pdf NAME.html` prints them anew.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from stepper.errors import ProjectError
from stepper.project.page.pdf import PdfText, is_pdf, read_pdf, told_pictures

FOLDER = Path(__file__).parent.parent / "pdf"


def found_in(name: str) -> PdfText:
    """Read one of the printed pages."""
    return read_pdf((FOLDER / f"{name}.pdf").read_bytes(), f"{name}.pdf")


def rows_of(found: PdfText) -> list[str]:
    """Return the rows that are not white."""
    return [row for row in found.text.splitlines() if row]


def test_two_columns_under_a_table_are_read_as_printed() -> None:
    """Title, table row by row, then the left column to its end and the right one."""
    rows = rows_of(found_in("two_columns"))

    assert rows[0] == "Cloudberry hat"
    assert rows[3:6] == ["Sizes  S  M  L", "Head (cm)  52  56  60", "Depth (cm)  21  22  23"]
    order = ["Gauge", "Yarn", "Brim", "Body", "Knit 1 round.", "Crown", "Rnd 2: Knit.", "Rnd 4: Knit."]
    assert [row for row in rows if row in order] == order
    assert " ".join(rows[-3:]) == (
        "Break yarn and draw it through the remaining sts, pull tight and fasten off inside the hat."
    )


def test_a_sentence_broken_over_two_pages_is_whole() -> None:
    """Neither the running head nor the page number stands in its middle; the title stays first."""
    rows = rows_of(found_in("running_heads"))

    assert rows[:2] == ["Saltgrass cowl", "Saltgrass cowl, for hobby use"]
    assert "*K3, p3; rep from * to end. Work for 4 cm. Knit 10 rounds." in " ".join(rows)
    assert not any("Page" in row for row in rows)


def test_a_page_that_is_a_picture_is_told_with_what_to_do_instead() -> None:
    """Page 3 holds nothing but a chart; page 2 has one beside its text."""
    found = found_in("running_heads")

    assert (found.pictures_only, found.with_pictures) == ((3,), (2,))
    assert told_pictures(found) == (
        "Page 3 is a picture only and cannot be read here. Page 2 holds a picture beside the text. "
        "A chart is given under `charts:`, drawn as text, or as a picture with one square for each stitch."
    )
    assert told_pictures(found_in("two_columns")) == ""


def test_a_scan_is_refused_with_a_sentence() -> None:
    """Nothing is made of a picture of a pattern."""
    with pytest.raises(ProjectError, match=r"^scan.pdf holds no text: its page is a picture only, a scan"):
        found_in("scan")


@pytest.mark.parametrize("left", [8, 500, 9_000])
def test_a_file_cut_off_is_told_to_be_damaged(left: int) -> None:
    """A download that broke off ends in a sentence, never in a traceback."""
    raw = (FOLDER / "two_columns.pdf").read_bytes()[:left]

    with pytest.raises(ProjectError, match=r"^cut.pdf is damaged and cannot be read as PDF"):
        read_pdf(raw, "cut.pdf")


def test_a_pdf_is_known_by_its_mark() -> None:
    """The ending of its name says nothing (ISO 32000-1, 7.5.2: the mark stands in the first 1,024 bytes)."""
    assert is_pdf((FOLDER / "scan.pdf").read_bytes())
    assert not is_pdf(b"Cast on 80 sts.")


def test_a_locked_file_is_told_to_be_locked() -> None:
    """Printed by pypdf with a password, then read without it."""
    with pytest.raises(ProjectError, match=r"locked by a password"):
        found_in("locked")
