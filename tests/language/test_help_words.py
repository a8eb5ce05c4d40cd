from __future__ import annotations

import pytest

from stepper.language.help_words import GROUPS, tell_help
from stepper.language.understanding.understand import NotUnderstood, list_phrases, understand
from stepper.session.cues import Enough
from stepper.session.effects import TellHelp
from stepper.session.questions.topics import HelpWith
from tests.plans import final_increase

GARMENT = final_increase()


def test_every_group_names_wordings_of_the_vocabulary() -> None:
    """A wording that is not understood would be help that fails at once."""
    assert set(GROUPS) == set(HelpWith) - {HelpWith.NOW}
    assert {phrase for group in GROUPS.values() for phrase in group} <= set(list_phrases())


@pytest.mark.parametrize("group", GROUPS, ids=lambda group: group.value)
def test_what_the_help_says_can_be_said_as_it_stands(group: HelpWith) -> None:
    """With its examples filled in, each wording is understood; so is the example behind them."""
    line = tell_help(TellHelp(about=group, cues=()), GARMENT)
    named, _, example = line.removeprefix("Say: ").removesuffix(".").partition(". ")

    for said in filter(None, [*named.split("; "), example.rpartition(": ")[2]]):
        assert not isinstance(understand(said, GARMENT), NotUnderstood), said


def test_the_help_on_counts_says_how_a_count_is_heard_best() -> None:
    """Digit by digit each word is one of ten, so it is the way for a noisy room."""
    line = tell_help(TellHelp(about=HelpWith.COUNTS, cues=()), GARMENT)

    assert line.endswith("Surest in noise: count is two four six.")
    assert understand("count is two four six", GARMENT) == understand("count is 246", GARMENT)


def test_who_asks_what_can_be_said_hears_how_to_stop() -> None:
    """It is the last she hears, and understood as it stands."""
    line = tell_help(TellHelp(about=HelpWith.NOW, cues=(Enough,)), GARMENT)

    assert isinstance(understand(line.rpartition("To stop, say: ")[2].removesuffix("."), GARMENT), Enough)


@pytest.mark.parametrize("group", GROUPS, ids=lambda group: group.value)
def test_no_group_is_longer_than_is_kept_in_mind(group: HelpWith) -> None:
    """At most six wordings and thirty words: about ten seconds."""
    line = tell_help(TellHelp(about=group, cues=()), GARMENT)

    assert len(GROUPS[group]) <= 6
    assert len(line.split()) <= 30
