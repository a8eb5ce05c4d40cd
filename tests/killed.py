"""Sittings that are killed, or whose disk fails, at any call to the disk; and an independent judge of what is left.

The judge knows what the sitting was about to keep (said before it was handed to the journal) and what it had answered
(said when it was shown). Left must be: all that was there before, then whole batches in the order in which they were
handed over, all that were answered among them and at most one that was not; and it must be possible to go on knitting.
"""

from __future__ import annotations

import random
import shutil
import subprocess
import sys
import time
from collections.abc import Callable, Iterator, Sequence
from contextlib import AbstractContextManager, nullcontext
from dataclasses import dataclass
from pathlib import Path
from subprocess import PIPE
from typing import Any

from stepper.errors import StepperError
from stepper.session.codec import encode_event
from stepper.session.cues import Cue, Enough, View
from stepper.session.events import Event
from stepper.session.replay import replay_events
from stepper.session.state import State
from stepper.sitting import assembly
from stepper.sitting.assembly import SittingOptions, hold_sitting
from stepper.sitting.front_end import SittingView
from stepper.sitting.preferences import Preferences
from stepper.sitting.project_file import LoadedProject, load_project
from stepper.sitting.session_journal import EventKeeper, open_to_read, read_events, restore_state
from stepper.store.location import journal_path
from tests.disk_calls import Blow, Outcome, run_struck

PROJECT = Path(__file__).parent / "fixtures" / "switchback.yaml"
CUES = ("next", "got it", "where are we", "go back one step", "next", "note the cuff is tight", "next", "undo that", "next")
PLAIN = 0.6
"""Share of the cues of an evening that only go on."""
MISHAPS = (
    *("100", "99", "101", "i see a loop", "no loop", "caught", "there are 20", "20", "yes it is", "i miscounted", "not now"),
    *("take remedy one", "take remedy two", "unknit 3", "respace the rest", "lifeline here", "measures 9 cm", "go to round 9"),
    *("count with me", "and ten", "that is all of them", "remind me in 3 rounds to try it on", "ask less", "redo that"),
)
"""What an evening with a fault in it brings: each makes another entry, and another state to be restored."""
Report = Callable[[Any], None]


class _Scripted:
    """A front end that gives cues one by one and reports the place in the journal with each line it is to show."""

    listens_by_itself = False
    turn: Callable[[View], None] | None = None

    def __init__(self, cues: Sequence[str], report: Report) -> None:
        self._cues, self._report = cues, report
        self._view: SittingView | None = None

    @property
    def _seq(self) -> int:
        return self._view.conductor.session.state.seq if self._view else 0

    def open(self, view: SittingView) -> None:
        self._view = view

    def show(self, line: str) -> None:
        self._report({"shown": self._seq})

    def schedule(self, seconds: float, cue: Cue) -> None:
        """Ring no alarm."""

    def hear(self, text: str, score: float = 1.0) -> None:
        """Hear nothing."""

    def report_ears(self, is_open: bool, sentence: str) -> None:
        """Have no ears."""

    def report_voice(self, sentence: str) -> None:
        """Have no voice."""

    def guard_terminal(self) -> AbstractContextManager[None]:
        return nullcontext()

    def run(self, recording: Iterator[str] | None) -> None:
        assert self._view is not None
        conductor = self._view.conductor
        for cue in self._cues:
            conductor.offer_words(cue)
            conductor.drain()
        conductor.offer(Enough())
        conductor.drain()

    def close(self) -> None:
        self._report({"shown": self._seq})


class _SayingKeeper(EventKeeper):
    """Says what it is about to keep."""

    report: Report

    def __call__(self, events: tuple[Event, ...], state: State) -> tuple[str, ...]:
        type(self).report({"will": [list(encode_event(event)) for event in events]})
        return super().__call__(events, state)


def knit(loaded: LoadedProject, cues: Sequence[str], report: Report) -> None:
    """Hold a sitting as `stepper knit` does, without voice and ears."""
    _SayingKeeper.report = staticmethod(report)
    usual, assembly.EventKeeper = assembly.EventKeeper, _SayingKeeper
    try:
        hold_sitting(loaded, _Scripted(cues, report), Preferences(), SittingOptions(mute=True, deaf=True))
    finally:
        assembly.EventKeeper = usual


@dataclass(frozen=True, kw_only=True)
class Garment:
    """A garment in some state, in a folder that is never changed."""

    folder: Path
    changed: str = ""
    """What the project file is to become before the next sitting; empty if it stays."""

    def copied(self, folder: Path) -> LoadedProject:
        """Copy it somewhere and load it."""
        shutil.copytree(self.folder, folder, dirs_exist_ok=True)
        path = folder / "cuff.yaml"
        if self.changed:
            path.write_text(self.changed, encoding="utf-8")
        return _loaded(path)


_PLANS: dict[str, LoadedProject] = {}


def _loaded(path: Path) -> LoadedProject:
    """Load a project file; its plan is worked out once for each text."""
    text = path.read_text(encoding="utf-8")
    if text not in _PLANS:
        _PLANS[text] = load_project(path)
    known = _PLANS[text]
    return LoadedProject(path=path, text=text, project=known.project, plan=known.plan)


STANDS = {"begun nowhere": 0, "begun": 6, "just before a copy": 243}
"""Garments that stand where a sitting has different things to do with the disk, and how many steps they were knitted."""


def make_garments(folder: Path, stands: Sequence[str] = tuple(STANDS)) -> dict[str, Garment]:
    """Knit garments so far, and add one whose project file is another the next time."""
    text = PROJECT.read_text(encoding="utf-8")
    found = {}
    for name in stands:
        steps = STANDS[name]
        place = folder / name.replace(" ", "-")
        place.mkdir(parents=True)
        (place / "cuff.yaml").write_text(text, encoding="utf-8")
        if steps:
            knit(_loaded(place / "cuff.yaml"), ["next"] * steps, lambda said: None)
        found[name] = Garment(folder=place)
    longer = text.replace("Knit until piece measures 32 cm.", "Knit until piece measures 34 cm.")
    assert longer != text
    found["another file"] = Garment(folder=found["begun"].folder, changed=longer)
    return found


@dataclass(frozen=True, kw_only=True)
class Verdict:
    """What the judge found."""

    outcome: Outcome
    wrong: str = ""
    """What was lost, forged or stuck; empty if nothing was."""


def struck(garment: Garment, folder: Path, blow: Blow, cues: Sequence[str] = CUES) -> Verdict:
    """Hold a sitting that is struck at one of its calls to the disk, and judge what is left.

    Args:
        garment: Where it stands before.
        folder: A new folder for it.
        blow: What befalls the sitting.
        cues: What is said in it.
    """
    loaded = garment.copied(folder)
    before = kept(loaded)
    outcome = run_struck(lambda report: knit(loaded, cues, report), folder, blow)
    return Verdict(outcome=outcome, wrong=outcome.fault or judged(loaded, before, outcome))


def kept(loaded: LoadedProject) -> list[list[Any]]:
    """Return what the journal holds, read without changing it."""
    with open_to_read(journal_path(loaded.path)) as journal:
        entries = journal.entries() if journal is not None else ()
        return [[each.kind, each.version, each.body] for each in entries]


def judged(loaded: LoadedProject, before: list[list[Any]], outcome: Outcome) -> str:
    """Return what is wrong with what a struck sitting left; empty if nothing is."""
    shown = max((said["shown"] for said in outcome.said if "shown" in said), default=0)
    batches = [said["will"] for said in outcome.said if "will" in said]
    try:
        first = kept(loaded)
        again: list[Any] = []
        knit(loaded, ["where are we", "next"], again.append)
        after = kept(loaded)
        with open_to_read(journal_path(loaded.path)) as journal:
            assert journal is not None
            if restore_state(journal) != replay_events(read_events(journal)):
                return "another state than its entries lead to"
    except StepperError as error:
        return f"a dead end: {error}"
    own = [entry for said in again if "will" in said for entry in said["will"]]
    found = after[: len(after) - len(own)]
    if after[len(found) :] != own:
        return "the next sitting did not keep what it said"
    allowed, whole = [before], before
    for batch in batches:
        whole = whole + batch
        allowed.append(whole)
    if found not in allowed:
        return f"{len(found)} entries that are not those handed over"
    if len(found) < shown:
        return f"{shown - len(found)} of {shown} answered entries lost"
    if first != found:
        return f"{len(first)} entries when read, {len(found)} when opened to knit"
    return ""


def kill_evenings(folder: Path, kills: int, chance: random.Random) -> Iterator[tuple[Verdict, int]]:
    """Knit one garment through evenings that are all killed, each going on where the one before was stopped.

    Yields:
        What the judge found of each, and how many entries the journal has then.
    """
    folder.mkdir(parents=True, exist_ok=True)
    path = folder / "cuff.yaml"
    path.write_text(PROJECT.read_text(encoding="utf-8"), encoding="utf-8")
    loaded = _loaded(path)
    for _ in range(kills):
        cues = [chance.choice(CUES if chance.random() < PLAIN else MISHAPS) for _ in range(chance.randint(1, 12))]
        blow = Blow(at=chance.randint(1, 20 * len(cues) + 60), kind=chance.choice(("kill", "kill", "torn")))
        before = kept(loaded)
        outcome = run_struck(lambda report, cues=cues: knit(loaded, cues, report), folder, blow)
        yield Verdict(outcome=outcome, wrong=outcome.fault or judged(loaded, before, outcome)), len(kept(loaded))


def kill_program(folder: Path, kills: int, chance: random.Random) -> Iterator[Verdict]:
    """Kill `stepper knit` itself at random moments, while cues come in as fast as it answers them.

    What it was about to keep is not known here, so only what it answered is judged: each answer to "next" stands
    for one entry, and the sitting after it must be able to begin.
    """
    folder.mkdir(parents=True, exist_ok=True)
    path = folder / "cuff.yaml"
    path.write_text(PROJECT.read_text(encoding="utf-8"), encoding="utf-8")
    loaded = _loaded(path)
    knit(loaded, ["ask less"], lambda said: None)
    words = [sys.executable, "-m", "stepper", "knit", str(path), "--plain", "--mute", "--deaf"]
    for _ in range(kills):
        before = kept(loaded)
        with subprocess.Popen(words, stdin=PIPE, stdout=PIPE, stderr=PIPE, text=True) as program:
            assert program.stdin is not None
            assert program.stdout is not None
            answers, begun, ends = 0, 0.0, chance.random() * 0.08
            for line in program.stdout:
                if not line.startswith(("Noted", "Change to 3.5 mm")):
                    continue  # the title, and where it stands
                begun = time.monotonic() if not answers else begun
                answers += 1
                if time.monotonic() - begun > ends:
                    break
                program.stdin.write("note the cuff is tight\n")
                program.stdin.flush()
            program.kill()
            program.stdout.read()
        outcome = Outcome(killed=True)
        try:
            first = kept(loaded)
            knit(loaded, [], lambda said: None)
            after = kept(loaded)
            wrong = "" if after[: len(first)] == first else "read and opened differ"
            # The first answer is that of the opening, which is an entry itself.
            if first[: len(before)] != before or len(first) < len(before) + answers:
                wrong = f"{len(before) + answers - len(first)} of {answers} answers lost"
        except StepperError as error:
            wrong = f"a dead end: {error}"
        yield Verdict(outcome=outcome, wrong=wrong)
