"""The screen on a terminal: keys in, rows out, everything between them pure.

One thread, the terminal's, takes keys, works off cues and draws; words from the ears are handed over to it.
So what is drawn always matches what is kept. Nothing runs while nothing happens: no clock ticks, and the
voice is polled only while a line is being said.
"""

from __future__ import annotations

import asyncio
import errno
from collections.abc import Callable, Sequence
from contextlib import suppress
from dataclasses import replace
from threading import Lock, Timer
from typing import TYPE_CHECKING, Final

from stepper.language.understanding.understand import NotUnderstood, understand
from stepper.plan.model import Plan
from stepper.screen.answer_lines import describe_result, pick_answers
from stepper.screen.course import SummedPlan, course_of
from stepper.screen.device_status import GETTING_READY, DeviceStatus, HeardWords, MouthState, find_ears_state
from stepper.screen.drawing.style import Terminal
from stepper.screen.event_log import LogEntry, find_way_back, list_entries
from stepper.screen.garment_record import NO_RECORD, GarmentRecord, record_garment
from stepper.screen.keys import PAGES, Page
from stepper.screen.open_questions import NOTHING_ASKED, OpenQuestions, find_asked
from stepper.screen.pages.journal_page import find_marked
from stepper.screen.pages.remedies_page import find_marked_remedy
from stepper.screen.ports import ScreenSetup, Sitting
from stepper.screen.preparation import Preparation
from stepper.screen.scene import Scene
from stepper.screen.signals import mind_signals
from stepper.screen.ui_state import FADES_S, KeyRequest, UIState, fade_typed, paste_text, press_key, turn_to
from stepper.session.cues import Choose, Cue, Enough, Remedies, View, WhatElse
from stepper.session.machine import Session

if TYPE_CHECKING:
    from prompt_toolkit.application import Application
    from prompt_toolkit.input import Input
    from prompt_toolkit.output import Output

LARGER_LETTERS: Final = "Larger letters: ctrl and +, smaller: ctrl and -; on a Mac with cmd."
"""Said at the very first start: most terminals can do it, and hardly anyone knows. Source: the menus of
common terminals, from memory."""
TYPED_CUES: Final = "Nothing listens: space is next step, and the key / types whatever a line says to say."
"""Said at the very first start where there are no ears, since the lines are worded for those who speak."""
_LOOK_S = 0.2
"""How often to check whether a line is still being said, while one is. Unit: s."""
_GONE = frozenset((errno.EIO, errno.EPIPE, errno.EBADF, errno.ENXIO))


class Screen:
    """The full screen of a sitting."""

    def __init__(self, surroundings: ScreenSetup) -> None:
        """Get ready; nothing is drawn before `run`."""
        self._around = surroundings
        self._ui = UIState()
        self._lines: list[str] = []
        self._told: tuple[str, ...] = ()
        self._heard: HeardWords | None = None
        self._why_no_voice = surroundings.why_no_voice
        self._why_no_ears = surroundings.why_no_ears
        self._course: SummedPlan | None = None
        self._news = True
        self._history: tuple[int, tuple[LogEntry, ...]] = (-1, ())
        self._record: tuple[int, GarmentRecord] = (-1, NO_RECORD)
        self._asked: tuple[tuple[int, Plan] | None, OpenQuestions] = (None, NOTHING_ASKED)
        self._shown: Sitting | None = None
        self._app: Application[None] | None = None
        self._loop: asyncio.AbstractEventLoop | None = None
        self._watching = False
        self._turned = False
        self._first_start = False
        self._preparation = Preparation()
        self._early: list[Callable[[], None]] = []
        self._lock = Lock()

    @property
    def app(self) -> Application[None] | None:
        """The terminal library's own application while `run` lasts; None before and after."""
        return self._app

    @property
    def last_lines(self) -> tuple[str, ...]:
        """The answer to the last cue, to be written where the screen was."""
        return tuple(self._lines)

    @property
    def _sitting(self) -> Sitting:
        assert self._shown is not None
        return self._shown

    # Any thread

    def turn(self, view: View) -> None:
        """Turn to a page; called on the thread that works off the cues."""
        self._turned = True
        self._ui = turn_to(self._ui, PAGES[view])

    def show(self, line: str) -> None:
        """Take a line the session tells; called on the thread that works off the cues."""
        self._lines.append(line)

    def hear(self, text: str, score: float = 1.0) -> None:
        """Take words from the ears."""
        self._hand_over(lambda: self._words(text, by_ear=True, score=score))

    def schedule(self, seconds: float, cue: Cue) -> None:
        """Offer a cue to the session after a delay."""

        def due() -> None:
            self._hand_over(lambda: self._beat(cue))

        timer = Timer(seconds, due)
        timer.daemon = True
        timer.start()

    def wake(self) -> None:
        """Work off what was put into the session's queue from elsewhere."""
        self._hand_over(self._offered)

    def report_ears(self, why: str) -> None:
        """Take the reason why nothing is heard any more; empty if something is heard again."""

        def end() -> None:
            self._news = self._news or why != self._why_no_ears
            self._why_no_ears = why
            self._watch_voice()  # which goes on by itself where she interrupted it and no cue came

        self._hand_over(end)

    def report_voice(self, sentence: str) -> None:
        """Take a sentence about the voice: why it has stopped."""

        def tell() -> None:
            why = sentence.partition(";")[0].rstrip(".")
            self._why_no_voice = why[:1].lower() + why[1:]
            self._news = True
            self._told = (*self._told, sentence)

        self._hand_over(tell)

    def _hand_over(self, action: Callable[[], None]) -> None:
        """Have something done on the terminal's thread as soon as there is one."""
        with self._lock:
            if self._loop is None:
                self._early.append(action)
                return
            with suppress(RuntimeError):  # the sitting has just ended
                self._loop.call_soon_threadsafe(self._act, action)

    def _act(self, action: Callable[[], None]) -> None:
        self.guarded(action)
        if self._app is not None:
            self._app.invalidate()

    # The terminal's thread

    def run(self, sitting: Sitting, *, source: Input | None = None, target: Output | None = None) -> None:
        """Show the sitting until it is over.

        Args:
            sitting: What works off the cues; already begun.
            source: Where keys come from; the terminal if None.
            target: Where it is drawn; the terminal if None.

        Raises:
            KeyboardInterrupt: She left at once.
            BrokenPipeError: The terminal has gone.
            SurroundingsError: What happened could not be kept.
        """
        from stepper.screen import terminal  # which takes a while to load: only where there is one to draw on

        self._take_up(sitting)
        app = terminal.build_application(self, source, target)
        self._app = app
        try:
            asyncio.run(self._until_over(app))
        except EOFError:  # the end of the input means the same as `Enough`
            self._work((Enough(),))
        except OSError as error:
            if error.errno not in _GONE:
                raise
            raise BrokenPipeError(error.errno, "the terminal has gone") from error
        finally:
            self._app = None

    def _take_up(self, sitting: Sitting) -> None:
        self._shown = sitting
        self._told = pick_answers(self._lines, sitting.session)
        self._first_start = not sitting.session.state.last_cue_at

    async def _until_over(self, app: Application[None]) -> None:
        loop = asyncio.get_running_loop()
        with self._lock:
            self._loop = loop
            for action in self._early:
                loop.call_soon(self._act, action)
        loop.set_exception_handler(lambda loop, context: self._fail(context.get("exception")))
        undo = mind_signals(loop, app, self._around.voice)
        self._watch_voice()
        try:
            # Its own handler would print the fault and wait for a key, which a knitter would not see.
            await app.run_async(set_exception_handler=False)
        finally:
            with self._lock:
                self._loop = None
            undo()

    def rows(self, columns: int, rows: int) -> tuple[Scene, Terminal]:
        """Return what is to be drawn at a size."""
        around = self._around
        terminal = Terminal(
            columns=columns, rows=rows, depth=around.depth, blocks=around.blocks, solid=around.solid
        )
        scene = self.scene()
        if self._loop is not None:
            self._preparation.see(scene, terminal, self._loop)
        return scene, terminal

    def scene(self) -> Scene:
        """Put together all there is to show."""
        session = self._sitting.session
        ui = fade_typed(self._ui, self._around.clock())
        return Scene(
            course=self._course_of(session.plan),
            state=session.state,
            ui=ui,
            yarns=self._around.yarns,
            devices=self._devices(asleep=session.state.asleep),
            asked=self._find_asked(session),
            record=self._record_of(session),
            told=(*self._told, *self._first_words()),
            history=self._entries() if ui.page is Page.JOURNAL else (),
            own_words=self._around.own_words,
        )

    def key(self, name: str) -> None:
        """Take a key."""
        session, now = self._sitting.session, self._around.clock()
        pressed = press_key(self._ui, name, now, session.plan, session.state)
        if pressed.request.back_to is not None:
            self._go_back()
        if pressed.request.remedy is not None:
            self._take_marked_remedy()
            return
        self._ui = pressed.ui
        if self._ui.page is Page.REMEDIES:  # never beyond the last: she would have to come all the way back
            self._ui = replace(self._ui, down=find_marked_remedy(self.scene()))
        self._carry_out(pressed.request)
        if self._ui.digits or self._ui.leaving:
            self._redraw_in(FADES_S + 0.05)

    def paste(self, text: str) -> None:
        """Take pasted text."""
        self._ui = paste_text(self._ui, text)

    def guarded(self, action: Callable[[], None]) -> None:
        """Do something on behalf of a key; if it fails, leave the screen and report the fault outside."""
        try:
            action()
        except Exception as error:
            self._fail(error)

    def leave(self) -> None:
        """Leave at once. What was answered is kept; there is nothing to save."""
        self._fail(KeyboardInterrupt())

    def _carry_out(self, request: KeyRequest) -> None:
        if request.hush and self._around.voice is not None:
            self._around.voice.silence()
        if request.words:
            self._words(request.words, by_ear=False)
        elif request.cues:
            self._heard = None
            self._work(request.cues)

    def _go_back(self) -> None:
        """Go back to the marked entry of the journal."""
        scene = self.scene()
        if scene.history:
            entry = scene.history[find_marked(scene)]
            way = find_way_back(entry, scene.history, scene.plan, scene.state)
            self._heard = None
            self._work(way)

    def _take_marked_remedy(self) -> None:
        """Take the marked remedy and show the round again."""
        scene = self.scene()
        self._ui = turn_to(self._ui, Page.ROUND)
        if scene.asked.remedies:
            self._heard = None
            self._work((Choose(number=find_marked_remedy(scene) + 1),))

    def _words(self, text: str, *, by_ear: bool, score: float = 1.0) -> None:
        before = self._sitting.session.state.seq
        self._lines = []
        self._turned = False
        asked = self._sitting.session.plan, self._around.own_words
        self._sitting.offer_words(text, heard=by_ear, score=score)
        self._worked()
        session = self._sitting.session
        if not (by_ear and session.state.asleep):
            self._show_remedies(understand(text, asked[0], own=asked[1]))
        did = describe_result(self._lines, text, session, changed=session.state.seq != before)
        did = "shown" if self._turned else did
        self._heard = HeardWords(text=text, did=did, by_ear=by_ear)

    def _work(self, cues: Sequence[Cue]) -> None:
        self._lines = []
        for cue in cues:
            if len(cues) > 1:
                self._lines = []  # of many steps back, only the last says where they lead
            self._sitting.offer(cue)
            self._sitting.drain()
        self._worked()
        if cues:
            self._show_remedies(cues[-1])

    def _show_remedies(self, asked: Cue | NotUnderstood) -> None:
        """Turn to the remedies if they were asked for, and back to the round after anything else."""
        ways = isinstance(asked, Remedies | WhatElse) and self.scene().asked.remedies
        if ways:
            self._ui = turn_to(self._ui, Page.REMEDIES)
        elif self._ui.page is Page.REMEDIES and not isinstance(asked, NotUnderstood):
            self._ui = turn_to(self._ui, Page.ROUND)

    def _beat(self, cue: Cue) -> None:
        """Work off a cue sent by a clock; if it tells nothing, the screen stays as it is."""
        self._sitting.offer(cue)
        self._offered()

    def _offered(self) -> None:
        """Work off what waits in the queue; if it tells nothing, the screen stays as it is."""
        before, self._lines = self._lines, []
        self._sitting.drain()
        if self._lines:
            self._heard = None
            self._worked()
        else:
            self._lines = before

    def _worked(self) -> None:
        """Update the screen once the queue is worked off."""
        self._news = self._first_start = False
        self._sitting.drain()
        self._told = pick_answers(self._lines, self._sitting.session)
        self._watch_voice()
        if self._sitting.closed and self._app is not None and not self._app.is_done:
            self._app.exit()

    def _course_of(self, plan: Plan) -> SummedPlan:
        if self._course is None or self._course.plan is not plan:
            self._course = course_of(plan)
        return self._course

    def _first_words(self) -> tuple[str, ...]:
        """Tell what helps at the very first start, until the first cue."""
        if not self._first_start:
            return ()
        deaf = self._why_no_ears not in ("", GETTING_READY)
        return (TYPED_CUES, LARGER_LETTERS) if deaf else (LARGER_LETTERS,)

    def _find_asked(self, session: Session) -> OpenQuestions:
        """Find what is asked, once for each event."""
        known, asked = self._asked
        if known is None or known[0] != session.state.seq or known[1] is not session.plan:
            asked = find_asked(session.plan, session.state)
            self._asked = ((session.state.seq, session.plan), asked)
        return asked

    def _record_of(self, session: Session) -> GarmentRecord:
        """Tell the making of the garment once it is finished, once for each event."""
        if session.state.place.index < len(session.plan.rounds) or session.plan.open is not None:
            return NO_RECORD
        if self._record[0] != session.state.seq:
            record = record_garment(self._around.whole_history(), session.plan)
            self._record = (session.state.seq, record)
        return self._record[1]

    def _entries(self) -> tuple[LogEntry, ...]:
        session = self._sitting.session
        if self._history[0] != session.state.seq:
            self._history = (session.state.seq, list_entries(self._around.history(), session.plan))
        return self._history[1]

    def _devices(self, *, asleep: bool) -> DeviceStatus:
        voice = self._around.voice
        status = DeviceStatus(
            ears=find_ears_state(self._why_no_ears, asleep=asleep),
            why_no_ears=self._why_no_ears,
            film=self._around.film(),
            news=self._news,
            mouth=MouthState.NONE if self._why_no_voice or voice is None else MouthState.QUIET,
            why_no_mouth=self._why_no_voice,
            heard=self._heard,
        )
        return status.while_speaking() if voice is not None and voice.speaking else status

    def _watch_voice(self) -> None:
        """While a line is being said, check now and then whether it is over."""
        voice, app, loop = self._around.voice, self._app, self._loop
        if voice is None or app is None or loop is None or self._watching or not voice.speaking:
            return
        self._watching = True

        def look() -> None:
            if voice.speaking and not app.is_done:
                loop.call_later(_LOOK_S, look)
                return
            self._watching = False
            app.invalidate()

        loop.call_later(_LOOK_S, look)

    def _redraw_in(self, seconds: float) -> None:
        if self._app is not None and self._loop is not None:
            self._loop.call_later(seconds, self._app.invalidate)

    def _fail(self, error: BaseException | None) -> None:
        app = self._app
        if error is not None and app is not None and app.is_running and not app.is_done:
            app.exit(exception=error)
