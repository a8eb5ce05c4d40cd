"""A small web server on this machine that can cut a connection and change its file."""

from __future__ import annotations

import hashlib
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer


class FileServer:
    """Serves one file under any name, and remembers what it was asked for."""

    def __init__(self) -> None:
        self.content = b""
        self.cut_after: int | None = None
        """Close the connection after so many bytes, once."""
        self.takes_ranges = True
        self.asked: list[str] = []
        """The range of each request; empty for the whole file."""
        self.address = ""

    @contextmanager
    def running(self) -> Iterator[FileServer]:
        """Serve while the block lasts."""
        outer = self

        class Handler(BaseHTTPRequestHandler):
            def do_GET(self) -> None:
                outer.answer(self)

            def log_message(self, format: str, *args: object) -> None:
                pass

        server = ThreadingHTTPServer(("127.0.0.1", 0), Handler)
        self.address = f"http://127.0.0.1:{server.server_port}"
        thread = threading.Thread(target=server.serve_forever, kwargs={"poll_interval": 0.02}, daemon=True)
        thread.start()
        try:
            yield self
        finally:
            server.shutdown()
            server.server_close()

    def answer(self, request: BaseHTTPRequestHandler) -> None:
        """Return the file, or the rest of it."""
        wanted = request.headers.get("Range", "")
        self.asked.append(wanted)
        if "missing" in request.path:
            request.send_error(404)
            return
        mark = f'"{hashlib.sha256(self.content).hexdigest()}"'
        goes_on = self.takes_ranges and wanted and request.headers.get("If-Range") == mark
        start = int(wanted.removeprefix("bytes=").rstrip("-")) if goes_on else 0
        body = self.content[start:]
        request.send_response(206 if goes_on else 200)
        request.send_header("Content-Length", str(len(body)))
        request.send_header("ETag", mark)
        request.end_headers()
        cut, self.cut_after = self.cut_after, None
        request.wfile.write(body if cut is None else body[:cut])
