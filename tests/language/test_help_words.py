from __future__ import annotations

import pytest

from stepper.language.help_words import GROUPS, tell_help
from stepper.language.understand import NotUnderstood, list_phrases, understand
from stepper.session.cues import HelpWith
from stepper.session.effects import TellHelp
from tests.plans import final_increase

GARMENT = final_increase()


def test_every_group_names_wordings_of_the_vocabulary() -> None:
    """A wording that is not understood would be help that fails at once."""
    assert set(GROUPS) == set(HelpWith) - {HelpWith.NOW}
    assert {phrase for group in GROUPS.values() for phrase in group} <= set(list_phrases())


@pytest.mark.parametrize("group", GROUPS, ids=lambda group: group.value)
def test_what_the_help_says_can_be_said_as_it_stands(group: HelpWith) -> None:
    """With its examples filled in, each wording is understood."""
    line = tell_help(TellHelp(about=group, cues=()), GARMENT)

    for said in line.removeprefix("Say: ").removesuffix(".").split("; "):
        assert not isinstance(understand(said, GARMENT), NotUnderstood), said


@pytest.mark.parametrize("group", GROUPS, ids=lambda group: group.value)
def test_no_group_is_longer_than_is_kept_in_mind(group: HelpWith) -> None:
    """At most six wordings and thirty words: about ten seconds."""
    line = tell_help(TellHelp(about=group, cues=()), GARMENT)

    assert len(GROUPS[group]) <= 6
    assert len(line.split()) <= 30
