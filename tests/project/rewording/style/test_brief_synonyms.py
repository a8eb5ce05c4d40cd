"""Rows and sides said in few words. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import recast


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Row 7: *K3, k2tog* x 9.", "Row 7: (K3, k2tog) 9 times."),
        ("Row 7: SSK x 5.", "Row 7: (SSK) 5 times."),
        ("Next row: K2tog across to last 3 sts, k3.", "Next row: *K2tog; rep from * to last 3 sts, k3."),
        ("Work other side to correspond.", "complete like other side, reversing shaping."),
        ("Cont on these 17 sts only.", "17 sts."),
        ("Cast off ribwise.", "Cast off in rib."),
        ("K2tog at both ends of every other row 4 times.", "Dec 1 st at each end of every other row 4 times, working decreases 0 sts in from edge."),
    ],
)
def test_what_is_said_in_few_words_is_put_into_the_words_that_are_read(printed: str, words: str) -> None:
    """Each of these says one thing only, in words of its own."""
    assert " ".join(recast(made_plain(printed)).text.split()) == words


@pytest.mark.parametrize(
    "printed",
    ["Next row: K twice.", "Begin decreases wherever you like.", "Work the other side as you please.", "Multiply 4 x 6."],
)
def test_what_looks_like_it_stays_as_it_is(printed: str) -> None:
    """What is left to the knitter is not to be guessed."""
    assert recast(made_plain(printed)).text == made_plain(printed)
