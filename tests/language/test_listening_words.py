from __future__ import annotations

from stepper.language.listening_words import list_surest_words, tell_how_to_answer, tell_without_ears
from stepper.language.understanding.understand import NotUnderstood, understand
from stepper.language.understanding.vocabulary import VOCABULARY
from stepper.session.effects import TellAsleep, TellAwake, TurnFilm
from tests.plans import final_increase


def test_the_surest_words_are_named_behind_her_own_address_word() -> None:
    """Each is understood as it stands, and the list is short enough to keep in mind: at most twenty words."""
    line = list_surest_words("marigold")
    named = line.partition("marigold: ")[2].partition("; or ")[0].split("; ")
    assert named == [word for row in VOCABULARY for word in row.surest]
    assert {"forward", "backward", "yes", "no"} <= set(named)
    for word in named:
        assert len(word.split()) == 1
        assert not isinstance(understand(word, final_increase()), NotUnderstood), word
    assert len(line.split()) <= 22


def test_answering_while_others_talk_names_her_own_address_word() -> None:
    """Both ways: behind the word, or twice. Short enough to keep in mind."""
    line = tell_how_to_answer("marigold")
    assert "marigold, yes" in line
    assert "once more" in line
    assert len(line.split()) <= 20


def test_without_ears_nothing_is_said_to_listen() -> None:
    """The start of a film and opening and closing the ears say so: "until you say" would be a claim too."""
    for effect in (TurnFilm(on=True), TellAwake(), TellAsleep()):
        assert "nothing listens now" in (tell_without_ears(effect) or "").lower()
    assert tell_without_ears(TurnFilm(on=False)) is None
