"""Who is let in: the secret of the sitting, the names the page goes by, how often one may knock. No I/O."""

from __future__ import annotations

import hmac
import secrets
from collections.abc import Iterable, Mapping
from ipaddress import IPv6Address, ip_address
from typing import Final

from stepper.records import dataclass

HANDFUL: Final = 5
"""Most devices at once."""
_SECRET_BYTES: Final = 16


def make_secret() -> str:
    """Make the secret of a sitting. Returns: 22 letters that an address can hold, 128 bits at random."""
    return secrets.token_urlsafe(_SECRET_BYTES)


@dataclass(frozen=True, slots=True, kw_only=True)
class Door:
    """What is asked of whoever wants to see the page."""

    secret: str
    hosts: frozenset[str]
    """The names with port by which the page may be called. Any other name that leads here was made to lead
    here by somebody else (DNS rebinding)."""

    def knows(self, secret: str) -> bool:
        """Return whether a secret is that of this sitting; how long that takes tells nothing about it."""
        return hmac.compare_digest(secret.encode("utf-8", "replace"), self.secret.encode())

    def lets_in(self, headers: Mapping[str, str], remote: str | None, *, live: bool) -> bool:
        """Return whether a request comes from a page of ours, or from nobody's page.

        Args:
            headers: Those of the request, by their names in any case.
            remote: The address it comes from.
            live: Whether it opens the connection for touches, which only a page of ours does.
        """
        host, origin = headers.get("Host", ""), headers.get("Origin")
        if host not in self.hosts or not is_at_home(remote):
            return False
        return origin == f"http://{host}" or (origin is None and not live)


def is_at_home(remote: str | None) -> bool:
    """Return whether an address is this computer's or one of a home network."""
    try:
        address = ip_address((remote or "").partition("%")[0])
    except ValueError:
        return False
    if isinstance(address, IPv6Address) and address.ipv4_mapped is not None:
        address = address.ipv4_mapped
    return address.is_loopback or address.is_link_local or (address.is_private and not address.is_unspecified)


def is_here(remote: str | None) -> bool:
    """Return whether an address is this computer's own loopback."""
    try:
        return ip_address((remote or "").partition("%")[0]).is_loopback
    except ValueError:
        return False


def name_hosts(addresses: Iterable[str], port: int) -> frozenset[str]:
    """Return the names by which a page at some addresses is called."""
    return frozenset(f"{name}:{port}" for name in (*addresses, "localhost"))


class Patience:
    """How many messages one device may send: a store that fills again with time."""

    def __init__(self, most: int, per_s: float) -> None:
        """Begin with a full store.

        Args:
            most: Messages that may come at once.
            per_s: Messages that may come each second in the long run.
        """
        self._most, self._per_s = float(most), per_s
        self._left, self._at_s = float(most), 0.0

    def allows(self, at_s: float) -> bool:
        """Take one message from the store; False if it is empty.

        Args:
            at_s: When. Unit: s, on any clock that only goes forward.
        """
        self._left = min(self._most, self._left + max(0.0, at_s - self._at_s) * self._per_s)
        self._at_s = at_s
        if self._left < 1:
            return False
        self._left -= 1
        return True
