"""What stands beside rows and charts. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "read", "said"),
    [
        ("Work Rnds 1-4 of Chart A, joining CC as needed and increasing where indicated.", "Work Rnds 1-4 of Chart A.", "increasing where indicated"),
        ("Work in chart to marker, sm, k1, sm, work in chart to end.", "work next round of chart to marker, sm, k1, sm, work next round of chart to end.", ""),
        ("Continue in chart pattern, repeating Rnds 1-16 as needed, until mitten measures 18 cm.", "work in pattern until mitten measures 18 cm.", "repeating Rnds 1-16 as needed"),
        ("When Chart A is complete, break CC.", "break CC.", "When Chart A is complete"),
        ("Rep rnd 1 until brim measures 4 in for a folded brim or 2 in for a single one.", "Rep rnd 1 until brim measures 4 in.", "for a folded brim or 2 in for a single one"),
        ("These 2 rows set the sts (st st with garter st border at each edge).", "These 2 rows set the pattern.", "(st st with garter st border at each edge)"),
        ("Row 3 (RS): Make DS, k to prev DS (slipping Ms), k DS, k4, turn.", "Row 3 (RS): Make DS, k to previous DS, k DS, k4, turn.", "slipping Ms"),
    ],
)  # fmt: skip
def test_what_changes_no_stitch_is_said_and_the_rest_is_read(printed: str, read: str, said: str) -> None:
    """Words that are dropped are heard by nobody; words that are kept hinder the row."""
    made = reword(made_plain(printed))
    assert made.text == read
    assert not said or said in made.kept


@pytest.mark.parametrize("printed", ["Continue in chart pattern, repeating Rnds 5-16, until mitten measures 18 cm."])
def test_what_says_another_row_stays_as_it_is(printed: str) -> None:
    """A repeat that leaves out the first rounds is another than the chart."""
    assert reword(made_plain(printed)).text == printed
