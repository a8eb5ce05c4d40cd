"""Rows gathered from holders and edges. Source: the wording of neckbands and hoods in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.gathered import write_gathered
from stepper.project.rewording.reworded import as_printed


def gathered(printed: str) -> str:
    """Return a line with its lists of places written item by item."""
    return write_gathered(as_printed(made_plain(printed))).text


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        (
            "K 5 sts from left sleeve, pick up and k 10 (12: 14) sts down left front neck and k 13 sts from front holder. 28 sts.",
            "K across 5 held left sleeve sts, pick up and knit 10 (12: 14) sts, k across 13 held front sts. 28 sts.",
        ),
        (
            "rib 9 sts. of Right Front band, pick up and k. 23 sts. along right front neck, 31 sts. across back neck: 63 sts.",
            "work across 9 held right front band sts, pick up and knit 23 sts, pick up and knit 31 sts: 63 sts.",
        ),
        (
            "K across the 7 sts of right sleeve then the 33 sts of back.",
            "K across 7 held right sleeve sts, k across 33 held back sts.",
        ),
        (
            "Pick up 14 sts up right front, k across 20 sts left on a holder at back neck.",
            "Pick up and knit 14 sts, k across 20 held back neck sts.",
        ),
        (
            "Pick up and k 14 sts up right front, k across sts from back neck holder.",
            "Pick up and knit 14 sts, k across held back neck sts.",
        ),
    ],
)
def test_each_item_of_a_list_says_what_is_held_and_what_is_picked_up(printed: str, words: str) -> None:
    """A neckband takes its stitches from holders and along edges, and the verb of one item holds for those behind."""
    assert gathered(printed) == words


@pytest.mark.parametrize(
    "printed",
    [
        "Pick up and k 12 sts from front and 20 sts from back neck.",
        "Pick up and k 12 sts from left front holder, k 20 sts from back holder.",
        "K 5 sts from left sleeve, pick up and k 4 sts wherever you like, k 3 sts from front holder.",
        "K 10 sts, pick up and k 12 sts along flap, k 20 instep sts, pick up and k 12 sts.",
        "K 30 sts of left front, pm, k 60 sts of back.",
        "K 5 sts from left sleeve.",
        "Next row: K 10 front sts, p 12 back sts.",
    ],
)
def test_a_list_with_an_item_of_no_known_form_stays_as_printed(printed: str) -> None:
    """Stitches that may lie on the needle, edges alone and words that are not known are left to the other tables."""
    assert gathered(printed) == made_plain(printed)


def test_the_edges_are_said_and_every_letter_keeps_its_place() -> None:
    """A problem is shown where it is printed, and the knitter hears along which edge she picks up."""
    line = write_gathered(as_printed("Pick up 14 sts up right front, k across 20 sts from back holder. 34 sts."))
    assert line.kept == ("up right front",)
    assert len(line.places) == len(line.text) + 1
    for number in ("14", "20", "34"):
        assert line.places[line.text.index(number)] == "Pick up 14 sts up right front, k across 20 sts from back holder. 34 sts.".index(number)
