"""Regular expressions of the tables, each compiled when it is first asked. No I/O.

Python compiles them by a program written in Python. Of the five hundred that stand in the house a file that
reads at once asks seventy, and long alternations of words took a third of the time until a command began.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    # To the type checker it is a compiled pattern; of those it has, `_LateRegex` has what the house asks.
    regex = re.compile
else:

    def regex(pattern: str, flags: int = 0) -> _LateRegex:
        """Return a regular expression as `re.compile` does, which compiles it when it is first asked.

        Args:
            pattern: The expression.
            flags: The library's flags.

        Returns:
            What is asked as a compiled pattern is, by its own methods; the functions of `re` do not take it.
            That the expression is wrong is said by the first question (`re.error`).
        """
        return _LateRegex(pattern, flags)


class _LateRegex:
    """A pattern that the first question compiles; the compiled one's own methods answer from then on."""

    def __init__(self, pattern: str, flags: int) -> None:
        self.pattern = pattern
        self._given = flags

    def __repr__(self) -> str:
        return f"regex({self.pattern!r}, {self._given})"

    def match(self, *asked: Any, **named: Any) -> object:
        """Match at the beginning."""
        return self._compiled().match(*asked, **named)

    def fullmatch(self, *asked: Any, **named: Any) -> object:
        """Match all of a text."""
        return self._compiled().fullmatch(*asked, **named)

    def search(self, *asked: Any, **named: Any) -> object:
        """Find the first match."""
        return self._compiled().search(*asked, **named)

    def finditer(self, *asked: Any, **named: Any) -> object:
        """Find all matches, one after the other."""
        return self._compiled().finditer(*asked, **named)

    def findall(self, *asked: Any, **named: Any) -> object:
        """List the texts of all matches."""
        return self._compiled().findall(*asked, **named)

    def split(self, *asked: Any, **named: Any) -> object:
        """Cut a text at its matches."""
        return self._compiled().split(*asked, **named)

    def sub(self, *asked: Any, **named: Any) -> object:
        """Put other words into the place of all matches."""
        return self._compiled().sub(*asked, **named)

    def _compiled(self) -> re.Pattern[str]:
        """Compile the pattern, and keep its methods here, where they are found before those of the class."""
        compiled = re.compile(self.pattern, self._given)
        for name in ("match", "fullmatch", "search", "finditer", "findall", "split", "sub"):
            setattr(self, name, getattr(compiled, name))
        return compiled
