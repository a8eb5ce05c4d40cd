"""Take inputs one by one within limits of time and memory, and count what becomes of each."""

from __future__ import annotations

import re
import resource
import signal
import time
import traceback
from collections import Counter
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

from stepper.errors import StepperError

SLOW_S = 2.0
"""Longest that one input may take. Unit: s of processor."""
MOST_BYTES = 500 << 20
"""Most memory that the process may ask for, all that is loaded included."""


class TooSlowError(BaseException):
    """Raised inside whatever takes an input for too long; no handler of ordinary errors stops it."""


@contextmanager
def memory_bounded() -> Iterator[None]:
    """Let this process ask for no more than `MOST_BYTES`; whoever asks for more gets a MemoryError."""
    before = resource.getrlimit(resource.RLIMIT_DATA)
    resource.setrlimit(resource.RLIMIT_DATA, (MOST_BYTES, before[1]))
    try:
        yield
    finally:
        resource.setrlimit(resource.RLIMIT_DATA, before)


@contextmanager
def memory_bounded_to(more_bytes: int) -> Iterator[None]:
    """Let this process ask for so much more memory than it has; on Linux."""
    found = re.search(r"VmData:\s*(\d+)", Path("/proc/self/status").read_text(encoding="ascii"))
    assert found
    before = resource.getrlimit(resource.RLIMIT_DATA)
    resource.setrlimit(resource.RLIMIT_DATA, ((int(found[1]) << 10) + more_bytes, before[1]))
    try:
        yield
    finally:
        resource.setrlimit(resource.RLIMIT_DATA, before)


@contextmanager
def time_bounded(seconds: float) -> Iterator[None]:
    """Stop what takes longer, by the processor or by waiting a hundred times as long: a busy machine is no fault."""

    def stop(number: int, frame: object) -> None:
        raise TooSlowError

    before = signal.signal(signal.SIGPROF, stop), signal.signal(signal.SIGALRM, stop)
    signal.setitimer(signal.ITIMER_PROF, seconds)
    signal.setitimer(signal.ITIMER_REAL, 100 * seconds)
    try:
        yield
    finally:
        signal.setitimer(signal.ITIMER_PROF, 0)
        signal.setitimer(signal.ITIMER_REAL, 0)
        signal.signal(signal.SIGPROF, before[0])
        signal.signal(signal.SIGALRM, before[1])


class Counts:
    """What became of the inputs of one kind."""

    def __init__(self, name: str, keep: Path) -> None:
        """Begin with none.

        Args:
            name: What the inputs are called.
            keep: Where the smallest input of each fault is written.
        """
        self.name, self._keep = name, keep
        self.became: Counter[str] = Counter()
        self.faults: Counter[str] = Counter()
        self.slowest_s = 0.0
        self._smallest: dict[str, int] = {}

    def take(self, raw: bytes, by: Callable[[bytes], str]) -> None:
        """Take one input.

        Args:
            raw: The input.
            by: What takes it; it returns what became of it, in a word. A `StepperError` in one sentence is an answer,
                any other error a fault.
        """
        begun = time.process_time()
        try:
            with time_bounded(SLOW_S):
                word = by(raw)
        except StepperError as error:
            word = "refused"
            if "\n" in str(error) or not str(error).endswith((".", "?")):
                self._fault(f"not one sentence: {str(error)[:120]!r}", raw, "")
        except TooSlowError:
            word = "fault"
            self._fault("slow", raw, traceback.format_exc())
        except Exception as error:
            word = "fault"
            last = traceback.extract_tb(error.__traceback__)[-1]
            self._fault(f"{type(error).__name__} in {Path(last.filename).name}:{last.lineno}", raw, traceback.format_exc())
        self.became[word] += 1
        self.slowest_s = max(self.slowest_s, time.process_time() - begun)

    def _fault(self, name: str, raw: bytes, told: str) -> None:
        self.faults[name] += 1
        if len(raw) < self._smallest.get(name, 1 << 30):
            self._smallest[name] = len(raw)
            stem = f"{self.name}-{list(self._smallest).index(name)}"
            (self._keep / f"{stem}.input").write_bytes(raw)
            (self._keep / f"{stem}.txt").write_text(f"{name}\n\n{told}", encoding="utf-8")

    def told(self) -> str:
        """Return the counts in a sentence."""
        each = ", ".join(f"{number} {word}" for word, number in self.became.most_common())
        faults = "".join(f"\n  FAULT {number} × {name}" for name, number in self.faults.most_common())
        peak = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024
        total = sum(self.became.values())
        return f"{self.name}: {total} inputs ({each}); slowest {self.slowest_s:.2f} s, at most {peak:.0f} MB; {len(self.faults)} kinds of fault{faults}"
