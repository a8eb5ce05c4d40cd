"""The small patterns of the page of wording, each as a project file that can be knitted."""

from __future__ import annotations

import re
import textwrap
from dataclasses import dataclass

from stepper.project.rewording.reference import page

_FENCE = re.compile(r"^```(\w*)\s*$")


@dataclass(frozen=True, slots=True, kw_only=True)
class Pattern:
    """A small pattern of the page, which can be knitted as it stands."""

    line: int
    """Line of the page it begins on, from 1."""
    work: str


def _fenced(kind: str) -> list[tuple[int, str]]:
    """List the fenced blocks of a kind: the line each begins on, and its text."""
    found: list[tuple[int, str]] = []
    rows: list[str] = []
    inside: str | None = None
    for number, row in enumerate(page().splitlines(), start=1):
        fence = _FENCE.match(row)
        if fence and inside is None:
            inside, rows = fence.group(1), []
        elif fence:
            if inside == kind:
                found.append((number - len(rows), "\n".join(rows) + "\n"))
            inside = None
        elif inside is not None:
            rows.append(row)
    return found


def patterns() -> tuple[Pattern, ...]:
    """Return every small pattern of the page."""
    return tuple(Pattern(line=line, work=work) for line, work in _fenced(""))


def as_file(pattern: Pattern) -> str:
    """Put a pattern of the page into the project file that the page describes."""
    charts = textwrap.indent(_fenced("yaml")[0][1], "  ")
    return (
        "title: The wording\nsizes: S (M, L)\nknit: {size: M}\n"
        "yarn: {MC: chalk, A: pine green, B: ember}\n"
        "gauge:\n"
        "  plain: {needle: 4 mm, stitches: 20, rounds: 28, blocked: {stitches: 20, rounds: 27}}\n"
        "  rib: {needle: 3.5 mm, stitches: 24, rounds: 32}\n"
        f"{_lengths(pattern.work)}charts:\n{charts}sections:\n{_sections(pattern.work)}"
    )


def _lengths(work: str) -> str:
    """Write the length that a pattern leaves to the knitter, which the page gives above it."""
    return "lengths: {body: 12 cm}\n" if "desired" in work else ""


def _sections(work: str) -> str:
    """Write the lines of a pattern as sections; a row "# front" begins another."""
    parts = re.split(r"^# (.+)\n", work, flags=re.M)
    names = ["piece", *parts[1::2]]
    return "".join(
        f"  - name: {name}\n    work: |\n{textwrap.indent(lines, ' ' * 6)}"
        for name, lines in zip(names, parts[::2], strict=True)
        if lines.strip()
    )
