"""What a page sends: touches, each with a number used once, and the cue each stands for. No I/O.

A touch names what its device showed when it was made. One that would step from a place the knitting has left
meanwhile is passed over: two devices, or a voice and a finger, that mean the same step make one step. What is
malformed is no touch at all.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from types import MappingProxyType
from typing import Any, Final

from stepper.records import dataclass
from stepper.session import cues
from stepper.session.cues import Cue
from stepper.session.events import Advanced
from stepper.session.state import Position, State

LONGEST_TEXT: Final = 2000
"""Most characters of a note or of words typed."""
LARGEST_NUMBER: Final = 9999
LONGEST_DEVICE: Final = 40
"""Most characters of the name a page gives itself."""
LONGEST_AGE_S: Final = 1e9
TOO_LATE_S: Final = 10.0
"""A touch that is sent again is passed over after this long: nobody still means it. Unit: s."""


_NOWHERE: Final = Position()


@dataclass(frozen=True, slots=True, kw_only=True)
class Touch:
    """One touch of a page."""

    device: str
    """The name the page gave itself when it was opened."""
    number: int
    """Used once by that device. Range: 1 and up."""
    ask: str
    """What it asks: a key of `CUES`, of `NUMBER_CUES`, or `note` or `words`."""
    value: int = 0
    """The number that goes with it."""
    text: str = ""
    """The words that go with it."""
    seen: int = 0
    """Number of the last event that the device showed."""
    place: Position = _NOWHERE
    """The place that it showed."""
    again: bool = False
    """Whether it was sent before, with no answer."""
    age_s: float = 0.0
    """How long ago it was made. Unit: s."""

    @property
    def cue(self) -> Cue | None:
        """The cue it stands for; None if it is words, which the conductor understands."""
        if self.ask == "note":
            return cues.Note(text=self.text)
        if self.ask in NUMBER_CUES:
            return NUMBER_CUES[self.ask](self.value)
        return CUES[self.ask]() if self.ask in CUES else None

    def still_meant(self, state: State) -> bool:
        """Return whether the knitting is still where the device showed it, as far as that matters."""
        if self.ask in _BY_PLACE:
            return self.place == state.place and not self._heard_since(state)
        return self.ask not in _BY_EVENT or self.seen == state.seq

    def _heard_since(self, state: State) -> bool:
        """Return whether a stop before the step was heard in the meantime, at which the place stays."""
        steps = [memento.seq for memento in state.undo if memento.kind == Advanced.__name__]
        return state.knitting.heard > 0 and bool(steps) and steps[-1] > self.seen


CUES: Final[Mapping[str, Callable[[], Cue]]] = MappingProxyType(
    {
        "next": cues.Next,
        "back": cues.Back,
        "undo": cues.Undo,
        "redo": cues.Redo,
        "again": cues.Again,
        "where": cues.Where,
        "how many": cues.HowMany,
        "how far": cues.HowFar,
        "spacing": cues.Spacing,
        "marker": cues.AtMarker,
        "listen": cues.Listen,
        "wait": cues.Wait,
        "yes": cues.Yes,
        "no": cues.No,
        "what happened": cues.WhatHappened,
        "what can i do": cues.Remedies,
        "enough": cues.Enough,
    }
)
"""The cues without a number."""
NUMBER_CUES: Final[Mapping[str, Callable[[int], Cue]]] = MappingProxyType(
    {
        "count": lambda number: cues.Count(stitches=number),
        "part": lambda number: cues.SectionCount(stitches=number),
        "ten": lambda number: cues.Ten(stitches=number),
        "choose": lambda number: cues.Choose(number=number),
    }
)
"""The cues with a number."""
_BY_PLACE: Final = frozenset(("next", "back", "count", "part", "ten", "marker"))
# Meant for the place shown: one that was left is not left twice.
_BY_EVENT: Final = frozenset(("undo", "redo", "choose", "yes", "no"))
# Meant for the last thing that happened, whatever it was.


def parse_touch(message: Mapping[str, Any]) -> Touch | None:
    """Read a touch from a message; None if it is malformed.

    Args:
        message: As decoded from JSON, so that any field may be anything.
    """
    ask, place = message.get("ask"), message.get("place")
    device, text = message.get("device"), message.get("text", "")
    number, value, seen = (_whole(message.get(key, 0)) for key in ("number", "value", "seen"))
    age = _seconds(message.get("age", 0))
    if not (isinstance(ask, str) and (ask in CUES or ask in NUMBER_CUES or ask in ("note", "words"))):
        return None
    if not (isinstance(device, str) and 0 < len(device) <= LONGEST_DEVICE):
        return None
    if not (isinstance(text, str) and len(text) <= LONGEST_TEXT) or age is None:
        return None
    if number is None or number < 1 or value is None or value > LARGEST_NUMBER or seen is None:
        return None
    if not (isinstance(place, list) and len(place) == 2 and all(_whole(each) is not None for each in place)):
        return None
    return Touch(
        device=device,
        number=number,
        ask=ask,
        value=value,
        text=text.encode("utf-8", "replace").decode(),  # half of a pair of UTF-16 cannot be kept
        seen=seen,
        place=Position(index=place[0], stitch=place[1]),
        again=message.get("again") is True,
        age_s=age,
    )


def _whole(value: object) -> int | None:
    """Return a whole number that is not below 0; None for anything else."""
    if isinstance(value, bool) or not isinstance(value, int) or value < 0:
        return None
    return value


def _seconds(value: object) -> float | None:
    """Return a time; None for anything else, and for a number too large to be one."""
    if isinstance(value, bool) or not isinstance(value, int | float) or not 0 <= value <= LONGEST_AGE_S:
        return None
    return float(value)
