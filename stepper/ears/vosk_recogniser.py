"""Vosk as a recogniser: any model, told what to listen for."""

from __future__ import annotations

import importlib
import json
from collections.abc import Callable
from pathlib import Path
from typing import Any, Final

from stepper.devices.ports import HEARING_RATE_HZ
from stepper.ears.ports import Heard
from stepper.ears.vosk_model import why_no_model
from stepper.ears.wordings import Wordings, strip_address
from stepper.errors import NotInstalledError, SurroundingsError

_ANYTHING_ELSE: Final = "[unk]"
_SILENCE: Final = bytes(HEARING_RATE_HZ)  # half a second, after which it takes an utterance to have ended


class VoskRecogniser:
    """Hears the phrases and counts of a vocabulary as far as a model knows their words."""

    def __init__(self, wordings: Wordings, folder: Path, *, address: str = "") -> None:
        """Load a model and tell it what to listen for.

        Args:
            wordings: What can be said.
            folder: The model.
            address: The word that has to stand in front of it; empty for none.

        Raises:
            SurroundingsError: Vosk is not installed, the folder holds no model, or one that knows none of
                the words.
        """
        reason = why_no_model(folder)
        if reason:
            raise SurroundingsError(reason)
        try:
            vosk: Any = importlib.import_module("vosk")
        except (ImportError, OSError) as error:
            raise NotInstalledError("Vosk is not installed.", "vosk") from error
        vosk.SetLogLevel(-1)
        try:
            self._model = vosk.Model(str(folder))
        except Exception as error:  # it raises nothing more specific
            raise SurroundingsError(
                f"The model in {folder} does not load: it is damaged or not complete."
            ) from error

        def knows(text: str) -> bool:
            return all(self._model.vosk_model_find_word(word) >= 0 for word in text.split())

        self._wordings, self._address = wordings, address
        if address and not knows(address):
            raise SurroundingsError(f'The model in {folder} does not know the address word "{address}".')
        grammar, self.left_out = make_grammar(wordings, address, knows)
        """The wordings that the model cannot know."""
        if not grammar:
            raise SurroundingsError(
                f"The model in {folder} knows none of the wordings: it is of another language than they are."
            )
        if knows(_ANYTHING_ELSE):  # a model without it complains, and takes everything for some phrase
            grammar.append(_ANYTHING_ELSE)
        told = json.dumps(grammar, ensure_ascii=False)
        self._recogniser = vosk.KaldiRecognizer(self._model, HEARING_RATE_HZ, told)
        self._recogniser.SetWords(True)

    def recognise(self, segment: bytes) -> Heard | None:
        """Return the cue that a stretch of sound is, or None."""
        self._recogniser.AcceptWaveform(segment + _SILENCE)
        # Only a final result counts: a partial one changes as it goes on.
        result = json.loads(self._recogniser.FinalResult())
        return read_result(result, self._wordings, self._address)

    def close(self) -> None:
        """Do nothing; the model goes with the object."""


def make_grammar(
    wordings: Wordings, address: str, knows: Callable[[str], bool]
) -> tuple[list[str], tuple[str, ...]]:
    """Make a grammar of what can be said.

    Numbers are given word by word: Vosk takes the grammar as samples of what is said, not as all of it.

    Args:
        wordings: What can be said.
        address: What stands in front of it; empty for nothing.
        knows: Whether a model knows every word of a text.

    Returns:
        The grammar, and the wordings left out of it because of a word that is not known.
    """
    front = f"{address} " if address else ""
    phrases = (*wordings.phrases, *(wordings.called if address else ()))
    closed = [phrase for phrase in phrases if knows(phrase)]
    framed = [frame for frame in wordings.frames if not frame.is_bare]
    frames = [frame for frame in framed if knows(frame.around(""))]
    left_out = [phrase for phrase in phrases if not knows(phrase)]
    left_out += [frame.around("…") for frame in framed if not knows(frame.around(""))]
    grammar = [front + phrase for phrase in closed]
    if frames:
        words = sorted({word for said in wordings.spoken_numbers() for word in said.split() if knows(word)})
        grammar += [(front + frame.before).strip() for frame in frames if frame.before or front]
        grammar += [frame.after for frame in frames if frame.after] + words
    return list(dict.fromkeys(grammar)), tuple(left_out)


def read_result(result: dict[str, Any], wordings: Wordings, address: str) -> Heard | None:
    """Read a final result: the whole of it is a cue, or nothing is.

    Args:
        result: As Vosk returns it.
        wordings: What can be said.
        address: What has to stand in front of it; empty for nothing.
    """
    text = " ".join(str(result.get("text", "")).split())
    if address and text == address:
        return Heard(text="", score=0.0, goes_on=True)
    rest = strip_address(text, address)
    if not rest or _ANYTHING_ELSE in text:
        return None
    sure = min((float(word["conf"]) for word in result.get("result", ())), default=0.0)
    is_word = bool(address) and rest in wordings.called
    if is_word or rest in wordings.phrases or wordings.known(rest):
        goes_on, score = wordings.may_go_on(rest), min(1.0, sure)
        return Heard(text=wordings.english(rest), score=score, addressed=bool(address), goes_on=goes_on)
    if wordings.is_begun(rest):
        return Heard(text="", score=0.0, goes_on=True)
    return Heard(text="", score=0.0) if address else None
