from __future__ import annotations

import pytest

from stepper.language.understanding.normal_text import drop_articles, normalise


@pytest.mark.parametrize(
    ("text", "normal"),
    [
        ("Okay, where's the next row, please?", "where is the next round"),
        ('It measures 12½"', "it measures 12½ in"),
        ("30cm", "30 cm"),
        ("?", "?"),
        ("Okay then.", "all right"),
        ("um, well", ""),
        ("", ""),
    ],
)
def test_a_text_has_one_form(text: str, normal: str) -> None:
    """Whatever the hand or the recogniser adds, two texts that say the same compare equal."""
    assert normalise(text) == normal


def test_articles_are_left_out_only_where_nothing_is_read_any_more() -> None:
    """A yarn may be called "A"."""
    assert normalise("a weighs 40") == "a weighs 40"
    assert drop_articles("the end of a round") == "end of round"
