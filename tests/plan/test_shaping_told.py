"""What is told in prose is worked as it means, or refused; the table with the meanings stands in `shaping_told`."""

from __future__ import annotations

from tests.plan.shaping_told import TOLD
from tests.plan.stretches import Stretch
from tests.plan.test_stretches import assert_as_meant
from tests.tables import each_row


@each_row("entry", TOLD)
def test_what_is_told_is_worked_as_it_means_or_refused(entry: Stretch) -> None:
    """A sentence has many orders of its words, and each has to lead to the same rows."""
    assert assert_as_meant(entry) or not entry.means, "refused"
