"""The settings file as it is shown and as it is first written: every setting with what it does."""

from __future__ import annotations

import json
from collections.abc import Iterator, Mapping
from dataclasses import fields
from typing import Final, get_args

from stepper.ears.settings import Listener
from stepper.mouth.settings import Engine
from stepper.sitting.preferences import Preferences


def _one_of(choices: tuple[str, ...]) -> str:
    return f"{', '.join(choices[:-1])} or {choices[-1]}"


EXPLAINED: Final[Mapping[str, str]] = {
    "voice.engine": _one_of(get_args(Engine)),
    "voice.voice": "name of the voice; empty for the usual English",
    "voice.rate_wpm": "words a minute, 80 to 400",
    "voice.volume": "0 to 1",
    "voice.device": "part of the name of the loudspeaker; stepper voice lists them",
    "ears.listen": "whether the full screen listens without being asked to",
    "ears.device": "part of the name of the microphone",
    "ears.interrupt": "stop speaking as soon as you speak, and listen",
    "ears.sounds": "soft tones that say whether a cue was understood",
    "ears.know_voice": "go by your voice, once it is enrolled",
    "ears.deaf_tail_s": "how long the ears stay closed after the program spoke, 0 to 2 s",
    "ears.recogniser": _one_of(get_args(Listener)),
    "ears.model": "name of a Vosk model; empty for the first there is",
    "ears.vocabulary": "file of cues in another language",
    "ears.address": "ask for the address word from the start",
    "ears.address_word": "the word in front of a cue while a film is on",
    "care.rest": "be reminded to rest your hands",
    "care.silence_minutes": "silence after which the place is said; 0 for never",
}
"""Every setting by table and name, with what it does."""


def settings_lines(mine: Preferences) -> Iterator[str]:
    """Write the settings in force as a settings file; what is as usual stands behind a #.

    Args:
        mine: Her settings; those without a file for a file to begin with.
    """
    yield "# A line without # before it is your own setting; all others are as usual."
    for table, own in (("voice", mine.speech), ("ears", mine.hearing), ("care", mine.care)):
        yield ""
        yield f"[{table}]"
        usual = type(own)()
        for each in fields(own):
            value = getattr(own, each.name)
            mark = "# " if value == getattr(usual, each.name) else ""
            # A string of JSON is one of TOML, and so are its numbers and truth values.
            written = f"{mark}{each.name} = {json.dumps(value, ensure_ascii=False)}"
            yield f"{written:<28}  # {EXPLAINED[f'{table}.{each.name}']}"
    yield ""
    yield "[wordings]"
    if not mine.wordings:
        yield '# "on we go" = "next step"      # your own words for a cue'
    for words, meant in mine.wordings.items():
        yield f"{json.dumps(words, ensure_ascii=False)} = {json.dumps(meant, ensure_ascii=False)}"
