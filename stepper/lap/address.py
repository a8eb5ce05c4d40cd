"""Where the page is to be reached: sockets on this computer and, if asked for, on the home network."""

from __future__ import annotations

import os
import socket
import sys
import webbrowser
from collections.abc import Mapping, Sequence
from typing import Final

from stepper.errors import SurroundingsError
from stepper.lap.door import is_at_home, is_here
from stepper.records import dataclass

USUAL_PORT: Final = 8642
"""The port that is tried first, so that a firewall needs one rule. Source: chosen here; unassigned at IANA,
from memory."""
HERE: Final = "127.0.0.1"
_SOMEWHERE: Final = "192.0.2.1"
# Kept for documentation by RFC 5737: nothing is sent there, the system only names the way it would take.


@dataclass(frozen=True, slots=True, kw_only=True)
class Address:
    """Where the page is."""

    sockets: tuple[socket.socket, ...]
    """Bound, not yet listening."""
    names: tuple[str, ...]
    """The addresses it is reached at: this computer's own, then that of the home network if it is shared."""
    port: int

    def url(self, secret: str, *, shared: bool = False) -> str:
        """Return the page's address with the secret of the sitting."""
        return f"http://{self.names[-1] if shared else self.names[0]}:{self.port}/{secret}/"


def open_address(port: int | None, *, share: bool) -> Address:
    """Bind the page's sockets.

    Args:
        port: The port that was asked for; the usual one if None, or any that is free if that is taken.
        share: Whether the home network is let in.

    Raises:
        SurroundingsError: The port is taken, or there is no home network to share the page with.
    """
    names = (HERE, find_home_address()) if share else (HERE,)
    if port is not None:
        return _bound(names, port)
    try:
        return _bound(names, USUAL_PORT)
    except SurroundingsError:
        return _bound(names, 0)


def find_home_address() -> str:
    """Return this computer's address in the home network.

    Raises:
        SurroundingsError: It is in none.
    """
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as tried:
        try:
            tried.connect((_SOMEWHERE, 9))
            found = str(tried.getsockname()[0])
        except OSError:
            found = ""
    if not found or is_here(found):
        raise SurroundingsError(
            "This computer is in no network, so there is nobody to share the page with; leave out --share."
        )
    if not is_at_home(found):
        raise SurroundingsError(
            f"This computer's address, {found}, is no address of a home network; the page is not shared with "
            "the whole Internet. Leave out --share."
        )
    return found


def _bound(names: Sequence[str], port: int) -> Address:
    sockets: list[socket.socket] = []
    try:
        for name in names:
            sockets.append(_bind(name, port))
            port = sockets[0].getsockname()[1]
    except OSError as error:
        for each in sockets:
            each.close()
        why = "is taken by another program" if port >= 1024 else f"cannot be used: {error.strerror}"
        raise SurroundingsError(f"Port {port} {why}; name another with --port.") from error
    return Address(sockets=tuple(sockets), names=tuple(names), port=port)


def _bind(name: str, port: int) -> socket.socket:
    made = socket.socket(socket.AF_INET, socket.SOCK_STREAM)
    try:
        if sys.platform != "win32":  # there it would let two programs have one port
            made.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        made.bind((name, port))
    except OSError:
        made.close()
        raise
    return made


def open_browser(url: str, environment: Mapping[str, str] = os.environ) -> bool:
    """Open the page in the browser of this computer.

    Returns:
        False if there is none that has a window of its own: one that draws in the terminal would take the
        place of the knitting.
    """
    windows = environment.get("DISPLAY") or environment.get("WAYLAND_DISPLAY")
    if sys.platform not in ("win32", "darwin") and not windows:
        return False
    try:
        browser = webbrowser.get()
        return type(browser) is not webbrowser.GenericBrowser and browser.open(url)
    except (webbrowser.Error, OSError):
        return False
