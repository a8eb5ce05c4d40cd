"""A page beside the terminal: the same sitting, seen and stepped from browsers as well."""

from __future__ import annotations

import copy
import os
import sys
from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager
from dataclasses import replace
from threading import Event, Lock
from types import TracebackType
from typing import Final

from stepper.lap.address import Address, open_browser
from stepper.lap.code import draw_in_terminal
from stepper.lap.door import Door, make_secret, name_hosts
from stepper.lap.ports import Sight
from stepper.lap.server import PageServer
from stepper.lap.touches import Touch
from stepper.screen.answer_lines import describe_result, pick_answers
from stepper.screen.course import SummedPlan, course_of
from stepper.screen.device_status import DeviceStatus, HeardWords, MouthState, find_ears_state
from stepper.screen.open_questions import find_asked
from stepper.screen.scene import Scene
from stepper.screen.yarns import Yarns
from stepper.session.cues import Cue, View
from stepper.sitting.conductor import Conductor
from stepper.sitting.folding import write_painted
from stepper.sitting.front_end import FrontEnd, SittingView
from stepper.sitting.full_screen import shorten_reason
from stepper.sitting.ports import WorkedOff

OVER: Final = "This sitting is over. The next one has a new address."
ENDED: Final = "The program has ended. What was answered is kept; the next sitting has a new address."
_LOOK_S: Final = 0.2
# How often to look whether a device has come while the code is shown. Unit: s.


class PageBeside:
    """A front end and a page that show the same sitting; whatever is done at one is seen at the other."""

    def __init__(self, front_end: FrontEnd, yarns: Yarns, address: Address) -> None:
        """Get ready; nothing is served before the sitting is opened.

        Args:
            front_end: What the terminal shows.
            yarns: Those of the garment, with their colours.
            address: Where the page is, with its sockets bound.
        """
        self._front_end, self._yarns, self._address = front_end, yarns, address
        self._secret = make_secret()
        door = Door(secret=self._secret, hosts=name_hosts(address.names, address.port))
        self._joined = Event()
        self._server = PageServer(address, door, self, lambda number: self._joined.set())
        self._view: SittingView | None = None
        self._lines: list[str] = []
        self._turned_to: View | None = None
        self._why_no_ears = self._why_no_voice = ""
        self._course: SummedPlan | None = None
        self._seq = self._edition = 0
        self._sight: Sight | None = None
        self._lock = Lock()

    def __enter__(self) -> PageBeside:
        """Return itself."""
        return self

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        """Stop serving."""
        over = self._view is not None and self._view.conductor.closed
        self._server.close(OVER if over else ENDED)

    @property
    def url(self) -> str:
        """The page's address on this computer."""
        return self._address.url(self._secret)

    @property
    def listens_by_itself(self) -> bool:
        """Whether the terminal's front end does."""
        return self._front_end.listens_by_itself

    @property
    def _conductor(self) -> Conductor:
        assert self._view is not None
        return self._view.conductor

    # The consumer's thread

    def open(self, view: SittingView) -> None:
        """Open the terminal's front end, serve the page, and tell where it is."""
        self._view = view
        self._why_no_ears, self._why_no_voice = view.why_no_ears, view.why_no_voice
        view.conductor.watch(self._worked_off)
        self._server.start()
        self._tell_address()
        self._front_end.open(view)

    def show(self, line: str) -> None:
        """Show a line."""
        self._lines.append(line)
        self._front_end.show(line)

    def turn(self, view: View) -> None:
        """Turn to a page."""
        self._turned_to = view
        if self._front_end.turn is not None:
            self._front_end.turn(view)

    def run(self, recording: Iterator[str] | None) -> None:
        """Run the terminal's front end until the sitting is over."""
        self._front_end.run(recording)

    def close(self) -> None:
        """Close the terminal's front end."""
        self._front_end.close()

    def guard_terminal(self) -> AbstractContextManager[None]:
        """Guard the terminal as its front end does."""
        return self._front_end.guard_terminal()

    def _worked_off(self, done: WorkedOff) -> None:
        """Show on the page what came of a cue."""
        session = self._conductor.session
        lines, self._lines = self._lines, []
        told, heard = pick_answers(lines, session), None
        if self._sight is not None and not lines:  # what was told last is still the answer
            told, heard = self._sight.scene.told, self._sight.scene.devices.heard
        if done.words:
            did = describe_result(lines, done.words, session, changed=session.state.seq != self._seq)
            did = "shown" if self._turned_to is not None else did
            heard = HeardWords(text=done.words, did=did, by_ear=done.heard)
        self._seq = session.state.seq
        view = self._sight.view if self._sight is not None else View.ROUND
        view, self._turned_to = self._turned_to or view, None
        if self._course is None or self._course.plan is not session.plan:
            self._course, self._edition = course_of(session.plan), self._edition + 1
        with self._lock:
            devices = self._devices(asleep=session.state.asleep, heard=heard)
            self._sight = Sight(
                scene=Scene(
                    course=self._course,
                    state=session.state,
                    yarns=self._yarns,
                    devices=devices,
                    told=told,
                    asked=find_asked(session.plan, session.state),
                ),
                session=copy.copy(session),
                edition=self._edition,
                view=view,
            )
            self._server.publish(self._sight)

    # Any thread

    def schedule(self, seconds: float, cue: Cue) -> None:
        """Offer a cue to the conductor after a delay."""
        self._front_end.schedule(seconds, cue)

    def hear(self, text: str, score: float = 1.0) -> None:
        """Take words from the microphone."""
        self._front_end.hear(text, score)

    def wake(self) -> None:
        """Have the conductor work off its queue."""
        self._front_end.wake()

    def report_ears(self, is_open: bool, sentence: str) -> None:
        """Show whether the ears are open, and why not."""
        self._why_no_ears = "" if is_open else shorten_reason(sentence)
        self._show_devices()
        self._front_end.report_ears(is_open, sentence)

    def report_voice(self, sentence: str) -> None:
        """Show why there is no voice."""
        self._why_no_voice = shorten_reason(sentence)
        self._show_devices()
        self._front_end.report_voice(sentence)

    def take(self, touch: Touch, done: Callable[[bool], None]) -> None:
        """Put a touch into the queue of cues."""
        cue = touch.cue
        if cue is None:
            self._conductor.offer_words(touch.text, then=done)
        else:
            self._conductor.offer(cue, still=touch.still_meant, then=done)
        self._front_end.wake()

    @property
    def speaking(self) -> bool:
        """Whether a line is being said."""
        return self._view is not None and self._view.speaker is not None and self._view.speaker.speaking

    def _show_devices(self) -> None:
        with self._lock:
            if self._sight is None:
                return
            scene = self._sight.scene
            devices = self._devices(asleep=scene.state.asleep, heard=scene.devices.heard)
            self._sight = replace(self._sight, scene=replace(scene, devices=devices))
            self._server.publish(self._sight)

    def _devices(self, *, asleep: bool, heard: HeardWords | None) -> DeviceStatus:
        ears = find_ears_state(self._why_no_ears, asleep=asleep)
        silent = self._view is None or self._view.speaker is None or bool(self._why_no_voice)
        return DeviceStatus(
            ears=ears,
            why_no_ears=self._why_no_ears,
            film=self._conductor.film_is_on,
            mouth=MouthState.NONE if silent else MouthState.QUIET,
            why_no_mouth=self._why_no_voice,
            heard=heard,
        )

    def _tell_address(self) -> None:
        """Tell where the page is, open it here, and let a phone or tablet find it."""
        shared = len(self._address.names) > 1
        if shared:
            url = self._address.url(self._secret, shared=True)
            write_painted(f"{draw_in_terminal(url)}\n", sys.stderr)
            print(f"For a phone or tablet at home: {url}", file=sys.stderr)
        print(f"On this computer: {self.url}", file=sys.stderr, flush=True)
        open_browser(self.url)
        if shared and self._front_end.turn is not None and sys.stdin.isatty():
            # The full screen will hide the code.
            print("Scan the code, or press enter; the sitting begins.", file=sys.stderr, flush=True)
            _wait_for(self._joined)


def _wait_for(event: Event) -> None:
    """Wait until something has happened, or enter is pressed."""
    while not event.wait(_LOOK_S):
        if _enter_was_pressed():
            return


def _enter_was_pressed() -> bool:
    """Return whether a line was typed, and take it."""
    if sys.platform == "win32":
        import msvcrt

        return bool(msvcrt.kbhit() and msvcrt.getwch())
    import select

    ready, _, _ = select.select([sys.stdin], [], [], 0)
    return bool(ready) and bool(os.read(sys.stdin.fileno(), 1024) or True)
