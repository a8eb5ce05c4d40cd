"""Answers typed into the questions of a command, and what is asked: a terminal without a terminal."""

from __future__ import annotations

import io
import sys

import pytest


def type_answers(monkeypatch: pytest.MonkeyPatch, *answers: str) -> None:
    """Put answers where the questions read them; behind the last the input ends."""
    monkeypatch.setattr(sys, "stdin", io.StringIO("".join(f"{answer}\n" for answer in answers)))
