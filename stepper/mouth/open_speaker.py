"""Open the speaker that suits the settings and the machine, or say in one sentence why there is none."""

from __future__ import annotations

import sys
from collections.abc import Callable

from stepper.devices.open_streams import open_output
from stepper.devices.played_sound import PlayedSound
from stepper.devices.ports import NoOutputError, OutputStream
from stepper.mouth.espeak import EspeakVoice
from stepper.mouth.natural import NaturalVoice
from stepper.mouth.pieces import cut_into_clauses, cut_into_pieces
from stepper.mouth.playback import PlaybackMouth
from stepper.mouth.ports import NoVoiceError, Speaker
from stepper.mouth.settings import Engine, SpeechSettings
from stepper.mouth.speech_queue import QueuedSpeaker
from stepper.mouth.system_voice import SystemVoiceMouth
from stepper.mouth.tones import TONE_RATE_HZ

Tell = Callable[[str], None]
"""Called from a thread with a sentence for the user about what happened to the voice, once for each event."""


def open_speaker(
    settings: SpeechSettings, tell: Tell = lambda sentence: None, played: PlayedSound | None = None
) -> tuple[Speaker | None, str | None]:
    """Open a speaker; never raises an error for want of sound.

    Args:
        settings: Which voice, how fast, how loud, through what.
        tell: Called with what happens later: the device goes, the voice stops for good.
        played: Is told what the loudspeaker is given; nothing by the system's own voice, which plays by
            itself.

    Returns:
        The speaker, None if nothing will be spoken; and a sentence for the user: why not, or which of the
        settings could not be followed; None if all is as wanted.
    """
    if settings.engine == "none":
        return None, None
    reasons = []
    for engine in engines_to_try(settings.engine, sys.platform):
        try:
            speaker, remark = _open(engine, settings, tell, played)
        except NoOutputError as reason:  # another voice would find no device either
            reasons.append(str(reason))
            break
        except NoVoiceError as reason:
            reasons.append(f"{_NAMES[engine]} does not start ({reason})")
        else:
            instead = " and ".join(reasons)
            if instead:
                instead = f"{instead[:1].upper()}{instead[1:]}; another voice speaks."
            return speaker, _joined((instead, remark))
    why = " and ".join(reasons)
    return None, f"There is no voice, since {why}; the session goes on in text."


def engines_to_try(wanted: Engine, platform: str) -> tuple[Engine, ...]:
    """Return the engines in the order in which to try them.

    Args:
        wanted: The engine of the settings, other than "none".
        platform: The system, as Python names it.
    """
    if wanted == "natural":  # a missing extra must not cost her the voice
        return ("natural", *engines_to_try("auto", platform))
    if wanted != "auto":
        return (wanted,)
    return ("pyttsx3", "espeak") if platform in {"darwin", "win32"} else ("espeak", "pyttsx3")


_NAMES: dict[Engine, str] = {
    "espeak": "eSpeak NG",
    "natural": "the natural voice",
    "pyttsx3": "the system's own voice",
}


def _open(
    engine: Engine, settings: SpeechSettings, tell: Tell, played: PlayedSound | None
) -> tuple[Speaker, str | None]:
    match engine:
        case "espeak":
            return _played(EspeakVoice(settings), settings, tell, played, cut_into_pieces)
        case "natural":
            return _played(NaturalVoice(settings), settings, tell, played, cut_into_clauses)
        case "pyttsx3":
            return _open_pyttsx(settings, tell)
    raise AssertionError(f"{engine} is no voice of its own")


def _played(
    voice: EspeakVoice | NaturalVoice,
    settings: SpeechSettings,
    tell: Tell,
    played: PlayedSound | None,
    cut: Callable[[str], tuple[str, ...]],
) -> tuple[Speaker, str | None]:
    try:
        output, remark = _open_output(voice.rate_hz, settings.device, played)
    except NoOutputError:
        voice.close()
        raise

    def reopen() -> OutputStream:
        return _open_output(voice.rate_hz, settings.device, played)[0]

    mouth = PlaybackMouth(voice, output, reopen=reopen, tell=tell, cut=cut)
    remarks = (_voice_remark(settings, voice.voice_is_known), remark)
    return QueuedSpeaker(mouth, settings, tell), _joined(remarks)


def _open_pyttsx(settings: SpeechSettings, tell: Tell) -> tuple[Speaker, str | None]:
    mouth = SystemVoiceMouth(settings, lambda: open_output(TONE_RATE_HZ))
    remarks = (
        _voice_remark(settings, mouth.voice_is_known),
        "The system's own voice speaks through the system's usual sound device." if settings.device else None,
    )
    return QueuedSpeaker(mouth, settings, tell), _joined(remarks)


def _open_output(
    rate_hz: int, device: str, played: PlayedSound | None
) -> tuple[OutputStream, str | None]:
    try:
        return open_output(rate_hz, device, played), None
    except NoOutputError:
        if not device:
            raise
    instead = f'The sound device "{device}" cannot be opened; the usual one is used.'
    return open_output(rate_hz, "", played), instead


def _voice_remark(settings: SpeechSettings, is_known: bool) -> str | None:
    return None if is_known else f'There is no voice named "{settings.voice}"; the usual one speaks.'


def _joined(remarks: tuple[str | None, ...]) -> str | None:
    return " ".join(remark for remark in remarks if remark) or None
