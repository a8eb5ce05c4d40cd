"""Lists of sizes in the dress of printed pages. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import recast


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("CO 74, (80, 86) sts.", "CO 74 (80, 86) sts."),
        ("Work even until piece measures 9'', (9.5'', 10'').", 'Work even until piece measures 9 (9.5, 10) ".'),
        ("CO [74, 80, 86] sts.", "CO 74 (80, 86) sts."),
        ("K7/8/9, p2, k to end.", "K7 (8, 9), p2, k to end."),
        ("Knit 4 rounds [96 (102, 108) sts].", "Knit 4 rounds. 96 (102, 108) sts."),
        ("Stitch count: 74 (80, 86).", "74 (80, 86) sts."),
        ("There will be 74 sts on your needle.", "74 sts."),
    ],
)
def test_a_list_is_the_same_list_in_every_bracket(printed: str, words: str) -> None:
    """Which number is for which size does not hang on a comma."""
    assert " ".join(recast(made_plain(printed)).text.split()) == words


@pytest.mark.parametrize("printed", ["K2, (5), k4.", "K2/3, p1."])
def test_what_may_be_no_list_stays_as_it_is(printed: str) -> None:
    """One number in brackets may be a remark, and two with a stroke a cable."""
    assert recast(made_plain(printed)).text == printed
