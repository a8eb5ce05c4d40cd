"""Keep the numbered rows of a section for lines of later ones: "Rep rows 1 and 2 of Section 1". No I/O."""

from __future__ import annotations

import re
from dataclasses import replace

from stepper.plan.state.needles import Needles
from stepper.project.pattern_heads import key_of
from stepper.project.rewording.told.numbers import digits_of
from stepper.regex import regex

_NUMBERED = regex(
    r"section\s+(?P<number>\d{1,2}|[a-h]|one|two|three|four|five|six|seven|eight|nine|ten)\b\s*(?:[:,.]\s*(?P<title>.+))?",
    re.I,
)
"""The name of a section that has a number, often with a title: "section 2: eyelets"."""


def keep_section_rows(needles: Needles) -> None:
    """Keep the rows of the section just worked under its name.

    Where its rows were numbered from 1 twice nobody can tell which are meant, and none are kept.
    """
    section = needles.section
    rows = [section.numbered[number] for number in sorted(section.numbered)]
    if not rows or section.numberings != 1 or sorted(section.numbered) != list(range(1, len(rows) + 1)):
        return
    kept = (replace(rows[0], side=section.first_side), *rows[1:])
    for name in names_called(section.name):
        needles.patterns.setdefault(key_of(name), kept)


def names_called(name: str) -> tuple[str, ...]:
    """Return what lines call a section: "section 2: eyelets" is "section 2" and "eyelets section"."""
    numbered = _NUMBERED.fullmatch(name)
    if numbered is not None:
        title, called = numbered["title"], f"{name.split()[0]} {digits_of(numbered['number'])}"
        return (called, f"{title} section") if title else (called,)
    return (name,) if re.search(r"\bsection$", name, re.I) else ()
