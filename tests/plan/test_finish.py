"""Places of shaping, derived from the runs."""

from __future__ import annotations

from stepper.plan.finish import shaping_places
from stepper.plan.model import Run


def test_shaping_is_placed_by_the_stitches_used_before_it() -> None:
    """Stitches of the old round, as a knitter counts them on the left needle."""
    runs = (Run("k", 5, "MC"), Run("m1", 1, "MC"), Run("k", 4, "MC"), Run("k2tog", 2, "MC"), Run("k", 1, "MC"))
    assert shaping_places(runs) == (5, 9, 11)
