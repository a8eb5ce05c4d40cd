"""The command line: wiring, and the one place that prints failures."""

from __future__ import annotations

import atexit
import gc
import sys
from collections.abc import Sequence
from contextlib import suppress
from typing import TYPE_CHECKING

from stepper import __version__
from stepper.commands import completion
from stepper.commands.error_text import error_text
from stepper.commands.parser import HelpfulParser
from stepper.commands.standard_streams import guard_streams
from stepper.errors import StepperError, SurroundingsError
from stepper.sitting.folding import terminal_columns, write_folded
from stepper.sitting.patience import patience

if TYPE_CHECKING:
    from stepper.commands.command import Command

COMMANDS: dict[str, str] = {
    "knit": "knit hands-free: the next instruction on a cue, key or pedal",
    "start": "write a commented project file, from your answers or from the text of a printed pattern",
    "settle": "settle by short answers what a pasted page left open",
    "wording": "print every wording of a pattern line that is read, or the parts with one word",
    "check": "report every problem of a project file, with line and column",
    "plan": "print every round of the garment",
    "fit": "show what it will measure and which sizes can be blended",
    "yarn": "show how much of each yarn it takes, what to buy, and whether it lasts",
    "colours": "show which yarns vanish beside each other in grey or for other eyes, and what would help",
    "notes": "write down what was altered and how it went, as Markdown",
    "spread": "spread an even increase or decrease: 204 to 240",
    "voice": "set up ears and mouth: what is there, install a model, try what is heard",
    "where": "say where the knitting stands, for one garment or for all in a folder",
    "settings": "show your own settings and their file, or open it",
    "completion": "print what a shell needs to complete commands, options and files on the tab key",
}
"""Every command and what it does. Each is a module of the same name in this package."""

EXAMPLES = (
    ("stepper knit sample_projects/pullover.yaml", "knit the sample garment"),
    ("stepper knit --help", "what a command takes, with examples of it"),
)

INTERRUPTED = 130

_OBJECTS_BETWEEN_SEARCHES = 200_000
"""Objects made before Python searches for circles of them: what a start and a plan make stays, and hardly any
is in a circle. After every 700, as Python has it, the searches took a tenth of a start."""


def main(argv: Sequence[str] | None = None) -> int:
    """Run the command line.

    Args:
        argv: The arguments after the program's name; those of the process if None.

    Returns:
        Exit code: 0 fine, 1 problems in the project file, 2 wrong command line, 3 our bug, 4 the
        surroundings, 130 interrupted.
    """
    gc.set_threshold(_OBJECTS_BETWEEN_SEARCHES, 20, 10)
    atexit.register(gc.freeze)  # nor does Python search all there is once more as it ends
    words = list(sys.argv[1:] if argv is None else argv)
    if completion.is_asked():
        completion.answer(_parser(completion.words_so_far())[0])
    try:
        with guard_streams():
            return _run(words)
    except BrokenPipeError:
        # The reader of our output is gone; what was committed stands, and there is nobody to tell.
        return 0


def _run(words: list[str]) -> int:
    """Run a command, and print what went wrong."""
    try:
        with patience("Starting"):
            parser, module = _parser(words)
        try:
            args = parser.parse_args(words)
        except SystemExit:  # the help was printed, or what is wrong with the command line
            sys.stdout.flush()
            raise
        if module is None:
            parser.print_help()
            return 2
        code = module.run(args)
        sys.stdout.flush()
        return code
    except StepperError as error:
        with suppress(OSError, SurroundingsError):  # nobody may be there to be told
            write_folded(error_text(error, terminal_columns(sys.stderr)), sys.stderr)
        return error.exit_code
    except KeyboardInterrupt:
        return INTERRUPTED
    except BrokenPipeError:
        raise
    except Exception:
        from stepper.commands.failure import report

        return report()


def _parser(words: list[str]) -> tuple[HelpfulParser, Command | None]:
    """Build the parser, loading only the module of the command that is called."""
    parser = HelpfulParser(
        prog="stepper",
        description="A hands-free, voice-friendly round counter and instruction stepper for hand knitting.",
        examples=EXAMPLES,
    )
    parser.add_argument("--version", action="version", version=f"stepper {__version__}")
    called = next((word for word in words if not word.startswith("-")), "")
    commands = parser.add_subparsers(metavar="COMMAND")
    module: Command | None = None
    for name, summary in COMMANDS.items():
        described = f"{summary[0].upper()}{summary[1:]}."
        if name != called:
            commands.add_parser(name, help=summary, description=described)
            continue
        module = _load(name)
        inner = commands.add_parser(name, help=summary, description=described, examples=module.EXAMPLES)
        inner.set_defaults(parser=inner)
        module.add_arguments(inner)
        parser.called = inner
    return parser, module


def _load(name: str) -> Command:
    """Load the module of a command and only what that command needs."""
    module: Command
    match name:
        case "knit":
            from stepper.commands import knit as module
        case "start":
            from stepper.commands import start as module
        case "settle":
            from stepper.commands import settle as module
        case "wording":
            from stepper.commands import wording as module
        case "check":
            from stepper.commands import check as module
        case "plan":
            from stepper.commands import plan as module
        case "fit":
            from stepper.commands import fit as module
        case "yarn":
            from stepper.commands import yarn as module
        case "colours":
            from stepper.commands import colours as module
        case "notes":
            from stepper.commands import notes as module
        case "spread":
            from stepper.commands import spread as module
        case "voice":
            from stepper.commands import voice as module
        case "where":
            from stepper.commands import where as module
        case "settings":
            from stepper.commands import settings as module
        case "completion":
            from stepper.commands import completion as module
        case _:
            raise AssertionError(f"{name} is in the table and has no module here.")
    return module
