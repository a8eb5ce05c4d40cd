"""The yarn of a row wherever it is printed. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Row 7 (CC): Purl.", "Row 7: with CC, Purl."),
        ("Row 7 (RS, MC): Knit.", "Row 7 (RS): with MC, Knit."),
        ("Rnds 3-6 (B): Knit.", "Rnds 3-6: with B, Knit."),
        ("Rows 7-10: Using CC: rep rows 1 and 2 twice.", "Rows 7-10: with CC, rep rows 1 and 2 twice."),
        ("Row 7 (yarn B): Purl.", "Row 7: with B, Purl."),
        ("Row 8 - CC: Knit.", "Row 8: with CC, Knit."),
        ("Swap to CC and knit 5 rounds.", "with CC, knit 5 rounds."),
        ("Knit 4 rnds with A, then 1 rnd with B.", "with A, Knit 4 rnds. With B, Knit 1 rnd."),
        ("Beginning with a knit row, work 6 rows.", "next row (rs): work 6 rows in stockinette."),
        ("Row 5: Using C2, k1, sl1, k to end.", "Row 5: with C2, k1, sl1, k to end."),
    ],
)
def test_a_yarn_is_taken_up_before_its_rows(printed: str, words: str) -> None:
    """A yarn in the head was a name of the row, and the row was worked in the one before it."""
    made = reword(made_plain(printed))
    assert " ".join(made.text.replace(" :", ":").split()) == words
    assert made.name == ""


@pytest.mark.parametrize("printed", ["Row 7 (navy): Purl.", "Row 7 (RS, pale green): Knit."])
def test_a_colour_in_the_head_is_a_yarn(printed: str) -> None:
    """It was a name of the row, and the row was worked in the yarn before it."""
    made = reword(made_plain(printed))
    assert made.name == ""
    assert len(made.yarns) == 1
    assert "with CC9," in made.text


@pytest.mark.parametrize("printed", ["Row 5 (dec row): K1, k2tog, k to end.", "Row 5 (S): K1, k to end."])
def test_a_name_in_the_head_is_no_yarn(printed: str) -> None:
    """A size is none either."""
    assert "with" not in reword(made_plain(printed)).text
