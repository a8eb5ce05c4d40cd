"""Pieces wait, part and come together as they mean, or are refused; the table with the meanings stands in `piece_stretches`."""

from __future__ import annotations

from tests.plan.piece_stretches import PIECE_STRETCHES
from tests.plan.stretches import Stretch
from tests.plan.test_stretches import assert_as_meant, plan_worked
from tests.tables import each_row

NOT_READ = 17
"""Stretches of the table that are refused, each of which must be."""


@each_row("entry", PIECE_STRETCHES)
def test_pieces_are_worked_as_they_mean_or_refused(entry: Stretch) -> None:
    """Who waits, where stitches are picked up and what is mirrored changes every row behind it."""
    assert_as_meant(entry)


def test_no_more_of_the_pieces_are_refused_than_must_be() -> None:
    """Who refuses everything misreads nothing."""
    assert sum(plan_worked(entry) is None for entry in PIECE_STRETCHES) <= NOT_READ
