"""Other wordings for casting on. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("With circular needle, cast on 80 sts.", "cast on 80 sts."),
        ("Using circular needles and MC, cast on 80 sts.", "With MC, cast on 80 sts."),
        ("Cast on 80 sts using 4 mm needles and yarn A.", "Change to 4 mm needles. With A, Cast on 80 sts."),
        ("Cast off loosely 6 sts at beg of next 2 rows.", "Cast off 6 sts at beg of next 2 rows."),
    ],
)
def test_tools_and_manner_come_before_or_beside_the_stitches(printed: str, words: str) -> None:
    """The needles and the yarn are taken up first; the manner is only said."""
    assert " ".join(reword(made_plain(printed)).text.split()).lstrip(" ,") == words


def test_the_manner_is_said_with_the_line() -> None:
    """She casts off loosely because she hears it."""
    assert reword("Loosely cast on 80 sts.").kept == ("Loosely",)
