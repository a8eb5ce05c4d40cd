"""Regular expressions of the tables, each compiled when it is first asked, and once on each computer.

Python compiles them by a program written in Python. Of the eight hundred that stand in the house and its
grammar a file that reads at once asks two hundred, which took a third of the time until a command began. What
Python makes of an expression is kept between starts (`stepper.kept`).
"""

from __future__ import annotations

import _sre  # type: ignore[import-not-found]
import re
from array import array
from re import _compiler, _parser  # type: ignore[attr-defined]
from typing import TYPE_CHECKING, Any

from stepper.kept import KeptTable

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
        compiled = compile_once(self.pattern, self._given)
        for name in ("match", "fullmatch", "search", "finditer", "findall", "split", "sub"):
            setattr(self, name, getattr(compiled, name))
        return compiled


_Program = tuple[int, bytes, int, dict[str, int], tuple[str | None, ...]]
"""What Python makes of an expression: its flags, the program, how many groups there are, and their names."""

_PROGRAMS: KeptTable[tuple[str, int], _Program] = KeptTable("expressions", most=3000)
"""What was made of each expression and its flags; of the house's own there are a third as many."""


def compile_once(pattern: str, flags: int = 0) -> re.Pattern[str]:
    """Return an expression compiled, of what was kept of it if it ever was.

    Args:
        pattern: The expression.
        flags: The library's flags.

    Returns:
        What `re.compile` returns.

    Raises:
        re.error: It is wrong.
    """
    asked = pattern, int(flags)
    all_flags, code, groups, numbers, names = _PROGRAMS.get(asked, lambda: _made(*asked))
    program = array(_UNIT, code).tolist()
    compiled: re.Pattern[str] = _sre.compile(pattern, all_flags, program, groups, numbers, names)
    return compiled


_UNIT = "I"
"""A number of a program, without a sign."""


def _made(pattern: str, flags: int) -> _Program:
    """Compile an expression, as the last lines of the library's own `compile` do."""
    parsed = _parser.parse(pattern, flags)
    numbers: dict[str, int] = parsed.state.groupdict
    names: list[str | None] = [None] * parsed.state.groups
    for name, number in numbers.items():
        names[number] = name
    code = array(_UNIT, _compiler._code(parsed, flags)).tobytes()
    return flags | parsed.state.flags, code, parsed.state.groups - 1, numbers, tuple(names)
