"""Where the rounds of a sock begin, told in prose. Source: the wording of socks in print; common practice."""

from __future__ import annotations

from stepper.project.rewording.reworded import as_printed
from stepper.project.rewording.told.round_begins import write_round_begins

WRITTEN = {
    "The rnd now begins at center of heel.": "Begin rounds from middle of sole",
    "Rnds now start at the beginning of the instep.": "Begin rounds from instep",
    "Knit to beginning of instep; this is the new start of rnd.": "K to new beginning at instep.",
    "Knit to the end of needle 1; this is the new start of round.": "K needle 1 to the new beginning.",
    "This is the new beginning of the rnd.": "",
}
PRINTED = (
    "Rnd 1: Knit to the instep.",
    "K10. This is the new beginning of the rnd, at the underarm.",
    "This is the new beginning of the round for the second sock.",
    "The round begins at the instep for the left sock.",
    "The round begins at the left underarm.",
)


def test_a_beginning_is_moved_checked_or_only_said() -> None:
    """What is knitted to it moves it; where it is said to be is held against where it is."""
    made = {printed: write_round_begins(as_printed(printed)) for printed in WRITTEN}
    assert {printed: line.text for printed, line in made.items()} == WRITTEN
    assert made["This is the new beginning of the rnd."].kept == ("This is the new beginning of the rnd",)


def test_other_beginnings_stay_as_printed() -> None:
    """Elsewhere, for one sock alone, or a row that only ends there."""
    assert tuple(write_round_begins(as_printed(printed)).text for printed in PRINTED) == PRINTED
