"""A piece that is made a second time, told in prose. Source: common practice."""

from __future__ import annotations

from tests.project.rewording.told.test_sentences import written
from tests.tables import each_row


@each_row(
    ("printed", "words"),
    [
        ("Same for the other sleeve.", "Make again 1 sleeve."),
        ("Knit one more sleeve in the same way.", "Make again 1 sleeve."),
        ("Make another mitten.", "Make again 1 mitten."),
        ("The second sock is worked the same as the first.", "Make again 1 sock."),
        ("Then make the other sleeve to match.", "Make again 1 sleeve."),
        ("Repeat for the second strap.", "Make again 1 strap."),
        ("Place sts on hold. Make another.", "Place sts on hold. Make again 1."),
        ("Make another one to match.", "Make again 1."),
    ],
)
def test_what_is_made_again(printed: str, words: str) -> None:
    """The piece, where it is named, once more."""
    assert written(printed) == words


@each_row(
    "printed",
    [
        "Make another.",
        "Make another buttonhole.",
        "Same for the other side.",
        "Work second sleeve.",
        "Left front the same.",
        "Same for the other sleeve, reversing shaping.",
        "The other sleeve is 2 cm longer.",
    ],
)
def test_what_is_no_whole_piece_or_not_the_same_is_left(printed: str) -> None:
    """A side, a buttonhole, a heading."""
    assert written(printed) == printed
