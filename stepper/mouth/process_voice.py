"""A voice in a worker process that is restarted when it dies."""

from __future__ import annotations

from collections.abc import Iterable
from threading import Lock

from stepper.mouth.ports import NoVoiceError
from stepper.mouth.settings import SpeechSettings
from stepper.mouth.worker import Worker, WorkerGoneError, wait_until_ready

_ANSWER_TIMEOUT_S = 10.0
"""The longest piece takes a few hundredths of a second, or a few seconds with a natural voice; a worker that
takes this long hangs."""


class ProcessVoice:
    """Make speech in another process."""

    def __init__(self, module: str, settings: SpeechSettings) -> None:
        """Start the worker and wait until it is ready.

        Args:
            module: The worker, in full.
            settings: Which voice, how loud.

        Raises:
            NoVoiceError: It cannot be started.
        """
        self._module, self._settings = module, settings
        self._closed = False
        self._lock = Lock()
        self._worker = self._start()
        try:
            about = wait_until_ready(self._worker, self._replace)
        except NoVoiceError:
            self._worker.close()
            raise
        self.rate_hz: int = about["rate_hz"]
        """Samples per second of what it makes."""
        self.voice_is_known: bool = about["voice_is_known"]
        """Whether the voice of the settings was found; otherwise the usual one speaks."""

    @property
    def process_id(self) -> int:
        """The system's number for the worker process that runs now."""
        return self._worker.process_id

    def speech(self, text: str, words_per_minute: int) -> bytes:
        """Make the sound of a stretch of text, with a new worker if the old one has died.

        Raises:
            NoVoiceError: A second worker died over the same text, or none can be started.
        """
        question = {"text": text, "words_per_minute": words_per_minute}
        try:
            return self._worker.ask(question, _ANSWER_TIMEOUT_S)[1]
        except WorkerGoneError:
            wait_until_ready(self._replace(), self._replace)
        try:
            return self._worker.ask(question, _ANSWER_TIMEOUT_S)[1]
        except WorkerGoneError:
            raise NoVoiceError("its process ended twice over the same line") from None

    def expect(self, pieces: Iterable[tuple[str, int]]) -> None:
        """Do nothing: no line is prepared."""

    def close(self) -> None:
        """End the worker, for good."""
        with self._lock:
            self._closed = True
            self._worker.close()

    def _start(self) -> Worker:
        options = {"voice": self._settings.voice, "volume": self._settings.volume}
        return Worker(self._module, options)

    def _replace(self) -> Worker:
        """Start another worker in the place of one that has died."""
        with self._lock:  # closing meanwhile must not leave a new worker behind
            self._worker.close()
            if self._closed:
                raise NoVoiceError("it is closed")
            self._worker = self._start()
            return self._worker
