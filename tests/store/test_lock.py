from __future__ import annotations

import os
import re
import signal
import subprocess
import sys
from collections.abc import Callable
from datetime import datetime
from pathlib import Path

import pytest

from stepper.errors import SurroundingsError
from stepper.store.location import lock_path
from stepper.store.lock import GarmentLock

StartChild = Callable[..., "subprocess.Popen[str]"]

HOLD = """
import sys, time
from pathlib import Path
from stepper.store.lock import GarmentLock
lock = GarmentLock(Path(sys.argv[1]))
print("held", flush=True)
time.sleep(60)
"""

FORK_AND_HOLD = """
import os, sys, time
from pathlib import Path
from stepper.store.lock import GarmentLock
lock = GarmentLock(Path(sys.argv[1]))
child = os.fork()
if child == 0:
    print(os.getpid(), flush=True)
    os.close(1); os.close(2)
    time.sleep(60)
    os._exit(0)
time.sleep(60)
"""

COUNT = """
import sys
from pathlib import Path
from stepper.errors import SurroundingsError
from stepper.store.lock import GarmentLock
journal, counter = Path(sys.argv[1]), Path(sys.argv[2])
done = 0
while done < 150:
    try:
        lock = GarmentLock(journal)
    except SurroundingsError:
        continue
    counter.write_text(str(int(counter.read_text()) + 1))
    done += 1
    lock.release()
"""


def test_a_second_lock_is_refused_and_says_who_holds_the_first(path: Path) -> None:
    """The knitter must learn which session is open and since when, to find and end it."""
    first = GarmentLock(path)
    with pytest.raises(SurroundingsError) as refused:
        GarmentLock(path)
    first.release()

    said = re.fullmatch(
        r"switchback is already being knitted in another session \(process (\d+), since (.+)\)\. "
        r"Go on there, or end that session first\.",
        str(refused.value),
    )
    assert said
    assert int(said[1]) == os.getpid()
    since = datetime.strptime(said[2], "%H:%M on %d %B %Y")
    assert abs((datetime.now() - since).total_seconds()) < 180
    assert refused.value.exit_code == 4


def test_the_lock_holds_between_processes(path: Path, start_child: StartChild) -> None:
    """A session in another window must be noticed, and its process named."""
    child = start_child(HOLD, path)
    assert child.stdout
    child.stdout.readline()

    with pytest.raises(SurroundingsError, match=rf"process {child.pid}, since"):
        GarmentLock(path)


def test_the_lock_is_gone_with_a_killed_process(path: Path, start_child: StartChild) -> None:
    """After a crash the knitter must be able to go on at once, without cleaning up."""
    child = start_child(HOLD, path)
    assert child.stdout
    child.stdout.readline()
    child.kill()
    child.wait()

    assert lock_path(path).exists()
    GarmentLock(path).release()


@pytest.mark.skipif(not hasattr(os, "fork"), reason="this system has no fork")
def test_a_forked_helper_does_not_keep_a_killed_sessions_lock(path: Path, start_child: StartChild) -> None:
    """A helper process that outlives a crashed session must not shut the knitter out."""
    child = start_child(FORK_AND_HOLD, path)
    assert child.stdout
    helper = int(child.stdout.readline())
    try:
        with pytest.raises(SurroundingsError):
            GarmentLock(path)
        child.kill()
        child.wait()
        os.kill(helper, 0)  # it is alive
        GarmentLock(path).release()
    finally:
        os.kill(helper, signal.SIGKILL)


def test_a_forked_helper_gives_up_its_share_of_the_lock_and_no_more(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """What it does when it is forked, done here: its open file is closed, the lock file stays, and a lock given back
    before is no concern of it."""
    at_fork: list[Callable[[], None]] = []
    monkeypatch.setattr(os, "register_at_fork", lambda *, after_in_child: at_fork.append(after_in_child), raising=False)
    lock, given_back = GarmentLock(path), GarmentLock(path.with_name("other.journal"))
    given_back.release()
    for forget in at_fork:
        forget()
        forget()
    GarmentLock(path).release()  # here nobody else shared the file
    lock_path(path).write_text("another's")
    lock.release()
    assert lock_path(path).read_text() == "another's"
    del lock, given_back
    for forget in at_fork:
        forget()


def test_a_released_lock_can_be_taken_again_and_leaves_no_file(path: Path) -> None:
    """Closing a session must free the garment and tidy up."""
    lock = GarmentLock(path)
    lock.release()
    lock.release()
    assert list(path.parent.iterdir()) == []

    GarmentLock(path).release()


def test_a_file_left_behind_is_no_lock(path: Path) -> None:
    """Only a living process holds the garment, whatever an old file says."""
    lock_path(path).write_text('{"process": 1, "since": "2025-03-03T20:15:00+01:00"}' + " " * 1000)

    GarmentLock(path).release()


@pytest.mark.parametrize("note", [b"", b"{", b"[]", b'{"process": "x", "since": "y"}', b"\xff\xfe"])
def test_an_unreadable_note_still_gives_a_clear_refusal(path: Path, note: bytes) -> None:
    """Whether or not the holder is known, the refusal must be one plain sentence."""
    lock = GarmentLock(path)
    lock_path(path).write_bytes(note)
    with pytest.raises(SurroundingsError) as refused:
        GarmentLock(path)
    lock.release()

    assert str(refused.value).startswith("switchback is already being knitted in another session. ")


def test_a_missing_folder_is_said(tmp_path: Path) -> None:
    """A path that leads nowhere must be an answer, not a traceback."""
    with pytest.raises(SurroundingsError, match="folder is missing"):
        GarmentLock(tmp_path / "nowhere" / "a.journal")


@pytest.mark.skipif(not hasattr(os, "symlink"), reason="this system has no links")
@pytest.mark.parametrize("link", [os.symlink, os.link])
def test_a_lock_that_is_a_link_is_not_followed(path: Path, link: Callable[[Path, Path], None]) -> None:
    """What a link of the lock's name leads to is someone's file: it is neither emptied nor written to."""
    diary = path.with_name("diary")
    diary.write_text("dear diary")
    link(diary, lock_path(path))
    with pytest.raises(SurroundingsError, match=r"^[^\n]+-lock is a link or no plain file.+\.$") as refused:
        GarmentLock(path)

    assert refused.value.exit_code == 4
    assert diary.read_text() == "dear diary"
    assert sorted(each.name for each in path.parent.iterdir()) == ["diary", lock_path(path).name]


def test_a_link_that_leads_nowhere_makes_no_file(path: Path) -> None:
    """A dangling link must not be followed into a file that was never there."""
    try:
        lock_path(path).symlink_to(path.with_name("nowhere"))
    except OSError:
        pytest.skip("this system lets no user make links")
    with pytest.raises(SurroundingsError):
        GarmentLock(path)

    assert not path.with_name("nowhere").exists()


def test_a_lock_given_back_leaves_anothers_file(path: Path) -> None:
    """Where the file was deleted and another session made its own, that one keeps it."""
    first = GarmentLock(path)
    lock_path(path).unlink()
    second = GarmentLock(path)
    first.release()

    assert lock_path(path).exists()
    second.release()
    assert not lock_path(path).exists()


def test_no_two_processes_ever_hold_the_lock(tmp_path: Path, start_child: StartChild) -> None:
    """Taking and giving back in a race, file deletion included, must never let two in at once."""
    counter = tmp_path / "counter"
    counter.write_text("0")
    children = [start_child(COUNT, tmp_path / "a.journal", counter) for _ in range(4)]
    for child in children:
        _, complaint = child.communicate(timeout=120)
        assert child.returncode == 0, complaint

    assert int(counter.read_text()) == 600


@pytest.mark.skipif(sys.platform == "win32", reason="this system has no such rights")
def test_the_lock_is_no_program_and_nobody_else_can_write_it(path: Path) -> None:
    """Who may read the folder may see which process knits; common practice for a file of one's own, 0644."""
    before = os.umask(0)
    try:
        lock = GarmentLock(path)
    finally:
        os.umask(before)
    mode = lock_path(path).stat().st_mode & 0o777
    lock.release()
    assert mode == 0o644


def test_who_holds_it_is_told_whatever_stood_in_the_file_before(path: Path) -> None:
    """A killed session leaves its note behind; the rest of a longer one must not spoil the new."""
    lock_path(path).write_text('{"process": 1234567890, "since": "2025-03-03T20:15:00+01:00"}' + " and more" * 9)
    lock = GarmentLock(path)
    with pytest.raises(SurroundingsError, match=rf"\(process {os.getpid()}, since "):
        GarmentLock(path)
    lock.release()


@pytest.mark.skipif(sys.platform == "win32", reason="the lowest free number is promised by POSIX")
def test_a_lock_given_back_leaves_no_file_open(path: Path) -> None:
    """A long sitting that opens garment after garment must not run out of files. Source: POSIX, `dup` returns the
    lowest number that is free."""

    def lowest_free() -> int:
        with path.parent.joinpath("probe").open("wb") as file:
            return file.fileno()

    before = lowest_free()
    lock = GarmentLock(path)
    held = lowest_free()
    with pytest.raises(SurroundingsError):
        GarmentLock(path)
    assert lowest_free() == held
    lock.release()
    assert lowest_free() == before


@pytest.mark.parametrize(("length", "read"), [(500, True), (501, False)])
def test_of_a_long_note_no_more_than_its_beginning_is_read(path: Path, length: int, read: bool) -> None:
    """A note takes some seventy letters; of a file of something else that got there no holder is made up."""
    lock = GarmentLock(path)
    note = '{"process": 7, "since": "2025-03-03T20:15:00+01:00"'
    lock_path(path).write_text(note + " " * (length - len(note) - 1) + "}")
    with pytest.raises(SurroundingsError) as refused:
        GarmentLock(path)
    lock.release()
    assert ("(process 7, since 20:15 on 3 March 2025)" in str(refused.value)) is read


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="this system has no named pipes")
def test_what_is_no_file_is_no_lock(path: Path) -> None:
    """A pipe can be locked by two who do not see each other; it is refused like a link."""
    os.mkfifo(lock_path(path))
    with pytest.raises(SurroundingsError):
        GarmentLock(path)
