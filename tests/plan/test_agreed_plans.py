"""Whole plans are as they were agreed on: every round to the stitch, with its side, needle, markers and all that is told.

The texts in `tests/plan/agreed/` only notice change. What they hold was judged elsewhere: the garments of the corpus and
its sentences round by round against counts worked out by hand (`tests/project/test_corpus.py`), the slipover in every size
(`tests/test_whole_garment.py`), the fixtures and samples by the invariants of a plan and by a second knitter. Where
one differs, the difference is read before it is kept: `STEPPER_WRITE_GOLDENS=1`.

The sentences of `ENTRIES` are those of the corpus that together run each line of `stepper/plan` four times, where so many
do: all of them would take five times as long.
"""

from __future__ import annotations

from collections import defaultdict
from pathlib import Path

import pytest

from tests.agreed import compare, garments, plan_from, plan_lines, plan_of, rows_from, work_lines
from tests.project.corpus_entries import entries
from tests.project.corpus_judge import text_of
from tests.project.wording_patterns import as_file, patterns

AGREED = Path(__file__).parent / "agreed"
ENTRIES = AGREED / "entries.txt"
"""Names of entries of the corpus, one a row."""


def entries_by_kind() -> dict[str, list[str]]:
    """Return the entries of the list by their kind, as `kind-07`."""
    found: dict[str, list[str]] = defaultdict(list)
    for name in ENTRIES.read_text(encoding="utf-8").split("\n"):
        if name:
            found[f"kind-{int(name.partition('-')[0]):02}"].append(name)
    return dict(found)


@pytest.mark.parametrize("garment", garments())
def test_a_garment_is_worked_as_agreed(garment: str) -> None:
    """A round that became another one, or lost its marker or its note, is seen by somebody before it is knitted."""
    plan = plan_of(garment)
    compare(AGREED / f"{garment}.txt", ["refused"] if plan is None else plan_lines(plan))


@pytest.mark.parametrize("kind", entries_by_kind())
def test_sentences_are_worked_as_agreed(kind: str) -> None:
    """What is said with a row, and on which needle and side it is, is looked at nowhere else for all of them."""
    rows = []
    for name in entries_by_kind()[kind]:
        entry = entries()[name]
        text, _ = text_of(entry.before + entry.printed + entry.after, entry.sizes, entry.units, entry.own)
        rows += [f"@ {name}", *rows_from(text)]
    compare(AGREED / f"{kind}.txt", rows)


def test_what_the_handbook_of_wordings_shows_is_worked_as_agreed() -> None:
    """What stands there as an example is the first thing that is tried."""
    rows = []
    for pattern in patterns():
        plan = plan_from(as_file(pattern))
        assert plan is not None, pattern.work
        rows += [f"@ {pattern.work.splitlines()[0]}", *work_lines(plan)]
    compare(AGREED / "wording.txt", rows)


def test_no_text_is_left_over() -> None:
    """A plan nobody works any more must not be kept as if it were agreed on."""
    expected = {*garments(), *entries_by_kind(), "wording", "entries"}
    assert {path.stem for path in AGREED.glob("*.txt")} == expected
