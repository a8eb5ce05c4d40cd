"""`stepper check FILE`: every problem of a project file, with line and column."""

from __future__ import annotations

import argparse
from pathlib import Path

from stepper.sitting.own_cues import add_own_cues
from stepper.sitting.preferences import read_preferences
from stepper.sitting.project_file import load_project


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument("file", type=Path, metavar="FILE", help="the project file")


def run(args: argparse.Namespace) -> int:
    """Check a file; if it is sound, say how large the garment is.

    Returns:
        Exit code.

    Raises:
        StepperError: The file has problems, or cannot be read.
    """
    loaded = load_project(args.file)
    plan = loaded.plan
    # Words that mean one thing here and another in her settings are a problem.
    add_own_cues(loaded, read_preferences())
    for caution in plan.warnings:
        print(f"{args.file}:{caution.line}:1: note: {caution.text}")
    stitches = sum(round_.progress for round_ in plan.rounds)
    sections = ", ".join(plan.sections)
    print(f"{args.file} is sound: {len(plan.rounds)} rounds, {stitches} stitches ({sections}).")
    return 0
