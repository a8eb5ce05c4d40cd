"""Words that a row is read without: which may be left out, and which never. All rows are invented."""

from __future__ import annotations

import pytest

from stepper.project.page.unread.left_words import shorten


@pytest.mark.parametrize(
    ("row", "text", "left"),
    [
        (
            "Knit until thumb measures 5 cm, or ½ cm less than you want it.",
            "Knit until thumb measures 5 cm.",
            "or ½ cm less than you want it",
        ),
        ("Bind off in rib, not like a tight drum.", "Bind off in rib.", "not like a tight drum"),
        ("Knit 4 rounds (see the drawing of the ears).", "Knit 4 rounds.", "see the drawing of the ears"),
        (
            "Work in garter st, without any shaping, until armhole measures 8 cm.",
            "Work in garter st until armhole measures 8 cm.",
            "without any shaping",
        ),
        ("Purl 1 row, which looks like a small wall.", "Purl 1 row.", "which looks like a small wall"),
    ],
)
def test_what_is_only_told_beside_a_row_may_be_left_out(row: str, text: str, left: str) -> None:
    """The row is read without it, and the words are hers to be said."""
    found = shorten(row)
    assert found is not None
    assert (found.text, found.left) == (text, left)


@pytest.mark.parametrize(
    "row",
    [
        "Bind off in rib, working 2 together like a drummer.",
        "Knit 4 rows, ending like a wall with a WS row.",
        "Knit 4 rows, or so, decreasing like a drum.",
        "Purl 1 row (turn like a drum).",
        "Purl 1 row, but bind off 4 sts like a drum.",
        "Knit 4 rounds, for another 6 cm of walls.",
        "Twirl the walls.",
        f"Knit 4 rounds, or {'so ' * 400}.",
    ],
)
def test_what_may_change_stitches_or_rows_is_never_left_out(row: str) -> None:
    """A row read without its decreases would be a wrong plan called sound."""
    assert shorten(row) is None
