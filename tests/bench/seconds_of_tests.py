"""Print what tests take of the processor, file by file: in their own process and in those they start and wait for.

    python -m tests.bench.seconds_of_tests [TEST ...] [--most 30]

TEST is a file, a folder or anything else that pytest takes; all tests where none is named. A busy machine makes these seconds
longer by a half at most, where it makes those of a clock as long as it likes. What is started from a process that has
the program loaded (`tests/commands/warm`) is no child of the test and does not count.
"""

from __future__ import annotations

import argparse
import resource
import sys
from collections import Counter
from collections.abc import Iterator

import pytest


def processor_seconds() -> tuple[float, float]:
    """Return the processor time of this process, and of its children that have ended. Unit: s."""
    own, children = (resource.getrusage(who) for who in (resource.RUSAGE_SELF, resource.RUSAGE_CHILDREN))
    return own.ru_utime + own.ru_stime, children.ru_utime + children.ru_stime


class Seconds:
    """A plugin of pytest that adds up what each test takes, with what prepares it."""

    def __init__(self) -> None:
        self.own = Counter[str]()
        self.children = Counter[str]()

    @pytest.hookimpl(wrapper=True, tryfirst=True)
    def pytest_runtest_protocol(self, item: pytest.Item) -> Iterator[None]:
        before = processor_seconds()
        result = yield
        after = processor_seconds()
        self.own[item.nodeid] += after[0] - before[0]
        self.children[item.nodeid] += after[1] - before[1]
        return result


def dearest(own: Counter[str], children: Counter[str], most: int) -> list[str]:
    """List the names that take longest, a row each, and the sum."""
    both = own + children
    rows = [f"{own[name]:8.1f} {children[name]:8.1f}  {name}" for name, _ in both.most_common(most)]
    return [*rows, f"{own.total():8.1f} {children.total():8.1f}  in all ({len(own)}), s"]


def main() -> int:
    """Run tests and print.

    Returns:
        Pytest's exit code.
    """
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("tests", nargs="*", metavar="TEST", default=["tests"])
    parser.add_argument("--most", type=int, default=30, help="rows of each list (30)")
    args = parser.parse_args()
    seconds = Seconds()
    code = int(pytest.main(["-q", "-p", "no:cacheprovider", *args.tests], plugins=[seconds]))
    by_file = [Counter[str](), Counter[str]()]
    for kept, found in zip(by_file, (seconds.own, seconds.children), strict=True):
        for name, taken in found.items():
            kept[name.split("::")[0]] += taken
    print("\n".join(["", *dearest(*by_file, args.most), "", *dearest(seconds.own, seconds.children, args.most)]))
    return code


if __name__ == "__main__":
    sys.exit(main())
