from __future__ import annotations

import pytest

from stepper.mouth.settings import SpeechSettings


@pytest.mark.parametrize("rate_wpm", [79, 401, 0, -150])
def test_a_speed_out_of_range_is_refused(rate_wpm: int) -> None:
    """A voice is not asked for what it cannot do, and the message gives the range."""
    with pytest.raises(ValueError, match=r"80 to 400 .*got"):
        SpeechSettings(rate_wpm=rate_wpm)


@pytest.mark.parametrize("volume", [-0.1, 1.1])
def test_a_volume_out_of_range_is_refused(volume: float) -> None:
    """Loudness is a share of full loudness."""
    with pytest.raises(ValueError, match="volume must be from 0 to 1"):
        SpeechSettings(volume=volume)


def test_a_line_said_again_is_slower_but_not_too_slow_to_say() -> None:
    """Slower stays within what the voices can do."""
    assert SpeechSettings().words_per_minute(slower=False) == 150
    assert SpeechSettings().words_per_minute(slower=True) == 120
    assert SpeechSettings(rate_wpm=80).words_per_minute(slower=True) == 80
