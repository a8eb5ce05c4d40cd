"""Words beside the stitches. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("K28 for back, p32.", "K28, p32."),
        ("K30 (front), pm, k14 (sleeve).", "K30, pm, k14."),
        ("K to within 4 sts of marker, k2tog.", "K to 4 sts before marker, k2tog."),
        ("K to 5 sts from the end, p5.", "K to 5 sts before the end, p5."),
        ("Hold 20 sleeve sts, k to end.", "hold 20 sts for sleeve, k to end."),
    ],
)
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """The name of a part is said and knits nothing."""
    assert reword(made_plain(printed)).text == read


@pytest.mark.parametrize(
    "printed",
    [
        "K28 for back twice, p32.",
        "K30 (front, k2tog), p10.",
        "The yoke is worked in the round, k2tog, k to end.",
    ],
)
def test_what_has_two_meanings_stays_as_it_is(printed: str) -> None:
    """A guess in the table would be a row knitted wrong in silence; such a line is refused."""
    assert reword(made_plain(printed)).text == printed
