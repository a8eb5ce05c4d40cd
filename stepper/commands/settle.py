"""`stepper settle FILE`: what a pasted page left open, settled by short answers."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import Any

from stepper.commands.check import load_sound, sound_lines
from stepper.commands.loading import load
from stepper.commands.standard_streams import print_document
from stepper.errors import ProjectError
from stepper.project.page.unread.left_open import LeftKind, LeftOpen, find_left_open
from stepper.settling.file_in_hand import read_lines, take_in_hand
from stepper.settling.mend_questions import find_fitting
from stepper.settling.prompting import can_ask
from stepper.settling.rows_asked import look_at
from stepper.settling.walk import Settling
from stepper.sitting.folding import print_folded
from stepper.sitting.project_file import load_as_far
from stepper.store.location import journal_path
from stepper.store.reader import journal_exists

FORMAT = 1
"""Version of the JSON document."""

EXAMPLES = (
    ("stepper settle garment.yaml", "answer what the page left open; stop and go on as you like"),
    ("stepper settle garment.yaml --json", "what is open and what would be proposed; asks nothing"),
)


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument("file", type=Path, metavar="FILE", help="the project file, begun from a page")
    parser.add_argument(
        "--json", action="store_true", help="print one JSON document of what is open, and ask nothing"
    )


def run(args: argparse.Namespace) -> int:
    """Ask about what is open in a file; without a terminal only tell it, as `stepper check` does.

    Returns:
        Exit code: 1 if something is still open.

    Raises:
        StepperError: The file has problems, or cannot be read or written.
        KeyboardInterrupt: She broke it off; what was answered is in the file.
    """
    if args.json:
        return _print_open(args.file)
    if not can_ask():
        print_folded(sound_lines(args.file, load_sound(args.file).plan))
        return 0
    return settle(args.file)


def settle(path: Path) -> int:
    """Ask about what is open in a file, then check it.

    Args:
        path: The file.

    Returns:
        Exit code: 1 if she stopped and something is still open.

    Raises:
        StepperError: The file has problems when all is answered, or cannot be read or written.
        KeyboardInterrupt: She broke it off; what was answered is in the file.
    """
    settling = Settling(path=path)
    try:
        ended = settling.run()
    except KeyboardInterrupt:
        print_folded(["", *_kept(path, settling.answered)])
        raise
    if not ended:
        print_folded(_kept(path, settling.answered))
        return ProjectError.exit_code
    if settling.answered and journal_exists(journal_path(path)):
        print_folded(["It is being knitted: the next sitting begins with what has changed."])
    loaded = load(path)
    print_folded(sound_lines(path, loaded.plan))
    return 0


def _kept(path: Path, answered: int) -> list[str]:
    kept = f"{answered} answer{'' if answered == 1 else 's'} kept. " if answered else ""
    rows = [f"{kept}To go on: stepper settle {path}"]
    if load_as_far(path) is not None:
        rows.append(f"To knit it as far as it is read: stepper knit {path}")
    return rows


def _print_open(path: Path) -> int:
    """Print what is open as one document."""
    text = read_lines(path)
    found = find_left_open(text)
    entries = [_entry(each, text, path.parent) for each in found]
    print_document({"format": FORMAT, "file": str(path), "open": entries})
    return ProjectError.exit_code if found else 0


def _entry(left: LeftOpen, text: str, folder: Path) -> dict[str, Any]:
    entry: dict[str, Any] = {
        "line": left.first,
        "kind": left.kind.value,
        "page": left.where,
        "part": left.part,
        "text": left.text,
        "why": left.why,
    }
    if left.kind is LeftKind.ROW:
        asked = look_at(left, text)
        changes = find_fitting(asked, take_in_hand(text, folder))
        entry["proposed"] = {
            "kept": asked.proposal.kept.value,
            "rows": asked.proposal.rows,
            "count": asked.proposal.count,
            "moved": asked.proposal.moved,
            "before": asked.so_far.stitches,
            "changes": [
                {"kind": each.kind.value, "words": each.words, "instead": each.instead, "read": each.text}
                for each, _ in changes
            ],
        }
    return entry
