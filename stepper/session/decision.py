"""What comes of a cue: the events that follow, or a refusal with its sentence."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from stepper.plan.model import Plan
from stepper.records import dataclass
from stepper.session.events import Event
from stepper.session.state import State


@dataclass(frozen=True, slots=True, kw_only=True)
class Refusal:
    """A cue that makes no sense now. Nothing changes."""

    sentence: str
    """Why, in one short sentence."""
    aloud: bool = True
    """Whether to say it; otherwise it is only shown."""


Decision = tuple[Event, ...] | Refusal
"""No events if the cue only asks."""

Handler = Callable[[Plan, State, Any], Decision]
"""A rule: plan as corrected, state, cue. `Any` because each handler takes the cue its row in the table
names."""
