from __future__ import annotations

import shlex
import sys
from pathlib import Path

import pytest

from stepper.sitting.installation import Installation, Way, find_installation, how_to_install

PREFIX = Path("/home/her/place")


class Found:
    """An installed distribution, as `importlib.metadata` reads it from its folder."""

    def __init__(self, files: dict[str, str], requires: list[str] | None = None) -> None:
        """Say what lies in its folder."""
        self.files, self.requires = files, requires

    def read_text(self, name: str) -> str | None:
        """Read a file."""
        return self.files.get(name)


FOLDER = '{"dir_info": {}, "url": "file:///home/her/stepper"}'
EDITABLE = '{"dir_info": {"editable": true}, "url": "file:///home/her/stepper"}'


@pytest.mark.skipif(sys.platform == "win32", reason="words are quoted otherwise there")
@pytest.mark.parametrize(
    ("marks", "files", "command"),
    [
        pytest.param([], {"direct_url.json": FOLDER, "INSTALLER": "pip\n"},
                     "/home/her/place/bin/python -m pip install '/home/her/stepper[ears]'", id="venv"),
        pytest.param([], {"direct_url.json": EDITABLE, "INSTALLER": "pip\n"},
                     "/home/her/place/bin/python -m pip install -e '/home/her/stepper[ears]'", id="editable"),
        pytest.param([], {"direct_url.json": FOLDER, "INSTALLER": "uv\n"},
                     "uv pip install --python /home/her/place/bin/python '/home/her/stepper[ears]'", id="uv"),
        pytest.param(["uv-receipt.toml"], {"direct_url.json": FOLDER, "INSTALLER": "uv"},
                     "uv tool install --force '/home/her/stepper[ears]'", id="uv tool"),
        pytest.param(["pipx_metadata.json"], {"direct_url.json": FOLDER, "INSTALLER": "pip"},
                     "pipx install --force '/home/her/stepper[ears]'", id="pipx"),
        pytest.param([], {"INSTALLER": "pip"}, "/home/her/place/bin/python -m pip install 'stepper[ears]'", id="by name"),
        pytest.param([], {"direct_url.json": "{", "INSTALLER": "pip"},
                     "/home/her/place/bin/python -m pip install 'stepper[ears]'", id="damaged"),
    ],
)
def test_the_hint_names_the_way_this_program_was_installed(
    marks: list[str], files: dict[str, str], command: str, tmp_path: Path
) -> None:
    """A hint for another tool puts the extra where the program does not find it."""
    for mark in marks:
        (tmp_path / mark).touch()
    there = find_installation(tmp_path, Found(files))  # type: ignore[arg-type]
    moved = Installation(way=there.way, prefix=PREFIX, source=there.source, editable=there.editable)
    assert how_to_install("ears", moved, folder=Path("/elsewhere")) == command


def test_what_is_there_already_is_kept_where_all_is_installed_anew() -> None:
    """Both tools drop an extra that is not named again."""
    there = Installation(way=Way.PIPX, prefix=PREFIX, source="/s", extras=("ears", "page"))
    assert "[ears,page,vosk]" in how_to_install("vosk", there)
    found = Found({}, ["lark>=1", "pytest>=8; extra == 'test'", "lark; extra == 'ears'", 'no-such-thing; extra == "vosk"'])
    assert find_installation(PREFIX, found).extras == ("ears",)  # type: ignore[arg-type]


@pytest.mark.skipif(sys.platform == "win32", reason="paths are written otherwise there")
def test_paths_are_written_from_the_folder_in_hand(tmp_path: Path) -> None:
    """As the README has them, when she types in the program's folder."""
    there = Installation(way=Way.PIP, prefix=tmp_path / ".venv", source=str(tmp_path))
    assert how_to_install("ears", there, folder=tmp_path) == ".venv/bin/python -m pip install '.[ears]'"
    assert how_to_install("", there, folder=tmp_path) == ".venv/bin/python -m pip install ."


@pytest.mark.skipif(sys.platform == "win32", reason="words are quoted otherwise there")
def test_a_shell_takes_the_hint_as_it_stands() -> None:
    """Blanks in a path and the brackets of the extra are quoted."""
    there = Installation(way=Way.PIP, prefix=Path("/home/my knitting"), source="/home/my wool")
    words = shlex.split(how_to_install("ears", there, folder=Path("/")))
    assert words == ["home/my knitting/bin/python", "-m", "pip", "install", "home/my wool[ears]"]


def test_the_program_at_hand_is_found() -> None:
    """Its own installation, whichever way it was put here, gives a command with the extra in it."""
    assert "[ears" in how_to_install("ears") or "ears]" in how_to_install("ears")
