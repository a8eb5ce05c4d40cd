"""A whole page in the signs of one designer, and its lines as read beside those of the page as it was."""

from __future__ import annotations

import dataclasses
import random
import re
import textwrap
from collections import Counter
from collections.abc import Callable, Mapping, Sequence
from functools import lru_cache

from stepper.project.page.headings import heading_of
from stepper.project.page.pasted import Pasted, take_apart
from tests.project.rewording.sign_dresses import Manner, put_on

HEADINGS: Mapping[str, Callable[[str], str]] = {
    "as it is": str,
    "YOKE": str.upper,
    "Yoke": str.title,
    "Yoke:": lambda name: f"{name.title()}:",
    "YOKE:": lambda name: f"{name.upper()}:",
    "--- YOKE ---": lambda name: f"--- {name.upper()} ---",
    "////// YOKE": lambda name: f"////// {name.upper()}",
    "** YOKE **": lambda name: f"** {name.upper()} **",
    "== Yoke ==": lambda name: f"== {name.title()} ==",
    "Y O K E": lambda name: "   ".join(" ".join(word) for word in name.upper().split()),
    "# Yoke": lambda name: f"# {name.title()}",
    "~ Yoke ~": lambda name: f"~ {name.title()} ~",
    "~*~ Yoke ~*~": lambda name: f"~*~ {name.title()} ~*~",
    "[YOKE]": lambda name: f"[{name.upper()}]",
    ">> YOKE": lambda name: f">> {name.upper()}",
    "— Yoke —": lambda name: f"— {name.title()} —",
    "• YOKE •": lambda name: f"• {name.upper()} •",
    "YOKE ------": lambda name: f"{name.upper()} ----------",
    "Yoke and a rule": lambda name: f"{name.title()}\n{'-' * 12}",
    "| YOKE |": lambda name: f"| {name.upper()} |",
    "::: yoke :::": lambda name: f"::: {name.title()} :::",
    "Yoke.": lambda name: f"{name.title()}.",
    "YOKE.—": lambda name: f"{name.upper()}.—",
    "<< Yoke >>": lambda name: f"<< {name.title()} >>",
    "__YOKE__": lambda name: f"__{name.upper()}__",
    "\\\\ YOKE": lambda name: f"\\\\ {name.upper()}",
}
"""How a designer sets the headings of parts."""


@dataclasses.dataclass(frozen=True, slots=True, kw_only=True)
class Compared:
    """What became of the lines of a page."""

    before: int
    alike: int
    lost: tuple[str, ...]
    """Lines of which a sentence is not read alike any more, as they were printed."""
    unread: tuple[str, ...]
    """What is not read of the dressed page."""
    parts: tuple[str, ...]
    """Names of parts that the page has in one dress alone."""
    new: tuple[str, ...]
    """Lines of the dressed page with a sentence that was not on the page."""


@lru_cache(maxsize=256)
def apart(text: str) -> Pasted:
    """Take a page apart, once."""
    return take_apart(text)


def dress_page(text: str, manners: Sequence[Manner], seed: str, *, heading: str = "", wide: int = 0) -> str:
    """Return a page in the manners of one designer, from top to bottom.

    Args:
        text: The page.
        manners: How its lines are printed.
        seed: Draws how headings are set and how wide the rows are, where these are not given.
        heading: One of `HEADINGS`.
        wide: Letters of a row at which it is broken; -1 for rows as they are.
    """
    chance = random.Random(seed)
    name = heading or chance.choice(tuple(HEADINGS))
    wide = wide or chance.choice((-1, -1, 64, 90))
    sizes = len(apart(text).sizes)
    rows = []
    for row in text.splitlines():
        plain = " ".join(row.split())
        found = heading_of(plain)
        if found is not None and found.kind == "part" and not found.rest and not found.aside and re.fullmatch(r"[A-Za-z][A-Za-z ]+", plain):
            rows.append(HEADINGS[name](plain))
            continue
        if found is None:
            row = put_on(row, manners, sizes) if plain else row
            rows += textwrap.wrap(row, wide, break_long_words=False, break_on_hyphens=False) if wide > 0 and len(row) > wide else [row]
        else:
            rows.append(row)
    return "\n".join(rows)


_WORDS = ("place", "text", "assumed", "said", "name", "note", "printed")
"""Fields of records that hold places and words as printed."""


def shape(record: object) -> object:
    """Return what a record says, without where it stands and in which words; of a length or a needle its figures."""
    if dataclasses.is_dataclass(record):
        return (
            type(record).__name__,
            *(shape(getattr(record, one.name)) for one in dataclasses.fields(record) if one.name not in _WORDS),
        )
    if isinstance(record, tuple | list):
        return tuple(shape(one) for one in record)
    return record.lower() if isinstance(record, str) else record


def sentences_read(page: Pasted) -> dict[object, list[str]]:
    """Return what the sentences of a page say, each with the lines that say it."""
    said: dict[object, list[str]] = {}
    for piece in page.pieces:
        if piece.line is not None and piece.kind == "line":
            line = piece.line
            for sentence in line.sentences:
                key = (line.numbers, line.side, line.every, line.only, shape(line.times), shape(sentence))
                said.setdefault(key, []).append(f"{piece.row}: {piece.text}")
    return said


def compare_pages(text: str, dressed: str) -> Compared:
    """Compare the lines of a page, as read, with those of the page in another dress."""
    old, new = (sentences_read(apart(one)) for one in (text, dressed))
    counts = [Counter({key: len(lines) for key, lines in said.items()}) for said in (old, new)]
    return Compared(
        before=counts[0].total(),
        alike=(counts[0] & counts[1]).total(),
        lost=tuple(dict.fromkeys(line for key in counts[0] - counts[1] for line in old[key])),
        unread=tuple(f"{piece.row}: {piece.text}" for piece in apart(dressed).pieces if piece.kind == "note"),
        parts=tuple(sorted({part.name for part in apart(text).parts} ^ {part.name for part in apart(dressed).parts})),
        new=tuple(dict.fromkeys(line for key in counts[1] - counts[0] for line in new[key])),
    )
