"""A sentence of straight work is of a few kinds of phrases, each told by how it begins. Source: common practice."""

from __future__ import annotations

import re

import pytest

from stepper.project.rewording.told.phrases import leading_phrases
from stepper.project.rewording.told.straight_phrases import LENGTH, STRAIGHT


@pytest.mark.parametrize(
    ("sentence", "kinds"),
    [
        ("Even to 7 in from underarm CO", ["even", "length"]),
        ("Continue in MC only without shaping until yoke measures 8 cm above the ribbing", ["do", "yarn", "even", "until"]),
        ("Work in k1, p1 rib for 4 cm, ending with a WS row", ["do", "ribbed", "long", "ending"]),
        ("Work even to same length as back", ["do", "even", "like"]),
        ("Work 5 cm in st st, keeping first and last 3 sts in garter", ["do", "long", "fabric", "keep"]),
    ],
)
def test_a_sentence_is_made_of_few_kinds_of_phrases(sentence: str, kinds: list[str]) -> None:
    """Whatever order they stand in."""
    phrases, end = leading_phrases(sentence, 0, len(sentence), STRAIGHT)
    assert [phrase.kind for phrase in phrases] == kinds
    assert end == len(sentence)


def test_a_sentence_is_taken_apart_as_far_as_its_words_are_known() -> None:
    """What stands behind is for whoever asked."""
    phrases, end = leading_phrases("Work even for 5 cm and hope.", 0, 28, STRAIGHT)
    assert [phrase.kind for phrase in phrases] == ["do", "even", "long"]
    assert end == len("Work even for 5 cm")


@pytest.mark.parametrize("length", ["5 cm", "7½ ins", '2" [5 cm]', "5 (6, 7) cm", "12½ in / 32 cm"])
def test_a_length_is_in_one_unit_or_two(length: str) -> None:
    """With the sizes in brackets."""
    assert re.fullmatch(LENGTH, length, re.IGNORECASE)


def test_stitches_worked_in_a_fabric_are_no_inches() -> None:
    """ "Work 5 in rib" may be five stitches."""
    assert re.match(LENGTH, "5 in rib", re.IGNORECASE) is None
