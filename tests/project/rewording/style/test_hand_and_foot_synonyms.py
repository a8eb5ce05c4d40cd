"""Socks, mittens and hats as printed. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.reading.wording import reads
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "words", "kept"),
    [
        ("Knit until thumb measures 4 cm, or just covers your thumb nail.", "Knit until thumb measures 4 cm.", ("or just covers your thumb nail",)),
        ("Knit until hand measures 4 cm or reaches the base of the little finger, ending with Rnd 2.", "Knit until hand measures 4 cm, ending with Rnd 2.", ("or reaches the base of the little finger",)),
        ("Rep dec rnd every 4th rnd twice more [20 sts], then every other rnd 3 times.", "Rep dec rnd every 4th rnd twice more. 20 sts. Rep dec rnd every other rnd 3 times.", ()),
        ("Rep rows 3 and 4 until all heel sts have been worked, ending with a WS row.", "Rep rows 3 and 4 until all sts are worked. Ends with a WS row.", ()),
        ("Work in moss st for 4 cm, ending with R2.", "Work in moss st for 4 cm, ending with row 2.", ()),
        ("Cont in patt as est for 4 cm.", "Cont in patt as established for 4 cm.", ()),
        ("Begin Fern Rib and work even until leg measures 6 cm.", "work in Fern Rib until leg measures 6 cm.", ()),
        ("Slip the 13 sts from the waste yarn back on to three needles.", "return 13 sts to needles. divide over three needles.", ()),
        ("K10, hold 5 sts for thumb, knit to end, pulling the yarn snug across the gap.", "K10, hold 5 sts for thumb, knit to end.", ("pulling the yarn snug across the gap",)),
    ],
)
def test_they_are_put_into_the_words_of_the_grammar(printed: str, words: str, kept: tuple[str, ...]) -> None:
    """What works stitches stays, and what does not is said."""
    made = reword(made_plain(printed))
    assert (made.text, made.kept) == (words, kept)


@pytest.mark.parametrize(
    "printed",
    [
        "Knit until thumb measures 4 cm, or covers your nail, then decrease 8 sts.",
        "Knit until thumb measures 4 cm, or reaches the last marker.",
        "Rep rows 1 and 2 until there are 9 DS on one side and 10 sts between them.",
        "Knit to end, pulling the yarn through 2 sts.",
        "Knit to end, using a different yarn for the end of the rnd.",
    ],
)
def test_what_may_be_an_instruction_stays_unread(printed: str) -> None:
    """An order behind the hand that measures, or a marker that is none, is not passed over."""
    assert not reads(printed)


def test_all_worked_of_a_row_is_no_turn_of_a_heel() -> None:
    """"Purl until all sts have been worked" is the end of the row."""
    assert reword("Purl until all sts have been worked.").text == "Purl to end."
