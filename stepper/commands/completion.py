"""`stepper completion SHELL`: what a shell needs to complete this program's words on the tab key."""

from __future__ import annotations

import argparse
import os
import sys

from stepper.commands.parser import HelpfulParser
from stepper.errors import NotInstalledError
from stepper.project.yaml_file.missing_file import PROJECT_ENDINGS

SHELLS = {
    "bash": "echo 'eval \"$(stepper completion bash)\"' >> ~/.bashrc",
    "zsh": "echo 'eval \"$(stepper completion zsh)\"' >> ~/.zshrc",
    "fish": "stepper completion fish > ~/.config/fish/completions/stepper.fish",
    "powershell": "stepper completion powershell >> $PROFILE",
}
"""Every shell, with the line to type once; from then on each new terminal completes."""

EXAMPLES = tuple(
    (line, f"{shell}: type this once, then open a new terminal") for shell, line in SHELLS.items()
)


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument("shell", choices=list(SHELLS), metavar="SHELL", help=", ".join(SHELLS))


def run(args: argparse.Namespace) -> int:
    """Print the script.

    Returns:
        Exit code.

    Raises:
        NotInstalledError: The library is not there.
    """
    try:
        from argcomplete.shell_integration import shellcode
    except ImportError as error:
        raise NotInstalledError(
            "Completion needs the package argcomplete, which is not installed.", ""
        ) from error
    print(shellcode(["stepper"], shell=args.shell))
    return 0


def is_asked() -> bool:
    """Return whether a shell has started the program to learn how a word could go on."""
    return "_ARGCOMPLETE" in os.environ


def words_so_far() -> list[str]:
    """Return the words of the line that is being typed, without the program's name."""
    return os.environ.get("COMP_LINE", "").split()[1:]


def answer(parser: HelpfulParser) -> None:
    """Tell the shell how the word could go on, and end the process.

    Project files and folders are offered where a garment is wanted, any file elsewhere.
    """
    try:
        import argcomplete
        from argcomplete.completers import FilesCompleter
    except ImportError:
        sys.exit(1)
    project_files = FilesCompleter([each.removeprefix(".") for each in PROJECT_ENDINGS])
    for action in parser.every_action():
        if action.metavar == "FILE":
            vars(action)["completer"] = project_files
    argcomplete.autocomplete(parser)
