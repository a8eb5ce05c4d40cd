"""Parts, sections and rows are worked again as they mean, or refused; the table with the meanings is `reference_stretches`."""

from __future__ import annotations

from tests.plan.reference_stretches import REFERENCE_STRETCHES
from tests.plan.stretches import Stretch
from tests.plan.test_stretches import assert_as_meant
from tests.tables import each_row


@each_row("entry", REFERENCE_STRETCHES)
def test_what_is_worked_again_is_what_the_words_mean(entry: Stretch) -> None:
    """All that means something is read, and every row of it is the one meant."""
    assert assert_as_meant(entry) == bool(entry.means)
