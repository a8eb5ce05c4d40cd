"""A table of other wordings with one row left out, to see whether that row is needed."""

from __future__ import annotations

from stepper.project.rewording import reword as rewording
from stepper.project.rewording.candidates import Candidates


class Without:
    """A prepared table of rows, but for one of them."""

    def __init__(self, rows: Candidates, left_out: int) -> None:
        self.table, self._rows, self._left_out = rows.table, rows, left_out

    def find_first(self, text: str, start: int) -> int | None:
        """Find the first row that is in a text, the one left out aside."""
        found = self._rows.find_first(text, start)
        return self._rows.find_first(text, found + 1) if found == self._left_out else found


def forget_reworded() -> None:
    """Forget what lines were put into by another table."""
    for each in vars(rewording).values():
        if hasattr(each, "cache_clear"):
            each.cache_clear()
