"""Where a row leaves open on which side of its markers it makes stitches."""

from __future__ import annotations

from stepper.plan.stitches.marker_sides import side_unsaid
from stepper.project.instructions import Phrase
from tests.project.reading.test_wording import only
from tests.tables import each_row


@each_row(
    ("row", "unsaid"),
    [
        ("K to first marker, m1, k to second marker, m1, k to end.", True),
        ("K to marker, yo, k to marker, yo, k to end.", True),
        ("K to marker, inc, k to marker, inc, k to end.", True),
        ("K to marker, m1, k to end.", False),
        ("K to marker, sm, m1, k to marker, m1, sm, k to end.", False),
        ("K to marker, kfb, k to marker, kfb, k to end.", False),
        ("K to marker, ssk, k to marker, ssk, k to end.", False),
        ("K to 1 st before marker, m1, k to 1 st before marker, m1, k to end.", False),
    ],
)
def test_two_stitches_made_right_at_markers_say_on_which_side(row: str, unsaid: bool) -> None:
    """How many come to lie between the markers hangs on it; a stitch made out of another lies where that one does."""
    phrase = only(row)
    assert isinstance(phrase, Phrase)
    assert (side_unsaid(phrase.elements) is not None) is unsaid
