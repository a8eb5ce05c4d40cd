"""Fillers, steps by number, words left out or put in. Source: booklets and pages typed at home; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import recast


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Rep these 4 rows a further 3 times.", "Rep last 4 rows 3 more times."),
        ("Repeat above 4 rows 3 times.", "Repeat last 4 rows 3 times."),
        ("Next row: K2, k across to last 4 sts, k2tog, k2.", "Next row: K2, k to last 4 sts, k2tog, k2."),
        ("12 Join in the round.", "Join in the round."),
        ("Rows 3-8: St st.", "Rows 3-8: work in St st."),
        ("Row 5: *(A) k1, (B) k3; rep from * to end.", "Row 5: *k1 in A, k3 in B; rep from * to end."),
        ("Next row: Cast on 3 sts over cast-off sts.", "Next row: work in pattern, casting on 3 sts over each buttonhole."),
        ("Work other side to match.", "complete like other side, reversing shaping."),
        ("Complete second side to match first.", "complete like other side."),
        ("Work right front to match left front, reversing shapings.", "Work as for left front, reversing shaping."),
    ],
)
def test_what_a_booklet_prints_is_put_into_the_words_that_are_read(printed: str, words: str) -> None:
    """Each of these says one thing only, in words of its own."""
    assert " ".join(recast(made_plain(printed)).text.split()) == words


@pytest.mark.parametrize(
    "printed",
    ["12 Knit 20.", "Row 5: (A) k1, p3, k to end.", "Rows 3-8: in the other colour.", "Work until 3 (4, 5) or 30 cm."],
)
def test_what_looks_like_it_stays_as_it_is(printed: str) -> None:
    """A number in front of "knit" may be what is left of a broken row, and a yarn in brackets may be that of the whole row."""
    assert recast(made_plain(printed)).text == made_plain(printed)
