"""A sentence of making up is told by its clauses; one with anything on the needles is not. All are invented."""

from __future__ import annotations

import pytest

from stepper.project.reading.wording import reads
from stepper.project.rewording.clauses.making import is_made_up
from stepper.project.rewording.remarks.making_up import makes_up
from tests.tables import each_row

MADE_UP = (
    "Turn through, sew on buttons to match the holes, insert pad and button up",
    "Wash, pat into shape and leave it alone until it is really dry",
    "Omitting ribbing, press each piece very lightly on wrong side using a warm iron and damp cloth, taking care not to flatten patt",
    "Stitch the leaves round the gathered top like a ruff",
    "Fold in half, pin and backstitch all round, leaving a gap, then stuff",
    "Soak, squeeze gently and dry flat, away from the sun",
    "With right sides together, pin the lining in and sew it down with small stitches",
)
KNITTED = (
    "Press, then pick up 40 sts along the edge",
    "Sew the shoulder seams and knit the neckband",
    "Block the back, then cast on 40 sts for the front",
    "Sew the side seams, leaving 20 sts live for the neck",
    "Steam lightly and continue in rib",
    "Stuff and decrease as before to close",
    "Pin the hem and graft the live stitches to it",
    "Wash and work the second one the same",
    "Leave a tail and knit 4 rounds",
    "Put the sts on a holder and turn",
    "Leave it on the needle",
    "Turn and place it on hold",
    "Fold and knit together with the cast-on edge",
    "Sew or knit the band",
)


@pytest.mark.parametrize("words", MADE_UP)
def test_a_sentence_all_of_whose_clauses_are_of_making_up_is_told(words: str) -> None:
    """In any order and number."""
    assert is_made_up(words)
    assert makes_up(words)
    assert reads(f"{words}.")


@each_row("words", KNITTED)
def test_what_may_be_on_the_needles_is_not_made_up(words: str) -> None:
    """A seam may be told with stitches that are still live."""
    assert not makes_up(words)
