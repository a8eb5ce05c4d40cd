"""What a recogniser is to listen for: the vocabulary, the plan's own names and the knitter's own wordings."""

from __future__ import annotations

import re
from collections.abc import Hashable, Iterator, Mapping
from functools import cache
from typing import Final

from stepper.ears.wordings import Called, Frame, Reply, Wordings
from stepper.language.numbers import decimal, digits_words, words
from stepper.language.understanding.normal_text import drop_articles, normalise
from stepper.language.understanding.understand import NotUnderstood, asked_by_ideas, understand
from stepper.language.understanding.vocabulary import VOCABULARY
from stepper.language.understanding.wordings import Wording
from stepper.plan.model import Plan
from stepper.session import cues
from stepper.session.cues import Count, Enough, No, Note, Yes

MOST: Final = 999
"""The largest number listened for as a phrase; larger ones are understood only if transcribed correctly."""
_LONGEST: Final = 200
_PARTS: Final = {"a quarter": 0.25, "a half": 0.5, "three quarters": 0.75}
_UNITS: Final = {"": "", "centimeters": "cm", "inches": "in"}
# As the recogniser's model writes them, with their meaning; a length without a unit is in the plan's.
_TENS: Final[Mapping[str, float]] = {words(number): number for number in range(1, 21)}
# What may be added to a count made aloud.
_COUNT: Final = next(row for row in VOCABULARY if row.cue is Count)
MOVING: Final = (
    cues.Next, cues.GoOn, cues.Back, cues.AtStitch, cues.AtMarker, cues.GoTo, cues.RoundsDone,
    cues.RoundsBack, cues.StitchesBack, cues.YarnDone, cues.Undo, cues.Redo, cues.Tink, cues.Yes,
)  # fmt: skip
"""The cues that move the place, or may: a yes, where a move was read back."""
_FEWEST_WORDS: Final = 2
# A single word heard while a film is on would be a guess.
_FEWEST_OF_A_QUESTION: Final = 4
# A question in words of her own is heard in full or not at all.


def list_wordings(plan: Plan | None, own: Mapping[str, str] | None = None) -> Wordings:
    """List what can be said in a session.

    Args:
        plan: What is knitted, for the names of its sections and labels; None before there is a session.
        own: The knitter's own wordings, each with the vocabulary's wording it stands for.
    """
    phrases = dict(_phrases(plan))
    for mine, meant in (own or {}).items():
        row = next(row for row in VOCABULARY if meant in (*row.spoken, *row.typed))
        if "{" in meant:
            continue  # such a wording needs its slot, which hers lacks
        phrases[normalise(mine) or mine.casefold()] = meaning_of(row)
    # A count without a word around it is said digit by digit.
    bare_count = Frame(before="", after="", means=meaning_of(_COUNT), numbers=_digit_by_digit())
    return Wordings(
        phrases=phrases,
        called=dict(_called()),
        frames=(*_frames(plan), bare_count),
        numbers=list_numbers(),
        openings=frozenset(_openings()),
        known=lambda text: plan is not None and is_cue(text, plan, own),
        remark=lambda text: plan is not None and is_remark(text, plan),
        only_called=is_small_talk,
        moves=moves,
        last_number=last_number,
    )


@cache
def list_numbers() -> dict[str, int]:
    """Return every way in which each number is listened for: as a cardinal, with "and", digit by digit."""
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


@cache
def list_lengths() -> dict[str, float]:
    """Return every way in which a length is listened for: whole, in halves and quarters, and in tenths."""
    ways: dict[str, float] = {said: number for said, number in list_numbers().items() if number <= _LONGEST}
    for number in range(100):
        whole = words(number)
        ways |= {f"{whole} and {part}": number + share for part, share in _PARTS.items()}
        ways |= {f"{whole} point {words(tenth)}": number + tenth / 10 for tenth in range(1, 10)}
    return ways


def is_cue(text: str, plan: Plan, own: Mapping[str, str] | None = None) -> bool:
    """Return whether a transcript is a cue exactly as it stands, or a question by what it is about.

    One word behind others that mean nothing is none: "slow down" is written down as "so done".
    """
    said = text.split()
    if len(said) < _FEWEST_WORDS or drop_articles(normalise(text)) == said[-1]:
        return False
    if not isinstance(understand(text, plan, own=own), NotUnderstood):
        return True
    return len(text.split()) >= _FEWEST_OF_A_QUESTION and asked_by_ideas(text, plan) is not None


def is_small_talk(text: str) -> bool:
    """Return whether a transcript is a wording that counts behind the address word alone, or a short one that
    is only typed: people say such to each other in any film ("good night", "wait for me")."""
    return drop_articles(normalise(text)) in _small_talk()


@cache
def _small_talk() -> frozenset[str]:
    only_typed = (
        phrase
        for row in VOCABULARY
        for phrase in row.typed
        if "{" not in phrase and (row.cue is Enough or len(phrase.split()) < _FEWEST_OF_A_QUESTION)
    )
    called = (phrase for row in VOCABULARY for phrase in row.called)
    return frozenset(drop_articles(normalise(phrase)) for phrase in (*only_typed, *called))


def is_remark(text: str, plan: Plan) -> bool:
    """Return whether a transcript is a note with content."""
    cue = understand(text, plan)
    return isinstance(cue, Note) and bool(cue.text.strip())


def last_number(text: str) -> float | None:
    """Return the number that a text ends with; one word may stand behind it, such as a unit.

    Args:
        text: As a recogniser writes it: "count is 246", "i have two hundred and forty six stitches".

    Returns:
        The number, or None if there is none or it cannot be read.
    """
    said = text.replace("-", " ").split()
    for end in (len(said), len(said) - 1):
        found = [decimal(said[start:end]) for start in range(end)]
        if any(each is not None for each in found):
            return float(next(each for each in found if each is not None))
    return None


def _phrases(plan: Plan | None) -> Iterator[tuple[str, Hashable]]:
    for row in VOCABULARY:
        for phrase in row.spoken:
            if "{" not in phrase:
                if len(phrase.split()) >= _FEWEST_WORDS:
                    yield phrase, meaning_of(row)
            elif phrase.count("{") == 1 and "{place}" in phrase and plan is not None:
                for place in _places(plan):
                    yield phrase.replace("{place}", place), (*meaning_of(row), place)


def _openings() -> Iterator[str]:
    """List what stands in front of the first slot of the wordings that have one."""
    for row in VOCABULARY:
        for phrase in (*row.spoken, *row.typed):
            front, slot, _ = phrase.partition("{")
            if slot and front.strip():
                yield front.strip()


def _frames(plan: Plan | None) -> Iterator[Frame]:
    """List the wordings with one number in them; those with two are left to the keyboard.

    What may occur anywhere in talk, such as "and ten", is left out too.
    """
    for row in VOCABULARY:
        for phrase in row.spoken:
            slots = re.findall(r"\{(\w+)\}", phrase)
            if slots == ["number"]:
                yield _frame(phrase, meaning_of(row))
            elif slots == ["length"]:
                for said, unit in _UNITS.items():
                    means = (*meaning_of(row), unit or (plan.units if plan is not None else "cm"))
                    yield _frame(f"{phrase} {said}", means, list_lengths())
            elif slots == ["tens"] and not phrase.startswith("and "):
                yield _frame(phrase, meaning_of(row), _TENS)
            elif slots == ["yarn", "weight"] and plan is not None:
                for name in plan.yarns.values():
                    said = phrase.replace("{yarn}", drop_articles(normalise(name)))
                    yield _frame(f"{said} grams", (*meaning_of(row), name))
            elif sorted(slots) == ["number", "place"] and plan is not None:
                for place in _places(plan):
                    yield _frame(phrase.replace("{place}", place), (*meaning_of(row), place))


def _called() -> Iterator[tuple[str, Called]]:
    """List what is heard where she surely speaks to the program, with the question that each answers."""
    for row in VOCABULARY:
        for word in row.surest:
            answers = Reply.YES_OR_NO if row.cue in (Yes, No) else None
            yield word, Called(means=meaning_of(row), answers=answers)
        for phrase in row.called:
            answers = Reply.NO_ANSWER if row.cue is No else None
            yield phrase, Called(means=meaning_of(row), answers=answers)


@cache
def _digit_by_digit() -> dict[str, float]:
    return {digits_words(number): number for number in range(MOST + 1)}


def _frame(phrase: str, means: Hashable, numbers: Mapping[str, float] | None = None) -> Frame:
    before, after = re.split(r"\{\w+\}", phrase)
    return Frame(before=before.strip(), after=after.strip(), means=means, numbers=numbers)


def _places(plan: Plan) -> tuple[str, ...]:
    labels = (round_.label for round_ in plan.rounds if round_.label)
    return tuple(dict.fromkeys(drop_articles(normalise(name)) for name in (*plan.sections, *labels)))


def moves(means: Hashable) -> bool:
    """Return whether what a wording means to a recogniser moves the knitting.

    Args:
        means: As `meaning_of` gives it, alone or with a number behind it.
    """
    while isinstance(means, tuple):
        means = means[0]
    return means in MOVING


def meaning_of(row: Wording) -> tuple[Hashable, ...]:
    """Return what a row's wordings mean to a recogniser: wordings with the same meaning do not compete."""
    return (row.cue, *row.fixed.items())
