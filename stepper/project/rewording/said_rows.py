"""Build rows for words that are only said with the line. No I/O."""

from __future__ import annotations

from stepper.project.rewording.synonym import Synonym, row


def said_row(has: str, pattern: str, example: str) -> Synonym:
    """Return a row that takes what it matches out of the line, of which the group called `said` is said.

    The pattern must spell out all that it matches: no instruction is looked for in the words taken out.
    What `has`, `pattern` and `example` are is told at `row`.
    """
    return row(has, pattern, "", example, spelt_out=True)


def said_row_behind(has: str, pattern: str, example: str) -> Synonym:
    """Return a row as `said_row` does, of which what group 1 matched stays in the line."""
    return row(has, pattern, r"\1", example, spelt_out=True)
