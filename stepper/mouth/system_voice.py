"""The system's own voices, each line in a process of its own.

The process for the next line is started ahead, so that a line begins at once although its engine is new. To
fall silent, the process is ended along with any player it has started.
"""

from __future__ import annotations

import shutil
import sys
import tempfile
import time
from collections.abc import Callable, Iterable
from contextlib import suppress
from pathlib import Path
from threading import Event, Lock

from stepper.devices.ports import NoOutputError, OutputStream
from stepper.mouth.playback import REOPEN_EVERY_S
from stepper.mouth.ports import NoVoiceError
from stepper.mouth.settings import SpeechSettings
from stepper.mouth.worker import Worker, WorkerGoneError, wait_until_ready

_FEWEST_WORDS_JUDGED = 4
_UNHEARD_SHARE = 0.2
"""A line of some length that is over within this share of its expected time was not played at all."""


class SystemVoiceMouth:
    """Say lines with the system's own voice."""

    def __init__(
        self, settings: SpeechSettings, open_output: Callable[[], OutputStream] | None = None
    ) -> None:
        """Start a first process and wait until it is ready.

        Args:
            settings: Which voice, and how loud.
            open_output: Opens an output for tones, which the voice cannot play; may raise `NoOutputError`,
                and then there are no tones. None for no tones.

        Raises:
            NoVoiceError: The system has no voice that can be started.
        """
        if sys.platform.startswith("linux") and shutil.which("aplay") is None:
            raise NoVoiceError("pyttsx3 plays through the program aplay, which is not installed")
        self._settings = settings
        self._lock = Lock()
        self._closed = False
        self._speaking: Worker | None = None
        self._open_output = open_output
        self._tones: OutputStream | None = None
        self._look_at = 0.0
        self._folder = Path(tempfile.mkdtemp(prefix="stepper-voice-"))
        self._next: Worker | None = None
        try:
            self._next = self._start()
            about = wait_until_ready(self._next, self._replace_next)
        except NoVoiceError:
            self.close()
            raise
        self._next_is_ready = True
        self._open_tones()
        self.voice_is_known: bool = about["voice_is_known"]
        """Whether the voice of the settings was found; otherwise the usual one speaks."""

    @property
    def process_id(self) -> int | None:
        """The system's number for the process that is speaking now."""
        with self._lock:
            return self._speaking.process_id if self._speaking else None

    def utter(self, text: str, words_per_minute: int, cut: Event) -> None:
        """Say a line and return when it has been heard or cut off.

        Raises:
            NoVoiceError: Two processes ended over the same line, or the system plays nothing.
        """
        self._open_tones()
        for _ in range(2):
            began = time.monotonic()
            if self._is_said(text, words_per_minute, cut):
                self._check_it_was_heard(text, words_per_minute, time.monotonic() - began)
                return
            if cut.is_set():
                return
        raise NoVoiceError("its process ended twice over the same line")

    def chime(self, pcm: bytes, rate_hz: int) -> None:
        """Play a short sound alongside what the voice says, if there is an output for it."""
        with self._lock:
            if self._tones is not None and not self._tones.lost:
                self._tones.play(pcm, rate_hz)

    def expect(self, lines: Iterable[tuple[str, int]]) -> None:
        """Do nothing: the system's voice speaks at once or not at all."""

    def hush(self) -> None:
        """Make no more sound, at once."""
        with self._lock:
            if self._speaking is not None:
                self._speaking.kill()
            if self._tones is not None:
                self._tones.clear()

    def close(self) -> None:
        """End all processes and remove their temporary files."""
        with self._lock:
            self._closed = True
            workers = (self._speaking, self._next)
            self._speaking = self._next = None
            tones, self._tones = self._tones, None
        if tones is not None:
            tones.close()
        for worker in workers:
            if worker is not None:
                worker.close()
        shutil.rmtree(self._folder, ignore_errors=True)

    def _open_tones(self) -> None:
        """Open the output for tones if there is none, or if it has gone with its device."""
        with self._lock:
            gone = self._tones
            is_there = gone is not None and not gone.lost
            is_early = time.monotonic() < self._look_at
            if self._open_output is None or self._closed or is_there or is_early:
                return
            self._tones, self._look_at = None, time.monotonic() + REOPEN_EVERY_S
        if gone is not None:
            gone.close()
        try:
            output = self._open_output()
        except NoOutputError:
            return
        with self._lock:
            if not self._closed:
                self._tones = output
                return
        output.close()

    def _is_said(self, text: str, words_per_minute: int, cut: Event) -> bool:
        worker = self._ready_worker()
        with self._lock:  # so that no process that speaks after a cut escapes the hush that comes with it
            if cut.is_set() or self._closed:
                cut.set()
                self._next = worker
                return False
            self._speaking = worker
            self._next, self._next_is_ready = self._start(), False
        question = {"text": text, "words_per_minute": words_per_minute}
        try:
            worker.ask(question, _longest_s(text, words_per_minute))
        except WorkerGoneError:
            return False
        finally:
            self._finish(worker)
        return True

    def _ready_worker(self) -> Worker:
        with self._lock:
            if self._closed or self._next is None:
                raise NoVoiceError("it is closed")
            worker = self._next
        if self._next_is_ready:
            return worker
        wait_until_ready(worker, self._replace_next)
        self._next_is_ready = True
        return self._ready_worker()

    def _replace_next(self) -> Worker:
        """Start another process for the next line, as the one that was started for it has died."""
        with self._lock:
            if self._closed or self._next is None:
                raise NoVoiceError("it is closed")
            self._next.close()
            self._next = self._start()
            return self._next

    def _finish(self, worker: Worker) -> None:
        with self._lock:
            self._speaking = None
        worker.close()
        for left_behind in self._folder.glob("*"):
            with suppress(OSError):
                left_behind.unlink()

    def _start(self) -> Worker:
        return Worker(
            "stepper.mouth.system_voice_worker",
            {"voice": self._settings.voice, "volume": self._settings.volume, "folder": str(self._folder)},
        )

    def _check_it_was_heard(self, text: str, words_per_minute: int, took_s: float) -> None:
        words = len(text.split())
        if words >= _FEWEST_WORDS_JUDGED and took_s < _UNHEARD_SHARE * _expected_s(text, words_per_minute):
            raise NoVoiceError("the system plays no sound")


def _expected_s(text: str, words_per_minute: int) -> float:
    return len(text.split()) * 60 / words_per_minute


def _longest_s(text: str, words_per_minute: int) -> float:
    """Return how long a line may take before its process is taken for dead; numbers are long words."""
    return 15 + 4 * _expected_s(text, words_per_minute) + len(text) / 4
