"""Small works made of those that are written down: spliced and changed at random, seeded."""

from __future__ import annotations

import random
import re
from collections.abc import Iterable
from pathlib import Path

from tests.plan.test_agreed_works import KINDS, works
from tests.project.corpus_entries import entries
from tests.project.wording_patterns import patterns

Work = tuple[str, ...]
"""Lines of a work as in `tests/plan/works`: heads begin with `!`, sections with `==`."""
MOST_LINES = 12
ANSWERS = (
    "! sizes 3", "! sizes 2", "! units: in", "! spacing: sayable", "! spacing: in two runs", "! spacing: evenly mixed",
    "! knit: {size: M}", "! knit: {size: L}", "! knit: {size: S, then: [{from: Widening, size: L}]}",
    "! knit: {size: L, then: [{from: Widening, size: S}]}", "! knit: {size: S, then: [{from: Widening, size: M, over: 4}]}",
    "! alterations: [piece 2 cm longer]", "! alterations: [piece 2 cm shorter]", "! alterations: [no bobbles]",
    "! alterations: [size L in piece]", "! alterations: [\"k1, p1 rib instead of k2, p2\"]", "! alterations: [sewn bind-off]",
    "! alterations: [keep 8 sts free at centre front]", "! alterations: [needle 3.75 mm]", "! alterations: [no needle change]",
    "! alterations: [30 sts at Widening]", "! alterations: [piece 3 rounds longer]",
)  # fmt: skip
"""Heads that a work may have."""
SWAPS = (
    ("RS", "WS"), ("round", "row"), ("rnd", "row"), ("Join in the round.", "Work flat."), ("knit", "purl"), ("k", "p"), ("ssk", "k2tog"),
    ("MC", "CC"), ("beg", "end"), ("beginning", "end"), ("before", "after"), ("k2tog", "yo"), ("k2tog", "p2tog"), ("m1", "k2tog"),
    ("every", "every other"), ("even", "odd"), ("sts", "rows"), ("first", "last"), ("first", "next"), ("left", "right"),
    ("front", "back"), ("cm", "in"), ("cm", "rounds"), ("times", "times more"), ("once", "twice"), ("decrease", "increase"),
    ("Dec", "Inc"), ("until", "for"), ("more", "fewer"), ("to end", "to last 2 sts"), ("to end", "to marker"), ("k2", "sl1"),
    ("wave", "rope"), ("wave", "dots"), ("next", "following"), ("twice", "3 times"), ("BO", "place on hold"),
)  # fmt: skip
"""Words that take each other's place."""
CLAUSES = (
    ", ending with a WS row", ", ending with a RS row", " from the top", ", at the same time, when piece measures 3 cm, change to CC",
    ", at the same time rep dec row every 4th row twice", " twice more", " 3 times", " on RS", " on WS rows only", " in CC",
    " until there are 12 sts", ". 20 sts", " at each end", ", ending last row 4 sts before end", " as established", " in pattern",
    " for 3 cm", " every 4th rnd 3 times", " as set", ", turn", ", pm", ", sl m", ", placing markers", " from * to last 2 sts", ", working from chart wave",
)  # fmt: skip
"""What is put at the end of a line, or of a clause of it."""
_JOINTS = re.compile(r"(, |\. |; | and | until | for | every | then |: | to )")


def seeds() -> list[Work]:
    """List the works that are written down."""
    found = [tuple(lines) for kind in KINDS for lines in works(kind).values()]
    for entry in entries().values():
        heads = [f"! sizes {entry.sizes}"] * (entry.sizes > 1) + [f"! units: {entry.units}"] * (entry.units != "cm")
        found.append((*heads, *entry.before, *entry.printed, *entry.after))
    changed = Path(__file__).parents[1] / "plan" / "under_way" / "changed.txt"
    for block in re.split(r"^(?:@|=>) .*\n", changed.read_text(encoding="utf-8"), flags=re.M)[1:]:
        found.append(tuple(line for line in block.splitlines() if line))
    for pattern in patterns():
        found.append(tuple(line.strip() for line in pattern.work.splitlines()))
    return [*dict.fromkeys(found)]


def spliced(work: Work, others: list[Work], chance: random.Random) -> Work:
    """Return a work with one to four changes in it, parts of other works among them."""
    lines = list(work)
    for _ in range(chance.choice((1, 1, 2, 2, 3, 4))):
        _change(lines, chance.choice(others), chance)
    heads = [*dict.fromkeys(line for line in lines if line.startswith("!"))]
    return (*heads, *[line for line in lines if line and not line.startswith("!")][:MOST_LINES])


def shorter(work: Work) -> Iterable[Work]:
    """Try a work with less in it: a line less, a clause less."""
    for at in range(len(work)):
        yield (*work[:at], *work[at + 1 :])
    for at, line in enumerate(work):
        parts = _JOINTS.split(line)
        for part in range(len(parts) - 1, 1, -2):
            rest = "".join([*parts[: part - 1], *parts[part + 1 :]])
            yield (*work[:at], rest if rest.endswith((".", ":")) else f"{rest}.", *work[at + 1 :])


def _change(lines: list[str], other: Work, chance: random.Random) -> None:
    """Make one change of a work in place."""
    at = chance.randrange(len(lines)) if lines else 0
    line = lines[at] if lines else ""
    theirs = chance.choice([each for each in other if not each.startswith("!")] or [""])
    if line.startswith("!"):
        del lines[at]
        return
    kind = chance.randrange(14)
    if kind <= 2 and line:
        lines[at] = _numbered(line, chance)
    elif kind == 3 and len(lines) > 2:
        del lines[at]
    elif kind == 4:
        lines.insert(at + 1, line)
    elif kind == 5 and len(lines) > 2:
        to = chance.randrange(len(lines))
        lines[at], lines[to] = lines[to], lines[at]
    elif kind == 6:
        lines.insert(at + 1, theirs)
    elif kind == 7:
        lines[at:] = other[chance.randrange(len(other)) :] if other else []
    elif kind == 8:
        mine, parts = _JOINTS.split(line), _JOINTS.split(theirs)
        lines[at : at + 1] = ["".join([*mine[: 2 * chance.randrange((len(mine) + 1) // 2) + 1], *parts[2 * chance.randrange((len(parts) + 1) // 2) + 1 :]])]
    elif kind == 9:
        lines[at : at + 1] = [line.rstrip(".") + chance.choice(CLAUSES) + "."]
    elif kind == 10:
        _swap(lines, at, chance)
    elif kind == 11:
        lines.insert(0, chance.choice(ANSWERS))
    elif kind == 12:
        lines.insert(at, chance.choice(("== sleeve [plain]", "== hem [rib]")))
    elif line:
        parts = _JOINTS.split(line)
        part = 2 * chance.randrange((len(parts) + 1) // 2)
        parts[part] = chance.choice(_JOINTS.split(theirs)[::2])
        lines[at] = "".join(parts)


def _swap(lines: list[str], at: int, chance: random.Random) -> None:
    """Put one word in place of another, in a line or in all of them."""
    here = [pair for pair in SWAPS if any(word in lines[at] for word in pair)]
    if here:
        one, other = chance.choice(here)
        one, other = (one, other) if one in lines[at] else (other, one)
        rows = range(len(lines)) if chance.random() < 0.3 else [at]
        for row in rows:
            lines[row] = lines[row].replace(one, other, chance.choice((1, -1)))


def _numbered(line: str, chance: random.Random) -> str:
    """Change one number of a line, or give it for three sizes."""
    found = [*re.finditer(r"\d+", line)]
    if not found:
        return line
    match = chance.choice(found)
    number = int(match[0])
    new = chance.choice(
        (number + 1, number - 1, number + 2, number - 2, number * 2, number // 2, 0, 1, 2, 3, 4, number + 4, chance.randrange(40))
    )
    written = str(max(0, new))
    if chance.random() < 0.12:
        written = f"{number} ({number + 4}, {number + 8})"
    elif chance.random() < 0.05:
        written = f"{number} ({max(0, new)})"
    return line[: match.start()] + written + line[match.end() :]
