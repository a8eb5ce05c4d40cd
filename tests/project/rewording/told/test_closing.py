"""Pieces that are bound off together, told in prose. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from tests.project.rewording.told.test_sentences import written


@pytest.mark.parametrize(
    "printed",
    [
        "RS together, 3-needle BO each shoulder.",
        "With RS together, work a three-needle bind-off across both shoulders.",
        "Place the shoulder sts on two needles and bind off front and back together.",
        "Join the front and back shoulders using the 3-needle bind-off method, wrong sides held together.",
    ],
)
def test_two_pieces_are_bound_off_with_a_third_needle(printed: str) -> None:
    """How they are held and which they are is only said."""
    assert written(printed) == "Bind off with a three-needle bind-off."


@pytest.mark.parametrize(
    "printed",
    [
        "Bind off the shoulders.",
        "Knit 2 together across the shoulders.",
        "With RS together, sew the shoulders.",
        "Work a three-needle bind-off over 20 sts, then knit to end.",
        "Divide the sts over three needles and bind off.",
    ],
)
def test_other_closings_stay_as_printed(printed: str) -> None:
    """Without two pieces and a third needle, something else is meant."""
    assert written(printed) == printed
