from __future__ import annotations

import xml.etree.ElementTree as ET
from pathlib import Path

import pytest

from stepper.store.journal import Journal
from stepper.store.location import journal_path
from tests.commands.garments import garment, stepper


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """Return a project file of its own for each test."""
    return garment(tmp_path)



def test_a_picture_of_the_screen_is_made_from_the_journal_and_changes_nothing(path: Path) -> None:
    """The state really knitted, as an SVG that an XML parser reads; nothing is added to the journal."""
    stepper("knit", path, "--plain", "--mute", typed="go to round 6\ncount is 28\n")
    with Journal.read_only(journal_path(path)) as journal:
        before = journal.count()
    target = path.with_suffix(".svg")
    done = stepper("knit", path, "--picture", target)

    assert (done.returncode, done.stdout, done.stderr) == (0, "", "")
    words = " ".join("".join(ET.parse(target).getroot().itertext()).split())
    assert "count stands" in words
    assert "of 17" in words
    with Journal.read_only(journal_path(path)) as journal:
        assert journal.count() == before
    nowhere = stepper("knit", path, "--picture", path.parent / "no" / "such.svg")
    assert (nowhere.returncode, len(nowhere.stderr.splitlines())) == (4, 1)
