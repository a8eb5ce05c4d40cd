"""Find the word of the trade that somebody names, or that a sentence has in it. No I/O."""

from __future__ import annotations

from collections.abc import Mapping
from functools import cache

from stepper.language.understanding.normal_text import drop_articles, normalise
from stepper.language.understanding.terms import ALSO_CALLED, PLAIN, TERMS
from stepper.regex import regex


def term_called(said: str) -> str | None:
    """Return the word of the trade that words name, as `TERMS` has it; None if they name none.

    Args:
        said: In any form: "casting on", "a holder", "the ribbing".
    """
    return _names().get(drop_articles(normalise(said)))


def terms_in(sentence: str) -> tuple[str, ...]:
    """Return the words of the trade in a sentence, as `TERMS` has them, in their order and each once.

    Plain ones are left out. Of two that begin at one word it is the longer: "bind off" is no end
    to "three needle bind off".
    """
    found: list[str] = []
    words = drop_articles(normalise(_SIGNS.sub(" ", sentence))).split()
    at = 0
    while at < len(words):
        for length in range(min(_most_words(), len(words) - at), 0, -1):
            term = _names().get(" ".join(words[at : at + length]))
            if term is not None:
                found.append(term)
                at += length
                break
        else:
            at += 1
    return tuple(term for term in dict.fromkeys(found) if term not in PLAIN)


def asks_for_word(text: str) -> bool:
    """Return whether a question is for a word and not for a fact of the knitting in hand.

    Args:
        text: With its articles: "what is a round", "what does round mean", but not "what is the round".
    """
    return _FOR_WORD.search(text.casefold()) is not None


_FOR_WORD = regex(
    r"\b(?:mean|means|meant|meaning|explain)\b|\b(?:is|are) an?\b|\bhow (?:do|does) \w+ (?!work |knit |make )"
)
"""Words with which a word is asked about."""
_SIGNS = regex(r"[\"“”().,;:]")
"""Signs that stand beside words."""


@cache
def _names() -> Mapping[str, str]:
    """Return every name in the form in which texts are compared, with the word it stands for."""
    names = {
        drop_articles(normalise(name)): term
        for term, others in ALSO_CALLED.items()
        for name in others.split(", ")
    }
    return {**names, **{drop_articles(normalise(term)): term for term in TERMS}}


@cache
def _most_words() -> int:
    return max(len(name.split()) for name in _names())
