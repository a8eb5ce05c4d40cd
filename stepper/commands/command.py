"""What a module needs to be a command."""

from __future__ import annotations

import argparse
from typing import Protocol


class Command(Protocol):
    """A module that is a command."""

    def add_arguments(self, parser: argparse.ArgumentParser) -> None:
        """Declare what the command takes."""
        ...

    def run(self, args: argparse.Namespace) -> int:
        """Run the command and return the exit code."""
        ...
