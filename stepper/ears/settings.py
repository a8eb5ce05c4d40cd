"""How the program is to listen. No I/O."""

from __future__ import annotations

from typing import Literal

from stepper.records import dataclass

Listener = Literal["auto", "bundled", "vosk"]
"""Which recogniser listens."""


@dataclass(frozen=True, slots=True, kw_only=True)
class HearingSettings:
    """How the program is to listen; every field has a value that suits most people.

    Raises:
        ValueError: A time is out of its range, or the address word is empty.
    """

    listen: bool = True
    """Whether the full screen listens without being asked to, if the ears are installed."""
    device: str = ""
    """Part of the name of the microphone to listen through; empty for the usual one."""
    interrupt: bool = False
    """Whether the program stops speaking as soon as she speaks, and listens; keys always stop it."""
    sounds: bool = True
    """Whether a soft tone says that a cue was heard, and another that it was not understood."""
    know_voice: bool = True
    """Whether what is surely hers is heard more readily, and what is surely not is refused without the
    address word, once her voice is known (`stepper voice enrol`)."""
    deaf_tail_s: float = 0.35
    """How long the ears stay closed after the program's own last word. Range: 0 to 2. Unit: s."""
    recogniser: Listener = "auto"
    """What turns sound into words: whichever is installed, the bundled one, or Vosk with a model of its
    own."""
    model: str = ""
    """Name of the Vosk model, or the path of its folder; empty for the first that is found."""
    vocabulary: str = ""
    """A vocabulary file for cues in another language: a path, or its name beside the settings; empty for
    English."""
    address: bool = False
    """Whether a cue has to begin with the address word from the start, as while a film is on."""
    address_word: str = "stepper"
    """The word or words in front of a cue while that is asked for; at least two syllables."""

    def __post_init__(self) -> None:
        if not 0 <= self.deaf_tail_s <= 2:
            raise ValueError(f"deaf_tail_s must be from 0 to 2 seconds (got {self.deaf_tail_s}).")
        if not self.address_word.strip():
            raise ValueError("address_word must be a word.")
