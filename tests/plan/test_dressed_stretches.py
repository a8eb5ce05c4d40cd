"""Stretches in other dress are worked as they mean, or refused; the table with the meanings stands in `dressed_stretches`."""

from __future__ import annotations

import pytest

from tests.plan.dressed_stretches import DRESSED
from tests.plan.stretches import Stretch
from tests.plan.test_stretches import assert_as_meant, plan_worked

NOT_READ = 113
"""Stretches of the table that are refused: 86 that mean something, and 27 that must be."""


@pytest.mark.parametrize("entry", DRESSED, ids=lambda entry: entry.lines[:60])
def test_a_stretch_in_other_dress_is_worked_as_it_means_or_refused(entry: Stretch) -> None:
    """The same words mean another thing beside others; what is not sure has to be refused."""
    assert_as_meant(entry)


def test_no_more_in_other_dress_are_refused_than_were() -> None:
    """Who refuses everything misreads nothing."""
    assert sum(plan_worked(entry) is None for entry in DRESSED) <= NOT_READ
