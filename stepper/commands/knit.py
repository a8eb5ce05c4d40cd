"""`stepper knit FILE`: the hands-free session.

This file only joins things together: the project file, the journal, the session, what is shown and what is
said.
"""

from __future__ import annotations

import argparse
import importlib
import sys
from collections.abc import Callable, Iterator
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING

from stepper.commands.hearing import heard_in
from stepper.commands.keeping import Keeper, take_up
from stepper.commands.loading import Loaded, load
from stepper.conductor import Conductor
from stepper.session.cues import Enough
from stepper.store.journal import Journal
from stepper.store.location import journal_path

if TYPE_CHECKING:
    from stepper.voice.ports import Speaker

LAST_WORDS_S = 20.0
"""How long the last line may take to be said before the program ends. Unit: seconds."""


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
        "--hear", type=Path, metavar="WAV", help="take a recording in place of the microphone"
    )
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
    loaded = load(args.file)
    if args.picture is not None:
        importlib.import_module("stepper.commands.showing").write_picture(loaded, args.picture)
        return 0
    plain = args.plain or not sys.stdin.isatty()
    if not plain:
        showing = importlib.import_module("stepper.commands.showing")
        terminal = showing.terminal_fitness()
        if not terminal.why_not:
            return int(showing.sit(loaded, terminal, mute=args.mute, deaf=args.deaf, recording=args.hear))
        _complain(f"{terminal.why_not}; going on line by line.")
    cues = _typed(plain) if args.hear is None else heard_in(args.hear, loaded.plan)
    speaker = None if args.mute else _speaker()
    try:
        with Journal.open(journal_path(loaded.path), title=loaded.plan.title) as journal:
            _knit(loaded, journal, speaker, cues, heard=args.hear is not None)
    finally:
        if speaker is not None:
            speaker.close()
    return 0


def _knit(
    loaded: Loaded, journal: Journal, speaker: Speaker | None, cues: Iterator[str], *, heard: bool
) -> None:
    """Take up the garment where it was left and follow the cues."""
    taken = take_up(loaded, journal, now())
    # The project text is kept before anything refers to it by its fingerprint.
    journal.keep_plan(loaded.text, taken.fingerprint, now())
    conductor = Conductor(taken.session, keep=Keeper(journal), show=_show, clock=now, speaker=speaker)
    _show(f"{loaded.plan.title}.")
    if taken.changed is not None:
        conductor.carry_out(taken.changed)
    conductor.begin(taken.fingerprint)
    for line in cues:
        conductor.offer_words(line, heard=heard)
        conductor.drain()
        if conductor.closed:
            break
    conductor.offer(Enough())
    conductor.drain()
    if speaker is not None:
        speaker.wait(timeout=LAST_WORDS_S)


def _typed(plain: bool) -> Iterator[str]:
    """Yield typed lines until the end of the input."""
    if not plain:
        yield from _prompted()
        return
    if hasattr(sys.stdin, "reconfigure"):
        sys.stdin.reconfigure(errors="replace")
    # Line by line and not through iteration over the file, which would read ahead.
    while line := sys.stdin.readline():
        if line.strip():
            yield line.rstrip("\n")


def _prompted() -> Iterator[str]:
    """Yield lines from a prompt with history, until Ctrl-D."""
    prompts = importlib.import_module("prompt_toolkit")
    prompt: Callable[[str], str] = prompts.PromptSession().prompt
    while True:
        try:
            line = prompt("> ")
        except EOFError:
            return
        if line.strip():
            yield line


def _show(line: str) -> None:
    print(line, flush=True)


def now() -> str:
    """Give the time with its offset from UTC, to the second. ISO 8601."""
    return datetime.now().astimezone().isoformat(timespec="seconds")


def _speaker() -> Speaker:
    """Open the voice; where there is no sound, say so once and go on with text."""
    choose = importlib.import_module("stepper.voice.choose")
    settings = importlib.import_module("stepper.voice.settings")
    speaker: Speaker
    speaker, remark = choose.open_speaker(settings.SpeechSettings(), _complain)
    if remark is not None:
        _complain(remark)
    return speaker


def _complain(sentence: str) -> None:
    print(sentence, file=sys.stderr, flush=True)
