"""What the page needs of the rest of the program: what to show, and somebody who takes its touches."""

from __future__ import annotations

from collections.abc import Callable
from typing import Protocol

from stepper.lap.touches import Touch
from stepper.records import dataclass
from stepper.screen.scene import Scene
from stepper.session.cues import View
from stepper.session.machine import Session


@dataclass(frozen=True, slots=True, kw_only=True)
class Sight:
    """All there is to show after a cue; it never changes, so that any thread may draw from it."""

    scene: Scene
    session: Session
    """A copy that nobody adopts anything on."""
    edition: int = 0
    """Counts the plans: another number means that the yoke may look otherwise."""
    view: View = View.ROUND
    """What was last asked to be shown."""


class Taker(Protocol):
    """Who takes touches."""

    def take(self, touch: Touch, done: Callable[[bool], None]) -> None:
        """Put a touch into the queue of cues; called on any thread.

        Args:
            touch: What is asked.
            done: Called on any thread once it is worked off, with True, or passed over, with False. What came
                of it is then on the disk, and the sight of it was published before.
        """

    @property
    def speaking(self) -> bool:
        """Whether a line is being said."""
