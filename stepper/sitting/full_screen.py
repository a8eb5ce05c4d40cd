"""Join the full screen to a session: the same journal, cues and voice as line by line."""

from __future__ import annotations

import argparse
import importlib
import os
import sys
from collections.abc import Iterator, Sequence
from contextlib import ExitStack
from pathlib import Path
from threading import Thread
from typing import TYPE_CHECKING, Any

from stepper.craft.colour import rgb_from_hex
from stepper.devices.stderr import stderr_aside
from stepper.errors import StepperError, SurroundingsError
from stepper.mouth.silent import TextOnlySpeaker
from stepper.screen.app import Screen
from stepper.screen.course import course_of
from stepper.screen.device_status import DeviceStatus, MouthState
from stepper.screen.fitness import Fitness, fitness
from stepper.screen.picture import svg
from stepper.screen.ports import ScreenSetup
from stepper.screen.rows import Row, text_of
from stepper.screen.scene import Scene
from stepper.screen.style import Terminal
from stepper.screen.view import view
from stepper.screen.yarns import Yarns, yarns_of
from stepper.session.codec import decode_event
from stepper.session.events import Event
from stepper.sitting.conductor import Conductor
from stepper.sitting.live_ears import GETTING_READY, NOT_INSTALLED, LiveEars, ears_installed
from stepper.sitting.preferences import Preferences
from stepper.sitting.project_file import Loaded
from stepper.sitting.recognisers import FilmSwitch, heard_in
from stepper.sitting.session_journal import Keeper, journal_to_read, take_up
from stepper.store.journal import Journal
from stepper.store.location import journal_path
from stepper.store.reader import JournalReader

if TYPE_CHECKING:
    from stepper.mouth.ports import Speaker

LATEST = 500
"""Entries of the journal that its page shows. What lies further back is in the journal all the same."""
PICTURE = (80, 24)
"""Columns and rows of a picture."""
LAST_WORDS_S = 20.0
"""How long the last line may take to be said before the program ends. Unit: seconds."""
_NO_MICROPHONE = "keys and typed cues only"


def terminal_fitness() -> Fitness:
    """Tell what the terminal of this process can do."""
    return fitness(
        os.environ,
        is_terminal=sys.stdout.isatty(),
        encoding=sys.stdout.encoding or "",
        windows=sys.platform == "win32",
    )


def sit(loaded: Loaded, terminal: Fitness, mine: Preferences, args: argparse.Namespace) -> int:
    """Knit on the full screen.

    Args:
        loaded: The project file.
        terminal: What the terminal can do.
        mine: Her settings.
        args: What the command was called with.

    Returns:
        Exit code.

    Raises:
        StepperError: The journal or the recording cannot be used.
        KeyboardInterrupt: She left at once.
        BrokenPipeError: The terminal has gone.
    """
    film = FilmSwitch(mine.hearing.address)
    cues = None if args.hear is None or args.deaf else heard_in(args.hear, loaded.plan, film, mine)
    why_no_ears = "" if cues is not None else _why_no_ears(args, mine)
    later: list[Screen] = []
    speaker, why_silent = _speaker(later, mine, mute=args.mute)
    try:
        with Journal.open(journal_path(loaded.path), title=loaded.plan.title) as journal:
            screen = Screen(
                ScreenSetup(
                    yarns=yarns(loaded),
                    history=lambda: latest_events(journal),
                    depth=terminal.depth,
                    blocks=terminal.blocks,
                    voice=speaker,
                    why_no_voice=why_silent,
                    why_no_ears=why_no_ears,
                    own_words=mine.wordings,
                )
            )
            later.append(screen)
            conductor = _begun(loaded, journal, screen, speaker, mine, film)
            with stderr_aside(), ExitStack() as stack:
                if cues is not None:
                    Thread(target=_listen, args=(cues, screen), name="ears", daemon=True).start()
                elif why_no_ears == GETTING_READY:
                    stack.callback(_live_ears(loaded, screen, speaker, mine, film).close)
                screen.run(conductor)
            print("\n".join(screen.last_lines), flush=True)
            if speaker is not None:
                speaker.wait(timeout=LAST_WORDS_S)
    finally:
        if speaker is not None:
            speaker.close()
    return 0


def write_picture(loaded: Loaded, target: Path) -> None:
    """Write the screen as it would come up now as SVG. The journal is read, never written.

    Args:
        loaded: The project file.
        target: Where to; a file that is there is replaced.

    Raises:
        SurroundingsError: The journal cannot be read or the picture not be written.
    """
    now = importlib.import_module("stepper.commands.knit").now
    with ExitStack() as stack:
        journal = journal_to_read(journal_path(loaded.path))
        if journal is not None:
            stack.enter_context(journal)
        session = take_up(loaded, journal, now()).session
    devices = DeviceStatus(why_no_ears=_NO_MICROPHONE, mouth=MouthState.QUIET)
    scene = Scene(course=course_of(session.plan), state=session.state, yarns=yarns(loaded), devices=devices)
    rows = view(scene, Terminal(columns=PICTURE[0], rows=PICTURE[1]))
    try:
        target.write_text(svg(rows, PICTURE[0], title=_in_words(rows)), encoding="utf-8")
    except OSError as error:
        raise SurroundingsError(f"{target} cannot be written: {error.strerror}.") from error


def _in_words(rows: Sequence[Row]) -> str:
    """Say what is on the screen for those who cannot see the picture: its words without its blocks."""
    text = " ".join(text_of(row) for row in rows)
    return " ".join("".join(sign if sign.isascii() else " " for sign in text).split())


def yarns(loaded: Loaded) -> Yarns:
    """Give the yarns of a project file with their colours and signs."""
    colours = {
        key: None if yarn.colour is None else rgb_from_hex(yarn.colour)
        for key, yarn in loaded.project.yarns.items()
    }
    return yarns_of(loaded.plan.yarns, colours)


def latest_events(journal: JournalReader) -> Iterator[tuple[int, Event]]:
    """Yield the latest events with their numbers, in order."""
    for entry in journal.entries(after=max(0, journal.count() - LATEST)):
        yield entry.seq, decode_event(entry.kind, entry.version, entry.body)


def _why_no_ears(args: argparse.Namespace, mine: Preferences) -> str:
    """Tell why nothing is heard when the screen comes up."""
    if args.deaf:
        return "closed by --deaf"
    if not ears_installed():
        return NOT_INSTALLED
    return GETTING_READY if args.listen or mine.hearing.listen else "closed in the settings"


def _live_ears(
    loaded: Loaded, screen: Screen, speaker: Speaker | None, mine: Preferences, film: FilmSwitch
) -> LiveEars:
    """Listen to the microphone and keep the screen honest about it."""

    def tell(is_open: bool, sentence: str) -> None:
        reason = sentence.removeprefix("Nothing is heard, since ").partition(";")[0].rstrip(".")
        screen.ears_end("" if is_open else reason[:1].lower() + reason[1:])

    return LiveEars(loaded.plan, speaker, mine, hear=screen.hear, tell=tell, is_addressed=film)


def _begun(
    loaded: Loaded,
    journal: Journal,
    screen: Screen,
    speaker: Speaker | None,
    mine: Preferences,
    film: FilmSwitch,
) -> Conductor:
    """Take up the garment where it was left."""
    now = importlib.import_module("stepper.commands.knit").now
    taken = take_up(loaded, journal, now())
    # The project text is kept before anything refers to it by its fingerprint.
    journal.keep_plan(loaded.text, taken.fingerprint, now())
    conductor = Conductor(
        taken.session,
        keep=Keeper(journal),
        show=screen.show,
        clock=now,
        speaker=speaker,
        own_wordings=mine.wordings,
        turn=screen.turn,
        film=film.turn,
        sounds=mine.hearing.sounds,
        later=screen.later,
        rest=mine.care.rest,
        silence_s=60.0 * mine.care.silence_minutes,
    )
    conductor.begin(taken.fingerprint, taken.changed)
    return conductor


def _listen(cues: Iterator[str], screen: Screen) -> None:
    """Hand over what is heard until it ends, and say why it ended."""
    why = "the recording has ended"
    try:
        for text in cues:
            screen.hear(text)
    except StepperError as error:
        why = str(error)
    except Exception as fault:  # a fault in the ears must not take the knitting with it
        why = f"a fault in them ({type(fault).__name__}: {fault})"
    screen.ears_end(why)


def _speaker(later: list[Screen], mine: Preferences, *, mute: bool) -> tuple[Speaker | None, str]:
    """Open the voice.

    Args:
        later: Holds the screen once there is one; it is told when the voice stops.
        mine: Her settings.
        mute: Whether to leave it closed.

    Returns:
        The speaker, and why nothing will be said; empty where something will.
    """
    if mute:
        return None, "closed by --mute"
    choose: Any = importlib.import_module("stepper.mouth.open_speaker")

    def tell(sentence: str) -> None:
        for screen in later:
            screen.remark(sentence)

    speaker, remark = choose.open_speaker(mine.speech, tell)
    if not isinstance(speaker, TextOnlySpeaker):
        return speaker, ""
    reason = (remark or "it does not start").removeprefix("There is no voice, since ").partition(";")[0]
    return speaker, reason
