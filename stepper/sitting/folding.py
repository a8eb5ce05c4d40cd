"""Break long lines for a terminal between words, so that the terminal breaks none inside a word.

What goes into a file or a pipe is left as it is: a line there is one fact, for whatever program reads it.
"""

from __future__ import annotations

import os
import re
import shutil
import sys
from collections.abc import Iterable
from typing import Protocol

from stepper.regex import regex
from stepper.screen.drawing.rows import text_width
from stepper.screen.terminal_abilities import TerminalAbilities, assess_terminal

NARROWEST = 20
"""Columns below which nothing is folded: a window so narrow is no longer read, only scrolled."""
PROSE_COLUMNS = 80
"""Width of a report that is read as a page, wherever it goes. Unit: columns."""
_DEEPEST = 24
_LEADING = regex(r"\s*(?:>?\s*\d+(?:-\d+)?[.:]?\s+|[-*]\s+)?")
# What a line begins with that its continuation is to stand clear of: an indentation, a number, a bullet.
_PAINT = regex(r"\x1b\[[0-9;]*m")
# Colours take no columns; a row with any was laid out for the terminal already.


class Output(Protocol):
    """A stream of text that may go to a terminal."""

    def write(self, text: str, /) -> int:
        """Write a text."""

    def flush(self) -> None:
        """Hand over what is written."""

    def isatty(self) -> bool:
        """Return whether it goes to a terminal."""


def terminal_columns(stream: Output) -> int | None:
    """Return the width of the terminal that a stream goes to; None if it goes elsewhere. Unit: columns.

    `COLUMNS` in the environment goes before what the terminal says of itself.
    """
    if not stream.isatty():
        return None
    return shutil.get_terminal_size().columns


def check_terminal() -> TerminalAbilities:
    """Return what the terminal of this process can do."""
    return assess_terminal(
        os.environ,
        is_terminal=sys.stdout.isatty(),
        encoding=sys.stdout.encoding or "",
        windows=sys.platform == "win32",
    )


def fold(line: str, columns: int | None) -> list[str]:
    """Break a line between words.

    Args:
        line: One line, without its end.
        columns: Width; None for no limit.

    Returns:
        At least one line. A word that is wider than the terminal stays whole on a line of its own. What
        follows the first is indented to where the text of the first begins, or by two columns more than it.
    """
    if columns is None or columns < NARROWEST or text_width(_PAINT.sub("", line)) <= columns:
        return [line]
    leading = _LEADING.match(line)
    head = leading.group() if leading else ""
    hanging = min(text_width(head) + (0 if head.strip() else 2), _DEEPEST, columns // 3)
    folded, row = [], head
    for gap, word in re.findall(r"(\s*)(\S+)", line[len(head) :]):
        if row.strip() and text_width(row) + text_width(gap + word) > columns:
            folded.append(row.rstrip())
            row, gap = " " * hanging, ""
        row += gap + word
    return [*folded, row]


def write_folded(text: str, stream: Output) -> None:
    """Write a text of one line or more and an end of line, folded if the stream goes to a terminal."""
    columns = terminal_columns(stream)
    stream.write("".join(f"{each}\n" for line in text.split("\n") for each in fold(line, columns)))
    stream.flush()


def write_painted(text: str, stream: Output) -> None:
    """Write a text whose escape sequences are our own; whatever else is written leaves with its own as codes.

    Args:
        text: Nothing from a file, a name or a path is in it that was not blanked or cleaned.
        stream: Where it goes. The door in front of the standard streams lets it through in this way only.
    """
    getattr(stream, "write_painted", stream.write)(text)


def print_folded(lines: Iterable[str], *, otherwise: int | None = None) -> None:
    """Print lines on standard output, folded if that is a terminal; each is there at once.

    Args:
        lines: What to print.
        otherwise: Width at which to fold what goes elsewhere; None for no limit.
    """
    columns = terminal_columns(sys.stdout)
    for line in lines:
        print("\n".join(fold(line, columns or otherwise)), flush=columns is not None)
