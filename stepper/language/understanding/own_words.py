"""Her own words for cues: whether they can be said, are not taken, and mean something known. No I/O."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from difflib import get_close_matches
from typing import NamedTuple

from stepper.language.understanding.normal_text import drop_articles, normalise
from stepper.language.understanding.understand import (
    NotUnderstood,
    list_phrases,
    understand,
)
from stepper.plan.model import Plan


class WordingFault(NamedTuple):
    """What is wrong with one of her wordings."""

    words: str
    """Hers."""
    at_meaning: bool
    """Whether the fault is in what they stand for rather than in the words themselves."""
    sentence: str
    hint: str


def find_faults(own: Mapping[str, str], plan: Plan) -> Iterator[WordingFault]:
    """Find what is wrong with her own words for cues.

    Args:
        own: Her wordings, each with the vocabulary's wording it stands for.
        plan: For the names that cues may hold.

    Yields:
        At most one for each wording, in their order.
    """
    known = list_phrases()
    earlier: dict[str, str] = {}
    for words, meant in own.items():
        found = _fault(words, meant, known, plan) or _said_before(words, meant, earlier, own, plan)
        if found is not None:
            yield found
        earlier.setdefault(drop_articles(normalise(words)), words)


def _fault(words: str, meant: str, known: tuple[str, ...], plan: Plan) -> WordingFault | None:
    if not drop_articles(normalise(words)):
        return WordingFault(
            words, False, f'"{words}" has no word in it that counts.', "Write words to be said."
        )
    if meant not in known:
        near = get_close_matches(meant, known, n=1)
        hint = f'Did you mean "{near[0]}"?' if near else 'Write a wording that "what can I say" names.'
        return WordingFault(words, True, f'"{meant}" is not a wording of a cue.', hint)
    if "{" in meant:
        sentence = f'"{meant}" has a blank in it, which own words cannot fill.'
        return WordingFault(words, True, sentence, "Choose a wording without braces.")
    if not isinstance(understand(words, plan), NotUnderstood) and not means_the_same(words, meant, plan):
        sentence = f'"{words}" is a cue already, and does not mean "{meant}".'
        return WordingFault(words, False, sentence, "Choose other words.")
    return None


def _said_before(
    words: str, meant: str, earlier: Mapping[str, str], own: Mapping[str, str], plan: Plan
) -> WordingFault | None:
    first = earlier.get(drop_articles(normalise(words)))
    if first is None or means_the_same(own[first], meant, plan):
        return None
    sentence = f'"{words}" and "{first}" sound the same and stand for different cues.'
    return WordingFault(words, False, sentence, "Choose other words for one of them.")


def sound_alike(one: str, other: str) -> bool:
    """Return whether two wordings are the same apart from words that do not matter."""
    return drop_articles(normalise(one)) == drop_articles(normalise(other))


def means_the_same(one: str, other: str, plan: Plan) -> bool:
    """Return whether two wordings of the vocabulary stand for the same cue."""
    return understand(one, plan) == understand(other, plan)


def list_own_words(own: Mapping[str, str]) -> str:
    """List her own words for the help; empty if there are none."""
    if not own:
        return ""
    listed = "; ".join(f'"{words}" for {meant}' for words, meant in own.items())
    return f"Your own words: {listed}."
