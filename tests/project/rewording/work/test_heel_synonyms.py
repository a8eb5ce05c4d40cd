"""The heel of a sock as printed. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("The heel flap is worked back and forth over the first 32 sts.", "work in rows over next 32 sts of heel."),
        ("Work back and forth over the next 30 sts only; leave rem 34 sts on a holder.", "work in rows over next 30 sts, hold others 34 sts."),
        ("Sl 1, k to 1 st before gap, ssk across gap, k1, turn.", "Sl 1, k to 1 st before gap, ssk, k1, turn."),
        ("Rep rows 3 and 4 until all heel sts have been worked.", "Rep rows 3 and 4 until all sts are worked."),
        ("K10. Rnd now begins at centre of heel.", ". k10 sts to new beginning."),
        ("K16. Place remaining 16 sts on hold for instep.", "K16, hold rem 16 sts for instep."),
    ],
)
def test_a_heel_is_put_into_the_words_of_the_grammar(printed: str, words: str) -> None:
    """Which stitches are worked, and which wait, stays as printed."""
    assert reword(made_plain(printed)).text == words


def test_rows_over_the_last_stitches_are_none_of_the_next() -> None:
    """A heel over the last 32 stitches begins elsewhere."""
    assert "next" not in reword(made_plain("Work back and forth over the last 32 sts.")).text


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Knit, casting on 3 over the cast-off sts of previous row.", "Knit, casting on 3 sts over each buttonhole."),
        ("P to bound off sts, cast on 2 sts, p to end.", "P to buttonhole, cast on 2 sts, p to end."),
        ("Rotate work 90 degrees and pick up and knit 7 sts.", "pick up and knit 7 sts."),
    ],
)
def test_where_the_stitches_go_is_kept(printed: str, words: str) -> None:
    """The number cast on, and what is worked beside it, stay as printed."""
    assert reword(made_plain(printed)).text == words


def test_a_turn_is_no_rotation() -> None:
    """"Turn, pick up 7 sts" turns to the other side."""
    assert reword("Turn, pick up and knit 7 sts.").text.startswith("Turn")
