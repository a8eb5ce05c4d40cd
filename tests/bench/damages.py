"""Bring about single damages of a journal and count what comes of each.

Run: python tests/bench/damages.py [COUNT]. Prints a table; ends with 1 where one came out wrong.
"""

from __future__ import annotations

import sys
import tempfile
import time
from collections import Counter
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from tests.store.damages import original, tried


def main() -> int:
    """Print what came of each kind."""
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 300
    begin, counted, wrong = time.perf_counter(), Counter(), []
    with tempfile.TemporaryDirectory() as name:
        (Path(name) / "whole").mkdir()
        whole = original(Path(name) / "whole")
        for number in range(count):
            folder = Path(name) / str(number)
            folder.mkdir()
            found = tried(whole, folder, number)
            for how in ("read", "knit"):
                result = found.get(how, "nothing to read")
                counted[found["kind"], how, result if not result.startswith("WRONG") else "WRONG"] += 1
                if result.startswith("WRONG"):
                    wrong.append(f"{number} {found['kind']}, {how}: {result}")
    for (kind, how, result), times in sorted(counted.items()):
        print(f"{kind:32} {how:5} {result:20} {times:4}")
    totals: Counter[tuple[str, str]] = Counter()
    for (_, how, result), times in counted.items():
        totals[how, result] += times
    print(*(f"{how}: {result} {times}" for (how, result), times in sorted(totals.items())), sep="\n")
    print(*wrong, sep="\n")
    print(f"{count} damages in {time.perf_counter() - begin:.1f} s, {len(wrong)} wrong")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
