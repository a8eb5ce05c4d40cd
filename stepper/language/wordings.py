"""What a wording is: how one thing is asked for, for the ear and for the keyboard. No I/O."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

from stepper.session import cues


@dataclass(frozen=True, slots=True, kw_only=True)
class Wording:
    """How one thing is asked for."""

    cue: type[cues.Cue]
    says: str
    """What it does, in half a sentence, for the help."""
    spoken: tuple[str, ...]
    """Wordings for voice and keyboard; the first is the one to recommend."""
    typed: tuple[str, ...] = ()
    """Short forms for the keyboard alone."""
    fixed: dict[str, Any] = field(default_factory=dict)
    """Fields of the cue that this wording settles."""
    fills: dict[str, str] = field(default_factory=dict)
    """The field of the cue that each slot fills, where it is not called as the slot is."""
