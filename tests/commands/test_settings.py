"""`stepper settings`: her own settings, shown and opened."""

from __future__ import annotations

import sys
from pathlib import Path

import pytest

from stepper.commands.main import main
from stepper.commands.settings import editor_command, open_in_editor
from stepper.errors import SurroundingsError
from stepper.sitting.preferences import read_preferences


@pytest.fixture
def path(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Name a settings file of the test's own."""
    path = tmp_path / "deep" / "settings.toml"
    monkeypatch.setenv("STEPPER_SETTINGS", str(path))
    return path


def test_it_shows_where_they_are_and_what_is_in_force(path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Also without a file, which is not written by looking."""
    assert main(["settings"]) == 0
    told = capsys.readouterr().out
    assert str(path) in told
    assert "There is no such file yet" in told
    assert "# rate_wpm = 150" in told
    assert not path.exists()

    path.parent.mkdir()
    path.write_text("[voice]\nrate_wpm = 140\nrat = 1\n", encoding="utf-8")
    assert main(["settings"]) == 0
    told = capsys.readouterr().out
    assert "\nrate_wpm = 140" in told
    assert 'has no setting "rat"' in told


def test_opening_writes_a_first_file_and_starts_the_editor_on_it(
    path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """What the editor wrote is read at once, so that a slip is told while she is still there."""
    code = "import sys, pathlib; p = pathlib.Path(sys.argv[1]); p.write_text(p.read_text() + '[voices]\\n')"
    monkeypatch.setenv("VISUAL", f'{sys.executable} -c "{code}"')
    assert main(["settings", "--open"]) == 0
    assert "[voice]" in path.read_text(encoding="utf-8")
    assert 'there is no table [voices]; Did you mean "voice"?' in " ".join(capsys.readouterr().out.split())
    assert main(["settings", "--open"]) == 0
    assert path.read_text(encoding="utf-8").count("[voices]") == 2


def test_a_fresh_file_sets_nothing(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Everything in it stands behind a #."""
    monkeypatch.setenv("VISUAL", "true")
    assert main(["settings", "--open"]) == 0
    assert read_preferences(path) == read_preferences(path.with_name("none.toml"))


def test_an_editor_that_fails_is_told_with_the_file(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """She can open it herself then."""
    for command in ("no-such-editor-anywhere", "false"):
        with pytest.raises(SurroundingsError, match=command):
            open_in_editor(tmp_path / "s.toml", {"EDITOR": command}, "linux")


def test_each_system_has_its_editor(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    """What she set goes first; a system with none says so."""
    assert editor_command({"VISUAL": "code -w", "EDITOR": "vi"}, "linux") == ["code", "-w"]
    assert editor_command({}, "darwin") == ["open", "-W", "-t"]
    assert editor_command({}, "win32") == ["notepad"]
    monkeypatch.setenv("PATH", str(tmp_path))
    assert editor_command({"DISPLAY": ":0"}, "linux") == []
    with pytest.raises(SurroundingsError, match="EDITOR"):
        open_in_editor(tmp_path / "s.toml", {}, "linux")


def test_a_folder_that_cannot_be_made_is_told(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """One sentence and the code of the surroundings."""
    (tmp_path / "file").touch()
    monkeypatch.setenv("STEPPER_SETTINGS", str(tmp_path / "file" / "settings.toml"))
    assert main(["settings", "--open"]) == 4
    assert "cannot be written" in capsys.readouterr().err
