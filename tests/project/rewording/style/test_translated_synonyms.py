"""Pages put into English from elsewhere. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.reword import recast


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("K9, slip the next 8 sts on a thread for sleeve, cast on 3 new sts, k to end.", "K9, hold 8 sts for sleeve, cast on 3 sts, k to end."),
        ("Knit 14 sts (= front), hold 8 sts, k to end.", "Knit 14 sts, hold 8 sts, k to end."),
        ("Now the next round is worked thus: K4, k2tog, k to end.", "Next round: K4, k2tog, k to end."),
        ("Sleeve: = 31 sts.", "31 sts."),
        ("Change to circular needle 3.5 mm.", "Change to 3.5 mm circular needle."),
        ("Knit 1 row from the wrong side.", "with wrong side facing, Knit 1 row."),
        ("There are 9 sts on the front and on the back.", "9 sts each for front and back."),
        ("Knit without increasing until piece measures 7 cm.", "Knit until piece measures 7 cm."),
        ("Inc 1 st in each side on every 4th row a total of 3 times.", "Inc 1 st at each side on every 4th row 3 times in all."),
        ("Cast off in each side: 4 sts once, 2 sts 2 times.", "Cast off in each side: 4 sts once, 2 sts 2 times."),
        ("Cast off at both sides: 4 sts 1 time and 2 sts 2 times.", "Cast off 4 sts at each side 1 times. Cast off 2 sts at each side 2 times."),
    ],
)  # fmt: skip
def test_words_of_other_tongues_mean_the_same_rows(printed: str, words: str) -> None:
    """A thread is a marker or a holder, a side an end of the row."""
    assert " ".join(recast(made_plain(printed)).text.split()) == words


@pytest.mark.parametrize("printed", ["Knit 14 sts (= k2tog 3 times), k to end.", "K9 (= 2 rows), k to end."])
def test_an_instruction_behind_an_equals_sign_is_not_passed_over(printed: str) -> None:
    """What is only said may hold no work."""
    assert not reads(made_plain(printed))
