"""What is only called by a word of the craft gets harmless words; orders keep theirs. Invented; common practice."""

from __future__ import annotations

import pytest

from stepper.project.rewording.clauses.neutral import made_neutral


@pytest.mark.parametrize(
    ("sentence", "neutral"),
    [
        ("The cast-on edge is stretchy", "the edge is stretchy"),
        ("The cable pattern is fun", "the fabric is fun"),
        ("I knit every evening", "i knit so-far"),
        ("You need 40 m of yarn", "you need some"),
        ("My first hat took two weekends", "my hat took some"),
        ("It is easy to pick up", "it is easy"),
        ("The hat has 4 cm of ease", "the hat has ease"),
    ],
)
def test_things_called_by_the_craft_get_harmless_words(sentence: str, neutral: str) -> None:
    """Otherwise every sentence about a cast-on edge would be taken for an order to cast on."""
    assert made_neutral(sentence) == neutral


@pytest.mark.parametrize(
    "order",
    [
        "cast on 40 sts",
        "bind off loosely",
        "knit every 4th row",
        "pick up 12 sts",
        "purl 3 rounds",
        "slip one stitch",
        "decrease at each marker",
        "each other round",
        "knit 2 repeats",
    ],
)
def test_orders_keep_every_word(order: str) -> None:
    """A word of danger lost here is an order that is never worked."""
    assert made_neutral(order) == order


def test_the_number_of_rounds_stays_beside_a_time() -> None:
    """Of "2 rounds each evening" the evening is talk, the rounds are not."""
    assert made_neutral("Knit 2 rounds each evening") == "knit 2 rounds so-far"


def test_letters_and_spaces_are_evened_out() -> None:
    """The rows are written for one form of printing."""
    assert made_neutral("  The   EDGE  curls ") == "the edge curls"
