"""A hem that is knitted together with its cast-on edge is one plain round, and lengths are measured from its fold."""

from __future__ import annotations

import pytest

from stepper.project.rewording.clauses.hems import write_hems
from stepper.project.rewording.reworded import as_printed


@pytest.mark.parametrize(
    "printed",
    [
        "Fold the edge along the purl round and knit each st on the needle together with the corresponding st of the cast-on edge.",
        "*Knit 1 st from needle together with 1 st from cast-on edge; rep from * to end.",
        "Fold hem to inside and knit together 1 st from needle and 1 loop from cast-on edge around.",
    ],
)
def test_it_keeps_the_stitches_and_is_said(printed: str) -> None:
    """The loops of the edge are no stitches of the needle: counted, they would double the round."""
    made = write_hems(as_printed(printed))
    assert (made.text.rstrip("."), made.kept) == ("k to end", (printed.rstrip("."),))


@pytest.mark.parametrize(
    "printed",
    [
        "Fold the edge along the purl round and sew it down.",
        "Knit each st together with the next st to end.",
        "Fold the edge up and knit every 2nd st together with 1 st from cast-on edge.",
        "Fold the edge and knit each st together with 1 st from the cast-on edge, decreasing 8 sts evenly.",
    ],
)
def test_what_is_sewn_or_changes_the_stitches_is_no_such_round(printed: str) -> None:
    """What else the sentence orders must be read or refused."""
    assert write_hems(as_printed(printed)).text == printed
