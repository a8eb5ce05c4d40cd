"""`stepper knit FILE`: the hands-free session.

This file only reads the command line and chooses the front end; `sitting/assembly` does the rest.
"""

from __future__ import annotations

import argparse
import sys
from importlib.util import find_spec
from pathlib import Path

from stepper.commands.loading import load, tell_as_far, tell_how_far, tell_what_keeps
from stepper.errors import NotInstalledError, ProjectError
from stepper.project.problems import UnsoundFileError
from stepper.sitting.assembly import Settle, SittingOptions, hold_sitting
from stepper.sitting.folding import check_terminal, print_folded
from stepper.sitting.front_end import FrontEnd
from stepper.sitting.line_mode import LineMode, complain
from stepper.sitting.own_cues import add_own_cues
from stepper.sitting.patience import patience
from stepper.sitting.preferences import Preferences, read_preferences
from stepper.sitting.project_file import LoadedProject, load_as_far
from stepper.sitting.session_journal import restore_state
from stepper.store.journal import Journal
from stepper.store.location import journal_path
from stepper.store.reader import journal_exists

EXAMPLES = (
    ("stepper knit garment.yaml", "the full screen, which listens if the ears are installed"),
    ("stepper knit garment.yaml --mute --deaf", "keys only, nothing said"),
    ("stepper knit garment.yaml --plain", "line by line, for a screen reader"),
)


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """Declare what the command takes."""
    parser.add_argument("file", type=Path, metavar="FILE", help="the project file")
    parser.add_argument(
        "--plain",
        action="store_true",
        help="read typed cues from standard input and print what would be said, line by line",
    )
    parser.add_argument("--mute", action="store_true", help="show everything, say nothing")
    parser.add_argument("--deaf", action="store_true", help="take keys and typed cues only")
    parser.add_argument(
        "--listen",
        action="store_true",
        help="listen to the microphone; the full screen does so by itself if the extra [ears] is installed",
    )
    parser.add_argument(
        "--hear", type=Path, metavar="WAV", help="take a recording in place of the microphone"
    )
    parser.add_argument(
        "--page", action="store_true", help="show the sitting in the browser of this computer too"
    )
    parser.add_argument(
        "--share", action="store_true", help="let a phone or tablet of the home network in to that page"
    )
    parser.add_argument("--port", type=_port, metavar="N", help="the port of that page, if not the usual one")
    parser.add_argument(
        "--picture", type=Path, metavar="SVG", help="write the screen as it stands now as a picture, and end"
    )


def run(args: argparse.Namespace) -> int:
    """Knit.

    Returns:
        Exit code.

    Raises:
        StepperError: The project file or the surroundings do not allow it.
        KeyboardInterrupt: Ctrl-C. Every answer already given is on the disk; there is nothing to save.
    """
    loaded, settle = _load(args)
    if args.picture is not None:
        from stepper.sitting.screen_picture import write_picture

        write_picture(loaded, args.picture)
        return 0
    mine = add_own_cues(loaded, read_preferences())
    for remark in mine.remarks:
        complain(remark)
    options = SittingOptions(mute=args.mute, deaf=args.deaf, listen=args.listen, recording=args.hear)
    page = args.page or args.share or args.port is not None
    if not page:
        hold_sitting(loaded, _choose_front_end(loaded, mine, plain=args.plain), mine, options, settle)
        return 0
    if find_spec("aiohttp") is None or find_spec("segno") is None:
        raise NotInstalledError("The page needs packages that are not installed.", "page")
    # Nothing of the server is loaded for a sitting without a page.
    from stepper.lap.address import open_address
    from stepper.sitting.full_screen import list_screen_yarns
    from stepper.sitting.page_beside import PageBeside

    address = open_address(args.port, share=args.share)
    front_end = _choose_front_end(loaded, mine, plain=args.plain, others=True)
    with PageBeside(front_end, list_screen_yarns(loaded), address) as beside:
        hold_sitting(loaded, beside, mine, options, settle)
    return 0


def _load(args: argparse.Namespace) -> tuple[LoadedProject, Settle | None]:
    """Read the project file; one begun from a page that is not read to its end, as far as it goes.

    Returns:
        The file, and what settles the row at which its plan ends; None if it goes to the end.

    Raises:
        StepperError: It has problems, and does not go as far as it is knitted.
    """
    try:
        return load(args.file, lasting=args.plain), None
    except UnsoundFileError as error:
        # Nothing of this is loaded for a file that is sound.
        from stepper.settling.in_sitting import OpenRows
        from stepper.settling.prompting import can_ask
        from stepper.settling.walk import Settling

        with patience(f"Working out {args.file.name} as far as it is read", lasting=args.plain):
            loaded = load_as_far(args.file)
        needles = any(each.kind == "needles" for each in error.problems)
        asks = loaded is None or (needles and not journal_exists(journal_path(args.file)))
        if asks and can_ask() and tell_how_far(args.file, 0):
            print_folded(["First what has to be known before the first round."])
            Settling(path=args.file, to_begin=True).run()
            loaded = load_as_far(args.file)
            keeps = tell_what_keeps(args.file) if loaded is None else ""
            if keeps:
                raise ProjectError(keeps) from error
        if loaded is None or _is_past(loaded):
            raise
        with patience(f"Looking at what {args.file.name} leaves open", lasting=args.plain):
            open_rows = OpenRows(loaded)
        complain(tell_as_far(loaded, len(error.problems)))
        return open_rows.loaded, open_rows.settle


def _is_past(loaded: LoadedProject) -> bool:
    """Return whether more is knitted than a plan holds that ends where the file is open."""
    path = journal_path(loaded.path)
    if not journal_exists(path):
        return False
    with Journal.read_only(path) as journal:
        return restore_state(journal).place.index > len(loaded.plan.rounds)


def _port(text: str) -> int:
    """Read the number of a port."""
    if not text.isascii() or not text.isdigit() or not 1 <= int(text) <= 65535:
        raise argparse.ArgumentTypeError("a port is a number from 1 to 65535")
    return int(text)


def _choose_front_end(
    loaded: LoadedProject, mine: Preferences, *, plain: bool, others: bool = False
) -> FrontEnd:
    """Return the full screen if it can be shown, else line mode, and say why.

    Args:
        loaded: The project file.
        mine: Her settings.
        plain: Whether line mode is asked for.
        others: Whether cues come from a page too, for which a prompt would not stop waiting.
    """
    if plain or not sys.stdin.isatty():
        return LineMode(prompts=False)
    # Nothing of the screen is loaded for a sitting without one.
    from stepper.sitting.full_screen import FullScreen

    terminal = check_terminal()
    if not terminal.why_not:
        return FullScreen(loaded, terminal, mine)
    complain(f"{terminal.why_not}; going on line by line.")
    return LineMode(prompts=not others)
