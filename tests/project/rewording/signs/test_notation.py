"""How things are written, put into one notation. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("CO 96 (104-112-120) sts.", "CO 96 (104, 112, 120) sts."),
        ("Cast on 64-72-80 sts.", "Cast on 64 (72, 80) sts."),
        ("CO [88, 92] 96 sts.", "CO 88 (92, 96) sts."),
        ("K3 p2 k10 p5.", "K3, p2, k10, p5."),
        ("1k, 2p, k to end.", "k1, p2, k to end."),
        ("K. 2, p. 2.", "K 2, p 2."),
        ("1st rnd: *P3. K6. Rep from * around.", "rnd 1: *P3, K6, Rep from * around."),
        ("*k1, p1*", "*k1, p1; rep from * to end"),
        ("Next rnd K2tog, k to end.", "Next rnd: K2tog, k to end."),
        ("4th row. Like 2nd row.", "row 4: rep row 2."),
    ],
)
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """However it is printed, the stitches are the same."""
    assert reword(made_plain(printed)).text == read


@pytest.mark.parametrize(
    "printed",
    [
        "Knit 4-5 rnds.",
        "CO 64-72 sts.",
        "Rnd 3 is fun.",
        "K2tog, ssk 3 times.",
    ],
)
def test_what_has_two_meanings_stays_as_it_is(printed: str) -> None:
    """A guess in the table would be a row knitted wrong in silence; such a line is refused."""
    assert reword(made_plain(printed)).text == printed
