"""Each thing that can be wrong with a disk, brought about for real where the system allows it."""

from __future__ import annotations

import errno
import json
import os
import shutil
import sqlite3
import subprocess
import sys
import tempfile
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest

from stepper.errors import SurroundingsError
from stepper.store.database import connect
from stepper.store.failures import damaged_error, explain_failures, not_a_journal_error
from stepper.store.journal import Journal
from stepper.store.records import JournalEntry
from tests.store.disk import is_plain, listing

StartChild = Callable[..., "subprocess.Popen[str]"]
MakeEntry = Callable[[int], JournalEntry]

FILL_THE_DISK = """
import json, sys
from pathlib import Path
from stepper.errors import SurroundingsError
from stepper.store.journal import Journal
from stepper.store.records import JournalEntry
folder = Path(sys.argv[1])
ballast = folder / "ballast"
ballast.write_bytes(b"x" * 300_000)
journal = Journal.open(folder / "a.journal", title="A")
def entry(n):
    body = json.dumps({"n": n, "x": "x" * 3000})
    return JournalEntry(at="2025-03-03T20:15:00+01:00", kind="K", body=body, version=1)
kept, refusals = 0, []
while not refusals:
    try:
        journal.append([entry(kept + 1), entry(kept + 2)])
        kept += 2
    except SurroundingsError as error:
        refusals.append(str(error))
try:
    journal.append([entry(kept + 1)] * 50)
except SurroundingsError as error:
    refusals.append(str(error))
count_when_full = journal.count()
ballast.unlink()
journal.append([entry(kept + 1)])
journal.close()
with Journal.open(folder / "a.journal", title="A") as again:
    found = [json.loads(e.body)["n"] for e in again.entries()]
print(json.dumps({"kept": kept, "refusals": refusals, "count_when_full": count_when_full, "found": found}))
"""

WITHOUT_RIGHTS = """
import json, os, sys
from pathlib import Path
from stepper.errors import SurroundingsError
from stepper.store.journal import Journal
if os.geteuid() == 0:
    os.setgid(65534)
    os.setuid(65534)
said = []
for step in (lambda p: Journal.open(p, title="A").close(), lambda p: print(Journal.read_only(p).count())):
    try:
        step(Path(sys.argv[1]))
        said.append(None)
    except SurroundingsError as error:
        said.append(str(error))
print(json.dumps(said))
"""


@pytest.fixture
def open_folder() -> Iterator[Path]:
    """A folder that another user can reach, which the test runner's own folders need not be."""
    folder = Path(tempfile.mkdtemp())
    folder.chmod(0o755)
    yield folder
    folder.chmod(0o755)
    shutil.rmtree(folder)


def refusal(path: Path) -> str:
    """Return the sentence with which opening a journal for knitting is refused."""
    with pytest.raises(SurroundingsError) as refused:
        Journal.open(path, title="A")
    assert refused.value.exit_code == 4
    assert is_plain(str(refused.value))
    return str(refused.value)


@pytest.fixture
def written(path: Path, entry: MakeEntry) -> Path:
    """A journal of many pages, closed."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(n) for n in range(1, 2001)])
    return path


@pytest.mark.skipif(sys.platform != "linux", reason="only Linux lets a test mount a small disk")
def test_a_full_disk_keeps_what_was_kept_and_lets_her_go_on_later(
    tmp_path: Path, start_child: StartChild
) -> None:
    """On a full disk the refusal must be a sentence, nothing half kept, and going on possible afterwards."""
    mount = f"mount -t tmpfs -o size=700k tmpfs {tmp_path}"
    if (
        not shutil.which("unshare")
        or subprocess.run(["unshare", "-rm", "sh", "-c", mount], check=False).returncode
    ):
        pytest.skip("this system does not let a test mount a small disk")
    child = start_child(
        FILL_THE_DISK, tmp_path, prefix=("unshare", "-rm", "sh", "-c", f'{mount} && exec "$@"', "sh")
    )
    out, complaint = child.communicate(timeout=60)
    assert child.returncode == 0, complaint
    told = json.loads(out)

    assert told["kept"] > 0
    assert len(told["refusals"]) == 2
    assert all(
        sentence.startswith("The disk is full") and is_plain(sentence) for sentence in told["refusals"]
    )
    assert told["count_when_full"] == told["kept"]
    assert told["found"] == list(range(1, told["kept"] + 2))


@pytest.mark.skipif(not hasattr(os, "setuid"), reason="this system has other rights on folders")
@pytest.mark.parametrize(("begun", "read_only"), [(False, "folder"), (True, "folder"), (True, "file")])
def test_a_read_only_place_is_said_and_can_still_be_read(
    open_folder: Path, start_child: StartChild, entry: MakeEntry, begun: bool, read_only: str
) -> None:
    """Where nothing may be written, knitting must be refused in a sentence, and looking must still work."""
    path = open_folder / "a.journal"
    if begun:
        with Journal.open(path, title="A") as journal:
            journal.append([entry(1)])
        path.chmod(0o444)
    if read_only == "folder":
        open_folder.chmod(0o555)
    else:
        open_folder.chmod(0o777)
    before = listing(open_folder)
    out, complaint = start_child(WITHOUT_RIGHTS, path).communicate(timeout=60)
    *shown, said = out.splitlines()
    to_knit, to_read = json.loads(said)

    assert complaint == ""
    assert "is read-only" in to_knit
    assert is_plain(to_knit)
    assert (to_read is None) == begun
    assert shown == (["1"] if begun else [])
    assert listing(open_folder) == before


def test_a_journal_another_program_holds_is_said(written: Path) -> None:
    """When some other program has locked the file, the knitter must be told to close it."""
    other = sqlite3.connect(written, isolation_level=None)
    other.execute("BEGIN IMMEDIATE")
    said = refusal(written)
    other.close()

    assert "in use by another program" in said
    Journal.open(written, title="A").close()


@pytest.mark.parametrize(
    ("content", "expected"),
    [
        (b"title: Switchback\n", "is not a journal of this program"),
        (b"\x89PNG\r\n\x1a\n" + bytes(5000), "is not a journal of this program"),
        (b"", "is damaged"),
        (b"SQLite", "is damaged"),
        (b"SQLite format 3\x00", "is damaged"),
        (b"SQLite format 3\x00" + bytes(5000), "is "),
    ],
)
def test_a_file_that_is_something_else_is_left_alone(path: Path, content: bytes, expected: str) -> None:
    """Whatever lies under the journal's name must be named and not be touched."""
    path.write_bytes(content)

    assert expected in refusal(path)
    assert listing(path.parent) == {path.name: content}
    with pytest.raises(SurroundingsError, match=expected):
        Journal.read_only(path)
    assert listing(path.parent) == {path.name: content}


def test_another_programs_database_is_left_alone(path: Path) -> None:
    """A database of something else must not be given the journal's tables."""
    other = sqlite3.connect(path)
    other.execute("CREATE TABLE entry (x)")
    other.commit()
    other.close()
    before = listing(path.parent)

    assert "is not a journal of this program" in refusal(path)
    assert listing(path.parent) == before


def test_a_folder_in_place_of_the_journal_is_said(path: Path) -> None:
    """Even a folder of the journal's name must give a sentence."""
    path.mkdir()
    with pytest.raises(SurroundingsError) as refused:
        Journal.open(path, title="A")

    assert is_plain(str(refused.value))


@pytest.mark.parametrize(
    ("number", "expected"),
    [
        (errno.ENOSPC, "disk is full"),
        (errno.EROFS, "read-only"),
        (errno.EACCES, "read-only"),
        (errno.ENOENT, "missing"),
        (errno.EIO, "does not read or write"),
    ],
)
def test_what_the_system_refuses_has_its_sentence(path: Path, number: int, expected: str) -> None:
    """Each refusal of the system must come out as a sentence that names the journal."""
    with pytest.raises(SurroundingsError, match=expected) as refused, explain_failures(path):
        raise OSError(number, os.strerror(number))

    assert str(path) in str(refused.value)


def test_finer_kinds_of_refusal_have_the_sentence_of_their_kind(written: Path) -> None:
    """SQLite's finer codes (here SQLITE_BUSY_SNAPSHOT) must be understood by the kind they belong to."""
    late, quick = connect(written), connect(written)
    late.execute("PRAGMA journal_mode = WAL").fetchone()  # where a reader may fall behind a writer
    late.execute("BEGIN")
    late.execute("SELECT count(*) FROM snapshot").fetchone()
    quick.execute("INSERT INTO snapshot (seq, fingerprint, codec_version, body) VALUES (1, 'f', 1, '')")
    with (
        pytest.raises(SurroundingsError, match="in use by another program") as refused,
        explain_failures(written),
    ):
        late.execute("DELETE FROM snapshot")
    late.close()
    quick.close()

    cause = refused.value.__cause__
    assert isinstance(cause, sqlite3.Error)
    assert cause.sqlite_errorname == "SQLITE_BUSY_SNAPSHOT"


def test_our_own_faults_are_not_dressed_up(path: Path) -> None:
    """A broken rule or a misused connection is a fault of the program and must stay recognisable as one."""
    connection = sqlite3.connect(":memory:")
    connection.execute("CREATE TABLE t (x INTEGER PRIMARY KEY)")
    connection.execute("INSERT INTO t VALUES (1)")
    with pytest.raises(sqlite3.IntegrityError), explain_failures(path):
        connection.execute("INSERT INTO t VALUES (1)")
    with pytest.raises(sqlite3.OperationalError), explain_failures(path):
        connection.execute("SELECT nothing FROM nowhere")
    connection.close()
    with pytest.raises(sqlite3.ProgrammingError), explain_failures(path):
        connection.execute("SELECT 1")


def test_ready_made_refusals_name_the_file(path: Path) -> None:
    """A refusal the store finds itself must name the file and read as a sentence."""
    for error in (damaged_error(path), not_a_journal_error(path)):
        assert str(path) in str(error)
        assert is_plain(str(error))
