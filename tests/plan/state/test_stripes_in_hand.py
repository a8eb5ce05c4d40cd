"""Which round of a stripe sequence comes next."""

from __future__ import annotations

from stepper.plan.state.stripes_in_hand import StripesInHand


def test_the_sequence_begins_again_behind_its_last_round() -> None:
    """Source: what "repeat the sequence" means; common practice."""
    stripes = StripesInHand(name="stripes", yarns=("MC", "MC", "CC"), next=1)
    worked = []
    for _ in range(5):
        worked.append(stripes.yarn)
        stripes.step()
    assert worked == ["MC", "CC", "MC", "MC", "CC"]
    assert (stripes.last, stripes.yarn) == ("CC", "MC")
