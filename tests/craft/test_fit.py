"""Ease and fit words against the published classes in inches and in whole centimetres."""

from __future__ import annotations

import pytest

from stepper.craft.fit import fit_word
from stepper.craft.gauge import to_mm


@pytest.mark.parametrize(
    ("ease_in", "word"),
    [
        (-2, "very close"),
        (0, "very close"),
        (1, "close"),
        (1.5, "close"),
        (3, "standard"),
        (5, "loose"),
        (7, "oversized"),
    ],
)
def test_words_inside_the_published_classes(ease_in: float, word: str) -> None:
    """Craft Yarn Council classes, as cited by gratefullyinhisgrace, 4 Aug 2011."""
    assert fit_word(to_mm(ease_in, "in")) == word


@pytest.mark.parametrize(
    ("bound_in", "bound_cm", "word"), [(2, 5, "close"), (4, 10, "standard"), (6, 15, "loose")]
)
def test_a_shared_bound_belongs_to_the_closer_fit(bound_in: float, bound_cm: float, word: str) -> None:
    """Print puts 2, 4 and 6 in into two classes each; inches and whole centimetres agree under this rule."""
    assert fit_word(to_mm(bound_in, "in")) == word
    assert fit_word(to_mm(bound_cm, "cm")) == word
    assert fit_word(to_mm(bound_in, "in") + 0.1) != word


def test_the_hole_between_nought_and_one_inch_is_split() -> None:
    """No class is printed there; the nearer one is taken."""
    assert fit_word(to_mm(0.5, "in")) == "very close"
    assert fit_word(to_mm(0.51, "in")) == "close"


def test_words_never_get_closer_as_ease_grows() -> None:
    """Every ease has a word, in the printed order."""
    order = ["very close", "close", "standard", "loose", "oversized"]
    ranks = [order.index(fit_word(ease)) for ease in range(-100, 300)]
    assert ranks == sorted(ranks)
    assert set(ranks) == set(range(5))


def test_bad_arguments_are_refused() -> None:
    """An ease that is no number has no word."""
    with pytest.raises(ValueError, match="finite"):
        fit_word(float("nan"))


def test_far_below_the_body_it_is_called_stretched() -> None:
    """A bust of 88 cm in a garment 7 cm narrower (8 % are 7.04 cm) is a very close fit still, in one 7.1 cm narrower
    it is stretched; without the body nobody can tell (arithmetic)."""
    assert fit_word(-70, 880) == "very close"
    assert fit_word(-71, 880) == "stretched"
    assert fit_word(-71) == "very close"


def test_just_as_far_below_the_body_as_is_usual_is_not_yet_stretched() -> None:
    """By hand: eight hundredths of a body of 1 m are 80 mm."""
    assert fit_word(-80.0, 1000.0) == fit_word(-80.0)
    assert fit_word(-80.01, 1000.0) == "stretched"
