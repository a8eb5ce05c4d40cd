"""Choose the tests that could notice a change of a module: only what imports it can.

The first to run are those of the module's own file. After them come the other test files of its room that import it, by
whatever way, those first that reach the fewest modules: they are quick, and nearest to what is changed. Where it was recorded which
tests run a line (`tests.bench.reach`), just these are chosen, whatever file they are in.
"""

from __future__ import annotations

import ast
from collections import Counter
from functools import lru_cache
from pathlib import Path

from coverage import CoverageData

ROOT = Path(__file__).parents[2]


def mirrored_tests(module: str) -> list[str]:
    """List the test file that mirrors a module; none for a module of records."""
    inner = Path(module).relative_to("stepper")
    path = Path("tests") / inner.parent / f"test_{inner.name}"
    return [path.as_posix()] if (ROOT / path).exists() else []


def other_tests(module: str) -> list[str]:
    """List the other test files of a module's room that import it, nearest first."""
    room = ROOT / "tests" / Path(module).parts[1]
    name = ".".join(Path(module).with_suffix("").parts)
    found = []
    for path in sorted(room.rglob("test_*.py")):
        reached = reached_from(".".join(path.relative_to(ROOT).with_suffix("").parts))
        if name in reached:
            found.append((len(reached), path.relative_to(ROOT).as_posix()))
    return [path for _, path in sorted(found) if path not in mirrored_tests(module)]


def reaching_tests(records: tuple[Path, ...], module: str, line: int) -> list[str]:
    """List the tests that ran a line, as pytest names them: those of the module's own file first, then those that ran least.

    Args:
        records: As `tests.bench.reach` wrote them.
        module: Path from the root of the tree.
        line: From 1.
    """
    by_line, ran = _recorded(records)
    found = {test for test in by_line.get((module, line), ()) if test}
    own = tuple(mirrored_tests(module))
    return sorted(found, key=lambda test: (not test.startswith(own) if own else False, ran[test], test))


def runs_while_loading(records: tuple[Path, ...], module: str, line: int) -> bool:
    """Return whether a line ran while no test did."""
    by_line, _ = _recorded(records)
    return "" in by_line.get((module, line), ())


def holds_files(test: str) -> bool:
    """Return whether a test holds what it makes against files alone, so that nothing it expects was worked out while it was loaded."""
    return "/test_agreed_" in test


def files_recorded(records: tuple[Path, ...]) -> list[str]:
    """List the files of the tests that were recorded."""
    _, ran = _recorded(records)
    return sorted({test.split("::")[0] for test in ran if test})


@lru_cache(maxsize=4)
def _recorded(records: tuple[Path, ...]) -> tuple[dict[tuple[str, int], list[str]], Counter[str]]:
    """Return the tests that ran each line of each module, and how many lines each of them ran."""
    by_line: dict[tuple[str, int], list[str]] = {}
    ran = Counter[str]()
    for record in records:
        data = CoverageData(str(record))
        data.read()
        for measured in data.measured_files():
            module = Path(measured).as_posix()
            module = module[module.index("stepper/") :] if "stepper/" in module else module
            for line, contexts in data.contexts_by_lineno(measured).items():
                by_line.setdefault((module, line), []).extend(contexts)
                ran.update(contexts)
    return by_line, ran


def reached_from(name: str) -> frozenset[str]:
    """Return the modules that are imported where one is, itself among them."""
    reached: set[str] = set()
    todo = [name]
    while todo:
        each = todo.pop()
        if each not in reached:
            reached.add(each)
            todo += imported(each)
    return frozenset(reached)


@lru_cache(maxsize=None)
def imported(name: str) -> frozenset[str]:
    """Return the modules of the house and of its tests that a module imports, inside functions too."""
    path = ROOT.joinpath(*name.split(".")).with_suffix(".py")
    if not path.exists():
        return frozenset()
    found: set[str] = set()
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.ImportFrom) and node.module:
            found |= {node.module, *(f"{node.module}.{each.name}" for each in node.names)}
        elif isinstance(node, ast.Import):
            found |= {each.name for each in node.names}
    return frozenset(each for each in found if each.split(".")[0] in ("stepper", "tests"))
