"""Read the text of a pattern bought as PDF; report pictures, scanned pages included, as unreadable.

pdfminer.six finds where each line of text is on its page; `stepper.project.page.page_layout` puts the lines
in order. The bytes are passed in, so nothing here opens a file.
"""

from __future__ import annotations

import io
import logging
from collections.abc import Iterable, Iterator
from typing import TYPE_CHECKING, Final

from stepper.craft.figures import list_words
from stepper.errors import ProjectError
from stepper.project.page.page_layout import PrintedLine, PrintedPage, reading_order
from stepper.records import dataclass

if TYPE_CHECKING:
    from pdfminer.layout import LTComponent

MOST_PAGES: Final = 200
"""More pages than any pattern has; a book of patterns must be cut down to one."""
MOST_BYTES: Final = 64 * 1024 * 1024
"""Largest file that is read. Unit: bytes."""
_MARK: Final = b"%PDF-"
_LIGATURES: Final = str.maketrans(
    {"ﬀ": "ff", "ﬁ": "fi", "ﬂ": "fl", "ﬃ": "ffi", "ﬄ": "ffl", "ﬅ": "st", "ﬆ": "st"}
    | {"\u00ad": None, "\u00a0": " "}
)
_LEAST_LETTERS: Final = 12
"""A page with a picture and fewer letters is a picture: its text is a page number or a mark."""


_CHARTS: Final = (
    "A chart is given under `charts:`, drawn as text, or as a picture with one square for each stitch."
)


@dataclass(frozen=True, slots=True, kw_only=True)
class PdfText:
    """What a PDF holds for the reader of a pattern."""

    text: str
    """The pages in order, columns one after the other; running heads once, after the first row."""
    pictures_only: tuple[int, ...]
    """Pages that hold no text, from 1: a scan, or a chart or photograph that fills the page."""
    with_pictures: tuple[int, ...]
    """Pages that hold pictures as well as text, from 1; a chart may be among them."""


def is_pdf(raw: bytes) -> bool:
    """Return whether bytes are those of a PDF. Source: ISO 32000-1, 7.5.2, the mark within 1,024 bytes."""
    return _MARK in raw[:1024]


def read_pdf(raw: bytes, name: str) -> PdfText:
    """Read the text of a PDF.

    Args:
        raw: The whole file.
        name: Its name in problems.

    Raises:
        ProjectError: It is damaged, password-protected, has too many pages, or holds no text at all.
    """
    pages = _pages(raw, name)
    heads, rows = reading_order(pages)
    empty = tuple(number for number, page in enumerate(pages, start=1) if _is_picture(page, rows[number - 1]))
    if len(empty) == len(pages):
        what = f"{_said(empty)} are pictures only" if len(empty) > 1 else "its page is a picture only"
        raise ProjectError(
            f"{name} holds no text: {what}, a scan perhaps, and pictures cannot be read here. "
            "Type the pattern into a file, or have the scan turned into text first."
        )
    beside = tuple(
        number for number, page in enumerate(pages, start=1) if page.pictures and number not in empty
    )
    return PdfText(text=_text(heads, rows), pictures_only=empty, with_pictures=beside)


def _text(heads: tuple[str, ...], pages: tuple[tuple[str, ...], ...]) -> str:
    """Join heads and pages: the title keeps the first row, and the running heads come after it."""
    rows = [row for page in pages for row in page]
    first = next((number for number, row in enumerate(rows, start=1) if row), 0)
    return "\n".join([*rows[:first], *heads, *rows[first:]]).strip("\n") + "\n"


def told_pictures(found: PdfText) -> str:
    """Return which pages hold unreadable pictures and what to do instead; empty if none does."""
    said = []
    if found.pictures_only:
        are = "are pictures" if len(found.pictures_only) > 1 else "is a picture"
        said.append(f"{_said(found.pictures_only).capitalize()} {are} only and cannot be read here.")
    if found.with_pictures:
        hold = "hold" if len(found.with_pictures) > 1 else "holds"
        said.append(f"{_said(found.with_pictures).capitalize()} {hold} a picture beside the text.")
    return " ".join([*said, _CHARTS] if said else said)


def _said(numbers: tuple[int, ...]) -> str:
    if len(numbers) == 1:
        return f"page {numbers[0]}"
    return f"pages {list_words(map(str, numbers))}"


def _is_picture(page: PrintedPage, rows: tuple[str, ...]) -> bool:
    letters = sum(sign.isalpha() for row in rows for sign in row)
    return letters < _LEAST_LETTERS if page.pictures else letters == 0


def _pages(raw: bytes, name: str) -> tuple[PrintedPage, ...]:
    """Find the lines of each page."""
    from pdfminer.high_level import extract_pages
    from pdfminer.layout import LAParams
    from pdfminer.pdfdocument import PDFEncryptionError, PDFPasswordIncorrect

    logging.getLogger("pdfminer").setLevel(logging.CRITICAL)  # its warnings are for makers of PDFs
    found: list[PrintedPage] = []
    try:
        # A wide gap between words on one row belongs to a table or a gutter, so lines end there.
        for page in extract_pages(io.BytesIO(raw), laparams=LAParams(char_margin=1.6, line_margin=0.3)):
            if len(found) == MOST_PAGES:
                raise ProjectError(f"{name} has more than {MOST_PAGES} pages; give those of one pattern.")
            found.append(_page(page, page.height))
    except ProjectError:
        raise
    except (PDFPasswordIncorrect, PDFEncryptionError) as error:
        raise ProjectError(f"{name} is locked by a password. Save it without one, then try again.") from error
    except Exception as error:  # on a damaged file the library may raise anything
        raise ProjectError(f"{name} is damaged and cannot be read as PDF.") from error
    if not found:
        raise ProjectError(f"{name} is damaged and cannot be read as PDF.")
    return tuple(found)


def _page(page: Iterable[LTComponent], height: float) -> PrintedPage:
    from pdfminer.layout import LTImage, LTTextLine

    lines, pictures = [], 0
    for part in _parts(page):
        if isinstance(part, LTTextLine):
            text = " ".join(part.get_text().translate(_LIGATURES).split())
            if text:
                lines.append(PrintedLine(text=text, left=part.x0, right=part.x1, bottom=part.y0, top=part.y1))
        elif isinstance(part, LTImage) and part.width > 20 and part.height > 20:
            pictures += 1
    return PrintedPage(lines=tuple(lines), height=height, pictures=pictures)


def _parts(inside: Iterable[LTComponent]) -> Iterator[LTComponent]:
    """Yield the lines and pictures of a page, however nested."""
    from pdfminer.layout import LTFigure, LTTextBox

    for part in inside:
        if isinstance(part, LTTextBox | LTFigure):
            yield from _parts(part)
        else:
            yield part
