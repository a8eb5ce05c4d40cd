"""Problems in a project file, gathered as values, sorted by place and shown all at once.

A problem says where it is, what was found, what was expected, and what to write instead. No I/O.
"""

from __future__ import annotations

import difflib
from collections.abc import Iterable, Sequence
from dataclasses import replace
from typing import Final, Literal

from stepper.errors import ProjectError
from stepper.project.spelling import near
from stepper.records import dataclass

WIDEST_EXCERPT = 96
"""How much of a line of the file is shown with a problem. Unit: columns."""
NARROWEST_EXCERPT = 24
"""How much is shown however narrow the terminal is. Unit: columns."""
_MARGIN = 8
# The number of the line and the bar before an excerpt, "   54 | ".


ProblemKind = Literal["misfit", "count", "length", "needles", "empty", "left over", "cut short", "sides"]
"""What a problem is, where something is done by it. `needles`: lines speak of a smaller and a larger needle,
and nothing says which they are; `empty`: a row comes where nothing is on the needles; `left over`: a row ends
before the last stitch, and the rest may be knitted; `cut short`: a count ends a repeat within it; `sides`:
rows of a side are worked around."""


@dataclass(frozen=True, slots=True, kw_only=True, order=True)
class Problem:
    """One thing wrong in the project file."""

    line: int
    """Line in the file, from 1."""
    column: int
    """Column in the line, from 1. Unit: characters."""
    message: str
    """What is wrong: a statement with the value found."""
    hint: str = ""
    """What to write instead, or how it was read: sentences, one per line; empty if nothing is known."""
    length: int = 1
    """How many characters the caret marks. Range: 1 and up."""
    kind: ProblemKind = "misfit"
    sizes: tuple[str, ...] = ()
    """Names of the sizes in which it is so, if it is not so in all that the file is about."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Span:
    """A stretch of the file that a value came from."""

    line: int
    column: int
    length: int = 1

    def problem(self, message: str, hint: str = "") -> Problem:
        """Make a problem at this place."""
        return Problem(
            line=self.line, column=self.column, length=max(1, self.length), message=message, hint=hint
        )


UNCHANGED: Final = " Nothing was changed."
"""Ends the problems of a file: neither it nor the journal of its knitting was touched."""


class UnsoundFileError(ProjectError):
    """A file has problems; all of them are told."""

    def __init__(self, problems: Iterable[Problem], text: str, name: str) -> None:
        """Keep the problems in the order of the file, each once.

        Args:
            problems: What is wrong.
            text: The whole text of the file.
            name: What to call the file.
        """
        self.problems = tuple(sorted(set(problems)))
        self.text = text
        self.name = name
        super().__init__(render_problems(self.problems, text, name))

    def told(self, columns: int | None) -> str:
        """Write the problems, excerpts of the file no wider than a terminal.

        Args:
            columns: Its width; None if there is none.
        """
        return render_problems(self.problems, self.text, self.name, excerpt_width(columns))


def excerpt_width(columns: int | None) -> int:
    """Return how much of a line to show with a problem on a terminal of so many columns. Unit: columns."""
    if columns is None:
        return WIDEST_EXCERPT
    # The dots on either side of a line that is cut take a column each.
    return max(NARROWEST_EXCERPT, min(WIDEST_EXCERPT, columns - _MARGIN - 2))


def render_problem(problem: Problem, lines: Sequence[str], name: str, width: int = WIDEST_EXCERPT) -> str:
    """Write one problem as `file:line:column: error: …`, with the line and a caret under it."""
    head = f"{name}:{problem.line}:{problem.column}: error: {problem.message}"
    parts = [head]
    if 1 <= problem.line <= len(lines):
        source = lines[problem.line - 1].rstrip()
        if source:
            shown, start = _window(source, problem.column, width)
            length = min(problem.length, max(1, len(shown) - start))
            parts.append(f"{problem.line:5} | {shown}")
            parts.append(f"      | {' ' * start}{'^' * length}")
    if problem.hint:
        parts += [f"  {line}" for line in problem.hint.split("\n")]
    return "\n".join(parts)


def _window(source: str, column: int, width: int) -> tuple[str, int]:
    """Cut a long line around the column; return the cut and the column's offset in it, from 0."""
    source = source.replace("\t", " ")
    start = min(max(0, column - 1), len(source))
    if len(source) <= width:
        return source, start
    left = max(0, start - width // 2)
    cut = source[left : left + width]
    prefix = "…" if left else ""
    suffix = "…" if left + width < len(source) else ""
    return prefix + cut + suffix, start - left + len(prefix)


def render_problems(problems: Iterable[Problem], text: str, name: str, width: int = WIDEST_EXCERPT) -> str:
    """Write all problems in the order of the file, and a closing line that counts them."""
    ordered = sorted(set(problems))
    lines = text.splitlines()
    before = [None, *ordered]
    shown = [
        render_problem(_hint_once(problem, last), lines, name, width)
        for problem, last in zip(ordered, before, strict=False)
    ]
    count = len(ordered)
    shown.append(f"{count} problem{'' if count == 1 else 's'} in {name}.{UNCHANGED}")
    return "\n".join(shown)


def _hint_once(problem: Problem, last: Problem | None) -> Problem:
    """Leave a hint out that was just given: under each of thirty rows that are not read it hides the rows."""
    again = last is not None and problem.hint == last.hint and not problem.hint.startswith("Did you mean")
    return replace(problem, hint="") if again else problem


def nearest(word: str, choices: Iterable[str]) -> str:
    """Return the nearest choice as a sentence `Did you mean “…”?`; empty if none is near.

    A word with fewer slips is nearer; if none has few, the one that looks most alike.
    """
    options = {choice.lower(): choice for choice in choices}
    meant = near(word.lower(), tuple(options))
    if meant:
        return f'Did you mean "{options[meant[0][1]]}"?'
    close = difflib.get_close_matches(word.lower(), options, n=1, cutoff=0.6)
    return f'Did you mean "{options[close[0]]}"?' if close else ""


def one_of(choices: Iterable[str]) -> str:
    """Write a list of choices for a sentence: `a, b or c`."""
    items = list(choices)
    if len(items) <= 1:
        return "".join(items)
    return f"{', '.join(items[:-1])} or {items[-1]}"
