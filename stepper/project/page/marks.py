"""The mark that a pasted page leaves where the knitter has to look, and where it still stands. No I/O.

What stands under it was not understood, or was made up because the page does not say it. A file is not sound
while one stands: a row that is not read is not knitted, and nothing else would say so. The mark of a row
stands as long as a note is under it: once that is a line, the line is read or refused by itself.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.problems import Problem
from stepper.regex import regex

MARK: Final = "LOOK"
"""The word that marks where the knitter has to look."""
FROM_PAGE: Final = "# Written from the text of a printed pattern."
"""What a file begins with that was written from a page."""

_STANDING: Final = regex(
    rf"(?:^|(?<=\s))# ?{MARK}(?P<row> \(rows? \d[^)]*\))?(?::[ \t]*(?P<why>.*?)|\.)[ \t]*\r?$",
    re.MULTILINE,
)
_OF_A_ROW: Final = (
    'Write it so that it is read, keep it as "{form}", or delete this row to leave it as a note.'
)
_ROWS: Final = "Own words: … 96 sts."
_COUNTED: Final = regex(
    r"^note\s*:\s*[^:]*[.;)]\s*[\[(=–—-]*\s*\d+(?:\s*[(\[][\d\s,:-]+[)\]])?\s*(?:sts?|stitches)\b[\])]*\.?$",
    re.IGNORECASE,
)
"""A note that ends with the count its row leaves, and has no head before a colon."""
_FORMS: Final = (
    (r"\b(?:cast(?:ing)?\s+on|CO)\b", "Own words, cast on 38 sts: …"),
    (r"\bpick(?:ing)?\s+up\b", "Own words, pick up 31 sts: …"),
    (r"\b(?:hold(?:ers?)?|waste\s+yarn|thread|stitch\s+holder)\b", "Own words, hold 12 sts for thumb: …"),
    (
        r"\b(?:cast|bind)\s+off(?:\s+(?:all|rem|in\b|loosely|very)|\s*\.?$)",
        "Own words, bind off all sts: …",
    ),
    (
        r"\b(?:until|for)\b[^.;]*?\d[^.;]*?(?:cm|mm|ins?\b|inch|[\"”])",
        "Own words, until piece measures 12 cm: …",
    ),
)
"""What is said in a row, and the form in which it is kept with what the program has to know."""
_OF_A_VALUE: Final = f"Put it right, or delete the comment ({MARK} and what follows) if it is right already."


def is_from_page(text: str) -> bool:
    """Return whether a file was written from the text of a page."""
    return text.startswith(FROM_PAGE)


def find_standing_marks(text: str) -> tuple[Problem, ...]:
    """Find the marks that have not been put right or taken away.

    Args:
        text: The whole text of a project file.

    Returns:
        One problem for each, in the order of the file, with what the mark says.
    """
    found: list[Problem] = []
    for match in _STANDING.finditer(text):
        before = text.rfind("\n", 0, match.start()) + 1
        row, why = match["row"], match["why"]
        below = text[match.end() :].split("\n", 2)[1:2]
        if row and _is_written(below):
            continue
        told = f"{_unread(row)}, so not knitted" if row else f"{MARK} still stands here"
        found.append(
            Problem(
                line=text.count("\n", 0, match.start()) + 1,
                column=match.start() - before + 1,
                length=len(match[0].rstrip()),
                message=f"{told}: {why}" if why else f"{told}.",
                hint=_how_to_keep(below) if row else _OF_A_VALUE,
            )
        )
    return tuple(found)


def _is_written(below: list[str]) -> bool:
    """Return whether a line stands under the mark of a row in place of the note that was left there."""
    said = below[0].strip() if below else ""
    return said != "" and not re.match(r"note\s*:|#|- |[\w ]+:\s*(?:\||$)", said, re.I)


def _how_to_keep(below: list[str]) -> str:
    """Return what may be done about a row that is not read, with the form that its words ask for.

    A row that ends with the count it leaves may be kept as it stands, so the whole of it is written.
    """
    said = below[0].strip() if below else ""
    form = next((form for pattern, form in _FORMS if re.search(pattern, said, re.I)), _ROWS)
    if form == _ROWS and _COUNTED.search(said) is not None:
        form = re.sub(r"^note\s*:\s*", "Own words: ", said, flags=re.I)
    return _OF_A_ROW.format(form=form)


def _unread(row: str) -> str:
    where = row.strip(" ()")
    return f"{where} {'are' if where.startswith('rows') else 'is'} not read"
