from __future__ import annotations

from stepper.plan.compile import compile_plan
from stepper.project.reader import read_project
from tests.project.samples import project


def read(work: str, *, sizes: str = "one", size: str = "one") -> str:
    """Return how the line before the only count that differs was read."""
    found = read_project(project(work, sizes=sizes, size=size)).project
    assert found is not None
    (problem,) = compile_plan(found).problems
    return problem.hint.split("\n")[0]


def test_a_round_is_told_stitch_by_stitch() -> None:
    """Each item that changes the count says what it makes of it."""
    assert read("Cast on 54 sts.\nK1, k2tog, k to last 3 sts, ssk, k1. 50 sts.") == (
        "Read as: k1, k2tog (2 to 1), k48, ssk (2 to 1), k1: 54 stitches to 52."
    )


def test_repeats_are_told_once() -> None:
    """Condensed, as they would be printed."""
    assert read("Cast on 12 sts.\n*K2, yo; rep from * to end. 20 sts.") == (
        "Read as: (k2, yo) 6 times (12 to 18): 12 stitches to 18."
    )


def test_like_rounds_are_told_together_and_many_are_left_out() -> None:
    """Nobody reads forty rounds in an error."""
    told = read(
        "Cast on 40 sts.\nJoin in the round.\nDec rnd: K1, k2tog, k to end.\nWork dec rnd every 4th rnd 5 times. 36 sts."
    )
    assert told.startswith(
        "Read as: 3 rounds of knit: 40 stitches; then k1, k2tog (2 to 1), k37: 40 stitches to 39;"
    )
    assert "… 6 more …" in told
    assert told.endswith("k1, k2tog (2 to 1), k33: 36 stitches to 35.")


def test_two_like_rounds_are_told_as_two() -> None:
    """Who looks for the round that is missing has to see how many were read."""
    told = read("Cast on 54 sts.\nKnit 2 rounds. K1, k2tog, k to end. 50 sts.")
    assert told == "Read as: 2 rounds of knit: 54 stitches; then k1, k2tog (2 to 1), k51: 54 stitches to 53."
