"""Load the project file of a command, and say so where that takes its time."""

from __future__ import annotations

from pathlib import Path

from stepper.craft.even.manners import Manner
from stepper.sitting.patience import patience
from stepper.sitting.project_file import LoadedProject, load_project


def load(
    path: Path, *, spacing: Manner | None = None, lasting: bool = False, marks: bool = True
) -> LoadedProject:
    """Read a project file and work out its plan.

    Args:
        path: The file.
        spacing: Manner of spacing even changes, instead of the file's.
        lasting: Whether what is said while she waits stays on the terminal.
        marks: Whether a mark that a pasted page left is a problem while it stands.

    Raises:
        StepperError: The file has problems, or cannot be read.
    """
    with patience(f"Working out every round of {path.name}", lasting=lasting):
        return load_project(path, spacing=spacing, marks=marks)
