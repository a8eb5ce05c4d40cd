from __future__ import annotations

from dataclasses import FrozenInstanceError

import pytest

from stepper.session.events import Counted, Event, Noted
from stepper.session.state import Position
from tests.playbook import AT


@pytest.mark.parametrize(("stitches", "agrees"), [(225, True), (246, True), (235, False), (0, False)])
def test_a_count_agrees_here_or_at_the_end_of_the_round(stitches: int, agrees: bool) -> None:
    """Whoever counts in a shaped round may have finished it already."""
    counted = Counted(at=AT, place=Position(index=3), stitches=stitches, expected=225, expected_end=246)

    assert counted.agrees is agrees


def test_what_happened_cannot_be_changed() -> None:
    """Events are history."""
    event: Event = Noted(at=AT, place=Position(), text="tight")
    with pytest.raises(FrozenInstanceError):
        event.at = "earlier"  # type: ignore[misc] # the point of the test
