"""`stepper fit FILE`: what the garment will measure, and every pair of sizes that can be blended."""

from __future__ import annotations

import argparse
import json
from collections.abc import Iterator, Sequence
from pathlib import Path

from stepper.commands.picture_file import PICTURE_ENDINGS, write_picture
from stepper.errors import ProjectError
from stepper.plan.blend import Blend, blends
from stepper.report import fit_lines
from stepper.report.fit_report import FitReport, fit_document, report_fit
from stepper.report.ranking import find_nearest
from stepper.report.yoke_picture import draw_yoke_of
from stepper.sitting.project_file import Sized, load_sizes


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument("file", type=Path, metavar="FILE", help="the project file")
    parser.add_argument("--json", action="store_true", help="print one JSON document")
    parser.add_argument(
        "--all", action="store_true", help="tell every blend in full, not the first ten alone"
    )
    parser.add_argument(
        "--picture", type=_picture, metavar="OUT", help="draw the yoke's profile to OUT, a .svg or .png file"
    )


def _picture(text: str) -> Path:
    path = Path(text)
    if path.suffix.lower() not in PICTURE_ENDINGS:
        raise argparse.ArgumentTypeError(f'"{text}" must end in .svg or .png')
    return path


def run(args: argparse.Namespace) -> int:
    """Print measurements, ease and blends.

    Returns:
        Exit code.

    Raises:
        StepperError: The file has problems, or cannot be read.
    """
    sized = load_sizes(args.file)
    tried = tuple(blends(sized.project, sized.readings))
    found = report_fit(sized.project, sized.plan, tried)
    if args.picture is not None:
        _draw(args.picture, sized, tried)
    if args.json:
        print(json.dumps({**fit_document(found), "trouble": sized.trouble or None}, ensure_ascii=False))
        return 0
    for line in _text(found, sized.trouble, in_full=len(found.ranked) if args.all else fit_lines.IN_FULL):
        print(line)
    return 0


def _draw(path: Path, sized: Sized, tried: Sequence[Blend]) -> None:
    """Write the yoke's profile to a file."""
    drawing = draw_yoke_of(sized.project, sized.plan, tried, trouble=sized.trouble)
    if drawing is None:
        raise ProjectError("There is no yoke to draw: no round puts the stitches of two sleeves on hold.")
    write_picture(path, drawing)


def _text(found: FitReport, trouble: str, *, in_full: int) -> Iterator[str]:
    project = found.project
    if trouble:
        yield "As the file has it, it cannot be knitted:"
        yield trouble
        near = find_nearest(project, found.ranked)
        if near is not None:
            yield f"The nearest that can be knitted: {fit_lines.name_blend(near.blend)}."
        yield ""
    yield from fit_lines.measurement_lines(
        found.now, project, f"{project.title}, {fit_lines.name_sizes(project, trouble)}"
    )
    for caution in found.cautions:
        yield ""
        yield f"Look at this: {caution}"
    yield ""
    yield from fit_lines.workable_lines(found.ranked, project, in_full=in_full)
    rejected = list(fit_lines.rejected_lines(found.rejected))
    if rejected:
        yield ""
        yield from rejected
