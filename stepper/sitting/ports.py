"""What a conductor is given: the ports it works through and the knitter's settings. Records alone."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field

from stepper.mouth.ports import Speaker
from stepper.session.cues import Cue, View
from stepper.session.events import Event
from stepper.session.pace.silence import SILENCE_S
from stepper.session.state import State

Keep = Callable[[tuple[Event, ...], State], Sequence[str] | None]
"""Keep events for good. Return when that is done, with what she must be told of the keeping itself, a
sentence each; the state after the events is handed along for a snapshot.
Raises SurroundingsError if they cannot be kept."""


@dataclass(frozen=True, slots=True, kw_only=True)
class ConductorPorts:
    """What a conductor reaches the world through."""

    keep: Keep
    show: Callable[[str], None]
    """Shows one line."""
    clock: Callable[[], str]
    """Returns the present time. ISO 8601 with the offset from UTC."""
    speaker: Speaker | None = None
    """Says lines; None if they are only shown."""
    turn: Callable[[View], None] | None = None
    """Turns the screen to a page; None if there are no pages to turn to."""
    film: Callable[[bool], None] | None = None
    """Takes whether the ears are to ask for the address word from now on."""
    schedule: Callable[[float, Cue], None] | None = None
    """Offers a cue after so many seconds, on any thread. If it is None, nothing is read along by itself and
    nothing is said in a long silence."""


@dataclass(frozen=True, slots=True, kw_only=True)
class ConductorSettings:
    """How the knitter wants a sitting to be conducted."""

    own_wordings: Mapping[str, str] = field(default_factory=dict)
    """Her own wordings: hers to one of the vocabulary's."""
    sounds: bool = True
    """Whether a tone answers what was heard: one for a cue, another for what is no cue."""
    rest: bool = True
    """Whether she wants to be reminded to rest her hands."""
    silence_s: float = SILENCE_S
    """Time without a cue, on top of what the step in hand takes, after which the place is said; 0 for never.
    Unit: s."""
