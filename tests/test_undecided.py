"""Conditions that have no say in any test are found: each kind of them, and none that has."""

from __future__ import annotations

from collections import Counter

import pytest

from tests.bench import undecided_record
from tests.bench.undecided import noting, undecided

MODULE = """
from __future__ import annotations

def f(a, b, rows):
    if a and b > 2:
        return [row for row in rows if row]
    return 1 if a or b else 0
"""


@pytest.fixture(autouse=True)
def _fresh(monkeypatch: pytest.MonkeyPatch) -> None:
    """Begin without notes."""
    monkeypatch.setattr(undecided_record, "SEEN", Counter())


def told(*calls: tuple[object, object, list[int]]) -> list[str]:
    """Return what is told of the module after some calls."""
    written, places = noting("m.py", MODULE)
    space: dict[str, object] = {}
    exec(compile(written, "m.py", "exec"), space)
    for call in calls:
        space["f"](*call)  # type: ignore[operator]
    return [what for _, what in undecided(places, undecided_record.SEEN)]


def test_what_no_test_runs_is_told() -> None:
    """It holds no promise at all."""
    assert all(line.startswith("never ") for line in told())
    assert len(told()) == 6


def test_a_part_without_a_say_is_told() -> None:
    """`a` is true each time, so that `b > 2` alone decides; 2 itself is never tried, and no row is left out."""
    found = told((1, 3, [5]), (1, 1, []))
    assert "no say      a  in  a and b > 2" in found
    assert "no say      b > 2  in  a and b > 2" not in found
    assert "never same  b > 2" in found
    assert "one way     for … if row" in found
    assert "one way     1 if a or b else 0" in found


def test_what_decides_each_way_is_not_told() -> None:
    """Both parts of the first condition are once the only one that is false."""
    assert told((1, 3, [5, 0]), (1, 2, []), (0, 3, []), (0, 0, []), (1, 0, [])) == []


def test_a_part_that_only_guards_the_next_has_a_say() -> None:
    """Without it the next could not be asked."""
    assert undecided_record.chain("m.py:1:0", True, True, lambda: None, lambda: len(None)) is None  # type: ignore[arg-type]
    assert undecided_record.SEEN["m.py:1:0", "0"] == 1
