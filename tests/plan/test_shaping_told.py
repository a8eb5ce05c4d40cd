"""What is told in prose is worked as it means, or refused; the table with the meanings stands in `shaping_told`."""

from __future__ import annotations

from tests.plan.shaping_told import TOLD
from tests.plan.stretches import Stretch
from tests.plan.test_stretches import assert_as_meant, plan_worked
from tests.tables import each_row

REFUSED_THOUGH_MEANT = 0
"""Stretches of the table that mean something and are refused."""


@each_row("entry", TOLD)
def test_what_is_told_is_worked_as_it_means_or_refused(entry: Stretch) -> None:
    """A sentence has many orders of its words, and each has to lead to the same rows."""
    assert_as_meant(entry)


def test_no_more_of_them_are_refused_than_were() -> None:
    """Who refuses everything misreads nothing: most of these stretches are read."""
    refused = [entry.lines for entry in TOLD if entry.means and plan_worked(entry) is None]
    assert len(refused) <= REFUSED_THOUGH_MEANT, refused
