"""Stretches of printed pages are worked as they mean, or refused; the table with the meanings stands in `page_stretches`."""

from __future__ import annotations

from tests.plan.page_stretches import PAGES
from tests.plan.test_stretches import assert_as_meant
from tests.tables import assert_all

NOT_READ = 231
"""Stretches of the table that are refused: those that mean something, and those that must be."""


def test_a_stretch_of_a_page_is_worked_as_it_means_or_refused() -> None:
    """Half a sentence changes the other half; what is not sure has to be refused."""
    assert_all(assert_as_meant, PAGES, most_refused=NOT_READ)
