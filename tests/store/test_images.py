from __future__ import annotations

def test_reading_a_closed_journal_leaves_no_trace(path: Path, entry: MakeEntry) -> None:
    """Looking must change neither the file nor the folder, down to the time of change."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(1)])
    before = (path.read_bytes(), path.stat().st_mtime_ns, list(path.parent.iterdir()))
    reading = connect_reading(path)
    assert reading.execute("SELECT count(*) FROM entry").fetchone() == (1,)
    with pytest.raises(sqlite3.OperationalError, match="readonly"):
        reading.execute("DELETE FROM snapshot")
    reading.close()

    assert (path.read_bytes(), path.stat().st_mtime_ns, list(path.parent.iterdir())) == before


def test_reading_an_open_journal_sees_the_last_commit(path: Path, entry: MakeEntry) -> None:
    """What is only in the log yet must be seen as well, and writing stay forbidden."""
    with Journal.open(path, title="A") as journal:
        journal.append([entry(1)])
        reading = connect_reading(path)
        journal.append([entry(2)])
        assert reading.execute("SELECT count(*) FROM entry").fetchone() == (2,)
        with pytest.raises(sqlite3.OperationalError, match="readonly"):
            reading.execute("DELETE FROM snapshot")
        reading.close()


