from __future__ import annotations

import hashlib
import random
import shutil
from collections.abc import Iterator
from pathlib import Path
from types import SimpleNamespace

import pytest

from stepper.ears import download
from stepper.ears.download import checksum, fetch, is_address, is_open, name_at
from stepper.errors import SurroundingsError
from tests.ears.server import FileServer

CONTENT = random.Random(1).randbytes(700_000)


@pytest.fixture
def server() -> Iterator[FileServer]:
    """A server with half a megabyte of noise."""
    serving = FileServer()
    serving.content = CONTENT
    with serving.running():
        yield serving


def test_a_file_is_fetched_whole(server: FileServer, tmp_path: Path) -> None:
    """Byte for byte, with progress to the end and nothing left beside it."""
    told: list[tuple[int, int]] = []
    fetch(f"{server.address}/a", tmp_path / "a", lambda *each: told.append(each))
    assert checksum(tmp_path / "a") == hashlib.sha256(CONTENT).hexdigest()
    assert told[-1] == (len(CONTENT), len(CONTENT))
    assert [each.name for each in tmp_path.iterdir()] == ["a"]


def test_a_cut_connection_is_said_and_the_next_try_goes_on_there(server: FileServer, tmp_path: Path) -> None:
    """Until it is whole there is no file of that name; what came in is not fetched again."""
    server.cut_after = 300_000
    with pytest.raises(SurroundingsError, match="What came in is kept"):
        fetch(f"{server.address}/a", tmp_path / "a")
    assert not (tmp_path / "a").exists()
    fetch(f"{server.address}/a", tmp_path / "a")
    assert (tmp_path / "a").read_bytes() == CONTENT
    assert server.asked[0] == ""
    assert 0 < int(server.asked[1].removeprefix("bytes=").rstrip("-")) <= 300_000


@pytest.mark.parametrize("takes_ranges", [True, False])
def test_another_file_at_the_address_is_fetched_anew(
    takes_ranges: bool, server: FileServer, tmp_path: Path
) -> None:
    """Two halves of different files never make one, nor does a server that cannot go on."""
    server.cut_after = 300_000
    with pytest.raises(SurroundingsError):
        fetch(f"{server.address}/a", tmp_path / "a")
    server.content, server.takes_ranges = CONTENT[::-1], takes_ranges
    fetch(f"{server.address}/a", tmp_path / "a")
    assert (tmp_path / "a").read_bytes() == CONTENT[::-1]


def test_what_cannot_be_had_is_told(server: FileServer, tmp_path: Path) -> None:
    """No such file, no such server."""
    with pytest.raises(SurroundingsError, match="404"):
        fetch(f"{server.address}/missing", tmp_path / "a")
    with pytest.raises(SurroundingsError, match="cannot be fetched"):
        fetch("http://127.0.0.1:9/a", tmp_path / "a")


def test_an_address_is_told_from_a_path() -> None:
    """A path on Windows has a letter and a colon too; other schemes are none of ours."""
    assert is_address("http://127.0.0.1/a.zip")
    assert is_address("HTTPS://a/b")
    assert not any(map(is_address, ("C:\\models\\a.zip", "models/a", "file:///etc/passwd", "ftp://a/b", "")))


def test_an_address_that_is_none_is_a_sentence(tmp_path: Path) -> None:
    """As are a bracket not closed and a port that is no number."""
    for address in ("http://[::1", "http://", "https://a:b/c.zip", "http:a"):
        assert is_address(address)
        with pytest.raises(SurroundingsError, match="is no address that can be fetched"):
            fetch(address, tmp_path / "a")
    assert name_at("https://a/b%20c.zip?d") == "b c.zip"
    assert is_open("HTTP://a")
    assert not is_open("https://a")


def test_what_is_larger_than_any_model_is_not_fetched(
    server: FileServer, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Neither where the server says so, nor where it keeps sending; and nothing of it is left on the disk."""
    server.content = bytes(5000)
    monkeypatch.setattr(download, "MOST_BYTES", 4999)
    with pytest.raises(SurroundingsError, match="more than 4,999 bytes"):
        fetch(f"{server.address}/a", tmp_path / "a")
    assert list(tmp_path.iterdir()) == []


def test_what_the_disk_has_no_room_for_is_not_fetched(
    server: FileServer, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The journal is on the same disk, and needs room tonight."""
    server.content = bytes(5000)
    monkeypatch.setattr(shutil, "disk_usage", lambda path: SimpleNamespace(free=4999))
    with pytest.raises(SurroundingsError, match="room for 4,999"):
        fetch(f"{server.address}/a", tmp_path / "a")
