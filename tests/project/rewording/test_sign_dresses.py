"""A line that is read must be read alike in the signs of another designer: a small sample of `python -m tests.bench.redressed`.

What a line says in the new dress is held against the rows that the corpus has for it, worked out by hand.
"""

from __future__ import annotations

import random
from functools import partial

import pytest

from tests.bench.redressed import in_dress
from tests.project.corpus_entries import entries
from tests.project.corpus_judge import judge
from tests.project.rewording.sign_dresses import MANNERS, Manner, of_kind, put_on

KINDS = tuple(dict.fromkeys(manner.kind for manner in MANNERS))
LEAST = {"joints": 0.8, "fractions": 0.7}
"""Least share that must be read of a kind of manners; of the others nine in ten."""


def _drawn(kind: str, manner: str, name: str) -> float:
    """Return the number by which an entry is drawn for a manner."""
    return random.Random(f"{kind} {manner} {name}").random()


def sample(kind: str, each: int = 2) -> list[tuple[str, Manner]]:
    """Draw entries for every manner of a kind, always the same."""
    drawn = []
    for manner in of_kind(kind):
        # "R1" is neither a row nor a round, so nothing is told of a row that is taken as a round.
        names = [
            name
            for name, one in entries().items()
            if one.meanings[0] != ["refuse"] and (one.told or "") != "taken as a round"
        ]
        # Each name by a number of its own, so that an entry more leaves the others where they are.
        names.sort(key=partial(_drawn, kind, manner.name))
        fitting = (name for name in names if in_dress(entries()[name], manner) is not None)
        drawn += [(name, manner) for name, _ in zip(fitting, range(each), strict=False)]
    return drawn


@pytest.mark.parametrize("kind", KINDS)
def test_a_line_in_other_signs_is_read_alike_or_refused(kind: str) -> None:
    """A list read for the wrong size, or a head lost, knits another garment and nothing shows it."""
    judged = [(name, manner.name, judge(dressed)) for name, manner in sample(kind) if (dressed := in_dress(entries()[name], manner))]
    assert [one for one in judged if one[2].outcome not in ("read", "refused")] == []
    read = sum(found.outcome == "read" for _, _, found in judged)
    assert read >= LEAST.get(kind, 0.9) * len(judged), [one for one in judged if one[2].outcome != "read"]


@pytest.mark.parametrize(
    ("line", "kind", "name", "dressed"),
    [
        ("Row 1 (RS): K10 (12, 14), p2.", "lists", "a/b/c", "Row 1 (RS): K10/12/14, p2."),
        ("Work 2 (4) rows.", "lists", "a-b-c", "Work 2 (4) rows."),
        ("Rows 1-4: Knit.", "heads", "1st row:", "1st-4th rows: Knit."),
        ("Rnd 1: Knit.", "heads", "R1:", "Rnd 1: Knit."),
        ("*K2, p2; rep from * to end.", "stars", "*a*, rep between * * to end", "*K2, p2*, rep between * * to end."),
        ("Knit to end. 70 sts.", "counts", " = 70 sts", "Knit to end = 70 sts"),
        ("Work for 5 cm.", "both units", '2" / 5 cm', 'Work for 2" / 5 cm.'),
        ("With A, knit 2 rows.", "print", "all small", "With A, knit 2 rows."),
    ],
)
def test_a_dress_changes_the_signs_alone(line: str, kind: str, name: str, dressed: str) -> None:
    """A manner that changes what a line says would find faults that are none."""
    (manner,) = [one for one in of_kind(kind) if one.name == name]
    assert put_on(line, [manner], 2 if "(4)" in line else 3) == dressed
