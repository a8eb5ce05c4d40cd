"""Stitches that are put on hold, told in prose. Source: the wording of patterns in print; common practice."""

from __future__ import annotations

from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.told.moving import write_moves
from tests.tables import each_row


@each_row(
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
        ("The rest are put on wool again.", "The rest are put on wool again."),
        ("Place the other sts on hold.", "Place the other sts on hold."),
        ("Divide: the first 44 sts belong to the left front, the rest wait on a thread.", "Divide: Work in rows over next 44 sts, hold others."),
    ],
)  # fmt: skip
def test_who_waits_is_written_as_the_grammar_has_it(printed: str, words: str) -> None:
    """Whatever the verb, its form, and what holds them; the last and the remaining are held against what is left."""
    assert write_moves(as_printed(printed)).text == words
