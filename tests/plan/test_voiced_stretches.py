"""What another voice orders is worked as it means, or refused; the table with the meanings stands in `voiced_stretches`."""

from __future__ import annotations

from tests.plan.stretches import Stretch
from tests.plan.test_lookalikes import counts_of, stitches_of, worked_in
from tests.plan.test_stretches import plan_worked
from tests.plan.voiced_stretches import VOICED
from tests.tables import each_row

REFUSED_THOUGH_MEANT = 0
"""Stretches of the table that mean something and are refused."""


@each_row("entry", VOICED)
def test_what_is_ordered_is_worked_as_it_means_or_refused(entry: Stretch) -> None:
    """A sentence that only tells what lies there makes rows nobody wanted, if it is taken for an order."""
    found = plan_worked(entry)
    if found is None:
        return
    plan, rows = found
    assert entry.means, "it has to be refused"
    assert [each.after for each in rows] in [counts_of(words) for words in entry.means.split("|")]
    for number, words in entry.rows.items():
        assert worked_in(rows[number - 1]) == stitches_of(words)
    if entry.needles:
        told = [word.split("*") for word in entry.needles.split()]
        assert [each.needle_mm for each in rows] == [
            float(mm) for mm, times in told for _ in range(int(times))
        ]
    if entry.held:
        assert sum(plan.rounds[-1].held.values()) == int(entry.held)


def test_no_more_of_them_are_refused_than_were() -> None:
    """Who refuses everything misreads nothing: most of these stretches are read."""
    refused = [entry.lines for entry in VOICED if entry.means and plan_worked(entry) is None]
    assert len(refused) <= REFUSED_THOUGH_MEANT, refused
