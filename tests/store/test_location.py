from __future__ import annotations

from pathlib import Path

import pytest

from stepper.store.location import free_name, journal_path, lock_path, log_paths, unfinished_path


@pytest.mark.parametrize("name", ["switchback.yaml", "switchback.yml"])
def test_the_journal_lies_beside_its_project_file(tmp_path: Path, name: str) -> None:
    """A knitter who moves or backs up the folder must take the journal along with the project."""
    assert journal_path(tmp_path / name) == (tmp_path / "switchback.journal").resolve()


def test_only_the_ending_is_exchanged(tmp_path: Path) -> None:
    """Two projects that differ before the ending must not share a journal."""
    assert journal_path(tmp_path / "switchback.2.yaml").name == "switchback.2.journal"


def test_a_link_to_the_project_leads_to_the_same_journal(tmp_path: Path) -> None:
    """One garment must have one place it is resumed from, whichever name its file is opened by."""
    real = tmp_path / "knitting" / "switchback.yaml"
    real.parent.mkdir()
    real.touch()
    link = tmp_path / "now.yaml"
    try:
        link.symlink_to(real)
    except OSError:
        pytest.skip("this system lets no user make links")

    assert journal_path(link) == journal_path(real)


def test_what_lies_around_a_journal_is_named_after_it(tmp_path: Path) -> None:
    """Everything belonging to a journal must stand beside it in a listing, and nothing under its own name."""
    journal = tmp_path / "switchback.journal"
    around = (lock_path(journal), unfinished_path(journal), *log_paths(journal))

    assert all(p.parent == tmp_path and p.name.startswith("switchback.journal-") for p in around)
    assert len(set(around)) == len(around)


def test_the_logs_are_those_sqlite_uses(tmp_path: Path) -> None:
    """The names must be SQLite's own (sqlite.org, "Temporary Files Used By SQLite")."""
    names = [p.name for p in log_paths(tmp_path / "a.journal")]

    assert names == ["a.journal-wal", "a.journal-journal"]


def test_what_is_put_aside_twice_in_a_second_has_two_names(tmp_path: Path) -> None:
    """The second must not be put in the place of the first; a link that leads nowhere has its name, too."""
    path = tmp_path / "switchback.journal"
    names: list[str] = []
    for turn in range(6):
        aside = free_name(path, "damaged")
        assert not aside.exists()
        assert not aside.is_symlink()
        assert aside.name.startswith("switchback.journal-damaged-")
        if turn % 2:
            aside.symlink_to(tmp_path / "nowhere")
        else:
            aside.touch()
        names.append(aside.name)
    assert len(set(names)) == 6
