"""`stepper fit FILE`: what the garment will measure, and every pair of sizes that can be blended."""

from __future__ import annotations

import argparse
from collections.abc import Iterator, Sequence
from pathlib import Path

from stepper.commands.standard_streams import print_document
from stepper.errors import ProjectError
from stepper.plan.blend import Blend, blends
from stepper.report.drawing.yoke_picture import draw_yoke_of
from stepper.report.fit import lines as fit_lines
from stepper.report.fit.ranking import find_nearest, find_present
from stepper.report.fit.report import FitReport, fit_document, report_fit
from stepper.report.fit.table import ROWS, PresentChoice, table_lines
from stepper.report.output_file import PICTURE_ENDINGS, write_picture
from stepper.sitting.folding import PROSE_COLUMNS, print_folded
from stepper.sitting.patience import patience
from stepper.sitting.project_file import PrintedSizes, load_sizes

REFUSED = 3
"""Number of blends that cannot be knitted to list with their reason, unless all are asked for."""


EXAMPLES = (
    ("stepper fit garment.yaml", "what it will measure, and the ten choices nearest to the ease wanted"),
    ("stepper fit garment.yaml --all", "every choice, and why others cannot be knitted"),
    ("stepper fit garment.yaml --picture yoke.svg", "the yoke's width against its depth, drawn"),
)


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument("file", type=Path, metavar="FILE", help="the project file")
    parser.add_argument("--json", action="store_true", help="print one JSON document")
    parser.add_argument("--all", action="store_true", help="list every blend, not just ten, and each in full")
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
    with patience(f"Trying every pair of sizes of {args.file.name}"):
        sized = load_sizes(args.file)
        tried = tuple(blends(sized.project, sized.readings))
        found = report_fit(sized.project, sized.plan, tried)
    if args.picture is not None:
        _draw(args.picture, sized, tried)
    if args.json:
        print_document({**fit_document(found), "trouble": sized.trouble or None})
        return 0
    print_folded(_text(found, sized.trouble, everything=args.all), otherwise=PROSE_COLUMNS)
    return 0


def _draw(path: Path, sized: PrintedSizes, tried: Sequence[Blend]) -> None:
    """Write the yoke's profile to a file."""
    drawing = draw_yoke_of(sized.project, sized.plan, tried, trouble=sized.trouble)
    if drawing is None:
        raise ProjectError("There is no yoke to draw: no round divides sleeves from a body or joins them.")
    write_picture(path, drawing)


def _text(found: FitReport, trouble: str, *, everything: bool) -> Iterator[str]:
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
    for said in found.left_out:
        yield f"  {said}"
    for caution in found.cautions:
        yield ""
        yield f"Look at this: {caution}"
    yield ""
    yield from _choices(found, trouble, everything=everything)
    refused = fit_lines.rejected_lines(
        found.rejected, most=None if everything else REFUSED, first=project.sizes[project.size]
    )
    rejected = list(refused)
    if rejected:
        yield ""
        yield from rejected


def _choices(found: FitReport, trouble: str, *, everything: bool) -> Iterator[str]:
    """List what can be knitted, with the present choice and the first in full, or every one."""
    project = found.project
    now = find_present(project, found.ranked, alone=bool(trouble))
    present = PresentChoice(name=fit_lines.name_sizes(project, trouble), lines=found.now, blend=now)
    yield from table_lines(found.ranked, project, present, most=None if everything else ROWS)
    for number, one in enumerate(found.ranked, start=1):
        if not everything and ((number > 1 and one is not now) or (one is now and not one.blend.label)):
            continue
        mark = ">" if one is now else " "
        yield f"{mark}{number:>4}. {fit_lines.name_blend(one.blend)}"
        if one is not now:
            for line in fit_lines.detail_lines(one, project.units):
                yield f"{'':7}{line}"
