"""On which rows a shaping falls. Source: common practice, "every 8th round" is seven plain rounds and the shaped one."""

from __future__ import annotations

import pytest

from tests.plan.test_compile import faults, plan_of
from tests.project.corpus_judge import text_of, worked
from tests.project.samples import project

ROUND = "Cast on 40 sts.\nJoin in the round.\nDec rnd: K1, k2tog, k to last 3 sts, ssk, k1.\n"


def counts(line: str) -> list[int]:
    """Return the stitches after every round behind the one written out."""
    return [round_.after for round_ in plan_of(project(f"{ROUND}{line}\nBind off.")).rounds[2:-1]]


@pytest.mark.parametrize(
    ("line", "rows"),
    [
        ("Rep dec rnd every 4th rnd until 34 sts rem.", [38, 38, 38, 36, 36, 36, 36, 34]),
        ("Rep dec rnd every rnd to 32 sts.", [36, 34, 32]),
        ("Rep dec rnd every other rnd once, then every rnd until 30 sts rem.", [38, 36, 34, 32, 30]),
        ("Rep dec rnd on next 2 rnds, then every 3rd rnd once.", [36, 34, 34, 34, 32]),
        # 30 rounds to 10 cm would be 6 to 2 cm; here 28 rounds to 10 cm, 5.6, so 6 as well.
        ("Rep dec rnd every 2 cm twice more.", [38, 38, 38, 38, 38, 36, 36, 36, 36, 36, 36, 34]),
    ],
)
def test_every_interval_lasts_as_long_as_it_says(line: str, rows: list[int]) -> None:
    """A count ends an interval where it is reached, a length is turned into rounds by the gauge."""
    assert counts(line) == rows


def test_a_count_that_is_never_reached_is_told_at_once() -> None:
    """Two stitches a time from 38 pass 35; nobody wants to find that out on the needles."""
    told = faults(project(f"{ROUND}Rep dec rnd every 4th rnd until 35 sts rem.\nBind off."))
    assert "never leaves 35 stitches" in told


def test_a_count_on_the_other_side_is_told() -> None:
    """Decreasing does not lead to more stitches."""
    told = faults(project(f"{ROUND}Rep dec rnd every 4th rnd until 50 sts.\nBind off."))
    assert "never leaves 50 stitches" in told


# --- rows of a side where the work goes in rounds -----------------------------------------------------


def told_of_sides(*lines: str) -> list[str]:
    """Work lines; give what is told of sides."""
    text, _ = text_of(list(lines), 1, "cm")
    (plan,), problems = worked(text, 1)
    assert problems == ()
    return [caution.text for caution in plan.warnings if "right side" in caution.text]


AROUND = ("CO 24 sts. Join in the round.", "Knit 1 round.")


@pytest.mark.parametrize(
    ("line", "often"),
    [
        ("Dec 1 st at each end of every RS row 2 times.", "the RS rows of this line, worked around, are taken as every other round"),
        ("Dec 1 st at each end of every other RS row 2 times.", "the RS rows of this line, worked around, are taken as every 4th round"),
    ],
)  # fmt: skip
def test_it_is_told_what_is_taken(line: str, often: str) -> None:
    """In rows every second row shows the right side; in the round every round does: common practice."""
    (said,) = told_of_sides(*AROUND, line)
    assert often in said


def test_it_is_told_once() -> None:
    """The second line is meant as the first."""
    line = "Dec 1 st at each end of every RS row once."
    assert len(told_of_sides(*AROUND, line, line)) == 1


def test_nothing_is_told_in_rows_or_of_rounds() -> None:
    """There the words say what is meant."""
    assert (
        told_of_sides("CO 24 sts. Work flat.", "Knit 2 rows.", "Dec 1 st at each end of every RS row 2 times.") == []
    )
    assert told_of_sides(*AROUND, "Dec 1 st at each end of every other round 2 times.") == []
