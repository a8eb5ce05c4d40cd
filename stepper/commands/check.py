"""`stepper check FILE`: every problem of a project file, with line and column."""

from __future__ import annotations

import argparse
from collections.abc import Iterable, Iterator
from pathlib import Path
from typing import Any

from stepper.commands.loading import load, tell_how_far
from stepper.commands.standard_streams import complain, print_document
from stepper.errors import ProjectError
from stepper.plan.model import Item, Plan, Run
from stepper.project.problems import Problem, UnsoundFileError
from stepper.sitting.folding import print_folded
from stepper.sitting.own_cues import add_own_cues
from stepper.sitting.preferences import read_preferences
from stepper.sitting.project_file import LoadedProject

FORMAT = 1
"""Version of the JSON document."""
_OF_A_PROBLEM = ("line", "column", "message", "hint", "length")

EXAMPLES = (
    ("stepper check garment.yaml", "every problem with its line, or how large the garment is"),
    ("stepper check garment.yaml --json", "the same for an editor or a script"),
)


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument("file", type=Path, metavar="FILE", help="the project file")
    parser.add_argument("--json", action="store_true", help="print one JSON document, problems included")


def run(args: argparse.Namespace) -> int:
    """Check a file; if it is sound, say how large the garment is.

    Returns:
        Exit code: 1 if problems are told in a document.

    Raises:
        StepperError: The file has problems, or cannot be read.
    """
    try:
        loaded = load(args.file) if args.json else load_sound(args.file)
        # Words that mean one thing here and another in her settings are a problem.
        add_own_cues(loaded, read_preferences())
    except UnsoundFileError as error:
        if not args.json:
            raise
        print_document(_document(args.file, None, error.problems))
        return ProjectError.exit_code
    plan = loaded.plan
    if args.json:
        print_document(_document(args.file, plan, ()))
        return 0
    print_folded(f"{args.file}:{caution.line}:1: note: {caution.text}" for caution in plan.warnings)
    print_folded(sound_lines(args.file, plan))
    return 0


def load_sound(path: Path) -> LoadedProject:
    """Read a project file; of one begun from a page that has problems say how far it can be knitted.

    Raises:
        StepperError: The file has problems, or cannot be read.
    """
    try:
        return load(path)
    except UnsoundFileError as error:
        how_far = tell_how_far(path, len(error.problems))
        if how_far:
            complain(how_far)
        raise


def sound_lines(path: Path, plan: Plan) -> Iterator[str]:
    """Say that a file is sound, how large the garment is, and how much of it only the knitter's words tell.

    Args:
        path: The file.
        plan: Its plan.
    """
    # "sleeves, second" is one name: a comma between the names would make two of it.
    between = "; " if any("," in each for each in plan.sections) else ", "
    sections = between.join(plan.sections)
    yield f"{path} is sound: {len(plan.rounds)} rounds, {_stitches(plan)} stitches ({sections})."
    own = count_own(plan)
    if own:
        rounds = "1 round is" if own == 1 else f"{own} rounds are"
        yield f"{rounds} by your own words: counted as you say, not worked out to the stitch."


def count_own(plan: Plan) -> int:
    """Count the rounds of a plan of which only the knitter's words and her counts are known."""
    return sum(any(_is_own(item) for item in round_.phrase) for round_ in plan.rounds)


def _is_own(item: Item) -> bool:
    return isinstance(item, Run) and item.stitch.partition(" ")[0] == "own"


def _stitches(plan: Plan) -> int:
    return sum(round_.progress for round_ in plan.rounds)


def _document(path: Path, plan: Plan | None, problems: Iterable[Problem]) -> dict[str, Any]:
    """Return what is told as plain values; of a file with problems nothing else is known."""
    sound: dict[str, Any] = {}
    if plan is not None:
        sound = {
            "title": plan.title,
            "rounds": len(plan.rounds),
            "stitches": _stitches(plan),
            "sections": list(plan.sections),
            "own_rounds": count_own(plan),
            "notes": [{"line": caution.line, "text": caution.text} for caution in plan.warnings],
        }
    return {
        "format": FORMAT,
        "file": str(path),
        "sound": plan is not None,
        "problems": [{name: getattr(problem, name) for name in _OF_A_PROBLEM} for problem in problems],
        **sound,
    }
