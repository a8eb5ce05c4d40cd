"""Ask which lines of another part come once more: the second mitten, the front as the back."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import replace
from typing import Final

from stepper.plan.checks.other_side import faces
from stepper.plan.so_far import finds_fault, shapes_one_edge
from stepper.project.page.unread.kept_rows import put_rows
from stepper.project.page.unread.left_open import LeftOpen
from stepper.project.page.unread.same_lines import SamePart, line_meant, lines_between, parts_above, piece_at
from stepper.regex import regex
from stepper.settling.file_in_hand import FileInHand
from stepper.settling.prompting import ask_read
from stepper.sitting.folding import print_folded

_SHOWN: Final = 70
"""Letters of a line that are shown where many are listed."""
_RANGE: Final = regex(r"(?:lines?\s+)?(?P<first>\d{1,4})(?:\s*(?:-|–|to)\s*(?P<last>\d{1,4}))?", re.I)


def tell_part(part: SamePart) -> None:
    """Show the lines of a part that would come once more."""
    if not part.plain:
        print_folded([f"  It refers to {part.name}, and says more: again asks which lines come once more."])
        return
    _list(part)


def _list(part: SamePart) -> None:
    print_folded([f"  Lines {part.first} to {part.last} of {part.name}:"])
    print_folded(
        f"  {number}. {_cut(line.text)}"
        for number, line in enumerate(part.lines, start=1)
        if part.first <= number <= part.last
    )


def say_part(part: SamePart) -> str:
    """Return a part and its lines as they stand in brackets."""
    return f"again, lines {part.first} to {part.last} of {part.name}" if part.plain else "again"


def rows_again(
    part: SamePart, left: LeftOpen, file: FileInHand, *, copied: bool = False
) -> tuple[str, ...]:
    """Return the rows of the file that work a part once more.

    One line that means it, where that is read and fits; else its lines, written once more, below the words
    of the page as a note. The other side of a garment is mirrored; none, told, where that cannot be done.

    Args:
        part: The part, and which of its lines.
        left: The row that asks for it.
        file: The file.
        copied: Whether as its lines in any case: as one line they do not fit.
    """
    across = faces(piece_at(file.text, left.first), part.name)
    lines = () if copied else (line_meant(part), line_meant(part, mirrored=True) if across else "")
    for line in lines:
        text = put_rows(file.text, left.first, left.last, [line]) if line else ""
        if text and not file.problems_with(text, left.first, 1) and not finds_fault(text, left.first):
            return (line,)
    chosen = part.lines[part.first - 1 : part.last]
    if across and shapes_one_edge(file.text, frozenset(line.row for line in chosen)):
        told = "These lines shape one edge more than the other: here they would make the same side as"
        print_folded([f"{told} {part.name} again. Write them as they are for this side."])
        return ()
    return (f"Note: {' '.join(left.text.split())}", *lines_between(part, part.first, part.last))


def ask_part(found: SamePart | None, said: str, left: LeftOpen, file: FileInHand) -> SamePart | None:
    """Ask which lines of which part come once more.

    Args:
        found: What the words refer to; None if nothing.
        said: What she answered already behind "again": a part, lines, both or nothing.
        left: The row that asks for it.
        file: The file.

    Returns:
        The part; None, told, if no part stands above.

    Raises:
        LaterAsked: It is left open; `BackAsked` and `StopAsked` likewise.
    """
    parts = {part.name: part for part in parts_above(file.text, left.first)}
    if not parts:
        print_folded(["No part stands above this row."])
        return None
    match = re.fullmatch(rf"(?P<name>[a-z][a-z ]*?)?\s*(?P<lines>{_RANGE.pattern})?", said.strip(), re.I)
    name = (match["name"] or "").strip().lower() if match is not None else ""
    part = _called(name, parts) or (found if not name else None)
    if part is None:
        told = f"The parts are {', '.join(parts)}."
        question = f"Which part again: {', '.join(parts)}?"
        part = ask_read(question, "", lambda answer: _called(answer, parts) or told)

    def read(answer: str) -> tuple[int, int] | str:
        lines = _RANGE.fullmatch(answer.strip())
        first = int(lines["first"]) if lines is not None else 0
        last = int(lines["last"] or first) if lines is not None else 0
        known = 0 < first <= last <= len(part.lines)
        return (first, last) if known else f"Write two numbers from 1 to {len(part.lines)}: 3 to 12."

    chosen = read(match["lines"]) if match is not None and match["lines"] else ""
    if isinstance(chosen, str):
        _list(replace(part, first=max(1, part.first - 2)))
        if part.mirrored:
            print_folded(["  The page means the other side. Lines come as they stand here, not mirrored."])
        default = f"{part.first} to {part.last}" if part.plain or part.to_end else ""
        chosen = ask_read("From which line to which?", default, read)
    whole = chosen == (1, len(part.lines))
    return replace(part, first=chosen[0], last=chosen[1], upto="", plain=part.plain and whole)


def _called(name: str, parts: Mapping[str, SamePart]) -> SamePart | None:
    """Return the part that a name means, with or without its article; None if none has it."""
    plain = name.lower().removeprefix("the ")
    return next((part for each, part in parts.items() if each.removeprefix("the ") == plain), None)


def _cut(line: str) -> str:
    return line if len(line) <= _SHOWN else f"{line[: _SHOWN - 2].rsplit(' ', 1)[0]} …"
