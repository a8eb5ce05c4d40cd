"""The knitter's own settings: one TOML file for all garments, in the user's settings folder.

```toml
[voice]                 # how it speaks: the fields of `SpeechSettings`
rate_wpm = 140
[ears]                  # how it listens: the fields of `HearingSettings`
device = "headset"
[care]                  # what it looks after: the fields of `CareSettings`
rest = false
silence_minutes = 10
[wordings]              # her own words for a cue, and the wording of the vocabulary that they stand for
"weiter bitte" = "next step"
```

A setting that cannot be followed is reported in a sentence and left at its default: no slip in the file keeps
her from knitting.
"""

from __future__ import annotations

import math
import os
import tomllib
from collections.abc import Mapping, Sequence
from dataclasses import field, fields, replace
from difflib import get_close_matches
from pathlib import Path
from typing import Any, Final, TypeVar, get_args

from stepper.ears.settings import HearingSettings, Listener
from stepper.files import read_plain
from stepper.language.understanding.understand import list_phrases
from stepper.mouth.settings import Engine, SpeechSettings
from stepper.records import dataclass
from stepper.sitting.user_folders import settings_folder

MOST_BYTES: Final = 100_000
"""Largest settings file that is read."""
MOST_REMARKS: Final = 20
"""Most settings of one file that are spoken of one by one."""
LONGEST_SILENCE_MINUTES: Final = 1440
TOO_MANY_DIGITS: Final = "a number in it has thousands of digits"
"""What is said of a file that TOML allows and Python does not read."""
_LONGEST_SHOWN: Final = 60
_TABLES = ("voice", "ears", "care", "wordings")


@dataclass(frozen=True, slots=True, kw_only=True)
class CareSettings:
    """What the program is to look after besides the knitting."""

    rest: bool = True
    """Whether it reminds her to rest her hands after fifty minutes, at the end of a round."""
    silence_minutes: float = 5.0
    """Time without a cue, beyond what the current step takes, after which it says the place; 0 for never.
    Range: 0 to 1,440. Unit: minutes."""

    def __post_init__(self) -> None:
        """Refuse an impossible time.

        Raises:
            ValueError: The time is out of its range.
        """
        if not 0 <= self.silence_minutes <= LONGEST_SILENCE_MINUTES:
            raise ValueError(
                f"silence_minutes must be from 0 to {LONGEST_SILENCE_MINUTES}, a whole day "
                f"(got {self.silence_minutes})."
            )


_Record = TypeVar("_Record", SpeechSettings, HearingSettings, CareSettings)


@dataclass(frozen=True, slots=True, kw_only=True)
class Preferences:
    """What the settings file says."""

    speech: SpeechSettings = field(default_factory=SpeechSettings)
    hearing: HearingSettings = field(default_factory=HearingSettings)
    care: CareSettings = field(default_factory=CareSettings)
    wordings: Mapping[str, str] = field(default_factory=dict)
    """The knitter's own wordings, each with the vocabulary's wording it stands for."""
    remarks: tuple[str, ...] = ()
    """A sentence for each setting that could not be followed."""


def settings_path() -> Path:
    """Return the path of the settings file.

    The variable `STEPPER_SETTINGS` names another file than the usual one.
    """
    named = os.environ.get("STEPPER_SETTINGS")
    return Path(named) if named else settings_folder() / "settings.toml"


def read_preferences(path: Path | None = None) -> Preferences:
    """Read the settings file; without one, everything is at its default.

    Args:
        path: The file; the user's own if None.
    """
    path = path if path is not None else settings_path()
    try:
        written = read_plain(path, MOST_BYTES).decode()
    except FileNotFoundError:
        return Preferences()
    except (OSError, UnicodeDecodeError) as error:
        why = error.strerror if isinstance(error, OSError) else "it is no text in UTF-8"
        return Preferences(remarks=(f"The settings in {path} cannot be read: {why}.",))
    try:
        return parse_preferences(tomllib.loads(written), str(path))
    except tomllib.TOMLDecodeError as error:
        return Preferences(remarks=(f"The settings in {path} cannot be read: {error}.",))
    except ValueError:
        return Preferences(remarks=(f"The settings in {path} cannot be read: {TOO_MANY_DIGITS}.",))
    except RecursionError:
        return Preferences(remarks=(f"The settings in {path} cannot be read: they are nested too deeply.",))


def parse_preferences(tables: Mapping[str, Any], name: str) -> Preferences:
    """Make preferences from the contents of a settings file.

    Args:
        tables: The parsed TOML file.
        name: What to call the file in a remark.
    """
    remarks = [
        f"{name}: there is no table [{show_value(table)}];{suggest_nearest(table, _TABLES)} they are "
        f"{', '.join(_TABLES)}."
        for table in tables
        if table not in _TABLES
    ]
    speech = _followed(SpeechSettings(), _table(tables, "voice", name, remarks), f"{name}: [voice]", remarks)
    hearing = _followed(HearingSettings(), _table(tables, "ears", name, remarks), f"{name}: [ears]", remarks)
    care = _followed(CareSettings(), _table(tables, "care", name, remarks), f"{name}: [care]", remarks)
    wordings = _wordings(_table(tables, "wordings", name, remarks), name, remarks)
    if len(remarks) > MOST_REMARKS:
        rest = f"{name}: {len(remarks) - MOST_REMARKS} more settings cannot be followed."
        remarks = [*remarks[:MOST_REMARKS], rest]
    return Preferences(speech=speech, hearing=hearing, care=care, wordings=wordings, remarks=tuple(remarks))


def _table(tables: Mapping[str, Any], table: str, name: str, remarks: list[str]) -> Mapping[str, Any]:
    found = tables.get(table, {})
    if isinstance(found, Mapping):
        return found
    remarks.append(f"{name}: {table} must be a table: write [{table}] on a line of its own.")
    return {}


def _followed(record: _Record, table: Mapping[str, Any], where: str, remarks: list[str]) -> _Record:
    """Adopt the settings one by one, so that a bad one costs only itself."""
    usual = {each.name: getattr(record, each.name) for each in fields(record)}
    for key, value in table.items():
        if key not in usual:
            remarks.append(f'{where} has no setting "{show_value(key)}".{suggest_nearest(key, tuple(usual))}')
            continue
        wanted = type(usual[key])
        fits = isinstance(value, wanted) and (wanted is bool or not isinstance(value, bool))
        if wanted is float and isinstance(value, int) and not isinstance(value, bool):
            value, fits = float(value) if abs(value) < 1e9 else math.inf, True
        if not fits:
            remarks.append(f"{where} {key} must be {_KINDS[wanted]} (got {quote_value(value)}).")
        elif key in _CHOICES and value not in _CHOICES[key]:
            choices = ", ".join(_CHOICES[key])
            remarks.append(f'{where} {key} must be one of {choices} (got "{show_value(value)}").')
        else:
            try:
                record = replace(record, **{key: value})
            except ValueError as error:
                remarks.append(f"{where} {error}")
    return record


_CHOICES: dict[str, tuple[str, ...]] = {"engine": get_args(Engine), "recogniser": get_args(Listener)}

_KINDS: dict[type, str] = {
    bool: "true or false",
    int: "a whole number",
    float: "a number",
    str: "text in quotes",
    tuple: "a list",
}


def _wordings(table: Mapping[str, Any], name: str, remarks: list[str]) -> dict[str, str]:
    known = frozenset(list_phrases())
    wordings = {}
    for mine, meant in table.items():
        if not isinstance(meant, str) or meant not in known:
            # Comparing with every wording takes a while; who has that many wrong needs another remedy.
            near = suggest_nearest(show_value(meant), tuple(known)) if len(remarks) < MOST_REMARKS else ""
            said, stands_for = show_value(mine), show_value(meant)
            what = f'[wordings] "{said}" stands for "{stands_for}", which is no wording I know.'
            remarks.append(f"{name}: {what}{near}")
        else:
            wordings[mine] = meant
    return wordings


def show_value(value: object) -> str:
    """Return a value of a settings file as it is told: text on one line, the rest as Python writes it."""
    return _cut(" ".join(value.split())) if isinstance(value, str) else quote_value(value)


def quote_value(value: object) -> str:
    """Return a value of a settings file as Python writes it, text in quotes."""
    try:
        return _cut(repr(value))
    except (ValueError, RecursionError):
        return "something too large to show"


def _cut(text: str) -> str:
    return text if len(text) <= _LONGEST_SHOWN else f"{text[:_LONGEST_SHOWN]}…"


def suggest_nearest(word: str, known: Sequence[str]) -> str:
    """Return a question asking whether the nearest known word was meant; empty if none is near."""
    near = get_close_matches(word, known, n=1) if len(word) <= 2 * _LONGEST_SHOWN else []
    return f' Did you mean "{near[0]}"?' if near else ""
