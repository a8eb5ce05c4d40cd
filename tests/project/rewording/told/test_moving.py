"""Stitches that are put on hold and come back, told in prose. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.told.moving import write_moves


def written(line: str) -> str:
    """Return the words in which a line tells of stitches that are moved."""
    return write_moves(as_printed(line)).text


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("K20, slide the next 12 sts onto a piece of string, k to end.", "K20, hold 12 sts, k to end."),
        ("K20, let the next 12 thumb sts rest on a thread, k to end.", "K20, hold 12 sts for thumb, k to end."),
        ("K20, place next 26 sts on holder, place last 22 sts on second holder.", "K20, hold 26 sts, hold rem 22 sts."),
        ("Patt 36, turn, leaving remaining sts on a spare needle.", "Patt 36, turn, hold all sts."),
        ("Work to marker. Leave rem 50 back sts on spare ndl. Turn.", "Work to marker, hold rem 50 sts for back. Turn."),
        ("Knit to marker, slip the sts between the markers onto waste yarn, knit to end.", "Knit to marker, hold to next marker, knit to end."),
        ("Knit 20 and place these on a thread, bind off 8, knit to end.", "Knit 20, hold these sts, bind off 8, knit to end."),
        ("Knit to end and slip the last 8 sts to a safety pin.", "Knit to end and hold these 8 sts."),
        ("Place first 32 sts on holder, center 46 on another, last 32 on a third.", "Hold 32 sts, hold 46 sts, hold rem 32 sts."),
        ("Break yarn and leave these 24 sts on a holder.", "Break yarn. 24 sts. Hold all sts."),
        ("Slip the sts to a holder and make the second sleeve.", "Place all sts on a holder. Make the second sleeve."),
        ("The other 28 are your instep and they can have a rest.", "Hold rem 28 sts for instep."),
        ("Divide: the first 44 sts belong to the left front, the rest wait on a thread.", "Divide: Work in rows over next 44 sts, hold others."),
    ],
)  # fmt: skip
def test_who_waits_is_written_as_the_grammar_has_it(printed: str, words: str) -> None:
    """Whatever the verb, its form, and what holds them; the last and the remaining are held against what is left."""
    assert written(printed) == words


@pytest.mark.parametrize(
    ("printed", "words"),
    [
        ("Put the 54 sts of one sleeve on 4 mm needles.", "Change to 4 mm needles. Return 54 held sleeve sts to needles."),
        ("Return 50 held sts to larger ndl, RS facing.", "With RS facing, change to larger needles. Return 50 held sts to needles."),
        ("Take up the 30 sts from the thread and knit across.", "Return 30 held sts to needles. Knit across."),
        ("Return to the sts on hold, join yarn and k across.", "Return held sts to needles. K across."),
        ("Rejoin yarn to the sts on the spare needle, with WS facing, at the armhole edge.", "With WS facing, return held sts to needles."),
        ("With RS facing, slip next 11 sts from spare needle onto a st holder, rejoin yarn to rem sts and k to end.", "With RS facing, take up remaining sts. Hold 11 sts and k to end."),
        ("Leave the centre 12 sts on a thread. With RS facing, join yarn at the neck edge, k to end.", "With RS facing, take up remaining sts. Hold 12 sts, k to end."),
        ("Pick up and knit 22 sts, k26 from holder, pick up and knit 22 sts, k46 from back holder.", "Pick up and knit 22 sts, k across 26 held sts, pick up and knit 22 sts, k across 46 held back sts."),
    ],
)  # fmt: skip
def test_what_comes_back_is_written_as_the_grammar_has_it(printed: str, words: str) -> None:
    """Whose they are, how many, on which needles and from which side; where the yarn is joined changes no stitch."""
    assert written(printed) == words


@pytest.mark.parametrize(
    "printed",
    [
        "Slip 3 sts to cable needle and hold in front, k3, k3 from cable needle.",
        "Sl 1 st back to left needle, cast on 2 sts.",
        "Slip the first 4 sts onto right needle without working them.",
        "Knit until 105 sts remain.",
        "20 sts remain on the holder.",
        "The sts for the neck rest on the holder until the collar.",
        "Leave the back sts on the needle.",
        "Keep the first 3 sts in garter stitch.",
        "Put the heel sts on one needle.",
        "Hold yarn in front, slip 1.",
        "Hold 2 strands of yarn together and cast on 40 sts.",
        "Place the middle 24 sts on a thread.",
        "Place 18 sts at each end on a holder.",
        "Leave the last 7 sts unworked and turn.",
        "Place a marker after the first 40 sts.",
        "Leave 20 cm of yarn for sewing.",
        "Join yarn at the neck edge and pick up 40 sts.",
        "Set up the next round on the needles.",
        "Rest St st, 12 sts each side.",
        "Continue on the right front sts only, leaving the left front sts on a holder.",
    ],
)  # fmt: skip
def test_what_only_looks_like_it_stays_as_printed(printed: str) -> None:
    """Stitches of a cable or a gap, statements of what waits already, places that nobody can find in the row."""
    assert written(printed) == printed
