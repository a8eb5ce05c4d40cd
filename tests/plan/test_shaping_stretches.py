"""Shaping is worked as it means, or refused; the table with the meanings stands in `shaping_stretches`."""

from __future__ import annotations

from tests.plan.shaping_stretches import SHAPING
from tests.plan.stretches import Stretch
from tests.plan.test_stretches import assert_as_meant
from tests.tables import each_row


@each_row("entry", SHAPING)
def test_shaping_is_worked_as_it_means_or_refused(entry: Stretch) -> None:
    """Two shapings one after the other for two at once make another garment, and nobody sees it before it is sewn."""
    assert assert_as_meant(entry) or not entry.means, "refused"
