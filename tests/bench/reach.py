"""Record which test runs which line, so that a mutant need be shown to those alone.

    python -m tests.bench.reach FILE TEST [TEST ...]
    python -m tests.bench.mutants plan --count 38 --seed 3 --reach FILE

TEST is a file, a folder or anything else that pytest takes; FILE is written in the form of `coverage`. Tests that try
everything there is are left out, and of hypothesis' examples all but a few: they run no other lines. Takes about twice
the time of the tests.
"""

from __future__ import annotations

import argparse
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from coverage import Coverage
from hypothesis import settings

from tests.bench.coverage_floor import EXHAUSTIVE

ROOT = Path(__file__).parents[2]


class Recorder:
    """A plugin of pytest that tells coverage which test is running, with what prepares it."""

    def __init__(self, coverage: Coverage) -> None:
        self._coverage = coverage

    @pytest.hookimpl(wrapper=True)
    def pytest_runtest_protocol(self, item: pytest.Item) -> Iterator[None]:
        self._coverage.switch_context(item.nodeid)
        result = yield
        self._coverage.switch_context("")
        return result


def record(file: Path, tests: list[str]) -> int:
    """Run tests and write which lines of the package each of them runs.

    Returns:
        Pytest's exit code.
    """
    settings.register_profile("short", max_examples=10, deadline=None, derandomize=True)
    settings.load_profile("short")
    coverage = Coverage(data_file=str(file), source=[str(ROOT / "stepper")], config_file=False)
    left_out = " and ".join(f"not {each}" for each in EXHAUSTIVE)
    coverage.start()
    try:
        return int(pytest.main(["-q", "-p", "no:cacheprovider", "-k", left_out, *tests], plugins=[Recorder(coverage)]))
    finally:
        coverage.stop()
        coverage.save()


def main() -> int:
    """Record.

    Returns:
        Pytest's exit code.
    """
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("file", type=Path)
    parser.add_argument("tests", nargs="+", metavar="TEST")
    args = parser.parse_args()
    return record(args.file, args.tests)


if __name__ == "__main__":
    sys.exit(main())
