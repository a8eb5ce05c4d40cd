"""Rows and pieces told in everyday words. Source: patterns that knitters write for one another; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import recast


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Knit 3, purl 3 for 20 rows.", "work in k3, p3 rib for 20 rows."),
        ("Round 4: K9, k2tog, repeat around.", "Round 4: *K9, k2tog; rep from * to end."),
        ("Round 4: K2tog, k9 around.", "Round 4: *K2tog, k9; rep from * to end."),
        ("Row 6: knit all the way", "Row 6: knit to end"),
        ("Row 2: k2tog across (14)", "Row 2: k2tog across (14 sts)"),
        ("Knit another to match.", "make again 1."),
        ("Bind off in k1, p1.", "Bind off in rib."),
        ("Join into a ring.", "join in the round."),
    ],
)
def test_a_line_is_put_into_the_words_that_are_read(printed: str, read: str) -> None:
    """What is meant is the same, whichever way the page says it."""
    assert recast(made_plain(printed)).text == read


@pytest.mark.parametrize(
    "printed",
    [
        "Knit 2, purl 1 for 20 rows.",
        "Row 5: k10 (12)",
        "Knit 5 sts with waste yarn.",
    ],
)
def test_what_may_mean_something_else_stays_as_it_is(printed: str) -> None:
    """Two and one in rows of any number is no rib to be sure of, and a number behind a number is of another size."""
    made = recast(made_plain(printed))
    assert "rib" not in made.text
    assert "rep from * to end" not in made.text
    assert "sts)" not in made.text
    assert made.kept == ()
