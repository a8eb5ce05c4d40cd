from __future__ import annotations

import pytest

from stepper.ears.settings import HearingSettings


@pytest.mark.parametrize("deaf_tail_s", [-0.1, 2.1])
def test_a_tail_out_of_range_is_refused(deaf_tail_s: float) -> None:
    """Ears that stay closed for long miss her, and the message gives the range."""
    with pytest.raises(ValueError, match="deaf_tail_s must be from 0 to 2 seconds"):
        HearingSettings(deaf_tail_s=deaf_tail_s)


@pytest.mark.parametrize("word", ["", "  "])
def test_an_address_word_is_a_word(word: str) -> None:
    """Behind nothing at all everything would be addressed."""
    with pytest.raises(ValueError, match="address_word must be a word"):
        HearingSettings(address_word=word)
