"""The program's handle on one worker process: start it, ask it, end it at once.

The worker leads a process group of its own: a key that interrupts the program does not reach it, and ending
the group also ends any player a voice may have started.
"""

from __future__ import annotations

import json
import os
import signal
import subprocess
import sys
from collections.abc import Callable, Mapping
from contextlib import suppress
from pathlib import Path
from threading import Timer
from typing import Any, BinaryIO, cast

import stepper
from stepper.mouth import worker_protocol
from stepper.mouth.ports import NoVoiceError

START_TIMEOUT_S = 15.0
"""How long a voice may take to get ready. Measured: 0.06 s; a system that has just woken takes longer."""
_END_TIMEOUT_S = 2.0


class WorkerGoneError(Exception):
    """The worker ended, or was ended, before it answered."""


class EndedAtStartError(NoVoiceError):
    """The worker ended by itself before it was ready."""


class Worker:
    """One worker process, from its start to its end."""

    def __init__(self, module: str, options: Mapping[str, Any]) -> None:
        """Start the process, without waiting for it to be ready.

        Args:
            module: Module to run, in full.
            options: What it is told at the start; anything JSON can hold.

        Raises:
            NoVoiceError: The process cannot be started.
        """
        self._hung = False
        # The worker must find the same code that this program runs, wherever that was found.
        root = str(Path(stepper.__path__[0]).resolve().parent)
        paths = os.pathsep.join(filter(None, [root, os.environ.get("PYTHONPATH", "")]))
        try:
            self._process = subprocess.Popen(
                [sys.executable, "-m", module, json.dumps(options)],
                stdin=subprocess.PIPE,
                stdout=subprocess.PIPE,
                stderr=subprocess.DEVNULL,
                env={**os.environ, "PYTHONPATH": paths},
                start_new_session=True,
                creationflags=_NEW_GROUP,
            )
        except OSError as error:
            raise NoVoiceError(f"its process cannot be started ({error})") from error

    @property
    def process_id(self) -> int:
        """The system's number for the process, which is its group's too."""
        return self._process.pid

    def started(self, timeout_s: float = START_TIMEOUT_S) -> dict[str, Any]:
        """Wait until it is ready.

        Returns:
            What it says of its voice.

        Raises:
            EndedAtStartError: It ended.
            NoVoiceError: It cannot speak, or was not ready in time.
        """
        try:
            return cast("dict[str, Any]", json.loads(self._answer(timeout_s)[1]))
        except WorkerGoneError:
            if self._hung:
                raise NoVoiceError(f"its process was not ready within {timeout_s:.0f} seconds") from None
            raise EndedAtStartError("its process ended before it was ready") from None

    def ask(self, question: Mapping[str, Any], timeout_s: float) -> tuple[bytes, bytes]:
        """Ask one question and wait for the answer.

        Args:
            question: Anything JSON can hold.
            timeout_s: After this the worker is taken for dead and ended. Unit: seconds.

        Returns:
            The letter and the body of the answer.

        Raises:
            WorkerGoneError: It died before this question or over it.
            NoVoiceError: It says that it cannot speak.
        """
        try:
            worker_protocol.send_question(cast("BinaryIO", self._process.stdin), question)
        except (OSError, ValueError):
            raise WorkerGoneError from None
        return self._answer(timeout_s)

    def kill(self) -> None:
        """End the process and all it started, at once. From any thread; a pending answer never comes."""
        if self._process.poll() is not None:
            return
        with suppress(OSError):
            if sys.platform == "win32":
                self._process.kill()
            else:
                os.killpg(self._process.pid, signal.SIGKILL)

    def close(self) -> None:
        """End the process and clean up after it. Call it only while nobody waits for an answer."""
        self.kill()
        with suppress(subprocess.TimeoutExpired):
            self._process.wait(_END_TIMEOUT_S)
        for pipe in (self._process.stdin, self._process.stdout):
            with suppress(OSError):  # what could not be written is no longer of use
                cast("BinaryIO", pipe).close()

    def _end_hung(self) -> None:
        self._hung = True
        self.kill()

    def _answer(self, timeout_s: float) -> tuple[bytes, bytes]:
        # A pipe cannot be read with a timeout on every system; a read ends everywhere when the writer dies.
        watchdog = Timer(timeout_s, self._end_hung)
        watchdog.daemon = True
        watchdog.start()
        try:
            answer = worker_protocol.read_answer(cast("BinaryIO", self._process.stdout))
        finally:
            watchdog.cancel()
        if answer is None:
            raise WorkerGoneError
        kind, body = answer
        if kind == worker_protocol.REFUSED:
            raise NoVoiceError(body.decode("utf-8", "replace"))
        return kind, body


def wait_until_ready(
    worker: Worker, replace: Callable[[], Worker], timeout_s: float = START_TIMEOUT_S
) -> dict[str, Any]:
    """Wait until a worker is ready; one that ends by itself before is replaced once.

    A start of eSpeak failed once in fifteen thousand, on a busy machine, and never again by hand.

    Args:
        worker: It.
        replace: Starts another in its place, and cleans up after it.
        timeout_s: How long each may take. Unit: seconds.

    Returns:
        What the one that is ready says of its voice.

    Raises:
        NoVoiceError: It cannot speak, or was not ready in time; or the second ended as well.
    """
    with suppress(EndedAtStartError):
        return worker.started(timeout_s)
    try:
        return replace().started(timeout_s)
    except EndedAtStartError:
        raise NoVoiceError("its process ended twice before it was ready") from None


_NEW_GROUP = 0
if sys.platform == "win32":
    _NEW_GROUP = subprocess.CREATE_NEW_PROCESS_GROUP | subprocess.CREATE_NO_WINDOW
