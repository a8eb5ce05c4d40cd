from __future__ import annotations

import asyncio
import contextlib
import gc
import http.client
import socket
import threading
import time
from collections.abc import Iterator
from urllib.parse import urlencode, urlsplit

import aiohttp
import pytest

from stepper.lap.server import MOST_CONNECTIONS
from tests.lap.kit import LapSitting, device, shown
from tests.waiting import PATIENCE_S, least_of

HELD_S = 1.0
"""How long a guess is held while there is a flood. Unit: s."""


@pytest.fixture(scope="module")
def sitting() -> Iterator[LapSitting]:
    """A sitting with its page."""
    with LapSitting() as opened:
        yield opened


def ask(url: str, path: str | None = None, *, method: str = "GET", **headers: str) -> tuple[int, bytes, dict[str, str]]:
    """Ask for something below an address: what came, in which headers."""
    parts = urlsplit(url)
    assert parts.hostname is not None
    connection = http.client.HTTPConnection(parts.hostname, parts.port, timeout=PATIENCE_S)
    sent = {"Host": parts.netloc, **{key.replace("_", "-"): value for key, value in headers.items()}}
    connection.request(method, parts.path if path is None else path, headers=sent, body=b"x" if method == "POST" else None)
    answer = connection.getresponse()
    body, told = answer.read(), {key.lower(): value for key, value in answer.getheaders()}
    connection.close()
    return answer.status, body, told


def test_all_the_page_needs_is_served(sitting: LapSitting) -> None:
    """And of the right kind, since browsers are told not to guess."""
    kinds = {
        "": "text/html",
        "page.css": "text/css",
        "page.js": "text/javascript",
        "live.js": "text/javascript",
        "draw.js": "text/javascript",
        "garment.css": "text/css",
        "icon.svg": "image/svg+xml",
        "code.svg": "image/svg+xml",
        "yoke.json": "application/json",
        "where.json": "application/json",
    }
    for name, kind in kinds.items():
        status, body, headers = ask(sitting.url + name)
        assert (status, headers["content-type"].partition(";")[0]) == (200, kind), name
        assert body


def test_nothing_from_elsewhere_and_nothing_inline_may_run(sitting: LapSitting) -> None:
    """Source: Content Security Policy Level 3: what no directive allows, default-src 'none' refuses."""
    _, page, headers = ask(sitting.url)
    policy = dict(part.strip().split(" ", 1) for part in headers["content-security-policy"].split(";"))
    assert policy["default-src"] == "'none'"
    assert policy["script-src"] == policy["style-src"] == "'self'"
    assert policy["frame-ancestors"] == policy["form-action"] == policy["base-uri"] == "'none'"
    assert "unsafe" not in headers["content-security-policy"]
    assert headers["referrer-policy"] == "no-referrer"  # the secret is in the address
    assert headers["x-content-type-options"] == "nosniff"
    assert headers["cache-control"] == "no-store"
    text = page.decode()
    assert "style=" not in text
    assert "onclick" not in text
    assert "http:" not in text
    assert "https:" not in text
    assert text.count("<script") == text.count('<script type="module" src="page.js"></script>') == 1


def test_a_wrong_secret_learns_nothing(sitting: LapSitting) -> None:
    """One plain answer, whether the path is there, was there yesterday, or never was."""
    wrong = "A" * 22
    origin = sitting.url.split("/")[2]
    answers = [
        ask(sitting.url, path)
        for path in ("/", f"/{wrong}/", f"/{wrong}/page.js", f"/{wrong}/live", "/favicon.ico", f"/{wrong}/%00/../..")
    ]
    answers.append(ask(sitting.url, f"/{wrong}/live", Origin=f"http://{origin}", Connection="Upgrade", Upgrade="websocket"))
    answers.append(ask(sitting.url + "nothing.here"))
    answers.append(ask(sitting.url, method="POST"))
    assert {(status, body) for status, body, _ in answers} == {(404, b"Not found.\n")}
    assert len({tuple(sorted(set(headers) - {"date"})) for _, _, headers in answers[:6]}) == 1


def test_a_secret_is_new_each_sitting_and_gone_with_it() -> None:
    """A bookmark of yesterday opens nothing, even on the same port."""
    with LapSitting() as first:
        url = first.url
        assert ask(url)[0] == 200
    parts = urlsplit(url)
    with pytest.raises(ConnectionError):
        socket.create_connection((parts.hostname or "", parts.port or 0), timeout=PATIENCE_S)
    with LapSitting(port=parts.port or 0) as second:
        assert second.url.split("/")[2] == url.split("/")[2]
        assert second.url != url
        assert ask(url)[:2] == (404, b"Not found.\n")


@pytest.mark.parametrize("host", ["evil.example", "evil.example:{port}", "127.0.0.1.evil.example:{port}", "[::1]:{port}", ""])
def test_another_name_that_leads_here_is_refused(sitting: LapSitting, host: str) -> None:
    """A site that has its own name point here would otherwise read the page as its own (DNS rebinding)."""
    port = urlsplit(sitting.url).port
    assert ask(sitting.url, Host=host.format(port=port))[0] in (400, 404)
    assert ask(sitting.url, Host=f"localhost:{port}")[0] == 200


@pytest.mark.parametrize("origin", ["http://evil.example", "null", "https://127.0.0.1", None])
def test_another_site_cannot_touch_anything(sitting: LapSitting, origin: str | None) -> None:
    """Even one that had learnt the secret: the browser says where a page comes from."""

    async def scene() -> None:
        async with aiohttp.ClientSession() as session:
            headers = {} if origin is None else {"Origin": origin}
            with pytest.raises(aiohttp.WSServerHandshakeError) as refused:
                await session.ws_connect(f"{sitting.url}live?device=x", headers=headers)
            assert refused.value.status == 404

    asyncio.run(scene())
    if origin is not None:
        assert ask(sitting.url, method="POST", Origin=origin)[0] == 404
        assert ask(sitting.url, Origin=origin)[0] == 404


def test_a_flood_leaves_the_sitting_unhurt(monkeypatch: pytest.MonkeyPatch) -> None:
    """Hundreds of guesses at the secret, on as many connections as there may be: a device that is in goes on, and the
    conductor hardly notices.

    Guesses are held for longer than usual, so that a slow machine too has all its connections taken."""
    monkeypatch.setattr("stepper.lap.server.WRONG_S", HELD_S)

    async def guess(session: aiohttp.ClientSession, url: str, counted: list[int]) -> None:
        while True:
            try:
                async with session.get(url) as answer:
                    counted.append(answer.status)
            except aiohttp.ClientError:
                counted.append(0)
                await asyncio.sleep(0.01)

    async def scene(sitting: LapSitting) -> None:
        host = sitting.url.split("/")[2]
        async with shown(sitting.url) as tablet, aiohttp.ClientSession(connector=aiohttp.TCPConnector(limit=0)) as session:
            counted: list[int] = []
            opened = time.monotonic()
            flood = [asyncio.create_task(guess(session, f"http://{host}/{'B' * 22}/", counted)) for _ in range(100)]
            while not {0, 404} <= set(counted):  # some held as long as they are, more than there may be turned away
                assert time.monotonic() - opened < PATIENCE_S
                await asyncio.sleep(0.01)
            medians: list[float] = []
            while not medians or (medians[-1] >= 0.5 and len(medians) < 9):  # a machine that stalls only lengthens them
                waits = []
                for _ in range(5):
                    began = time.monotonic()
                    assert await tablet.touch("undo" if len(medians) % 2 else "next") == "taken"
                    waits.append(time.monotonic() - began)
                medians.append(sorted(waits)[2])
            for each in flood:
                each.cancel()
            await asyncio.gather(*flood, return_exceptions=True)
            assert set(counted) <= {0, 404}
            assert counted.count(404) <= MOST_CONNECTIONS * ((time.monotonic() - opened) // HELD_S + 1)
            assert medians[-1] < 0.5
            assert sitting.steps == 5 * ((len(medians) + 1) // 2)

    with LapSitting() as sitting:
        asyncio.run(scene(sitting))


def test_whoever_only_holds_a_connection_is_sent_away(sitting: LapSitting, monkeypatch: pytest.MonkeyPatch) -> None:
    """Connections that say nothing would otherwise keep her own devices out."""
    monkeypatch.setattr("stepper.lap.server.SHOW_SECRET_S", 0.2)
    parts = urlsplit(sitting.url)

    def held_s() -> float:
        with socket.create_connection((parts.hostname or "", parts.port or 0), timeout=PATIENCE_S) as held:
            held.sendall(b"GET /")
            began = time.monotonic()
            with contextlib.suppress(ConnectionResetError):
                assert held.recv(100) == b""
            return time.monotonic() - began

    assert least_of(held_s, 3) < 3


def test_a_device_that_does_not_read_holds_nobody_up(sitting: LapSitting) -> None:
    """A phone in a drawer with its connection open: the tablet is shown each step all the same."""

    async def scene() -> None:
        async with device(sitting.url, "drawer"), shown(sitting.url) as tablet:
            for _ in range(30):
                await tablet.touch("where")
            waits = []
            for _ in range(5):
                began = time.monotonic()
                await tablet.touch("next")
                waits.append(time.monotonic() - began)
            assert min(waits) < 2

    asyncio.run(scene())


@pytest.mark.parametrize(("leaves", "times"), [(False, 3), (True, 20)])
def test_devices_that_come_as_the_page_ends_leave_nothing_undone_and_nothing_on_the_terminal(
    leaves: bool, times: int, caplog: pytest.LogCaptureFixture
) -> None:
    """A phone that wakes at the last moment: a complaint about it would stand in the middle of her last words.

    Python complains of a task that was never finished when it is cleared away. Nor does she wait for those that sleep:
    the page's thread is over before it is no longer waited for.
    """
    for _ in range(times):
        before = set(threading.enumerate())
        with LapSitting() as sitting:
            parts = urlsplit(sitting.url)
            held = [socket.create_connection((parts.hostname or "", parts.port or 0)) for _ in range(6)]
            for number, each in enumerate(held):
                each.sendall(_opening(sitting.url, f"phone {number}"))
            for each in held if leaves else ():
                each.close()
            sitting.beside.__exit__(None, None, None)
            begun = set(threading.enumerate()) - before
            assert "page" not in [each.name for each in begun]
        for each in held:
            each.close()
    gc.collect()
    assert caplog.messages == []


def _opening(url: str, name: str) -> bytes:
    """Return what a page sends to open its connection. Source: RFC 6455, section 1.3, with its example of a key."""
    parts = urlsplit(url)
    asked = {
        "Host": parts.netloc,
        "Origin": f"http://{parts.netloc}",
        "Upgrade": "websocket",
        "Connection": "Upgrade",
        "Sec-WebSocket-Version": "13",
        "Sec-WebSocket-Key": "dGhlIHNhbXBsZSBub25jZQ==",
    }
    lines = [f"GET {parts.path}live?{urlencode({'device': name})} HTTP/1.1", *(f"{key}: {value}" for key, value in asked.items())]
    return "\r\n".join([*lines, "", ""]).encode()
