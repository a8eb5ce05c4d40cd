"""Put a sitting together and hold it: project file, journal, voice, ears and conductor behind a front end."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import ExitStack
from pathlib import Path

from stepper.devices.played_sound import PlayedSound
from stepper.mouth.ports import Speaker
from stepper.plan.under_way.fingerprint import fingerprint
from stepper.records import dataclass
from stepper.screen.device_status import GETTING_READY
from stepper.session.events import Event
from stepper.session.state import OpenAnswer
from stepper.sitting.clock import now
from stepper.sitting.conductor import Conductor
from stepper.sitting.front_end import FrontEnd, SittingView
from stepper.sitting.installation import how_to_install
from stepper.sitting.live_ears import NOT_INSTALLED, LiveEars, can_interrupt, why_not_installed
from stepper.sitting.patience import patience
from stepper.sitting.ports import ConductorPorts, ConductorSettings, GoesOn, Keep
from stepper.sitting.preferences import Preferences
from stepper.sitting.project_file import LoadedProject
from stepper.sitting.recognisers import (
    NONE_HERE,
    Hearing,
    OpenQuestion,
    Toggle,
    hear_recording,
)
from stepper.sitting.session_journal import EventKeeper, read_events, resume_session
from stepper.store.journal import Journal
from stepper.store.location import journal_path
from stepper.store.reader import JournalReader

LAST_WORDS_S = 20.0
"""How long the program waits for the last line to be said before it ends. Unit: seconds."""
LATEST = 500
"""Number of entries that the journal's page shows. Older ones are still in the journal."""


@dataclass(frozen=True, slots=True, kw_only=True)
class SittingOptions:
    """What is asked for on the command line."""

    mute: bool = False
    """Whether to say nothing."""
    deaf: bool = False
    """Whether to take keys and typed cues only."""
    listen: bool = False
    """Whether to listen to the microphone, whatever the settings say."""
    recording: Path | None = None
    """A WAV file in place of the microphone."""


Settle = Callable[[OpenAnswer], LoadedProject | str]
"""Write what a row is that was not read into the project file. Return the file as it is then, or why the row
cannot be kept so, as a sentence."""


def hold_sitting(
    loaded: LoadedProject,
    front_end: FrontEnd,
    mine: Preferences,
    options: SittingOptions,
    settle: Settle | None = None,
) -> None:
    """Knit until the sitting is over.

    Args:
        loaded: The project file.
        front_end: Where she reads and types.
        mine: Her settings.
        options: What is asked for on the command line.
        settle: Settles a row at which the plan ends because it is not read; None if none can be.

    Raises:
        StepperError: The journal or the recording cannot be used.
        KeyboardInterrupt: She left at once. Every answer already given is on the disk.
        BrokenPipeError: The terminal has gone.
    """
    hearing = Hearing(film=Toggle(mine.hearing.address), question=OpenQuestion(), ears=Toggle(False))
    recording = _open_recording(loaded, mine, options, hearing)
    why_no_ears = "" if recording is not None else _why_no_ears(front_end, mine, options)
    with ExitStack() as stack:
        played = PlayedSound() if can_interrupt(mine.hearing) and why_no_ears == GETTING_READY else None
        speaker, why_no_voice = _open_voice(front_end, mine, played, mute=options.mute)
        if speaker is not None:
            stack.callback(speaker.close)
        journal = stack.enter_context(Journal.open(journal_path(loaded.path), title=loaded.plan.title))
        taken = resume_session(loaded, journal, now())
        # The project text is kept before anything refers to its fingerprint.
        journal.keep_plan(loaded.text, taken.fingerprint, now())
        ports = _ports(EventKeeper(journal), front_end, speaker, hearing, _settling(settle, journal))
        conductor = Conductor(taken.session, ports, _settings(mine))
        front_end.open(
            SittingView(
                title=loaded.plan.title,
                conductor=conductor,
                history=lambda: read_latest_events(journal),
                whole_history=lambda: read_events(journal),
                speaker=speaker,
                why_no_voice=why_no_voice,
                why_no_ears=why_no_ears,
                film=hearing.film,
            )
        )
        conductor.begin(taken.fingerprint, taken.changed)
        with front_end.guard_terminal(), ExitStack() as ears:
            if why_no_ears == GETTING_READY:
                live = _open_ears(loaded, conductor, front_end, mine, hearing, speaker, played)
                ears.callback(live.close)
            elif options.listen:
                _report_missing_ears(front_end, why_no_ears)
            front_end.run(recording)
        front_end.close()
        if speaker is not None:
            speaker.wait(timeout=LAST_WORDS_S)


def _open_recording(
    loaded: LoadedProject, mine: Preferences, options: SittingOptions, hearing: Hearing
) -> Iterator[str] | None:
    """Return what is heard in a recording; None if none stands in the microphone's place."""
    if options.recording is None or options.deaf:
        return None
    with patience("Loading the ears", lasting=True):
        recording = hear_recording(options.recording, loaded.plan, hearing.film, mine, hearing.question)
    hearing.ears.turn(True)
    return recording


def read_latest_events(journal: JournalReader) -> list[tuple[int, Event]]:
    """Return the latest events with their numbers, in order."""
    return read_events(journal, after=max(0, journal.count() - LATEST))


def _settling(settle: Settle | None, journal: Journal) -> Callable[[OpenAnswer], GoesOn | str] | None:
    """Return what settles a row; the text that follows is kept before anything refers to its fingerprint."""
    if settle is None:
        return None

    def settled(answer: OpenAnswer) -> GoesOn | str:
        outcome = settle(answer)
        if isinstance(outcome, str):
            return outcome
        mark = fingerprint(outcome.plan)
        journal.keep_plan(outcome.text, mark, now())
        return GoesOn(plan=outcome.plan, fingerprint=mark)

    return settled


def _ports(
    keep: Keep,
    front_end: FrontEnd,
    speaker: Speaker | None,
    hearing: Hearing,
    settle: Callable[[OpenAnswer], GoesOn | str] | None,
) -> ConductorPorts:
    return ConductorPorts(
        keep=keep,
        show=front_end.show,
        clock=now,
        speaker=speaker,
        turn=front_end.turn,
        film=hearing.film.turn,
        asked=hearing.question.ask,
        listens=hearing.ears,
        schedule=front_end.schedule,
        settle=settle,
    )


def _settings(mine: Preferences) -> ConductorSettings:
    return ConductorSettings(
        own_wordings=mine.wordings,
        address_word=mine.hearing.address_word,
        film=mine.hearing.address,
        sounds=mine.hearing.sounds,
        rest=mine.care.rest,
        speech=mine.speech,
        silence_s=60.0 * mine.care.silence_minutes,
    )


def _why_no_ears(front_end: FrontEnd, mine: Preferences, options: SittingOptions) -> str:
    """Return why nothing is heard when the sitting begins."""
    if options.deaf:
        return "closed by --deaf"
    missing = why_not_installed()
    if missing:
        return missing
    listens = options.listen or (front_end.listens_by_itself and mine.hearing.listen)
    return GETTING_READY if listens else "closed in the settings"


def _report_missing_ears(front_end: FrontEnd, why_no_ears: str) -> None:
    """Say why nothing is heard though it was asked for, and what to type where that helps."""
    if why_no_ears in (NOT_INSTALLED, NONE_HERE):
        front_end.report_ears(
            False, f"Nothing is heard, since {why_no_ears}; the session goes on by typed cues."
        )
    if why_no_ears == NOT_INSTALLED:
        front_end.report_ears(False, f"To install it: {how_to_install('ears')}")


def _open_voice(
    front_end: FrontEnd, mine: Preferences, played: PlayedSound | None, *, mute: bool
) -> tuple[Speaker | None, str]:
    """Open the voice.

    Args:
        front_end: Where she reads what is the matter with it.
        mine: Her settings.
        played: Is told what the loudspeaker is given.
        mute: Whether to say nothing.

    Returns:
        The speaker, and why nothing will be said; empty if something will.
    """
    if mute:
        return None, "closed by --mute"
    from stepper.mouth.open_speaker import open_speaker

    speaker, remark = open_speaker(mine.speech, front_end.report_voice, played)
    if remark is not None:
        front_end.report_voice(remark)
    if speaker is not None:
        return speaker, ""
    return None, (remark or "it does not start").removeprefix("There is no voice, since ").partition(";")[0]


def _open_ears(
    loaded: LoadedProject,
    conductor: Conductor,
    front_end: FrontEnd,
    mine: Preferences,
    hearing: Hearing,
    speaker: Speaker | None,
    played: PlayedSound | None,
) -> LiveEars:
    """Listen to the microphone."""

    def tell(is_open: bool, sentence: str) -> None:
        hearing.ears.turn(is_open)
        front_end.report_ears(is_open, sentence)

    return LiveEars(
        loaded.plan,
        speaker,
        mine,
        hear=front_end.hear,
        tell=tell,
        is_addressed=hearing.film,
        asked=hearing.question,
        played=played,
        may_interrupt=lambda: not conductor.session.state.asleep,
    )
