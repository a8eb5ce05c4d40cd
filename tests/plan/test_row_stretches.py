"""A row told stitch by stitch is worked as it means, or refused; the table with the meanings stands in `row_stretches`."""

from __future__ import annotations

from tests.plan.row_stretches import ROWS
from tests.plan.stretches import Stretch
from tests.plan.test_stretches import assert_as_meant
from tests.tables import each_row


@each_row("entry", ROWS)
def test_a_row_is_worked_as_it_means_or_refused(entry: Stretch) -> None:
    """A row has many dresses, and each has to lead to the same stitches; none that means something is refused here."""
    assert assert_as_meant(entry) or not entry.means, "refused"
