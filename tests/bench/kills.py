"""Kill sittings, or have their disk fail, and count what comes of it.

    nice -n 15 python -m tests.bench.kills every [FIRST LAST]   # at every call to the disk, of four garments in turn
    nice -n 15 python -m tests.bench.kills random 500 [SEED]    # one garment, evening after evening, at random calls
    nice -n 15 python -m tests.bench.kills clock 100 [SEED]     # `stepper knit` itself, at random moments
    nice -n 15 python -m tests.bench.kills faults 300 [SEED]    # no room, or a disk that fails, once or from then on

What is judged and how stands in `tests/killed`. Ends with 1 where anything was lost, forged or stuck.
"""

from __future__ import annotations

import random
import shutil
import sys
import tempfile
import time
from collections import Counter
from collections.abc import Iterator
from pathlib import Path

from tests.disk_calls import WHY_NOT, Blow
from tests.killed import Verdict, kill_evenings, kill_program, make_garments, struck


def every(folder: Path, first: int, last: int) -> Iterator[Verdict]:
    """Kill before each call and, where it writes, in the middle of it; calls counted over all garments."""
    number = 0
    for name, garment in make_garments(folder / "garments").items():
        whole = struck(garment, folder / f"whole {name}", Blow(at=0))
        assert not whole.wrong, whole.wrong
        for at, call in enumerate(whole.outcome.names, start=1):
            number += 1
            if not first <= number <= last:
                continue
            for kind in ("kill", "torn") if call in ("pwrite", "write") else ("kill",):
                place = folder / f"{name} {at} {kind}"
                yield struck(garment, place, Blow(at=at, kind=kind))
                shutil.rmtree(place)
    print(f"{number} calls in all")


def fail(folder: Path, count: int, chance: random.Random) -> Iterator[Verdict]:
    """Have calls fail, those that read among them."""
    made = list(make_garments(folder / "garments").values())
    for number in range(count):
        blow = Blow(
            at=chance.randint(1, 260),
            kind=chance.choice(("ENOSPC", "EIO")),
            lasting=chance.random() < 0.5,
            reads=chance.random() < 0.5,
        )
        place = folder / str(number)
        yield struck(chance.choice(made), place, blow)
        shutil.rmtree(place)


def main() -> int:
    """Print the counts."""
    if WHY_NOT:
        print(WHY_NOT)
        return 2
    what, *numbers = sys.argv[1:]
    first, second = [*map(int, numbers), 1, 10**9][:2] if what == "every" else [*map(int, numbers), 1][:2]
    begun, counted, wrong = time.monotonic(), Counter[str](), []
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        if what == "random":
            verdicts, entries = kill_evenings(folder / "one", first, random.Random(second))
            print(f"{entries} entries in the end")
        elif what == "clock":
            verdicts = kill_program(folder / "one", first, random.Random(second))
        elif what == "every":
            verdicts = every(folder, first, second)
        else:
            verdicts = fail(folder, first, random.Random(second))
        for verdict in verdicts:
            out = verdict.outcome
            counted["killed" if out.killed else "refused" if out.refused else "ended well"] += 1
            if verdict.wrong:
                wrong.append(verdict.wrong)
                print(f"WRONG: {verdict.wrong}", flush=True)
    print(f"{what}: {sum(counted.values())} sittings in {time.monotonic() - begun:.0f} s: "
          + ", ".join(f"{number} {how}" for how, number in counted.items()) + f"; {len(wrong)} wrong")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main())
