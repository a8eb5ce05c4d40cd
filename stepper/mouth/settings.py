"""How the program is to speak. No I/O."""

from __future__ import annotations

from typing import Literal

from stepper.records import dataclass

Engine = Literal["auto", "espeak", "natural", "pyttsx3", "none"]
"""Which voice speaks: whichever suits the system, eSpeak NG, the natural voice of the extra `natural`, the
system's own voices, or none."""

SLOWEST_WPM = 80
FASTEST_WPM = 400
"""Range of speeds that every engine follows. Unit: words per minute."""

SLOWER_SHARE = 0.8
"""Speed of a repeated line, as a share of the usual speed."""


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
        """Return the speed of a line.

        Args:
            slower: Whether the line is repeated.

        Returns:
            Unit: words per minute. Range: 80 to 400.
        """
        return max(SLOWEST_WPM, round(self.rate_wpm * SLOWER_SHARE)) if slower else self.rate_wpm
