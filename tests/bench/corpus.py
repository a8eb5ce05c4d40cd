"""How much of the corpus of printed sentences is read rightly, by kind.

    python -m tests.bench.corpus              # shares, then every entry that is read otherwise than it is meant
    python -m tests.bench.corpus --refused    # the refusals too, with what stopped them
    python -m tests.bench.corpus --keep       # adds those read now to tests/project/corpus/read.txt, which never shrinks
"""

from __future__ import annotations

import sys
from collections import Counter, defaultdict
from pathlib import Path

from tests.project.corpus_entries import CORPUS, entries
from tests.project.corpus_garments import GARMENTS, names, told, work_rows
from tests.project.corpus_judge import accepted_with_another_count, verdict
from tests.project.test_corpus import KNOWN_MISREAD, KNOWN_MISREAD_ROWS

WRONG = ("misread", "untold", "crashed")
OUTCOMES = ("read", "refused", *WRONG)


def main() -> None:
    """Measure."""
    shares()
    shown = (*WRONG, "refused") if "--refused" in sys.argv else WRONG
    for name in entries():
        if verdict(name).outcome in shown:
            show(name)
    garments()
    mended()
    if "--keep" in sys.argv:
        keep()


def shares() -> None:
    """Print how many entries of each kind are read, refused and wrong."""
    counts: dict[str, Counter[str]] = defaultdict(Counter)
    for name, entry in entries().items():
        counts[f"{entry.kind:2} {entry.title}"][verdict(name).outcome] += 1
    counts["all"] = sum(counts.values(), Counter())
    print(f"{'kind':56}" + "".join(f"{outcome:>9}" for outcome in OUTCOMES) + "    share")
    for kind, seen in counts.items():
        share = 100 * seen["read"] / seen.total()
        print(f"{kind:56}" + "".join(f"{seen[outcome]:9}" for outcome in OUTCOMES) + f"{share:7.1f} %")


def show(name: str) -> None:
    """Print an entry with what became of it and what it means."""
    entry, found = entries()[name], verdict(name)
    print(f"\n{found.outcome} {name} ({entry.place})")
    print("".join(f"    > {line}\n" for line in entry.printed), end="")
    print(f"    {found.why}\n    meant: {' or '.join(', '.join(rows) for rows in entry.meanings)}")


def garments() -> None:
    """Print how many rows of each whole garment are read, as typed, and what differs from the counts by hand."""
    for name in names():
        found = told(name)
        print(f"\n{name}: {rows_read(name)} rows read; refused {', '.join(map(str, found.refused)) or 'none'}")
        print("".join(f"    {line}\n" for line in (*found.wrong, found.stopped) if line), end="")


def mended() -> None:
    """Print the known misreadings that are none any more, to be taken off their list."""
    for name in KNOWN_MISREAD:
        if verdict(name).outcome not in WRONG:
            print(f"mended ({verdict(name).outcome}), take it off KNOWN_MISREAD: {name}")
    for name, row in KNOWN_MISREAD_ROWS:
        if not any(fault.startswith(f"row {row},") for fault in told(name).wrong):
            print(f"mended, take it off KNOWN_MISREAD_ROWS: {name} {row}")


def rows_read(name: str) -> int:
    """Count the rows of a garment that are read as typed."""
    rows = work_rows((GARMENTS / f"{name}.yaml").read_text(encoding="utf-8"))
    return len(set(rows) - set(told(name).refused))


def keep() -> None:
    """Write down what is read now; what was read before stays listed, so that its loss is a failing test.

    An entry whose printed count is not checked is read by luck and not listed.
    """
    path = CORPUS / "read.txt"
    before = set(path.read_text(encoding="utf-8").split())
    read = {name for name in entries() if verdict(name).outcome == "read"}
    now = {name for name in read if not accepted_with_another_count(name)}
    for name in sorted(before - now):
        print(f"listed, and not read any more: {name}")
    order = {name: place for place, name in enumerate(entries())}
    write(path, sorted(before | now, key=lambda name: order.get(name, -1)))
    write(GARMENTS / "read.txt", [f"{name} {rows_read(name)}" for name in names()])


def write(path: Path, rows: list[str]) -> None:
    """Write rows to a file."""
    path.write_text("\n".join(rows) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()
