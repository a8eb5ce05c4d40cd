"""Spoil project files and pages at random for a while: no traceback, nothing slower than two seconds, memory bounded.

    nice -n 15 python -m tests.bench.fuzz_pages --minutes 10 --seed 1 [--keep FOLDER]

Prints what became of the inputs, the slowest and the memory; ends with 1 where there was a fault.
"""

from __future__ import annotations

import argparse
import random
import resource
import sys
import tempfile
import time
from pathlib import Path

from tests.fuzz import reader
from tests.fuzz.page_mutations import seeds, spoilt

SLOW_S = 2.0
MEMORY_BYTES = 2 << 30


def main() -> None:
    """Run inputs until the time is up."""
    parser = argparse.ArgumentParser(description=(__doc__ or "").split("\n", 1)[0])
    parser.add_argument("--minutes", type=float, default=10)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--keep", type=Path, default=None)
    given = parser.parse_args()
    resource.setrlimit(resource.RLIMIT_AS, (MEMORY_BYTES, MEMORY_BYTES))
    keep = given.keep or Path(tempfile.mkdtemp(prefix="fuzz-pages-"))
    keep.mkdir(parents=True, exist_ok=True)
    reader.SLOW_S = SLOW_S
    bench, chance = reader.Bench(keep), random.Random(given.seed)
    for text in chance.sample(seeds(), 3):
        bench.take(text.encode())  # the parser is built once, which is no input's fault
    bench.slowest = 0.0
    begun = time.monotonic()
    while time.monotonic() - begun < given.minutes * 60:
        text = spoilt(chance.choice(seeds()), chance)
        bench.take(text.encode("utf-8", errors="replace"))
    bench.report(time.monotonic() - begun)
    peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
    print(f"  at most {peak:.0f} MB; inputs that failed are in {keep}")
    sys.exit(1 if bench.faults else 0)


if __name__ == "__main__":
    main()
