"""Short forms of patterns as written today. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import recast


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Work Chart A, starting with rnd 1.", "Work Chart A."),
        ("K across back to marker, turn.", "K to marker, turn."),
        ("Rep raglan dec every rnd 5 times.", "Rep raglan dec rnd every rnd 5 times."),
        ("Row 1: K to 10 sts before end, turn, MDS.", "Row 1: K to 10 sts before end, turn, make DS."),
    ],
)
def test_a_short_form_says_what_it_stands_for(printed: str, words: str) -> None:
    """A name, a place and a turn in short are the same name, place and turn."""
    assert " ".join(recast(made_plain(printed)).text.split()) == words


@pytest.mark.parametrize(
    "printed",
    [
        "Work Chart A, starting with rnd 5.",
        "Place sts between markers on waste yarn.",
    ],
)
def test_what_means_something_else_stays(printed: str) -> None:
    """A chart from its fifth row: nothing to pass over."""
    assert recast(made_plain(printed)).text == made_plain(printed)
