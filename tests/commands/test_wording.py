"""`stepper wording`: the reference, whole or by a word."""

from __future__ import annotations

import pytest

from stepper.commands.main import main
from stepper.project.rewording.reference import reference


def test_the_whole_reference_is_printed(capsys: pytest.CaptureFixture[str]) -> None:
    """It is shipped with the program, so that no network is needed."""
    assert main(["wording"]) == 0
    assert capsys.readouterr().out == reference()


def test_a_word_narrows_it_down(capsys: pytest.CaptureFixture[str]) -> None:
    """One look, not ten screens."""
    assert main(["wording", "German"]) == 0
    shown = capsys.readouterr().out
    assert "Use German short rows." in shown
    assert "garter" not in shown
    assert len(shown.splitlines()) < 60


def test_a_word_that_is_nowhere_is_told(capsys: pytest.CaptureFixture[str]) -> None:
    """An empty answer would look like a fault."""
    assert main(["wording", "xylophone"]) == 1
    assert 'Nothing in the reference holds "xylophone".' in capsys.readouterr().err
