"""Say what the program is at while she waits for more than a second.

Said on standard error and only to a terminal: what is written into a file or a pipe holds answers alone.
"""

from __future__ import annotations

import sys
from collections.abc import Iterator
from contextlib import contextmanager
from threading import Event, Thread
from time import monotonic

from stepper.screen.drawing.unprintable import blank_unprintable
from stepper.sitting.folding import Output, terminal_columns, write_painted

SILENT_S = 1.0
"""How long nothing is said: after a second the flow of thought breaks (Nielsen, "Usability Engineering",
1993, chapter 5; from memory). Unit: seconds."""


@contextmanager
def patience(
    what: str, stream: Output | None = None, *, silent_s: float = SILENT_S, lasting: bool = False
) -> Iterator[None]:
    """Say what is being done, with the seconds it has taken, for as long as it takes.

    Args:
        what: What is done, without a full stop: "Working out every round".
        stream: Where to say it; standard error if None.
        silent_s: Time after which it is said. Unit: seconds.
        lasting: Whether it is one line that stays, for readers that cannot follow a line that changes;
            otherwise it is wiped out at the end.
    """
    stream = stream if stream is not None else sys.stderr
    columns = terminal_columns(stream)
    if columns is None:
        yield
        return
    done = Event()
    teller = Thread(
        target=_tell, args=(what, stream, done, silent_s, lasting, columns), name="patience", daemon=True
    )
    teller.start()
    try:
        yield
    finally:
        done.set()
        teller.join()


def _tell(what: str, stream: Output, done: Event, silent_s: float, lasting: bool, columns: int) -> None:
    began = monotonic()
    if done.wait(silent_s):
        return
    if lasting:
        stream.write(f"{what}; this takes a moment.\n")
        stream.flush()
        return
    shown = ""
    while True:
        line = blank_unprintable(f"{what} … {monotonic() - began:.0f} s")[: columns - 1]
        write_painted("\r" + line.ljust(len(shown)), stream)
        stream.flush()
        shown = line
        if done.wait(1.0):
            break
    write_painted("\r" + " " * len(shown) + "\r", stream)
    stream.flush()
