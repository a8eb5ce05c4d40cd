from __future__ import annotations

import ctypes.util
import sys
import time
from collections.abc import Callable

import numpy as np
import pytest

from stepper.devices.miniaudio_streams import MiniaudioOutput
from stepper.devices.open_streams import list_loudspeakers, list_microphones, open_input, open_output
from stepper.devices.portaudio_streams import PortAudioOutput
from stepper.devices.ports import NoInputError, NoOutputError, OutputStream
from stepper.mouth.espeak import EspeakVoice
from stepper.mouth.settings import SpeechSettings
from tests.waiting import PATIENCE_S, wait_until

_LINE = "Knit to two stitches before the marker."


@pytest.fixture(scope="module")
def pcm() -> bytes:
    """A line of speech at 22,050 samples a second."""
    voice = EspeakVoice(SpeechSettings())
    try:
        return voice.speech(_LINE, 150)
    finally:
        voice.close()


@pytest.mark.usefixtures("no_sound")
def test_without_any_device_the_reason_names_both_libraries() -> None:
    """The user learns that there is no device, and whoever helps her learns what was tried."""
    both = r"no sound device can be opened \(PortAudio: .*; miniaudio: .*\)"
    with pytest.raises(NoOutputError, match=both):
        open_output(22_050)
    assert list_loudspeakers() == ()


@pytest.mark.sound
@pytest.mark.parametrize("kind", [PortAudioOutput, MiniaudioOutput])
@pytest.mark.parametrize("stream_rate_hz", [22_050, 48_000])
def test_what_is_played_is_what_is_heard(  # type: ignore[no-untyped-def]
    room, pcm: bytes, kind: Callable[[int], OutputStream], stream_rate_hz: int
) -> None:
    """Each sample of a line reaches the loudspeaker, in time, whole, without a gap.

    Source: normalised cross-correlation by numpy's Fourier transform; 1 is the same wave.
    """
    output = _opened(kind, stream_rate_hz)
    try:
        for tries_left in range(7, -1, -1):
            with room.record() as recording:
                output.play(pcm, 22_050)
                recording.wait_for_sound()
                wait_until(lambda: output.pending_s <= 0)
                time.sleep(0.3)
            sounds = (pcm, recording.pcm)
            played, heard = (np.frombuffer(sound, dtype=np.int16).astype(float) for sound in sounds)
            # A machine that stands still for a moment tears one line in a hundred; a fault of ours tears each.
            if _likeness(played, heard) > 0.95 or not tries_left:
                break
    finally:
        output.close()
    assert _likeness(played, heard) > 0.95
    assert recording.speech_s() == pytest.approx(len(played) / 22_050, abs=0.1)


@pytest.mark.sound
@pytest.mark.parametrize("kind", [PortAudioOutput, MiniaudioOutput])
def test_clearing_is_heard_within_a_fifth_of_a_second(  # type: ignore[no-untyped-def]
    room, pcm: bytes, kind: Callable[[int], OutputStream]
) -> None:
    """A key silences the loudspeaker itself, and the stream then plays on."""
    output = _opened(kind, 22_050)
    try:
        with room.record() as recording:
            output.play(pcm, 22_050)
            recording.wait_for_sound()
            time.sleep(0.3)
            cleared_at = time.monotonic()
            output.clear()
            time.sleep(0.6)
            assert recording.loud_at()[-1] - cleared_at < 0.2
            output.play(pcm, 22_050)
            recording.wait_for_sound(after=cleared_at + 0.6)
    finally:
        output.close()


@pytest.mark.sound
@pytest.mark.usefixtures("room")
@pytest.mark.parametrize("missing", ["the package", "the library"])
def test_miniaudio_takes_over_without_portaudio(monkeypatch: pytest.MonkeyPatch, missing: str) -> None:
    """A machine without PortAudio still speaks.

    None in the table of loaded modules makes Python refuse an import, as a missing package would.
    """
    if missing == "the package":
        monkeypatch.setitem(sys.modules, "sounddevice", None)
    else:
        monkeypatch.delitem(sys.modules, "sounddevice", raising=False)
        monkeypatch.setattr(ctypes.util, "find_library", lambda name: None)
    output = open_output(22_050)
    assert isinstance(output, MiniaudioOutput)
    output.close()
    assert list_loudspeakers()


def _opened(kind: Callable[[int], OutputStream], rate_hz: int) -> OutputStream:
    try:
        return kind(rate_hz)
    except NoOutputError as reason:
        if "not installed" in str(reason):
            pytest.skip(f"{kind.__name__}: {reason}")
        raise


def _likeness(played: np.ndarray, heard: np.ndarray) -> float:
    size = 1 << (len(played) + len(heard)).bit_length()
    cross = np.fft.irfft(np.fft.rfft(heard, size) * np.conj(np.fft.rfft(played, size)), size)
    return float(np.max(np.abs(cross)) / (np.linalg.norm(played) * np.linalg.norm(heard)))


@pytest.mark.usefixtures("no_sound")
def test_without_a_microphone_one_sentence_names_what_each_library_found() -> None:
    """Who has to look for the cause reads both reasons."""
    with pytest.raises(NoInputError, match=r"no microphone can be opened \(PortAudio: .*; miniaudio: .*\)"):
        open_input()
    assert list_microphones() == ()


@pytest.mark.sound
@pytest.mark.usefixtures("room")
def test_the_usual_microphone_opens_and_gives_blocks_of_40_ms() -> None:
    """40 ms at 16 kHz and 16 bit are 1280 bytes."""
    stream = open_input()
    try:
        assert len(stream.take(PATIENCE_S) or b"") == 1280
    finally:
        stream.close()
    assert list_microphones()
