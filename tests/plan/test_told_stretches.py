"""Stretches told in prose are worked as they mean, or refused; the table with the meanings stands in `told_stretches`."""

from __future__ import annotations

import pytest

from tests.plan.stretches import Stretch
from tests.plan.test_stretches import assert_as_meant, plan_worked
from tests.plan.told_stretches import TOLD

NOT_READ = 106
"""Stretches of the table that are refused: those that mean something, and those that must be."""


@pytest.mark.parametrize("entry", TOLD, ids=lambda entry: entry.lines[:60])
def test_a_stretch_told_in_prose_is_worked_as_it_means_or_refused(entry: Stretch) -> None:
    """What was done, may be done or is done elsewhere is no order; what is done now is one in any voice."""
    assert_as_meant(entry)


def test_no_more_of_prose_are_refused_than_were() -> None:
    """Who refuses everything misreads nothing."""
    assert sum(plan_worked(entry) is None for entry in TOLD) <= NOT_READ
