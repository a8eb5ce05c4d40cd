"""List the conditions of a room that have no say in any test: what a mutant may change there and nobody notices.

    python -m tests.bench.undecided ROOM TEST [TEST ...]

ROOM is a folder of `stepper`, as `plan`; TEST is anything that pytest takes. In a copy of the tree each condition notes what comes
of it; all mutants of a room are looked at in one run of the tests, which takes two to three times as long as without. Told are
    no say     a part of `and` or `or` without which the outcome was always the same;
    one way    a condition of `if`, or of a comprehension, that was always true or always false;
    never same a comparison whose sides were never equal, so that `<` and `<=` are the same;
    never      what no test ran.
Such a place is a promise that is missing, a guard that nothing can make true, or what the type checker asks for.
Parts that call more than is known to be pure are not asked twice, so a few places stay untold. Tests that try everything there
is are left out, and of hypothesis' examples all but a few: what they alone decide is decided by chance.
"""

from __future__ import annotations

import ast
import json
import os
import shutil
import subprocess
import sys
import tempfile
from collections import Counter
from pathlib import Path

from tests.bench.coverage_floor import EXHAUSTIVE
from tests.bench.undecided_record import FILE

ROOT = Path(__file__).parents[2]
COPIED = ("stepper", "tests", "sample_projects", "docs", "pyproject.toml", "README.md", "DEVELOPERS.md")
SIGNS: dict[type[ast.cmpop], str] = {ast.Lt: "<", ast.LtE: "<=", ast.Gt: ">", ast.GtE: ">="}
PURE = frozenset(
    "len isinstance any all set max min bool abs tuple sum range list enumerate zip sorted pairwise stitch flatten runs_written "
    "lower casefold startswith endswith search match values items keys get strip split index count".split()
)
"""Functions by name that may be called once more without changing anything."""
NO_SAY = ("''", "0", "()")
"""What stands at the end of an `or` for nothing."""
RECORDER = "from tests.bench.undecided_record import branch as __branch__, chain as __chain__, compare as __compare__"


class Notes(ast.NodeTransformer):
    """Writes the conditions of a module anew, so that each notes what comes of it."""

    def __init__(self, module: str) -> None:
        self._module = module
        self._inside = 0
        self.places: dict[str, list[str]] = {}
        """What stands at each place: its kind, its text and its parts."""

    def visit_FunctionDef(self, node: ast.FunctionDef) -> ast.AST:
        """Only what runs when a function is called is of interest."""
        self._inside += 1
        node.body = [self.visit(statement) for statement in node.body]
        self._inside -= 1
        return node

    def visit_JoinedStr(self, node: ast.JoinedStr) -> ast.AST:
        """Leave texts alone."""
        return node

    def visit_Raise(self, node: ast.Raise) -> ast.AST:
        """Leave errors alone."""
        return node

    def visit_Assert(self, node: ast.Assert) -> ast.AST:
        """Leave what is asserted alone."""
        return node

    def visit_BoolOp(self, node: ast.BoolOp) -> ast.AST:
        """Note which part has a say."""
        if not self._inside or any(isinstance(each, ast.NamedExpr) for each in ast.walk(node)):
            return node
        key = self._key(node, "part", ast.unparse(node), *map(ast.unparse, node.values))
        pure = ast.Constant(all(map(_is_pure, node.values[1:])))
        none = ast.arguments([], [], None, [], [], None, [])
        parts: list[ast.expr] = [ast.Lambda(none, self.visit(value)) for value in node.values]
        return _call("__chain__", key, ast.Constant(isinstance(node.op, ast.And)), pure, *parts)

    def visit_Compare(self, node: ast.Compare) -> ast.AST:
        """Note whether both sides were the same."""
        sign = SIGNS.get(type(node.ops[0])) if len(node.ops) == 1 else None
        if not self._inside or sign is None:
            return self.generic_visit(node)
        key = self._key(node, "same", ast.unparse(node))
        self.generic_visit(node)
        return _call("__compare__", key, ast.Constant(sign), node.left, node.comparators[0])

    def visit_If(self, node: ast.If) -> ast.AST:
        """Note which way it goes."""
        key = self._key(node, "way", f"if {ast.unparse(node.test)}")
        self.generic_visit(node)
        node.test = _call("__branch__", key, node.test)
        return node

    def visit_IfExp(self, node: ast.IfExp) -> ast.AST:
        """Note which way it goes."""
        if not self._inside:
            return node
        key = self._key(node, "way", ast.unparse(node))
        self.generic_visit(node)
        node.test = _call("__branch__", key, node.test)
        return node

    def visit_comprehension(self, node: ast.comprehension) -> ast.AST:
        """Note whether anything is left out, and anything kept."""
        if not self._inside:
            return node
        keys = [self._key(each, "way", f"for … if {ast.unparse(each)}") for each in node.ifs]
        self.generic_visit(node)
        node.ifs = [_call("__branch__", key, each) for key, each in zip(keys, node.ifs, strict=True)]
        return node

    def _key(self, node: ast.expr | ast.stmt, kind: str, *texts: str) -> ast.expr:
        key = f"{self._module}:{node.lineno}:{len(self.places)}"
        self.places[key] = [kind, *texts]
        return ast.Constant(key)


def _call(name: str, *args: ast.expr) -> ast.expr:
    return ast.Call(ast.Name(name, ast.Load()), [*args], [])


def _is_pure(node: ast.expr) -> bool:
    called = [each.func for each in ast.walk(node) if isinstance(each, ast.Call)]
    names = (each.id if isinstance(each, ast.Name) else getattr(each, "attr", "") for each in called)
    return all(name in PURE for name in names)


def noting(module: str, source: str) -> tuple[str, dict[str, list[str]]]:
    """Return a module that notes what comes of its conditions, and what stands at each place."""
    notes = Notes(module)
    tree = notes.visit(ast.parse(source))
    heads = [at for at, each in enumerate(tree.body) if getattr(each, "module", "") == "__future__"]
    at = heads[-1] + 1 if heads else int(bool(tree.body) and isinstance(tree.body[0], ast.Expr))
    tree.body.insert(at, ast.parse(RECORDER).body[0])
    return ast.unparse(ast.fix_missing_locations(tree)), notes.places


def undecided(places: dict[str, list[str]], seen: Counter[tuple[str, str]]) -> list[tuple[str, str]]:
    """List the places that have no say, with what is to be told."""
    found = []
    for key, (kind, text, *parts) in places.items():
        ways = [seen[key, "True"], seen[key, "False"]]
        if not (any(ways) if kind == "way" else seen[key, "all"]):
            found.append((key, f"never       {text}"))
        elif kind == "way" and not all(ways):
            found.append((key, f"one way     {text}"))
        elif kind == "same" and not seen[key, "same"]:
            found.append((key, f"never same  {text}"))
        else:
            silent = [
                part
                for at, part in enumerate(parts)
                if not seen[key, str(at)] and part not in NO_SAY
            ]
            found += [(key, f"no say      {part}  in  {text}") for part in silent]
    return found


def ways(places: dict[str, list[str]]) -> list[tuple[str, str]]:
    """List each way that a condition may go: where it stands, and what is noted when it went that way."""
    found = []
    for key, (kind, _, *parts) in places.items():
        if kind == "way":
            found += [(key, "True"), (key, "False")]
        elif kind == "same":
            found.append((key, "same"))
        else:
            found += [(key, str(at)) for at, part in enumerate(parts) if part not in NO_SAY]
    return found


def copied(tree: Path, room: str) -> dict[str, list[str]]:
    """Copy the house to a folder, with a room whose conditions note what comes of them; return what stands at each place."""
    tree.mkdir(parents=True)
    for name in COPIED:
        if (ROOT / name).is_dir():
            shutil.copytree(ROOT / name, tree / name, ignore=shutil.ignore_patterns("__pycache__"))
        else:
            shutil.copy(ROOT / name, tree / name)
    places: dict[str, list[str]] = {}
    for path in sorted((tree / "stepper" / room).rglob("*.py")):
        written, found = noting(path.relative_to(tree).as_posix(), path.read_text(encoding="utf-8"))
        path.write_text(written, encoding="utf-8")
        places |= found
    return places


def noted(tree: Path, tests: list[str]) -> Counter[tuple[str, str]]:
    """Run tests in a copy; return what came of the conditions, and how often."""
    seen: Counter[tuple[str, str]] = Counter()
    with tempfile.TemporaryDirectory(prefix="undecided-") as folder:
        env = {**os.environ, FILE: f"{folder}/notes", "PYTHONPATH": str(tree)}
        left_out = " and ".join(f"not {each}" for each in EXHAUSTIVE)
        options = ["-q", "-p", "no:cacheprovider", "--hypothesis-profile=short", "-k", left_out]
        command = [sys.executable, "-m", "pytest", *options, *tests]
        subprocess.run(command, cwd=tree, env=env, check=False)
        for notes in Path(folder).glob("notes.*"):
            for key, what, count in json.loads(notes.read_text(encoding="utf-8")):
                seen[key, what] += count
    return seen


def main() -> None:
    """Print the places."""
    room, tests = sys.argv[1], sys.argv[2:]
    with tempfile.TemporaryDirectory(prefix="undecided-") as folder:
        places = copied(Path(folder) / "tree", room)
        seen = noted(Path(folder) / "tree", tests)
    told = undecided(places, seen)
    for key, what in told:
        print(f"{key.rpartition(':')[0]:55} {what}")
    every = ways(places)
    print(f"{len(told)} of {len(places)} conditions")
    print(f"{sum(not seen[way] for way in every)} of {len(every)} ways")


if __name__ == "__main__":
    main()
