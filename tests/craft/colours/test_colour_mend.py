"""Single changes of colour that mend what vanishes."""

from __future__ import annotations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from stepper.craft.colours.colour import Rgb, change_lightness, lab, rgb_from_hex
from stepper.craft.colours.colour_difference import VANISHES_BELOW, colour_difference, value_difference
from stepper.craft.colours.colour_mend import HARD_BELOW, ColourChange, find_mend, vanishes
from stepper.craft.colours.colour_vision import hardest_vision

RED, GREEN, NAVY, CREAM = (rgb_from_hex(each) for each in ("#c0392b", "#1e7a34", "#1b2a41", "#f4efe6"))

channels = st.integers(0, 255)
colours = st.builds(Rgb, channels, channels, channels)


def test_the_red_and_green_pair_vanishes_and_navy_on_cream_does_not() -> None:
    """Contrast 1.007, Δ L* 0.19 against 12.61 and 77.8 (check-values 7.3, computed)."""
    assert vanishes(RED, GREEN)
    assert not vanishes(NAVY, CREAM)


def test_a_pair_is_lost_in_grey_alone_or_to_other_eyes_alone() -> None:
    """Orange and teal of one lightness are plain to every eye and one grey in a photograph. Wine and bottle green are
    told by their lightness, and look alike to green-blind eyes. Either is a motif nobody sees."""
    orange, teal = rgb_from_hex("#d2781e"), rgb_from_hex("#2b9a9e")
    assert value_difference(orange, teal) < VANISHES_BELOW
    assert hardest_vision(orange, teal)[1] > 3 * HARD_BELOW
    assert vanishes(orange, teal)
    wine, bottle = rgb_from_hex("#531d22"), rgb_from_hex("#2a5130")
    assert value_difference(wine, bottle) > VANISHES_BELOW
    assert hardest_vision(wine, bottle) == ("green-blind", pytest.approx(6.6, abs=0.1))
    assert vanishes(wine, bottle)


def test_one_change_mends_the_red_and_green_pair() -> None:
    """Twenty steps of lightness apart, in the hue of her own."""
    found = find_mend({"A": RED, "B": GREEN}, [("A", "B")])
    assert found is not None
    other = GREEN if found.yarn == "A" else RED
    assert value_difference(found.colour, other) == pytest.approx(found.apart)
    assert 20 <= found.apart < 21
    assert not vanishes(found.colour, other)
    assert found.left == ()


@pytest.mark.parametrize(
    "texts",
    [
        ("#c0392b", "#1e7a34"),
        ("#f4efe6", "#fdfdfd"),
        ("#c6c6c6", "#cccccc"),  # of the lighter ways only white itself is far enough
        ("#777777", "#7c7c7c", "#b4b4b4"),
    ],
)
def test_the_change_is_the_smallest_of_all_half_steps_of_lightness(texts: tuple[str, ...]) -> None:
    """Every lightness from black to white is tried for every yarn, and no way out is taken for granted: what is left
    vanishing weighs first, then how far the yarn goes from its own colour."""
    yarns = {str(at): rgb_from_hex(text) for at, text in enumerate(texts)}
    pairs = [(one, other) for one in yarns for other in yarns if one < other]
    lost = [(one, other) for one, other in pairs if vanishes(yarns[one], yarns[other])]
    ways = []
    for key in {key for pair in lost for key in pair}:
        others = [yarns[each] for each in yarns if each != key]
        for half in range(201):
            tried = change_lightness(yarns[key], half / 2)
            apart = min(value_difference(tried, each) for each in others)
            if apart >= 20 and not any(vanishes(tried, each) for each in others):
                left = sum(key not in pair for pair in lost)
                ways.append((left, colour_difference(lab(yarns[key]), lab(tried)), apart, key, tried))
    change = find_mend(yarns, pairs)
    assert change is not None
    best = min(ways)
    assert (len(change.left), change.far, change.apart, change.yarn, change.colour) == best


def test_what_stands_apart_needs_no_change() -> None:
    """Nothing is proposed for nothing."""
    assert find_mend({"A": NAVY, "B": CREAM}, [("A", "B")]) is None


def test_of_two_yarns_the_one_that_mends_more_is_changed() -> None:
    """Green vanishes beside red and beside another red: green is the one to change."""
    found = find_mend({"A": RED, "B": GREEN, "C": rgb_from_hex("#b8402f")}, [("A", "B"), ("B", "C")])
    assert found is not None
    assert (found.yarn, found.left) == ("B", ())


def test_pairs_that_one_change_cannot_mend_are_told() -> None:
    """Two pairs without a yarn in common: one change leaves the other pair."""
    four = {"A": RED, "B": GREEN, "C": NAVY, "D": rgb_from_hex("#1d2c43")}
    found = find_mend(four, [("A", "B"), ("C", "D")])
    assert found is not None
    assert len(found.left) == 1


@settings(max_examples=25, deadline=None)
@given(colours, colours, colours)
def test_a_change_never_makes_another_pair_vanish(one: Rgb, other: Rgb, third: Rgb) -> None:
    """Whatever the colours: the pairs lost afterwards are the ones that are told, and were lost before."""
    before = {"A": one, "B": other, "C": third}
    pairs = [("A", "B"), ("B", "C"), ("A", "C")]
    found: ColourChange | None = find_mend(before, pairs)
    if found is None:
        return
    after = {**before, found.yarn: found.colour}
    lost = [pair for pair in pairs if vanishes(after[pair[0]], after[pair[1]])]
    assert tuple(lost) == found.left
    assert all(vanishes(before[pair[0]], before[pair[1]]) for pair in lost)


def test_where_no_lightness_is_far_enough_there_is_no_change() -> None:
    """Two greys of L* 54 can be 54 apart at most: nothing is proposed, rather than a colour that is no better."""
    middle = rgb_from_hex("#808080")
    assert find_mend({"A": middle, "B": middle}, [("A", "B")], least=60) is None
    assert find_mend({"A": middle, "B": middle}, [("A", "B")], least=40) is not None
