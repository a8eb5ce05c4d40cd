"""The mark that a pasted page leaves where the knitter has to look, and where it still stands. No I/O.

What stands under it was not understood, or was made up because the page does not say it. A file is not sound
while one stands: a row that is not read is not knitted, and nothing else would say so.
"""

from __future__ import annotations

import re
from typing import Final

from stepper.project.problems import Problem

MARK: Final = "LOOK"
"""The word that marks where the knitter has to look."""

_STANDING: Final = re.compile(
    rf"(?:^|(?<=\s))# ?{MARK}(?P<row> \(rows? \d[^)]*\))?(?::[ \t]*(?P<why>.*?)|\.)[ \t]*$", re.MULTILINE
)
_OF_A_ROW: Final = (
    'Write the line so that it is read; keep a row to be knitted as "Own words: … 96 sts.", with its count; '
    "or delete this row to keep what it says as a note."
)
_OF_A_VALUE: Final = f"Put it right, or delete the comment ({MARK} and what follows) if it is right already."


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
        told = f"{_unread(row)}, so not knitted" if row else f"{MARK} still stands here"
        found.append(
            Problem(
                line=text.count("\n", 0, match.start()) + 1,
                column=match.start() - before + 1,
                length=len(match[0]),
                message=f"{told}: {why}" if why else f"{told}.",
                hint=_OF_A_ROW if row else _OF_A_VALUE,
            )
        )
    return tuple(found)


def _unread(row: str) -> str:
    where = row.strip(" ()")
    return f"{where} {'are' if where.startswith('rows') else 'is'} not read"
