"""How far short rows go on, told by their turns. Source: the wording of heels in print; common practice."""

from __future__ import annotations

from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.told.turn_goals import write_turn_goals

INNER = "Rep rows 3 and 4 until 10 sts rem unwrapped in the center."
WRITTEN = {
    "Rep rows 3 and 4 until there are 8 DS on each side and 10 plain stitches in the middle.": INNER,
    "Rep rows 3 and 4 until 9 sts are wrapped at each side and 10 sts rem unwrapped in the center.": INNER,
    "Rep rows 3 and 4 until you have 10 sts between wraps.": INNER,
    "Rep Rows 3-4 until one st remains beyond the gap at each side, ending with a Row 4.": (
        "Rep Rows 3-4 until all but 1 sts at each side are worked. Ends with row 4."
    ),
    "Rep Rnds 1-2 until 28 sts remain on N2 - 9 decrease rnds. 56 sts total.": "Rep Rnds 1-2 until 28 sts remain on N2. 56 sts total.",
}
PRINTED = (
    "Rep rows 3 and 4 until 10 sts remain between the double stitches.",
    "Rep rows 3 and 4 until 10 sts remain between markers.",
    "Rep rows 3 and 4 until 10 sts remain.",
    "Rep rows 1 and 2 until there are 8 sts on each side of the marker.",
    "Work until there are 8 decreases on each side and 10 sts in the middle of the back.",
)


def test_the_stitches_between_the_turns_say_it() -> None:
    """How many turns there are is only said; what lies beyond them is counted by itself."""
    made = {printed: write_turn_goals(as_printed(printed)) for printed in WRITTEN}
    assert {printed: line.text for printed, line in made.items()} == WRITTEN
    assert next(iter(made.values())).kept == ("8 DS on each side",)


def test_other_counts_stay_as_printed() -> None:
    """Between markers, in all, of decreases; between double stitches, of which the next row makes one."""
    assert tuple(write_turn_goals(as_printed(printed)).text for printed in PRINTED) == PRINTED
