"""The devices that have the page open: what is sent to them, and the touches that come from them.

One thread, the page's own, runs all of this. A device is answered about a touch only once it is worked off.
"""

from __future__ import annotations

import asyncio
import json
import time
from collections import deque
from collections.abc import Callable, Mapping
from contextlib import suppress
from dataclasses import asdict, field
from typing import Any, Final

from aiohttp import WSCloseCode, WSMsgType, web

from stepper.lap.content import describe_sight
from stepper.lap.door import HANDFUL, Patience
from stepper.lap.ledger import Ledger, Outcome
from stepper.lap.ports import Sight, Taker
from stepper.lap.questions import foresee_number
from stepper.lap.squares import LEAST_ROOM, MOST_ROOM
from stepper.lap.touches import LARGEST_NUMBER, LONGEST_DEVICE, Touch, parse_touch
from stepper.records import dataclass

BEAT_S: Final = 20.0
"""How often a device is asked whether it is still there. Unit: s."""
LARGEST_MESSAGE: Final = 16_384
"""Most bytes of a message: a note of the longest kind, in any script. Unit: bytes."""
SLOWEST_S: Final = 5.0
"""A device that takes longer to receive what is shown is let go; it comes back by itself. Unit: s."""
_BURST, _PER_S = 40, 20.0
# More than any finger; a knitter's touches never come near.
_LOOK_S: Final = 0.25
# How often to look whether a line is still being said, while one is.
_MOST_WAITING: Final = 64
# Answers that may wait for a device before it is let go.
_MOST_NAMES: Final = 8
# A page opened anew asks about the last touch under its former name.


@dataclass(eq=False, slots=True)
class _Device:
    """A page that is open somewhere."""

    name: str
    socket: web.WebSocketResponse
    here: bool
    """Whether it is on this computer."""
    room: int
    """For how many squares of the chart it has room. Unit: stitches."""
    patience: Patience = field(default_factory=lambda: Patience(_BURST, _PER_S))
    names: list[str] = field(default_factory=list)
    """The names its touches were made under, the latest last."""
    behind: bool = False
    """Whether there is something new to be shown."""
    answers: deque[str] = field(default_factory=deque)
    """What else is to be sent."""
    ready: asyncio.Event = field(default_factory=asyncio.Event)

    def show(self) -> None:
        """Have the latest sight sent; one that was not sent yet is of no use any more."""
        self.behind = True
        self.ready.set()

    def answer(self, message: Mapping[str, Any]) -> None:
        """Have a message sent, after what is to be shown."""
        self.answers.append(json.dumps(message))
        self.ready.set()


class Devices:
    """All pages that are open."""

    def __init__(self, taker: Taker, joined: Callable[[int], None] | None = None) -> None:
        """Begin without any.

        Args:
            taker: Who takes touches.
            joined: Called with the number of devices whenever one comes or goes.
        """
        self._taker, self._joined = taker, joined
        self._open: dict[str, _Device] = {}
        self._ledger = Ledger()
        self._sight: Sight | None = None
        self._drawn: dict[tuple[bool, int], str] = {}
        self._looking: asyncio.Task[None] | None = None
        self._over: str | None = None
        """What every page is told at the end, once it has come."""

    @property
    def sight(self) -> Sight | None:
        """What is shown now; None before the first."""
        return self._sight

    async def serve(self, request: web.Request, *, here: bool) -> web.WebSocketResponse:
        """Let a device in, and serve it until it leaves.

        Args:
            request: The one that opens the connection, already found to come from a page of ours.
            here: Whether it comes from this computer.
        """
        socket = web.WebSocketResponse(heartbeat=BEAT_S, max_msg_size=LARGEST_MESSAGE, compress=False)
        await socket.prepare(request)
        if self._over is not None:
            await _send_off(socket, self._over)
            return socket
        name = request.query.get("device", "")[:LONGEST_DEVICE]
        known = self._open.get(name)
        if not name or (known is None and len(self._open) >= HANDFUL):
            full = f"{HANDFUL} devices have this page open, which is all it takes."
            await _send(socket, json.dumps({"full": full}))
            await _let_go(socket, WSCloseCode.TRY_AGAIN_LATER)
            return socket
        device = self._open[name] = _Device(name, socket, here, _room_of(request.query.get("room", "")))
        self._count()
        if known is not None:  # it came back before its old connection was missed
            await _let_go(known.socket)
        writing = asyncio.create_task(self._write(device))
        try:
            if self._sight is not None:
                device.show()
            await self._read(device)
        finally:
            if self._open.get(name) is device:
                del self._open[name]
                self._count()
            writing.cancel()
            await asyncio.wait([writing])
        return socket

    def publish(self, sight: Sight) -> None:
        """Show something on every page."""
        self._sight = sight
        self._show()
        if self._taker.speaking and (self._looking is None or self._looking.done()):
            self._looking = asyncio.create_task(self._watch_voice())

    async def close(self, sentence: str) -> None:
        """Say why the page ends, and let every device go, with those that come from now on."""
        self._over = sentence
        if self._looking is not None:
            self._looking.cancel()
        # One that sleeps takes a second to be given up, and she waits for the end of her sitting.
        await asyncio.gather(*(self._see_off(device, sentence) for device in self._open.values()))

    async def _see_off(self, device: _Device, sentence: str) -> None:
        if device.behind:
            await _send(device.socket, self._draw(device))
        await _send_off(device.socket, sentence)

    def _count(self) -> None:
        if self._joined is not None:
            self._joined(len(self._open))

    # What is sent

    def _show(self) -> None:
        self._drawn.clear()
        for device in self._open.values():
            device.show()

    def _draw(self, device: _Device) -> str:
        """Describe what is shown now, once for all devices that are shown the same."""
        which = device.here, device.room
        if which not in self._drawn:
            assert self._sight is not None
            speaking = self._taker.speaking
            described = describe_sight(self._sight, here=device.here, room=device.room, speaking=speaking)
            self._drawn[which] = json.dumps({"sight": described})
        return self._drawn[which]

    async def _write(self, device: _Device) -> None:
        """Send what waits for a device, the sight first, and let it go if it does not take it."""
        takes = True
        while takes and len(device.answers) <= _MOST_WAITING:
            await device.ready.wait()
            device.ready.clear()
            if device.behind:
                device.behind = False
                takes = await _send(device.socket, self._draw(device))
            while takes and device.answers:
                takes = await _send(device.socket, device.answers.popleft())
        await _let_go(device.socket)

    async def _watch_voice(self) -> None:
        """While a line is being said, look now and then whether it is over."""
        while self._taker.speaking:
            await asyncio.sleep(_LOOK_S)
        self._show()

    # What comes

    async def _read(self, device: _Device) -> None:
        async for message in device.socket:
            if message.type is not WSMsgType.TEXT:
                break
            if not device.patience.allows(time.monotonic()):
                await device.socket.close(code=WSCloseCode.POLICY_VIOLATION, message=b"too many messages")
                break
            try:
                asked = json.loads(message.data)
            except (ValueError, RecursionError):
                asked = None
            if not isinstance(asked, dict):
                await device.socket.close(code=WSCloseCode.UNSUPPORTED_DATA)
                break
            self._answer(device, asked)

    def _answer(self, device: _Device, asked: Mapping[str, Any]) -> None:
        if "beat" in asked:
            device.answer({"beat": True})
        elif "room" in asked:
            device.room = _room_of(asked["room"])
            if self._sight is not None:
                device.show()
        elif "would" in asked:
            self._foresee(device, asked["would"])
        else:
            self._take(device, asked)

    def _foresee(self, device: _Device, number: object) -> None:
        """Say what a number would mean."""
        if self._sight is None or isinstance(number, bool) or not isinstance(number, int):
            return
        if 0 <= number <= LARGEST_NUMBER:
            meant = asdict(foresee_number(self._sight.session, number))
            device.answer({"would": {"number": number, **meant}})

    def _take(self, device: _Device, asked: Mapping[str, Any]) -> None:
        touch = parse_touch(asked)
        if touch is None:
            device.answer({"malformed": True})
            return
        device.names = [*(each for each in device.names if each != touch.device), touch.device][-_MOST_NAMES:]
        outcome = self._ledger.enter(touch)
        if outcome is Outcome.NEW:
            self._taker.take(touch, self._settling(touch))
        elif outcome is not Outcome.WAITING:  # it is answered when it is worked off
            self._report(touch, outcome)

    def _settling(self, touch: Touch) -> Callable[[bool], None]:
        """Return what is to be called, on any thread, once a touch is worked off or passed over."""
        loop = asyncio.get_running_loop()

        def settle(outcome: Outcome) -> None:
            self._ledger.settle(touch, outcome)
            self._report(touch, outcome)

        def done(taken: bool) -> None:
            with suppress(RuntimeError):  # the page has just been closed
                loop.call_soon_threadsafe(settle, Outcome.TAKEN if taken else Outcome.PASSED)

        return done

    def _report(self, touch: Touch, outcome: Outcome) -> None:
        """Tell a device what became of its touch."""
        for device in self._open.values():
            if touch.device in device.names:
                device.answer({"touch": touch.number, "device": touch.device, "outcome": outcome.value})


def _room_of(asked: object) -> int:
    """Return for how many squares a device has room, whatever it says."""
    try:
        room = int(asked) if isinstance(asked, int | str) else 0
    except ValueError:
        room = 0
    return max(LEAST_ROOM, min(room or LEAST_ROOM, MOST_ROOM))


async def _send(socket: web.WebSocketResponse, message: str) -> bool:
    """Send a message; False if the device is gone or does not take it."""
    try:
        # Not `wait_for`: cancelled in the moment in which what it waits for ends, it goes on as if not.
        async with asyncio.timeout(SLOWEST_S):
            await socket.send_str(message)
    except (ConnectionError, TimeoutError, RuntimeError):
        return False
    return True


async def _send_off(socket: web.WebSocketResponse, sentence: str) -> None:
    """Say why the page ends, and let a device go."""
    await _send(socket, json.dumps({"over": sentence}))
    await _let_go(socket)


async def _let_go(socket: web.WebSocketResponse, code: int = WSCloseCode.GOING_AWAY) -> None:
    with suppress(ConnectionError, TimeoutError, RuntimeError):
        async with asyncio.timeout(1.0):
            await socket.close(code=code)
