"""How much of the corpus of printed sentences is read rightly, by kind.

python -m tests.bench.corpus              # shares, then every entry that is read otherwise than it is meant
python -m tests.bench.corpus --refused    # the refusals too, with what stopped them
python -m tests.bench.corpus --keep       # writes those read now into tests/project/corpus/read.txt
"""

from __future__ import annotations

import sys
from collections import Counter, defaultdict

from tests.project.corpus_entries import CORPUS, entries
from tests.project.corpus_garments import GARMENTS, names, told, work_rows
from tests.project.corpus_judge import verdict


def main() -> None:
    """Measure."""
    counts: dict[tuple[int, str], Counter[str]] = defaultdict(Counter)
    listed = []
    for name, entry in entries().items():
        found = verdict(name)
        counts[entry.kind, entry.title][found.outcome] += 1
        if found.outcome in ("misread", "untold") or ("--refused" in sys.argv and found.outcome == "refused"):
            listed.append((found.outcome, entry, found.why))
    print(f"{'kind':50} read refused misread untold")
    for (kind, title), seen in sorted(counts.items()):
        print(
            f"{kind:2} {title:40} {seen['read']:4} of {seen.total():3} {seen['refused']:7} {seen['misread']:7} {seen['untold']:6}"
        )
    total = sum(counts.values(), Counter())
    print(
        f"read {total['read']} of {total.total()} ({100 * total['read'] / total.total():.1f} %), "
        f"refused {total['refused']}, misread {total['misread']}, untold {total['untold']}"
    )
    for outcome, entry, why in listed:
        print(f"\n{outcome} {entry.name} ({entry.place})")
        print(
            "".join(f"    > {line}\n" for line in entry.printed) + f"    {why}\n    meant: {entry.meanings}"
        )
    if "--keep" in sys.argv:
        read = sorted(name for name in entries() if verdict(name).outcome == "read")
        (CORPUS / "read.txt").write_text("\n".join(read) + "\n", encoding="utf-8")
    garments(keep="--keep" in sys.argv)


def garments(*, keep: bool) -> None:
    """Say how many rows of each whole garment are read, as typed, and what differs from the counts by hand."""
    floor = []
    for name in names():
        found = told(name)
        rows = set(work_rows((GARMENTS / f"{name}.yaml").read_text(encoding="utf-8")))
        read = len(rows - set(found.refused))
        floor.append(f"{name} {read}")
        print(
            f"\n{name}: {read} of {len(rows)} rows read; refused {', '.join(map(str, found.refused)) or 'none'}"
        )
        print("".join(f"    {line}\n" for line in (*found.wrong, found.stopped) if line), end="")
    if keep:
        (GARMENTS / "read.txt").write_text("\n".join(floor) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()
