"""Records of stripes."""

from __future__ import annotations

from stepper.project.problems import Span
from stepper.project.stripes.striping import StripesCalled


def test_a_sequence_repeats_over_all_its_rounds() -> None:
    """Two rounds and one are three."""
    called = StripesCalled("stripes", ((2, "MC"), (1, "CC")), Span(line=1, column=1))
    assert called.rounds == 3
