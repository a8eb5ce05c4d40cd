from __future__ import annotations

import tomllib
from dataclasses import fields

from stepper.ears.settings import HearingSettings
from stepper.mouth.settings import SpeechSettings
from stepper.sitting.preferences import CareSettings, Preferences, parse_preferences
from stepper.sitting.settings_page import EXPLAINED, settings_lines

TABLES = {"voice": SpeechSettings, "ears": HearingSettings, "care": CareSettings}


def test_every_setting_is_explained_and_no_other() -> None:
    """What the page does not name will not be found."""
    there = {f"{table}.{each.name}" for table, record in TABLES.items() for each in fields(record)}
    assert set(EXPLAINED) == there


def test_a_first_file_changes_nothing() -> None:
    """It can be opened and closed without harm."""
    text = "\n".join(settings_lines(Preferences()))
    mine = parse_preferences(tomllib.loads(text), "settings.toml")
    assert mine == Preferences()


def test_what_is_shown_is_what_is_read_again() -> None:
    """Her own settings and words come back from the page as they were."""
    mine = Preferences(
        speech=SpeechSettings(rate_wpm=140, device='a "big" one'),
        hearing=HearingSettings(sounds=False),
        care=CareSettings(silence_minutes=0.5),
        wordings={"weiter bitte": "next step"},
    )
    lines = list(settings_lines(mine))
    again = parse_preferences(tomllib.loads("\n".join(lines)), "settings.toml")
    assert again == mine
    assert any(line.startswith("rate_wpm = 140 ") for line in lines)
    assert any(line.startswith("# volume = 1.0 ") for line in lines)


def test_with_every_comment_taken_off_it_is_a_settings_file() -> None:
    """Each line behind a # is one that works when the # goes."""
    text = "\n".join(line.removeprefix("# ") if " = " in line else line for line in settings_lines(Preferences()))
    assert parse_preferences(tomllib.loads(text), "settings.toml").remarks == ()
