"""The search for ways that no test goes: what it makes of a work, and what it counts."""

from __future__ import annotations

import random
from collections import Counter
from pathlib import Path

import pytest

from tests.bench import ways as bench
from tests.bench.undecided import noting, ways
from tests.bench.ways_spliced import MOST_LINES, seeds, shorter, spliced

WORK = ("! sizes 3", "CO 20 sts. Join in the round.", "Knit 3 rounds, then purl 1 round.")


def test_a_condition_has_as_many_ways_as_it_may_go() -> None:
    """Two for a branch, one for each part that may decide, one for two sides that are equal; nothing for an empty end of an `or`."""
    _, places = noting("m.py", "def f(a, b):\n    if a and b > 2:\n        return a or ''\n")
    assert Counter(what for _, what in ways(places)) == Counter(["True", "False", "0", "1", "same", "0"])


def test_a_work_is_spliced_as_the_dice_fall_and_stays_short() -> None:
    """A find is found again by its seed."""
    others = seeds()[:50]
    made = [spliced(WORK, others, random.Random(number)) for number in range(60)]
    assert made == [spliced(WORK, others, random.Random(number)) for number in range(60)]
    assert len(set(made)) > 40
    assert all(len([line for line in work if not line.startswith("!")]) <= MOST_LINES for work in made)


def test_a_find_is_tried_with_each_line_and_each_clause_left_out() -> None:
    """What is read by eye should say no more than it must."""
    tries = [*shorter(WORK)]
    assert tries[:3] == [WORK[1:], (WORK[0], WORK[2]), WORK[:2]]
    assert (*WORK[:2], "Knit 3 rounds.") in tries


def test_what_has_nothing_to_be_worked_on_is_no_find() -> None:
    """A refusal for want of a cast-on goes many ways and teaches nobody anything."""
    with pytest.raises(bench.IdleError):
        bench.tried(("Knit 3 rounds.",))
    assert [plan.rounds[-1].after for plan in bench.tried(("! sizes 2", "CO 20 (24) sts.", "Knit 3 rounds."))] == [20, 24]


def test_a_find_is_kept_as_short_as_it_still_goes_its_way(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """The way here stands for a word, which only one of the lines has."""
    seen: Counter[tuple[str, str]] = Counter()
    monkeypatch.setattr(bench, "SEEN", seen)

    def tried(work: tuple[str, ...], before: object, dice: int) -> list[object]:
        if any("Increase" in line for line in work):
            seen["m.py:1:0", "True"] += 1
        return []

    monkeypatch.setattr(bench, "both", tried)
    hunt = bench.Search(tmp_path, {("m.py:1:0", "True"), ("m.py:2:1", "False")}, random.Random(1))
    hunt.take((*WORK, "Increase evenly to 24 sts."))
    assert hunt.missing == {("m.py:2:1", "False")}
    assert '"work": ["Increase evenly."]' in (tmp_path / "found.txt").read_text(encoding="utf-8")
