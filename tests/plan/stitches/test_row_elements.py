"""What elements ask of the stitches: their own number, or the stitches on hold that they mean."""

from __future__ import annotations

import pytest

from stepper.plan.stitches.row_elements import UNNAMED, MisfitError, fixed_uses, held_stitches, is_short
from stepper.project.problems import Span
from stepper.project.stitchwork import Across, Hold, Mark, Numbers, Several, Until, Work

HERE = Span(line=1, column=1)


def times(number: int) -> Numbers:
    """Return a number that is the same in all sizes."""
    return Numbers((number,), HERE)


def test_an_element_uses_its_own_stitches() -> None:
    """k2tog takes two stitches each (Craft Yarn Council); a group takes those of its elements, so often."""
    pair = (Work("k", times(3), None, HERE), Work("k2tog", times(2), None, HERE))
    assert fixed_uses(Several(pair, times(4), "times", None, HERE), 0) == 4 * (3 + 4)
    assert fixed_uses(Work("pattern", times(5), None, HERE), 0) == 5
    assert fixed_uses(Hold(times(6), "front", HERE), 0) == 6
    assert fixed_uses(Mark("pm", "", HERE), 0) == 0


@pytest.mark.parametrize(
    ("name", "short"),
    [
        ("sleeve", True),
        ("sleeve left", True),
        ("left", True),
        ("right sleeve", False),
        ("left sleeve cap", False),
        ("", False),
    ],
)
def test_a_name_is_short_for_a_part_that_has_all_its_words(name: str, short: bool) -> None:
    """In whatever order they are said; no words are no name."""
    assert is_short(name, ["left sleeve", "neck"]) == short


def test_of_two_alike_without_a_name_the_one_held_first_is_worked_first() -> None:
    """Both sleeves of a pair, put aside by one line: neither is the other's, and the page says how many they are."""
    sleeve = Across("left sleeve", HERE, times(10))
    assert held_stitches(sleeve, {UNNAMED: 10, f"second {UNNAMED}": 10}, 0) == (UNNAMED, 10)
    with pytest.raises(MisfitError):
        held_stitches(sleeve, {UNNAMED: 10, f"second {UNNAMED}": 12, f"third {UNNAMED}": 10, "left": 10}, 0)


def test_what_works_up_to_a_place_has_no_number() -> None:
    """Two stretches of open length in one another leave open where the inner one ends."""
    with pytest.raises(MisfitError, match="cannot stand inside a repeat"):
        fixed_uses(Until("k", "end", None, None, HERE), 0)


def test_the_only_stitches_on_hold_need_no_name() -> None:
    """With two parts on hold the line has to say which, and how many have to agree."""
    assert held_stitches(Across("", HERE), {"front": 12}, 0) == ("front", 12)
    with pytest.raises(MisfitError, match="does not say which"):
        held_stitches(Across("", HERE), {"front": 12, "back": 12}, 0)
    with pytest.raises(MisfitError, match="12 are on hold"):
        held_stitches(Across("front", HERE, times(11)), {"front": 12}, 0)


def test_held_stitches_under_the_heading_of_a_pair_are_those_of_the_first() -> None:
    """ "Place 54 held sts on the needles" under "Sleeves (make 2)": both are alike, so the one held first is worked
    first. Where they are not alike, or the heading is for something else, the line has to say which."""
    pair = {"sleeve": 54, "second sleeve": 54}
    assert held_stitches(Across("", HERE, times(54)), pair, 0, "sleeves") == ("sleeve", 54)
    for others, section in (({"sleeve": 54, "second sleeve": 56}, "sleeves"), (pair, "collar")):
        with pytest.raises(MisfitError, match="does not say which") as caught:
            held_stitches(Across("", HERE), others, 0, section)
        assert 'Say which, as "held sleeve sts".' in caught.value.hint


def test_stitches_on_a_pin_are_those_of_the_part_that_put_them_there() -> None:
    """ "Knit across 9 sts from right front" of a band: its left front is printed first, and its pin has no name either."""
    pins, lots = {"holder": 9, "second holder": 9}, {"holder": "left front", "second holder": "right front, neck"}
    for number in (None, times(9)):
        assert held_stitches(Across("right front", HERE, number), pins, 0, "neckband", "", lots) == ("second holder", 9)
        assert held_stitches(Across("left front neck", HERE, number), pins, 0, "neckband", "", lots) == ("holder", 9)
        for name in ("front", "sleeve"):
            with pytest.raises(MisfitError, match="nothing is on hold for"):
                held_stitches(Across(name, HERE, number), pins, 0, "neckband", "", lots)
        with pytest.raises(MisfitError, match='nothing is on hold for "right front"'):
            held_stitches(Across("right front", HERE, number), {"holder": 9}, 0, "neckband", "", lots)
    both = {"holder": "body", "second holder": "body"}
    assert held_stitches(Across("sleeve", HERE, times(9)), pins, 0, "sleeves", "", both) == ("holder", 9)


def test_held_stitches_are_those_that_the_section_itself_put_on_hold() -> None:
    """The neck of the back waits as well, and is not what the front goes on with; by number either may be meant."""
    held = {"holder": 38, "second holder": 51}
    assert held_stitches(Across("", HERE), held, 0, "front", "", {"second holder": "front"}) == ("second holder", 51)
    assert held_stitches(Across("", HERE, number=times(38)), held, 0, "front", "", {"second holder": "front"}) == ("holder", 38)
    with pytest.raises(MisfitError, match="38 and 51 stitches are on hold without a name"):
        held_stitches(Across("", HERE), held, 0, "front", "", {"holder": "front", "second holder": "front"})


def test_stitches_put_aside_without_a_name_may_be_given_one_later() -> None:
    """ "Place 11 sts on waste yarn", and two pages on "held sts of the thumb": there are no others. A name that was
    given is never passed over."""
    assert held_stitches(Across("thumb", HERE), {UNNAMED: 11}, 0) == (UNNAMED, 11)
    for others in ({UNNAMED: 11, "palm": 20}, {"palm": 20}):
        with pytest.raises(MisfitError, match='nothing is on hold for "thumb"'):
            held_stitches(Across("thumb", HERE), others, 0)


@pytest.mark.parametrize(
    ("name", "held", "hint"),
    [
        ("frnot", {"front": 12, "back": 12}, 'Did you mean "front"?'),
        ("thumb", {"front": 12, "back": 12}, "On hold: front or back."),
        ("thumb", {}, "On hold: nothing."),
    ],
)
def test_who_asks_for_stitches_that_are_not_there_is_told_which_are(
    name: str, held: dict[str, int], hint: str
) -> None:
    """A name misspelt is found again; a list of what there is serves for the rest."""
    with pytest.raises(MisfitError) as told:
        held_stitches(Across(name, HERE), held, 0)
    assert told.value.hint == hint


@pytest.mark.parametrize(
    ("name", "section", "meant"),
    [
        ("sleeve", "left sleeve", "left sleeve"),  # the one of the section in hand
        ("left sleeve", "body", "left sleeve"),
        ("left", "body", "left sleeve"),  # the only one that is called so
        ("front", "left sleeve", "front"),
    ],
)
def test_a_name_may_leave_words_out_where_only_one_part_is_meant(name: str, section: str, meant: str) -> None:
    """ "Return sleeve sts" in the left sleeve are those of the left one; elsewhere nobody can tell."""
    held = {"left sleeve": 40, "right sleeve": 41, "front": 60}
    assert held_stitches(Across(name, HERE), held, 0, section) == (meant, held[meant])
    with pytest.raises(MisfitError, match="nothing is on hold for"):
        held_stitches(Across("sleeve", HERE), held, 0, "body")


@pytest.mark.parametrize(
    ("name", "meant"),
    [("first sleeve", "sleeves"), ("second sleeve", "sleeves, second"), ("other sleeve", "sleeves, second")],
)
def test_the_first_and_the_second_of_a_pair_are_those_made_one_after_the_other(name: str, meant: str) -> None:
    """A yoke takes up both sleeves, which "make 2" worked in sections of their own."""
    held = {"sleeves": 58, "sleeves, second": 58, "body": 148}
    assert held_stitches(Across(name, HERE), held, 0, "yoke") == (meant, 58)


def test_sleeve_stitches_of_a_pair_are_those_of_the_one_that_still_waits() -> None:
    """A yoke that says "48 sleeve sts" twice takes up the first and then the second."""
    held = {"body": 148, "sleeves": 48, "sleeves, second": 48}
    assert held_stitches(Across("sleeve", HERE, number=times(48)), held, 0, "yoke") == ("sleeves", 48)
    del held["sleeves"]
    assert held_stitches(Across("sleeve", HERE), held, 0, "yoke") == ("sleeves, second", 48)


def test_sleeve_stitches_of_two_that_are_not_alike_are_refused() -> None:
    """Which of them is meant is not said."""
    with pytest.raises(MisfitError, match="nothing is on hold"):
        held_stitches(Across("sleeve", HERE), {"sleeves": 48, "sleeves, second": 46}, 0, "yoke")


def test_the_second_of_what_was_made_once_is_not_there() -> None:
    """Nobody takes the only sleeve for the second one."""
    with pytest.raises(MisfitError, match="nothing is on hold"):
        held_stitches(Across("second sleeve", HERE), {"sleeve": 58, "body": 148}, 0, "yoke")
