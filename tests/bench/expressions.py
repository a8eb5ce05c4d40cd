"""Compile every expression of the house and keep what it compiles to, what it demands and how it begins, for all processes that are started after.

    python -m tests.bench.expressions

Each would compile those that it asks: three workers of the tests, the processes they start, and the look at what
tests reach. CI does so once before them.
"""

from __future__ import annotations

import gc
import importlib
import pkgutil

import stepper
from stepper.project.reading.first_letters import KEPT_LETTERS
from stepper.project.rewording.beginnings import ByLetter
from stepper.project.rewording.demands import KEPT_DEMANDS, find_demands
from stepper.project.rewording.synonym import Synonym
from stepper.regex import EXPRESSIONS, WORDINGS, regex


def main() -> None:
    """Ask each expression that a module holds, and each row of the tables."""
    for each in pkgutil.walk_packages(stepper.__path__, "stepper."):
        if not each.name.endswith("__main__"):
            importlib.import_module(each.name)
    late = [each for each in gc.get_objects() if type(each) is type(regex(""))]
    rows = [each for each in gc.get_objects() if type(each) is Synonym]
    for each in late:
        each.search("")
    for forms in [each for each in gc.get_objects() if type(each) is ByLetter]:
        forms.at("a", 0)
    for row in rows:
        row.pattern.search("")
        find_demands(row.expression)
    for kept in (EXPRESSIONS, WORDINGS, KEPT_DEMANDS, KEPT_LETTERS):
        kept.keep(least=1)
    print(f"{len(late)} expressions and {len(rows)} rows")


if __name__ == "__main__":
    main()
