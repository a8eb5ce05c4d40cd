"""What the screen needs of the rest of the program: something that works off cues, something that speaks."""

from __future__ import annotations

import time
from collections.abc import Callable, Iterable, Mapping
from dataclasses import field
from typing import Protocol

from stepper.records import dataclass
from stepper.screen.drawing.style import Depth
from stepper.screen.yarns import Yarns
from stepper.session.cues import Cue
from stepper.session.events import Event
from stepper.session.machine import Session


class Sitting(Protocol):
    """What works off the cues: the conductor."""

    @property
    def session(self) -> Session:
        """The session as it stands."""

    @property
    def closed(self) -> bool:
        """Whether the sitting is over."""

    def offer(self, cue: Cue) -> None:
        """Put a cue into the queue."""

    def offer_words(self, text: str, *, heard: bool = False, score: float = 1.0) -> None:
        """Put words into the queue."""

    def drain(self) -> None:
        """Work off what is in the queue."""


class Voice(Protocol):
    """What speaks."""

    @property
    def speaking(self) -> bool:
        """Whether a line is being said."""

    def silence(self) -> None:
        """Fall silent at once."""


@dataclass(frozen=True, slots=True, kw_only=True)
class ScreenSetup:
    """What the screen is given besides the session."""

    yarns: Yarns
    history: Callable[[], Iterable[tuple[int, Event]]]
    """Returns the latest events with their numbers, in order."""
    whole_history: Callable[[], Iterable[tuple[int, Event]]] = tuple
    """Returns all events with their numbers, in order; asked for once the garment is finished."""
    depth: Depth = Depth.TRUE
    blocks: bool = True
    """Whether the terminal has signs beyond ASCII."""
    solid: bool = False
    """Whether it has at least full and half blocks."""
    voice: Voice | None = None
    why_no_voice: str = "mute"
    why_no_ears: str = "keys and typed cues only"
    """Empty if the ears are open."""
    film: Callable[[], bool] = lambda: False
    """Returns whether a film is on, so that a spoken cue needs the address word."""
    own_words: Mapping[str, str] = field(default_factory=dict)
    """The knitter's own words for cues, each with the vocabulary's wording it stands for."""
    clock: Callable[[], float] = time.monotonic
    """Unit: s."""
