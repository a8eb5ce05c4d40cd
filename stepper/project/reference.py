"""The reference of the wording: a page of small patterns, with the tables of the program behind it.

No I/O but reading the page that is shipped beside this module.
"""

from __future__ import annotations

import re
import textwrap
from dataclasses import dataclass
from functools import lru_cache
from importlib import resources

from stepper.craft.stitches import STITCHES, Kind
from stepper.project.synonyms import SYNONYMS

_FENCE = re.compile(r"^```(\w*)\s*$")


@dataclass(frozen=True, slots=True, kw_only=True)
class Pattern:
    """A small pattern of the page, which can be knitted as it stands."""

    line: int
    """Line of the page it begins on, from 1."""
    work: str


@lru_cache(maxsize=1)
def page() -> str:
    """Return the page as it is shipped, in Markdown."""
    return resources.files("stepper.project").joinpath("wording.md").read_text(encoding="utf-8")


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
        "yarn: {MC: chalk, A: pine, B: ember}\n"
        "gauge:\n"
        "  plain: {needle: 4 mm, stitches: 20, rounds: 28, blocked: {stitches: 20, rounds: 27}}\n"
        "  rib: {needle: 3.5 mm, stitches: 24, rounds: 32}\n"
        f"charts:\n{charts}sections:\n  - name: piece\n    work: |\n{textwrap.indent(pattern.work, ' ' * 6)}"
    )


def other_wordings() -> tuple[str, ...]:
    """Return a line for each other printed wording that is read as one of the page."""
    return tuple(dict.fromkeys(synonym.example for synonym in SYNONYMS))


def stitch_lines() -> tuple[str, ...]:
    """Return each stitch of the table: how it is written, what it uses and leaves, how it is said."""
    worked = (Kind.PLAIN, Kind.INCREASE, Kind.DECREASE, Kind.CABLE)
    shown = [entry for entry in STITCHES.values() if entry.kind in worked]
    return tuple(f"{entry.code:<10} {entry.uses} to {entry.leaves}   {entry.said}" for entry in shown)


def reference() -> str:
    """Return the whole reference: the page, other wordings, and the stitches."""
    others = "\n".join(f"- {line}" for line in other_wordings())
    stitches = "\n".join(stitch_lines())
    return (
        f"{page().rstrip()}\n\n## Other wordings that are read\n\n{others}\n\n"
        f"## Stitches, with the stitches they use and leave\n\n```\n{stitches}\n```\n"
    )


def about(word: str) -> str:
    """Return the paragraphs and patterns of the reference that hold a word; empty where none does."""
    found = []
    for part in re.split(r"\n(?=## )", reference()):
        head, *rest = part.split("\n\n")
        kept = [each for each in rest if word.lower() in each.lower()]
        if kept:
            found.append("\n\n".join([head, *kept]))
    return "\n\n".join(found)
