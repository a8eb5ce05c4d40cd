"""Other wordings in everyday English. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Change to size 8 or 3¾ mm needles.", "Change to 3.75 mm needles."),
        ("With COLOUR B, knit 2 rounds.", "With B, knit 2 rounds."),
        ("Knit, increase by 8 evenly so you have 48 sts.", "Knit, increase 8 sts evenly. 48 sts"),
        ("At the beg of each of the next 2 rows bind off 4 sts.", "bind off 4 sts at beg of next 2 rows"),
        ("Change to 4 mm needles and starting with a knit row, work in st st.", "next row (rs): Change to 4 mm needles. work in st st"),
    ],
)
def test_the_words_say_the_same(printed: str, words: str) -> None:
    """Sizes by a second table, colours by letters, sums at the end and what comes first in the sentence."""
    assert reword(made_plain(printed)).text.strip(" .") == words.strip(" .")


def test_two_other_measures_are_no_size() -> None:
    """"8 or 4 rows" leaves a choice; only millimetres settle a needle."""
    assert reword("Work 8 or 4 rows.").text == "Work 8 or 4 rows."
