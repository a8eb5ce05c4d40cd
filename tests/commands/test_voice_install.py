from __future__ import annotations

import hashlib
import os
import zipfile
from importlib.util import find_spec
from pathlib import Path

import pytest

from stepper.commands.voice_install import install
from stepper.errors import SurroundingsError
from tests.ears.server import FileServer
from tests.ears.test_vosk_model import model


def fine(folder: Path) -> None:
    """Take any model for one that loads."""


def packed(path: Path, top: str = "small-model/") -> Path:
    """Pack what looks like a model."""
    whole = model(path.parent / "to-pack")
    with zipfile.ZipFile(path, "w") as made:
        for each in sorted(whole.rglob("*")):
            if each.is_file():
                made.write(each, f"{top}{each.relative_to(whole)}")
    return path


def names(folder: Path) -> list[str]:
    """List a folder, hidden things too."""
    return sorted(each.name for each in folder.iterdir())


def test_a_folder_is_copied(tmp_path: Path) -> None:
    """Under its own name; the one it came from stays."""
    source, models = model(tmp_path / "mine"), tmp_path / "models"
    assert install(str(source), models, check=fine) == models / "mine"
    assert names(models) == ["mine"]
    assert source.is_dir()


def test_an_archive_is_unpacked_and_its_checksum_shown(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """By the name of the folder in it, or its own where it has none; hashlib gives the checksum."""
    models = tmp_path / "models"
    source = packed(tmp_path / "a.zip")
    checksum = hashlib.sha256(source.read_bytes()).hexdigest()
    assert install(str(source), models, sha256=checksum.upper(), check=fine) == models / "small-model"
    assert checksum in capsys.readouterr().out
    assert install(str(packed(tmp_path / "bare.zip", "")), models, check=fine) == models / "bare"
    assert names(models) == ["bare", "small-model"]


def test_an_address_is_fetched_and_a_cut_fetch_goes_on(tmp_path: Path) -> None:
    """The second try brings the rest; nothing but the model is left."""
    models = tmp_path / "models"
    server = FileServer()
    server.content = packed(tmp_path / "a.zip").read_bytes()
    with server.running():
        server.cut_after = len(server.content) // 2
        with pytest.raises(SurroundingsError, match="What came in is kept"):
            install(f"{server.address}/small%20one.zip", models, check=fine)
        assert install(f"{server.address}/small%20one.zip", models, check=fine) == models / "small-model"
    assert server.asked[1].startswith("bytes=")
    assert names(models) == ["small-model"]


def test_what_is_wrong_is_said_and_leaves_nothing_behind(tmp_path: Path) -> None:
    """No such file, no archive, no model in it, half a model, another checksum, one that does not load."""
    models = tmp_path / "models"
    (tmp_path / "text.zip").write_text("hello")
    with zipfile.ZipFile(tmp_path / "other.zip", "w") as made:
        made.writestr("notes/readme.txt", "hello")
    half = model(tmp_path / "half")
    (half / "am" / "final.mdl").unlink()

    def broken(folder: Path) -> None:
        raise SurroundingsError("it does not load")

    whole = str(packed(tmp_path / "a.zip"))
    for source, sha256, check, sentence in (
        (str(tmp_path / "nowhere"), None, fine, "no file or folder"),
        (str(tmp_path / "text.zip"), None, fine, "no zip archive"),
        (str(tmp_path / "other.zip"), None, fine, "holds no Vosk model"),
        (str(tmp_path), None, fine, "is not a Vosk model"),
        (str(half), None, fine, "final.mdl missing"),
        (whole, "0" * 64, fine, "not the one asked for"),
        (whole, None, broken, "does not load"),
    ):
        with pytest.raises(SurroundingsError, match=sentence):
            install(source, models, sha256=sha256, check=check)
        assert names(models) == [], source


def test_plain_http_without_a_checksum_is_warned_of_and_with_one_is_not(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Anyone on the way can exchange what comes in; a checksum tells."""
    server = FileServer()
    server.content = packed(tmp_path / "a.zip").read_bytes()
    with server.running():
        install(f"{server.address}/a.zip", tmp_path / "models", check=fine)
        assert "comes in without encryption" in capsys.readouterr().err
        whole = hashlib.sha256(server.content).hexdigest()
        install(f"{server.address}/a.zip", tmp_path / "others", sha256=whole, check=fine)
        assert "without encryption" not in capsys.readouterr().err


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="this system has no pipes with a name")
def test_a_pipe_is_no_archive_and_is_not_waited_for(tmp_path: Path) -> None:
    """Nobody may ever write into it."""
    os.mkfifo(tmp_path / "a.zip")
    with pytest.raises(SurroundingsError, match=r"a\.zip is no plain file\.$"):
        install(str(tmp_path / "a.zip"), tmp_path / "models", check=fine)


def test_a_model_that_is_there_is_kept_unless_she_says_otherwise(tmp_path: Path) -> None:
    """And is there even when its successor turns out to be none."""
    models, source = tmp_path / "models", packed(tmp_path / "a.zip")
    place = install(str(source), models, check=fine)
    (place / "mine").write_text("")
    with pytest.raises(SurroundingsError, match="exists already"):
        install(str(source), models, check=fine)
    assert (place / "mine").exists()
    install(str(source), models, replace=True, check=fine)
    assert not (place / "mine").exists()
    assert names(models) == ["small-model"]


@pytest.mark.skipif(find_spec("vosk") is None, reason="Vosk is not installed")
def test_a_model_that_does_not_load_is_not_installed(tmp_path: Path) -> None:
    """The right names with nonsense inside, tried in earnest."""
    with pytest.raises(SurroundingsError, match="damaged or not complete"):
        install(str(model(tmp_path / "mine")), tmp_path / "models")
    assert names(tmp_path / "models") == []
