from __future__ import annotations

import os
import signal
import subprocess
import sys
import time
from collections.abc import Callable

import pytest

from stepper.mouth import worker_protocol
from stepper.mouth.ports import NoVoiceError
from stepper.mouth.worker import Worker, WorkerGoneError
from tests.waiting import PATIENCE_S, least_of, wait_until

_ESPEAK = "stepper.mouth.espeak_worker"
_OPTIONS = {"voice": "", "volume": 1.0}


def test_it_answers_one_question_after_another() -> None:
    """One process serves a whole session."""
    worker = Worker(_ESPEAK, _OPTIONS)
    try:
        assert worker.started()["rate_hz"] == 22_050
        for _ in range(3):
            kind, pcm = worker.ask({"text": "Round one.", "words_per_minute": 150}, PATIENCE_S)
            assert kind == worker_protocol.SPEECH
            assert len(pcm) > 10_000
    finally:
        worker.close()


def test_a_killed_worker_is_told_from_one_that_refuses() -> None:
    """Only a worker that died is worth starting again."""
    worker = Worker(_ESPEAK, _OPTIONS)
    worker.started()
    os.kill(worker.process_id, signal.SIGKILL)
    with pytest.raises(WorkerGoneError):
        worker.ask({"text": "Round one.", "words_per_minute": 150}, PATIENCE_S)
    worker.close()


def test_a_worker_that_hangs_is_ended_in_time() -> None:
    """The voice may hang; the session does not."""

    def hung_s() -> float:
        worker = Worker(_ESPEAK, _OPTIONS)
        worker.started()
        os.kill(worker.process_id, signal.SIGSTOP)
        began = time.monotonic()
        with pytest.raises(WorkerGoneError):
            worker.ask({"text": "Round one.", "words_per_minute": 150}, 0.3)
        took_s = time.monotonic() - began
        worker.close()
        return took_s

    assert least_of(hung_s, 2) < 2


def test_a_module_that_is_not_there_is_a_plain_reason() -> None:
    """A worker that ends before it is ready is reported, not waited for."""
    worker = Worker("stepper.mouth.nowhere", {})
    with pytest.raises(NoVoiceError, match="ended before it was ready"):
        worker.started()
    worker.close()


def test_closing_leaves_no_process_behind(is_running: Callable[[int], bool]) -> None:
    """Closing ends the worker, ready or not, and may be done twice."""
    ready, fresh = Worker(_ESPEAK, _OPTIONS), Worker(_ESPEAK, _OPTIONS)
    ready.started()
    for worker in (ready, fresh, ready):
        worker.close()
    assert not is_running(ready.process_id)
    assert not is_running(fresh.process_id)


def test_a_program_killed_outright_leaves_no_worker_behind(is_running: Callable[[int], bool]) -> None:
    """When the program is killed it cannot clear up, so the worker must end by itself."""
    code = (
        "import time\nfrom stepper.mouth.worker import Worker\n"
        f"worker = Worker({_ESPEAK!r}, {_OPTIONS!r})\nworker.started()\n"
        "print(worker.process_id, flush=True)\ntime.sleep(60)"
    )
    with subprocess.Popen([sys.executable, "-c", code], stdout=subprocess.PIPE, text=True) as program:
        assert program.stdout is not None
        worker_id = int(program.stdout.readline())
        assert is_running(worker_id)
        program.kill()
    wait_until(lambda: not is_running(worker_id), "the worker outlives its program")


def test_an_interrupt_from_the_keyboard_does_not_reach_it() -> None:
    """Ctrl-C in the terminal goes to the program alone, which may want to say a last line."""
    worker = Worker(_ESPEAK, _OPTIONS)
    worker.started()
    assert os.getpgid(worker.process_id) != os.getpgid(0)
    worker.close()
