"""Two sides of a neck worked at once, in other words. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("K28 sts, join second ball of yarn, bind off center 30 sts, k to end.", "K28 sts, join 2nd ball, bind off 30 sts, k to end."),
        ("K28, attach another ball of yarn and BO next 30 sts, k to end.", "K28, join 2nd ball, BO 30 sts, k to end."),
        ("Purl across left side; with other ball, purl across right side.", "Purl to neck edge, other ball, Purl to end."),
        ("Work both sides at the same time, using separate balls of yarn.", "work both sides at once. ."),
        ("Bind off from each shoulder edge 6 sts twice.", "Bind off 6 sts at armhole edge twice."),
        ("Dec 1 st at each neck edge every 4th row twice - 18 sts rem each side.", "Dec 1 st at each neck edge every 4th row twice. 18 sts on each side of the neck."),
    ],
)
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """One form is worked: the second ball is joined once, and taken in every row after it."""
    assert reword(made_plain(printed)).text.lower() == read.lower()


@pytest.mark.parametrize("printed", ["Join a new ball of yarn.", "Bind off 4 sts each side.", "Working both sleeves at the same time, cast on 40 sts.", "K20, join new ball, k to end."])
def test_what_is_no_neck_stays_as_it_is(printed: str) -> None:
    """A ball ends anywhere in a row; stitches bound off each side are those of the armholes."""
    text = reword(made_plain(printed)).text
    assert "2nd ball" not in text
    assert "both sides at once" not in text
    assert "of the neck" not in text


def test_a_new_ball_in_the_middle_of_a_row_is_not_read() -> None:
    """It may be the end of a ball or the other side of a neck: nobody can tell."""
    assert not reads("K20, join a new ball of yarn, k to end.")
