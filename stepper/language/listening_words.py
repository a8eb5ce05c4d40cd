"""Say what is listened for: the surest words over a film, and nothing of listening where nothing listens.

No I/O.
"""

from __future__ import annotations

from stepper.language.understanding.vocabulary import VOCABULARY
from stepper.session.effects import Effect, TellAsleep, TellAwake, TurnFilm


def list_surest_words(address_word: str) -> str:
    """Say which words are heard best while a film is on, and what stands in front of them."""
    words = "; ".join(word for row in VOCABULARY for word in row.surest)
    return f"Single words over a film, each behind {address_word}: {words}; or a count as two four six."


def tell_how_to_answer(address_word: str) -> str:
    """Say how a question is answered in one word while somebody else talks."""
    return f"To answer while others talk, say {address_word}, yes; or yes, and once more after the low tone."


def tell_without_ears(effect: Effect) -> str | None:
    """Say what an effect about listening comes to where nothing listens; None for any other effect."""
    match effect:
        case TurnFilm(on=True):
            return "The film is on, but nothing listens now: keys and typed cues only."
        case TellAsleep():
            return "Nothing listens now, and nothing moves before your next key or typed cue."
        case TellAwake():
            return "Nothing listens now: keys and typed cues only."
    return None
