"""Spoil whatever comes into the program at random: no traceback, nothing above two seconds or 500 MB.

    nice -n 15 python -m tests.bench.fuzz quick 180000 [SEED] [--only KIND] [--keep FOLDER]
    nice -n 15 python -m tests.bench.fuzz pages 20000 [SEED] [--keep FOLDER]

`quick` are cues, touches of a page, settings, vocabularies, recordings, pictures, archives and journals, each kind in a
process of its own; `pages` are project files and pasted pages. Prints the counts as it goes, and ends with 1 where
there was a fault; the smallest input of each fault is kept.
"""

from __future__ import annotations

import argparse
import random
import subprocess
import sys
import tempfile
import time
from pathlib import Path

from tests.fuzz.kinds import KINDS, Kind
from tests.fuzz.limits import Counts, memory_bounded
from tests.fuzz.page_mutations import seeds, spoilt
from tests.fuzz.reader import Bench

TOLD_S = 20.0
TMPFS = Path("/dev/shm")


def pages(keep: Path) -> Kind:
    """Project files and pages, through everything that a file goes through."""
    bench = Bench(keep)

    def take(raw: bytes) -> str:
        before = dict(bench.counts)
        bench.judge(raw)
        return next((name for name, number in bench.counts.items() if number > before.get(name, 0)), "read")

    return Kind(fresh=lambda chance: spoilt(chance.choice(seeds()), chance).encode("utf-8", errors="replace"), take=take)


def run(name: str, count: int, seed: int, keep: Path) -> int:
    """Take so many inputs of one kind; return the number of kinds of fault."""
    chance = random.Random(f"{name} {seed}")
    with tempfile.TemporaryDirectory(dir=TMPFS if TMPFS.is_dir() else None) as place:
        kind = pages(keep) if name == "pages" else KINDS[name][0](Path(place))
        for _ in range(3):  # what is built once is no input's fault
            kind.take(kind.fresh(chance)) if name == "pages" else None
        counts, told = Counts(name, keep), time.monotonic()
        with memory_bounded():
            for _ in range(count):
                counts.take(kind.fresh(chance), kind.take)
                if time.monotonic() - told > TOLD_S:
                    told = time.monotonic()
                    print(counts.told(), flush=True)
        kind.close()
    print("in the end:", counts.told(), flush=True)
    return len(counts.faults)


def main() -> int:
    """Take the inputs and print the counts."""
    parser = argparse.ArgumentParser(description=(__doc__ or "").split("\n", 1)[0])
    parser.add_argument("what", choices=("quick", "pages"))
    parser.add_argument("count", type=int)
    parser.add_argument("seed", type=int, nargs="?", default=1)
    parser.add_argument("--only", choices=tuple(KINDS))
    parser.add_argument("--keep", type=Path, default=None)
    given = parser.parse_args()
    keep = given.keep or Path(tempfile.mkdtemp(prefix="fuzz-"))
    keep.mkdir(parents=True, exist_ok=True)
    begun, failed = time.monotonic(), 0
    if given.what == "pages" or given.only:
        failed = run(given.only or "pages", given.count, given.seed, keep)
    else:
        whole = sum(share for _, share in KINDS.values())
        for name, (_, share) in KINDS.items():
            command = [sys.executable, "-m", "tests.bench.fuzz", "quick", str(given.count * share // whole), str(given.seed)]
            failed += subprocess.run([*command, "--only", name, "--keep", str(keep)], check=False).returncode != 0
    print(f"{given.count} inputs in {time.monotonic() - begun:.0f} s; what failed is in {keep}" if failed
          else f"{given.count} inputs in {time.monotonic() - begun:.0f} s, no fault")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
