"""A sitting on the full screen."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import AbstractContextManager
from threading import Thread

from stepper.craft.colours.colour import rgb_from_hex
from stepper.devices.stderr import stderr_aside
from stepper.errors import StepperError
from stepper.screen.app import Screen
from stepper.screen.ports import ScreenSetup
from stepper.screen.terminal_abilities import TerminalAbilities
from stepper.screen.yarns import Yarns, yarns_of
from stepper.session.cues import Cue, View
from stepper.sitting.front_end import SittingView
from stepper.sitting.preferences import Preferences
from stepper.sitting.project_file import LoadedProject


class FullScreen:
    """The front end of a terminal that can show the full screen."""

    listens_by_itself = True

    def __init__(self, loaded: LoadedProject, terminal: TerminalAbilities, mine: Preferences) -> None:
        """Get ready; nothing is drawn before `run`.

        Args:
            loaded: The project file.
            terminal: What the terminal can do.
            mine: Her settings.
        """
        self._loaded, self._terminal, self._mine = loaded, terminal, mine
        self._view: SittingView | None = None
        self._opened: Screen | None = None

    @property
    def _screen(self) -> Screen:
        assert self._opened is not None
        return self._opened

    def open(self, view: SittingView) -> None:
        """Create the screen of a sitting."""
        self._view = view
        self._opened = Screen(
            ScreenSetup(
                yarns=list_screen_yarns(self._loaded),
                history=view.history,
                whole_history=view.whole_history,
                depth=self._terminal.depth,
                blocks=self._terminal.blocks,
                solid=self._terminal.solid,
                voice=view.speaker,
                why_no_voice=view.why_no_voice,
                why_no_ears=view.why_no_ears,
                film=view.film,
                own_words=self._mine.wordings,
            )
        )

    def show(self, line: str) -> None:
        """Show a line."""
        self._screen.show(line)

    def turn(self, view: View) -> None:
        """Turn to a page."""
        self._screen.turn(view)

    def schedule(self, seconds: float, cue: Cue) -> None:
        """Offer a cue after a delay, on the terminal's thread."""
        self._screen.schedule(seconds, cue)

    def hear(self, text: str, score: float = 1.0) -> None:
        """Take words from the microphone."""
        self._screen.hear(text, score)

    def wake(self) -> None:
        """Work off what was offered from elsewhere, on the terminal's thread."""
        self._screen.wake()

    def report_ears(self, is_open: bool, sentence: str) -> None:
        """Show whether the ears are open, and why not."""
        self._screen.report_ears("" if is_open else shorten_reason(sentence))

    def report_voice(self, sentence: str) -> None:
        """Show why the voice has stopped; why there is none was given when the screen was opened."""
        if self._opened is not None:
            self._opened.report_voice(sentence)

    def guard_terminal(self) -> AbstractContextManager[None]:
        """Divert what libraries print on standard error, which would garble the screen."""
        return stderr_aside()

    def run(self, recording: Iterator[str] | None) -> None:
        """Show the sitting until it is over."""
        assert self._view is not None
        if recording is not None:
            Thread(target=self._hand_over_heard, args=(recording,), name="ears", daemon=True).start()
        self._screen.run(self._view.conductor)

    def close(self) -> None:
        """Print the answer to the last cue where the screen was."""
        print("\n".join(self._screen.last_lines), flush=True)

    def _hand_over_heard(self, cues: Iterator[str]) -> None:
        """Hand over what is heard until it ends, and say why it ended."""
        why = "the recording has ended"
        try:
            for text in cues:
                self._screen.hear(text)
        except StepperError as error:
            why = str(error)
        except Exception as fault:  # a fault in the ears must not end the knitting
            why = f"a fault in them ({type(fault).__name__}: {fault})"
        self._screen.report_ears(why)


def shorten_reason(sentence: str) -> str:
    """Return the reason in a sentence about the ears or the voice, to be put behind a colon."""
    reason = sentence.removeprefix("Nothing is heard, since ").removeprefix("There is no voice, since ")
    reason = reason.partition(";")[0].rstrip(".")
    return reason[:1].lower() + reason[1:]


def list_screen_yarns(loaded: LoadedProject) -> Yarns:
    """Return the yarns of a project file with their colours and signs."""
    colours = {
        key: None if yarn.colour is None else rgb_from_hex(yarn.colour)
        for key, yarn in loaded.project.yarns.items()
    }
    return yarns_of(loaded.plan.yarns, colours)
