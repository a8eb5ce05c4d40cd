"""How many lines that are read are still read, and read alike, in the signs of another designer.

    python -m tests.bench.redressed [SEED] [EACH]       # entries of the corpus: EACH (40) drawn for every manner
    python -m tests.bench.redressed SEED EACH lists     # one kind of manner, with every line that is not read alike
    python -m tests.bench.redressed SEED --pages FILE.. # whole pages, each in the manners of one designer

Prints for every manner how many lines are read with the meaning that the corpus holds, refused, or read otherwise. Of a
page, its lines as read are compared with those of the page as it was.
"""

from __future__ import annotations

import random
import sys
from collections import Counter
from dataclasses import replace
from pathlib import Path

from tests.project.corpus_entries import Entry, entries
from tests.project.corpus_judge import Verdict, judge, verdict
from tests.project.rewording.sign_dresses import MANNERS, Manner, designer
from tests.project.rewording.whole_page import compare_pages, dress_page


def in_dress(entry: Entry, manner: Manner) -> Entry | None:
    """Return an entry with its sentence in another manner; None if it has nothing that could be."""
    printed = [manner.write(line, entry.sizes) for line in entry.printed]
    return replace(entry, printed=printed) if printed != entry.printed else None


def of_manner(manner: Manner, seed: str, number: int) -> list[tuple[Entry, Verdict]]:
    """Return entries in a manner, drawn by chance, with what becomes of each."""
    found = []
    names = list(entries())
    random.Random(f"{seed} {manner.kind} {manner.name}").shuffle(names)
    for name in names:
        entry = entries()[name]
        dressed = in_dress(entry, manner) if entry.meanings[0] != ["refuse"] else None
        if dressed is not None and verdict(name).outcome == "read":
            found.append((dressed, judge(dressed)))
        if len(found) >= number:
            break
    return found


def corpus(seed: str, number: int, kind: str) -> None:
    """Print the shares of every manner."""
    whole: Counter[str] = Counter()
    for manner in MANNERS:
        if kind and manner.kind != kind:
            continue
        judged = of_manner(manner, seed, number)
        counts = Counter(found.outcome for _, found in judged)
        whole += counts
        others = " ".join(f"{outcome} {times}" for outcome, times in counts.items() if outcome not in ("read", "refused"))
        print(f"{manner.kind:10} {manner.name:30} {counts['read']:4} of {counts.total():4}  {others}", flush=True)
        for entry, found in judged:
            if found.outcome != "read" and (kind or found.outcome != "refused"):
                print(f"    {found.outcome} {entry.name}: {' / '.join(entry.printed)}\n        {found.why}")
    print(f"all: {whole['read']} of {whole.total()} read ({whole['read'] / max(1, whole.total()):.3f}), refused {whole['refused']}, "
          f"otherwise {whole.total() - whole['read'] - whole['refused']}")  # fmt: skip


def pages(seed: str, files: list[str]) -> None:
    """Print the shares of whole pages."""
    lines = still = 0
    for file in files:
        text = Path(file).read_text(encoding="utf-8")
        manners = designer(random.Random(f"{seed} {Path(file).name}"))
        compared = compare_pages(text, dress_page(text, manners, f"{seed} {file}"))
        lines, still = lines + compared.before, still + compared.alike
        print(f"{compared.alike:4} of {compared.before:4}  {file}  {', '.join(f'{one.kind}: {one.name}' for one in manners)}", flush=True)
        for told, lines_of in (("lost", compared.lost), ("read otherwise", compared.new), ("part", compared.parts)):
            for one in lines_of:
                print(f"    {told}: {one}")
    print(f"all: {still} of {lines} alike ({still / max(1, lines):.3f})")


def main() -> None:
    """Measure."""
    seed = sys.argv[1] if len(sys.argv) > 1 else "1"
    if "--pages" in sys.argv:
        pages(seed, sys.argv[sys.argv.index("--pages") + 1 :])
    else:
        number = int(sys.argv[2]) if len(sys.argv) > 2 else 40
        corpus(seed, number, sys.argv[3] if len(sys.argv) > 3 else "")


if __name__ == "__main__":
    main()
