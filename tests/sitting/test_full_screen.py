"""The full screen as it is started: a real process on a real pseudo-terminal."""

from __future__ import annotations

import contextlib
import os
import re
import signal
import sys
import termios
import time
import wave
from importlib.util import find_spec
from pathlib import Path

import pexpect
import pyte
import pytest
from pexpect import fdpexpect

from stepper.craft.colours.colour import rgb_from_hex
from stepper.mouth.settings import SpeechSettings
from stepper.session.events import Advanced
from stepper.sitting.full_screen import list_screen_yarns
from stepper.sitting.live_ears import why_not_installed
from stepper.sitting.project_file import load_project
from stepper.sitting.session_journal import read_events, restore_state
from stepper.store.journal import Journal
from stepper.store.location import journal_path
from tests.commands.garments import CUFF, environment, garment, stepper
from tests.commands.warm import WarmProcess
from tests.speech import render

pytestmark = pytest.mark.skipif(os.name != "posix", reason="pseudo-terminals need a POSIX system")

PATIENCE_S = 30
_MAIN = "import sys; from stepper.commands.main import main; sys.exit(main())"


class WarmChild:
    """The program on a pseudo-terminal, without loading it anew. The names are those of `pexpect.spawn`."""

    def __init__(self, words: list[str], rows: int, columns: int, env: dict[str, str]) -> None:
        """Start it."""
        ours, its = os.openpty()
        termios.tcsetwinsize(its, (rows, columns))
        manner = termios.tcgetattr(its)
        manner[3] &= ~termios.ECHO
        termios.tcsetattr(its, termios.TCSANOW, manner)
        with os.fdopen(its, "r+b", buffering=0) as terminal:
            self.process = WarmProcess(words, terminal, terminal, terminal, env)
        self.pid, self.exitstatus = self.process.pid, None
        self.terminal = fdpexpect.fdspawn(ours, encoding="utf-8", timeout=PATIENCE_S)
        self.read_nonblocking, self.send, self.read = self.terminal.read_nonblocking, self.terminal.send, self.terminal.read

    def setwinsize(self, rows: int, columns: int) -> None:
        """Make the window larger or smaller."""
        termios.tcsetwinsize(self.terminal.child_fd, (rows, columns))

    def wait(self) -> None:
        """Wait for its end."""
        self.exitstatus = self.process.wait(PATIENCE_S)

    def isalive(self) -> bool:
        """Return whether it still runs."""
        try:
            os.kill(self.pid, 0)
        except ProcessLookupError:
            return False
        return True

    def kill(self, number: int) -> None:
        """Send it a signal."""
        self.process.send_signal(number)

    def close(self, *, force: bool) -> None:
        """Close the window, and leave it to the program to end."""
        assert not force
        self.terminal.close()


class Window:
    """A window with the program in it."""

    def __init__(
        self, path: Path, *words: str, columns: int = 58, rows: int = 24, before: str | None = None, **extra: str
    ) -> None:
        """Start the program.

        Args:
            path: The project file.
            words: Further words of the command line.
            columns: Of the window; in this one the step is written in the terminal's own letters.
            rows: Of the window.
            before: Python to be run first in a process that loads the program anew; None for one that has it loaded.
            extra: What the environment has besides.
        """
        env = environment() | {"TERM": "xterm-256color", "PROMPT_TOOLKIT_NO_CPR": "1", "LC_ALL": "C.UTF-8"}
        env.pop("NO_COLOR", None)
        told = ["knit", str(path), "--mute", *words]
        self.child = (
            WarmChild(told, rows, columns, env | extra)
            if before is None
            else pexpect.spawn(
                sys.executable,
                ["-c", f"{before}\n{_MAIN}", *told],
                env=env | extra,  # type: ignore[arg-type] # os._Environ is what it wants by its types
                dimensions=(rows, columns),
                encoding="utf-8",
                timeout=PATIENCE_S,
                echo=False,
            )
        )
        self.display = pyte.Screen(columns, rows)
        self.stream = pyte.Stream(self.display)
        self.raw = ""

    @property
    def text(self) -> str:
        """What is to be seen."""
        return "\n".join(line.rstrip() for line in self.display.display)

    def see(self, *words: str) -> str:
        """Wait until all these words are to be seen."""
        until = time.monotonic() + PATIENCE_S
        while not all(word in self.text for word in words):
            assert time.monotonic() < until, f"waited for {words}; there is\n{self.text}"
            with contextlib.suppress(pexpect.TIMEOUT, pexpect.EOF):
                data = self.child.read_nonblocking(65536, timeout=0.1)
                self.raw += data
                self.stream.feed(data)
        return self.text

    def press(self, keys: str) -> None:
        """Press keys."""
        self.child.send(keys)

    def resize(self, columns: int, rows: int) -> None:
        """Pull the window to another size."""
        self.display.resize(rows, columns)
        self.display.reset()
        self.child.setwinsize(rows, columns)

    def over(self) -> int | None:
        """Wait for the end and give the exit code; nothing where a signal ended it."""
        with contextlib.suppress(pexpect.TIMEOUT):
            self.raw += self.child.read()
        self.child.wait()
        return self.child.exitstatus

    def kill(self) -> None:
        """End it as a power cut would."""
        self.child.kill(signal.SIGKILL)
        self.child.wait()


@pytest.fixture
def path(tmp_path: Path) -> Path:
    """Make a project file of its own for each test."""
    return garment(tmp_path)


def _steps(path: Path) -> int:
    with Journal.read_only(journal_path(path)) as journal:
        return sum(isinstance(event, Advanced) for _, event in read_events(journal))


def test_start_knit_stop_and_go_on(path: Path) -> None:
    """An evening: the screen comes up, steps count, it stops with a word, and the next one begins there."""
    window = Window(path, before="")
    window.see("Cast on twenty four.", "of 17", "No voice: closed by --mute")
    window.press(" ")
    window.see("Knit two, purl two, six times.")
    window.press("q")
    window.see("q again stops")
    time.sleep(0.3)
    window.press("q")

    assert window.over() == 0
    assert "Done so far: Cuff, round 1 of 17. First next time:" in window.raw.replace("\r\n", "\n")
    again = Window(path)
    again.see("Last done", "Knit two, purl two, six times.")
    again.press("\x03")
    assert again.over() == 130
    assert _steps(path) == 1


@pytest.mark.parametrize("wait_s", [0.0, 0.01, 0.03])
def test_killed_right_after_a_key_the_journal_is_whole(path: Path, wait_s: float) -> None:
    """A power cut while a step is being kept: it is kept or it is not, and the screen says which."""
    window = Window(path)
    window.see("Cast on twenty four.")
    window.press(" ")
    time.sleep(wait_s)
    window.kill()

    kept = _steps(path)
    assert kept in (0, 1)
    again = Window(path)
    again.see(("Cast on twenty four.", "Knit two, purl two, six times.")[kept])
    again.kill()


def test_a_step_on_the_screen_is_on_the_disk(path: Path) -> None:
    """The kill comes as soon as the next instruction is to be seen."""
    window = Window(path)
    window.see("Cast on twenty four.")
    window.press(" ")
    window.see("Knit two, purl two, six times.")
    window.kill()

    with Journal.read_only(journal_path(path)) as journal:
        assert restore_state(journal).place.index == 1


def test_resized_while_knitting(path: Path) -> None:
    """Down to a phone's window and up again."""
    window = Window(path)
    window.see("Cast on twenty four.")
    window.resize(40, 12)
    window.see("Cast on twenty four.", "? keys")
    window.press(" ")
    window.see("Knit two, purl two, six times.")
    window.resize(120, 40)
    text = window.see("in hand", "garment")
    assert max(len(line) for line in text.splitlines()) > 80
    window.press("\x03")
    assert window.over() == 130


def test_stopped_and_let_go_on(path: Path) -> None:
    """Ctrl-Z gives the terminal back; fg brings the screen back, and keys count again."""
    window = Window(path)
    window.see("Cast on twenty four.")
    window.press("\x1a")
    _until_stopped(window.child.pid)
    window.display.reset()
    os.kill(window.child.pid, signal.SIGCONT)
    window.see("Cast on twenty four.")
    window.press(" ")
    window.see("Knit two, purl two, six times.")
    # And as the outside would do it, without asking.
    os.kill(window.child.pid, signal.SIGSTOP)
    _until_stopped(window.child.pid)
    window.display.reset()
    os.kill(window.child.pid, signal.SIGCONT)
    window.see("Knit two, purl two, six times.")
    window.press("\x03")
    assert window.over() == 130


def _until_stopped(pid: int) -> None:
    until = time.monotonic() + PATIENCE_S
    state = Path(f"/proc/{pid}/stat")
    if not state.exists():
        pytest.skip("this system does not tell whether a process is stopped")
    while state.read_text().rsplit(")", 1)[1].split()[0] != "T":
        assert time.monotonic() < until
        time.sleep(0.01)


def test_a_window_closed_loses_nothing_and_writes_no_log(path: Path) -> None:
    """The terminal goes away: the program ends by itself, without a word, and the step is kept."""
    window = Window(path)
    window.see("Cast on twenty four.")
    window.press(" ")
    window.see("Knit two, purl two, six times.")
    pid = window.child.pid
    window.child.close(force=False)
    until = time.monotonic() + PATIENCE_S
    while window.child.isalive():
        assert time.monotonic() < until, pid
        time.sleep(0.02)

    assert _steps(path) == 1
    assert list(path.parent.glob("stepper-*.log")) == []


def test_told_to_end_it_leaves_the_terminal_as_it_was(path: Path) -> None:
    """SIGTERM: out of the full screen, the cursor back."""
    window = Window(path)
    window.see("Cast on twenty four.")
    window.child.kill(signal.SIGTERM)

    assert window.over() == 130
    assert "\x1b[?1049l" in window.raw
    assert window.raw.rindex("\x1b[?25h") > window.raw.rindex("\x1b[?25l")


@pytest.mark.parametrize("term", ["dumb", "unknown"])
def test_a_dumb_terminal_goes_line_by_line_and_says_so(path: Path, term: str) -> None:
    """No letter soup where nothing can be placed."""
    window = Window(path, TERM=term, columns=80)
    window.see("This terminal cannot show a full screen; going on line by line.", "cast on twenty four")
    window.press("next step\r")
    window.see("knit two, purl two")
    window.press("q\r")
    assert window.over() == 0


def test_no_colour_is_asked_for_where_none_is_wanted(path: Path) -> None:
    """NO_COLOR (no-color.org): no colour code is ever sent; else the yarns' own are."""
    coloured = garment(path.parent, CUFF.replace("{name: pine}", '{name: pine, colour: "#1f4d3a"}'), "c.yaml")
    colour = re.compile(r"\x1b\[[\d;]*(?:[34]8;|[34][0-7])[\d;]*m")
    plain = Window(path, NO_COLOR="1", COLORTERM="truecolor")
    plain.see("Cast on twenty four.")
    plain.press("6r")
    plain.see("in hand", "A pine")
    plain.kill()
    assert not colour.search(plain.raw)

    window = Window(coloured, COLORTERM="truecolor")
    window.see("Cast on twenty four.")
    window.press("6r")
    window.see("in hand", "A pine")
    window.kill()
    assert "48;2;31;77;58" in window.raw


def test_what_c_libraries_write_does_not_tear_the_screen(path: Path) -> None:
    """A warning on descriptor 2 while the screen is shown is nowhere to be seen."""
    go, done = path.parent / "go", path.parent / "done"
    writer = (
        "import os, threading, time\n"
        "def write():\n"
        f"    while not os.path.exists({str(go)!r}): time.sleep(0.01)\n"
        "    os.write(2, b'ALSA lib: TORN')\n"
        f"    open({str(done)!r}, 'w').close()\n"
        "threading.Thread(target=write, daemon=True).start()\n"
    )
    window = Window(path, before=writer)
    window.see("Cast on twenty four.")
    go.touch()
    until = time.monotonic() + PATIENCE_S
    while not done.exists():
        assert time.monotonic() < until
        time.sleep(0.01)
    window.press(" ")
    window.see("Knit two, purl two, six times.")
    window.press("\x03")
    window.over()

    assert "TORN" not in window.raw


def test_a_plain_terminal_encoding_gets_ascii(path: Path) -> None:
    """Where letters are ASCII no block is drawn."""
    window = Window(path, before="", LC_ALL="C", PYTHONUTF8="0", PYTHONIOENCODING="ascii", columns=80)
    window.see("Cast on twenty four.", "##")
    window.kill()
    assert window.raw.isascii()


def test_a_journal_in_use_and_a_recording_that_is_missing_say_so_before_the_screen(path: Path) -> None:
    """Reasons are told where they can be read."""
    first = Window(path)
    first.see("Cast on twenty four.")
    second = Window(path)
    assert second.over() == 4
    assert "\x1b[?1049h" not in second.raw
    first.kill()
    third = Window(path, "--hear", str(path.parent / "none.wav"))
    assert third.over() == 4
    assert "\x1b[?1049h" not in third.raw


def test_without_a_terminal_it_is_line_by_line_as_before(path: Path) -> None:
    """Scripts and screen readers see no change."""
    done = stepper("knit", path, "--mute", typed="next step\n")

    assert done.stdout.splitlines()[2] == "Cuff, round 1 of 17: cast on twenty four."
    assert done.stderr == ""


@pytest.mark.skipif(find_spec("moonshine_voice") is None, reason="the recogniser is not installed")
def test_a_recording_is_heard_and_shown_as_it_is_heard(path: Path) -> None:
    """A synthetic voice says "next step": the step is done, and the screen says what was heard and when it
    ends."""
    said, recording = path.parent / "one.wav", path.parent / "all.wav"
    render("next step", said, SpeechSettings(engine="espeak"))
    with wave.open(str(said), "rb") as source, wave.open(str(recording), "wb") as target:
        target.setparams(source.getparams())
        second = bytes(2 * source.getframerate())
        target.writeframes(second + source.readframes(source.getnframes()) + second)
    window = Window(path, "--hear", str(recording))
    window.see('Heard "next step": done', "No ears: the recording has ended.")
    window.see("Knit two, purl two, six times.")
    window.press("\x03")

    assert window.over() == 130
    assert _steps(path) == 1


@pytest.mark.skipif(bool(why_not_installed()) or Path("/dev/snd").exists(), reason="no ears, or a sound card")
def test_without_a_microphone_the_screen_says_so_and_keys_go_on(path: Path) -> None:
    """Ears that cannot open are told where they are shown, with the reason."""
    window = Window(path, PULSE_SERVER="unix:/nowhere/at/all", XDG_RUNTIME_DIR="/nowhere")
    window.see("No ears: no microphone can be opened.")
    window.press(" ")
    window.see("Knit two, purl two, six times.")
    window.kill()


def test_a_round_is_read_along_by_itself_and_held_by_a_word(path: Path) -> None:
    """The next run comes without a key; after "hold on" nothing comes."""
    window = Window(path, "--deaf")
    window.see("Cast on twenty four.")
    window.press(" ")
    window.see("Knit two, purl two, six times.")
    window.press("/read along\r")
    window.see("Repeat 1 of 6: knit two.")
    window.see("Purl two.")
    window.press("/hold on\r")
    window.see("Waiting. Say: go on.")
    window.kill()
    assert 1 < _steps(path) < 4


def test_yarns_have_the_colours_of_the_file(path: Path) -> None:
    """Name, sign, colour; none where the file gives none."""
    garment(path.parent, CUFF.replace("{name: pine}", '{name: pine, colour: "#1f4d3a"}'))
    made = list_screen_yarns(load_project(path)).by_key

    assert [(yarn.name, yarn.sign, yarn.colour) for yarn in made.values()] == [
        ("chalk", ".", None),
        ("pine", "A", rgb_from_hex("#1f4d3a")),
    ]
