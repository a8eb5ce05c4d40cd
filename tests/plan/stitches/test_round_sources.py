"""What a round of a chart uses."""

from __future__ import annotations

from stepper.plan.model import Run
from stepper.plan.stitches.round_sources import ChartRound


def test_edges_and_repeat_are_counted_apart() -> None:
    """A chart with two edge stitches and a lace repeat of eight fits on 8n + 2."""
    repeat = (
        Run("k", 3, "MC"),
        Run("yo", 1, "MC"),
        Run("s2kp", 1, "MC"),
        Run("yo", 1, "MC"),
        Run("k", 2, "MC"),
    )
    drawn = ChartRound(before=(Run("k", 1, "MC"),), repeat=repeat, after=(Run("k", 1, "MC"),))
    assert (drawn.uses, drawn.edges) == (8, 2)


def test_a_chart_fits_where_whole_repeats_and_its_edges_fill_the_stitches() -> None:
    """Every small chart on every small count: repeats are laid one by one until no more has room."""
    for before in range(3):
        for width in range(4):
            for count in range(12):
                drawn = ChartRound(
                    before=(Run("k", 1, "MC"),) * before,
                    repeat=(Run("p", width, "MC"),) * (width > 0),
                    after=(),
                )
                times, reached = 0, before
                while width and reached + width <= count:
                    times, reached = times + 1, reached + width
                assert (drawn.times(count), drawn.fits(count)) == (times, reached == count)
                beside = [reached, reached + width] if width else [reached]
                assert drawn.near(count) == [each for each in beside if each > 0]
