from __future__ import annotations

import os
import signal
import subprocess
import sys
import time
from collections.abc import Callable
from pathlib import Path

import pytest

from stepper.mouth import worker_protocol
from stepper.mouth.ports import NoVoiceError
from stepper.mouth.worker import Worker, WorkerGoneError, wait_until_ready
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


_STARTS = """
import sys
from pathlib import Path
starts = Path(__file__).with_name("starts")
count = len(starts.read_text()) if starts.exists() else 0
starts.write_text("x" * (count + 1))
{begins}
from stepper.mouth.espeak_worker import main
main()
"""


class Starts:
    """Workers of a module that begins in its own way, and how many were started."""

    def __init__(self, folder: Path, begins: str) -> None:
        (folder / "worker_of_test.py").write_text(_STARTS.format(begins=begins))
        self._starts = folder / "starts"
        self.last: Worker | None = None

    def another(self) -> Worker:
        """Start a worker, in the place of the one before."""
        if self.last is not None:
            self.last.close()
        self.last = Worker("worker_of_test", _OPTIONS)
        return self.last

    @property
    def number(self) -> int:
        """How many were started."""
        return len(self._starts.read_text())


@pytest.fixture
def starts(tmp_path: Path, monkeypatch: pytest.MonkeyPatch):  # type: ignore[no-untyped-def]
    """Make workers that begin as they are told."""
    monkeypatch.setenv("PYTHONPATH", str(tmp_path))
    made: list[Starts] = []

    def make(begins: str) -> Starts:
        made.append(Starts(tmp_path, begins))
        return made[-1]

    yield make
    for each in made:
        if each.last is not None:
            each.last.close()


def test_a_worker_that_dies_at_its_first_start_is_replaced(starts: Callable[[str], Starts]) -> None:
    """Killed as a crash of its library kills it; the second is ready and speaks."""
    made = starts("import os, signal\nif not count: os.kill(os.getpid(), signal.SIGKILL)")
    assert wait_until_ready(made.another(), made.another)["rate_hz"] == 22_050
    assert made.number == 2
    assert made.last is not None
    kind, _ = made.last.ask({"text": "Round one.", "words_per_minute": 150}, PATIENCE_S)
    assert kind == worker_protocol.SPEECH


def test_one_that_dies_at_each_start_is_given_up_after_two(starts: Callable[[str], Starts]) -> None:
    """A library that is broken is told, and the session goes on in text."""
    made = starts("sys.exit(3)")
    with pytest.raises(NoVoiceError, match="its process ended twice before it was ready"):
        wait_until_ready(made.another(), made.another)
    assert made.number == 2


def test_one_that_says_why_it_cannot_speak_is_not_tried_again(starts: Callable[[str], Starts]) -> None:
    """It would say the same."""
    made = starts("from stepper.mouth.worker_protocol import send_answer\nsend_answer(sys.stdout.buffer, b'X', b'it is hoarse')")
    with pytest.raises(NoVoiceError, match="hoarse"):
        wait_until_ready(made.another(), made.another)
    assert made.number == 1


def test_one_that_hangs_at_its_start_is_not_tried_again(starts: Callable[[str], Starts]) -> None:
    """She waits for a voice once, not twice; what is said is that it was not ready, as it did not end by itself."""
    made = starts("import time\ntime.sleep(60)")
    with pytest.raises(NoVoiceError, match="was not ready within 1 seconds"):
        wait_until_ready(made.another(), made.another, timeout_s=1)
    assert made.number == 1


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
