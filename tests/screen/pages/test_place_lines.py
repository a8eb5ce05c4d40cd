from __future__ import annotations

from stepper.screen.drawing.rows import text_of
from stepper.screen.pages.place_lines import list_counts, list_place
from tests.screen.scenes import Desk


def _place(*words: str) -> list[str]:
    return [text_of(fact) for fact in list_place(Desk().do(*words).scene())]


def test_a_marker_is_told_as_a_knitter_tells_it() -> None:
    """Ten stitches to the second marker, counted by hand; not "marker 2 in 10"."""
    assert _place("go to yoke", "stitch 20") == ["Stitch 20 of 60", "10 sts to the second marker"]
    assert _place("go to yoke", "stitch 29")[-1] == "1 st to the second marker"


def test_repeat_and_next_change_are_counted() -> None:
    """The sixth repeat of four stitches holds the twenty-third; six plain stitches before each increase."""
    assert _place("go to round 2", "stitch 22") == ["Stitch 22 of 60", "Repeat 6 of 15"]
    assert _place("go to first increase") == ["Stitch 0 of 70", "Repeat 1 of 10", "Next increase in 6 sts"]


def test_the_counts_have_their_words_if_there_is_room() -> None:
    """In a small window the figures stay and the words go."""
    scene = Desk().do("go to first increase").scene()

    assert text_of(list_counts(scene, 60)[0]) == "60 sts now, 70 at the end"
    assert text_of(list_counts(scene, 30)[0]) == "60 to 70 sts"
    assert text_of(list_counts(Desk().do("next").scene(), 60)[0]) == "60 sts throughout"
