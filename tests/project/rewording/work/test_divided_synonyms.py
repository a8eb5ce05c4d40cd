"""Other wordings where a piece is divided. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import recast


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Slip the left front 44 sts to a holder.", "hold 44 sts for left front."),
        ("With WS facing, join yarn to front sts and p to end.", "With WS facing, take up front sts. p to end."),
        ("Go back to the held 40 front sts, k to end.", "take up 40 front sts. k to end."),
        ("Cont until left front matches right front to shoulder, finishing with a knit row.",
         "Cont until left front measures same as right front to shoulder. ends with a knit row."),
    ],
)  # fmt: skip
def test_the_other_part_is_taken_up(printed: str, words: str) -> None:
    """Numbers, names and sides are those of the page."""
    assert " ".join(recast(made_plain(printed)).text.replace(" .", ".").split()) == words


@pytest.mark.parametrize(
    "printed",
    ["Work on these sts only twice.", "Return to row 3.", "Place the front 44 sts in moss st."],
)
def test_what_says_more_stays(printed: str) -> None:
    """How often, and where, would have to be guessed."""
    assert recast(made_plain(printed)).text == made_plain(printed)


@pytest.mark.parametrize("heading", ["SLEEVES (two)", "Sleeves (2)", "SLEEVE [both alike]", "Sleeves (worked alike)", "SLEEVES (both the same)"])  # fmt: skip
def test_a_heading_that_says_how_many_makes_them(heading: str) -> None:
    """The second sleeve was never knitted where only its number stood in brackets."""
    assert recast(made_plain(heading)).text == "make again 1."
