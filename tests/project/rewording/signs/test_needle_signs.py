"""Rounds told needle by needle read alike behind colons, dashes and stars."""

from __future__ import annotations

import pytest

from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.signs.needle_signs import write_needle_signs


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Rnd 1: Needle 1 - knit to last 3 sts, k2tog, k1.", "Rnd 1: needle 1: knit to last 3 sts, k2tog, k1."),
        ("N2, N3: patt. N4: k1, ssk, k to end.", "needles 2 and 3: in pattern. needle 4: k1, ssk, k to end."),
        (
            "*N1: k to last 3 sts, k2tog, k1. N2: k1, ssk, k to end. Rep from * on N3 and N4.",
            "needle 1: k to last 3 sts, k2tog, k1. needle 2: k1, ssk, k to end. needle 3: k to last 3 sts, k2tog, k1. "
            "needle 4: k1, ssk, k to end.",
        ),
    ],
)
def test_each_needle_has_a_colon_and_what_is_starred_is_written_out(printed: str, words: str) -> None:
    """A needle without its own sentence is refused, as half a round would be left out."""
    assert write_needle_signs(as_printed(printed)).text == words


@pytest.mark.parametrize("printed", ["Needles 3.5 mm - knit 4 rows.", "Rnd 1: *N1: k3. N2: k4. Rep from * on N2 and N3."])
def test_sizes_and_other_needles_than_the_next_two_are_no_such_sign(printed: str) -> None:
    """A needle told twice is a slip of the page."""
    assert "needle 3:" not in write_needle_signs(as_printed(printed)).text
