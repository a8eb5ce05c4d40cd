"""`stepper fit FILE`: what the garment will measure, and every pair of sizes that can be blended."""

from __future__ import annotations

import argparse
import json
from collections.abc import Iterator
from pathlib import Path

from stepper.commands.loading import load_sizes
from stepper.plan.blend import blends
from stepper.report import fit_page
from stepper.report.fitting import Fitting, document, fitting


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument("file", type=Path, metavar="FILE", help="the project file")
    parser.add_argument("--json", action="store_true", help="print one JSON document")
    parser.add_argument(
        "--all", action="store_true", help="tell every blend in full, not the first ten alone"
    )
    parser.add_argument(
        "--picture", type=Path, metavar="OUT", help="draw the yoke's profile to OUT, a .svg or .png file"
    )


def run(args: argparse.Namespace) -> int:
    """Print measurements, ease and blends.

    Returns:
        Exit code.

    Raises:
        StepperError: The file has problems, or cannot be read.
    """
    sized = load_sizes(args.file)
    found = fitting(sized.project, sized.plan, tuple(blends(sized.project, sized.readings)))
    if args.json:
        print(json.dumps({**document(found), "trouble": sized.trouble or None}, ensure_ascii=False))
        return 0
    for line in _text(found, sized.trouble, in_full=len(found.ranked) if args.all else fit_page.IN_FULL):
        print(line)
    return 0


def _text(found: Fitting, trouble: str, *, in_full: int) -> Iterator[str]:
    project = found.project
    if trouble:
        yield "As the file has it, it cannot be knitted:"
        yield trouble
        yield ""
    yield from fit_page.measured(
        found.now, project, f"{project.title}, {fit_page.as_knitted(project, trouble)}"
    )
    for caution in found.cautions:
        yield ""
        yield f"Look at this: {caution}"
    yield ""
    yield from fit_page.workable(found.ranked, project, in_full=in_full)
    rejected = list(fit_page.rejected(found.rejected))
    if rejected:
        yield ""
        yield from rejected
