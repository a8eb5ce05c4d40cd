from __future__ import annotations

from pathlib import Path

import pytest

from stepper.commands.main import main
from stepper.commands.voice import PARTS
from tests.ears.test_vosk_model import model


def test_what_there_is_is_told(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """Recognisers and models, those of the folder and those of hers."""
    monkeypatch.setenv("STEPPER_DATA", str(tmp_path / "data"))
    monkeypatch.setenv("STEPPER_SETTINGS", str(tmp_path / "settings.toml"))
    monkeypatch.chdir(tmp_path)
    model(tmp_path / "data" / "models" / "one")
    model(tmp_path / "models" / "two")
    assert main(["voice"]) == 0
    told = capsys.readouterr().out
    assert "bundled recogniser" in told
    assert "Microphones: " in told
    assert "Loudspeakers: " in told
    assert "Every voice is heard" in told
    assert str(tmp_path / "data" / "models" / "one") in told
    assert str(Path("models/two")) in told


@pytest.mark.parametrize("part", PARTS)
def test_every_part_explains_itself(part: str, capsys: pytest.CaptureFixture[str]) -> None:
    """With what it takes."""
    with pytest.raises(SystemExit) as ended:
        main(["voice", part, "--help"])
    assert ended.value.code == 0
    assert part in capsys.readouterr().out


def test_a_model_that_is_none_is_refused_in_a_sentence(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    """With the exit code of the surroundings."""
    monkeypatch.setenv("STEPPER_DATA", str(tmp_path / "data"))
    assert main(["voice", "install", str(tmp_path)]) == 4
    assert "is not a Vosk model" in capsys.readouterr().err
