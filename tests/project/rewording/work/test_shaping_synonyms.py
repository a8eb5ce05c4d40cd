"""Other wordings of shaping. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Dec 1 st at each end of next and foll alt row.", "Dec 1 st at each end of next row, then every alt row 1 times."),
        ("Dec 1 st at each end of next row, then on 3 foll alt rows.", "Dec 1 st at each end of next row, then every alt row 3 times."),
        ("Next rnd (32 sts): *K3, k2tog; rep from * to end.", "Next rnd: *K3, k2tog; rep from * to end. 32 sts"),
        ("K to last 2 sts, dec 1 st.", "K to last 2 sts, dec 1."),
    ],
)
def test_the_rows_of_a_shaping_are_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """Following and alternate rows are so many rows apart."""
    assert reword(made_plain(printed)).text == read


@pytest.mark.parametrize("printed", ["Dec 1 st at each end of next and every foll alt row 3 times."])
def test_what_has_two_readings_stays_as_it_is(printed: str) -> None:
    """Three times may count the next row or not; the plan asks the printed count."""
    assert reword(made_plain(printed)).text == printed


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        (
            "Inc 1 st at each end of next 4 rows (48 sts), then on every 3rd row twice. 52 sts.",
            "Inc 1 st at each end of next 4 rows. 48 sts. Inc 1 st at each end every 3rd row twice. 52 sts.",
        ),
        (
            "Bind off 5 sts at beg of next 2 rows: 50 sts, and 2 sts at beg of next 4 rows: 42 sts.",
            "Bind off 5 sts at beg of next 2 rows. 50 sts. Bind off 2 sts at beg of next 4 rows. 42 sts.",
        ),
        (
            "Cast off 5 sts at beg of next 2 rows (50 sts), then work 4 rows.",
            "Cast off 5 sts at beg of next 2 rows. 50 sts. work 4 rows.",
        ),
    ],
)
def test_each_shaping_is_a_sentence_with_its_count(printed: str, words: str) -> None:
    """A count in the middle holds there, and is checked there."""
    made = " ".join(reword(made_plain(printed)).text.split())
    assert made.replace("each end on every", "each end every") == words


@pytest.mark.parametrize(
    "printed",
    [
        "Dec 1 st at each end of next 3 rows (51 sts), while every 4th row is purled.",
        "K2, dec 1 st (51 sts), k to end.",
    ],
)
def test_what_only_looks_like_it_stays_as_printed(printed: str) -> None:
    """What goes on beside it is no second shaping, and one row is no shaping over rows."""
    assert reword(made_plain(printed)).text == printed
