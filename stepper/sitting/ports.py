"""What a conductor is given: the ports it works through and the knitter's settings. Records only."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import field

from stepper.mouth.ports import Speaker
from stepper.mouth.settings import SpeechSettings
from stepper.plan.model import Plan
from stepper.records import dataclass
from stepper.session.cues import Cue, View
from stepper.session.events import Event
from stepper.session.pace.silence import SILENCE_S
from stepper.session.state import OpenAnswer, State

Keep = Callable[[tuple[Event, ...], State], Sequence[str] | None]
"""Keep events for good. Return once that is done, with what the knitter must be told about it, one sentence
each. The state after the events is passed along for a snapshot. Raises SurroundingsError if they cannot be
kept."""


@dataclass(frozen=True, slots=True, kw_only=True)
class WorkedOff:
    """What a conductor has just worked off, for those that watch it."""

    words: str = ""
    """The words, if it was words; empty for a cue of a key, a clock or a page, and for the opening."""
    heard: bool = False
    """Whether they came through the microphone."""


@dataclass(frozen=True, slots=True, kw_only=True)
class GoesOn:
    """What the knitting goes on with once a row that was not read is settled."""

    plan: Plan
    """As compiled."""
    fingerprint: str


@dataclass(frozen=True, slots=True, kw_only=True)
class ConductorPorts:
    """How a conductor reaches the outside world."""

    keep: Keep
    show: Callable[[str], None]
    """Shows one line."""
    clock: Callable[[], str]
    """Returns the current time. ISO 8601 with the offset from UTC."""
    speaker: Speaker | None = None
    """Says lines; None if they are only shown."""
    turn: Callable[[View], None] | None = None
    """Turns the screen to a page; None if there are no pages to turn to."""
    film: Callable[[bool], None] | None = None
    """Called with whether the ears must require the address word from now on."""
    asked: Callable[[frozenset[type[Cue]]], None] | None = None
    """Called with the cues that answer what has just been asked, in one word or a bare number; empty for
    none."""
    listens: Callable[[], bool] = lambda: True
    """Returns whether the ears are open now."""
    schedule: Callable[[float, Cue], None] | None = None
    """Offers a cue after a number of seconds, on any thread. If None, reading along does not advance by
    itself and nothing is said in a long silence."""
    settle: Callable[[OpenAnswer], GoesOn | str] | None = None
    """Writes what a row is that was not read into the project file, for good. Returns the plan that follows,
    or why the row cannot be kept so, as a sentence; then nothing is written. None if the file stays as it
    is."""


@dataclass(frozen=True, slots=True, kw_only=True)
class ConductorSettings:
    """How the knitter wants a sitting to be conducted."""

    own_wordings: Mapping[str, str] = field(default_factory=dict)
    """The knitter's own wordings, each with the vocabulary's wording it stands for."""
    address_word: str = "stepper"
    """What stands in front of every cue while a film is on."""
    film: bool = False
    """Whether a film is on from the start."""
    sounds: bool = True
    """Whether a tone answers what was heard: one for a cue, another for anything else."""
    rest: bool = True
    """Whether she wants to be reminded to rest her hands."""
    speech: SpeechSettings = field(default_factory=SpeechSettings)
    """How fast the voice speaks; at a slower rate a stretch of speech has fewer words."""
    silence_s: float = SILENCE_S
    """Time without a cue, beyond what the current step takes, after which the place is said; 0 for never.
    Unit: s."""
