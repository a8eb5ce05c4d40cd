from __future__ import annotations

import pytest

from stepper.lap.door import Door, Patience, is_at_home, is_here, make_secret, name_hosts
from tests.tables import each_row

DOOR = Door(secret="s" * 22, hosts=name_hosts(("127.0.0.1", "192.168.1.20"), 8642))
ORIGIN = {"Host": "127.0.0.1:8642", "Origin": "http://127.0.0.1:8642"}


def test_a_secret_is_new_each_time_and_cannot_be_guessed() -> None:
    """128 bits in letters an address can hold. Source: RFC 4648, section 5: six bits a letter."""
    secrets = {make_secret() for _ in range(200)}
    assert len(secrets) == 200
    assert all(len(each) * 6 >= 128 and each.replace("-", "").replace("_", "").isalnum() for each in secrets)


def test_only_the_whole_secret_opens() -> None:
    """Neither a part of it nor something in another script."""
    assert DOOR.knows("s" * 22)
    assert not any(map(DOOR.knows, ("", "s" * 21, "s" * 23, "S" * 22, "ß" * 22, "\ud800")))


def test_a_page_of_ours_is_let_in() -> None:
    """By each of its names, from this computer and from home."""
    for host in ("127.0.0.1:8642", "localhost:8642", "192.168.1.20:8642"):
        headers = {"Host": host, "Origin": f"http://{host}"}
        assert DOOR.lets_in(headers, "192.168.1.31", live=True)
    assert DOOR.lets_in({"Host": "127.0.0.1:8642"}, "127.0.0.1", live=False)


@pytest.mark.parametrize(
    ("headers", "remote"),
    [
        ({"Host": "evil.example:8642"}, "127.0.0.1"),
        ({"Host": "127.0.0.1"}, "127.0.0.1"),
        ({}, "127.0.0.1"),
        ({**ORIGIN, "Origin": "http://evil.example"}, "127.0.0.1"),
        ({**ORIGIN, "Origin": "http://localhost:8642"}, "127.0.0.1"),
        ({**ORIGIN, "Origin": "null"}, "127.0.0.1"),
        (ORIGIN, "8.8.8.8"),
        (ORIGIN, None),
        (ORIGIN, "nowhere"),
    ],
)
def test_all_others_are_not(headers: dict[str, str], remote: str | None) -> None:
    """Another name, another site, another network."""
    assert not DOOR.lets_in(headers, remote, live=False)


def test_touches_come_from_a_page_alone() -> None:
    """A browser says where a page comes from when it opens such a connection."""
    assert not DOOR.lets_in({"Host": "127.0.0.1:8642"}, "127.0.0.1", live=True)


@each_row(
    ("address", "home", "here"),
    [
        ("127.0.0.1", True, True),
        ("::1", True, True),
        ("192.168.0.9", True, False),
        ("10.1.2.3", True, False),
        ("172.16.0.1", True, False),
        ("fe80::1%eth0", True, False),
        ("::ffff:192.168.0.9", True, False),
        ("172.32.0.1", False, False),
        ("0.0.0.0", False, False),
        ("::ffff:8.8.8.8", False, False),
        ("2001:4860:4860::8888", False, False),
        ("", False, False),
    ],
)
def test_what_is_home(address: str, home: bool, here: bool) -> None:
    """Source: RFC 1918 (10/8, 172.16/12, 192.168/16), RFC 3927 and RFC 4291 for link-local and loopback."""
    assert is_at_home(address) is home
    assert is_here(address) is here


def test_patience_fills_again_with_time() -> None:
    """Forty at once and twenty a second are more than a finger; a flood is not."""
    patience = Patience(3, 2.0)
    assert [patience.allows(0.0) for _ in range(5)] == [True, True, True, False, False]
    assert patience.allows(0.5)
    assert not patience.allows(0.6)
    assert [patience.allows(100.0) for _ in range(4)] == [True, True, True, False]
