"""What is told in prose is worked as it means, or refused; the table with the meanings stands in `shaping_told`."""

from __future__ import annotations

import pytest

from tests.plan.shaping_told import TOLD
from tests.plan.stretches import Stretch
from tests.plan.test_lookalikes import counts_of, stitches_of, worked_in
from tests.plan.test_stretches import plan_worked

REFUSED_THOUGH_MEANT = 0
"""Stretches of the table that mean something and are refused."""


@pytest.mark.parametrize("entry", TOLD, ids=lambda entry: entry.lines[:60])
def test_what_is_told_is_worked_as_it_means_or_refused(entry: Stretch) -> None:
    """A sentence has many orders of its words, and each has to lead to the same rows."""
    found = plan_worked(entry)
    if found is None:
        return
    _, rows = found
    assert entry.means, "it has to be refused"
    assert [each.after for each in rows] in [counts_of(words) for words in entry.means.split("|")]
    for number, words in entry.rows.items():
        assert worked_in(rows[number - 1]) == stitches_of(words)


def test_no_more_of_them_are_refused_than_were() -> None:
    """Who refuses everything misreads nothing: most of these stretches are read."""
    refused = [entry.lines for entry in TOLD if entry.means and plan_worked(entry) is None]
    assert len(refused) <= REFUSED_THOUGH_MEANT, refused
