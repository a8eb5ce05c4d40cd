"""What elements ask of the stitches: their own number, or the stitches on hold that they mean."""

from __future__ import annotations

import pytest

from stepper.plan.stitches.row_elements import UNNAMED, MisfitError, fixed_uses, held_stitches
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


def test_stitches_put_aside_without_a_name_may_be_given_one_later() -> None:
    """"Place 11 sts on waste yarn", and two pages on "held sts of the thumb": there are no others. A name that was
    given is never passed over."""
    assert held_stitches(Across("thumb", HERE), {UNNAMED: 11}, 0) == (UNNAMED, 11)
    for others in ({UNNAMED: 11, "palm": 20}, {"palm": 20}):
        with pytest.raises(MisfitError, match='nothing is on hold for "thumb"'):
            held_stitches(Across("thumb", HERE), others, 0)
