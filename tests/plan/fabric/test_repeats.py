"""Repeats of columns, read off a row of letters by hand."""

from __future__ import annotations

import time

import pytest

from stepper.plan.fabric.columns import fill_columns
from stepper.plan.fabric.repeats import first_repeat_of, repeat_of
from tests.plan.fabric.test_columns import columns


@pytest.mark.parametrize(
    ("row", "longest", "shortest"),
    [
        ("kkppkkppkkpp", "kkpp", "kkpp"),
        ("kkkkkppkkkkkppkkkkkpp", "kkkkkpp", "k"),  # five alike are part of a broad rib, or one more is a sixth
        ("kpkpkp", "kp", "kp"),
        ("kkkk", "k", "k"),
        ("kkpkk", "k", ""),
        ("kp", "", ""),
        ("", "", ""),
    ],
)  # fmt: skip
def test_what_columns_repeat(row: str, longest: str, shortest: str) -> None:
    """The one that holds longest at an edge; away from the edges the shortest of three."""
    assert repeat_of(columns(row)) == columns(longest)
    assert first_repeat_of(columns(row)) == columns(shortest)


def test_what_is_not_known_ends_the_columns() -> None:
    """Behind a new column nothing is told."""
    assert repeat_of([*columns("kpkp"), None, *columns("kk")]) == columns("kp")


def test_a_needle_full_of_new_columns_is_filled_at_once() -> None:
    """Each continues the repeat beside it; ten thousand of one column took seconds, each tried at every width."""
    begun = time.process_time()
    assert fill_columns([*columns("kk"), *[None] * 9_998], [0, 10_000], 1) == [*columns("k")] * 10_000
    assert time.process_time() - begun < 2.0
