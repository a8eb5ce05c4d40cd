"""Kill sittings, or have their disk fail, and count what comes of it.

    nice -n 15 python -m tests.bench.kills every [FIRST LAST]   # at every call to the disk, of four garments in turn
    nice -n 15 python -m tests.bench.kills random 2000 [SEED]   # evening after evening, 200 a garment, at random calls
    nice -n 15 python -m tests.bench.kills clock 100 [SEED]     # `stepper knit` itself, at random moments
    nice -n 15 python -m tests.bench.kills faults 300 [SEED]    # no room, or a disk that fails, once or from then on

What is judged and how stands in `tests/killed`. Prints the counts so far as it goes; ends with 1 where anything was lost, forged or stuck.
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

EVENINGS = 200
"""Kills that one garment lives through before another is begun."""
TOLD_EVERY = 50


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


def evenings(folder: Path, count: int, chance: random.Random) -> Iterator[Verdict]:
    """Kill every evening of one garment after another."""
    for number, first in enumerate(range(0, count, EVENINGS), start=1):
        place, entries = folder / f"garment {number}", 0
        for verdict, entries in kill_evenings(place, min(EVENINGS, count - first), chance):
            yield verdict
        print(f"garment {number}: {entries} entries in the end", flush=True)
        shutil.rmtree(place)


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
            verdicts = evenings(folder, first, random.Random(second))
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
            if sum(counted.values()) % TOLD_EVERY == 0:
                print(told(what, counted, wrong, begun), flush=True)
    print(told(what, counted, wrong, begun))
    return 1 if wrong else 0


def told(what: str, counted: Counter[str], wrong: list[str], begun: float) -> str:
    """Return the counts so far in a sentence."""
    each = ", ".join(f"{number} {how}" for how, number in counted.items())
    return f"{what}: {sum(counted.values())} sittings in {time.monotonic() - begun:.0f} s: {each}; {len(wrong)} wrong"


if __name__ == "__main__":
    sys.exit(main())
