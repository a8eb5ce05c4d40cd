"""Measure the journal: time to commit, to read all, and to resume, in a long journal.

Run it on the disk the figures are wanted for:

    python tests/bench/journal.py [FOLDER] [--entries 100000]

A disk in memory flatters the commit, so the kind of file system is printed too. Nothing fails here.
"""

from __future__ import annotations

import argparse
import json
import os
import platform
import sqlite3
import statistics
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parents[2]))

from stepper.store.journal import Journal
from stepper.store.records import JournalEntry

AT = "2025-03-03T20:15:00+01:00"
FINGERPRINT = "f" * 64
SNAPSHOT = json.dumps({"section": "yoke", "counts": list(range(2000))})
AIMS_MS = {"cue with commit, p95": 5.0, "resume": 200.0}


def entry(n: int) -> JournalEntry:
    """Return an entry of the size a session writes for one step."""
    body = json.dumps({"section": "yoke", "round": n % 120, "stitch": n % 246, "label": "increase round", "by": "voice"})
    return JournalEntry(at=AT, kind="Advanced", body=body, version=1)


def time_ms(work: Callable[[], object]) -> float:
    """Return how long `work` takes. Unit: milliseconds."""
    begin = time.perf_counter()
    work()
    return (time.perf_counter() - begin) * 1000


def spread(times_ms: list[float]) -> str:
    """Return median, 95th percentile and maximum."""
    p95 = statistics.quantiles(times_ms, n=20)[-1]
    return f"median {statistics.median(times_ms):8.3f}  p95 {p95:8.3f}  max {max(times_ms):8.3f} ms"


def bare_fsync(folder: Path, turns: int) -> list[float]:
    """Return what the disk itself takes to make 4 KiB durable, the floor of any commit."""
    times = []
    with (folder / "floor").open("wb", buffering=0) as file:
        for _ in range(turns):
            def step() -> None:
                file.write(b"x" * 4096)
                os.fsync(file.fileno())
            times.append(time_ms(step))
    (folder / "floor").unlink()
    return times


def resume(path: Path, after_snapshot: int) -> float:
    """Return how long it takes to open for a session, take plan and snapshot, and read what followed."""
    def work() -> None:
        with Journal.open(path, title="A") as journal:
            journal.latest_plan()
            snapshot = journal.latest_snapshot(FINGERPRINT, 1)
            assert snapshot
            json.loads(snapshot.body)
            assert len(list(journal.entries(snapshot.seq))) == after_snapshot
    return time_ms(work)


def main() -> None:
    """Print the figures."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("folder", nargs="?", type=Path)
    parser.add_argument("--entries", type=int, default=100_000)
    parser.add_argument("--commits", type=int, default=1000)
    options = parser.parse_args()
    with tempfile.TemporaryDirectory(dir=options.folder) as name:
        measure(Path(name), options.entries, options.commits)


def measure(folder: Path, entry_count: int, commit_count: int) -> None:
    """Measure in a folder."""
    kind = subprocess.run(["stat", "-f", "-c", "%T", folder], capture_output=True, text=True, check=False).stdout.strip()
    print(f"{platform.system()} {platform.machine()}, Python {platform.python_version()}, "
          f"SQLite {sqlite3.sqlite_version}, file system {kind or 'unknown'}")
    path = folder / "a.journal"
    print(f"create                        {time_ms(lambda: Journal.open(path, title='A').close()):8.3f} ms")
    floor = bare_fsync(folder, 300)
    print(f"write + fsync, no database    {spread(floor)}")
    with Journal.open(path, title="A") as journal:
        journal.keep_plan("title: A\n" * 300, FINGERPRINT, AT)
        empty = [time_ms(lambda n=n: journal.append([entry(n)])) for n in range(commit_count)]
        print(f"commit, journal nearly empty  {spread(empty)}")
        while (count := journal.count()) < entry_count - commit_count:
            size = min(5000, entry_count - commit_count - count)
            journal.append([entry(n) for n in range(size)])
        full = [time_ms(lambda n=n: journal.append([entry(n)])) for n in range(commit_count)]
        print(f"commit, {journal.count():7d} entries       {spread(full)}")
        ratio = statistics.median(full) / statistics.median(empty)
        print(f"  ratio full/empty {ratio:.2f}, commit/fsync {statistics.median(full) / statistics.median(floor):.2f}")
        journal.keep_snapshot(journal.count() - 50, SNAPSHOT, FINGERPRINT, 1)
        print(f"keep snapshot ({len(SNAPSHOT) // 1000} kB)         "
              f"{time_ms(lambda: journal.keep_snapshot(journal.count() - 20, SNAPSHOT, FINGERPRINT, 1)):8.3f} ms")
    print(f"journal file                  {path.stat().st_size / 1e6:8.2f} MB")
    resumes = [resume(path, 20) for _ in range(20)]
    print(f"resume (open, snapshot, rest) {spread(resumes)}")
    def read_all() -> None:
        with Journal.read_only(path) as reader:
            assert sum(1 for _ in reader.entries()) == entry_count
    print(f"read all entries              {spread([time_ms(read_all) for _ in range(5)])}")
    def look() -> None:
        with Journal.read_only(path) as reader:
            list(reader.entries(after=reader.count() - 1))
    print(f"look at the last entry        {spread([time_ms(look) for _ in range(20)])}")
    for what, times in (("cue with commit, p95", full), ("resume", resumes)):
        measured = statistics.quantiles(times, n=20)[-1]
        print(f"aim {what}: under {AIMS_MS[what]} ms, measured p95 {measured:.2f} ms, {AIMS_MS[what] / measured:.0f} times under")


if __name__ == "__main__":
    main()
