"""What is left over: written, read back, replaced, and found again for the next garment."""

from __future__ import annotations

from dataclasses import replace

from hypothesis import given
from hypothesis import strategies as st

from stepper.craft.skeins import Skein
from stepper.report.leftovers import (
    Leftover,
    find_usable,
    list_leftovers,
    read_leftovers,
    replace_leftovers,
    write_leftovers,
)
from stepper.report.yarn import list_yarns
from stepper.session.events import Weighed
from stepper.session.state import Position
from tests.plan.test_compile import SWITCHBACK, plan_of

SKEIN = Skein(grams=50, metres=175)
EMBER = Leftover(
    yarn="ember", garment="Shingle mitts", grams=12.5, skein=SKEIN, colour="#c4512d", known="weighed"
)

words = st.text(st.characters(categories=("L", "N", "P", "Zs")), min_size=1, max_size=20).filter(
    lambda text: text.split() and " ".join(text.split()) == text
)


@given(words, words, st.integers(1, 900))
def test_what_is_written_is_read_back(yarn: str, garment: str, tenths: int) -> None:
    """Whatever a yarn or a garment is called."""
    entry = replace(EMBER, yarn=yarn, garment=garment, grams=tenths / 10)
    assert read_leftovers(write_leftovers([entry, EMBER])) == ((entry, EMBER), ())


def test_an_empty_basket_is_read_back() -> None:
    """A garment that used everything up leaves nothing."""
    assert read_leftovers(write_leftovers([]))[0] == ()


def test_a_garment_kept_again_takes_its_own_place_alone() -> None:
    """Nothing of another garment is lost."""
    other = replace(EMBER, garment="Gorse hat")
    newer = replace(EMBER, grams=3.0)
    assert replace_leftovers([EMBER, other], "Shingle mitts", [newer]) == (other, newer)


def test_what_is_wrong_in_the_file_is_told() -> None:
    """With its line, as for a project file."""
    entries, problems = read_leftovers(write_leftovers([EMBER]).replace("grams: 12.5", "grams: lots"))
    assert entries == ()
    assert "lots" in problems[0].message


def test_estimated_before_the_end_and_weighed_after_it() -> None:
    """A weighing when every round is done is what is in the balls."""
    plan = plan_of(SWITCHBACK.read_text(encoding="utf-8"))
    assert {each.known for each in list_leftovers(plan, list_yarns(plan))} == {"estimated"}
    place = Position(index=len(plan.rounds))
    event = Weighed(at="2027-01-05T20:00:00+01:00", place=place, yarn="B", grams=37)
    left = {each.yarn: each for each in list_leftovers(plan, list_yarns(plan, None, [(1, event)]))}
    assert (left["ember"].grams, left["ember"].known) == (37, "weighed")
    assert left["ember"].garment == "Switchback pullover"


def test_a_remnant_is_found_by_name_or_colour_if_it_is_as_thick() -> None:
    """Ember left from one garment will do for ember in the next; a thicker one of that name will not."""
    plan = plan_of(SWITCHBACK.read_text(encoding="utf-8"))
    row = next(each for each in list_yarns(plan, {"B": "#c4512d"}) if each.key == "B")
    renamed = replace(EMBER, yarn="rust")
    thick = replace(EMBER, skein=Skein(grams=50, metres=100))
    assert find_usable(row, SKEIN, [EMBER, renamed, thick], plan.title) == [EMBER, renamed]
    assert find_usable(row, SKEIN, [replace(EMBER, garment=plan.title)], plan.title) == []
