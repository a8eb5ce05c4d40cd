"""What is broken off goes on as it means, or is refused; the table with the meanings stands in `interrupted_stretches`."""

from __future__ import annotations

from tests.plan.interrupted_stretches import INTERRUPTED
from tests.plan.stretches import Stretch
from tests.plan.test_stretches import assert_as_meant
from tests.tables import each_row


@each_row("entry", INTERRUPTED)
def test_what_is_broken_off_goes_on_as_it_means_or_is_refused(entry: Stretch) -> None:
    """What goes on behind a break is what the knitter had before it, and nobody sees in the rows that it was another."""
    assert assert_as_meant(entry) == bool(entry.means), "all that means something is read"
