from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

from stepper.errors import SurroundingsError
from stepper.session.cues import Cue, View
from stepper.sitting import assembly
from stepper.sitting.assembly import SittingOptions, hold_sitting, read_latest_events
from stepper.sitting.front_end import FrontEnd, SittingView
from stepper.sitting.live_ears import NOT_INSTALLED
from stepper.sitting.preferences import Preferences, parse_preferences
from stepper.sitting.project_file import load_project
from stepper.sitting.recognisers import NONE_HERE
from stepper.store.journal import Journal
from stepper.store.location import journal_path
from tests.commands.garments import garment, stepper


class Notepad:
    """A front end that writes down what it is told, and has its cues from a list."""

    def __init__(self, *cues: str, listens_by_itself: bool = False, fault: Exception | None = None) -> None:
        self.listens_by_itself = listens_by_itself
        self.lines: list[str] = []
        self.views: list[View] = []
        self.reports: list[str] = []
        self.view: SittingView | None = None
        self.guarded = False
        self._cues, self._fault = cues, fault

    def open(self, view: SittingView) -> None:
        """Write it down."""
        assert self.lines == []
        self.view = view
        self.lines.append("open")

    def show(self, line: str) -> None:
        """Write it down."""
        self.lines.append(line)

    def turn(self, view: View) -> None:
        """Write it down."""
        self.views.append(view)

    def schedule(self, seconds: float, cue: Cue) -> None:
        """Let it be."""

    def hear(self, text: str, score: float = 1.0) -> None:
        """Nothing is heard here."""
        raise AssertionError(text)

    def wake(self) -> None:
        """Let it be: all cues come from the list."""

    def report_ears(self, is_open: bool, sentence: str) -> None:
        """Write it down."""
        self.reports.append(sentence)

    def report_voice(self, sentence: str) -> None:
        """Write it down."""
        self.reports.append(sentence)

    @contextmanager
    def guard_terminal(self) -> Iterator[None]:
        """Remember whether it lasts."""
        self.guarded = True
        try:
            yield
        finally:
            self.guarded = False

    def run(self, recording: Iterator[str] | None) -> None:
        """Work off the cues."""
        assert self.guarded
        assert self.view is not None
        self.lines.append("run")
        for cue in (*self._cues, *(recording or ())):
            self.view.conductor.offer_words(cue)
        self.view.conductor.drain()
        if self._fault is not None:
            raise self._fault

    def close(self) -> None:
        """Write it down."""
        assert not self.guarded
        self.lines.append("close")


MUTE = SittingOptions(mute=True, deaf=True)


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """Return a project file of its own for each test."""
    return garment(tmp_path)


def test_a_sitting_begins_where_the_last_one_ended(path: Path) -> None:
    """Whatever the front end: it is opened before a line is shown, and closed after the last."""
    first = Notepad("next step", "show the whole chart", "that is all for tonight")
    hold_sitting(load_project(path), first, Preferences(), MUTE)

    assert first.lines[0] == "open"
    assert first.lines.index("run") == 3  # what comes first is told before cues are taken
    assert first.lines[-2].startswith("Done so far: Cuff, round 1 of 17.")
    assert first.lines[-1] == "close"
    assert first.views == [View.CHART]

    second = Notepad()
    hold_sitting(load_project(path), second, Preferences(), MUTE)
    assert second.lines[1].startswith("Last done ")


def test_what_was_answered_is_kept_when_the_front_end_fails(path: Path) -> None:
    """The journal is closed and the terminal given back; what was told is on the disk."""
    front_end = Notepad("next step", fault=BrokenPipeError())
    with pytest.raises(BrokenPipeError):
        hold_sitting(load_project(path), front_end, Preferences(), MUTE)
    assert not front_end.guarded
    with Journal.read_only(journal_path(path)) as journal:
        assert [type(event).__name__ for _, event in read_latest_events(journal)] == ["Opened", "Advanced"]


def test_a_recording_that_is_missing_is_told_before_anything_is_opened(path: Path) -> None:
    """No journal is begun for a sitting that cannot be held."""
    front_end = Notepad()
    options = SittingOptions(mute=True, recording=path.with_name("none.wav"))
    with pytest.raises(SurroundingsError):
        hold_sitting(load_project(path), front_end, Preferences(), options)
    assert front_end.view is None
    assert not journal_path(path).exists()


@pytest.mark.parametrize(
    ("options", "by_itself", "installed", "why", "told"),
    [
        (SittingOptions(mute=True, deaf=True, listen=True), True, True, "closed by --deaf", False),
        (SittingOptions(mute=True), True, False, NOT_INSTALLED, False),
        (SittingOptions(mute=True, listen=True), False, False, NOT_INSTALLED, True),
        (SittingOptions(mute=True, listen=True), False, False, NONE_HERE, True),
        (SittingOptions(mute=True), False, True, "closed in the settings", False),
        (SittingOptions(mute=True), True, True, "closed in the settings", False),
    ],
)
def test_why_nothing_is_heard_is_known_at_once(
    path: Path,
    monkeypatch: pytest.MonkeyPatch,
    options: SittingOptions,
    by_itself: bool,
    installed: bool,
    why: str,
    told: bool,
) -> None:
    """She asks herself why nobody listens; who asked for ears is told in a sentence besides."""
    monkeypatch.setattr(assembly, "why_not_installed", lambda: "" if installed else why)
    mine = parse_preferences({"ears": {"listen": False}}, "settings")
    front_end = Notepad(listens_by_itself=by_itself)
    hold_sitting(load_project(path), front_end, mine, options)

    assert front_end.view is not None
    assert front_end.view.why_no_ears == why
    assert front_end.view.why_no_voice == "closed by --mute"
    assert bool(front_end.reports) == told
    if told:
        assert any("To install it" in sentence for sentence in front_end.reports) == (why == NOT_INSTALLED)


def test_the_test_speaks_the_protocol() -> None:
    """Else nothing here would say anything about the real front ends."""
    front_end: FrontEnd = Notepad()
    assert all(hasattr(front_end, name) for name in dir(FrontEnd) if not name.startswith("_"))


def test_the_latest_events_are_in_order(path: Path) -> None:
    """As the journal keeps them."""
    stepper("knit", path, "--plain", "--mute", typed="next step\nundo that\n")
    with Journal.read_only(journal_path(path)) as journal:
        assert [seq for seq, _ in read_latest_events(journal)] == list(range(1, journal.count() + 1))
