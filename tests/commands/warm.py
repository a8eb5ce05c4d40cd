"""Processes of the program that do not load it anew: made by fork from one that has it loaded already.

Each is a process of its own all the same, with its own folder, surroundings, streams and exit code, and can be killed
as any other. What a cold start does is tried where that is the question: `test_main`, `test_start`, `test_whole_garment`.
"""

from __future__ import annotations

import array
import contextlib
import fcntl
import gc
import importlib
import json
import os
import pkgutil
import signal
import socket
import subprocess
import sys
import termios
import threading
import time
import traceback
from functools import cache
from pathlib import Path
from typing import IO

ROOT = Path(__file__).resolve().parents[2]


class WarmProcess:
    """A command in a process of its own. The names are those of `subprocess.Popen`."""

    def __init__(self, words: list[str], stdin: IO[bytes], stdout: IO[bytes], stderr: IO[bytes], env: dict[str, str]) -> None:
        """Start it.

        Args:
            words: What follows the program's name.
            stdin: What it reads from; the others likewise. Each may be closed here once it has started. A terminal becomes
                its own, so that it hears when the window changes or closes.
            stdout: What it writes to.
            stderr: What it complains to.
            env: Its surroundings; it starts in the folder in hand.
        """
        told, tell = os.pipe()
        self._told = os.fdopen(told, encoding="ascii")
        task = json.dumps({"words": words, "env": env, "folder": str(Path.cwd())}).encode()
        fds = array.array("i", [stdin.fileno(), stdout.fileno(), stderr.fileno(), tell])
        _source().sendmsg([task], [(socket.SOL_SOCKET, socket.SCM_RIGHTS, fds)])
        os.close(tell)
        self.pid = int(self._told.readline())
        self.returncode: int | None = None

    def send_signal(self, number: int) -> None:
        """Send it a signal, unless it has ended."""
        with contextlib.suppress(ProcessLookupError):
            os.kill(self.pid, number)

    def wait(self, timeout: float) -> int:
        """Wait until it has ended; return its exit code, below 0 the signal that ended it."""
        ending = threading.Timer(timeout, self.send_signal, [signal.SIGKILL])
        ending.start()
        begin = time.monotonic()
        if self.returncode is None:
            self.returncode = int(self._told.readline())
            self._told.close()
        ending.cancel()
        assert time.monotonic() - begin < timeout, "it came to no end"
        return self.returncode


@cache
def _source() -> socket.socket:
    """Start the process that the others are made from, once in a run; it ends when this socket closes."""
    ours, its = socket.socketpair(socket.AF_UNIX, socket.SOCK_SEQPACKET)
    subprocess.Popen(
        [sys.executable, "-m", "tests.commands.warm", str(its.fileno())],
        pass_fds=[its.fileno()],
        stdin=subprocess.DEVNULL,
        stdout=subprocess.DEVNULL,
        env={**os.environ, "PYTHONPATH": str(ROOT), "PYTHONUTF8": "1"},
    )
    its.close()
    return ours


def _load_everything() -> None:
    """Load what commands load when they are called, and build the tables of the reader and of other wordings."""
    import stepper.commands
    from stepper.project.page.pasted import take_apart
    from stepper.project.reader import read_project
    from tests.commands.garments import CUFF

    for each in pkgutil.iter_modules(stepper.commands.__path__):
        importlib.import_module(f"stepper.commands.{each.name}")
    importlib.import_module("stepper.sitting.full_screen")
    read_project(CUFF.lstrip())
    take_apart("Cuff\nCast on 40 sts, and think of the sea.\nYou'll knit 2 rounds, as you go.\n")
    gc.freeze()  # what is loaded stays, and is searched in none of the processes


def _serve(tasks: socket.socket) -> None:
    """Make a process for each task until nobody asks any more."""
    signal.signal(signal.SIGCHLD, signal.SIG_IGN)
    while True:
        task, ancillary, _, _ = tasks.recvmsg(1 << 20, socket.CMSG_SPACE(4 * array.array("i").itemsize))
        if not task:
            return
        fds = array.array("i", ancillary[0][2])
        if os.fork() == 0:
            tasks.close()
            _watch(json.loads(task), *fds)
        for each in fds:
            os.close(each)


def _watch(task: dict[str, object], stdin: int, stdout: int, stderr: int, tell: int) -> None:
    """Start the command in a child, tell its number, wait for it, and tell how it ended."""
    signal.signal(signal.SIGCHLD, signal.SIG_DFL)
    child = os.fork()
    if child == 0:
        os.close(tell)
        for number, each in enumerate((stdin, stdout, stderr)):
            os.dup2(each, number)
            os.close(each)
        if os.isatty(0):
            os.setsid()
            fcntl.ioctl(0, termios.TIOCSCTTY, 0)
        _run(task)
    for each in (stdin, stdout, stderr):
        os.close(each)
    with os.fdopen(tell, "w", encoding="ascii") as told:
        print(child, file=told, flush=True)
        _, status = os.waitpid(child, 0)
        print(os.waitstatus_to_exitcode(status), file=told, flush=True)
    os._exit(0)


def _run(task: dict[str, object]) -> None:
    """Be the program."""
    signal.signal(signal.SIGINT, signal.default_int_handler)
    os.environ.clear()
    os.environ.update(task["env"])  # type: ignore[arg-type]
    os.chdir(str(task["folder"]))
    sys.argv = ["stepper", *task["words"]]  # type: ignore[misc]
    from stepper.commands.main import main

    code: object = 1
    try:
        code = main()
    except SystemExit as ended:
        code = ended.code
    except BaseException:
        traceback.print_exc()
    for each in threading.enumerate():
        if each is not threading.main_thread() and not each.daemon:
            each.join()
    with contextlib.suppress(OSError, ValueError):
        sys.stdout.flush()
    os._exit(code if isinstance(code, int) else 0 if code is None else 1)


if __name__ == "__main__":
    _load_everything()
    _serve(socket.socket(fileno=int(sys.argv[1])))
