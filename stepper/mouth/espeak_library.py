"""eSpeak NG, called through ctypes, from the library that a package brings along.

The library keeps its data path in 160 bytes and fails on a longer one, so this module changes into the folder
that holds the data and gives a relative path; it is meant for a process of its own.

Source: the public header of eSpeak NG, `speak_lib.h`, for every number and signature.
"""

from __future__ import annotations

import ctypes
import os
from collections.abc import Callable
from pathlib import Path
from typing import Any

from stepper.mouth.ports import NoVoiceError

USUAL_VOICE = "en"

_SYNCHRONOUS = 2
_BLOCK_MS = 60
_DO_NOT_EXIT = 0x8000
_CHARACTERS_ARE_UTF8 = 1
_POSITION_IS_CHARACTER = 1
_RATE, _VOLUME = 1, 2
_FULL_VOLUME = 100
_GO_ON = 0
_INTERNATIONAL_ALPHABET = 2

_Receiver = ctypes.CFUNCTYPE(ctypes.c_int, ctypes.POINTER(ctypes.c_short), ctypes.c_int, ctypes.c_void_p)


class _Voice(ctypes.Structure):
    """The properties a voice can be asked for by; an empty field asks for nothing."""

    _fields_ = (
        ("name", ctypes.c_char_p),
        ("languages", ctypes.c_char_p),
        ("identifier", ctypes.c_char_p),
        ("gender", ctypes.c_ubyte),
        ("age", ctypes.c_ubyte),
        ("variant", ctypes.c_ubyte),
        ("reserved", ctypes.c_ubyte),
        ("score", ctypes.c_int),
        ("spare", ctypes.c_void_p),
    )


class EspeakLibrary:
    """The library, ready to turn text into sound. A process can hold only one."""

    def __init__(self, *, voice: str, volume: float) -> None:
        """Load the library and its data.

        Args:
            voice: Name of a voice, or a language; empty for the usual one.
            volume: Range: 0 to 1.

        Raises:
            NoVoiceError: The library or its data cannot be loaded.
        """
        library_path, data_path = packaged_paths()
        try:
            self._library = ctypes.CDLL(str(library_path))
            os.chdir(data_path.parent)
        except OSError as error:
            raise NoVoiceError(f"its library cannot be loaded ({error})") from error
        started = self._library.espeak_Initialize(
            _SYNCHRONOUS, _BLOCK_MS, os.fsencode(data_path.name), _DO_NOT_EXIT
        )
        if started <= 0:
            raise NoVoiceError(f"its data cannot be read from {data_path}")
        self.rate_hz: int = started
        """Samples per second of the sound it makes."""
        self._parts: list[bytes] = []
        self._receiver = self._make_receiver()  # kept, or it would be freed while the library uses it
        self._library.espeak_SetSynthCallback(self._receiver)
        self.voice_is_known: bool = self._choose(voice)
        """Whether the voice asked for was found; otherwise the usual one speaks."""
        self._library.espeak_SetParameter(_VOLUME, round(volume * _FULL_VOLUME), 0)

    def speech(self, text: str, words_per_minute: int) -> bytes:
        """Make the sound of a stretch of text: one channel, signed 16-bit.

        Raises:
            NoVoiceError: The library reports that it failed.
        """
        self._parts.clear()
        self._library.espeak_SetParameter(_RATE, words_per_minute, 0)
        words = text.replace("\0", " ").encode("utf-8", "replace")
        failed = self._library.espeak_Synth(
            words,
            ctypes.c_size_t(len(words) + 1),
            ctypes.c_uint(0),
            _POSITION_IS_CHARACTER,
            ctypes.c_uint(0),
            ctypes.c_uint(_CHARACTERS_ARE_UTF8),
            None,
            None,
        )
        if failed:
            raise NoVoiceError(f"its library reports error {failed}")
        return b"".join(self._parts)

    def phonemes(self, text: str) -> str:
        """Return the sounds of a text in the International Phonetic Alphabet, stress marks and all."""
        translate = self._library.espeak_TextToPhonemes
        translate.restype = ctypes.c_char_p
        words = ctypes.c_char_p(text.replace("\0", " ").encode("utf-8", "replace"))
        clauses = []
        while words.value is not None:  # a clause at a time; the library moves the pointer on
            clauses.append(translate(ctypes.byref(words), _CHARACTERS_ARE_UTF8, _INTERNATIONAL_ALPHABET))
        return " ".join((clause or b"").decode("utf-8", "replace") for clause in clauses)

    def _make_receiver(self) -> Callable[..., Any]:
        def receive(samples: Any, sample_count: int, _events: Any) -> int:
            if samples and sample_count > 0:
                self._parts.append(ctypes.string_at(samples, sample_count * ctypes.sizeof(ctypes.c_short)))
            return _GO_ON

        return _Receiver(receive)

    def _choose(self, voice: str) -> bool:
        name = voice.encode("utf-8", "replace")
        if name and self._library.espeak_SetVoiceByName(name) == 0:
            return True
        # Languages such as "en-gb" are not names of voices. Asked for a language that no voice speaks, the
        # library takes any voice and reports success, so it is asked only when one does.
        asked = ctypes.byref(_Voice(languages=name))
        if name and self._has_voice(asked) and self._library.espeak_SetVoiceByProperties(asked) == 0:
            return True
        self._library.espeak_SetVoiceByName(USUAL_VOICE.encode())
        return not voice

    def _has_voice(self, asked: Any) -> bool:
        self._library.espeak_ListVoices.restype = ctypes.POINTER(ctypes.POINTER(_Voice))
        found = self._library.espeak_ListVoices(asked)
        return bool(found and found[0])


def packaged_paths() -> tuple[Path, Path]:
    """Find the library and its data folder in the package that contains them.

    Raises:
        NoVoiceError: The package is not installed or is incomplete.
    """
    try:
        import espeakng_loader
    except ImportError as error:
        raise NoVoiceError("the package espeakng-loader is not installed") from error
    try:
        return Path(espeakng_loader.get_library_path()), Path(espeakng_loader.get_data_path())
    except RuntimeError as error:
        raise NoVoiceError(f"the package espeakng-loader is not whole ({error})") from error
