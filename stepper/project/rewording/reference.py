"""Make the reference of the wording: a page of small patterns, followed by the program's tables.

No I/O except reading the page shipped beside this module.
"""

from __future__ import annotations

import re
from functools import lru_cache
from importlib import resources

from stepper.craft.stitches import STITCHES, Kind
from stepper.project.rewording.second_look import SECOND_LOOK
from stepper.project.rewording.style.spoken_synonyms import SPOKEN
from stepper.project.rewording.synonyms import SYNONYMS


@lru_cache(maxsize=1)
def page() -> str:
    """Return the page as shipped, in Markdown."""
    return resources.files("stepper.project").joinpath("wording.md").read_text(encoding="utf-8")


def other_wordings() -> tuple[str, ...]:
    """Return an example line for each other printed wording that is read too."""
    return tuple(dict.fromkeys(synonym.example for synonym in (*SYNONYMS, *SECOND_LOOK, *SPOKEN)))


def stitch_lines() -> tuple[str, ...]:
    """Return a line for each stitch of the table: how it is written and said, what it uses and leaves."""
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


def _with(word: str, paragraph: str) -> str:
    """Return a paragraph; of a list only the rows that hold a word."""
    rows = paragraph.splitlines()
    if not all(row.startswith("- ") for row in rows):
        return paragraph
    return "\n".join(row for row in rows if word.lower() in row.lower())


def about(word: str) -> str:
    """Return paragraphs, patterns and listed rows of the reference that hold a word; empty if none does."""
    found = []
    for part in re.split(r"\n(?=## )", reference()):
        head, *rest = part.split("\n\n")
        kept = [_with(word, each) for each in rest if word.lower() in each.lower()]
        if kept:
            found.append("\n\n".join([head, *kept]))
    return "\n\n".join(found)
