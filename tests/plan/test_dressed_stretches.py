"""Stretches in other dress are worked as they mean, or refused; the table with the meanings stands in `dressed_stretches`."""

from __future__ import annotations

from tests.plan.dressed_stretches import DRESSED
from tests.plan.test_stretches import assert_as_meant
from tests.tables import assert_all

NOT_READ = 113
"""Stretches of the table that are refused: 86 that mean something, and 27 that must be."""


def test_a_stretch_in_other_dress_is_worked_as_it_means_or_refused() -> None:
    """The same words mean another thing beside others; what is not sure has to be refused."""
    assert_all(assert_as_meant, DRESSED, most_refused=NOT_READ)
