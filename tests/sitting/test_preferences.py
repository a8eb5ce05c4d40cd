from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.sitting.preferences import Preferences, parse_preferences, read_preferences, settings_path
from stepper.sitting.user_folders import settings_folder


def written(folder: Path, text: str) -> Path:
    """Write a settings file."""
    path = folder / "settings.toml"
    path.write_text(text, encoding="utf-8")
    return path


def test_without_a_file_everything_is_as_usual(tmp_path: Path) -> None:
    """Nobody has to write settings."""
    assert read_preferences(tmp_path / "none.toml") == Preferences()


def test_the_reminder_to_rest_is_off_with_one_setting(tmp_path: Path) -> None:
    """It is on unless she says otherwise."""
    assert read_preferences(tmp_path / "none.toml").care.rest
    assert not read_preferences(written(tmp_path, "[care]\nrest = false\n")).care.rest


def test_what_is_written_is_followed(tmp_path: Path) -> None:
    """Rate, volume, voice, devices, sounds and her own wordings come from the file."""
    found = read_preferences(
        written(
            tmp_path,
            '[voice]\nrate_wpm = 130\nvolume = 1\nvoice = "en-us"\ndevice = "headset"\n'
            '[ears]\ndevice = "clip"\nsounds = false\n[wordings]\n"weiter bitte" = "next step"\n',
        )
    )
    assert found.remarks == ()
    assert (found.speech.rate_wpm, found.speech.volume, found.speech.voice) == (130, 1.0, "en-us")
    assert (found.speech.device, found.hearing.device, found.hearing.sounds) == ("headset", "clip", False)
    assert found.wordings == {"weiter bitte": "next step"}


@pytest.mark.parametrize(
    ("text", "remark"),
    [
        ("[voice]\nrate_wpm = 900", "80 to 400"),
        ('[voice]\nrate_wpm = "fast"', "must be a whole number"),
        ("[voice]\nrate_wpm = true", "must be a whole number"),
        ('[voice]\nengine = "shout"', "must be one of auto"),
        ("[voice]\nrate = 3", 'no setting "rate"'),
        ("[ears]\ndeaf_tail_s = 9", "0 to 2 seconds"),
        ("[eras]\nsounds = true", 'Did you mean "ears"?'),
        ('voice = "en"', "must be a table"),
        ('[wordings]\n"weiter" = "next stop"', 'Did you mean "next step"?'),
        ("[voice\n", "cannot be read"),
    ],
)
def test_a_setting_that_cannot_be_followed_is_one_sentence_and_costs_only_itself(
    tmp_path: Path, text: str, remark: str
) -> None:
    """A slip in the settings never keeps her from knitting, and names the place."""
    found = read_preferences(written(tmp_path, text))
    assert [remark in each for each in found.remarks] == [True]
    assert "settings.toml" in found.remarks[0]
    assert (found.speech, found.hearing) == (Preferences().speech, Preferences().hearing)


def test_a_file_that_is_no_text_is_one_sentence(tmp_path: Path) -> None:
    """Bytes that are no UTF-8 are named."""
    path = tmp_path / "settings.toml"
    path.write_bytes(b"\xff\xfe\x00")
    assert "no text in UTF-8" in read_preferences(path).remarks[0]


_VALUES = st.recursive(
    st.booleans() | st.integers() | st.floats() | st.text(), lambda inner: st.lists(inner), max_leaves=3
)


@given(st.dictionaries(st.sampled_from(["voice", "ears", "wordings", "x"]), st.dictionaries(st.text(), _VALUES)))
def test_whatever_a_file_holds_settings_come_of_it(tables: dict[str, dict[str, object]]) -> None:
    """No content of a settings file ends the program."""
    assert parse_preferences(tables, "settings.toml").speech == Preferences().speech


def test_settings_lie_in_the_folder_of_the_system_or_where_she_says(monkeypatch: pytest.MonkeyPatch) -> None:
    """A variable of ours goes before."""
    monkeypatch.delenv("STEPPER_SETTINGS", raising=False)
    assert settings_path() == settings_folder() / "settings.toml"
    monkeypatch.setenv("STEPPER_SETTINGS", "/mine")
    assert settings_path() == Path("/mine")
