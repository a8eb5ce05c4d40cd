"""What a module needs to be a command."""

from __future__ import annotations

import argparse
from typing import Protocol

from stepper.commands.parser import Examples, HelpfulParser


class Command(Protocol):
    """A module that is a command."""

    @property
    def EXAMPLES(self) -> Examples:  # noqa: N802 - a constant of the module
        """Command lines for its help, each with what it does."""

    def add_arguments(self, parser: HelpfulParser) -> None:
        """Declare what the command takes."""

    def run(self, args: argparse.Namespace) -> int:
        """Run the command and return the exit code."""
