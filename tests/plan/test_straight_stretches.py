"""Work without shaping is worked as it means, or refused; the table with the meanings stands in `straight_stretches`."""

from __future__ import annotations

from tests.plan.straight_stretches import STRAIGHT
from tests.plan.stretches import Stretch
from tests.plan.test_stretches import assert_as_meant
from tests.tables import each_row


@each_row("entry", STRAIGHT)
def test_straight_work_is_worked_as_it_means_or_refused(entry: Stretch) -> None:
    """Its phrases stand in any order; what is one word more than they say is another thing."""
    assert_as_meant(entry)
