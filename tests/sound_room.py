"""A room to speak into without hardware: a sound server of our own, with a loudspeaker nobody hears."""

from __future__ import annotations

import shutil
import subprocess
import sys
import tempfile
import threading
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest

from tests.waiting import PATIENCE_S

_ALSA = """
</usr/share/alsa/alsa.conf>
pcm.!default pulse
ctl.!default pulse
"""

_SERVER = """
load-module module-null-sink sink_name=spk rate=48000 channels=1
load-module module-null-sink sink_name=micfeed rate=48000 channels=1
load-module module-remap-source master=micfeed.monitor source_name=mic
set-default-sink spk
set-default-source mic
load-module module-native-protocol-unix auth-anonymous=1 socket={socket}
"""


_LOUD = 500
"""Louder than any noise of the way, softer than any vowel. Unit: steps of 16-bit sound."""


class Recording:
    """What the loudspeaker of the room gives out, taken down while the `with` block lasts."""

    rate_hz = 22_050

    def __init__(self, room: Room, source: str = "spk.monitor") -> None:
        self._room, self._source = room, source
        self._blocks: list[tuple[float, bytes, int]] = []

    def __enter__(self) -> Recording:
        command = ["parecord", "-d", self._source, "--raw", "--format=s16le", "--channels=1"]
        command += [f"--rate={self.rate_hz}", "--latency-msec=5"]
        self._process = subprocess.Popen(command, stdout=subprocess.PIPE, env=self._room.env)
        self._reader = threading.Thread(target=self._read, daemon=True)
        self._reader.start()
        self._wait(lambda: bool(self._blocks), PATIENCE_S, "the recorder gives no sound")
        return self

    def __exit__(self, *_: object) -> None:
        self._process.terminate()
        self._process.wait(PATIENCE_S)
        self._reader.join(PATIENCE_S)

    @property
    def pcm(self) -> bytes:
        """All that was recorded so far."""
        return b"".join(block for _, block, _ in list(self._blocks))

    def loud_at(self) -> list[float]:
        """When each loud block arrived, on the monotonic clock."""
        return [at for at, _, peak in list(self._blocks) if peak > _LOUD]

    def wait_for_sound(self, after: float = 0.0, timeout_s: float = PATIENCE_S) -> float:
        """Wait for the first loud block after a moment; tell when it arrived."""
        self._wait(lambda: any(at > after for at in self.loud_at()), timeout_s, "nothing was heard")
        return next(at for at in self.loud_at() if at > after)

    def speech_s(self) -> float:
        """How long it lasts from the first loud sample to the last."""
        samples = memoryview(self.pcm).cast("h")
        loud = [at for at, value in enumerate(samples) if abs(value) > _LOUD]
        return (loud[-1] - loud[0]) / self.rate_hz if loud else 0.0

    def _read(self) -> None:
        pipe = self._process.stdout
        assert pipe is not None
        while block := pipe.read1(4096):
            at = time.monotonic()
            samples = memoryview(block).cast("h")  # the recorder writes whole samples
            self._blocks.append((at, block, max(max(samples), -min(samples))))

    @staticmethod
    def _wait(until: Callable[[], bool], timeout_s: float, complaint: str) -> None:
        ends_at = time.monotonic() + timeout_s
        while not until():
            assert time.monotonic() < ends_at, complaint
            time.sleep(0.005)


class Room:
    """A private sound server. It can die and come back."""

    def __init__(self, folder: Path, environment: dict[str, str]) -> None:
        self.folder = folder
        socket = folder / "pa"
        (folder / "alsa.conf").write_text(_ALSA)
        (folder / "pa.cfg").write_text(_SERVER.format(socket=socket))
        self.changed = {
            "PULSE_SERVER": f"unix:{socket}",
            "PULSE_RUNTIME_PATH": str(folder),
            "PULSE_STATE_PATH": str(folder),
            "PULSE_COOKIE": str(folder / "cookie"),
            "XDG_RUNTIME_DIR": str(folder),
            "ALSA_CONFIG_PATH": str(folder / "alsa.conf"),
        }
        self.env = {**environment, **self.changed}
        self._process: subprocess.Popen[bytes] | None = None

    def start(self) -> None:
        """Start the server and wait until it answers."""
        command = ["pulseaudio", "-n", "-F", str(self.folder / "pa.cfg"), "--daemonize=no"]
        command += ["--exit-idle-time=-1", "--use-pid-file=no", "--disable-shm=yes"]
        self._process = subprocess.Popen(command, env=self.env, stderr=subprocess.DEVNULL)
        ends_at = time.monotonic() + PATIENCE_S
        while self.control("info", check=False) != 0:
            if time.monotonic() > ends_at or self._process.poll() is not None:
                self.stop()
                pytest.skip("pulseaudio is installed but does not start here")
            time.sleep(0.05)

    def stop(self) -> None:
        """Let the server die, with all its devices."""
        if self._process is not None:
            self._process.kill()
            self._process.wait(PATIENCE_S)
        (self.folder / "pa").unlink(missing_ok=True)

    def control(self, *words: str, check: bool = True) -> int:
        """Return the server an order."""
        return subprocess.run(
            ["pactl", *words],
            env=self.env,
            check=check,
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
            timeout=PATIENCE_S,
        ).returncode

    def record(self, source: str = "spk.monitor") -> Recording:
        """Record what the loudspeaker gives out, or what goes into the microphone."""
        return Recording(self, source)

    def speak(self, wav: Path, wait: bool = True) -> subprocess.Popen[bytes]:
        """Play a WAV file into the microphone."""
        playing = subprocess.Popen(["paplay", "--device=micfeed", str(wav)], env=self.env)
        if wait:
            playing.wait(PATIENCE_S)
        return playing

    @contextmanager
    def looped(self) -> Iterator[None]:
        """Let the microphone hear the loudspeaker, as in a room without headphones."""
        words = ["load-module", "module-loopback", "source=spk.monitor", "sink=micfeed", "latency_msec=20"]
        number = subprocess.run(
            ["pactl", *words], env=self.env, check=True, capture_output=True, text=True, timeout=PATIENCE_S
        ).stdout.strip()
        try:
            yield
        finally:
            self.control("unload-module", number, check=False)


@pytest.fixture(scope="session")
def _server() -> Iterator[Room]:
    import os

    missing = [name for name in ("pulseaudio", "pactl", "parecord") if shutil.which(name) is None]
    if missing:
        pytest.skip(f"no sound to test without {', '.join(missing)} (packages pulseaudio, pulseaudio-utils)")
    folder = Path(tempfile.mkdtemp(prefix="room-"))
    room = Room(folder, dict(os.environ))
    room.start()
    yield room
    room.stop()
    shutil.rmtree(folder, ignore_errors=True)


@pytest.fixture
def room(_server: Room, monkeypatch: pytest.MonkeyPatch) -> Iterator[Room]:
    """A room whose loudspeaker is the usual sound device of this process for one test."""
    for name, value in _server.changed.items():
        monkeypatch.setenv(name, value)
    _find_devices_again()
    yield _server
    monkeypatch.undo()
    _find_devices_again()


@pytest.fixture
def no_sound(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> Iterator[None]:
    """A machine without any sound device, for one test."""
    if Path("/dev/snd").exists():
        pytest.skip("this machine has a sound card, which cannot be hidden from this process")
    monkeypatch.setenv("PULSE_SERVER", f"unix:{tmp_path}/nobody")
    monkeypatch.setenv("XDG_RUNTIME_DIR", str(tmp_path))
    _find_devices_again()
    yield
    monkeypatch.undo()
    _find_devices_again()


def _find_devices_again() -> None:
    """PortAudio looks for devices once, when it is loaded; tests of one process differ in what there is."""
    from stepper.devices.stderr import quiet_stderr

    sounddevice = sys.modules.get("sounddevice")
    if sounddevice is not None:
        with quiet_stderr():
            sounddevice._terminate()
            sounddevice._initialize()


def is_running(process_id: int) -> bool:
    """Whether a process is there and not merely waiting to be counted as dead."""
    try:
        stat = Path(f"/proc/{process_id}/stat").read_text()
    except OSError:
        return False
    return stat.rpartition(")")[2].split()[0] != "Z"


@pytest.fixture(name="is_running")
def _is_running() -> Callable[[int], bool]:
    if not sys.platform.startswith("linux"):
        pytest.skip("processes are counted through /proc, which only Linux has")
    return is_running
