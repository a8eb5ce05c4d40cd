"""Single damages of a journal, seeded, and an independent judge of what comes of each.

The judge knows what was kept and nothing of how it is guarded: a journal may be refused in one sentence, or be
opened as it was, or be opened with fewer entries and say so in one sentence with their number. Anything else is
a fault: another state, another kind of error, or fewer entries in silence.
"""

from __future__ import annotations

import contextlib
import json
import random
import re
import shutil
import sqlite3
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from stepper.errors import SurroundingsError
from stepper.store.journal import Journal
from stepper.store.location import copies_folder, log_paths
from stepper.store.reader import JournalReader, open_reader
from stepper.store.records import JournalEntry

AT = "2025-03-03T20:15:00+01:00"
PAGE = 4096
ENTRIES = 330
OWNER = "state"


@dataclass(frozen=True)
class Original:
    """A journal as it was kept, in a folder of its own that is never changed."""

    folder: Path
    bodies: tuple[str, ...]
    texts: tuple[str, ...]
    snapshot: str

    @property
    def path(self) -> Path:
        """The journal."""
        return self.folder / "cuff.journal"


def entries(first: int, last: int) -> list[JournalEntry]:
    """Make entries of the size that a session writes."""
    return [
        JournalEntry(at=AT, kind="advanced", version=2, body=json.dumps({"n": n, "label": f"Zunahme {n} ↗", "x": "y" * 40}))
        for n in range(first, last + 1)
    ]


def original(folder: Path) -> Original:
    """Keep a journal in two sittings, with two project texts, snapshots and copies; beside it an earlier one."""
    path = folder / "cuff.journal"
    texts = ("title: Cuff\n" * 300, "title: Cuff\nsize: 2\n" * 300)
    with Journal.open(path, title="Cuff") as journal:
        journal.keep_plan(texts[0], "f1", AT)
        for n in range(1, 150):
            journal.append(entries(n, n))
        journal.keep_snapshot(149, json.dumps({"seq": 149}), OWNER, 1)
    shutil.copy(path, folder / "earlier")
    with Journal.open(path, title="Cuff") as journal:
        journal.keep_plan(texts[1], "f2", AT)
        for n in range(150, ENTRIES + 1):
            journal.append(entries(n, n))
        snapshot = json.dumps({"seq": 320, "where": "cuff"})
        journal.keep_snapshot(320, snapshot, OWNER, 1)
        journal.append(entries(ENTRIES + 1, ENTRIES + 2))
        bodies = tuple(each.body for each in journal.entries())
    _half_a_commit(folder)
    return Original(folder=folder, bodies=bodies, texts=texts, snapshot=snapshot)


def _half_a_commit(folder: Path) -> None:
    """Leave a journal as a kill in the middle of a commit leaves it, with what takes it back beside it."""
    path = folder / "half.journal"
    shutil.copy(folder / "cuff.journal", path)
    connection = sqlite3.connect(path, isolation_level=None)
    connection.execute("PRAGMA journal_mode = TRUNCATE").fetchone()
    connection.execute("PRAGMA cache_size = 2")
    connection.execute("BEGIN IMMEDIATE")
    connection.execute("DELETE FROM snapshot")
    connection.execute("UPDATE newest SET seq = seq + 37")
    connection.execute("INSERT INTO garment (id, title) SELECT 2, 'x' WHERE 0")
    for n in range(ENTRIES + 3, ENTRIES + 40):
        connection.execute("INSERT INTO entry VALUES (?, ?, 'k', 1, ?, x'00')", (n, AT, json.dumps("z" * 3000)))
    shutil.copy(path, folder / "half")
    shutil.copy(f"{path}-journal", folder / "half-journal")
    connection.execute("ROLLBACK")
    connection.close()
    for each in (path, Path(f"{path}-journal")):
        each.unlink(missing_ok=True)


def _bytes(path: Path, change: Callable[[bytearray], bytes | bytearray]) -> None:
    path.write_bytes(change(bytearray(path.read_bytes())))


def flip_a_bit(path: Path, choose: random.Random, whole: Original) -> None:
    """One bit, anywhere."""
    data = bytearray(path.read_bytes())
    data[choose.randrange(len(data))] ^= 1 << choose.randrange(8)
    path.write_bytes(data)


def flip_a_bit_of_the_head(path: Path, choose: random.Random, whole: Original) -> None:
    """One bit of the first 100 bytes, which say what the file is."""
    data = bytearray(path.read_bytes())
    data[choose.randrange(100)] ^= 1 << choose.randrange(8)
    path.write_bytes(data)


def overwrite_some_bytes(path: Path, choose: random.Random, whole: Original) -> None:
    """A few hundred bytes of noise."""
    data = bytearray(path.read_bytes())
    at, length = choose.randrange(len(data)), choose.randint(1, 600)
    data[at : at + length] = choose.randbytes(min(length, len(data) - at))
    path.write_bytes(data)


def zero_a_page(path: Path, choose: random.Random, whole: Original) -> None:
    """A page that the drive gives back empty."""
    data = bytearray(path.read_bytes())
    at = choose.randrange(len(data) // PAGE) * PAGE
    data[at : at + PAGE] = bytes(PAGE)
    path.write_bytes(data)


def swap_two_pages(path: Path, choose: random.Random, whole: Original) -> None:
    """Two pages in each other's place."""
    data = bytearray(path.read_bytes())
    one, two = (at * PAGE for at in choose.sample(range(len(data) // PAGE), 2))
    data[one : one + PAGE], data[two : two + PAGE] = data[two : two + PAGE], data[one : one + PAGE]
    path.write_bytes(data)


def repeat_a_page(path: Path, choose: random.Random, whole: Original) -> None:
    """A page written over another."""
    data = bytearray(path.read_bytes())
    one, two = (at * PAGE for at in choose.sample(range(len(data) // PAGE), 2))
    data[one : one + PAGE] = data[two : two + PAGE]
    path.write_bytes(data)


def cut_off(path: Path, choose: random.Random, whole: Original) -> None:
    """The end missing, at any byte or at a page."""
    data = path.read_bytes()
    keep = choose.randrange(len(data))
    path.write_bytes(data[: keep if choose.random() < 0.5 else keep // PAGE * PAGE])


def old_page(path: Path, choose: random.Random, whole: Original) -> None:
    """A page as it was an evening ago: a write that never reached the disk."""
    data, before = bytearray(path.read_bytes()), (whole.folder / "earlier").read_bytes()
    at = choose.randrange(len(before) // PAGE) * PAGE
    data[at : at + PAGE] = before[at : at + PAGE]
    path.write_bytes(data)


def append_noise(path: Path, choose: random.Random, whole: Original) -> None:
    """Something behind the end."""
    _bytes(path, lambda data: data + choose.randbytes(choose.randint(1, 3 * PAGE)))


def put_something_else(path: Path, choose: random.Random, whole: Original) -> None:
    """A file of another kind, an empty one, or none."""
    kind = choose.randrange(6)
    if kind == 0:
        path.unlink()
    elif kind == 5:
        path.unlink()
        with contextlib.closing(sqlite3.connect(path)) as other, other:
            other.execute("CREATE TABLE entry (x)")
    else:
        path.write_bytes((b"", b"title: Cuff\n" * 9, b"\x89PNG\r\n" + bytes(999), choose.randbytes(20_000))[kind - 1])


STATEMENTS = (
    "DROP TABLE entry",
    "DROP TABLE plan",
    "DROP TABLE snapshot",
    "DROP TABLE newest",
    "DROP TABLE migration",
    "DROP TABLE garment",
    "ALTER TABLE entry RENAME TO entries",
    "ALTER TABLE newest RENAME COLUMN seq TO place",
    "CREATE TABLE mood (x)",
    "DROP TRIGGER IF EXISTS entry_is_not_changed",
    "DELETE FROM entry WHERE seq > 300",
    "DELETE FROM entry WHERE seq = 7",
    "DELETE FROM entry",
    "DELETE FROM plan WHERE number = 2",
    "DELETE FROM snapshot",
    "DELETE FROM newest",
    "DELETE FROM garment",
    "DELETE FROM migration WHERE version = 2",
    "UPDATE entry SET body = replace(body, 'y', 'z') WHERE seq = 200",
    "UPDATE entry SET body = (SELECT body FROM entry WHERE seq = 9) WHERE seq = 10",
    "UPDATE entry SET at = '2025-03-04T20:15:00+01:00' WHERE seq = 332",
    "UPDATE entry SET digest = x'00' WHERE seq = 100",
    "UPDATE plan SET project_text = 'title: Other' WHERE number = 1",
    "UPDATE plan SET fingerprint = 'f3' WHERE number = 2",
    "UPDATE snapshot SET body = '{\"seq\": 320}'",
    "UPDATE snapshot SET seq = 319",
    "UPDATE newest SET seq = 300",
    "UPDATE newest SET journal = 'another'",
    "UPDATE garment SET title = 'Other'",
    "UPDATE migration SET version = 5 WHERE version = 2",
    "UPDATE migration SET version = 0 WHERE version = 1",
    "INSERT INTO entry SELECT 333, at, kind, version, body, digest FROM entry WHERE seq = 332",
    "INSERT INTO plan SELECT 3, from_seq, at, fingerprint, project_text, digest FROM plan WHERE number = 2",
    "PRAGMA application_id = 7",
    "PRAGMA user_version = 7",
    "PRAGMA journal_mode = WAL",
)
"""What another program may do to a journal."""


def change_a_row(path: Path, choose: random.Random, whole: Original) -> None:
    """Rows or tables changed by another program, past the triggers."""
    connection = sqlite3.connect(path, isolation_level=None)
    statement = choose.choice(STATEMENTS)
    triggers = connection.execute("SELECT name, sql FROM sqlite_master WHERE type = 'trigger'").fetchall()
    for name, _ in triggers:
        connection.execute(f"DROP TRIGGER {name}")
    connection.execute(statement)
    for _, sql in triggers:
        with contextlib.suppress(sqlite3.Error):
            connection.execute(sql)
    connection.close()
    if statement.startswith("DROP TRIGGER"):
        with contextlib.closing(sqlite3.connect(path, isolation_level=None)) as again:
            again.execute(statement)


def half_a_commit(path: Path, choose: random.Random, whole: Original) -> None:
    """A kill in the middle of a commit; what takes it back is whole, damaged, cut off or gone."""
    shutil.copy(whole.folder / "half", path)
    _, beside = log_paths(path)
    shutil.copy(whole.folder / "half-journal", beside)
    kind = choose.randrange(4)
    if kind == 1:
        beside.unlink()
    elif kind == 2:
        flip_a_bit(beside, choose, whole)
    elif kind == 3:
        cut_off(beside, choose, whole)


def put_noise_beside(path: Path, choose: random.Random, whole: Original) -> None:
    """A foreign file where SQLite looks for what it was doing."""
    choose.choice(log_paths(path)).write_bytes(choose.randbytes(choose.randint(1, 9000)))


def put_an_earlier_one(path: Path, choose: random.Random, whole: Original) -> None:
    """The whole journal as it was an evening ago."""
    shutil.copy(whole.folder / "earlier", path)


DAMAGES = (
    *(flip_a_bit,) * 4,
    flip_a_bit_of_the_head,
    *(overwrite_some_bytes,) * 2,
    zero_a_page,
    swap_two_pages,
    repeat_a_page,
    *(cut_off,) * 2,
    old_page,
    append_noise,
    put_something_else,
    *(change_a_row,) * 4,
    *(half_a_commit,) * 2,
    put_noise_beside,
    put_an_earlier_one,
)
"""The kinds, some more often than others."""


def damaged_copy(whole: Original, folder: Path, number: int) -> tuple[Path, str, bool]:
    """Copy the journal into a folder and damage it.

    Returns:
        The journal, the kind of damage, and whether its copies lie beside it.
    """
    choose = random.Random(number)
    path, damage = folder / "cuff.journal", DAMAGES[number % len(DAMAGES)]
    shutil.copy(whole.path, path)
    with_copies = damage is put_an_earlier_one or choose.random() < 0.5
    if with_copies:
        shutil.copytree(copies_folder(whole.path), copies_folder(path))
        if choose.random() < 0.2:  # of the copies too, one is damaged
            flip_a_bit(choose.choice(sorted(copies_folder(path).iterdir())), choose, whole)
    damage(path, choose, whole)
    return path, damage.__name__, with_copies


def outcome(whole: Original, opened: Callable[[], JournalReader]) -> str:
    """Open a journal and judge what comes of it.

    Returns:
        "as it was", "recovered", "fewer, told", "refused", or what is wrong, beginning with "WRONG".
    """
    try:
        with opened() as journal:
            bodies = tuple(each.body for each in journal.entries())
            texts = tuple(each.project_text for each in journal.plan_versions())
            snapshot = journal.latest_snapshot(OWNER, 1)
            remarks, title = journal.take_remarks(), journal.title
    except SurroundingsError as error:
        if error.exit_code != 4 or "\n" in str(error) or not str(error).endswith("."):
            return f"WRONG: refused, but not in a sentence: {error}"
        return "refused"
    except Exception as fault:  # what would end the program with a fault of its own
        return f"WRONG: {type(fault).__name__}: {fault}"
    if any(not remark.endswith(".") or "\n" in remark for remark in remarks) or len(remarks) > 1:
        return f"WRONG: not one sentence: {remarks}"
    if bodies != whole.bodies[: len(bodies)] or texts != whole.texts[: len(texts)] or title not in ("Cuff", "cuff"):
        return "WRONG: another state"
    expected = {len(whole.bodies[:149]): '{"seq": 149}', 320: whole.snapshot}
    if snapshot is not None and expected.get(snapshot.seq) != snapshot.body:
        return "WRONG: another snapshot"
    if len(bodies) == len(whole.bodies) and len(texts) == len(whole.texts):
        return "recovered" if remarks else "as it was"
    if not remarks:
        return f"WRONG: {len(bodies)} of {len(whole.bodies)} entries in silence"
    lost = len(whole.bodies) - len(bodies)
    said = re.search(r"(\d+) entr(?:y|ies) (?:after them|kept after it) (?:is|are) missing", remarks[0])
    if said is not None and int(said[1]) != lost:
        return f"WRONG: {lost} are missing, told {said[1]}"
    return "fewer, number told" if said else "fewer, told"


def tried(whole: Original, folder: Path, number: int) -> dict[str, str]:
    """Bring about one damage; look at the journal, then knit on it, then look again.

    Returns:
        What came of each, by its name, and "kind" of the damage.
    """
    path, kind, with_copies = damaged_copy(whole, folder, number)
    before = {each.name: each.read_bytes() for each in folder.iterdir() if each.is_file()}
    found = {"kind": f"{kind}{'' if with_copies else ', alone'}"}
    if with_copies or path.exists():
        found["read"] = outcome(whole, lambda: open_reader(path))
    after = {each.name: each.read_bytes() for each in folder.iterdir() if each.is_file()}
    if after != before:
        found["read"] = "WRONG: looking changed something"
    found["knit"] = outcome(whole, lambda: Journal.open(path, title="Cuff"))
    if kind == "put_something_else" and not with_copies and not before and found["knit"].startswith("WRONG"):
        found["knit"] = "begun anew"  # nothing is there at all
    there = {each.read_bytes() for each in folder.iterdir() if each.is_file()}
    put_together = found["knit"] in ("recovered", "fewer, told", "fewer, number told")
    if put_together and not set(before.values()) <= there:
        found["knit"] = "WRONG: the damaged file is gone"
    if found["knit"] == "refused" and {e.name: e.read_bytes() for e in folder.iterdir() if e.is_file()} != before:
        found["knit"] = "WRONG: refused, but changed"
    return found
