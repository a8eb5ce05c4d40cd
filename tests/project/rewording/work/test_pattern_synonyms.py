"""Fabrics and edges in other words. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


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
    assert reword(made_plain(printed)).text == read


@pytest.mark.parametrize("printed", ["Work 4 sts in garter.", "Work buttonhole stitch for 3 rows.", "K1 in next stitch."])
def test_what_is_no_fabric_of_a_row_stays_as_it_is(printed: str) -> None:
    """A stitch is no pattern, though both are called so."""
    assert reword(made_plain(printed)).text == printed


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Seed st 4, k to last 4 sts, seed st 4.", "work 4 sts in Seed st, k to last 4 sts, work 4 sts in seed st."),
        ("K to last 6 sts, k6 in garter st.", "K to last 6 sts, work 6 sts in garter st."),
        ("K6, seed st to last 6 sts, k6.", "K6, work in seed st to last 6 sts, k6."),
        ("K to m, sm, work Braid Panel, sm, k to end.", "K to m, sm, work next rnd of Braid Panel to fill, sm, k to end."),
    ],
)
def test_a_border_or_a_panel_has_its_own_stitches(printed: str, words: str) -> None:
    """How many they are, and where they end, stays as printed."""
    assert reword(made_plain(printed)).text == words


@pytest.mark.parametrize("printed", ["Work Braid Panel.", "Work 20 rows in Braid Panel."])
def test_a_pattern_alone_is_no_part_of_a_row(printed: str) -> None:
    """Nothing stands beside it."""
    assert "next rnd" not in reword(made_plain(printed)).text
