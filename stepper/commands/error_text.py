"""What is printed of an error: problems as wide as the terminal, and what to type for what is missing."""

from __future__ import annotations

from stepper.errors import NotInstalledError, StepperError
from stepper.project.problems import UnsoundFileError


def error_text(error: StepperError, columns: int | None) -> str:
    """Return the text for standard error.

    Args:
        error: What ended the command.
        columns: Width of the terminal; None if it goes elsewhere.
    """
    if isinstance(error, UnsoundFileError):
        return error.told(columns)
    if isinstance(error, NotInstalledError):
        # Looked up only now: how the program was installed is on the disk.
        from stepper.sitting.installation import how_to_install

        return f"{error}\nTo install it: {how_to_install(error.extra)}"
    return str(error)
