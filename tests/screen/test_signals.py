from __future__ import annotations

import asyncio
import os
import signal

import pytest

from stepper.mouth.fakes import RecordingSpeaker
from stepper.screen.signals import mind_signals


class Program:
    """Stands for the program that draws: remembers what it was asked to do."""

    is_done = False
    is_running = True

    def __init__(self) -> None:
        self.ended: list[object] = []

    def exit(self, exception: object = None) -> None:
        """Remember the end."""
        self.ended.append(exception)


@pytest.mark.skipif(os.name != "posix", reason="there are no such signals")
def test_told_to_end_it_ends_and_the_old_handlers_come_back() -> None:
    """SIGTERM leaves the terminal as it was instead of in pieces. Stopping is tried on a real terminal, in
    tests/commands/test_showing.py."""
    program = Program()
    before = [signal.getsignal(number) for number in (signal.SIGTERM, signal.SIGTSTP, signal.SIGCONT)]

    async def told() -> None:
        undo = mind_signals(asyncio.get_running_loop(), program, RecordingSpeaker())  # type: ignore[arg-type]
        os.kill(os.getpid(), signal.SIGTERM)
        while not program.ended:
            await asyncio.sleep(0.005)
        undo()

    asyncio.run(told())

    assert [type(each) for each in program.ended] == [KeyboardInterrupt]
    after = [signal.getsignal(number) for number in (signal.SIGTERM, signal.SIGTSTP, signal.SIGCONT)]
    assert after == before
