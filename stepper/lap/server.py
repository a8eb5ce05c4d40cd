"""The server of the page: a small one on a thread of its own, for a handful of devices at home.

Whoever lacks the secret gets the same plain answer whatever he asks, after a while; connections that never
show it are closed. So a flood costs a bounded share of one thread, and the sitting goes on.
"""

from __future__ import annotations

import asyncio
import json
from collections.abc import Awaitable, Callable
from importlib.resources import files
from threading import Event, Thread
from typing import Final

from aiohttp import web

from stepper.lap.address import Address
from stepper.lap.code import draw_svg
from stepper.lap.devices import Devices
from stepper.lap.door import Door, is_here
from stepper.lap.palette import draw_icon, write_garment_css
from stepper.lap.ports import Sight, Taker
from stepper.lap.squares import describe_yoke

MOST_CONNECTIONS: Final = 64
"""Connections at once, whoever they are from."""
SHOW_SECRET_S: Final = 5.0
"""Time in which a new connection has to show the secret. Unit: s."""
WRONG_S: Final = 0.25
"""How long an answer to a wrong secret takes. With the limit of connections, it bounds how many are tried:
256 a second, for 128 bits. Unit: s."""
_START_S: Final = 10.0
_TYPES: Final = {"html": "text/html", "css": "text/css", "js": "text/javascript"}
_Handler = Callable[[web.Request], Awaitable[web.StreamResponse]]


class PageServer:
    """Serves the page of one sitting from its own thread, until it is closed."""

    def __init__(
        self, address: Address, door: Door, taker: Taker, joined: Callable[[int], None] | None = None
    ) -> None:
        """Get ready; nothing is served before `start`.

        Args:
            address: Where, with its sockets bound.
            door: Who is let in.
            taker: Who takes touches.
            joined: Called with the number of devices whenever one comes or goes.
        """
        self._address, self._door = address, door
        self._devices = Devices(taker, joined)
        self._loop = asyncio.new_event_loop()
        self._over: asyncio.Future[str] = self._loop.create_future()
        self._started = Event()
        self._thread = Thread(target=self._run, name="page", daemon=True)
        self._shown: set[object] = set()
        # The connections that have shown the secret.

    def start(self) -> None:
        """Begin to serve; return once it can be reached."""
        self._thread.start()
        self._started.wait(_START_S)

    def publish(self, sight: Sight) -> None:
        """Show something on every page; called on any thread."""
        if not self._loop.is_closed():
            self._loop.call_soon_threadsafe(self._devices.publish, sight)

    def close(self, sentence: str) -> None:
        """Say on every page why it ends, and stop serving. Called on any thread but its own; again, it does
        nothing."""
        if self._thread.is_alive():
            self._loop.call_soon_threadsafe(self._end, sentence)
            self._thread.join(_START_S)

    # The page's thread

    def _end(self, sentence: str) -> None:
        if not self._over.done():
            self._over.set_result(sentence)

    def _run(self) -> None:
        try:  # what is still under way at the end is stopped and waited for, and the loop is closed
            with asyncio.Runner(loop_factory=lambda: self._loop) as loop:
                loop.run(self._serve())
        finally:
            self._started.set()

    async def _serve(self) -> None:
        application = web.Application(middlewares=[self._guard])
        application.router.add_get("/{secret}/live", self._live)
        application.router.add_get("/{secret}/{file:[a-z.]*}", self._file)
        runner = web.AppRunner(
            application, access_log=None, handle_signals=False, keepalive_timeout=30.0, lingering_time=0.0
        )
        await runner.setup()
        assert runner.server is not None
        server = runner.server

        def connect() -> asyncio.Protocol:
            if len(server.connections) >= MOST_CONNECTIONS:
                return _Refused()
            connection = server()
            self._loop.call_later(SHOW_SECRET_S, self._hurry, connection, server)
            return connection

        listening = [await self._loop.create_server(connect, sock=each) for each in self._address.sockets]
        self._started.set()
        try:
            sentence = await self._over
            for each in listening:
                each.close()
            await self._devices.close(sentence)
        finally:
            await runner.cleanup()

    def _hurry(self, connection: web.RequestHandler, server: web.Server) -> None:
        """Close a connection that has not shown the secret."""
        self._shown.intersection_update(server.connections)
        if connection not in self._shown and connection.transport is not None:
            connection.transport.abort()

    @web.middleware
    async def _guard(self, request: web.Request, handler: _Handler) -> web.StreamResponse:
        """Let in whoever has the secret; nobody else learns that there is anything."""
        live = request.path.endswith("/live")
        secret = request.match_info.get("secret", "")
        if not (self._door.lets_in(request.headers, request.remote, live=live) and self._door.knows(secret)):
            await asyncio.sleep(WRONG_S)
            return _nothing()
        self._shown.add(request.protocol)
        try:
            response = await handler(request)
        except web.HTTPException:
            return _nothing()
        if not response.prepared:
            response.headers.update(_headers(request.host))
        return response

    async def _live(self, request: web.Request) -> web.StreamResponse:
        try:
            return await self._devices.serve(request, here=is_here(request.remote))
        except ConnectionError:  # it left as it came, which is nobody's business on the terminal
            return _nothing()

    async def _file(self, request: web.Request) -> web.StreamResponse:
        name = request.match_info["file"]
        sight = self._devices.sight
        match name:
            case "" | "page.css" | "page.js" | "live.js" | "draw.js":
                kind = _TYPES[(name or "page.html").rpartition(".")[2]]
                return web.Response(body=_read(name or "page.html"), content_type=kind, charset="utf-8")
            case "code.svg":
                url = self._address.url(self._door.secret, shared=True)
                return web.Response(body=draw_svg(url), content_type="image/svg+xml")
            case "garment.css" if sight is not None:
                return web.Response(text=write_garment_css(sight.scene.yarns), content_type="text/css")
            case "icon.svg" if sight is not None:
                return web.Response(text=draw_icon(sight.scene.yarns), content_type="image/svg+xml")
            case "yoke.json" if sight is not None:
                yoke = describe_yoke(sight.scene.course, sight.scene.yarns)
                return web.Response(text=json.dumps(yoke), content_type="application/json")
            case "where.json":
                shared = len(self._address.names) > 1
                url = self._address.url(self._door.secret, shared=True) if shared else ""
                return web.Response(text=json.dumps({"url": url}), content_type="application/json")
        return _nothing()


class _Refused(asyncio.Protocol):
    """A connection more than there may be."""

    def connection_made(self, transport: asyncio.BaseTransport) -> None:
        """Close it."""
        assert isinstance(transport, asyncio.Transport)
        transport.abort()


def _read(name: str) -> bytes:
    return (files("stepper.lap") / name).read_bytes()


def _nothing() -> web.Response:
    """Answer that there is nothing, in the same words to everybody."""
    response = web.Response(status=404, text="Not found.\n", headers={"Cache-Control": "no-store"})
    response.force_close()
    return response


def _headers(host: str) -> dict[str, str]:
    """Return the headers of all that is served: nothing from elsewhere, nothing inline, nothing kept."""
    policy = (
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; "
        # Some browsers do not take 'self' to mean the same place by another scheme.
        f"connect-src 'self' ws://{host}; base-uri 'none'; form-action 'none'; frame-ancestors 'none'"
    )
    return {
        "Content-Security-Policy": policy,
        "Cross-Origin-Opener-Policy": "same-origin",
        "Cross-Origin-Resource-Policy": "same-origin",
        "Referrer-Policy": "no-referrer",
        "X-Content-Type-Options": "nosniff",
        "Cache-Control": "no-store",
    }
