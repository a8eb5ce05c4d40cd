"""Other wordings of what is worked inside a row. Source: patterns in print, US and UK; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Next rnd: *K8, k2tog* around.", "Next rnd: *K8, k2tog; rep from * to end."),
        ("K1, sl1, k1, psso, k to end.", "K1, skp, k to end."),
        ("K20, slip next 40 sts to waste yarn, CO 8, k to end.", "K20, hold 40 sts, CO 8, k to end."),
        ("Place these sts on a holder.", "hold all sts."),
        ("K11, place rem sts on a holder.", "K11, hold all sts."),
    ],
)
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """Slip, knit, pass over is skp, whoever prints it."""
    assert reword(made_plain(printed)).text == read


@pytest.mark.parametrize(
    "printed",
    [
        "K8, k2tog, k to end.",
        "K11, place the sts on a holder.",
    ],
)
def test_what_has_two_meanings_stays_as_it_is(printed: str) -> None:
    """A guess in the table would be a row knitted wrong in silence; such a line is refused."""
    assert reword(made_plain(printed)).text == printed
