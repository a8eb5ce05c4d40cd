"""A change spread evenly, told in prose. Source: common practice."""

from __future__ import annotations

import pytest

from tests.project.rewording.told.test_sentences import written


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Knit 1 round where 8 sts are increased evenly = 96 sts.", "Knit 1 round, increase 8 sts evenly. 96 sts."),
        ("On the next round increase 8 sts evenly spaced.", "Increase 8 sts evenly."),
        ("Knit 2 (4, 6) rounds, resolving double stitches, and on the last of these decrease 4 sts evenly spaced.", "Knit 2 (4, 6) rounds, decrease 4 sts evenly on last round."),
        ("Knit one round and increase evenly to 100 sts.", "Knit 1 round, increase evenly to 100 sts."),
        ("Purl 1 row on the WS and decrease 8 sts spread evenly over the row.", "Next row (WS): Purl, decrease 8 sts evenly."),
        ("K across, inc 8 sts evenly spaced = 68 sts.", "Knit 1 row, increase 8 sts evenly. 68 sts."),
        ("Knit around, evenly decreasing 6 sts", "Knit 1 round, decrease 6 sts evenly"),
        ("Rib to end, inc 4 sts evenly.", "Work 1 row in rib, increase 4 sts evenly."),
        ("K 1 rnd, increasing to 66 sts.", "Knit 1 rnd, increase evenly to 66 sts."),
        ("Decrease 18 sts, as evenly as you can, in a knit round.", "Knit 1 round, decrease 18 sts evenly."),
        ("Knit 1 rnd at the same time as it is decreased 24 sts evenly.", "Knit 1 rnd, decrease 24 sts evenly."),
        ("With MC, knit 2 rnds, then on the next rnd dec 4 sts evenly.", "With MC, knit 2 rnds. Knit 1 round, decrease 4 sts evenly."),
        ("Knit 12 rounds, decreasing 3 sts, evenly spaced, in the last.", "Knit 12 rounds, decrease 3 sts evenly on last round."),
        ("Knit 2 rnds, decreasing 4 sts evenly in second rnd.", "Knit 2 rnds, decrease 4 sts evenly on last round."),
    ],
)  # fmt: skip
def test_an_even_change_is_one_of_the_rounds(printed: str, words: str) -> None:
    """Which one is said, or there is only one."""
    assert written(printed) == words


@pytest.mark.parametrize(
    "printed",
    [
        "Knit 3 rounds and decrease 4 sts evenly.",
        "Knit 4 rounds, decreasing 4 sts evenly in second round.",
        "Knit 1 round, increasing 4 sts evenly on each needle.",
        "K across back, inc 4 sts evenly.",
        "K around 5 times, inc 4 sts evenly.",
        "Increase to 80 sts evenly over next 3 rnds.",
    ],
)
def test_a_round_that_is_not_said_is_left_to_others(printed: str) -> None:
    """The sentence stays as it is printed."""
    assert written(printed) == printed
