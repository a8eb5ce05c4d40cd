"""What another voice orders is worked as it means, or refused; the table with the meanings stands in `voiced_stretches`."""

from __future__ import annotations

from tests.plan.stretches import Stretch
from tests.plan.test_stretches import assert_as_meant
from tests.plan.voiced_stretches import VOICED
from tests.tables import each_row


@each_row("entry", VOICED)
def test_what_is_ordered_is_worked_as_it_means_or_refused(entry: Stretch) -> None:
    """A sentence that only tells what lies there makes rows nobody wanted, if it is taken for an order."""
    assert assert_as_meant(entry) or not entry.means, "refused"
