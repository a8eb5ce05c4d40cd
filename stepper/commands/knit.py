"""`stepper knit FILE`: the hands-free session.

This file only joins things together: the project file, the journal, the session, what is shown and what is
said.
"""

from __future__ import annotations

import argparse
import importlib
import os
import sys
from collections.abc import Callable, Iterator
from contextlib import ExitStack
from datetime import datetime
from pathlib import Path
from threading import Thread, Timer
from typing import TYPE_CHECKING

from stepper.session.cues import Cue, Enough
from stepper.sitting.conductor import Conductor
from stepper.sitting.live_ears import NOT_INSTALLED, LiveEars, ears_installed
from stepper.sitting.own_cues import with_cues_of
from stepper.sitting.preferences import Preferences, preferences
from stepper.sitting.project_file import Loaded, load
from stepper.sitting.recognisers import FilmSwitch, heard_in
from stepper.sitting.session_journal import Keeper, take_up
from stepper.store.journal import Journal
from stepper.store.location import journal_path

if TYPE_CHECKING:
    from stepper.mouth.ports import Speaker

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
        "--listen",
        action="store_true",
        help="listen to the microphone, which the full screen does by itself where the extra [ears] is there",
    )
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
        importlib.import_module("stepper.sitting.full_screen").write_picture(loaded, args.picture)
        return 0
    mine = with_cues_of(loaded, preferences())
    for remark in mine.remarks:
        _complain(remark)
    plain = args.plain or not sys.stdin.isatty()
    if not plain:
        showing = importlib.import_module("stepper.sitting.full_screen")
        terminal = showing.terminal_fitness()
        if not terminal.why_not:
            return int(showing.sit(loaded, terminal, mine, args))
        _complain(f"{terminal.why_not}; going on line by line.")
    film = FilmSwitch(mine.hearing.address)
    recording = None if args.hear is None or args.deaf else heard_in(args.hear, loaded.plan, film, mine)
    with ExitStack() as stack:
        speaker = None if args.mute else _speaker(mine)
        if speaker is not None:
            stack.callback(speaker.close)
        journal = stack.enter_context(Journal.open(journal_path(loaded.path), title=loaded.plan.title))
        conductor = _begun(loaded, journal, speaker, mine, film)
        if args.listen and not args.deaf and recording is None:
            _open_ears(conductor, loaded, speaker, mine, film, stack)
        if recording is not None:
            _follow(conductor, recording, heard=True)
        elif plain:
            Thread(target=_read_typed, args=(conductor,), name="typed", daemon=True).start()
            conductor.run()
        else:
            _follow(conductor, _prompted(), heard=False)
        if speaker is not None:
            speaker.wait(timeout=LAST_WORDS_S)
    return 0


def _begun(
    loaded: Loaded, journal: Journal, speaker: Speaker | None, mine: Preferences, film: FilmSwitch
) -> Conductor:
    """Take up the garment where it was left."""
    taken = take_up(loaded, journal, now())
    # The project text is kept before anything refers to it by its fingerprint.
    journal.keep_plan(loaded.text, taken.fingerprint, now())

    def later(seconds: float, cue: Cue) -> None:
        timer = Timer(seconds, lambda: conductor.offer(cue))
        timer.daemon = True
        timer.start()

    conductor = Conductor(
        taken.session,
        keep=Keeper(journal),
        show=_show,
        clock=now,
        speaker=speaker,
        own_wordings=mine.wordings,
        sounds=mine.hearing.sounds,
        film=film.turn,
        later=later,
        rest=mine.care.rest,
        silence_s=60.0 * mine.care.silence_minutes,
    )
    _show(f"{loaded.plan.title}.")
    conductor.begin(taken.fingerprint, taken.changed)
    return conductor


def _follow(conductor: Conductor, cues: Iterator[str], *, heard: bool) -> None:
    """Follow cues one by one until they end or the sitting does."""
    for line in cues:
        conductor.offer_words(line, heard=heard)
        conductor.drain()
        if conductor.closed:
            return
    conductor.offer(Enough())
    conductor.drain()


def _open_ears(
    conductor: Conductor,
    loaded: Loaded,
    speaker: Speaker | None,
    mine: Preferences,
    film: FilmSwitch,
    stack: ExitStack,
) -> None:
    """Listen to the microphone until the stack is left; what was heard is told beside what is answered."""
    if not ears_installed():
        _complain(f"Nothing is heard, since {NOT_INSTALLED}; the session goes on by typed cues.")
        return

    def hear(text: str) -> None:
        _complain(f'Heard "{text}".' if text else "Heard something that is no cue.")
        conductor.offer_words(text, heard=True)

    ears = LiveEars(
        loaded.plan,
        speaker,
        mine,
        hear=hear,
        tell=lambda is_open, sentence: _complain(sentence),
        is_addressed=film,
    )
    stack.callback(ears.close)


def _read_typed(conductor: Conductor) -> None:
    """Hand typed lines over until the end of the input, which is the same as enough."""
    for line in _typed():
        conductor.offer_words(line)
    conductor.offer(Enough())


def _typed() -> Iterator[str]:
    """Yield the lines of standard input, each as soon as it is whole.

    They are read from the descriptor: a thread that waits inside Python's own buffer when the program ends
    would bring it down.
    """
    encoding, held = sys.stdin.encoding or "utf-8", b""
    while True:
        try:
            more = os.read(sys.stdin.fileno(), 65_536)
        except (OSError, ValueError):  # the input has gone, which is its end
            more = b""
        *whole, held = (held + more).split(b"\n") if more else (held, b"")
        for line in whole:
            text = line.decode(encoding, "replace").rstrip("\r")
            if text.strip():
                yield text
        if not more:
            return


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


def _speaker(mine: Preferences) -> Speaker:
    """Open the voice; where there is no sound, say so once and go on with text."""
    choose = importlib.import_module("stepper.mouth.open_speaker")
    speaker: Speaker
    speaker, remark = choose.open_speaker(mine.speech, _complain)
    if remark is not None:
        _complain(remark)
    return speaker


def _complain(sentence: str) -> None:
    print(sentence, file=sys.stderr, flush=True)
