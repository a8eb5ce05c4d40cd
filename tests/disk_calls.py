"""Stop a process at its calls to the disk: kill it there, cut a write short, or have the call fail.

The process is a fork of this one, watched through the system's own tracing of a child (ptrace), so nothing of the
program is replaced or knows of it, and every way to the disk is seen: SQLite's, Python's and any library's. Linux on
x86-64; elsewhere `WHY_NOT` says why nothing can be watched.

Source of the numbers: ptrace(2), and the kernel's table of calls for x86-64 (arch/x86/entry/syscalls), from memory.
"""

from __future__ import annotations

import ctypes
import errno
import io
import json
import os
import platform
import signal
import struct
import sys
import traceback
from collections.abc import Callable
from contextlib import suppress
from dataclasses import dataclass, field
from pathlib import Path
from typing import Any, Final

from stepper.errors import StepperError

WHY_NOT: Final = (
    ""
    if sys.platform == "linux" and platform.machine() == "x86_64"
    else "calls to the disk are watched on Linux with x86-64 alone"
)

_TRACEME, _CONT, _GETREGS, _SETREGS, _SYSCALL, _SETOPTIONS = 0, 7, 12, 13, 24, 0x4200
_GOOD_STOPS, _FILTER_STOPS, _KILL_WITH_US = 1, 0x80, 0x100000
_CALL_STOP, _FILTER_STOP = signal.SIGTRAP | 0x80, signal.SIGTRAP | 7 << 8
_CREATE = 0o100
_WRITES = {1: "write", 18: "pwrite", 20: "writev", 74: "fsync", 75: "fdatasync", 77: "ftruncate", 91: "fchmod"}
_PATHS = {82: "rename", 83: "mkdir", 84: "rmdir", 86: "link", 87: "unlink", 88: "symlink", 90: "chmod"}
_PATHS_AT = {257: "open", 258: "mkdir", 263: "unlink", 264: "rename", 265: "link", 316: "rename"}
_READS = {0: "read", 17: "pread"}
_SHORTENED = {1, 18}
_OPEN = 257


class _Registers(ctypes.Structure):
    _fields_ = [
        (name, ctypes.c_ulonglong)
        for name in (
            *("r15", "r14", "r13", "r12", "rbp", "rbx", "r11", "r10", "r9", "r8", "rax", "rcx", "rdx", "rsi", "rdi"),
            *("orig_rax", "rip", "cs", "eflags", "rsp", "ss", "fs_base", "gs_base", "ds", "es", "fs", "gs"),
        )
    ]


@dataclass(frozen=True, kw_only=True)
class Blow:
    """What befalls a process at one of its calls."""

    at: int
    """Which call, from 1; 0 for none."""
    kind: str = "kill"
    """One of: kill (before the call), torn (half of what is written, then killed), or the name of an error."""
    lasting: bool = False
    """Whether an error befalls every call from then on."""
    reads: bool = False
    """Whether calls that read count as well."""


@dataclass(kw_only=True)
class Outcome:
    """What became of a process."""

    calls: int = 0
    """How many calls to the disk it made."""
    killed: bool = False
    said: list[Any] = field(default_factory=list)
    """What it reported, in order."""
    refused: str = ""
    """The sentence it ended with; empty if it ended well or was killed."""
    fault: str = ""
    """The traceback of a fault of its own; empty if there was none."""
    names: list[str] = field(default_factory=list)
    """Each call by name."""


def run_struck(work: Callable[[Callable[[Any], None]], None], folder: Path, blow: Blow) -> Outcome:
    """Run some work in a process of its own and strike it at one of its calls below a folder.

    Args:
        work: Given a function that reports anything JSON can hold; what was reported is known whatever happens next.
        folder: Only calls that concern files in it count.
        blow: What befalls it.
    """
    mine, theirs = os.pipe()
    child = os.fork()
    if not child:
        os.close(mine)
        _be_the_child(work, theirs)
    os.close(theirs)
    outcome = Outcome()
    try:
        _watch(child, str(folder.resolve()), blow, outcome)
    finally:
        with os.fdopen(mine, "rb") as pipe:
            lines = pipe.read().split(b"\n")
    for line in lines[:-1]:
        said = json.loads(line)
        if "fault" in said:
            outcome.fault = said["fault"]
        elif "refused" in said:
            outcome.refused = said["refused"]
        else:
            outcome.said.append(said["said"])
    return outcome


def _be_the_child(work: Callable[[Callable[[Any], None]], None], pipe: int) -> None:
    """Do the work and end without returning, so that nothing of the parent happens twice."""

    def report(**said: Any) -> None:
        os.write(pipe, json.dumps(said).encode() + b"\n")

    try:
        sys.stdout, sys.stderr = io.StringIO(), io.StringIO()
        _ptrace(_TRACEME, 0)
        os.kill(os.getpid(), signal.SIGSTOP)
        _stop_at_calls()
        work(lambda what: report(said=what))
    except StepperError as error:
        report(refused=str(error))
    except BaseException:
        report(fault=traceback.format_exc())
    finally:
        os._exit(0)


def _ptrace(request: int, child: int, data: Any = None) -> None:
    library = ctypes.CDLL(None, use_errno=True)
    library.ptrace.argtypes = [ctypes.c_long, ctypes.c_long, ctypes.c_void_p, ctypes.c_void_p]
    library.ptrace.restype = ctypes.c_long
    if library.ptrace(request, child, None, data) == -1:
        number = ctypes.get_errno()
        raise OSError(number, os.strerror(number))


def _watch(child: int, folder: str, blow: Blow, outcome: Outcome) -> None:
    """Follow the child from call to call until it has ended."""
    os.waitpid(child, 0)
    _ptrace(_SETOPTIONS, child, ctypes.c_void_p(_GOOD_STOPS | _FILTER_STOPS | _KILL_WITH_US))
    registers, passed_on, request = _Registers(), 0, _CONT
    while True:
        with suppress(ProcessLookupError):  # killed just now
            _ptrace(request, child, ctypes.c_void_p(passed_on))
        passed_on = 0
        _, status = os.waitpid(child, 0)
        if not os.WIFSTOPPED(status):
            outcome.killed = os.WIFSIGNALED(status)
            return
        if status >> 8 == _FILTER_STOP:
            request = _strike(child, folder, blow, outcome, registers)
        elif os.WSTOPSIG(status) == _CALL_STOP:  # half of what was to be written is written
            os.kill(child, signal.SIGKILL)
        else:
            passed_on = os.WSTOPSIG(status)


def _strike(child: int, folder: str, blow: Blow, outcome: Outcome, registers: _Registers) -> int:
    """Look at a call that is about to be made, and strike if it is the one; return how to go on."""
    _ptrace(_GETREGS, child, ctypes.byref(registers))
    name = _name_of(child, folder, registers, reads=blow.reads)
    if not name:
        return _CONT
    outcome.calls += 1
    outcome.names.append(name)
    if not (outcome.calls == blow.at or (blow.lasting and blow.at and outcome.calls > blow.at)):
        return _CONT
    if blow.kind == "kill":
        os.kill(child, signal.SIGKILL)
        return _CONT
    if blow.kind == "torn":
        if registers.orig_rax in _SHORTENED:
            registers.rdx //= 2
    else:
        registers.orig_rax = 2**64 - 1  # no call is made, and this is its answer
        registers.rax = 2**64 - getattr(errno, blow.kind)
    _ptrace(_SETREGS, child, ctypes.byref(registers))
    return _SYSCALL if blow.kind == "torn" else _CONT


def _stop_at_calls() -> None:
    """Have this process stop at the calls that are looked at and at no other, by a filter of the kernel's.

    Source: seccomp(2): a filter is a program of the classic Berkeley packet filter over the call's number.
    """
    numbers = [*_WRITES, *_PATHS, *_PATHS_AT, *_READS]
    steps = [(0x20, 0, 0, 0)]  # load the number
    steps += [(0x15, len(numbers) - at, 0, number) for at, number in enumerate(numbers)]  # is it this one?
    steps += [(0x06, 0, 0, 0x7FFF0000), (0x06, 0, 0, 0x7FF00000)]  # allow; stop for the tracer
    program = b"".join(struct.pack("<HBBI", *step) for step in steps)
    buffer = ctypes.create_string_buffer(program, len(program))
    head = struct.pack("<HxxxxxxQ", len(steps), ctypes.addressof(buffer))
    library = ctypes.CDLL(None, use_errno=True)
    library.prctl.argtypes = [ctypes.c_int] + [ctypes.c_ulong] * 4
    where = ctypes.create_string_buffer(head, len(head))
    if library.prctl(38, 1, 0, 0, 0) or library.prctl(22, 2, ctypes.addressof(where), 0, 0):
        raise OSError(ctypes.get_errno(), "no filter of calls can be set")


def _name_of(child: int, folder: str, registers: _Registers, *, reads: bool) -> str:
    """Return the name of a call that concerns the folder; empty for any other."""
    number = registers.orig_rax
    name = _WRITES.get(number) or (_READS.get(number) if reads else None)
    if name:
        try:
            place = str(Path(f"/proc/{child}/fd/{registers.rdi}").readlink())
        except OSError:
            return ""
        return name if place.startswith(folder) else ""
    name = _PATHS.get(number) or _PATHS_AT.get(number)
    if not name or (number == _OPEN and not registers.rdx & _CREATE):
        return ""
    path = _text_at(child, registers.rdi if number in _PATHS else registers.rsi)
    return name if path.startswith(folder) else ""


def _text_at(child: int, address: int) -> str:
    """Read a path from the child's memory."""
    with Path(f"/proc/{child}/mem").open("rb", buffering=0) as memory:
        memory.seek(address)
        raw = memory.read(4096)
    return os.fsdecode(raw.partition(b"\0")[0])
