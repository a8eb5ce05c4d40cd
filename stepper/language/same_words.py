"""Words that do not matter and words that mean the same, for comparing texts. No I/O."""

from __future__ import annotations

from typing import Final

_FILLERS: Final = "please um uh er erm hm okay ok so well now hey then just stepper thanks"

FILLERS: Final = frozenset(_FILLERS.split())
"""Words at either end of what is said that mean nothing."""

ARTICLES: Final = frozenset(("the", "a", "an"))
"""Words that may be said or left out, so that nobody has to remember them."""

SAME_WORDS: Final[dict[str, str]] = {
    "color": "colour",
    "row": "round",
    "rows": "rounds",
    "rnd": "round",
    "rnds": "rounds",
    "st": "stitch",
    "sts": "stitches",
    "centimetre": "cm",
    "centimetres": "cm",
    "centimeter": "cm",
    "centimeters": "cm",
    "millimetre": "mm",
    "millimetres": "mm",
    "millimeter": "mm",
    "millimeters": "mm",
    "inch": "in",
    "inches": "in",
    "gram": "g",
    "grams": "g",
    "gramme": "g",
    "grammes": "g",
    "thats": "that is",
    "whats": "what is",
    "wheres": "where is",
    "whens": "when is",
    "hows": "how is",
    "theres": "there is",
    "didnt": "did not",
    "doesnt": "does not",
    "im": "i am",
    "dont": "do not",
    "isnt": "is not",
    "arent": "are not",
    "wasnt": "was not",
    "havent": "have not",
    "hasnt": "has not",
    "cant": "cannot",
    "couldnt": "could not",
    "ive": "i have",
}
"""American, British and shortened forms of a word, with the form understood."""
