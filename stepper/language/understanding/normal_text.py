"""Bring a text into the one form in which texts are compared. No I/O."""

from __future__ import annotations

import re
from typing import Final

from stepper.language.same_words import ARTICLES, FILLERS, SAME_WORDS

_PARTS: Final = "½⅓⅔¼¾⅛⅜⅝⅞"
# Signs for fractions, as used when typing inches.

_AGREED: Final = frozenset(("ok", "okay"))


def normalise(text: str) -> str:
    """Reduce a text to the words that matter, each in one form, with one space between them."""
    if text.strip() == "?":
        return "?"
    plain = re.sub(r"['’`]", "", text.casefold())
    plain = re.sub(rf"(?<=[\d{_PARTS}])\s*\"", " in", plain)
    plain = re.sub(rf"(?<=[\d{_PARTS}])(?=(cm|mm|in|g)\b)", " ", plain)
    plain = re.sub(rf"(?<![0-9])\.|\.(?![0-9])|,(?![0-9]{{3}})|[^\w\s./,{_PARTS}-]", " ", plain)
    plain = re.sub(r"-(?!\d)|(?<=[^\s\d])-", " ", plain)  # a minus and a range of figures stay
    words = " ".join(SAME_WORDS.get(word, word) for word in plain.split()).split()
    if words and set(words) <= FILLERS and _AGREED & set(words):
        return "all right"  # with nothing beside it, it is an answer
    while words and words[0] in FILLERS:
        words.pop(0)
    while words and words[-1] in FILLERS:
        words.pop()
    return " ".join(words)


def drop_articles(normal_text: str) -> str:
    """Leave out the articles too, though not in text still to be read: a yarn may be called "A"."""
    return " ".join(word for word in normal_text.split() if word not in ARTICLES)
