"""Show mutants to tests that are loaded already: the changed function takes the place of the plain one in memory.

Most of the time that a mutant takes is that of loading the package and its tests anew. Here one process does so once; for each
mutant it makes a child, which puts the changed code into the function where it lies and runs the tests. What is changed outside of
functions (a table, a default) or runs while modules are loaded cannot be shown so, and is left to the slower way.
Needs `fork`: Linux or macOS.
"""

from __future__ import annotations

import contextlib
import gc
import json
import os
import resource
import signal
import sys
import time
from collections.abc import Iterable, Iterator
from pathlib import Path
from types import CodeType, FunctionType
from typing import Any, NoReturn

import pytest

NOT_SHOWN = 99
"""Exit code of a child that could not change the code where it lies."""
_FUNCTION = 0x1 | 0x2
"""Flags of code that has its own local names, as a function's has and a class's has not."""


class CannotSwapError(Exception):
    """The change is not inside a function that can be found."""


def plain(code: object) -> tuple[object, ...]:
    """Return what code does, places in the text aside."""
    constants = tuple(
        plain(each) if isinstance(each, CodeType) else (type(each).__name__, repr(each))
        for each in code.co_consts  # type: ignore[attr-defined]
    )
    return code.co_code, code.co_names, constants  # type: ignore[attr-defined]


def changed_functions(old: CodeType, new: CodeType) -> Iterator[tuple[CodeType, CodeType]]:
    """Yield the functions that differ, as they were and as they are.

    Raises:
        CannotSwapError: What differs is not inside of a function.
    """
    if plain(old) == plain(new):
        return
    if old.co_flags & _FUNCTION == _FUNCTION:
        yield old, new
        return
    inner = [[each for each in code.co_consts if isinstance(each, CodeType)] for code in (old, new)]
    others = [
        [repr(each) for each in code.co_consts if not isinstance(each, CodeType)] for code in (old, new)
    ]
    if (old.co_code, old.co_names, others[0], len(inner[0])) != (
        new.co_code,
        new.co_names,
        others[1],
        len(inner[1]),
    ):
        raise CannotSwapError
    for one, other in zip(*inner, strict=True):
        yield from changed_functions(one, other)


def swap(module: str, before: str, after: str) -> None:
    """Change a module that is loaded.

    Raises:
        CannotSwapError: It is not loaded, or what differs is not inside of a function.
    """
    for function, new in swaps(module, before, after):
        function.__code__ = new


def swaps(module: str, before: str, after: str) -> list[tuple[FunctionType, CodeType]]:
    """List the functions of a module that is loaded which a change of its text changes, each with its changed code.

    Raises:
        CannotSwapError: It is not loaded, or what differs is not inside of a function.
    """
    loaded = sys.modules.get(module)
    if loaded is None:
        raise CannotSwapError
    codes = (compile(text, module, "exec", dont_inherit=True) for text in (before, after))
    found = []
    for old, new in list(changed_functions(*codes)):
        function = _function(vars(loaded), old)
        if len(new.co_freevars) != len(old.co_freevars):
            raise CannotSwapError
        found.append((function, new))
    return found


def _function(names: Any, code: CodeType) -> FunctionType:
    """Return the function that has a code, through whatever is wrapped around it."""
    *outer, name = code.co_qualname.split(".")
    try:
        for each in outer:
            names = vars(names[each])
        found = names[name]
    except (KeyError, TypeError):
        raise CannotSwapError from None
    while found is not None:
        if isinstance(found, FunctionType) and plain(found.__code__) == plain(code):
            return found
        inner = (getattr(found, part, None) for part in ("__wrapped__", "__func__", "fget", "func"))
        found = next((each for each in inner if each is not None), None)
    raise CannotSwapError


class LoadedTests:
    """A process that has the tests loaded and shows them mutants, one after the other."""

    def __init__(self, folder: Path, files: Iterable[str], root: Path) -> None:
        """Load.

        Args:
            folder: A copy of the tree.
            files: Every file whose tests may be asked for.
            root: The tree of which what is loaded here is forgotten.
        """
        asks, self._asks = os.pipe()
        self._answers, answers = os.pipe()
        if os.fork() == 0:
            os.close(self._asks)
            _serve(folder, [*files], root, asks, answers)
        os.close(asks)
        os.close(answers)
        self._reader = os.fdopen(self._answers, "rb")

    def run(
        self, module: str, before: str, after: str, tests: Iterable[str], *, cpu_s: float, wall_s: float
    ) -> int:
        """Show a mutant of a module (its path) to some tests.

        Returns:
            Pytest's exit code, -1 where the tests were ended for want of time, `NOT_SHOWN` where the mutant is not for this way.
        """
        ask = [module, before, after, [*tests], cpu_s, wall_s]
        os.write(self._asks, b"%s\n" % json.dumps(ask).encode())
        return int(self._reader.readline())


def enter_copy(folder: Path, root: Path) -> None:
    """Go into a copy of the tree and forget what is loaded of the tree itself; from now on nothing is printed."""
    nowhere = os.open(os.devnull, os.O_RDWR)
    for stream in (0, 1, 2):
        os.dup2(nowhere, stream)
    for name in [each for each in sys.modules if each.split(".")[0] in ("stepper", "tests")]:
        del sys.modules[name]
    sys.path[:] = [str(folder), *(each for each in sys.path if Path(each or ".").resolve() != root)]
    sys.dont_write_bytecode = False
    os.environ["PYTHONPATH"] = str(folder)
    os.environ.pop("PYTHONDONTWRITEBYTECODE", None)
    os.chdir(folder)


def _serve(folder: Path, files: list[str], root: Path, asks: int, answers: int) -> NoReturn:
    words = ["-q", "-x", "-p", "no:cacheprovider", f"--rootdir={folder}"]
    try:
        enter_copy(folder, root)
        pytest.main([*words, "--collect-only", *files])
        gc.freeze()
        with os.fdopen(asks, "rb") as lines:
            for line in lines:
                module, before, after, tests, cpu_s, wall_s = json.loads(line)
                child = os.fork()
                if child == 0:
                    _show(module, before, after, [*words, *tests], cpu_s)
                os.write(answers, b"%d\n" % _awaited(child, wall_s))
    finally:
        os._exit(0)


def _show(module: str, before: str, after: str, words: list[str], cpu_s: float) -> NoReturn:
    code = 70
    try:
        os.setsid()  # so that what a test started can be ended with it
        most = int(cpu_s) + 1
        resource.setrlimit(resource.RLIMIT_CPU, (most, most + 5))
        swap(".".join(Path(module).with_suffix("").parts), before, after)
        code = int(pytest.main(words))
    except CannotSwapError:
        code = NOT_SHOWN
    finally:
        os._exit(code)


def _awaited(child: int, wall_s: float) -> int:
    end = time.monotonic() + wall_s
    while True:
        done, status = os.waitpid(child, os.WNOHANG)
        if done:
            code = os.waitstatus_to_exitcode(status)
            return code if code >= 0 else -1
        if time.monotonic() > end:
            with contextlib.suppress(ProcessLookupError):
                os.killpg(child, signal.SIGKILL)
        time.sleep(0.01)
