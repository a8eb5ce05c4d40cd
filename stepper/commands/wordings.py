"""What a recogniser is to listen for: the vocabulary, the plan's own names and her own wordings."""

from __future__ import annotations

from collections.abc import Hashable, Iterator, Mapping
from typing import Final

from stepper.language.numbers import digits_words, words
from stepper.language.understand import NotUnderstood, bare, normal, understand
from stepper.language.vocabulary import VOCABULARY
from stepper.language.wordings import Wording
from stepper.plan.model import Plan
from stepper.voice.wordings import Frame, Wordings

MOST: Final = 999
"""The largest number that is listened for as a phrase; larger ones are understood when written down right."""
_FEWEST_WORDS: Final = 2
# A single word heard over a film would be a guess.


def wordings_for(plan: Plan | None, own: Mapping[str, str] | None = None) -> Wordings:
    """List what can be said in a session.

    Args:
        plan: What is knitted, for the names of its sections and labels; None before there is a session.
        own: The knitter's own wordings: hers to one of the vocabulary's.
    """
    phrases = dict(_phrases(plan))
    frames = [
        Frame(before=before.strip(), after=after.strip(), means=meaning(row))
        for row in VOCABULARY
        for phrase in row.spoken
        if phrase.count("{") == 1 and "{number}" in phrase
        for before, after in [phrase.split("{number}")]
    ]
    for mine, meant in (own or {}).items():
        row = next(row for row in VOCABULARY if meant in (*row.spoken, *row.typed))
        if "{" in meant:
            continue  # such a wording needs its slot, which hers has not
        phrases[normal(mine) or mine.casefold()] = meaning(row)
    return Wordings(
        phrases=phrases,
        frames=tuple(frames),
        numbers=numbers(),
        known=lambda text: plan is not None and is_cue(text, plan, own),
    )


def numbers() -> dict[str, int]:
    """Give every way in which each number is listened for: as a cardinal, with "and", digit by digit."""
    ways = {}
    for number in range(MOST + 1):
        cardinal = words(number)
        hundreds, hundred, rest = cardinal.partition(" hundred ")
        ways[cardinal] = number
        if hundred:
            ways[f"{hundreds} hundred and {rest}"] = number
        if number > 9:
            ways[digits_words(number)] = number
    return ways


def is_cue(text: str, plan: Plan, own: Mapping[str, str] | None = None) -> bool:
    """Tell whether a transcript is a cue just as it stands."""
    return len(text.split()) >= _FEWEST_WORDS and not isinstance(
        understand(text, plan, own=own), NotUnderstood
    )


def _phrases(plan: Plan | None) -> Iterator[tuple[str, Hashable]]:
    for row in VOCABULARY:
        for phrase in row.spoken:
            if "{" not in phrase:
                if len(phrase.split()) >= _FEWEST_WORDS:
                    yield phrase, meaning(row)
            elif phrase.count("{") == 1 and "{place}" in phrase and plan is not None:
                for place in _places(plan):
                    yield phrase.replace("{place}", place), (*meaning(row), place)


def _places(plan: Plan) -> tuple[str, ...]:
    labels = (round_.label for round_ in plan.rounds if round_.label)
    return tuple(dict.fromkeys(bare(normal(name)) for name in (*plan.sections, *labels)))


def meaning(row: Wording) -> tuple[Hashable, ...]:
    """Give what a wording of a row means to a recogniser: wordings of like meaning do not compete."""
    return (row.cue, *row.fixed.items())
