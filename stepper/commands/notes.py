"""`stepper notes FILE`: what was changed from the printed pattern and how it went, as Markdown."""

from __future__ import annotations

import argparse
from contextlib import ExitStack
from datetime import datetime
from pathlib import Path

from stepper.report.notes import write_notes
from stepper.sitting.project_file import load
from stepper.sitting.session_journal import journal_to_read, kept_events, take_up
from stepper.store.location import journal_path


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument("file", type=Path, metavar="FILE", help="the project file")


def run(args: argparse.Namespace) -> int:
    """Print the record.

    Returns:
        Exit code.

    Raises:
        StepperError: The project file or the journal cannot be read.
    """
    loaded = load(args.file)
    now = datetime.now().astimezone().isoformat(timespec="seconds")
    with ExitStack() as stack:
        journal = journal_to_read(journal_path(loaded.path))
        if journal is not None:
            stack.enter_context(journal)
        events = kept_events(journal) if journal is not None else []
        taken_up = take_up(loaded, journal, now)
    plan = taken_up.session.plan if taken_up.changed is None else taken_up.changed.plan
    for line in write_notes(loaded.project, plan, events):
        print(line)
    return 0
