"""The corpus of printed sentences as data: what is printed, what comes before it, and what it means.

The files in `tests/project/corpus/` hold one kind of wording each, as plain text:

    kind 21: Binding off over rows

    context flat40                     lines before the sentence, shared by entries
      CO 40 sts. Work flat.
      Work 4 rows in stockinette st.

    @ underarm : flat40                an entry: its name, its context; behind it sizes=3, units=in, own=foot:24cm
      Knit 1 row.                      more lines before the sentence
    > BO 5 sts at beg of next 2 rows.  the sentence as printed; a new section is "== sleeve [rib]"
    + Knit 1 row.                      lines after it that show what it has done
    = bo5 k35 -> 35                    what is knitted, row by row, worked out by hand
    = WS bo5 p30 -> 30
    | bo5 k35 -> 35                    another reading that is as good; its further rows are marked = again
    ! worked one stitch in             words (a regular expression) that must be told with it
    & underarm                         words of the sentence that must be kept beside the rounds

A row is written `[N x] [RS|WS] stitches -> count [; held 12] [; needle 3.5] [; yarn CC]`. Rows that alternate are
joined by ` | `. Stitches: `k2 (k2 p2)x3 k4:CC`; `any` where only the count matters. `10/12/14` has a number for each
size. `= nothing` is a note or finishing, worth no rounds; `= refuse` must not be accepted.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import dataclass, field
from functools import lru_cache
from pathlib import Path

from stepper.craft.stitches import find_stitch, stitch
from stepper.plan.model import flatten
from tests.plans import phrase

CORPUS = Path(__file__).parent / "corpus"

Runs = tuple[tuple[str, int, str], ...]
"""Stitch, times and yarn of a row laid flat, equal neighbours joined, markers left out."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Row:
    """One round or row as it must be knitted."""

    runs: Runs | None
    """None where only the count matters."""
    after: int
    side: str = ""
    held: int | None = None
    """All stitches on hold after the row; None where the entry does not say."""
    needle_mm: float | None = None
    yarn: str = ""
    """The only yarn of the row, where its stitches are not written out."""


@dataclass(slots=True, kw_only=True)
class Entry:
    """One printed sentence, or a few that belong together, and what it means."""

    name: str
    kind: int
    title: str
    place: str
    sizes: int = 1
    units: str = "cm"
    own: tuple[str, ...] = ()
    """Lengths that the knitter gives, as `total foot: 24cm`."""
    before: list[str] = field(default_factory=list)
    printed: list[str] = field(default_factory=list)
    after: list[str] = field(default_factory=list)
    meanings: list[list[str]] = field(default_factory=lambda: [[]])
    told: str = ""
    kept: str = ""

    @property
    def refused(self) -> bool:
        """Whether the sentence must not be accepted."""
        return self.meanings[0] == ["refuse"]

    def rows(self, size: int) -> list[list[Row]]:
        """Lay out the rows of every meaning in one size."""
        return [
            [row for line in meaning for row in _rows(line, size)]
            for meaning in self.meanings
            if meaning not in (["refuse"], ["nothing"])
        ] or [[]]


def _sized(text: str, size: int) -> str:
    """Take the number of one size out of `10/12/14`; a cable is written `2/2_RC1`."""
    return re.sub(r"\d+(?:/\d+)+(?![\d/_])", lambda found: found.group().split("/")[size], text)


def _rows(line: str, size: int) -> list[Row]:
    text = _sized(line, size)
    times = re.match(r"(\d+)x\s+", text)
    cycle = [_row(part) for part in (text[times.end() :] if times else text).split(" | ")]
    return cycle * (int(times.group(1)) if times else 1)


def _row(text: str) -> Row:
    body, *notes = (part.strip() for part in text.split(";"))
    stitches, _, after = body.partition("->")
    side = re.match(r"(RS|WS)\s+", stitches)
    if side:
        stitches = stitches[side.end() :]
    said = dict(note.split(" ", 1) for note in notes)
    assert set(said) <= {"held", "needle", "yarn"}, text
    runs = None if stitches.strip() == "any" else joined_runs(stitches.strip())
    return Row(
        runs=runs, after=int(after), side=side.group(1) if side else "", yarn=said.get("yarn", ""),
        held=int(said["held"]) if "held" in said else None,
        needle_mm=float(said["needle"]) if "needle" in said else None,
    )  # fmt: skip


def joined_runs(text: str) -> Runs:
    """Lay stitches written in the notation flat."""
    return joined((run.stitch, run.times, run.yarn) for run in flatten(phrase(text)))


def joined(runs: Iterable[tuple[str, int, str]]) -> Runs:
    """Join equal neighbours; markers, and the other ball of a neck, are no stitches, and a turn is a turn however it is made.

    At the end of a row that leaves no stitch unworked the work is turned anyhow, whether that is written or not.
    """
    laid = list(runs)
    whole = all(code != "rest" for code, _, _ in laid)
    made: list[tuple[str, int, str]] = []
    for printed, times, yarn in laid:
        code = {"w&t": "turn"}.get(printed, stitch(printed).code)
        if code in ("pm", "sm", "rm", "join 2nd ball", "other ball") or not times or (code == "turn" and whole):
            continue
        of = "" if code in ("hold", "return", "rest", "turn", "graft", "draw") else yarn
        if made and made[-1][0] == code and made[-1][2] == of:
            made[-1] = (code, made[-1][1] + times, of)
        else:
            made.append((code, times, of))
    return tuple(made)


def uses_and_leaves(runs: Runs) -> tuple[int, int]:
    """Add up by the stitch table what a row takes from the left needle and puts on the right one."""
    assert all(find_stitch(code) for code, _, _ in runs), runs
    return (
        sum(times * stitch(code).uses for code, times, _ in runs),
        sum(times * stitch(code).leaves for code, times, _ in runs),
    )


@lru_cache(maxsize=1)
def entries() -> dict[str, Entry]:
    """Read every entry of the corpus, by name."""
    found: dict[str, Entry] = {}
    for path in sorted(CORPUS.glob("*.txt")):
        if path.name[:2].isdigit():
            for entry in _read(path):
                assert entry.name not in found, f"{entry.place}: {entry.name} is there twice"
                found[entry.name] = entry
    return found


def _read(path: Path) -> list[Entry]:
    contexts: dict[str, list[str]] = {}
    made: list[Entry] = []
    kind, title = 0, ""
    into: list[str] = []
    for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1):
        mark, rest = line[:2], line[2:].strip()
        if line.startswith("kind "):
            first, _, title = line[5:].partition(": ")
            kind = int(first)
        elif line.startswith("context "):
            into = contexts.setdefault(line[8:].strip(), [])
        elif mark == "  ":
            into.append(rest)
        elif mark == "@ ":
            blank = Entry(name="", kind=kind, title=title, place=f"{path.name}:{number}")
            made.append(_entry(rest, contexts, blank))
            into = made[-1].before
        elif line.strip() and not line.startswith("#"):
            _add(made[-1], mark.strip(), rest, f"{path.name}:{number}")
    return made


def _entry(head: str, contexts: dict[str, list[str]], entry: Entry) -> Entry:
    name, _, rest = head.partition(" : ")
    entry.name = f"{entry.kind}-{name.strip()}"
    for word in rest.split():
        if word.startswith("sizes="):
            entry.sizes = int(word[6:])
        elif word.startswith("units="):
            entry.units = word[6:]
        elif word.startswith("own="):
            entry.own += (word[4:].replace("_", " ").replace(":", ": "),)
        else:
            entry.before.extend(contexts[word])
    return entry


def _add(entry: Entry, mark: str, rest: str, place: str) -> None:
    if mark == ">":
        entry.printed.append(rest)
    elif mark == "+":
        entry.after.append(rest)
    elif mark == "=":
        entry.meanings[-1].append(rest)
    elif mark == "|":
        entry.meanings.append([rest])
    elif mark == "!":
        entry.told = rest
    elif mark == "&":
        entry.kept = rest
    else:
        raise AssertionError(
            f"{place}: a line of the corpus begins with one of @ > + = | ! & #, or two spaces"
        )
