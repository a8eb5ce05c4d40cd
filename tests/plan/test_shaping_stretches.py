"""Shaping is worked as it means, or refused; the table with the meanings stands in `shaping_stretches`."""

from __future__ import annotations

from tests.plan.shaping_stretches import SHAPING
from tests.plan.stretches import Stretch
from tests.plan.test_lookalikes import counts_of, stitches_of, worked_in
from tests.plan.test_stretches import plan_worked
from tests.tables import each_row

REFUSED_THOUGH_MEANT = 0
"""Stretches of the table that mean something and are refused."""


@each_row("entry", SHAPING)
def test_shaping_is_worked_as_it_means_or_refused(entry: Stretch) -> None:
    """Two shapings one after the other for two at once make another garment, and nobody sees it before it is sewn."""
    found = plan_worked(entry)
    if found is None:
        return
    _, rows = found
    assert entry.means, "it has to be refused"
    assert [each.after for each in rows] in [counts_of(words) for words in entry.means.split("|")]
    for number, words in entry.rows.items():
        assert worked_in(rows[number - 1]) == stitches_of(words)


def test_no_more_of_them_are_refused_than_were() -> None:
    """Who refuses everything misreads nothing: most of these stretches are read."""
    refused = [entry.lines for entry in SHAPING if entry.means and plan_worked(entry) is None]
    assert len(refused) <= REFUSED_THOUGH_MEANT, refused
