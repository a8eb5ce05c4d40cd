"""What a single working along the needle is called."""

from __future__ import annotations

from stepper.craft.rows import row_word


def test_turned_knitting_has_rows_and_a_ring_has_rounds() -> None:
    """Common practice."""
    assert [row_word(flat) for flat in (True, False)] == ["row", "round"]
