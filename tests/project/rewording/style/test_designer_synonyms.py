"""What pages of today's designers tell beside the work. Source: the print of such pages; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.reword import reword
from stepper.project.rewording.style.designer_synonyms import IN_ROWS, STATEMENTS
from tests.tables import each_row


@each_row("printed", [one.example for one in (*STATEMENTS, *IN_ROWS)])
def test_the_lines_are_read(printed: str) -> None:
    """Each row has a line that needs it."""
    assert reads(printed)


@pytest.mark.parametrize(
    ("printed", "kept"),
    [
        ("You should now have 50 sts for each sleeve and 70 sts each for front and back.", "50 sts for each sleeve"),
        ("44 sts rem for each shoulder.", "44 sts rem for each shoulder"),
        ("There are 4 markers on your needle.", "There are 4 markers"),
        ("Rounds start at the left underarm.", "Rounds start at the left underarm"),
        ("Please do not copy or distribute this pattern.", "do not copy"),
        ("For help, please write to me.", "For help"),
    ],
)
def test_what_is_told_is_said_and_works_nothing(printed: str, kept: str) -> None:
    """The words stay beside the work, whole."""
    made = reword(made_plain(printed))
    assert not made.text.strip(" .")
    assert any(kept.lower() in words.lower() for words in made.kept)


@each_row(
    "printed",
    [
        "You should now have 50 sts for each sleeve, inc 2 sts evenly.",
        "44 sts rem for each shoulder, bind off 4.",
        "There are 4 markers on your needle, remove two.",
        "Rounds start at the left underarm with k2.",
        "Do not count short rows as rounds except the last.",
        "Share the 20 sts over two needles.",
        "Follow the chart from row 5.",
        "K8 (half of back, p2), k to end.",
        "CO 8 sts (4 at each side), k to end.",
        "Row 3 (RS): Make a DS, knit to the DS of the previous WS row, k4, turn.",
        "Join CC1 and begin the chart.",
        "Break CC and purl with MC until piece measures 9 cm.",
    ],
)
def test_an_instruction_among_the_words_is_not_passed_over(printed: str) -> None:
    """One word of work, and the sentence is none of these."""
    assert not reads(printed)
