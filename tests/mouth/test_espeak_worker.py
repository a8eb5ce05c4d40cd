from __future__ import annotations

import io
import json
import subprocess
import sys

from stepper.mouth import worker_protocol


def _run(asked: bytes) -> tuple[int, io.BytesIO]:
    command = [sys.executable, "-m", "stepper.mouth.espeak_worker", '{"voice": "", "volume": 1.0}']
    done = subprocess.run(command, input=asked, capture_output=True, timeout=60)
    return done.returncode, io.BytesIO(done.stdout)


def test_it_says_that_it_is_ready_and_ends_when_nobody_asks() -> None:
    """The end of its input is the end of the worker."""
    code, answers = _run(b"")
    ready = worker_protocol.read_answer(answers)
    assert ready is not None
    assert json.loads(ready[1]) == {"rate_hz": 22_050, "voice_is_known": True}
    assert worker_protocol.read_answer(answers) is None
    assert code == 0


def test_each_question_gets_one_answer_and_a_slower_one_is_longer() -> None:
    """Questions and answers stay in step, and the speed is kept per line."""
    questions = io.BytesIO()
    for speed in (150, 120):
        worker_protocol.send_question(questions, {"text": "Purl to the end.", "words_per_minute": speed})
    _, answers = _run(questions.getvalue())
    found = [worker_protocol.read_answer(answers) for _ in range(4)]
    assert found[3] is None
    usual, slower = (len(answer[1]) for answer in found[1:3] if answer)
    assert 1.1 < slower / usual < 1.4  # Source: 150 / 120 words per minute = 1.25
