"""Search for small works that tell a changed program from the plain one, where no agreed work does.

    python -m tests.bench.distil FOLDER --aim 600 --seed 601        which of 600 mutants of `plan` live in all agreed works
    python -m tests.bench.distil FOLDER --minutes 20 --seed 1       search, again and again; kept as it goes
    python -m tests.bench.distil FOLDER --left                      what still lives

FOLDER/aims.txt holds the mutants that live, as `tests.bench.mutants --results` writes verdicts: `tests.bench.mutants --lived` shows them to the
other tests of the room, and its results, with `--only FILE`, leave those that live there too. Works are spliced and changed from those that
are written down (`tests.bench.ways_spliced`), rather from such as run the line of a mutant that lives. A work of which a
mutant makes something else is made as short as still tells them apart, and stands in FOLDER/found.txt with the mutants. A mutant is put in place of the plain function in
this very process, which takes as long as the work takes to be compiled. What ends in a traceback, or in a plan whose counts do not go together
or that the second knitter (`tests.knitter`) works otherwise, stands in FOLDER/faults.txt.
"""

from __future__ import annotations

import argparse
import contextlib
import importlib
import json
import random
import signal
import sys
import time
import traceback
from collections import Counter, defaultdict
from collections.abc import Callable, Iterator
from dataclasses import dataclass, replace
from pathlib import Path
from types import CodeType, FrameType, FunctionType
from typing import Any

from stepper.plan.compile import compile_plan
from stepper.project.reader import FileReading, read_project
from tests import knitter
from tests.bench.mutant_swap import CannotSwapError, swaps
from tests.bench.mutants import ROOT, Mutant, candidates_of, differs, equivalents, modules_of, sample, verdicts_of
from tests.bench.ways import IDLE
from tests.bench.ways_spliced import Work, seeds, shorter, spliced
from tests.invariants import broken_invariants
from tests.plan.test_agreed_works import FORMERLY, KINDS, as_file, rows_of, works

LONGEST_S = 3.0
"""What takes longer to compile never comes to an end: the least of it is in milliseconds. Unit: s."""
MOST_SHOWN = 40
"""Mutants that a made-up work is shown, at most; taken at random."""
MOST_WORKS = 120
"""Agreed works that a fresh mutant is shown before it is said to live in them."""
MOST_TRIED = 60
"""Times that a find is tried shorter, at most."""
MOST_ROWS = 60
"""A work that becomes more rows than that is too long to be read, and is let go."""


class TooLongError(BaseException):
    """A work took too long. No handler of the program's own may take it for an error of its own."""


@dataclass
class Aim:
    """A mutant that lives, ready to be put in place."""

    mutant: Mutant
    functions: list[tuple[FunctionType, CodeType]]
    plain: list[CodeType]

    @property
    def place(self) -> tuple[str, int]:
        """Where it is."""
        return str(ROOT / self.mutant.module), self.mutant.line


def aim_at(mutant: Mutant) -> Aim | None:
    """Make a mutant ready; None where it cannot be put in place of what is loaded."""
    name = ".".join(Path(mutant.module).with_suffix("").parts)
    importlib.import_module(name)
    try:
        functions = swaps(name, (ROOT / mutant.module).read_text(encoding="utf-8"), mutant.source)
    except CannotSwapError:
        return None
    return Aim(mutant, functions, [function.__code__ for function, _ in functions])


def made_anew(names: list[str]) -> list[Mutant]:
    """List mutants by their names."""
    found = []
    for module in dict.fromkeys(name.split(" ¦ ")[0] for name in names):
        source = (ROOT / module).read_text(encoding="utf-8")
        made = {mutant.name: mutant for mutant in candidates_of(module, source)}
        found += [made[name] for name in names if name in made and differs(made[name], source)]
    return found


class Bench:
    """Compiles works with and without mutants, and notes which lines of these they run."""

    def __init__(self, aims: list[Aim]) -> None:
        self.aims = aims
        self.lines: set[tuple[str, int]] = set()
        self._caches = []
        for name in [*modules_of("plan"), *modules_of("craft")]:
            module = importlib.import_module(".".join(Path(name).with_suffix("").parts))
            self._caches += [each for each in vars(module).values() if hasattr(each, "cache_clear")]

        def too_long(*_: object) -> None:
            raise TooLongError

        signal.signal(signal.SIGALRM, too_long)
        self._watched: set[CodeType] = set()
        for aim in aims:
            for code in aim.plain:
                self._watch(code)

    def _watch(self, code: CodeType) -> None:
        self._watched.add(code)
        for inner in code.co_consts:
            if isinstance(inner, CodeType):
                self._watch(inner)

    def _called(self, frame: FrameType, event: str, _: object) -> Callable[..., Any] | None:
        if frame.f_code not in self._watched:
            return None
        name, lines = frame.f_code.co_filename, self.lines

        def note(frame: FrameType, event: str, _: object) -> Callable[..., Any]:
            lines.add((name, frame.f_lineno))
            return note

        return note(frame, event, None)

    def rows(self, reading: FileReading, formerly: bool) -> list[str] | None:
        """Write what becomes of a work; None where it never ends or breaks off."""
        for cache in self._caches:
            cache.cache_clear()
        signal.setitimer(signal.ITIMER_REAL, LONGEST_S)
        try:
            return rows_of(reading, formerly=formerly)
        except (Exception, TooLongError):
            return None
        finally:
            signal.setitimer(signal.ITIMER_REAL, 0)

    def plain(self, reading: FileReading, formerly: bool) -> tuple[list[str] | None, set[tuple[str, int]]]:
        """Write what becomes of a work, and tell the lines of mutants that it runs."""
        self.lines = set()
        sys.settrace(self._called)
        try:
            rows = self.rows(reading, formerly)
        finally:
            sys.settrace(None)
        return rows, self.lines

    def tells(self, aim: Aim, reading: FileReading, formerly: bool, rows: list[str]) -> bool:
        """Return whether a mutant makes something else of a work."""
        try:
            for function, code in aim.functions:
                function.__code__ = code
            return self.rows(reading, formerly) != rows
        finally:
            for (function, _), code in zip(aim.functions, aim.plain, strict=True):
                function.__code__ = code


def wrong_in(reading: FileReading) -> Iterator[str]:
    """Yield what is wrong with the plans of a work, by sums and by the second knitter."""
    assert reading.project is not None
    for size in range(len(reading.project.sizes)):
        plan = compile_plan(replace(reading.project, size=size)).plan
        if plan is None:
            continue
        yield from broken_invariants(plan)
        for round_ in plan.rounds:
            row = knitter.right(round_)
            if (row.left, row.count) != (0, round_.after):
                yield f"round {round_.number}: knitted, {row.left} are left and {row.count} there, not {round_.after}"


class Search:
    """What lives, and what was found."""

    def __init__(self, folder: Path, aims: list[Aim], chance: random.Random) -> None:
        self.folder, self.chance = folder, chance
        self.bench = Bench(aims)
        self.living = {aim.mutant.name: aim for aim in aims}
        self.seeds: list[Work] = []
        self.at_place: dict[tuple[str, int], list[Work]] = defaultdict(list)
        self.faults: Counter[str] = Counter()
        self.tries = self.read = self.worked = self.shown = self.found = 0

    def told_by(self, work: Work, among: list[Aim] | None = None, *, known: bool = False) -> tuple[list[Aim], bool]:
        """Return the mutants that a work tells from the plain program, and whether it is worked out.

        Args:
            work: The work.
            among: The mutants that are asked about; all that live where none are named.
            known: Whether it is known already that it tells none.
        """
        self.tries += 1
        try:
            reading = read_project(as_file(list(work)))
        except Exception as error:  # noqa: BLE001 # a fault of the reader is a find too
            self._fault(work, error)
            return [], False
        if reading.project is None:
            return [], False
        self.read += 1
        formerly = FORMERLY in work
        rows, lines = self.bench.plain(reading, formerly)
        if rows is None:
            try:
                rows_of(reading, formerly=formerly)
            except Exception as error:  # noqa: BLE001 # whatever it is, it is a find
                self._fault(work, error)
            return [], False
        worked = rows[0] != "refused"
        if not known and len(rows) > MOST_ROWS:
            return [], False
        if any(words in row for row in rows[:3] for words in IDLE):
            return [], False
        self.worked += worked
        here = [aim for aim in (self.living.values() if among is None else among) if aim.place in lines]
        for place in {aim.place for aim in here}:
            if among is None and len(self.at_place[place]) < 400:
                self.at_place[place].append(work)
        if known:
            return [], worked
        if among is None and len(here) > MOST_SHOWN:
            here = self.chance.sample(here, MOST_SHOWN)
        self.shown += len(here)
        found = [aim for aim in here if self.bench.tells(aim, reading, formerly, rows)]
        if found and worked:
            wrong = [*wrong_in(reading)]
            if wrong:
                self._note(work, wrong[0], wrong[0].partition(":")[2])
        return found, worked

    def take(self, work: Work) -> None:
        """Try a work; keep it if it tells a mutant that lives."""
        found, worked = self.told_by(work)
        self.seeds.append(work)
        if not found:
            return
        left, again = MOST_TRIED, True
        while again and left > 0:
            again = False
            for less in shorter(work):
                left -= 1
                still, is_worked = self.told_by(less, found) if less else ([], False)
                if len(still) == len(found) and is_worked == worked:
                    work, again = less, True
                    break
                if left <= 0:
                    break
        for aim in found:
            del self.living[aim.mutant.name]
        self.found += 1
        self.seeds.append(work)
        record = {"work": work, "worked": worked, "mutants": [aim.mutant.name for aim in found]}
        with (self.folder / "found.txt").open("a", encoding="utf-8") as file:
            file.write(json.dumps(record) + "\n")

    def _fault(self, work: Work, error: Exception) -> None:
        frame = traceback.extract_tb(error.__traceback__)[-1]
        self._note(work, repr(error)[:200], f"{type(error).__name__} {frame.filename[-40:]}:{frame.lineno}")

    def _note(self, work: Work, text: str, kind: str) -> None:
        self.faults[kind] += 1
        if self.faults[kind] <= 2:
            with (self.folder / "faults.txt").open("a", encoding="utf-8") as file:
                file.write(json.dumps({"fault": text, "kind": kind, "work": work}) + "\n")

    def one(self) -> None:
        """Make a work and try it: rather from one that runs the line of a mutant that lives."""
        aim = self.chance.choice([*self.living.values()])
        here = self.at_place.get(aim.place, []) if self.chance.random() < 0.85 else []
        others = here if here and self.chance.random() < 0.4 else self.seeds
        work = self.chance.choice(here or self.seeds)
        made = spliced(work, others, self.chance)
        if made and made != work:
            self.take(made)

    def told(self) -> str:
        """Return how far it has come, in a line."""
        return (
            f"{self.tries} tries, {self.read} read, {self.worked} worked, {self.shown} shown; "
            f"{self.found} works found, {len(self.living)} live; faults {dict(self.faults)}"
        )


def choose(folder: Path, count: int, seed: int) -> None:
    """Write down which fresh mutants live in all agreed works."""
    chosen, _ = sample("plan", count, seed)
    known = equivalents()
    aims = [aim for aim in (aim_at(mutant) for mutant in chosen if mutant.name not in known) if aim]
    bench = Bench(aims)
    chance = random.Random(seed)
    written = [lines for kind in KINDS for lines in works(kind).values()]
    chance.shuffle(written)
    living, shown = {aim.mutant.name: aim for aim in aims}, Counter[str]()
    for lines in written:
        reading, formerly = read_project(as_file(lines)), FORMERLY in lines
        if reading.project is None:
            continue
        rows, ran = bench.plain(reading, formerly)
        for aim in [each for each in living.values() if each.place in ran and rows is not None]:
            name = aim.mutant.name
            if shown[name] < MOST_WORKS:
                shown[name] += 1
                if bench.tells(aim, reading, formerly, rows or []):
                    del living[name]
    with (folder / "aims.txt").open("a", encoding="utf-8") as file:
        for name in living:
            file.write(json.dumps([name, "LIVED"]) + "\n")
    print(f"{len(chosen)} mutants, {len(aims)} can be put in place and are not known to do the same: {len(living)} live")


def left(folder: Path, only: Path | None) -> list[Mutant]:
    """List the mutants that still live."""
    lived = verdicts_of(folder / "aims.txt")
    judged = verdicts_of(only)
    rows = (folder / "found.txt").read_text(encoding="utf-8").splitlines() if (folder / "found.txt").exists() else []
    told = {name for row in rows for name in json.loads(row)["mutants"]}
    known = equivalents()
    return made_anew([name for name in lived if judged.get(name, "LIVED") == "LIVED" and name not in told and name not in known])


def search(folder: Path, mutants: list[Mutant], minutes: float, seed: int, *, at_once: bool) -> None:
    """Search for a while; `at_once`: without a look at what is written down elsewhere than among the agreed works."""
    aims = [aim for aim in map(aim_at, mutants) if aim]
    hunt = Search(folder, aims, random.Random(seed))
    begun = said = time.monotonic()
    agreed = {tuple(lines) for kind in KINDS for lines in works(kind).values()}
    for work in seeds():
        if at_once or work in agreed:
            hunt.told_by(work, known=True)
            hunt.seeds.append(work)
        else:
            hunt.take(work)
    print(f"{len(hunt.seeds)} seeds in {time.monotonic() - begun:.0f} s: {hunt.told()}", flush=True)
    while time.monotonic() - begun < minutes * 60 and hunt.living:
        hunt.one()
        if time.monotonic() - said > 60:
            said = time.monotonic()
            print(hunt.told(), flush=True)
    print(hunt.told())


def main() -> None:
    """Choose, search or tell."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("folder", type=Path)
    parser.add_argument("--aim", type=int, metavar="COUNT")
    parser.add_argument("--only", type=Path, metavar="FILE")
    parser.add_argument("--minutes", type=float, default=20)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--left", action="store_true")
    parser.add_argument("--at-once", action="store_true")
    args = parser.parse_args()
    args.folder.mkdir(exist_ok=True)
    with contextlib.suppress(KeyboardInterrupt):
        if args.aim:
            choose(args.folder, args.aim, args.seed)
        elif args.left:
            for mutant in left(args.folder, args.only):
                print(f"{mutant.module}:{mutant.line}: {mutant.before}  ->  {mutant.after}")
        else:
            search(args.folder, left(args.folder, args.only), args.minutes, args.seed, at_once=args.at_once)


if __name__ == "__main__":
    main()
