"""Find the line of a file whose indentation is out of step, for the parser notices it only further down.

Used only where YAML has refused a file already: what is legal, if unusual, is never blamed.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from stepper.project.problems import Problem
from stepper.records import dataclass
from stepper.regex import regex

STEP = 2
"""Indentation of what stands under a key, as `stepper start` writes it. Unit: columns."""

_KEY = regex(r"""(?:"[^"]*"|'[^']*'|[^\s"'#\[\]{},|>*&!-][^:#\[\]{}]*):(?P<value>\s.*|$)""")
_BLOCK = regex(r"[|>][-+0-9]*\s*(?:#.*)?$")
_DASH = regex(r"-\s+")
_QUOTED = regex(r""""(?:\\.|[^"\\])*"|'[^']*'""")


@dataclass(slots=True, kw_only=True)
class _Level:
    """Lines that belong side by side: keys of one mapping, items of one list, lines of one block."""

    indent: int
    first: int
    lines: int = 1
    items: bool = False
    """Whether these are the items of a list, each behind a dash."""


@dataclass(slots=True, kw_only=True)
class _Block:
    """A text of several lines under a key."""

    under: int
    """Indentation of its key."""
    level: _Level | None = None


def find_slip(text: str, refused: int) -> Problem | None:
    """Find the line that is indented otherwise than those it belongs with.

    Args:
        text: The whole file.
        refused: The line at which the parser gave up, from 1.

    Returns:
        The first such line; None if all are in step as far as the line after that.
    """
    lines = text.splitlines()
    found = next(_Scan(lines).slips(), None)
    if found is None or found[0] > refused + 1:
        return None
    line, other = found
    here, there = _indent(lines[line - 1]), _indent(lines[other - 1])
    # What belongs with the first key of an item stands under that key, not under the dash before it.
    there = max(0, there + _dash_width(lines[other - 1]) - _dash_width(lines[line - 1]))
    if here == there:
        return None
    return Problem(
        line=line,
        column=here + 1,
        message=f"this line does not stand in step: it is indented by {here}, and line {other} by {there}.",
        hint=f"Indent it by {there}, if it belongs with line {other}.",
        length=max(1, len(lines[line - 1].strip())),
    )


class _Scan:
    """Goes through the lines once, with the levels that are open."""

    def __init__(self, lines: list[str]) -> None:
        self._lines = lines
        self._levels: list[_Level] = []
        self._block: _Block | None = None
        self._opens = True
        """Whether the line before may have something indented under it."""
        self._brackets = 0
        self._bare: int | None = None
        """The last line, if nothing stands under the key before it and it stands beside that key."""

    def slips(self) -> Iterator[tuple[int, int]]:
        """Yield each line that is out of step, and the one that it should be in step with, from 1."""
        for number, line in enumerate(self._lines, start=1):
            content = line.strip()
            if not content or (self._block is None and content.startswith(("#", "---", "%"))):
                continue
            if self._brackets > 0:
                self._brackets += _open_brackets(content)
                continue
            if self._block is not None:
                within, slip = self._in_block(self._block, number)
                if slip is not None:
                    yield slip
                if within:
                    continue
                self._block = None
            slip = self._outside(number)
            if slip is not None:
                yield slip

    def _in_block(self, block: _Block, number: int) -> tuple[bool, tuple[int, int] | None]:
        """Return whether a line belongs to the block, and the slip if there is one."""
        indent, level = _indent(self._lines[number - 1]), block.level
        if indent > block.under and (level is None or indent >= level.indent):
            if level is None:
                block.level = _Level(indent=indent, first=number)
            else:
                level.lines += 1
            return True, None
        if indent > block.under and level is not None:
            blamed, other = self._odd_one(level, number, block.under)
            if blamed == level.first:
                level.indent = indent
            return True, (blamed, other)
        if self._goes_on(indent, number, level.indent if level is not None else block.under + STEP):
            return False, None
        if level is not None:
            return True, (number, level.first)
        following = self._following(number)
        if following is None or _indent(self._lines[following - 1]) <= block.under:
            return False, None  # the block is empty, which is another problem
        block.level = _Level(indent=_indent(self._lines[following - 1]), first=following)
        return True, (number, following)

    def _goes_on(self, indent: int, number: int, within: int) -> bool:
        """Return whether a line ends the block before it: a key or an item in step with others like it."""
        content = self._lines[number - 1].strip()
        known = indent in [level.indent for level in self._levels]
        if _DASH.match(content):
            return known
        key = _KEY.match(content)
        if key is None:
            return False
        value = key["value"].strip()
        if not known:
            return not value or value.startswith(("#", "{", "[", "|", ">"))
        following = self._following(number)
        deeper = following is not None and _indent(self._lines[following - 1]) == within
        # A key with its value beside it has nothing under it, so this is a line of the block after all.
        return not (deeper and value and not value.startswith(("#", "{", "[", "|", ">")))

    def _outside(self, number: int) -> tuple[int, int] | None:
        """Take a line with a key or an item; return the slip if it is none in step."""
        line = self._lines[number - 1]
        indent, content = _indent(line), line.strip()
        left = None
        while self._levels and self._levels[-1].indent > indent:
            left = self._levels.pop()
        slip = self._place(indent, number, left)
        while dash := _DASH.match(content):
            indent += dash.end()
            content = content[dash.end() :]
            if self._levels and self._levels[-1].indent < indent:
                self._levels.append(_Level(indent=indent, first=number))
        key = _KEY.match(content)
        value = key["value"].strip() if key is not None else content
        self._opens = key is not None and (not value or value.startswith("#"))
        if _BLOCK.match(value):
            self._block = _Block(under=indent)
        if value.startswith(("[", "{")):
            self._brackets = max(0, _open_brackets(value))
        return slip

    def _place(self, indent: int, number: int, left: _Level | None) -> tuple[int, int] | None:
        """Put a line on its level; return the slip if it has none."""
        above = self._levels[-1] if self._levels else None
        is_item = bool(_DASH.match(self._lines[number - 1].lstrip()))
        if above is not None and above.indent == indent:
            if above.items and not is_item:  # a key among the items of a list
                slip = (number, (left or above).first)
                if above.lines == 1:
                    slip = self._odd_one(left or above, number, above.indent)
                return self._settle(slip, number, left)
            above.lines += 1
            self._bare = number if self._opens else None
            return None
        if left is not None:  # less deep than the lines above it, and deeper than those they stand under
            if above is not None and above.lines == 1 and self._is_rarer(above.first, number):
                above.indent = indent
                return above.first, number
            return self._settle(self._odd_one(left, number, above.indent if above else -STEP), number, left)
        if self._opens or above is None or not _is_structure(self._lines[number - 1]):
            self._levels.append(_Level(indent=indent, first=number, items=is_item))
            return None
        if self._bare is not None:  # nothing stood under a key, and what should have is followed by this
            return self._bare, number
        under = self._levels[-2].indent if len(self._levels) > 1 else -STEP
        slip = self._odd_one(above, number, under)
        if slip[0] != number:
            above.indent = indent
        return slip

    def _settle(self, slip: tuple[int, int], number: int, left: _Level | None) -> tuple[int, int]:
        """Go on as if the line that is out of step stood where it should."""
        if left is not None:
            left.lines += 1
            if slip[0] != number:
                left.indent = _indent(self._lines[number - 1])
                while self._levels and self._levels[-1].indent >= left.indent:
                    self._levels.pop()
            self._levels.append(left)
        return slip

    def _is_rarer(self, one: int, other: int) -> bool:
        """Return whether the indentation of a line is less usual in the file than that of another."""
        found = [_indent(line) for line in self._lines if line.strip()]
        return found.count(_indent(self._lines[one - 1])) < found.count(_indent(self._lines[other - 1]))

    def _odd_one(self, level: _Level, number: int, under: int) -> tuple[int, int]:
        """Decide which of two lines is out of step: the only one of a level, or the one below it.

        Args:
            level: Where the line below should stand.
            number: The line below.
            under: Indentation of what both stand under.
        """
        if level.lines > 1:
            return number, level.first
        one, other = _indent(self._lines[level.first - 1]), _indent(self._lines[number - 1])
        following = self._following(number)
        beside = _indent(self._lines[following - 1]) if following is not None else None
        if beside == other:
            return level.first, number
        if beside != one and one != under + STEP == other:
            return level.first, number
        return number, level.first

    def _following(self, number: int) -> int | None:
        """Return the number of the next line that is not empty; None if that is a text under this line."""
        if _opens_block(self._lines[number - 1]):
            return None
        for later in range(number, len(self._lines)):
            if self._lines[later].strip():
                return later + 1
        return None


def _is_structure(line: str) -> bool:
    content = line.strip()
    return bool(_DASH.match(content) or _KEY.match(content))


def _opens_block(line: str) -> bool:
    key = _KEY.match(_DASH.sub("", line.strip()))
    return key is not None and bool(_BLOCK.match(key["value"].strip()))


def _dash_width(line: str) -> int:
    """Return how far the first key of an item stands from its dash; 0 if the line is no such item."""
    dash = _DASH.match(line.strip())
    return dash.end() if dash is not None and _KEY.match(line.strip()[dash.end() :]) else 0


def _indent(line: str) -> int:
    return len(line) - len(line.lstrip(" "))


def _open_brackets(content: str) -> int:
    """Count the brackets that a line opens more than it closes, outside quotation marks and remarks."""
    plain = re.sub(r"(?:^|\s)#.*", "", _QUOTED.sub("", content))
    return sum(plain.count(sign) for sign in "[{") - sum(plain.count(sign) for sign in "]}")
