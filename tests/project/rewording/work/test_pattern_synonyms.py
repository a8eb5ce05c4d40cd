"""Fabrics and edges in other words. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import recast


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Work 1x1 rib for 4 rounds.", "Work in 1x1 rib for 4 rounds."),
        ("6 rows moss st.", "work 6 rows in moss st."),
        ("Work 4 rounds of seed st.", "Work 4 rounds in seed st."),
        ("Starting with a p row, work 5 rows in reverse st st.", "next row (rs): work 5 rows in reverse st st."),
        (
            "Cont in st st, keeping 5 sts at each side in seed st throughout, until piece measures 5 cm.",
            "Cont in st st until piece measures 5 cm, keeping 5 edge sts in seed st.",
        ),
    ],
)
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """The purl row of reverse stocking stitch is of the right side."""
    assert recast(made_plain(printed)).text == read


@pytest.mark.parametrize("printed", ["Work 4 sts in garter.", "Work buttonhole stitch for 3 rows.", "K1 in next stitch."])
def test_what_is_no_fabric_of_a_row_stays_as_it_is(printed: str) -> None:
    """A stitch is no pattern, though both are called so."""
    assert recast(made_plain(printed)).text == printed
