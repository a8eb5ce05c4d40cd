"""The smallest change with which a row is read, and rows that get none. All rows are invented."""

from __future__ import annotations

import pytest

from stepper.project.page.unread.mends import MendKind, find_mends
from stepper.project.reading.wording import reads


@pytest.mark.parametrize(
    ("row", "kind", "text", "words"),
    [
        ("Knlt 4 rounds.", MendKind.SPELT, "Knit 4 rounds.", "Knlt"),
        ("Knit 4 ruonds.", MendKind.SPELT, "Knit 4 rounds.", "ruonds"),
        ("Cast off all stltches.", MendKind.SPELT, "Cast off all stitches.", "stltches"),
        ("Knit 4 rounds (as on my drawing).", MendKind.STRUCK, "Knit 4 rounds.", "as on my drawing"),
        ("Knit 4 rounds, or so many as you like.", MendKind.STRUCK, "Knit 4 rounds.", "or so many as you like"),
        ("Change to 5 mm needles and patt the walls.", MendKind.CUT, "Change to 5 mm needles.", "patt the walls."),
        ("Knit 4 rounds, then begin the wall.", MendKind.CUT, "Knit 4 rounds.", "begin the wall."),
    ],
)
def test_the_smallest_change_is_found(row: str, kind: MendKind, text: str, words: str) -> None:
    """A word that is none, words that order nothing, a second order that stays open."""
    first = find_mends(row)[0]
    assert (first.kind, first.text, first.words) == (kind, text, words)
    assert row[first.start : first.end] == words
    assert reads(text)
    assert not reads(row)


def test_what_stands_around_the_sentence_stays_open() -> None:
    """Remarks in front of it, all that stands behind it; a count right behind it is its own."""
    (found,) = find_mends("Such walls are old. Knit 4 rounds (as on my drawing). 44 sts. Twirl the walls. Twirl them.")
    assert (found.front, found.text, found.behind) == (
        "Such walls are old.",
        "Knit 4 rounds. 44 sts.",
        "Twirl the walls. Twirl them.",
    )
    (cut,) = find_mends("Knit 4 rounds, then begin the wall. Twirl it.")
    assert cut.behind == "Begin the wall. Twirl it."


def test_an_order_in_front_of_it_may_change_what_it_comes_to() -> None:
    """It stays open too, and is asked about then."""
    (found,) = find_mends("Twirl k2 in loops. Knit 4 rounds (as on my drawing).")
    assert (found.front, found.text, found.hangs) == ("Twirl k2 in loops.", "Knit 4 rounds.", True)
    (found,) = find_mends("Such walls are old. Knit 4 rounds (as on my drawing).")
    assert not found.hangs


@pytest.mark.parametrize(
    "row",
    [
        "Twirl the walls.",
        "On these 20 loops: Knit 4 rounds (as on my drawing).",
        "Over the left 20 loops work as given here: Knit 4 rounds, then begin the wall.",
        "R5 in walls.",
        "Knot 4 sts.",
        "Leave 4 rounds.",
        "Stick 4 markers in the wall.",
        "Purl 2 rounds of snow.",
        f"Knit 4 rounds, or {'so ' * 400}.",
        # what may be meant for the rows in front of a cut, or for part of them
        "Knit 4 rounds, and begin the wall at the same time.",
        "Knit 4 rounds and work twirls in every round.",
        "Purl 1 round, knit 1 twirl, 3 times in all.",
        "Rib 7 rows, beginning each with a twirl.",
        "Row 1: K4, then begin the wall.",
        "Knit 4 rounds, inc 2 twirls.",
        "Knit 20 rounds, keeping the wall.",
        "If you are tall, knit 4 rounds, then begin the wall.",
        "K4, twirl, and work the wall.",
        "*K4; knit the wall.",
    ],
)
def test_what_could_mean_another_thing_gets_none(row: str) -> None:
    """No change is better than one that misleads."""
    assert find_mends(row) == ()
