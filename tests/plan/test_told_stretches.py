"""Stretches told in prose are worked as they mean, or refused; the table with the meanings stands in `told_stretches`."""

from __future__ import annotations

from tests.plan.test_stretches import assert_as_meant
from tests.plan.told_stretches import TOLD
from tests.tables import assert_all

NOT_READ = 106
"""Stretches of the table that are refused: those that mean something, and those that must be."""


def test_a_stretch_told_in_prose_is_worked_as_it_means_or_refused() -> None:
    """What was done, may be done or is done elsewhere is no order; what is done now is one in any voice."""
    assert_all(assert_as_meant, TOLD, most_refused=NOT_READ)
