"""`stepper fit FILE`: what the garment will measure, and every pair of sizes that can be blended."""

from __future__ import annotations

import argparse
import json
from collections.abc import Iterator
from pathlib import Path

from stepper.commands.loading import Loaded, load
from stepper.language.measures import length
from stepper.plan.blend import Blend, blends
from stepper.report.fit import Line, lines, ranked


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument("file", type=Path, metavar="FILE", help="the project file")
    parser.add_argument("--json", action="store_true", help="print one JSON document")


def run(args: argparse.Namespace) -> int:
    """Print measurements, ease and blends.

    Returns:
        Exit code.

    Raises:
        StepperError: The file has problems, or cannot be read.
    """
    loaded = load(args.file)
    tried = tuple(blends(loaded.project))
    if args.json:
        print(json.dumps(_document(loaded, tried), ensure_ascii=False))
        return 0
    for line in _text(loaded, tried):
        print(line)
    return 0


def _text(loaded: Loaded, tried: tuple[Blend, ...]) -> Iterator[str]:
    project = loaded.project
    yield f"{project.title}: on the needles, after blocking, body, ease"
    for line in lines(loaded.plan, project):
        yield _row(line, project.units)
    yield ""
    yield "Can be knitted, nearest to the ease wanted first:"
    for blend, off in ranked(tried, project):
        far = f", off by {length(off, project.units)} in all" if off is not None else ""
        yield f"  {_named(blend)}{far}"
    rejected = [blend for blend in tried if blend.plan is None]
    if rejected:
        yield ""
        yield "Cannot be knitted:"
    for blend in rejected:
        yield f"  {_named(blend)}: {blend.why_not}"


def _row(line: Line, units: str) -> str:
    blocked = length(line.blocked_mm, units) if line.blocked_mm is not None else "-"
    row = f"  {line.name:<24} {length(line.needles_mm, units):>9} {blocked:>9}"
    if line.body_mm is None or line.ease_mm is None:
        return row
    word = f" ({line.word})" if line.word else ""
    return f"{row} {length(line.body_mm, units):>9} {length(line.ease_mm, units):>9}{word}"


def _named(blend: Blend) -> str:
    if not blend.label:
        return f"size {blend.size}"
    head = f"size {blend.size}, then {blend.then} from {blend.label}"
    if blend.plan is None:
        return head
    sizes = " or ".join(str(gap) for gap, _ in reversed(blend.gaps))
    spaced = f", {sizes} apart" if sizes else ""
    return f"{head} ({blend.before} to {blend.after}{spaced})"


def _document(loaded: Loaded, tried: tuple[Blend, ...]) -> dict[str, object]:
    project = loaded.project
    return {
        "format": 1,
        "title": project.title,
        "lines": [
            {
                "name": line.name,
                "needles_mm": line.needles_mm,
                "blocked_mm": line.blocked_mm,
                "body_mm": line.body_mm,
                "ease_mm": line.ease_mm,
                "fit": line.word or None,
            }
            for line in lines(loaded.plan, project)
        ],
        "blends": [{"off_by_mm": off, **_blend(blend)} for blend, off in ranked(tried, project)],
        "rejected": [{"why": blend.why_not, **_blend(blend)} for blend in tried if blend.plan is None],
    }


def _blend(blend: Blend) -> dict[str, object]:
    return {
        "size": blend.size,
        "then": blend.then,
        "from": blend.label or None,
        "before": blend.before,
        "after": blend.after,
        "gaps": [list(pair) for pair in blend.gaps],
    }
