"""Rounds between stars. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.starred_rounds import write_starred_rounds


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("*Knit 1 rnd, purl 1 rnd; rep from * 3 times more.", "Knit 1 rnd. Purl 1 rnd. Rep last 2 rounds 3 times more."),
        ("(Knit 1 rnd, purl 2 rnds) 3 times.", "Knit 1 rnd. Purl 2 rnds. Rep last 3 rounds 3 times in all."),
        ("*Knit 1 round, purl 1 round*, work from *-* 3 times in total.", "Knit 1 round. Purl 1 round. Rep last 2 rounds 3 times in total."),
        ("*With B, knit 1 rnd, then 1 rnd in rib; rep from * once.", "With B, knit 1 rnd. Work 1 rnd in rib. Rep last 2 rounds once."),
    ],
)  # fmt: skip
def test_rounds_between_stars_become_rounds_and_a_repeat(printed: str, read: str) -> None:
    """Two rounds that are starred are no stitches of one round."""
    assert write_starred_rounds(as_printed(printed)).text == read


@pytest.mark.parametrize(
    "printed",
    [
        "*Knit 1 (2) rnds, purl 1 rnd; rep from * 3 times more.",
        "*Knit 1 rnd, k2tog to end; rep from * 3 times more.",
        "*K2, p2; rep from * to end.",
        "*Knit 1 rnd, purl 1 rnd; rep from * to end.",
        "*Knit 1 rnd, purl 1 rnd; rep from * 3 times, ending with a knit rnd.",
    ],
)
def test_what_is_no_known_number_of_rounds_stays_as_it_is(printed: str) -> None:
    """How many rounds are the last ones must not be guessed."""
    assert write_starred_rounds(as_printed(printed)).text == printed


def test_each_letter_keeps_its_printed_place() -> None:
    """A problem in the second round is shown where that round is printed."""
    printed = "*Knit 1 rnd, purl 1 rnd; rep from * once."
    made = write_starred_rounds(as_printed(printed))
    assert len(made.places) == len(made.text) + 1
    assert made.places[made.text.index("Purl")] == printed.index("purl")
