"""Other wordings of shaping. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import recast


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Dec 1 st at each end of next and foll alt row.", "Dec 1 st at each end of next row, then every 2nd row 1 times."),
        ("Dec 1 st at each end of next row, then on 3 foll alt rows.", "Dec 1 st at each end of next row, then every 2nd row 3 times."),
        ("Next rnd (32 sts): *K3, k2tog; rep from * to end.", "Next rnd: *K3, k2tog; rep from * to end. 32 sts"),
        ("K to last 2 sts, dec 1 st.", "K to last 2 sts, dec 1."),
    ],
)
def test_the_rows_of_a_shaping_are_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """Following and alternate rows are so many rows apart."""
    assert recast(made_plain(printed)).text == read


@pytest.mark.parametrize("printed", ["Dec 1 st at each end of next and every foll alt row 3 times."])
def test_what_has_two_readings_stays_as_it_is(printed: str) -> None:
    """Three times may count the next row or not; the plan asks the printed count."""
    assert recast(made_plain(printed)).text == printed
