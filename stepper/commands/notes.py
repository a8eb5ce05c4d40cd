"""`stepper notes FILE`: what was changed from the printed pattern and how it went, as Markdown."""

from __future__ import annotations

import argparse
from pathlib import Path

from stepper.commands.loading import load
from stepper.report.notes import write_notes
from stepper.sitting.clock import now
from stepper.sitting.folding import print_folded
from stepper.sitting.session_journal import open_to_read, read_events, resume_session
from stepper.store.location import journal_path

EXAMPLES = (
    ("stepper notes garment.yaml", "the record on the screen"),
    ("stepper notes garment.yaml > garment.md", "the record in a file"),
)


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument("file", type=Path, metavar="FILE", help="the project file")


def run(args: argparse.Namespace) -> int:
    """Print the notes.

    Returns:
        Exit code.

    Raises:
        StepperError: The project file or the journal cannot be read.
    """
    loaded = load(args.file)
    with open_to_read(journal_path(loaded.path)) as journal:
        events = read_events(journal) if journal is not None else []
        taken_up = resume_session(loaded, journal, now())
    plan = taken_up.session.plan if taken_up.changed is None else taken_up.changed.plan
    print_folded(write_notes(loaded.project, plan, events))
    return 0
