"""Load the project file of a command, and say so where that takes its time."""

from __future__ import annotations

from pathlib import Path

from stepper.craft.even.manners import Manner
from stepper.project.page.marks import is_from_page
from stepper.project.page.unread.left_open import find_left_open
from stepper.project.yaml_file.source import read_text
from stepper.sitting.patience import patience
from stepper.sitting.project_file import LoadedProject, find_in_the_way, load_as_far, load_project


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


def tell_how_far(path: Path, places: int) -> str:
    """Say how far a file begun from a page can be knitted though it has problems; empty if not at all.

    Args:
        path: The file.
        places: How many places of it are open.
    """
    loaded = load_as_far(path)
    if loaded is not None:
        return f"{tell_as_far(loaded, places)} stepper knit {path}; at the keyboard: stepper settle {path}"
    text = read_text(path)
    if not is_from_page(text) or not find_left_open(text):
        return ""
    return (
        "Once its size and what stands in front of the pattern are settled, it can be knitted "
        f"as far as it is read: stepper settle {path}, then stepper knit {path}"
    )


def tell_what_keeps(path: Path) -> str:
    """Say in a sentence why nothing of a page can be knitted yet; empty if that is not known.

    Args:
        path: The file.
    """
    problem = find_in_the_way(path)
    if problem is None:
        return ""
    line = f"{path.name} cannot be begun yet, for line {problem.line}"
    said = problem.message if problem.message.endswith((".", "?")) else f"{problem.message}."
    return f"{line}: {said} {problem.hint} Then: stepper knit {path}"


def tell_as_far(loaded: LoadedProject, places: int) -> str:
    """Say how far a file can be knitted of which some places are open.

    Args:
        loaded: The file, read as far as it can be.
        places: How many problems it has, which are told where no row of it is marked.
    """
    rounds = len(loaded.plan.rounds)
    line = loaded.plan.open.line if loaded.plan.open is not None else 0
    places = len(find_left_open(loaded.text.replace("\r\n", "\n"))) or places  # as settle counts them
    many = "1 place is" if places == 1 else f"{places} places are"
    if not rounds:
        first = f"The first row, in line {line}, is not read, and you are asked about it first"
        return f"{many} open in {loaded.path.name}. {first}; what is read behind it is knitted."
    return (
        f"{many} open in {loaded.path.name}. Up to line {line} it can be knitted ({rounds} "
        f"{'round' if rounds == 1 else 'rounds'}); there you are asked."
    )
