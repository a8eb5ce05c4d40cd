"""Stretches of printed pages are worked as they mean, or refused; the table with the meanings stands in `page_stretches`."""

from __future__ import annotations

import pytest

from tests.plan.page_stretches import PAGES
from tests.plan.stretches import Stretch
from tests.plan.test_stretches import assert_as_meant, plan_worked

NOT_READ = 231
"""Stretches of the table that are refused: those that mean something, and those that must be."""


@pytest.mark.parametrize("entry", PAGES, ids=lambda entry: entry.lines[:60])
def test_a_stretch_of_a_page_is_worked_as_it_means_or_refused(entry: Stretch) -> None:
    """Half a sentence changes the other half; what is not sure has to be refused."""
    assert_as_meant(entry)


def test_no_more_of_the_page_are_refused_than_were() -> None:
    """Who refuses everything misreads nothing."""
    assert sum(plan_worked(entry) is None for entry in PAGES) <= NOT_READ
