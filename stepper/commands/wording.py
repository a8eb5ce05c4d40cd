"""`stepper wording [WORD]`: every wording of a pattern line that is read, or the parts containing a word."""

from __future__ import annotations

import argparse

from stepper.errors import ProjectError
from stepper.project.rewording.reference import about, reference
from stepper.sitting.folding import print_folded

EXAMPLES = (
    ("stepper wording", "the whole reference"),
    ("stepper wording increase", "only the parts with this word"),
)


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
        print_folded(reference().splitlines())
        return 0
    found = about(args.word)
    if not found:
        raise ProjectError(
            f'Nothing in the reference holds "{args.word}". `stepper wording` prints all of it.'
        )
    print_folded(found.splitlines())
    return 0
