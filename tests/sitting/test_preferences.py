from __future__ import annotations

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from stepper.sitting.preferences import (
    CareSettings,
    Preferences,
    parse_preferences,
    read_preferences,
    settings_path,
)
from stepper.sitting.user_folders import settings_folder
from tests.waiting import processor_s, usual_s


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


@pytest.mark.parametrize(
    "written",
    [
        *("silence_minutes = inf", "silence_minutes = nan", "silence_minutes = 1e308"),
        *("silence_minutes = 0x" + "f" * 6000, "silence_minutes = -1", "silence_minutes = " + "9" * 5000),
        *("rest = " + "[" * 5000 + "]" * 5000, "rest" + ".a" * 3000 + " = 1", "x = 0x" + "f" * 6000),
        "\n".join(f"x{n} = 1" for n in range(500)),
    ],
    ids=lambda text: text[:24],
)
def test_infinite_huge_and_deep_values_are_told_and_left_out(written: str, tmp_path: Path) -> None:
    """None of them keeps her from knitting, and none is told at a length that nobody reads."""
    path = tmp_path / "settings.toml"
    path.write_text(f"[care]\n{written}\n", encoding="utf-8")
    found = read_preferences(path)
    assert found.care == CareSettings()
    assert 1 <= len(found.remarks) <= 21
    assert all(len(remark) < 300 + len(str(path)) for remark in found.remarks)


def test_a_number_of_thousands_of_digits_is_told_in_her_words(tmp_path: Path) -> None:
    """TOML allows it, Python does not read it, and its own complaint names a function of Python's."""
    path = tmp_path / "settings.toml"
    path.write_text("[care]\nsilence_minutes = " + "9" * 5000, encoding="utf-8")
    assert read_preferences(path).remarks == (
        f"The settings in {path} cannot be read: a number in it has thousands of digits.",
    )


def test_settings_too_large_or_no_plain_file_are_told(tmp_path: Path) -> None:
    """Reading them would take the memory or the evening."""
    path = tmp_path / "settings.toml"
    path.write_bytes(b"#" * 100_001)
    assert "larger than 100,000 bytes" in read_preferences(path).remarks[0]
    path.unlink()
    path.mkdir()
    assert "cannot be read" in read_preferences(path).remarks[0]


def test_hundreds_of_wrong_wordings_take_no_time(tmp_path: Path) -> None:
    """The nearest known wording is looked for a few times only."""
    path = tmp_path / "settings.toml"
    path.write_text("[wordings]\n" + "\n".join(f'"a{n}" = "go sideways {n}"' for n in range(3000)), encoding="utf-8")
    assert len(read_preferences(path).remarks) == 21
    assert processor_s(lambda: read_preferences(path)) < usual_s(2)
