from __future__ import annotations

import socket
import webbrowser
from typing import Any

import pytest

from stepper.errors import SurroundingsError
from stepper.lap import address as module
from stepper.lap.address import HERE, USUAL_PORT, find_home_address, open_address, open_browser


class Way:
    """A socket that takes a way nobody has to go."""

    def __init__(self, own: str | None) -> None:
        self.own = own

    def __enter__(self) -> Way:
        return self

    def __exit__(self, *error: object) -> None:
        pass

    def connect(self, target: tuple[str, int]) -> None:
        """Find no network, or one."""
        if self.own is None:
            raise OSError(101, "Network is unreachable")

    def getsockname(self) -> tuple[str, int]:
        """Say by which address it would go."""
        return self.own or "", 1


def at(monkeypatch: pytest.MonkeyPatch, own: str | None) -> None:
    """Be in a network with an address of one's own, or in none."""
    real = socket.socket

    def make(family: int, kind: int, *more: Any) -> Any:
        return Way(own) if kind == socket.SOCK_DGRAM else real(family, kind, *more)

    monkeypatch.setattr(module.socket, "socket", make)


def test_a_page_that_is_not_shared_is_on_this_computer_alone() -> None:
    """No other computer can even knock. Source: RFC 1122, 3.2.1.3: 127.0.0.0/8 never leaves the host."""
    found = open_address(0, share=False)
    try:
        assert [each.getsockname()[0] for each in found.sockets] == [HERE]
        assert found.url("secret") == found.url("secret", shared=True) == f"http://127.0.0.1:{found.port}/secret/"
    finally:
        for each in found.sockets:
            each.close()


def test_a_port_that_is_taken_is_told_if_it_was_asked_for_and_passed_by_if_not() -> None:
    """She asked for this one for a reason, such as a firewall; nobody asked for the usual one."""
    held = open_address(0, share=False)
    held.sockets[0].listen()
    try:
        with pytest.raises(SurroundingsError, match=f"Port {held.port} is taken by another program; name another with --port."):
            open_address(held.port, share=False)
    finally:
        held.sockets[0].close()
    first = open_address(None, share=False)
    first.sockets[0].listen()
    second = open_address(None, share=False)
    assert second.port != first.port
    for each in (*first.sockets, *second.sockets):
        each.close()
    assert first.port == USUAL_PORT or second.port != USUAL_PORT


def test_a_shared_page_is_at_home_and_here_on_one_port(monkeypatch: pytest.MonkeyPatch) -> None:
    """The address for the phone is that of the home network; it is bound to that and not to every network."""
    at(monkeypatch, "127.0.0.2")
    monkeypatch.setattr(module, "is_here", lambda remote: remote == HERE)
    found = open_address(0, share=True)
    try:
        assert [each.getsockname() for each in found.sockets] == [(HERE, found.port), ("127.0.0.2", found.port)]
        assert found.url("secret", shared=True).startswith("http://127.0.0.2:")
    finally:
        for each in found.sockets:
            each.close()


@pytest.mark.parametrize("own", [None, "127.0.0.1", ""])
def test_without_a_network_there_is_nobody_to_share_with(monkeypatch: pytest.MonkeyPatch, own: str | None) -> None:
    """On a train it is told, and what to leave out."""
    at(monkeypatch, own)
    with pytest.raises(SurroundingsError, match=r"This computer is in no network.*leave out --share"):
        find_home_address()


def test_a_page_is_never_shared_with_the_whole_internet(monkeypatch: pytest.MonkeyPatch) -> None:
    """A computer that has a public address itself has no home network around it."""
    at(monkeypatch, "8.8.8.8")
    with pytest.raises(SurroundingsError, match="no address of a home network"):
        find_home_address()
    at(monkeypatch, "192.168.1.20")
    assert find_home_address() == "192.168.1.20"


def test_a_browser_that_draws_in_the_terminal_is_not_opened(monkeypatch: pytest.MonkeyPatch) -> None:
    """It would take the place of the knitting."""
    opened: list[str] = []

    class Window(webbrowser.BackgroundBrowser):
        def open(self, url: str, new: int = 0, autoraise: bool = True) -> bool:
            """Remember it."""
            opened.append(url)
            return True

    monkeypatch.setattr(module.sys, "platform", "linux")
    monkeypatch.setattr(webbrowser, "get", lambda: Window("window"))
    assert not open_browser("http://a/", {})
    assert open_browser("http://a/", {"DISPLAY": ":0"})
    assert opened == ["http://a/"]
    monkeypatch.setattr(webbrowser, "get", lambda: webbrowser.GenericBrowser("lynx"))
    assert not open_browser("http://a/", {"WAYLAND_DISPLAY": "wayland-0"})

    def none() -> None:
        raise webbrowser.Error("none")

    monkeypatch.setattr(webbrowser, "get", none)
    assert not open_browser("http://a/", {"DISPLAY": ":0"})
