"""Errors that are the world's fault, each with the exit code it ends the program with.

A fault of our own is any other exception; the command line turns that into exit code 3 and a log file.
Problems inside a project file are values, not exceptions: see `stepper.project.problems`.
"""

from __future__ import annotations

from typing import ClassVar


class StepperError(Exception):
    """Something outside the program prevents it from going on; the text is a sentence for the user."""

    exit_code: ClassVar[int] = 4
    """Process exit code. One of: 1 the project file, 4 the surroundings."""


class ProjectError(StepperError):
    """The project file cannot be used as it stands."""

    exit_code: ClassVar[int] = 1


class SurroundingsError(StepperError):
    """The machine does not give what is needed: a file, a device, a lock, room on the disk."""

    exit_code: ClassVar[int] = 4


class NotInstalledError(SurroundingsError):
    """A package that this needs is not installed."""

    def __init__(self, sentence: str, extra: str) -> None:
        """Say what is missing.

        Args:
            sentence: What is not installed.
            extra: The extra of this program with which it comes; empty if it comes with the program itself.
        """
        super().__init__(sentence)
        self.extra = extra
