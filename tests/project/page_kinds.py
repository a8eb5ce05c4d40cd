"""The pages of `printed/` as a reader sorts them: of what kind each sentence is, written down by hand.

A row of a table is a kind, a bar and the words. `+` before the kind: the words go on in the row before. `work`: a
line of the pattern or a note under a mark. `look`: a note under a mark. Everything else: front matter of that kind.
Rows that begin with `=` say which sizes and yarns the page names; `?` behind a yarn: the page names none.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from pathlib import Path

FOLDER = Path(__file__).parent / "printed" / "kinds"
_LONG = {
    "measurements": "finished measurements",
    "stitches": "stitch patterns",
    "notes": "notes of the designer",
}


@dataclass(frozen=True, slots=True)
class Table:
    """A page, sentence by sentence."""

    name: str
    text: str
    """The page as copied."""
    words: tuple[tuple[str, str], ...]
    """Kind and words, in order."""
    facts: dict[str, str] = field(default_factory=dict)


def tables() -> list[Table]:
    """Read the tables of all pages."""
    return [_table(path) for path in sorted(FOLDER.glob("*.txt"))]


def _table(path: Path) -> Table:
    rows: list[str] = []
    words: list[tuple[str, str]] = []
    facts: dict[str, str] = {}
    for entry in path.read_text(encoding="utf-8").splitlines():
        if entry.startswith("="):
            _, name, *rest = entry.split(" ", 2)
            facts[name] = rest[0]
            continue
        kind, said = (part.strip(" ") for part in entry.split("|", 1))
        if kind.startswith("+"):
            rows[-1] += f" {said}"
        else:
            rows.append(said)
        if said:
            plain = kind.lstrip("+")
            words.append((_LONG.get(plain, plain), said))
    return Table(path.stem, "\n".join(rows) + "\n", tuple(words), facts)
