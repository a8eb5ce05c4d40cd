"""A sitting with its page in one process: a real conductor on its thread, the real server, devices that talk to it."""

from __future__ import annotations

import asyncio
import json
import time
from collections.abc import AsyncIterator, Callable, Iterator
from contextlib import AbstractContextManager, asynccontextmanager, nullcontext
from threading import Thread
from types import TracebackType
from typing import Any

import aiohttp

from stepper.lap.address import open_address
from stepper.plan.model import Plan
from stepper.session.cues import Cue, Enough
from stepper.session.events import Event
from stepper.session.machine import Session
from stepper.session.state import State
from stepper.sitting.conductor import Conductor
from stepper.sitting.front_end import SittingView
from stepper.sitting.page_beside import PageBeside
from stepper.sitting.ports import ConductorPorts
from tests.screen.scenes import AT, garment, yarns
from tests.waiting import PATIENCE_S, wait_until


class Quiet:
    """A terminal that shows nothing and writes down what it is told."""

    listens_by_itself = False
    turn = None

    def __init__(self) -> None:
        self.lines: list[str] = []
        self.heard: list[str] = []
        self.reports: list[str] = []
        self.woken = 0
        self.conductor: Conductor | None = None

    def open(self, view: SittingView) -> None:
        """Remember the conductor."""
        self.conductor = view.conductor

    def show(self, line: str) -> None:
        """Write it down."""
        self.lines.append(line)

    def schedule(self, seconds: float, cue: Cue) -> None:
        """Let it be."""

    def hear(self, text: str, score: float = 1.0) -> None:
        """Hand it over."""
        assert self.conductor is not None
        self.heard.append(text)
        self.conductor.offer_words(text, heard=True, score=score)

    def wake(self) -> None:
        """Count it; the conductor waits by itself."""
        self.woken += 1

    def report_ears(self, is_open: bool, sentence: str) -> None:
        """Write it down."""
        self.reports.append(sentence)

    def report_voice(self, sentence: str) -> None:
        """Write it down."""
        self.reports.append(sentence)

    def guard_terminal(self) -> AbstractContextManager[None]:
        """Do nothing."""
        return nullcontext()

    def run(self, recording: Iterator[str] | None) -> None:
        """Work off cues until the sitting is over."""
        assert self.conductor is not None
        self.conductor.run()

    def close(self) -> None:
        """Do nothing."""


class LapSitting:
    """A sitting with a page, from `with` to its end."""

    def __init__(self, plan: Plan | None = None, *, keep_s: float = 0.0, port: int = 0) -> None:
        """Get ready.

        Args:
            plan: What is knitted; the garment of the screen's tests if None.
            keep_s: How long the disk takes for an event. Unit: s.
            port: Where; any that is free if 0.
        """
        self.events: list[Event] = []
        self.kept_at: list[float] = []
        self.keep_s = keep_s
        self.terminal = Quiet()
        self.beside = PageBeside(self.terminal, yarns(), open_address(port, share=False))
        ports = ConductorPorts(
            keep=self._keep, show=self.beside.show, clock=lambda: AT, turn=self.beside.turn, film=lambda on: None
        )
        self.conductor = Conductor(Session(plan or garment()), ports)
        self._thread = Thread(target=self._run, name="conductor", daemon=True)

    @property
    def url(self) -> str:
        """The page's address."""
        return self.beside.url

    @property
    def state(self) -> State:
        """Where it stands."""
        return self.conductor.session.state

    def _keep(self, events: tuple[Event, ...], state: State) -> None:
        time.sleep(self.keep_s)
        self.events += events
        self.kept_at.append(time.monotonic())

    def __enter__(self) -> LapSitting:
        self.beside.__enter__()
        self.beside.open(
            SittingView(
                title="Ridgeway yoke",
                conductor=self.conductor,
                history=tuple,
                whole_history=tuple,
                speaker=None,
                why_no_voice="closed by --mute",
                why_no_ears="closed by --deaf",
            )
        )
        self.conductor.begin("f")
        self._thread.start()
        return self

    def _run(self) -> None:
        self.beside.run(None)

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        if not self.conductor.closed:
            self.conductor.offer(Enough())
        self._thread.join(PATIENCE_S)
        self.beside.__exit__(None, None, None)

    def say(self, *words: str) -> None:
        """Have words worked off, as if typed at the terminal."""
        for each in words:
            before = len(self.terminal.lines)
            self.conductor.offer_words(each)
            self.wait(lambda before=before: len(self.terminal.lines) > before)

    @staticmethod
    def wait(until: Any) -> None:
        """Wait until something is so."""
        wait_until(until)

    @property
    def steps(self) -> int:
        """How many steps were finished."""
        return sum(type(each).__name__ == "Advanced" for each in self.events)


class Device:
    """A page's end of the connection, without a browser."""

    def __init__(self, socket: aiohttp.ClientWebSocketResponse, name: str) -> None:
        self.socket, self.name, self.number = socket, name, 0
        self.sight: dict[str, Any] = {}

    async def hear(self, key: str) -> dict[str, Any]:
        """Wait for a message of a kind, and remember what is shown meanwhile."""
        while True:
            message = json.loads((await asyncio.wait_for(self.socket.receive(), PATIENCE_S)).data)
            self.sight = message.get("sight", self.sight)
            if key in message:
                return message

    async def see(self, holds: Callable[[dict[str, Any]], bool]) -> None:
        """Wait until what is shown is so; a slow machine may show more than one thing before."""
        while not holds(self.sight):
            await self.hear("sight")

    async def send(self, **message: Any) -> None:
        """Send a message as it is."""
        await self.socket.send_str(json.dumps(message))

    async def touch(self, ask: str, **more: Any) -> str:
        """Touch something, and return what became of it."""
        self.number += 1
        await self.send(**self.made(ask, **more))
        return str((await self.hear("touch"))["outcome"])

    def made(self, ask: str, **more: Any) -> dict[str, Any]:
        """Make a touch."""
        own = {"device": self.name, "number": self.number, "ask": ask}
        return {**own, "seen": self.sight.get("seq", 0), "place": self.sight.get("place", [0, 0]), **more}


@asynccontextmanager
async def device(url: str, name: str = "tablet", **headers: str) -> AsyncIterator[Device]:
    """Open the page's connection, as a page of ours would."""
    origin = "/".join(url.split("/")[:3])
    async with (
        aiohttp.ClientSession() as session,
        session.ws_connect(f"{url}live?device={name}&room=40", headers={"Origin": origin, **headers}) as socket,
    ):
        yield Device(socket, name)


@asynccontextmanager
async def shown(url: str, name: str = "tablet") -> AsyncIterator[Device]:
    """Open the connection and wait until something is shown."""
    async with device(url, name) as opened:
        await opened.hear("sight")
        yield opened
