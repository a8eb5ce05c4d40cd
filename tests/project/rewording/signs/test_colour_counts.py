"""Colour rounds told by counts of colours. Source: common practice of stranded colour knitting."""

from __future__ import annotations

import pytest

from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.signs.colour_counts import write_colour_counts


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Rnd 1: *5 MC, 1 CC1; rep from * around.", "Rnd 1: *k5 in MC, k1 in CC1; rep from * around."),
        ("Rnd 2: 1 MC, *1 CC, 3 MC; rep from * to last 3 sts, 1 CC, 2 MC.", "Rnd 2: k1 in MC, *k1 in CC, k3 in MC; rep from * to last 3 sts, k1 in CC, k2 in MC."),
        ("Rnd 3: *2 sts in A, 2 sts in B; rep from *.", "Rnd 3: *k2 in A, k2 in B; rep from *."),
        ("Row 3 (RS): 2 A, *5 B, 1 A; rep from *.", "Row 3 (RS): k2 in A, *k5 in B, k1 in A; rep from *."),
        ("*3 (4, 5) MC, 1 CC; rep from *.", "*k3 (4, 5) in MC, k1 in CC; rep from *."),
        ("Rnd 4: *2 CC1, 3 MC.", "Rnd 4: *k2 in CC1, k3 in MC; rep from * to end."),
        ("Rnds 5 and 6: MC.", "Rnds 5 and 6: with MC, knit."),
    ],
)
def test_stitches_counted_by_their_colour_are_knitted(printed: str, read: str) -> None:
    """A round of a colour chart in words names the colours alone."""
    assert write_colour_counts(as_printed(printed)).text == read


@pytest.mark.parametrize(
    "printed",
    [
        "Row 2 (WS): *5 MC, 1 CC1; rep from * to end.",
        "Row 2: *5 MC, 1 CC1; rep from * to end.",
        "Row 1: MC.",
        "Yarn: 3 MC, 2 CC1.",
        "Rnd 1: *p1 MC, 5 CC; rep from *.",
        "Rnd 1: With 2 MC, knit.",
        "Join 1 CC, 2 MC.",
    ],
)
def test_what_may_be_purled_or_is_no_round_stays(printed: str) -> None:
    """In rows of the wrong side the stitches are purled, and balls of yarn are counted too."""
    assert write_colour_counts(as_printed(printed)).text == printed
