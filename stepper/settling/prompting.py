"""Ask questions of one line on the terminal, with what Enter takes in brackets."""

from __future__ import annotations

import sys
from collections.abc import Callable
from typing import TypeVar

from stepper.sitting.folding import print_folded

_Read = TypeVar("_Read")

ENTER_TAKES = "Enter takes what stands in brackets."
"""Said once, before the first question."""


class LaterAsked(Exception):  # noqa: N818 - an answer, no error
    """She leaves the question open."""


class BackAsked(Exception):  # noqa: N818 - an answer, no error
    """She wants the answer before again."""


class StopAsked(Exception):  # noqa: N818 - an answer, no error
    """She ends the questions, by a word or by the end of the input."""


_WORDS: dict[str, type[Exception]] = {
    "later": LaterAsked,
    "l": LaterAsked,
    "back": BackAsked,
    "stop": StopAsked,
    "quit": StopAsked,
    "q": StopAsked,
}


def ask(question: str, default: str = "") -> str:
    """Ask a question and return the answer, without white space at its ends.

    Where Enter answers nothing, a second one leaves the question open.

    Args:
        question: It, on one line.
        default: What Enter takes; empty if Enter answers nothing.

    Raises:
        LaterAsked: The answer is "later", or none was given twice.
        BackAsked: The answer is "back".
        StopAsked: The answer is "stop", or the input has ended.
    """
    for told in ("Please answer, or leave it open: later. Enter once more leaves it open too.", ""):
        line = read_line(f"{question} [{default}] " if default else f"{question} ")
        answer = " ".join(line.split()) or default
        turn_away(answer)
        if answer:
            return answer
        print_folded([told] if told else [])
    raise LaterAsked


def turn_away(answer: str) -> None:
    """Raise what a word asks for that answers no question: later, back, stop.

    Raises:
        LaterAsked: The answer is "later".
        BackAsked: The answer is "back".
        StopAsked: The answer is "stop".
    """
    meant = _WORDS.get(answer.lower())
    if meant is not None:
        raise meant


def read_line(prompt: str) -> str:
    """Show a prompt and return the line that is typed behind it.

    Raises:
        StopAsked: The input has ended.
    """
    print(prompt, end="", flush=True)
    line = sys.stdin.readline()
    if not line:
        print()
        raise StopAsked
    return line.rstrip("\n")


def ask_read(question: str, default: str, read: Callable[[str], _Read | str]) -> _Read:
    """Ask until an answer is read, and return what it says.

    Args:
        question: It, on one line.
        default: What Enter takes.
        read: Returns what an answer says, or what is wrong with it, as a sentence.

    Raises:
        LaterAsked: As `ask`; `BackAsked` and `StopAsked` likewise.
    """
    while True:
        found = read(ask(question, default))
        if not isinstance(found, str):
            return found
        print_folded([found])


def ask_yes(question: str, default: str = "yes") -> bool:
    """Ask for yes or no.

    Args:
        question: It, on one line.
        default: What Enter means; empty where it has to be said.

    Raises:
        LaterAsked: As `ask`; `BackAsked` and `StopAsked` likewise.
    """
    known = {"yes": True, "y": True, "no": False, "n": False}
    told = "Answer yes or no."
    return ask_read(f"{question} yes or no", default, lambda said: known.get(said.lower(), told))


def ask_right(question: str, default: str = "yes") -> None:
    """Ask for yes, or to leave it open.

    Args:
        question: It, on one line.
        default: What Enter means; empty where it has to be said.

    Raises:
        LaterAsked: As `ask`; `BackAsked` and `StopAsked` likewise.
    """
    known = {"yes": True, "y": True}
    told = "Answer yes or later."
    ask_read(f"{question} yes or later", default, lambda said: known.get(said.lower(), told))


def can_ask() -> bool:
    """Return whether somebody is there to answer: questions and answers both go to a terminal."""
    return sys.stdin.isatty() and sys.stdout.isatty()
