"""Regular expressions of the tables, each compiled when it is first asked. That is kept on the disk.

Python compiles them by a program written in Python. Of the five hundred that stand in the house a file that
reads at once asks seventy, and long alternations of words took a third of the time until a command began. A
page that is pasted asks two thousand, those of the other wordings among them: to compile these took three
seconds, and to take up what an earlier start compiled takes a fiftieth of that.
"""

from __future__ import annotations

import re
from array import array
from typing import TYPE_CHECKING, Any, Final

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


_LEAST_NEW: Final = 100
"""Expressions that have to be new before all are written again: twelve megabytes, a tenth of a second."""
_MOST: Final = 12_000
"""Expressions that are kept at most, several times those of the house; where those of earlier versions fill
that, it begins anew."""
_Code = tuple[int, bytes, int, dict[str, int], tuple[str | None, ...]]
"""What an expression compiles to: its flags, its program, how many groups it has, their numbers and names."""


class Compiled:
    """Expressions that are compiled once for all starts of the program."""

    def __init__(self, name: str) -> None:
        """Take the name under which they are kept."""
        self._codes = KeptTable(name, _MOST, _LEAST_NEW)

    def compiled(self, pattern: str, flags: int = 0) -> re.Pattern[str]:
        """Return what `re.compile` returns.

        Args:
            pattern: The expression: one of the house's own, since it is kept.
            flags: The library's flags.

        Raises:
            re.error: The expression is wrong.
        """
        key = (pattern, int(flags))
        code: _Code | None = self._codes.get(key)
        try:
            if code is None:
                code = _code_of(*key)
                self._codes.add(key, code)
            return _made_of(pattern, code)
        except (ImportError, AttributeError, TypeError, ValueError, RuntimeError):
            # Another Python may have its compiler elsewhere; its own way in is the same everywhere.
            return re.compile(pattern, flags)

    def keep(self, least: int = _LEAST_NEW) -> None:
        """Keep what was compiled for the next start, beside what others have kept since.

        Args:
            least: How many must be new.
        """
        self._codes.keep(least)


def _code_of(pattern: str, flags: int) -> _Code:
    """Compile an expression by the library's own two steps, and return what a pattern is made of."""
    from re import _compiler, _parser  # type: ignore[attr-defined]  # the library has no types for them

    parsed = _parser.parse(pattern, flags)
    program = array("I", _compiler._code(parsed, flags)).tobytes()
    numbers = dict(parsed.state.groupdict)
    names: list[str | None] = [None] * parsed.state.groups
    for name, number in numbers.items():
        names[number] = name
    return flags | parsed.state.flags, program, parsed.state.groups - 1, numbers, tuple(names)


def _made_of(pattern: str, code: _Code) -> re.Pattern[str]:
    """Make the pattern of an expression; this step of the library's looks whether the program is sound."""
    import _sre  # type: ignore[import-not-found]  # the library has no types for it

    flags, program, groups, numbers, names = code
    made: re.Pattern[str] = _sre.compile(pattern, flags, array("I", program).tolist(), groups, numbers, names)
    return made


EXPRESSIONS: Final = Compiled("expressions")
"""Those that stand in modules by themselves."""
WORDINGS: Final = Compiled("wordings")
"""Those of the tables of other wordings, of which a file that reads as it is written asks none."""


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
        compiled = EXPRESSIONS.compiled(self.pattern, self._given)
        for name in ("match", "fullmatch", "search", "finditer", "findall", "split", "sub"):
            setattr(self, name, getattr(compiled, name))
        return compiled
