"""Where the knitter reads and types: the one protocol of the full screen, of line mode and of either with a
page beside it."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from contextlib import AbstractContextManager
from typing import Protocol

from stepper.mouth.ports import Speaker
from stepper.records import dataclass
from stepper.session.cues import Cue, View
from stepper.session.events import Event
from stepper.sitting.conductor import Conductor


@dataclass(frozen=True, slots=True, kw_only=True)
class SittingView:
    """What a front end may show of a sitting besides the lines it is given."""

    title: str
    conductor: Conductor
    history: Callable[[], Iterable[tuple[int, Event]]]
    """Returns the latest events with their numbers, in order."""
    whole_history: Callable[[], Iterable[tuple[int, Event]]]
    """Returns all events with their numbers, in order."""
    speaker: Speaker | None
    """None if nothing will be said."""
    why_no_voice: str
    """Empty if there is a speaker."""
    why_no_ears: str
    """Why nothing is heard when the sitting begins; empty if a recording is listened to."""
    film: Callable[[], bool] = lambda: False
    """Returns whether a film is on, so that a spoken cue needs the address word."""


class FrontEnd(Protocol):
    """Where the knitter reads and types."""

    @property
    def listens_by_itself(self) -> bool:
        """Whether it listens to the microphone even if the command line does not ask for it."""

    @property
    def turn(self) -> Callable[[View], None] | None:
        """Turns to a page, on the thread that works off the cues; None if there are no pages."""

    def open(self, view: SittingView) -> None:
        """Get ready to show a sitting that is about to begin. Called once, before anything is shown."""

    def show(self, line: str) -> None:
        """Show a line, on the thread that works off the cues."""

    def schedule(self, seconds: float, cue: Cue) -> None:
        """Offer a cue to the conductor after a delay."""

    def hear(self, text: str, score: float = 1.0) -> None:
        """Take words from the microphone, on any thread."""

    def wake(self) -> None:
        """Have the conductor work off what was put into its queue from elsewhere; called on any thread."""

    def report_ears(self, is_open: bool, sentence: str) -> None:
        """Report whether the ears are open now, with a sentence about it, on any thread."""

    def report_voice(self, sentence: str) -> None:
        """Report, on any thread, why there is no voice or why it has stopped."""

    def guard_terminal(self) -> AbstractContextManager[None]:
        """Keep what other libraries print away from what is shown for as long as the context lasts."""

    def run(self, recording: Iterator[str] | None) -> None:
        """Take cues until the sitting is over.

        Args:
            recording: The cues of a recording that replaces the microphone.

        Raises:
            KeyboardInterrupt: She left at once.
            BrokenPipeError: The terminal has gone.
            SurroundingsError: What happened could not be kept, or the recording could not be heard.
        """

    def close(self) -> None:
        """Leave the answer to the last cue on the terminal."""
