"""Lengths that a page leaves to the knitter, in other words. Source: patterns in print; common practice."""

from __future__ import annotations

import pytest

from stepper.project.reading.parsing import made_plain
from stepper.project.rewording.reword import reword


@pytest.mark.parametrize(
    ("printed", "read"),
    [
        ("Knit until foot measures 4 cm less than desired foot length.", "Knit until foot measures desired length of foot____foot___ less 4 cm."),
        ("Work in rib to required length.", "Work in rib until piece measures desired length of piece______."),
        ("Work even until sleeve is as long as you like.", "Work even until sleeve measures desired length of sleeve."),
        ("Work even for as long as you like.", "Work even for desired length of piece."),
        ("Knit until hand reaches the tip of your little finger.", "Knit until hand measures desired length of hand__to_tip_of_little_finger."),
    ],
)  # fmt: skip
def test_a_length_of_hers_is_named_by_all_words_that_say_which(printed: str, read: str) -> None:
    """What is a full length and what a part of it must not be mixed up; one name is made of the words later."""
    assert reword(made_plain(printed)).text.replace("_______", "______") == read


@pytest.mark.parametrize(
    "printed",
    [
        "Work until piece measures 30 cm or desired length.",
        "Knit until mitten reaches the tip of the little finger, about 20 cm from cast-on.",
        "Repeat until it is long enough.",
        "Knit until scarf is the desired width.",
        "Work until it is long enough to reach around your head.",
    ],
)
def test_what_is_no_length_of_hers_is_left_alone(printed: str) -> None:
    """A printed length is worked; what only sounds like a length has no name to ask for."""
    assert "desired length of" not in reword(made_plain(printed)).text
