"""What a round of a chart uses."""

from __future__ import annotations

from stepper.plan.model import Run
from stepper.plan.stitches.round_sources import ChartRound


def test_edges_and_repeat_are_counted_apart() -> None:
    """A chart with two edge stitches and a lace repeat of eight fits on 8n + 2."""
    repeat = (Run("k", 3, "MC"), Run("yo", 1, "MC"), Run("s2kp", 1, "MC"), Run("yo", 1, "MC"), Run("k", 2, "MC"))
    drawn = ChartRound(before=(Run("k", 1, "MC"),), repeat=repeat, after=(Run("k", 1, "MC"),))
    assert (drawn.uses, drawn.edges) == (8, 2)
