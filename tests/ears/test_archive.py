from __future__ import annotations

import random
import stat
import sys
import zipfile
from pathlib import Path

import pytest

from stepper.ears.archive import MOST_FILES, unpack
from stepper.errors import SurroundingsError
from tests.fuzz.limits import memory_bounded_to


def archive(path: Path, **files: bytes) -> Path:
    """Make an archive of a few files; two underscores in a name stand for a slash."""
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as made:
        for name, content in files.items():
            made.writestr(name.replace("__", "/"), content)
    return path


def test_what_was_packed_is_unpacked(tmp_path: Path) -> None:
    """Folders and all, with the progress told up to the last byte."""
    told: list[tuple[int, int]] = []
    unpack(
        archive(tmp_path / "a.zip", am__final=b"12345", conf=b"67"), tmp_path, lambda *each: told.append(each)
    )
    assert (tmp_path / "am" / "final").read_bytes() == b"12345"
    assert told[-1] == (7, 7)


@pytest.mark.parametrize(
    "name", ["../evil", "a/../../evil", "/evil", "C:\\evil", "\\\\server\\evil", "a\\..\\..\\evil"]
)
def test_nothing_is_written_outside_of_the_folder(name: str, tmp_path: Path) -> None:
    """Whatever the system's way to say so, the whole archive is refused before a byte is written."""
    folder = tmp_path / "in"
    folder.mkdir()
    with zipfile.ZipFile(tmp_path / "a.zip", "w") as made:
        made.writestr("fine", b"1")
        made.writestr(name, b"2")
    with pytest.raises(SurroundingsError, match="lies outside"):
        unpack(tmp_path / "a.zip", folder)
    assert list(folder.iterdir()) == []
    assert not (tmp_path / "evil").exists()


def test_a_link_is_refused(tmp_path: Path) -> None:
    """It could lead anywhere."""
    with zipfile.ZipFile(tmp_path / "a.zip", "w") as made:
        link = zipfile.ZipInfo("link")
        link.external_attr = (stat.S_IFLNK | 0o777) << 16
        made.writestr(link, "/etc/passwd")
    with pytest.raises(SurroundingsError, match="a link"):
        unpack(tmp_path / "a.zip", tmp_path)


def test_what_grows_a_hundredfold_is_refused(tmp_path: Path) -> None:
    """Ten megabytes of nothing pack a thousandfold; too many files are refused too."""
    with pytest.raises(SurroundingsError, match="would grow"):
        unpack(archive(tmp_path / "a.zip", zeros=bytes(10_000_000)), tmp_path)
    with zipfile.ZipFile(tmp_path / "b.zip", "w") as made:
        for each in range(MOST_FILES + 1):
            made.writestr(str(each), b"")
    with pytest.raises(SurroundingsError, match="files"):
        unpack(tmp_path / "b.zip", tmp_path)


@pytest.mark.skipif(sys.platform != "linux", reason="how much memory a process has is read as Linux tells it")
def test_an_archive_that_claims_to_need_gigabytes_is_told_in_a_sentence(tmp_path: Path) -> None:
    """LZMA says in its first bytes how much memory it wants; four gigabytes are asked for by one damaged byte."""
    with zipfile.ZipFile(tmp_path / "a.zip", "w", zipfile.ZIP_LZMA) as made:
        made.writestr("noise", random.Random(1).randbytes(3000))
    raw = (tmp_path / "a.zip").read_bytes()
    (tmp_path / "a.zip").write_bytes(raw.replace(b"\x5d\0\0\x80\0", b"\x5d\xff\xff\xff\xff", 1))
    assert (tmp_path / "a.zip").read_bytes() != raw
    with pytest.raises(SurroundingsError, match=r"is damaged: [^.]+\.$"), memory_bounded_to(200 << 20):
        unpack(tmp_path / "a.zip", tmp_path)


@pytest.mark.parametrize(
    ("method", "flags", "said"),
    [
        (9, 0, "packed in a way that I cannot unpack"),  # Deflate64
        (98, 0, "packed in a way that I cannot unpack"),  # PPMd
        (8, 0x1, "locked with a password"),
        (8, 0x800, "damaged"),  # a name said to be UTF-8, which it is not
    ],
)
def test_what_cannot_be_unpacked_here_is_told_as_what_it_is(
    method: int, flags: int, said: str, tmp_path: Path
) -> None:
    """She then knows whether another archive of it would do. Numbers: the ZIP specification, 4.4.4 and 4.4.5."""
    raw = bytearray(
        archive(tmp_path / "a.zip", model=bytes(500)).read_bytes().replace(b"model", b"m\xff\xfeel")
    )
    behind = raw.index(b"PK\1\2")
    for flag_at, method_at in ((6, 8), (behind + 8, behind + 10)):
        raw[flag_at : flag_at + 2] = flags.to_bytes(2, "little")
        raw[method_at : method_at + 2] = method.to_bytes(2, "little")
    (tmp_path / "a.zip").write_bytes(raw)
    with pytest.raises(SurroundingsError, match=said):
        unpack(tmp_path / "a.zip", tmp_path)


def test_a_damaged_archive_and_no_archive_are_told_in_a_sentence(tmp_path: Path) -> None:
    """Cut short, bytes turned over, a text, nothing, or not there."""
    whole = archive(tmp_path / "a.zip", noise=random.Random(1).randbytes(50_000)).read_bytes()
    damaged = {"short": whole[: len(whole) // 2], "text": b"hello", "empty": b""}
    damaged["turned"] = whole[:20_000] + bytes(each ^ 255 for each in whole[20_000:20_100]) + whole[20_100:]
    for name, content in damaged.items():
        (tmp_path / name).mkdir()
        (tmp_path / f"{name}.zip").write_bytes(content)
        with pytest.raises(SurroundingsError, match=r"is no zip archive, or it is damaged: .*[^.]\.$"):
            unpack(tmp_path / f"{name}.zip", tmp_path / name)
    with pytest.raises(SurroundingsError, match=r"cannot be unpacked: .*[^.]\.$"):
        unpack(tmp_path / "nowhere.zip", tmp_path)
