from __future__ import annotations

import io
import os
import subprocess
import sys

from hypothesis import given
from hypothesis import strategies as st

from stepper.mouth import worker_protocol


@given(st.sampled_from([worker_protocol.READY, worker_protocol.SPEECH, worker_protocol.DONE, worker_protocol.REFUSED]), st.binary(max_size=500))
def test_an_answer_comes_back_as_it_was_sent(kind: bytes, body: bytes) -> None:
    """Any bytes pass, line ends and zeros too."""
    pipe = io.BytesIO()
    worker_protocol.send_answer(pipe, kind, body)
    pipe.seek(0)
    assert worker_protocol.read_answer(pipe) == (kind, body)
    assert worker_protocol.read_answer(pipe) is None


@given(st.integers(0, 12))
def test_an_answer_cut_short_is_no_answer(size_bytes: int) -> None:
    """A worker that dies over an answer has given none."""
    pipe = io.BytesIO()
    worker_protocol.send_answer(pipe, worker_protocol.SPEECH, b"12345678")
    assert worker_protocol.read_answer(io.BytesIO(pipe.getvalue()[:size_bytes])) is None


@given(st.text(max_size=200))
def test_a_question_keeps_every_character(text: str) -> None:
    """Writing of any kind, and half a character, go through the pipe."""
    pipe = io.BytesIO()
    worker_protocol.send_question(pipe, {"text": text})
    pipe.seek(0)
    assert list(worker_protocol.read_questions(pipe)) == [{"text": text}]


def test_what_a_library_prints_is_not_an_answer() -> None:
    """A worker's standard output belongs to its answers alone."""
    code = (
        "import os\nfrom stepper.mouth.worker_protocol import DONE, send_answer, take_pipes\n"
        "asked, answers = take_pipes()\n"
        "print('noise', flush=True); os.write(1, b'more noise')\nsend_answer(answers, DONE)"
    )
    command = [sys.executable, "-c", code]
    done = subprocess.run(command, stdin=subprocess.DEVNULL, capture_output=True, timeout=30)
    assert worker_protocol.read_answer(io.BytesIO(done.stdout)) == (worker_protocol.DONE, b"")
    assert done.stderr == b"", os.fsdecode(done.stderr)
