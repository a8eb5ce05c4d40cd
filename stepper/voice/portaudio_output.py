"""Sound out through PortAudio."""

from __future__ import annotations

from contextlib import suppress
from threading import Event, Thread
from typing import Any

from stepper.voice.playing import PlayBuffer
from stepper.voice.resample import at_rate
from stepper.voice.seams import NoOutputError
from stepper.voice.stderr import quiet_stderr

_LATENCY_S = 0.04
"""How far ahead the device asks for sound: short for a quick silence, long enough for a busy machine."""
_SAMPLE_BYTES = 2
_CLOSE_TIMEOUT_S = 1.0


class PortAudioOutput:
    """One output stream of PortAudio."""

    def __init__(self, rate_hz: int, device: str = "") -> None:
        """Open the stream and let it run.

        Args:
            rate_hz: Samples per second that the voice makes; a device that refuses it gets its own rate.
            device: Part of the name of a device; empty for the usual one.

        Raises:
            NoOutputError: PortAudio is not installed, or no such device can be opened.
        """
        self._gone = Event()
        self._closing = False
        with quiet_stderr():
            try:
                import sounddevice
            except OSError as error:
                raise NoOutputError("it is not installed") from error
            try:
                self._stream = self._opened(sounddevice, rate_hz, device)
            except (sounddevice.PortAudioError, ValueError) as error:
                raise NoOutputError(str(error)) from error

    @property
    def pending_s(self) -> float:
        """How long until all that was played has been heard. Unit: seconds."""
        return self._buffer.pending_s

    @property
    def lost(self) -> bool:
        """Whether the stream has ended without being closed."""
        return self._gone.is_set()

    def play(self, pcm: bytes, rate_hz: int) -> None:
        """Add sound behind what is already playing, and return at once."""
        self._buffer.put(at_rate(pcm, rate_hz, self._rate_hz))

    def clear(self) -> None:
        """Fall silent at once; the stream stays open."""
        self._buffer.clear()

    def close(self) -> None:
        """Close the stream, without waiting for a device that does not answer."""
        self._closing = True
        self._buffer.clear()
        closing = Thread(target=self._close_stream, name="closing sound", daemon=True)
        closing.start()
        closing.join(_CLOSE_TIMEOUT_S)

    def _opened(self, sounddevice: Any, rate_hz: int, device: str) -> Any:
        wanted = device or None
        try:
            return self._started(sounddevice, rate_hz, wanted)
        except sounddevice.PortAudioError:
            own_rate_hz = int(sounddevice.query_devices(wanted, "output")["default_samplerate"])
            if own_rate_hz == rate_hz:
                raise
            return self._started(sounddevice, own_rate_hz, wanted)

    def _started(self, sounddevice: Any, rate_hz: int, device: str | None) -> Any:
        self._rate_hz = rate_hz
        self._buffer = PlayBuffer(rate_hz)
        stream = sounddevice.RawOutputStream(
            samplerate=rate_hz,
            channels=1,
            dtype="int16",
            device=device,
            latency=_LATENCY_S,
            callback=self._fill,
            finished_callback=self._finished,
        )
        stream.start()
        return stream

    def _fill(self, wanted: Any, frame_count: int, _moment: Any, _status: Any) -> None:
        wanted[:] = self._buffer.take(frame_count * _SAMPLE_BYTES, _LATENCY_S)

    def _finished(self) -> None:
        if not self._closing:
            self._gone.set()

    def _close_stream(self) -> None:
        with suppress(Exception):  # a device that has gone may refuse in any way
            self._stream.close(ignore_errors=True)


def portaudio_devices() -> tuple[str, ...]:
    """Name the devices sound can go out through; none when PortAudio is not installed."""
    with quiet_stderr():
        try:
            import sounddevice
        except OSError:
            return ()
        return tuple(each["name"] for each in sounddevice.query_devices() if each["max_output_channels"] > 0)
