from __future__ import annotations

import pytest

from stepper.voice.moonshine import decided


def test_a_likely_phrase_clear_of_the_next_is_taken() -> None:
    """Five below the transcript, ten above the runner-up, few letters apart: taken."""
    heard = decided([(-10.0, "next step"), (-20.0, "go back")], "next stop", -5.0)
    assert heard is not None
    assert heard.text == "next step"


@pytest.mark.parametrize(
    ("ranked", "transcript", "likely"),
    [
        ([], "next step", -1.0),
        ([(-20.0, "next step"), (-40.0, "go back")], "next stop", -5.0),
        ([(-10.0, "next step"), (-11.0, "go back")], "next stop", -5.0),
        ([(-10.0, "next step"), (-20.0, "go back")], "who would", -5.0),
    ],
    ids=["nothing known", "unlikely", "not clear of the next", "too far from the transcript"],
)
def test_a_doubtful_phrase_is_left(ranked: list[tuple[float, str]], transcript: str, likely: float) -> None:
    """Each of the conditions alone refuses."""
    assert decided(ranked, transcript, likely) is None
