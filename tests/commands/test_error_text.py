from __future__ import annotations

import pytest

from stepper.commands.error_text import error_text
from stepper.errors import NotInstalledError, SurroundingsError
from stepper.project.problems import Problem, UnsoundFileError


def test_an_excerpt_is_as_wide_as_the_terminal_with_the_caret_under_the_place() -> None:
    """Broken by the terminal, the caret would stand under another word."""
    text = "x" * 60 + " here " + "y" * 60
    error = UnsoundFileError([Problem(line=1, column=62, message="not this.", length=4)], text, "hat.yaml")
    for columns in (40, 60, 80):
        _, excerpt, caret, _ = error_text(error, columns).splitlines()
        assert len(excerpt) <= columns
        assert excerpt[caret.index("^") :].startswith("here")
        assert caret.count("^") == 4
    assert text[:90] in error_text(UnsoundFileError(error.problems, text[:90], "hat.yaml"), None)


@pytest.mark.parametrize("extra", ["ears", "vosk", "natural"])
def test_what_is_not_installed_comes_with_what_to_type(extra: str) -> None:
    """The command of this installation, not of one like it."""
    told = error_text(NotInstalledError("It is not installed.", extra), 80).splitlines()
    assert told[0] == "It is not installed."
    assert told[1].startswith("To install it: ")
    assert extra in told[1]


def test_another_error_is_its_own_sentence() -> None:
    """Nothing is added to it."""
    assert error_text(SurroundingsError("The disk is full."), 80) == "The disk is full."
