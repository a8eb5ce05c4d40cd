"""How the program is to speak and to listen. No I/O."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

Engine = Literal["auto", "espeak", "natural", "pyttsx3", "none"]
"""Which voice speaks: what suits the system, eSpeak NG, the natural voice of the extra `natural`, the
system's own voices, or nobody."""

SLOWEST_WPM = 80
FASTEST_WPM = 400
"""Range of speed in which every engine does as it is told. Unit: words per minute."""

SLOWER_SHARE = 0.8
"""Speed of a line that is said again, as a share of the usual speed."""


@dataclass(frozen=True, slots=True, kw_only=True)
class SpeechSettings:
    """How the program is to speak; every field has a value that suits most people.

    Raises:
        ValueError: A speed or a volume is out of its range.
    """

    engine: Engine = "auto"
    voice: str = ""
    """Name of the voice as its engine knows it; empty for the engine's usual English."""
    rate_wpm: int = 150
    """Unit: words per minute. Range: 80 to 400. At 150 a line of twelve words takes about 4.8 s."""
    volume: float = 1.0
    """Range: 0 (silent) to 1 (as loud as the voice is meant to be)."""
    device: str = ""
    """Part of the name of the sound device to speak through; empty for the usual one."""

    def __post_init__(self) -> None:
        if not SLOWEST_WPM <= self.rate_wpm <= FASTEST_WPM:
            raise ValueError(
                f"rate_wpm must be from {SLOWEST_WPM} to {FASTEST_WPM} words a minute (got {self.rate_wpm})."
            )
        if not 0 <= self.volume <= 1:
            raise ValueError(f"volume must be from 0 to 1 (got {self.volume}).")

    def words_per_minute(self, *, slower: bool) -> int:
        """Give the speed of a line.

        Args:
            slower: Whether the line is said again.

        Returns:
            Unit: words per minute. Range: 80 to 400.
        """
        return max(SLOWEST_WPM, round(self.rate_wpm * SLOWER_SHARE)) if slower else self.rate_wpm


Listener = Literal["auto", "bundled", "vosk"]
"""Which recogniser listens."""


@dataclass(frozen=True, slots=True, kw_only=True)
class HearingSettings:
    """How the program is to listen; every field has a value that suits most people.

    Raises:
        ValueError: A time is out of its range, or the address word is empty.
    """

    listen: bool = True
    """Whether the full screen listens without being asked to, where the ears are installed."""
    device: str = ""
    """Part of the name of the microphone to listen through; empty for the usual one."""
    sounds: bool = True
    """Whether a soft tone says that a cue was heard, and another that it was not understood."""
    know_voice: bool = True
    """Whether voices other than hers are refused, once hers is known (`stepper voice enrol`)."""
    deaf_tail_s: float = 0.35
    """How long the ears stay closed after the last word of the program's own. Range: 0 to 2. Unit: s."""
    recogniser: Listener = "auto"
    """What makes words of sound: what is there, the bundled one, or Vosk with a model of its own."""
    model: str = ""
    """Name of the Vosk model, or the path of its folder; empty for the first that is found."""
    vocabulary: str = ""
    """A vocabulary file for cues in another language: a path, or its name beside the settings; empty for
    English."""
    address: bool = False
    """Whether a cue has to begin with the address word from the start, as while a film is on."""
    address_word: str = "stepper"
    """The word or words in front of a cue while that is asked for; two syllables at least."""

    def __post_init__(self) -> None:
        if not 0 <= self.deaf_tail_s <= 2:
            raise ValueError(f"deaf_tail_s must be from 0 to 2 seconds (got {self.deaf_tail_s}).")
        if not self.address_word.strip():
            raise ValueError("address_word must be a word.")
