from __future__ import annotations

import io
import time

import pytest

from stepper.sitting.patience import SILENT_S, patience
from tests.sitting.test_folding import Terminal


def test_what_is_quick_is_not_spoken_of() -> None:
    """A line that flashes up and goes only disturbs."""
    terminal = Terminal()
    with patience("Working", terminal):
        pass
    assert terminal.getvalue() == ""
    assert SILENT_S <= 1.0


def test_what_takes_long_says_so_and_leaves_nothing_behind(monkeypatch: pytest.MonkeyPatch) -> None:
    """She sees that it works, and then the answer alone."""
    monkeypatch.setenv("COLUMNS", "60")
    terminal = Terminal()
    with patience("Working out every round", terminal, silent_s=0.01):
        _wait_for(terminal, "Working out every round … 0 s")
    shown = terminal.getvalue()
    assert shown.endswith("\r" + " " * 29 + "\r")
    assert "\n" not in shown


def test_a_line_that_is_read_aloud_stays() -> None:
    """A screen reader cannot follow a line that changes."""
    terminal = Terminal()
    with patience("Working", terminal, silent_s=0.01, lasting=True):
        _wait_for(terminal, "\n")
    assert terminal.getvalue() == "Working; this takes a moment.\n"


def test_it_is_no_wider_than_the_terminal(monkeypatch: pytest.MonkeyPatch) -> None:
    """Else each second would begin a new line."""
    monkeypatch.setenv("COLUMNS", "20")
    terminal = Terminal()
    with patience("Working out every round", terminal, silent_s=0.01):
        _wait_for(terminal, "Working")
    assert max(map(len, terminal.getvalue().split("\r"))) < 20


def test_a_file_is_told_nothing_and_a_failure_passes_through() -> None:
    """What a script reads holds answers alone, and an error is not swallowed."""
    file = io.StringIO()
    with pytest.raises(ValueError, match="as it was"), patience("Working", file, silent_s=0.0):
        raise ValueError("as it was")
    terminal = Terminal()
    with pytest.raises(ValueError, match="as it was"):
        _fail(terminal)
    assert file.getvalue() == ""
    assert terminal.getvalue().endswith("\r")


def _fail(terminal: Terminal) -> None:
    with patience("Working", terminal, silent_s=0.01):
        _wait_for(terminal, "Working")
        raise ValueError("as it was")


def _wait_for(stream: io.StringIO, text: str) -> None:
    until = time.monotonic() + 10
    while text not in stream.getvalue():
        assert time.monotonic() < until, "it says nothing"
        time.sleep(0.005)
