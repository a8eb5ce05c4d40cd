"""What a wording is: how to ask for one thing, aloud and at the keyboard. No I/O."""

from __future__ import annotations

from dataclasses import field
from typing import Any

from stepper.records import dataclass
from stepper.session import cues


@dataclass(frozen=True, slots=True, kw_only=True)
class Wording:
    """How to ask for one thing."""

    cue: type[cues.Cue]
    says: str
    """What it does, in half a sentence, for the help."""
    spoken: tuple[str, ...] = ()
    """Wordings for voice and keyboard; the first is the one to recommend. A row without any is for the
    keyboard alone, and is never recommended: the ears were not taught it."""
    typed: tuple[str, ...] = ()
    """Short forms for the keyboard only."""
    surest: tuple[str, ...] = ()
    """Single words of `typed` that are heard too, best of all in noise: behind the address word, or, of those
    that answer a question, alone while such a question is open."""
    called: tuple[str, ...] = ()
    """Longer ones, heard in the same places: people say them to each other in any film."""
    fixed: dict[str, Any] = field(default_factory=dict)
    """Fields of the cue that this wording fixes."""
    fills: dict[str, str] = field(default_factory=dict)
    """The field of the cue that each slot fills, if it is not called like the slot."""
