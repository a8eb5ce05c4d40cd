"""Take the marks to which other lines refer, "as for back to **", off their rows. No I/O."""

from __future__ import annotations

import re
from collections.abc import Iterable

from stepper.project.problems import Span
from stepper.regex import regex

Row = tuple[str, Span]
_MARK = regex(
    r"(?:(?<=^)|(?<=[\s(\[.]))[(\[]?(?P<mark>\*{2,4}|\u2020{1,2}|\u2021|\u00a7)[)\]]?(?=\s|\.?$|[A-Z][a-z]{2}|CO\b)"
)
_STAR = regex(_MARK.pattern.replace("{2,4}", "{1,4}"))
_FROM_STAR = regex(r"^\s*(?:work|again|rep(?:eat)?)\s+from\s+\*\s+to\s+\*(?=\s|\.|$)", re.I)
_FROM_STAR_ON = regex(
    r"^\s*(?:work|again|rep(?:eat)?)\s+from\s+\*\s+(?:to\s+(?:\*{2,4}|\u2020{1,2}|\u2021|\u00a7)|until\b)",
    re.I,
)
_AGAIN_STAR = regex(
    r"^\s*rep(?:eat)?\s+from\s+\*\s+(?:\d{1,2}|once|twice|two|three|four|five)\b(?!\s+(?:sts|stitch))", re.I
)
_ROWS = regex(r"\b(?:rows?|rnds?|rounds?|until|continu(?:e|ing)|cont)\b", re.I)
"""Words of a line that works rows; without them a star in front of it begins a repeat of stitches."""
_HEADED = regex(r"\s*(?:[a-z]+\s+){0,2}(?:rows?|rnds?|rounds?)\b[^:*]{0,30}:[^*]*\*[^*]*\*", re.I)
_NOTE = regex(r"\s*note\s*:", re.I)
_REFERS = regex(r"\b(?:to|from|until|at|between|and|far\s+as|rep(?:eat)?)\s*[(\[]?$", re.I)
_ENDS = regex(r"[.!:;]\s*[)\]]?\s*$")


def single_stars(rows: Iterable[str]) -> bool:
    """Return whether single stars mark what a row works again.

    Two do for "Work from * to * once more", and one in front of a line of rows for "Rep from * 3 times more"
    or "Rep from * to ** once more".
    """
    texts = list(rows)
    between = any(_FROM_STAR.match(text) for text in texts)
    since = any(_AGAIN_STAR.match(text) or _FROM_STAR_ON.match(text) for text in texts)
    if not between and not since:
        return False
    alone = [
        (text, match)
        for text in texts
        for match in _STAR.finditer(text)
        if match["mark"] == "*" and _stands_alone(text, match)
    ]
    if between:
        return len(alone) == 2
    return len(alone) == 1 and alone[0][0].lstrip(" ([").startswith("*") and bool(_ROWS.search(alone[0][0]))


def without_marks(row: Row, *, stars: bool = False) -> tuple[list[Row], list[tuple[str, ...]]]:
    """Take the marks off a row of the file, splitting it at each.

    Args:
        row: The text of a row with its place.
        stars: Whether a single star that stands alone is a mark as well.

    Returns:
        The rows without marks (empty if it held nothing else), and the marks after each; the first marks are
        those in front of them all, which come after the row before.
    """
    text, place = row
    if _NOTE.match(text):
        return [row], [(), ()]  # what stands in a note is only said
    found = [match for match in (_STAR if stars else _MARK).finditer(text) if _stands_alone(text, match)]
    if not found:
        return [row], [(), ()]
    rows: list[Row] = []
    marks: list[tuple[str, ...]] = [()]
    start = 0
    for match in [*found, None]:
        end = match.start() if match is not None else len(text)
        piece = text[start:end]
        if piece.strip(" ."):
            lead = len(piece) - len(piece.lstrip()) if start else 0
            at = Span(line=place.line, column=place.column + start + lead, length=max(1, len(piece.strip())))
            rows.append((piece.strip() if start else piece.rstrip(), at if start else place))
            marks.append(())
        if match is not None:
            marks[-1] = (*marks[-1], match["mark"])
            start = match.end()
    return rows, marks


def _stands_alone(text: str, match: re.Match[str]) -> bool:
    """Return whether a mark marks a place, rather than beginning a repeat or being referred to."""
    before, after, mark = text[: match.start()], text[match.end() :], match["mark"]
    if not before.strip() and _HEADED.match(after):
        return True  # the star of the stitches stands behind the head of the row
    if _REFERS.search(before.rstrip()) or re.search(rf"\bfrom\s+{re.escape(mark)}(?!\*)", text, re.I):
        return False
    at_end = not after.strip(" .")
    return at_end or not before.strip() or bool(_ENDS.search(before))
