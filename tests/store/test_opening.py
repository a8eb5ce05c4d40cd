"""Journals that are damaged, missing or exchanged when they are opened."""

from __future__ import annotations

import shutil
import sqlite3
import subprocess
from collections.abc import Callable
from contextlib import closing
from pathlib import Path

import pytest

from stepper.errors import SurroundingsError
from stepper.store.copies import Copies
from stepper.store.database import connect
from stepper.store.failures import in_use_error
from stepper.store.journal import Journal
from stepper.store.location import copies_folder, log_paths
from stepper.store.opening import open_for_reading
from stepper.store.reader import open_reader
from stepper.store.records import JournalEntry
from tests.store.damages import Original, tried
from tests.store.disk import KILLED_WITH_A_LOG, is_plain, listing, saved_journal

MakeEntry = Callable[[int], JournalEntry]
StartChild = Callable[..., "subprocess.Popen[str]"]


@pytest.fixture
def long(path: Path, entry: MakeEntry) -> Path:
    """A journal of many pages, closed, with its copies."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(n) for n in range(1, 2001)])
    return path


@pytest.mark.parametrize("share", range(3))
def test_of_single_damages_none_opens_as_another_state_in_silence(
    whole: Original, tmp_path: Path, share: int
) -> None:
    """Every damage is refused in a sentence, or made good, or told with what is missing; all of 300 by
    `python tests/bench/damages.py`."""
    wrong = {}
    for number in range(share, 69, 3):  # each kind three times
        folder = tmp_path / str(number)
        folder.mkdir()
        found = tried(whole, folder, number)
        if any(result.startswith("WRONG") for result in found.values()):
            wrong[number] = found

    assert wrong == {}


@pytest.mark.parametrize("share", [0.0, 0.02, 0.3, 0.5, 0.99])
def test_a_journal_cut_off_is_made_good_from_its_copies(long: Path, share: float) -> None:
    """A bad copy over the journal must cost nothing, and the file that lay there be kept as it was."""
    content = long.read_bytes()
    cut = content[: int(len(content) * share)]
    long.write_bytes(cut)
    with Journal.open(long, title="A") as journal:
        assert journal.count() == 2000
        (remark,) = journal.take_remarks()

    (aside,) = long.parent.glob("*-damaged-*")
    assert aside.read_bytes() == cut
    assert remark == (
        "switchback.journal was damaged and was put together again with 2000 entries; "
        f"the damaged file is kept as {aside.name}."
    )
    assert is_plain(remark)
    with Journal.open(long, title="A") as journal:
        assert journal.take_remarks() == ()


@pytest.mark.parametrize("page", [0, 1, 3, 10, 30])
@pytest.mark.parametrize("copies", [True, False])
def test_a_spoilt_page_is_noticed_at_the_beginning(long: Path, page: int, copies: bool) -> None:
    """A page lost to a bad disk is made good, or said with the number of what is missing, or refused with
    the file left alone."""
    content = bytearray(long.read_bytes())
    start = page * 4096 + (100 if page == 0 else 0)  # the first page opens with the file's own header
    content[start : start + 512] = b"\xa5" * 512
    long.write_bytes(content)
    if not copies:
        shutil.rmtree(copies_folder(long))
    before, refusal = listing(long.parent), ""
    try:
        with Journal.open(long, title="A") as journal:
            (remark,), found = journal.take_remarks(), [each.seq for each in journal.entries()]
    except SurroundingsError as refused:
        refusal = str(refused)
    if refusal:
        assert not copies
        assert is_plain(refusal)
        assert "is damaged and was left as it is" in refusal
        assert listing(long.parent) == before
        return
    assert found == list(range(1, len(found) + 1))
    assert is_plain(remark)
    if copies or len(found) == 2000:
        assert len(found) == 2000
        assert "missing" not in remark
    else:
        assert f"{2000 - len(found)} entries after them are missing" in remark


def test_looking_at_a_damaged_journal_tells_and_changes_nothing(long: Path) -> None:
    """Where the knitting stands is answered from what can be read, and making good is left to a sitting."""
    long.write_bytes(long.read_bytes()[:50_000])
    before = listing(long.parent)
    with open_reader(long) as reader:
        assert reader.count() == 2000
        assert reader.take_remarks() == (
            "switchback.journal is damaged; this is what can be read of it and its copies.",
        )

    assert listing(long.parent) == before


def test_a_missing_journal_is_put_back_from_its_copies(long: Path) -> None:
    """A deleted file must not make an evening vanish, nor begin the garment anew unasked."""
    long.unlink()
    with open_reader(long) as reader:
        assert reader.count() == 2000
        assert "is missing" in reader.take_remarks()[0]
    assert not long.exists()
    with Journal.open(long, title="A") as journal:
        assert journal.count() == 2000
        assert journal.take_remarks() == (
            "switchback.journal was missing and was put back from its copies with 2000 entries; "
            "to begin anew, move switchback.journal-copies away as well.",
        )


def test_an_earlier_journal_put_in_its_place_is_noticed(path: Path, entry: MakeEntry) -> None:
    """A folder synchronised the wrong way round gives back last week's journal; what was kept since counts."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(1), entry(2)])
    earlier = path.read_bytes()
    with Journal.open(path, title="A") as journal:
        journal.append([entry(3)])
        newer = Copies(path).listed()
    path.write_bytes(earlier)
    with open_reader(path) as reader:
        assert reader.count() == 3
        assert "is an earlier one, which ends at entry 2" in reader.take_remarks()[0]
    with Journal.open(path, title="A") as journal:
        assert journal.count() == 3
        assert "was an earlier one and was put back with 3 entries; the file" in journal.take_remarks()[0]
    assert newer
    assert [each.read_bytes() for each in path.parent.glob("*-earlier-*")] == [earlier]


def test_copies_that_she_gave_names_of_her_own_are_looked_into_too(path: Path, entry: MakeEntry) -> None:
    """The mark knows how far the journal went, and what a file holds is not in its name."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(1)])
    earlier = path.read_bytes()
    with Journal.open(path, title="A") as journal:
        journal.append([entry(2)])
    for number, each in enumerate(Copies(path).listed()):
        each.rename(each.with_name(f"yoke done {number}.journal"))
    path.write_bytes(earlier)
    with Journal.open(path, title="A") as journal:
        assert journal.count() == 2
        assert "was an earlier one and was put back with 2 entries" in journal.take_remarks()[0]


def test_the_last_evening_of_a_garment_begun_before_is_found_among_its_copies(path: Path, entry: MakeEntry) -> None:
    """Begun anew and regretted: an old file of the first knitting is put back, and what was kept after it is still there,
    though the newest mark speaks of the second."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(1), entry(2)])
    earlier = path.read_bytes()
    with Journal.open(path, title="A") as journal:
        journal.append([entry(3)])
    aside = copies_folder(path).rename(path.with_name("aside"))
    path.unlink()
    with Journal.open(path, title="A") as journal:
        journal.append([entry(9)])
    for each in aside.glob("*.journal"):
        each.rename(copies_folder(path) / each.name)
    path.write_bytes(earlier)
    with Journal.open(path, title="A") as journal:
        assert [each.body for each in journal.entries()] == [entry(n).body for n in (1, 2, 3)]


@pytest.mark.parametrize(
    ("lost", "words"), [(1, "1 entry kept after it is missing"), (3, "3 entries kept after it are missing")]
)
def test_what_no_copy_has_is_said_to_be_missing(path: Path, entry: MakeEntry, lost: int, words: str) -> None:
    """Where only the mark knows of more, the number of what is missing is told, once."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(1), entry(2)])
    earlier = path.read_bytes()
    with Journal.open(path, title="A") as journal:
        journal.append([entry(3 + each) for each in range(lost)])
    for each in Copies(path).listed():
        each.unlink()
    path.write_bytes(earlier)
    with Journal.open(path, title="A") as journal:
        assert journal.take_remarks()[0].startswith(f"switchback.journal ends at entry 2: {words}")
    with Journal.open(path, title="A") as journal:
        assert journal.take_remarks() == ()


def test_another_journal_in_its_place_is_said(path: Path, entry: MakeEntry, tmp_path: Path) -> None:
    """A journal of another garment under this name is whole, and must not pass for this one in silence."""
    other = tmp_path / "other" / "b.journal"
    other.parent.mkdir()
    with Journal.open(path, title="A") as journal:
        journal.append([entry(1), entry(2)])
    with Journal.open(other, title="A") as journal:
        journal.append([entry(3)])
    shutil.copy(other, path)
    with Journal.open(path, title="A") as journal:
        assert [each.body for each in journal.entries()] == [entry(3).body]
        assert journal.take_remarks()[0].startswith("switchback.journal is another journal than")


def test_knitting_on_elsewhere_is_said(path: Path, entry: MakeEntry, tmp_path: Path) -> None:
    """An earlier journal knitted on with another machine has other entries under the same numbers."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(1)])
    other = tmp_path / "other" / "a.journal"
    other.parent.mkdir()
    shutil.copy(path, other)
    with Journal.open(path, title="A") as journal:
        journal.append([entry(2)])
    with Journal.open(other, title="A") as journal:
        journal.append([entry(20), entry(30)])
    shutil.copy(other, path)
    with Journal.open(path, title="A") as journal:
        assert journal.count() == 3
        assert "was knitted on elsewhere" in journal.take_remarks()[0]


def test_a_rollback_journal_left_by_the_very_first_start_is_no_dead_end(path: Path) -> None:
    """The first form could leave half a change of its mode beside a new journal; it must just open."""
    saved_journal(path)
    connection = connect(path)
    (title,) = connection.execute("SELECT title FROM garment").fetchone()
    connection.execute("PRAGMA journal_mode = DELETE").fetchone()
    connection.execute("BEGIN IMMEDIATE")
    connection.execute("UPDATE garment SET title = 'x'")
    connection.execute("PRAGMA cache_size = 1")
    connection.execute("INSERT INTO snapshot VALUES (9, 1, 'f', 1, ?)", ("x" * 60_000,))
    half, beside = path.read_bytes(), log_paths(path)[1].read_bytes()
    connection.execute("ROLLBACK")
    connection.close()
    path.write_bytes(half)
    log_paths(path)[1].write_bytes(beside)
    assert beside

    with open_reader(path) as reader:
        assert (reader.count(), reader.title) == (3, title)
    with Journal.open(path, title="Switchback") as journal:
        assert journal.count() == 3
        assert journal.take_remarks() == ()


def test_a_log_of_before_is_worked_in_when_it_is_opened(path: Path, start_child: StartChild) -> None:
    """A whole evening that lived beside the journal is in it from then on, and the copy alone has it."""
    start_child(KILLED_WITH_A_LOG, saved_journal(path), 300).wait()
    assert path.stat().st_size < 50_000 < log_paths(path)[0].stat().st_size
    journal = Journal.open(path, title="Switchback")
    alone = path.with_name("alone.journal")
    shutil.copy(path, alone)
    assert not log_paths(path)[0].exists()
    journal.close()
    with Journal.open(alone, title="Switchback") as copied:
        assert copied.count() == 303


@pytest.mark.parametrize("title", ["A", "Another name"])
def test_nobody_writes_into_a_journal_that_is_open(path: Path, entry: MakeEntry, title: str) -> None:
    """Two who write would each be right, and the chain of checksums broken; also where the title had to be kept anew."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(1)])
    with Journal.open(path, title=title) as journal:
        stranger = sqlite3.connect(path, timeout=0, isolation_level=None)
        with pytest.raises(sqlite3.OperationalError, match="locked"):
            stranger.execute("BEGIN IMMEDIATE")
        stranger.close()
        journal.append([entry(2)])


def test_a_folder_of_copies_that_are_none_is_no_journal(path: Path) -> None:
    """Names alone are not enough."""
    copies_folder(path).mkdir()
    (copies_folder(path) / "a.journal").write_bytes(b"none")
    with pytest.raises(SurroundingsError):
        open_for_reading(path)


def test_a_journal_that_another_program_has_open_with_a_log_is_not_knitted_into(path: Path) -> None:
    """Its commits would go into that log, and a copy of the file alone would lack what was answered."""
    Journal.open(path, title="A").close()
    other = sqlite3.connect(path, timeout=0, isolation_level=None)
    other.execute("PRAGMA journal_mode = WAL").fetchone()
    other.execute("BEGIN")
    other.execute("SELECT count(*) FROM entry").fetchone()
    with pytest.raises(SurroundingsError) as refused:
        Journal.open(path, title="A")
    other.close()
    assert str(refused.value) == str(in_use_error(path))


def test_of_a_journal_put_back_from_before_its_first_entry_what_is_missing_is_told(path: Path, entry: MakeEntry) -> None:
    """With its copies gone as well there is nothing to put in its place, and the empty one must not pass for hers."""
    Journal.open(path, title="A").close()
    begun = path.read_bytes()
    with Journal.open(path, title="A") as journal:
        journal.append([entry(1), entry(2)])
    for each in Copies(path).listed():
        each.unlink()
    path.write_bytes(begun)
    with Journal.open(path, title="A") as journal:
        assert journal.take_remarks()[0].startswith(
            "switchback.journal ends at entry 0: 2 entries kept after it are missing"
        )


def test_what_a_log_of_a_newer_program_says_is_looked_at_before_it_is_worked_in(path: Path) -> None:
    """The last evening was knitted with a program of tomorrow and then killed: today's refuses it and leaves both files."""
    tomorrow = path.with_name("tomorrow.journal")
    with closing(sqlite3.connect(saved_journal(tomorrow), isolation_level=None)) as connection:
        connection.execute("PRAGMA journal_mode = WAL").fetchone()
        connection.execute("INSERT INTO migration VALUES (99, 'of tomorrow', '2035-03-03T20:15:00+01:00')")
        for source, target in zip((tomorrow, *log_paths(tomorrow)), (path, *log_paths(path)), strict=True):
            if source.exists():
                shutil.copy(source, target)
    before = {name: held for name, held in listing(path.parent).items() if name.startswith("switchback")}
    assert len(before) == 2
    with pytest.raises(SurroundingsError, match="newer"):
        Journal.open(path, title="Switchback")
    after = listing(path.parent)
    assert {name: after.get(name) for name in before} == before


def test_a_journal_of_which_only_the_first_words_are_left_is_damaged_and_no_other_file(path: Path) -> None:
    """By SQLite's file format, section 1.2, the sixteen letters at the beginning say what it is: it is hers, to be mended
    and not to be moved out of the way."""
    path.write_bytes(b"SQLite format 3\0" + bytes(4080))
    for opened in (open_reader, lambda path: Journal.open(path, title="A")):
        with pytest.raises(SurroundingsError, match="is damaged"):
            opened(path)
