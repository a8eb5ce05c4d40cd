"""`stepper spread`: the answer on the spot."""

from __future__ import annotations

import pytest

from stepper.commands.main import main


def test_an_increase_is_spread_evenly(capsys: pytest.CaptureFixture[str]) -> None:
    """204 to 240: 36 increases, 24 gaps of 6 and 12 of 5. Source: 204 = 36 × 5 + 24."""
    assert main(["spread", "204", "to", "240"]) == 0
    assert "36 increases, gaps 24 of 6, 12 of 5" in capsys.readouterr().out


def test_an_impossible_change_is_refused_with_the_numbers(capsys: pytest.CaptureFixture[str]) -> None:
    """10 stitches carry at most 5 decreases of two."""
    assert main(["spread", "10", "to", "2"]) == 1
    assert "at most 5" in capsys.readouterr().err


def test_nothing_to_change_is_said(capsys: pytest.CaptureFixture[str]) -> None:
    """As many as there are."""
    assert main(["spread", "80", "to", "80"]) == 0
    assert "nothing to change" in capsys.readouterr().out


def test_a_count_that_must_be_a_multiple_offers_the_nearest_with_their_cost(
    capsys: pytest.CaptureFixture[str],
) -> None:
    """Source: check-values 6.5: 209 at 22 to 10 cm; 204 is 5 off, 216 is 7 off."""
    assert main(["spread", "180", "to", "209", "--multiple", "12", "--gauge", "22"]) == 1
    told = capsys.readouterr().err
    assert "209 is not a multiple of 12" in told
    assert "204: 5 fewer, 2.3 cm narrower" in told
    assert "216: 7 more, 3.2 cm wider" in told
    assert main(["spread", "180", "to", "204", "--multiple", "12"]) == 0
    assert main(["spread", "100", "to", "106", "--multiple", "4", "--plus", "2"]) == 0
    assert main(["spread", "100", "to", "106", "--multiple", "0"]) == 1
