"""A network between a page and its server that can be cut, or lose what comes back."""

from __future__ import annotations

import asyncio
from contextlib import suppress
from threading import Event, Thread
from typing import Self
from urllib.parse import urlsplit

from tests.waiting import PATIENCE_S


class Cable:
    """Passes connections on to the page at an address, until it is cut."""

    def __init__(self, url: str) -> None:
        """Get ready.

        Args:
            url: The page's own address.
        """
        self._parts = urlsplit(url)
        self._loop = asyncio.new_event_loop()
        self._ready, self._over = Event(), asyncio.Event()
        self._whole = True
        self._swallows = False
        self._writers: set[asyncio.StreamWriter] = set()
        self._port = 0
        self._thread = Thread(target=self._run, daemon=True)

    def __enter__(self) -> Self:
        self._thread.start()
        assert self._ready.wait(PATIENCE_S)
        return self

    def __exit__(self, *error: object) -> None:
        self._loop.call_soon_threadsafe(self._over.set)
        self._thread.join(PATIENCE_S)

    @property
    def url(self) -> str:
        """The page's address through this cable."""
        return f"http://{self._parts.hostname}:{self._port}{self._parts.path}"

    def cut(self) -> None:
        """Break every connection, and let no new one through until it is mended."""
        self._whole = False
        self._drop()

    def mend(self) -> None:
        """Let everything through again."""
        self._whole, self._swallows = True, False

    def swallow(self) -> None:
        """Let everything through to the server, and nothing back."""
        self._swallows = True

    def _drop(self) -> None:
        done = Event()

        def drop() -> None:
            for each in self._writers:
                each.transport.abort()
            self._writers.clear()
            done.set()

        self._loop.call_soon_threadsafe(drop)
        done.wait(PATIENCE_S)

    def _run(self) -> None:
        with asyncio.Runner(loop_factory=lambda: self._loop) as loop:
            loop.run(self._listen())

    async def _listen(self) -> None:
        wide = len(str(self._parts.port))
        while True:  # the names in the headers are rewritten, so that both ports need as many figures
            server = await asyncio.start_server(self._connect, self._parts.hostname, 0)
            self._port = server.sockets[0].getsockname()[1]
            if len(str(self._port)) == wide:
                break
            server.close()
        self._ready.set()
        await self._over.wait()
        server.close()
        for each in self._writers:
            each.transport.abort()
        await asyncio.gather(*asyncio.all_tasks() - {asyncio.current_task()}, return_exceptions=True)

    async def _connect(self, reader: asyncio.StreamReader, writer: asyncio.StreamWriter) -> None:
        if not self._whole:
            writer.transport.abort()
            return
        there, back = await asyncio.open_connection(self._parts.hostname, self._parts.port)
        self._writers |= {writer, back}
        mine, its = f":{self._port}".encode(), f":{self._parts.port}".encode()

        async def pass_on(source: asyncio.StreamReader, target: asyncio.StreamWriter, *, back: bool) -> None:
            with suppress(ConnectionError):
                while data := await source.read(65536):
                    if back and self._swallows:
                        continue
                    target.write(data if back else data.replace(mine, its))
                    await target.drain()
            target.transport.abort()

        await asyncio.gather(pass_on(reader, back, back=False), pass_on(there, writer, back=True))
        self._writers -= {writer, back}
