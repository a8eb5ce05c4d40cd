"""Cues in a language other than English: a vocabulary file maps what is said to the English wording.

```toml
[phrases]               # what is said, and the wording of the vocabulary that it stands for
"weiter bitte" = "next step"
[counts]                # the same for wordings with a number in them
"es sind {number}" = "count is {number}"
[numbers]               # each number as it is said; those that are left out cannot be heard
"sechsundvierzig" = 46
```

What is heard is passed on in English, so that nothing beyond the ears knows of another language. Answers are
in English.
"""

from __future__ import annotations

import re
import tomllib
from collections.abc import Callable, Mapping
from pathlib import Path
from typing import Any, Final

from stepper.ears.wordings import Frame, Wordings
from stepper.errors import SurroundingsError
from stepper.files import read_plain
from stepper.language.understanding.understand import list_phrases
from stepper.language.understanding.vocabulary import VOCABULARY
from stepper.records import dataclass
from stepper.sitting.preferences import TOO_MANY_DIGITS, quote_value, show_value, suggest_nearest
from stepper.sitting.recogniser_wordings import meaning_of

MOST_BYTES: Final = 1_000_000
"""Largest vocabulary file that is read."""
_SLOT: Final = "{number}"
_LARGEST: Final = 9999


@dataclass(frozen=True, slots=True, kw_only=True)
class OtherLanguage:
    """What is said, in lower case, and what it stands for in English."""

    phrases: Mapping[str, str]
    counts: Mapping[str, str]
    """Each side has one place for a number."""
    numbers: Mapping[str, int]

    def english(self, text: str) -> str | None:
        """Return what was heard in English; None if it is not a complete cue."""
        if text in self.phrases:
            return self.phrases[text]
        for said, meant in self.counts.items():
            match = re.fullmatch(re.escape(said).replace(re.escape(_SLOT), "(.+)"), text)
            if match and match[1] in self.numbers:
                return meant.replace(_SLOT, str(self.numbers[match[1]]))
        return None

    def wordings(self) -> Wordings:
        """List what can be said in a session; names of sections and labels are left out."""
        rows = {spoken: row for row in VOCABULARY for spoken in (*row.spoken, *row.typed)}
        return Wordings(
            phrases={said: meaning_of(rows[meant]) for said, meant in self.phrases.items()},
            frames=tuple(
                Frame(before=before.strip(), after=after.strip(), means=meaning_of(rows[meant]))
                for said, meant in self.counts.items()
                for before, after in [said.split(_SLOT)]
            ),
            numbers=self.numbers,
            known=lambda text: self.english(text) is not None,
            english=lambda text: self.english(text) or text,
        )


def read_vocabulary(path: Path, own: Mapping[str, str] | None = None) -> OtherLanguage:
    """Read a vocabulary file.

    Args:
        path: The file.
        own: The knitter's own wordings besides those of the file, each with the English wording it stands
            for.

    Raises:
        SurroundingsError: It cannot be read, or a line of it cannot be used; the message says which.
    """
    try:
        tables = tomllib.loads(read_plain(path, MOST_BYTES).decode())
    except OSError as error:
        raise SurroundingsError(f"The vocabulary {path} cannot be read: {error.strerror}.") from error
    except UnicodeDecodeError as error:
        raise SurroundingsError(f"The vocabulary {path} cannot be read: it is no text in UTF-8.") from error
    except tomllib.TOMLDecodeError as error:
        raise SurroundingsError(f"The vocabulary {path} cannot be read: {error}.") from error
    except ValueError as error:
        raise SurroundingsError(f"The vocabulary {path} cannot be read: {TOO_MANY_DIGITS}.") from error
    except RecursionError as error:
        raise SurroundingsError(f"The vocabulary {path} cannot be read: it is nested too deeply.") from error

    def refuse(what: str) -> SurroundingsError:
        return SurroundingsError(f"The vocabulary {path} cannot be followed: {what}")

    for name in tables:
        if name not in ("phrases", "counts", "numbers"):
            raise refuse(f"there is no table [{show_value(name)}]; they are phrases, counts, numbers.")
    found = OtherLanguage(
        phrases={**_wordings(tables, "phrases", 0, refuse), **_plain(own or {})},
        counts=_wordings(tables, "counts", 1, refuse),
        numbers=_numbers(tables, refuse),
    )
    if found.counts and not found.numbers:
        raise refuse("it has [counts] and no [numbers].")
    if not found.phrases and not found.counts:
        raise refuse("it has no wording.")
    return found


_Refusal = Callable[[str], SurroundingsError]


def _wordings(tables: Mapping[str, Any], name: str, slots: int, refuse: _Refusal) -> dict[str, str]:
    known = [phrase for phrase in list_phrases() if phrase.count("{") == phrase.count(_SLOT) == slots]
    found = {}
    for said, meant in _table(tables, name, refuse).items():
        if meant not in known:
            hint, meant = suggest_nearest(show_value(meant), known), show_value(meant)
            said = show_value(said)
            raise refuse(f'[{name}] "{said}" stands for "{meant}", which is no such wording.{hint}')
        if said.count(_SLOT) != slots or not said.replace(_SLOT, "").strip():
            place = f"one place {_SLOT} for a number and a word around it" if slots else "words and no number"
            raise refuse(f'[{name}] "{show_value(said)}" must have {place}.')
        found[_as_heard(said)] = meant
    return found


def _numbers(tables: Mapping[str, Any], refuse: _Refusal) -> dict[str, int]:
    found = {}
    for said, value in _table(tables, "numbers", refuse).items():
        if isinstance(value, bool) or not isinstance(value, int) or not 0 <= value <= _LARGEST:
            told = f'[numbers] "{show_value(said)}" must be a whole number from 0 to {_LARGEST}'
            raise refuse(f"{told} (got {quote_value(value)}).")
        if not said.strip():
            raise refuse(f"[numbers] {value} has no word.")
        found[_as_heard(said)] = value
    return found


def _table(tables: Mapping[str, Any], name: str, refuse: _Refusal) -> Mapping[str, Any]:
    table = tables.get(name, {})
    if not isinstance(table, Mapping):
        raise refuse(f"{name} must be a table: write [{name}] on a line of its own.")
    return table


def _plain(own: Mapping[str, str]) -> dict[str, str]:
    return {_as_heard(said): meant for said, meant in own.items() if "{" not in meant}


def _as_heard(text: str) -> str:
    return " ".join(text.casefold().split())
