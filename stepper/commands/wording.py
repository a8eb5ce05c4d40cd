"""`stepper wording [WORD]`: every wording of a pattern line that is read, or the parts containing a word."""

from __future__ import annotations

import argparse

from stepper.errors import ProjectError
from stepper.project.rewording.reference import about, reference


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument("word", nargs="?", metavar="WORD", help="show only the parts that hold this word")


def run(args: argparse.Namespace) -> int:
    """Print the reference.

    Returns:
        Exit code.

    Raises:
        ProjectError: Nothing in it contains the word.
    """
    if args.word is None:
        print(reference(), end="")
        return 0
    found = about(args.word)
    if not found:
        raise ProjectError(
            f'Nothing in the reference holds "{args.word}". `stepper wording` prints all of it.'
        )
    print(found)
    return 0
