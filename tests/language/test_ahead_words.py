"""Words for what is due on the way."""

from __future__ import annotations

from stepper.craft.stitches import Kind
from stepper.language.effect_words import tell_effect
from stepper.plan.yarn.skein_ends import SkeinEnd
from stepper.session.due.next_skein import GetSkein
from stepper.session.due.to_fetch import GetReady
from stepper.session.questions.about_series import InRound, Series, TellDueNow, TellSeries
from tests.fixtures import plan_named
from tests.plans import final_increase


def test_things_to_fetch_are_listed_behind_when_they_are_needed() -> None:
    """When comes first: whether to get up now is what she wants to know."""
    made = final_increase()
    key, name = next(iter(made.yarns.items()))
    one = GetReady(index=3, here=2, markers=1)
    assert tell_effect(one, made) == "In the next round you need a marker."
    many = GetReady(index=4, here=2, needle_mm=4.0, holder=True, markers=8, yarns=(key,))
    expected = f"In 2 rounds you need the 4 mm needle, a holder, markers and {name}."
    assert tell_effect(many, made) == expected


def test_a_skein_is_named_with_about_when_it_ends() -> None:
    """Another one if there is one; of the last only a scale knows."""
    made = final_increase()
    key, name = next(iter(made.yarns.items()))
    more = GetSkein(end=SkeinEnd(yarn=key, soonest=3, likely=5, more=True), here=2)
    assert tell_effect(more, made) == f"In about 3 rounds you need another skein of {name}."
    last = GetSkein(end=SkeinEnd(yarn=key, soonest=3, likely=3, more=False), here=2)
    expected = f"In about a round the last skein of {name} may end. Weigh it and say: {name} weighs, and the grams."
    assert tell_effect(last, made) == expected


def test_two_counts_are_told_apart_by_kind_and_place() -> None:
    """Which of which: "the third of six" keeps her place in a count that a finger on the page would keep."""
    made = final_increase()
    neck = Series(kind=Kind.DECREASE, where=InRound.BEGINNING, index=4, number=3, of=6)
    cable = Series(kind=Kind.CABLE, where=InRound.ELSEWHERE, index=6, number=2, of=2)
    both = TellSeries(series=(neck, cable), here=4)
    assert tell_effect(both, made) == "Side by side: decrease at the beginning in this round, cable in 2 rounds."
    now = TellDueNow(series=(neck, cable))
    assert tell_effect(now, made) == "The third of 6 decreases at the beginning and the last of 2 cables."


def test_how_far_it_is_is_told_in_rows_while_she_knits_rows() -> None:
    """The sleeve after the body is knitted in the round, but what lies before it are rows."""
    cardigan = plan_named("cardigan")
    sleeve = next(each for each in cardigan.rounds if each.section == "left sleeve")
    told = tell_effect(GetReady(index=sleeve.index, here=sleeve.index - 2, needle_mm=5.0), cardigan)
    assert told == "In 2 rows you need the 5 mm needle."
    assert tell_effect(GetReady(index=sleeve.index, here=sleeve.index - 1, markers=1), cardigan).startswith("In the next round")
