"""How a voice's worker process and the program talk through two pipes.

A question is one line of JSON; an answer is a letter, a length and that many bytes. The worker ends when its
standard input does, so it never outlives the program, however that ends.
"""

from __future__ import annotations

import json
import os
import struct
import sys
from collections.abc import Callable, Iterator, Mapping
from contextlib import suppress
from typing import Any, BinaryIO, Protocol, TypeVar

from stepper.mouth.ports import NoVoiceError

READY = b"R"
"""The worker can speak; JSON about the voice."""
SPEECH = b"S"
"""Sound: one channel, signed 16-bit."""
SOUNDS = b"P"
"""How each of several texts is pronounced: a list in JSON."""
DONE = b"D"
"""The line has been said aloud."""
REFUSED = b"X"
"""It cannot be done; the body is half a sentence that says why."""

_HEADER = struct.Struct(">cI")


class VoiceLibrary(Protocol):
    """A library that is loaded and can speak."""

    @property
    def rate_hz(self) -> int:
        """Samples per second of the sound it makes."""

    @property
    def voice_is_known(self) -> bool:
        """Whether the voice asked for was found; otherwise the usual one speaks."""


_Voice = TypeVar("_Voice", bound=VoiceLibrary)


def send_question(pipe: BinaryIO, question: Mapping[str, Any]) -> None:
    """Write one question.

    Raises:
        OSError: The other side is gone.
        ValueError: The pipe is closed.
    """
    pipe.write(json.dumps(question).encode("ascii") + b"\n")
    pipe.flush()


def read_questions(pipe: BinaryIO) -> Iterator[dict[str, Any]]:
    """Yield one question after another until the other side is gone."""
    for line in pipe:
        yield json.loads(line)


def send_answer(pipe: BinaryIO, kind: bytes, body: bytes = b"") -> None:
    """Write one answer.

    Args:
        pipe: Where to.
        kind: One of the letters above.
        body: What comes with it.

    Raises:
        OSError: The other side is gone.
    """
    pipe.write(_HEADER.pack(kind, len(body)) + body)
    pipe.flush()


def read_answer(pipe: BinaryIO) -> tuple[bytes, bytes] | None:
    """Read one answer.

    Returns:
        Its letter and its body, or None if the other side is gone.
    """
    header = pipe.read(_HEADER.size)
    if len(header) < _HEADER.size:
        return None
    kind, size_bytes = _HEADER.unpack(header)
    body = pipe.read(size_bytes)
    return (kind, body) if len(body) == size_bytes else None


def take_pipes() -> tuple[BinaryIO, BinaryIO]:
    """Return a worker's two pipes, and redirect anything else that writes to standard output.

    What libraries print there would be read as an answer.
    """
    answers = os.fdopen(os.dup(1), "wb")
    nowhere = os.open(os.devnull, os.O_WRONLY)
    os.dup2(nowhere, 1)
    os.close(nowhere)
    return sys.stdin.buffer, answers


def serve(
    open_voice: Callable[[str, float], _Voice],
    answer: Callable[[_Voice, dict[str, Any]], tuple[bytes, bytes]],
) -> None:
    """Be the worker of a voice: answer one question after another until the asking program is gone.

    Args:
        open_voice: Loads the voice, given its name and its volume; may raise `NoVoiceError`.
        answer: Returns the letter and the body that answer a question; may raise `NoVoiceError`.
    """
    asked, answers = take_pipes()
    options = json.loads(sys.argv[1])
    with suppress(OSError):  # the program is gone, so nobody waits for an answer
        try:
            voice = open_voice(options["voice"], options["volume"])
            about = {"rate_hz": voice.rate_hz, "voice_is_known": voice.voice_is_known}
            send_answer(answers, READY, json.dumps(about).encode())
            for question in read_questions(asked):
                send_answer(answers, *answer(voice, question))
        except NoVoiceError as reason:
            send_answer(answers, REFUSED, str(reason).encode("utf-8", "replace"))
