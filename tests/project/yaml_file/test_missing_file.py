from __future__ import annotations

from pathlib import Path

import pytest

from stepper.project.yaml_file.missing_file import name_folder, name_missing, nearest_name

THERE = ["cardigan.yaml", "hat.yaml", "hat.txt", "Pullover.yaml", "notes.md", "lantern.png"]


@pytest.mark.parametrize(
    ("typed", "meant"),
    [
        ("hat", "hat.yaml"),
        ("hat.yml", "hat.yaml"),
        ("hta.yaml", "hat.yaml"),
        ("cardigna.yaml", "cardigan.yaml"),
        ("pulover.yaml", "Pullover.yaml"),
        ("pullover", "Pullover.yaml"),
        ("lanten.png", "lantern.png"),
        ("notes.yaml", ""),
        ("zebra.yaml", ""),
    ],
)
def test_the_nearest_file_of_its_kind_is_found(typed: str, meant: str) -> None:
    """A project file for a project file, also without its ending; none where none is near."""
    assert nearest_name(typed, THERE) == meant


def test_the_suggestion_can_be_typed(tmp_path: Path) -> None:
    """It stands with its folder."""
    (tmp_path / "hat.yaml").touch()
    assert name_missing(tmp_path / "hatt.yaml").endswith(f'Did you mean "{tmp_path / "hat.yaml"}"?')
    assert name_missing(tmp_path / "zebra.yaml") == f"There is no file {tmp_path / 'zebra.yaml'}."
    assert "nor a folder" in name_missing(tmp_path / "none" / "hat.yaml")


def test_a_folder_is_answered_with_what_is_in_it(tmp_path: Path) -> None:
    """Up to six files; an empty one has nothing to offer."""
    assert name_folder(tmp_path).endswith("name the project file in it.")
    for number in range(8):
        (tmp_path / f"{number}.yaml").touch()
    told = name_folder(tmp_path)
    assert "0.yaml" in told
    assert told.endswith(" and others.")
    assert name_folder(tmp_path / "none").endswith("in it.")
