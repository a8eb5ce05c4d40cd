"""What is kept between starts is whole, or it is worked out again."""

from __future__ import annotations

import sys
from collections.abc import Callable
from pathlib import Path

import pytest

from stepper.kept import keep, read_kept

VALUE = {"rows": [1, -2], ("a", 0): b"\0\n\xff", "none": None}


@pytest.fixture(autouse=True)
def beside(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Return a folder in the place of the one beside the compiled modules; the user's is another."""
    monkeypatch.setattr(sys, "pycache_prefix", str(tmp_path / "beside"))
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path / "hers"))
    return tmp_path / "beside"


def kept_files(folder: Path) -> list[Path]:
    """List what is kept below a folder."""
    return [path for path in folder.rglob("*") if path.is_file()]


def test_what_is_kept_is_found_again(beside: Path) -> None:
    """The last of two, and under its name alone; nothing else is left behind."""
    assert read_kept("a") is None
    keep("a", 1)
    keep("a", VALUE)
    assert read_kept("a") == VALUE
    assert read_kept("b") is None
    assert len(kept_files(beside)) == 1


@pytest.mark.parametrize(
    "spoilt",
    [
        lambda raw: b"",
        lambda raw: raw[:-1],
        lambda raw: raw[: len(raw) // 2],
        lambda raw: raw[:-4] + b"\0\0\0\0",
        lambda raw: raw.replace(b"rows", b"rowz"),
        lambda raw: raw.replace(sys.version.encode()[:5], b"3.0.0"),
        lambda raw: raw.partition(b"\n")[2],
    ],
)
def test_what_is_not_whole_or_of_another_python_was_never_kept(beside: Path, spoilt: Callable[[bytes], bytes]) -> None:
    """A disk that was full, or a power cut: a wrong table would read a line wrongly."""
    keep("a", VALUE)
    (path,) = kept_files(beside)
    path.write_bytes(spoilt(path.read_bytes()))
    assert read_kept("a") is None
    keep("a", VALUE)
    assert read_kept("a") == VALUE


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="names the user's folder as Linux does")
def test_where_the_program_may_not_write_the_users_folder_holds_it(beside: Path, tmp_path: Path) -> None:
    """The program may be installed for all users of a computer."""
    beside.write_text("a file in the folder's place")
    keep("a", VALUE)
    assert read_kept("a") == VALUE
    assert len(kept_files(tmp_path / "hers")) == 1


def test_where_nobody_may_write_nothing_is_kept(beside: Path, tmp_path: Path) -> None:
    """And nothing is said of it: the next start takes as long as this one."""
    beside.write_text("a file in the folder's place")
    (tmp_path / "hers").write_text("another")
    keep("a", VALUE)
    assert read_kept("a") is None
