"""`stepper yarn FILE`: how much of each yarn the garment takes, what to buy, and whether the yarn will
last."""

from __future__ import annotations

import argparse
from dataclasses import asdict
from pathlib import Path

from stepper.commands.loading import load
from stepper.commands.standard_streams import print_document
from stepper.language.measures import plural
from stepper.plan.model import Plan
from stepper.project.problems import UnsoundFileError
from stepper.project.yaml_file.source import read_text
from stepper.report.leftovers import (
    FILE_NAME,
    Leftover,
    find_usable,
    list_leftovers,
    read_leftovers,
    replace_leftovers,
    write_leftovers,
)
from stepper.report.output_file import replace_file
from stepper.report.yarn import YarnRow, list_yarns
from stepper.report.yarn_lines import yarn_lines
from stepper.sitting.clock import now
from stepper.sitting.folding import PROSE_COLUMNS, print_folded
from stepper.sitting.project_file import LoadedProject
from stepper.store.location import journal_path
from stepper.store.reader import journal_exists

EXAMPLES = (
    ("stepper yarn garment.yaml", "metres, grams and skeins of each yarn"),
    ("stepper yarn garment.yaml --keep", "keep what is left over, for the next garment in the folder"),
)


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument("file", type=Path, metavar="FILE", help="the project file")
    parser.add_argument("--json", action="store_true", help="print one JSON document")
    parser.add_argument(
        "--keep", action="store_true", help=f"keep what is left over in {FILE_NAME} beside the project file"
    )


def run(args: argparse.Namespace) -> int:
    """Print the yarn table.

    Returns:
        Exit code.

    Raises:
        StepperError: The project file, the journal or the leftovers cannot be read or written.
    """
    loaded = load(args.file)
    plan, rows = list_rows(loaded)
    beside = loaded.path.resolve().with_name(FILE_NAME)
    entries = _leftovers(beside)
    remnants = {
        row.key: tuple(find_usable(row, stock.skein if stock else None, entries, plan.title))
        for row in rows
        for stock in (plan.materials.stocks.get(row.key),)
    }
    left = list_leftovers(plan, rows)
    if args.keep:
        replace_file(beside, write_leftovers(replace_leftovers(entries, plan.title, left)).encode())
    if args.json:
        print_document(_document(plan, rows, remnants))
        return 0
    print_folded(yarn_lines(plan, rows, remnants), otherwise=PROSE_COLUMNS)
    if args.keep:
        print_folded(["", f"What is left of {plural(len(left), 'yarn')} is kept in {beside}."])
    return 0


def list_rows(loaded: LoadedProject) -> tuple[Plan, tuple[YarnRow, ...]]:
    """Return the plan as knitted and its yarns, using the weighings in the journal if there is one.

    Raises:
        SurroundingsError: The journal cannot be read.
    """
    colours = {key: yarn.colour for key, yarn in loaded.project.yarns.items()}
    path = journal_path(loaded.path)
    if not journal_exists(path):
        return loaded.plan, list_yarns(loaded.plan, colours)
    # The session is loaded only if something was knitted.
    from stepper.sitting.session_journal import open_to_read, read_events, resume_session

    with open_to_read(path) as journal:
        if journal is None:  # it has just vanished
            return loaded.plan, list_yarns(loaded.plan, colours)
        taken = resume_session(loaded, journal, now())
        events = read_events(journal)
    if taken.changed is not None:
        taken.session.adopt(taken.changed)  # in memory only
    plan = taken.session.plan
    return plan, list_yarns(plan, colours, events)


def _leftovers(path: Path) -> tuple[Leftover, ...]:
    if not path.exists():
        return ()
    text = read_text(path)
    entries, problems = read_leftovers(text)
    if problems:
        raise UnsoundFileError(problems, text, str(path))
    return entries


def _document(
    plan: Plan, rows: tuple[YarnRow, ...], remnants: dict[str, tuple[Leftover, ...]]
) -> dict[str, object]:
    return {
        "format": 1,
        "title": plan.title,
        "yarns": [
            {**asdict(row), "left_from_others": [asdict(entry) for entry in remnants[row.key]]}
            for row in rows
        ],
    }
