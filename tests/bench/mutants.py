"""Ask whether the tests hold what they promise: change the code at random and see whether a test notices.

    python -m tests.bench.mutants ROOM [ROOM ...] [--count 30] [--seed 1] [--minutes 4]
                                  [--with TEST ...] [--then TEST ...] [--others 5] [--trust] [--results FILE [--again]] [--list]
    python -m tests.bench.mutants --lived FILE [--minutes 4] [--others 5] [--trust]

ROOM is a room or a module: `craft`, `session`, `plan/even/even_placement`, `stepper/plan/even/even_placement.py`. Each mutant differs from
the code in one place: a comparison or a sum turned round, a constant one off, a condition denied, a statement
dropped, two arguments swapped, a result thrown away. The same seed gives the same mutants as long as the code is
the same. A run of several rooms with one budget works them one after the other, each with its share of the time.

The tests that run are those of the module's own file under `tests/`; `--with` adds files that always run (a
fixture's, a whole garment's), and `--then` files that run only for a mutant that all others let live. `--others`
lets so many other test files of the room that import the module have a go at such a mutant, nearest first
(`mutant_tests`), but for tests that try everything there is. `--trust` takes it that the tests pass as they are, which
saves half of the time. `--results` keeps each verdict in a file, so that a run that was broken off goes on where it
was; `--again` judges those that lived anew. `--lived` judges those that lived in such a file once more, wherever their lines
have gone since: a sample is another one as soon as the code is. `--reach` chooses, in place of files, the tests that run the
very line, as `tests.bench.reach` recorded before, in one file or, with the option repeated, in several; with `--loaded` they are
loaded only once, which takes a tenth of the time; a test that works something out while it is loaded does not see a mutant then,
so that what lives is best shown once more by `--lived`. The work tree is never touched: everything happens in a copy in a temporary
folder. Needs `fork`: Linux or macOS.

A mutant is told as
    killed      a test failed, or it never came to an end (four times the processor time that the tests take);
    LIVED       all passed: either a promise is missing, or the two programs do the same;
    equivalent  all passed, and `tests/bench/equivalent_mutants.txt` holds it with the reason why nothing can differ.
Mutants that compile to the same code are not made, nor are those of annotations, docstrings, decorators and the
words of errors. The last line gives the share of those killed among all that are not equivalent.

    python -m tests.bench.mutants craft/pace --count 40 --minutes 4
    python -m tests.bench.mutants plan/even/even_placement --with tests/test_whole_garment.py
    python -m tests.bench.mutants craft plan session store --count 38 --seed 3 --others 5 --trust --minutes 90 --results FILE
"""

from __future__ import annotations

import argparse
import ast
import compileall
import contextlib
import copy
import functools
import importlib
import itertools
import json
import os
import random
import resource
import shutil
import signal
import sys
import tempfile
import time
from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import NoReturn

import pytest

from tests.bench.coverage_floor import EXHAUSTIVE
from tests.bench.mutant_swap import NOT_SHOWN, LoadedTests, enter_copy, plain
from tests.bench.mutant_tests import files_recorded, holds_files, mirrored_tests, other_tests, reaching_tests, runs_while_loading

ROOT = Path(__file__).parents[2]
EQUIVALENT = Path(__file__).with_name("equivalent_mutants.txt")
"""A row each: module, line of code, what is changed in it, what it becomes, and the reason, parted by ` ¦ `."""

PASSED = (0, 5)
"""Pytest's exit codes where no test failed; the second, where none was left to run."""

TRUSTED_S = 30.0
"""Processor time that tests are taken to need which are not timed. Unit: s."""

MOST_REACHING = 80
"""Tests that have a go at a mutant where it is known which of them run its line; the first `NEAREST` of them before the
others."""
NEAREST = 12
FAR = 150
"""Of the tests beyond those, how many at a time are shown a mutant where they are loaded already."""

HEAVY = ("hypothesis", "hypothesis.strategies", "numpy", "scipy.optimize", "scipy.stats", "yaml", "lark", "PIL.Image")
"""Libraries loaded once, before the children are made: each of them would load them anew."""

COMPARISONS: dict[type[ast.cmpop], tuple[type[ast.cmpop], ...]] = {
    ast.Lt: (ast.LtE, ast.GtE),
    ast.LtE: (ast.Lt, ast.Gt),
    ast.Gt: (ast.GtE, ast.LtE),
    ast.GtE: (ast.Gt, ast.Lt),
    ast.Eq: (ast.NotEq,),
    ast.NotEq: (ast.Eq,),
    ast.Is: (ast.IsNot,),
    ast.IsNot: (ast.Is,),
    ast.In: (ast.NotIn,),
    ast.NotIn: (ast.In,),
}
OPERATORS: dict[type[ast.operator], type[ast.operator]] = {
    ast.Add: ast.Sub,
    ast.Sub: ast.Add,
    ast.Mult: ast.Div,
    ast.Div: ast.Mult,
    ast.FloorDiv: ast.Mult,
    ast.Mod: ast.FloorDiv,
    ast.Pow: ast.Mult,
    ast.BitOr: ast.BitAnd,
    ast.BitAnd: ast.BitOr,
}
CALLS = {"min": "max", "max": "min", "any": "all", "all": "any", "floor": "ceil", "ceil": "floor"}


@dataclass(frozen=True, slots=True)
class Mutant:
    """One module with one place changed."""

    module: str
    """Path from the root of the tree."""
    line: int
    code: str
    """That line, without its indentation."""
    before: str
    """What is changed, on one line."""
    after: str
    source: str
    """The whole module, changed."""

    @property
    def name(self) -> str:
        """How the mutant is told, and how it is known again after lines have moved."""
        return f"{self.module} ¦ {self.code} ¦ {self.before} ¦ {self.after}"


def changes_of(node: ast.AST) -> Iterator[ast.AST | None]:
    """Yield every mutant of one node; None stands for a statement dropped."""
    if isinstance(node, ast.Compare):
        for place, operator in enumerate(node.ops):
            for other in COMPARISONS[type(operator)]:
                yield _with(node, ops=[*node.ops[:place], other(), *node.ops[place + 1 :]])
    elif isinstance(node, ast.BinOp | ast.AugAssign) and type(node.op) in OPERATORS:
        yield _with(node, op=OPERATORS[type(node.op)]())
        if isinstance(node, ast.AugAssign):
            yield None
    elif isinstance(node, ast.BoolOp):
        yield _with(node, op=ast.Or() if isinstance(node.op, ast.And) else ast.And())
        for place in range(len(node.values)):
            rest = node.values[:place] + node.values[place + 1 :]
            yield rest[0] if len(rest) == 1 else _with(node, values=rest)
    elif isinstance(node, ast.UnaryOp) and isinstance(node.op, ast.Not | ast.USub):
        yield node.operand
    elif isinstance(node, ast.Constant):
        yield from _constants(node)
    elif isinstance(node, ast.Call):
        yield from _calls(node)
    elif isinstance(node, ast.If | ast.While):
        yield _with(node, test=ast.UnaryOp(op=ast.Not(), operand=node.test))
    elif isinstance(node, ast.IfExp):
        yield _with(node, body=node.orelse, orelse=node.body)
    elif isinstance(node, ast.Return) and node.value is not None:
        if not (isinstance(node.value, ast.Constant) and node.value.value is None):
            yield _with(node, value=None)
    elif isinstance(node, ast.Expr) and not isinstance(node.value, ast.Constant):
        yield None
    elif isinstance(node, ast.Continue):
        yield ast.Break()
    elif isinstance(node, ast.Break):
        yield ast.Continue()
    elif isinstance(node, ast.comprehension) and node.ifs:
        yield _with(node, ifs=[])


def _constants(node: ast.Constant) -> Iterator[ast.AST]:
    if isinstance(node.value, bool):
        yield ast.Constant(not node.value)
    elif isinstance(node.value, int):
        yield ast.Constant(node.value + 1)
        yield ast.Constant(node.value - 1)
    elif isinstance(node.value, float):
        yield ast.Constant(node.value * 1.25 if node.value else 1.0)


def _calls(node: ast.Call) -> Iterator[ast.AST]:
    in_any_order = isinstance(node.func, ast.Name) and node.func.id in ("min", "max")
    if len(node.args) >= 2 and not in_any_order and not any(isinstance(a, ast.Starred) for a in node.args[:2]):
        yield _with(node, args=[node.args[1], node.args[0], *node.args[2:]])
    if isinstance(node.func, ast.Name) and node.func.id in CALLS:
        yield _with(node, func=ast.Name(CALLS[node.func.id], ast.Load()))
    if isinstance(node.func, ast.Attribute) and node.func.attr in CALLS:
        yield _with(node, func=_with(node.func, attr=CALLS[node.func.attr]))


def _with(node: ast.AST, **fields: object) -> ast.AST:
    changed = copy.copy(node)
    for name, value in fields.items():
        setattr(changed, name, value)
    return changed


def mutants_of(module: str, source: str) -> list[Mutant]:
    """List every mutant of a module, from its first line to its last."""
    return [mutant for mutant in candidates_of(module, source) if differs(mutant, source)]


def differs(mutant: Mutant, source: str) -> bool:
    """Return whether a mutant is another program than the code, and one that compiles."""
    return _bytecode(mutant.source) not in (None, _bytecode(source))


def candidates_of(module: str, source: str) -> list[Mutant]:
    """List what may be mutants of a module; whether it is another program is not looked at yet, which takes longer."""
    tree = ast.parse(source)
    starts = [0]
    for line in source.encode().splitlines(keepends=True):
        starts.append(starts[-1] + len(line))
    found = []
    for node in _places(tree):
        for changed in changes_of(node):
            mutant = _mutant(module, source, starts, node, changed)
            if mutant is not None:
                found.append(mutant)
    return found


def _places(node: ast.AST) -> Iterator[ast.AST]:
    """Yield the nodes whose change could matter, in the order of the text."""
    skipped: set[int] = set()
    if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef):
        skipped |= {id(each) for each in (*node.decorator_list, node.returns)}
    if isinstance(node, ast.ClassDef):
        skipped |= {id(each) for each in node.decorator_list}
    # How strict `zip` is and how much a cache holds changes nothing as long as the code is right.
    if isinstance(node, ast.keyword) and node.arg in ("strict", "maxsize"):
        return
    if isinstance(node, ast.AnnAssign | ast.arg):
        skipped.add(id(node.annotation))
    # The words of an error are read by people; positions within a pieced string are not to be relied on.
    if isinstance(node, ast.Raise | ast.JoinedStr | ast.ImportFrom | ast.Import | ast.Assert):
        return
    yield node
    for child in ast.iter_child_nodes(node):
        if id(child) not in skipped:
            yield from _places(child)


def _mutant(
    module: str, source: str, starts: list[int], node: ast.AST, changed: ast.AST | None
) -> Mutant | None:
    if isinstance(node, ast.comprehension):
        # A comprehension's clause has no place of its own in the text: from its target to its last condition.
        first, last = node.target, node.ifs[-1]
        begin = source.encode().rfind(b"for", 0, starts[first.lineno - 1] + first.col_offset)
        if node.is_async:
            return None
    elif isinstance(node, ast.expr | ast.stmt):
        first = last = node
        begin = starts[first.lineno - 1] + first.col_offset
    else:
        return None
    text = source.encode()
    end = starts[(last.end_lineno or last.lineno) - 1] + (last.end_col_offset or 0)
    if isinstance(node, ast.If | ast.While):
        # Only the condition is written anew; the body keeps its lines.
        begin = starts[node.test.lineno - 1] + node.test.col_offset
        end = starts[(node.test.end_lineno or 0) - 1] + (node.test.end_col_offset or 0)
        after = f"not ({ast.unparse(node.test)})"
        before = ast.unparse(node.test)
    else:
        before = ast.unparse(node).strip()
        after = "pass" if changed is None else ast.unparse(changed).strip()
        if isinstance(node, ast.expr):
            after = f"({after})"
    written = text[:begin] + after.encode() + text[end:]
    one_line = " ".join(before.split()), " ".join(after.split())
    code = source.splitlines()[first.lineno - 1].strip()
    return Mutant(module, first.lineno, code, *one_line, written.decode())


@functools.lru_cache(maxsize=256)
def _bytecode(source: str) -> tuple[object, ...] | None:
    """Return what the source does when compiled, places in the text aside; None if it does not compile."""
    try:
        return plain(compile(source, "module", "exec", dont_inherit=True))
    except (SyntaxError, ValueError):
        return None


def modules_of(room: str) -> list[str]:
    """List the modules of a room, or the one module that is named."""
    inner = room.removeprefix("stepper/").removesuffix(".py")
    folder = ROOT / "stepper" / inner
    if folder.is_dir():
        paths = sorted(path for path in folder.rglob("*.py") if path.name != "__init__.py")
    else:
        paths = [folder.with_suffix(".py")]
    return [path.relative_to(ROOT).as_posix() for path in paths]


class Tree:
    """A copy of the working tree in a temporary folder, one module of which is changed at a time."""

    def __init__(self, folder: Path) -> None:
        self._folder = folder
        self._mutants = 0
        self._loaded: LoadedTests | None = None
        hidden = shutil.ignore_patterns("__pycache__", ".*", "*.egg-info")
        for name in ("stepper", "tests", "sample_projects", "pyproject.toml", "README.md", "DEVELOPERS.md"):
            source = ROOT / name
            if source.is_dir():
                shutil.copytree(source, folder / name, ignore=hidden)
            elif source.exists():
                shutil.copy(source, folder / name)
        # Each child loads nearly the whole package; only the one module that is changed is compiled by it.
        compileall.compile_dir(folder / "stepper", quiet=1)

    def load(self, files: Iterable[str]) -> None:
        """Load tests once for all mutants that can be shown to loaded ones."""
        self._loaded = LoadedTests(self._folder, files, ROOT)

    def show(self, mutant: Mutant, tests: list[str]) -> str:
        """Return "killed" or "LIVED" by tests that are loaded, with a mutant in place of what is loaded; else nothing."""
        if self._loaded is None or not tests:
            return ""
        before = (self._folder / mutant.module).read_text(encoding="utf-8")
        code = self._loaded.run(mutant.module, before, mutant.source, tests, cpu_s=TRUSTED_S, wall_s=10 * TRUSTED_S)
        return "" if code == NOT_SHOWN else "LIVED" if code in PASSED else "killed"

    def run(self, tests: Iterable[str], *, cpu_s: float, wall_s: float, short: bool = False) -> tuple[int, float]:
        """Run tests in a child of their own; `short` leaves out those that try everything there is.

        Returns:
            Pytest's exit code, or -1 where they were ended for want of time; and the processor time they took. Unit: s.
        """
        begin = time.monotonic()
        child = os.fork()
        if child == 0:
            self._test([*tests], int(cpu_s) + 1, short)
        while True:
            done, status, used = os.wait4(child, os.WNOHANG)
            if done:
                code = os.waitstatus_to_exitcode(status)
                return code if code >= 0 else -1, used.ru_utime + used.ru_stime
            if time.monotonic() - begin > wall_s:
                os.killpg(child, signal.SIGKILL)
            time.sleep(0.02)

    def _test(self, tests: list[str], cpu_s: int, short: bool) -> NoReturn:
        """Become a child that runs tests in the copy and ends. What is loaded of the work tree is forgotten first."""
        code = 70
        try:
            os.setsid()  # so that what a test started can be ended with it
            resource.setrlimit(resource.RLIMIT_CPU, (cpu_s, cpu_s + 5))
            enter_copy(self._folder, ROOT)
            words = ["-q", "-x", "-p", "no:cacheprovider", f"--rootdir={self._folder}"]
            if short:
                words += ["-k", " and ".join(f"not {each}" for each in EXHAUSTIVE)]
            code = int(pytest.main([*words, *tests]))
        finally:
            os._exit(code)

    def changed(self, mutant: Mutant, work: Callable[[], int]) -> int:
        """Do some work while a mutant stands in place of its module."""
        path = self._folder / mutant.module
        plain = path.read_text(encoding="utf-8")
        written = path.stat().st_mtime
        path.write_text(mutant.source, encoding="utf-8")
        # What is compiled is known by the source's length and by its time in whole seconds: two mutants may agree in both.
        self._mutants += 1
        os.utime(path, (written + 10 * self._mutants,) * 2)
        try:
            return work()
        finally:
            path.write_text(plain, encoding="utf-8")
            os.utime(path, (written,) * 2)


def equivalents() -> dict[str, str]:
    """Return the reason why a mutant does the same as the code, by the mutant's name."""
    found = {}
    if EQUIVALENT.exists():
        for line in EQUIVALENT.read_text(encoding="utf-8").splitlines():
            name, _, reason = line.rpartition(" ¦ ")
            if name and not line.startswith("#"):
                found[name] = reason
    return found


@dataclass
class Score:
    """What became of the mutants so far."""

    killed: int = 0
    lived: int = 0
    equivalent: int = 0

    def add(self, verdict: str) -> None:
        """Count one more."""
        self.killed += verdict == "killed"
        self.lived += verdict == "LIVED"
        self.equivalent += verdict == "equivalent"

    def __str__(self) -> str:
        """Return the score in one line."""
        judged = self.killed + self.lived
        share = f", {self.killed / judged:.0%} of those that are not equivalent" if judged else ""
        return f"{self.killed} killed, {self.lived} lived, {self.equivalent} equivalent{share}"


def verdicts_of(path: Path | None) -> dict[str, str]:
    """Return what was judged in earlier runs, by the mutant's name."""
    if path is None or not path.exists():
        return {}
    return dict(json.loads(line) for line in path.read_text(encoding="utf-8").splitlines())


def sample(room: str, count: int, seed: int) -> tuple[list[Mutant], int]:
    """Choose mutants of a room at random; and tell among how many places and changes."""
    sources = {module: (ROOT / module).read_text(encoding="utf-8") for module in modules_of(room)}
    every = [mutant for module, source in sources.items() for mutant in candidates_of(module, source)]
    random.Random(seed).shuffle(every)
    made = (mutant for mutant in every if differs(mutant, sources[mutant.module]))
    return list(itertools.islice(made, count)), len(every)


def lived_in(path: Path) -> list[Mutant]:
    """List the mutants that lived in an earlier run and can still be made, known by their line and change."""
    wanted = [name for name, verdict in verdicts_of(path).items() if verdict == "LIVED"]
    found: list[Mutant] = []
    for module in dict.fromkeys(name.split(" ¦ ")[0] for name in wanted):
        if not (ROOT / module).exists():
            print(f"  {module} is gone")
            continue
        source = (ROOT / module).read_text(encoding="utf-8")
        made = {mutant.name: mutant for mutant in candidates_of(module, source)}
        found += [made[name] for name in wanted if name in made and differs(made[name], source)]
    print(f"{len(found)} of {len(wanted)} that lived can still be made", flush=True)
    return found


def work_room(room: str, args: argparse.Namespace, tree: Tree, until: float, judged: dict[str, str]) -> Score:
    """Judge the mutants of one room until they or the time run out."""
    chosen, of = sample(room, args.count, args.seed)
    print(f"{room}: {len(chosen)} mutants of {of} places and changes, seed {args.seed}", flush=True)
    return judge_all(room, chosen, args, tree, until, judged)


def judge_all(
    room: str, chosen: list[Mutant], args: argparse.Namespace, tree: Tree, until: float, judged: dict[str, str]
) -> Score:
    """Judge mutants one after the other until they or the time run out."""
    known = equivalents()
    times: dict[str, float | None] = {}
    score = Score()
    for number, mutant in enumerate(chosen):
        verdict = judged.get(mutant.name, "")
        if not verdict or (args.again and verdict == "LIVED"):
            if time.monotonic() > until:
                print(f"  the time is up: {len(chosen) - number} mutants were not looked at")
                break
            verdict = _judge(mutant, args, tree, times)
            if verdict and args.results:
                with args.results.open("a", encoding="utf-8") as file:
                    file.write(json.dumps([mutant.name, verdict]) + "\n")
        if not verdict:
            print(f"  {mutant.module}: its tests fail as they are, or there are none; give some by --with")
            continue
        if verdict == "LIVED" and mutant.name in known:
            verdict = "equivalent"
        score.add(verdict)
        print(f"  {verdict:10} {mutant.module}:{mutant.line}: {mutant.before}  ->  {mutant.after}", flush=True)
    print(f"{room}: {score}", flush=True)
    return score


def _judge(mutant: Mutant, args: argparse.Namespace, tree: Tree, times: dict[str, float | None]) -> str:
    """Return "killed" or "LIVED"; nothing where the tests say nothing, as they fail without the mutant."""
    others = other_tests(mutant.module)[: args.others]
    own = [*mirrored_tests(mutant.module), *args.always]
    tried, far = False, []
    if args.reach:
        reaching = reaching_tests(tuple(args.reach), mutant.module, mutant.line)
        own, others = (reaching[:NEAREST], reaching[NEAREST:MOST_REACHING]) if reaching else (own, others)
        far = reaching[MOST_REACHING:]
    agreed = [test for test in far if holds_files(test)]
    if args.loaded and runs_while_loading(tuple(args.reach), mutant.module, mutant.line):
        # Most tests may have worked out what they expect without the mutant; these expect what a file says.
        verdict = tree.show(mutant, [test for test in (*own, *others, *far) if holds_files(test)])
        if verdict == "killed":
            return "killed"
        agreed = [] if verdict else agreed
    elif args.loaded:
        verdict = tree.show(mutant, own)
        if verdict == "LIVED":
            verdict = tree.show(mutant, others) or verdict
        # All the others that run the line are many where nearly every garment runs it.
        for begin in range(0, len(far), FAR):
            if verdict == "LIVED":
                verdict = tree.show(mutant, far[begin : begin + FAR]) or verdict
        if verdict:
            return verdict
    for tests, short in ((own, False), (others + agreed, True), (args.then, False)):
        key = " ".join(tests)
        if args.trust:
            times[key] = TRUSTED_S if tests else None
        elif key not in times:
            code, seconds = tree.run(tests, cpu_s=600, wall_s=1800, short=short) if tests else (1, 0.0)
            times[key] = seconds if code == 0 else None
        usual = times[key]
        if usual is not None:
            tried = True
            most = max(10.0, 4 * usual)
            work = functools.partial(tree.run, tests, cpu_s=most, wall_s=10 * most, short=short)
            if tree.changed(mutant, lambda work=work: work()[0]) not in PASSED:
                return "killed"
    return "LIVED" if tried else ""


def main() -> None:
    """Print what became of every mutant."""
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("rooms", nargs="*", metavar="ROOM")
    parser.add_argument("--count", type=int, default=30, help="mutants a room (30)")
    parser.add_argument("--seed", type=int, default=1, help="which mutants (1)")
    parser.add_argument("--minutes", type=float, default=4, help="time for all rooms together (4)")
    parser.add_argument("--with", dest="always", action="append", default=[], metavar="TEST")
    parser.add_argument("--then", action="append", default=[], metavar="TEST")
    parser.add_argument("--others", type=int, default=0, help="then so many of the room's other files of tests")
    parser.add_argument("--trust", action="store_true", help="the tests are known to pass as they are")
    parser.add_argument("--results", type=Path, help="a file of verdicts, read and written on")
    parser.add_argument("--again", action="store_true", help="judge anew what lived")
    parser.add_argument("--lived", type=Path, help="judge once more what lived in a file of verdicts, in place of rooms")
    parser.add_argument(
        "--reach",
        type=Path,
        action="append",
        default=[],
        help="what `tests.bench.reach` recorded, in one file or in several: choose the tests that run the line",
    )
    parser.add_argument(
        "--loaded",
        action="store_true",
        help="with --reach: load those tests once, and go the slower way only for what cannot be shown to them",
    )
    parser.add_argument("--list", action="store_true", help="list the mutants and try none")
    args = parser.parse_args()
    if args.list:
        for room in args.rooms:
            for module in modules_of(room):
                for mutant in mutants_of(module, (ROOT / module).read_text(encoding="utf-8")):
                    print(mutant.name)
        return
    for library in HEAVY:
        with contextlib.suppress(ImportError):
            importlib.import_module(library)
    judged, scores = verdicts_of(args.results), []
    with tempfile.TemporaryDirectory(prefix="mutants-") as folder:
        tree = Tree(Path(folder))
        if args.loaded:
            tree.load(files_recorded(tuple(args.reach)))
        end = time.monotonic() + 60 * args.minutes
        if args.lived:
            scores.append(judge_all("those that lived", lived_in(args.lived), args, tree, end, judged))
        for number, room in enumerate(args.rooms):
            left = (end - time.monotonic()) / (len(args.rooms) - number)
            scores.append(work_room(room, args, tree, time.monotonic() + left, judged))
    total = Score(
        sum(each.killed for each in scores),
        sum(each.lived for each in scores),
        sum(each.equivalent for each in scores),
    )
    print(total)


if __name__ == "__main__":
    main()
