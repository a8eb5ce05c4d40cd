"""Search for small works that go a way in `stepper/plan` which no test goes: what no condition ever came to, the search brings it to.

    python -m tests.bench.ways FOLDER --record TEST [TEST ...]      what the tests go, once; takes long
    python -m tests.bench.ways FOLDER --minutes 20 --seed 1         search, again and again; kept as it goes
    python -m tests.bench.ways FOLDER --left                        what neither went, by place

A way is what `tests.bench.undecided` lists: a branch taken or not, a part of `and` or `or` that decides, two sides that are equal.
Works are spliced and changed from those that are written down (`tests.bench.ways_spliced`), rather from such as come to a place
where a way is missing. What goes a new way is made as short as still goes it, and stands in FOLDER/found.txt with the ways it
goes. A work is compiled in each of its sizes and beside the work it was made from, as a plan that is changed under way.
What ends in a traceback, or in a plan whose counts do not go together, is printed and stands in FOLDER/faults.txt.
"""

from __future__ import annotations

import argparse
import json
import os
import random
import signal
import subprocess
import sys
import time
import traceback
from collections import Counter, defaultdict
from dataclasses import dataclass, replace
from pathlib import Path

from stepper.plan.compile import compile_plan
from stepper.plan.model import Plan
from stepper.plan.under_way.absorb import Mend, apply_mends
from stepper.plan.under_way.carry import carry
from stepper.plan.under_way.resuming import follow
from stepper.project.reader import read_project
from tests.bench.undecided import copied, noted, ways
from tests.bench.undecided_record import SEEN
from tests.bench.ways_spliced import Work, seeds, shorter, spliced
from tests.invariants import broken_invariants
from tests.plan.test_agreed_works import as_file

INSIDE = "WAYS_INSIDE"
"""Environment variable: set in the process that runs in the copy."""
LONGEST_S = 5
"""A work that takes longer to compile is let go. Unit: seconds."""
MOST_TRIED = 60
"""Times that a find is tried shorter, at most."""
IDLE = ("no stitches on the needles", " of the 0 are left", "from 0 to ", "nothing is on hold", "been written out", "no part was worked")
"""Words of a refusal that only says that what comes before is missing."""
Way = tuple[str, str]


class IdleError(Exception):
    """A work has nothing to be worked on."""


class TooLongError(Exception):
    """A work took too long."""


def tried(work: Work) -> list[Plan]:
    """Compile a work in each of its sizes; return the plans.

    Raises:
        IdleError: nothing is on the needles where it is worked, which teaches nobody anything.
    """
    reading = read_project(as_file(list(work)))
    if reading.project is None:
        return []
    plans = []
    for size in range(len(reading.project.sizes)):
        made = compile_plan(replace(reading.project, size=size))
        plans += [made.plan] if made.plan is not None else []
        if any(words in problem.message for problem in made.problems for words in IDLE):
            raise IdleError
    return plans


def changed(old: Plan, new: Plan, chance: random.Random) -> None:
    """Go from one plan to another under way, and mend a count that is off."""
    for _ in range(3):
        index = chance.randrange(len(old.rounds) + 1)
        stitch = chance.randrange(old.rounds[index].progress + 1) if index < len(old.rounds) else 0
        carry(old, new, index=index, stitch=stitch)
        follow(old, new, index)
        change = chance.choice((-2, -1, 1, 2))
        apply_mends(old, [Mend(index=index, stitch=stitch, change=change, origin=index - 1, spread=chance.random() < 0.5)])


def both(work: Work, before: Work | None, dice: int) -> list[Plan]:
    """Try a work, and going to it from another."""
    plans = tried(work)
    if before is not None and plans:
        old = tried(before)
        if old:
            changed(old[0], plans[0], random.Random(dice))
            changed(plans[0], old[0], random.Random(dice + 1))
    return plans


@dataclass
class Search:
    """What is missing, and what was found."""

    folder: Path
    missing: set[Way]
    chance: random.Random

    def __post_init__(self) -> None:
        self.seeds: list[Work] = []
        self.at_place: dict[str, list[Work]] = defaultdict(list)
        self.places = sorted({key for key, _ in self.missing})
        self.faults: Counter[str] = Counter()
        self.tries = self.plans = self.found = 0
        self.worked = False

    def goes(self, work: Work, before: Work | None, dice: int, wanted: set[Way]) -> set[Way]:
        """Return those of some ways that a work goes."""
        for way in wanted:
            SEEN.pop(way, None)
        signal.setitimer(signal.ITIMER_REAL, LONGEST_S)
        self.worked = False
        try:
            plans = both(work, before, dice)
            self.plans += bool(plans)
            self.worked = bool(plans)
            broken = [each for plan in plans for each in broken_invariants(plan)]
            if broken:
                self._fault(work, broken[0].partition(":")[2] or broken[0], broken[0])
        except (TooLongError, IdleError):
            self.tries += 1
            return set()
        except Exception as error:  # whatever it is, it is a find
            frame = traceback.extract_tb(error.__traceback__)[-1]
            self._fault(work, f"{type(error).__name__} {frame.filename[-40:]}:{frame.lineno}", repr(error)[:200])
        finally:
            signal.setitimer(signal.ITIMER_REAL, 0)
        self.tries += 1
        return {way for way in wanted if SEEN[way]}

    def take(self, work: Work, before: Work | None = None) -> None:
        """Try a work; keep it if it goes a way that is missing, and note which places it comes to."""
        counts = {key: self._times(key) for key in self.places}
        dice = self.chance.randrange(10**6)
        new = self.goes(work, before, dice, self.missing)
        if before is None or new:
            self.seeds.append(work)
            for key, times in counts.items():
                if self._times(key) > times:
                    self.at_place[key].append(work)
        if new:
            self._keep(work, before, dice, new)

    def _times(self, key: str) -> int:
        return SEEN[key, "all"] or SEEN[key, "True"] + SEEN[key, "False"]

    def _keep(self, work: Work, before: Work | None, dice: int, new: set[Way]) -> None:
        """Make a find shorter and write it down; what was worked out stays something to be knitted."""
        worked = self.worked

        def same(less: Work, other: Work | None) -> bool:
            return self.goes(less, other, dice, new) == new and self.worked == worked

        if before is not None and same(work, None):
            before = None
        left = MOST_TRIED
        again = True
        while again and left > 0:
            again = False
            for less in shorter(work):
                left -= 1
                if less and same(less, before):
                    work, again = less, True
                    break
                if left <= 0:
                    break
        for way in new:
            SEEN[way] += 1
        self.missing -= new
        self.places = sorted({key for key, _ in self.missing})
        self.found += len(new)
        self.seeds.append(work)
        record = {"work": work, "before": before, "dice": dice, "ways": sorted(new)}
        with (self.folder / "found.txt").open("a", encoding="utf-8") as file:
            file.write(json.dumps(record) + "\n")

    def _fault(self, work: Work, kind: str, text: str) -> None:
        self.faults[kind] += 1
        if self.faults[kind] <= 3:
            with (self.folder / "faults.txt").open("a", encoding="utf-8") as file:
                file.write(json.dumps({"fault": text, "kind": kind, "work": work}) + "\n")

    def one(self) -> None:
        """Make a work and try it: rather from one that comes to a place where a way is missing."""
        here = self.at_place.get(self.chance.choice(self.places), []) if self.chance.random() < 0.8 else []
        others = here if here and self.chance.random() < 0.5 else self.seeds
        work = self.chance.choice(here or self.seeds)
        made = spliced(work, others, self.chance)
        if made and made != work:
            self.take(made, work)


def left(folder: Path) -> tuple[dict[str, list[str]], set[Way]]:
    """Return what stands at each place, and the ways that neither the tests nor the search went."""
    places = json.loads((folder / "places.json").read_text(encoding="utf-8"))
    seen = {(key, what) for key, what, count in json.loads((folder / "seen.json").read_text(encoding="utf-8")) if count}
    found = folder / "found.txt"
    rows = found.read_text(encoding="utf-8").splitlines() if found.exists() else []
    gone = {(key, what) for row in rows for key, what in json.loads(row)["ways"]}
    return places, {way for way in ways(places) if way not in seen and way not in gone}


def search(folder: Path, minutes: float, seed: int) -> None:
    """Search for a while; runs in the copy."""

    def too_long(*_: object) -> None:
        raise TooLongError

    signal.signal(signal.SIGALRM, too_long)
    _, missing = left(folder)
    hunt = Search(folder, missing, random.Random(seed))
    begun = said = time.monotonic()
    seen = json.loads((folder / "seen.json").read_text(encoding="utf-8")) if (folder / "seen.json").exists() else []
    for key, what, count in seen:
        SEEN[key, what] += count
    for work in seeds():
        hunt.take(work)
    print(f"{len(hunt.seeds)} seeds in {time.monotonic() - begun:.0f} s, {len(hunt.missing)} ways missing", flush=True)
    while time.monotonic() - begun < minutes * 60:
        hunt.one()
        if time.monotonic() - said > 60:
            said = time.monotonic()
            each = hunt.tries / (said - begun)
            print(f"{hunt.tries} tries, {each:.0f} a second, {hunt.plans} plans, {hunt.found} ways found, "
                  f"{len(hunt.missing)} missing; faults {dict(hunt.faults)}", flush=True)


def main() -> None:
    """Record, search or tell."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("folder", type=Path)
    parser.add_argument("--record", nargs="+", metavar="TEST")
    parser.add_argument("--minutes", type=float, default=20)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--left", action="store_true")
    args = parser.parse_args()
    folder = args.folder.resolve()
    if args.record:
        places = copied(folder / "tree", "plan")
        (folder / "places.json").write_text(json.dumps(places), encoding="utf-8")
        seen = noted(folder / "tree", args.record)
        (folder / "seen.json").write_text(json.dumps([[*way, count] for way, count in seen.items()]), encoding="utf-8")
    elif args.left:
        places, missing = left(folder)
        for key, what in sorted(missing):
            print(f"{key.rpartition(':')[0]:55} {what:6} {places[key]}")
    elif os.environ.get(INSIDE):
        search(folder, args.minutes, args.seed)
    else:
        tree = folder / "tree"
        env = {**os.environ, INSIDE: "1", "PYTHONPATH": str(tree)}
        sys.exit(subprocess.run([sys.executable, "-m", "tests.bench.ways", *sys.argv[1:]], cwd=tree, env=env, check=False).returncode)


if __name__ == "__main__":
    main()
