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
