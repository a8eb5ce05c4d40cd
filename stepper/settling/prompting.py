"""Ask questions of one line on the terminal, with what Enter takes in brackets."""

from __future__ import annotations

import sys
from collections.abc import Callable

from stepper.sitting.folding import print_folded

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

    Args:
        question: It, on one line.
        default: What Enter takes; empty if Enter answers nothing.

    Raises:
        LaterAsked: The answer is "later".
        BackAsked: The answer is "back".
        StopAsked: The answer is "stop", or the input has ended.
    """
    while True:
        line = read_line(f"{question} [{default}] " if default else f"{question} ")
        answer = " ".join(line.split()) or default
        turn_away(answer)
        if answer:
            return answer
        print_folded(["Please answer, or leave it open: later."])


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


def ask_checked(question: str, default: str, trouble: Callable[[str], str]) -> str:
    """Ask until an answer will do.

    Args:
        question: It, on one line.
        default: What Enter takes.
        trouble: Returns what is wrong with an answer, as a sentence; empty if it will do.

    Raises:
        LaterAsked: As `ask`; `BackAsked` and `StopAsked` likewise.
    """
    while True:
        answer = ask(question, default)
        told = trouble(answer)
        if not told:
            return answer
        print_folded([told])


def ask_yes(question: str) -> bool:
    """Ask for yes or no; Enter means yes.

    Raises:
        LaterAsked: As `ask`; `BackAsked` and `StopAsked` likewise.
    """
    answer = ask_checked(f"{question} yes or no", "yes", _yes_or_no)
    return answer.lower().startswith("y")


def yes_or_later(answer: str) -> str:
    """Return what is wrong with an answer that may only be yes, or leaves it open; empty if it will do."""
    return "" if answer.lower() in ("yes", "y") else "Answer yes or later."


def _yes_or_no(answer: str) -> str:
    return "" if answer.lower() in ("yes", "y", "no", "n") else "Answer yes or no."


def can_ask() -> bool:
    """Return whether somebody is there to answer: questions and answers both go to a terminal."""
    return sys.stdin.isatty() and sys.stdout.isatty()
