"""The process in which the system's own voice says one line.

Run as `python -m stepper.mouth.system_voice_worker OPTIONS` with JSON options `voice`, `volume` and `folder`
(for temporary files). One line per process: the second run of an engine's loop may hang, and stopping it in
mid-line does not work on every system, while ending a process does.
"""

from __future__ import annotations

import ctypes
import json
import os
import shutil
import signal
import sys
import tempfile
from collections.abc import Sequence
from contextlib import suppress
from threading import Event, Thread
from typing import Any, BinaryIO, NoReturn

from stepper.mouth import worker_protocol
from stepper.mouth.espeak_library import packaged_paths
from stepper.mouth.ports import NoVoiceError


def main() -> None:
    """Get ready, wait for the one line, say it, end."""
    asked, answers = worker_protocol.take_pipes()
    options = json.loads(sys.argv[1])
    tempfile.tempdir = options["folder"]
    with suppress(OSError):  # the program is gone, so nobody waits for an answer
        try:
            engine, voice_is_known = _engine(options["voice"], options["volume"])
            about = {"voice_is_known": voice_is_known}
            worker_protocol.send_answer(answers, worker_protocol.READY, json.dumps(about).encode())
            for question in worker_protocol.read_questions(asked):
                Thread(target=_end_with_the_program, args=(asked, options["folder"]), daemon=True).start()
                _say(engine, question)
                worker_protocol.send_answer(answers, worker_protocol.DONE)
                break
            else:  # the program is gone: it would have ended this process before closing the pipe
                shutil.rmtree(options["folder"], ignore_errors=True)
        except NoVoiceError as reason:
            why = str(reason).encode("utf-8", "replace")
            worker_protocol.send_answer(answers, worker_protocol.REFUSED, why)
    os._exit(0)  # some engines crash when shut down in the ordinary way


def matching_voice(voices: Sequence[Any], wanted: str, current: str | None) -> str | None:
    """Find a voice by its name, or an English one if none is named.

    Args:
        voices: What the system has; each with `id`, `name` and `languages`.
        wanted: Part of a name or of an id; empty for the usual voice.
        current: The id of the voice that would speak anyway.

    Returns:
        The id of the voice to take, or None for the one that would speak anyway.
    """
    if wanted:
        names = ((each, f"{each.id}\n{each.name}".casefold()) for each in voices)
        return next((each.id for each, name in names if wanted.casefold() in name), None)
    usual = next((each for each in voices if each.id == current), None)
    if usual is None or not usual.languages or _is_english(usual):
        return None
    return next((each.id for each in voices if _is_english(each)), None)


def _is_english(voice: Any) -> bool:
    return any(str(language).casefold().startswith("en") for language in voice.languages or ())


def _engine(voice: str, volume: float) -> tuple[Any, bool]:
    if sys.platform.startswith("linux"):
        _load_packaged_espeak()
    try:
        import pyttsx3

        engine = pyttsx3.init()
        found = matching_voice(engine.getProperty("voices"), voice, engine.getProperty("voice"))
        if found is not None:
            engine.setProperty("voice", found)
        engine.setProperty("volume", volume)
    except ImportError as error:
        raise NoVoiceError(f"the package pyttsx3 or a part of it is not installed ({error})") from error
    except Exception as error:  # each system's driver raises what it likes
        raise NoVoiceError(f"the system's voice cannot be started ({error})") from error
    return engine, found is not None or not voice


def _load_packaged_espeak() -> None:
    """Let pyttsx3 find the packaged library; otherwise it looks for the system's."""
    with suppress(NoVoiceError, OSError):
        library_path, data_path = packaged_paths()
        ctypes.CDLL(str(library_path), mode=ctypes.RTLD_GLOBAL)
        os.chdir(data_path.parent)  # the library does not accept a long path
        os.environ["ESPEAK_DATA_PATH"] = "."


def _say(engine: Any, question: dict[str, Any]) -> None:
    failures: list[str] = []
    finished = Event()
    engine.connect("error", lambda name, exception: failures.append(str(exception)))
    engine.connect("finished-utterance", lambda name, completed: finished.set())
    engine.setProperty("rate", question["words_per_minute"])
    engine.say(question["text"])
    try:
        engine.runAndWait()
    except Exception as error:  # each system's driver raises what it likes
        failures.append(str(error))
    if sys.platform.startswith("linux") and not failures:
        finished.wait()  # on that system the loop returns while the line is still being played
    if failures:
        raise NoVoiceError(f"the system's voice fails ({failures[0]})")


def _end_with_the_program(asked: BinaryIO, folder: str) -> NoReturn:
    asked.read()  # returns when the program is gone
    shutil.rmtree(folder, ignore_errors=True)
    if sys.platform != "win32" and os.getpgrp() == os.getpid():
        os.killpg(os.getpgrp(), signal.SIGKILL)  # any player that was started ends with it
    os._exit(1)


if __name__ == "__main__":
    main()
