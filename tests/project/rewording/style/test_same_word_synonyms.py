"""Other words for one thing. Source: the wording of patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.reword import reword


def written(printed: str) -> str:
    """Return a line in the words it is read in at the second look."""
    return " ".join(reword(made_plain(printed), spoken=True).text.split())


@pytest.mark.parametrize(
    ("printed", "plain"),
    [
        ("Rep rows 1 and 2 an additional 3 times.", "Rep rows 1 and 2 3 more times."),
        ("On every RS row, dec 1 st at each end until 14 stitches rem.", "On every RS row, dec 1 st at each end until 14 sts rem."),
        ("Rep rows 1 and 2 one time more.", "Rep rows 1 and 2 once more."),
        ("Work rows 1 and 2 for a total of 3 times.", "Work rows 1 and 2 3 times in all."),
        ("Go on in st st for 4 cm, ending after working a WS row.", "Cont in st st for 4 cm, ending with a WS row."),
        ("Carry on without any further shaping for 4 cm.", "Work even for 4 cm."),
        ("Change over to the smaller needles.", "Change to smaller needles."),
        ("K20, turn the work, leaving rem sts unworked.", "K20, turn, leaving rem sts unworked."),
        ("Dec 1 st along the neck edge of next 4 rows.", "Dec 1 st at neck edge of next 4 rows."),
        ("Inc 1 st at each end of next and every subsequent 6th row to 50 sts.", "Inc 1 st at each end of next and every foll 6th row to 50 sts."),
        ("K to mkr, slip mkr, k to the end.", "K to marker, slip marker, k to end."),
    ],
)
def test_other_words_are_put_into_those_that_are_read(printed: str, plain: str) -> None:
    """Both mean the same to her, and are worked alike."""
    assert reads(printed)
    assert written(printed).lower() == written(plain).lower()


@pytest.mark.parametrize(
    ("line", "stays"),
    [
        ("Rep rows 1 and 2 1 time.", "1 time"),
        ("Dec 1 st each side of marker.", "each side of marker"),
        ("Pick up 20 sts along the neck edge and knit.", "along the neck edge"),
        ("K8, move to the next needle.", "move to the next needle"),
        ("Work until the heel reaches the last marker.", "reaches the last marker"),
        ("Keep on needle.", "Keep on needle"),
    ],
)
def test_what_looks_alike_stays_as_it_is_printed(line: str, stays: str) -> None:
    """One time is not once more, an edge to pick up along is no edge to shape, a marker no length."""
    assert stays in written(line)


@pytest.mark.parametrize("line", ["Work until piece reaches 5 cm below armhole.", "Work the last 2 rows."])
def test_what_leaves_open_which_row_or_place_is_not_read(line: str) -> None:
    """Where the length ends is not said, nor how often the rows are worked."""
    assert not reads(line)
