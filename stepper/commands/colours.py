"""`stepper colours FILE`: which yarns vanish beside each other, in grey or for other eyes."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Iterator
from dataclasses import asdict, replace
from pathlib import Path

from stepper.commands.loading import load
from stepper.commands.standard_streams import print_document
from stepper.craft.colours.colour import Rgb
from stepper.errors import SurroundingsError
from stepper.report.colour_lines import pair_lines, verdict_lines, why_not_compared
from stepper.report.colours import ChartSquares, Colours, colours_after_mend, compare_colours, list_views
from stepper.report.drawing.colour_picture import draw_colours
from stepper.report.output_file import PICTURE_ENDINGS, write_picture
from stepper.screen.drawing.ansi import write_ansi
from stepper.screen.drawing.panels import draw_panel, put_side_by_side
from stepper.screen.drawing.rows import Row
from stepper.screen.drawing.style import Depth
from stepper.screen.yarns import yarns_of
from stepper.sitting.folding import (
    PROSE_COLUMNS,
    check_terminal,
    print_folded,
    terminal_columns,
    write_painted,
)

PIPED_COLUMNS = 80
"""Columns to fill if the output does not go to a terminal."""


EXAMPLES = (
    ("stepper colours garment.yaml", "which yarns vanish beside each other"),
    ("stepper colours garment.yaml --picture colours.png", "the charts as other eyes see them, as a picture"),
)


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument("file", type=Path, metavar="FILE", help="the project file")
    parser.add_argument("--json", action="store_true", help="print one JSON document")
    parser.add_argument(
        "--picture",
        type=Path,
        metavar="OUT",
        help="write the charts as a picture: a name ending in .png or .svg",
    )


def run(args: argparse.Namespace) -> int:
    """Print the charts, the pairs and the verdict.

    Returns:
        Exit code.

    Raises:
        StepperError: The file has problems, or the picture cannot be written.
    """
    loaded = load(args.file)
    found = compare_colours(loaded.project, loaded.plan)
    if args.picture is not None:
        _write(args.picture, found, loaded.plan.title)
    if args.json:
        print_document(_document(found, loaded.plan.title))
        return 0
    print(f"{loaded.plan.title}: colours")
    print()
    depth = check_terminal().depth
    for line in _lines(found, depth):
        if isinstance(line, str):
            print_folded([line], otherwise=PROSE_COLUMNS)
        else:
            write_painted(f"{write_ansi(line, depth)}\n", sys.stdout)
    if args.picture is not None:
        print_folded(["", f"The picture is in {args.picture}."])
    return 0


def _lines(found: Colours, depth: Depth) -> Iterator[str | Row]:
    why = why_not_compared(found)
    if why:
        yield why
        return
    columns = terminal_columns(sys.stdout) or PIPED_COLUMNS
    yield from _charts(found, depth, columns, found.charts)
    yield from pair_lines(found)
    yield ""
    yield from verdict_lines(found)
    change = found.mend
    changed = () if change is None else found.with_yarn(change.yarn)
    if change is not None and changed:
        yield ""
        yield f"With {found.names[change.yarn]} in {change.colour.hex}:"
        yield ""
        yield from _charts(replace(found, colours=colours_after_mend(found)), depth, columns, changed)


def _charts(
    found: Colours, depth: Depth, columns: int, charts: tuple[ChartSquares, ...]
) -> Iterator[str | Row]:
    colours: dict[str, Rgb | None] = {key: found.colours.get(key) for key in found.names}
    yarns = yarns_of(found.names, colours)
    signs = {key: yarns.of(key).sign for key in found.names}
    if charts:
        yield ", ".join(f"{signs[key]} {name}" for key, name in found.names.items())
        if depth is Depth.NONE:
            yield "Without colours the digits say how light it is: 0 black to 9 white."
        yield ""
    for chart in charts:
        yield f"chart {chart.name}"
        panels = [
            draw_panel(name, chart.squares, signs if name == "in colour" else {}, shade, depth)
            for name, shade in list_views(found)
        ]
        yield from put_side_by_side(panels, columns)
        yield ""


def _write(path: Path, found: Colours, title: str) -> None:
    if path.suffix.lower() not in PICTURE_ENDINGS:
        raise SurroundingsError(f"{path}: a picture is written as .png or .svg.")
    write_picture(path, draw_colours(found, title))


def _document(found: Colours, title: str) -> dict[str, object]:
    return {
        "format": 1,
        "title": title,
        "pairs": [{**asdict(pair), "hard": pair.hard} for pair in found.pairs],
        "without_colour": list(found.unknown),
        "mend": None
        if found.mend is None
        else {
            **asdict(found.mend),
            "colour": found.mend.colour.hex,
            "from": found.colours[found.mend.yarn].hex,
        },
    }
