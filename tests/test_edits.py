"""Edits between two sittings never move her in silence to a place that is not hers."""

from __future__ import annotations

from tests.bench.edits import run
from tests.edits import Edited, plan_of, wrong_in_silence

EDITS = 24
"""Edits here; `python -m tests.bench.edits` makes 1,000."""


def test_random_edits_carry_the_place_or_ask() -> None:
    """Renamed, moved, put in, taken out, other counts and sizes: what is knitted fits the place, or she is
    asked."""
    found, wrong = run(EDITS, seed=14)

    assert wrong == []
    assert sum(counts["sure"] for counts in found.values()) > EDITS


def test_the_judge_sees_what_is_left_out_and_what_comes_again() -> None:
    """A judge that finds nothing is none: one round ahead, one round back, and another count."""
    text = (
        "title: Tube\nsizes: 1\nyarn: {MC: {name: chalk}}\n"
        "gauge: {plain: {needle: 4 mm, stitches: 20, rounds: 28}}\n"
        "sections:\n  - name: tube\n    gauge: plain\n    yarn: MC\n    work: |\n"
        "      Cast on 20 sts.\n      Join in the round.\n      Knit 1 round.\n      Purl 1 round.\n"
        "      *K1, p1; rep from * to end.\n      Increase evenly to 24 sts.\n      Bind off.\n"
    )
    old, new = plan_of(text), plan_of(text.replace("      Knit 1 round.\n", ""))
    assert old is not None
    assert new is not None
    origin = {at: at if at < 12 else at + 1 for at in range(1, 17)}
    shorter = Edited("delete a line", new, origin)

    assert wrong_in_silence(old, shorter, 3, 2) == ""
    assert "left out" in wrong_in_silence(old, shorter, 3, 3)
    assert "comes again" in wrong_in_silence(old, shorter, 3, 1)
    assert "wanted" in wrong_in_silence(old, shorter, 3, 4)
