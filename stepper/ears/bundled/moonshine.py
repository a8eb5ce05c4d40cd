"""The bundled recogniser: texts that fit the sounds, weighed by the decoder of a model that knows words.

It is long because what is cut out, what is known early and what is found amid a film are heard by one object,
over the same models and the same thresholds.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Collection, Hashable
from dataclasses import replace
from typing import Any

from stepper.ears.bundled.address_word import AddressWord, judge_address
from stepper.ears.bundled.decision import (
    Candidate,
    decide,
    is_drawn_out,
    is_whole,
    leave_out_ends,
    says_more,
    total_score,
)
from stepper.ears.bundled.moonshine_model import Encoded, MoonshineModel
from stepper.ears.bundled.sound_distance import similar_phrases
from stepper.ears.bundled.sound_model import FRAME_S, SoundModel
from stepper.ears.bundled.sound_tree import NOTHING, column_of, find_span
from stepper.ears.bundled.spotting import PhraseMatch, Spotter
from stepper.ears.bundled.thresholds import (
    ALIKE_WITHIN,
    ALONE,
    BEGUN,
    CALLED,
    CALLED_AT_ALL,
    EARLY,
    FOUND,
    FOUND_UNASKED,
    LOOSE,
    STRICT,
    TOKEN_DUE,
    UNASKED,
    UNWEIGHED,
    Thresholds,
)
from stepper.ears.bundled.token_tree import as_model_writes, build_token_tree
from stepper.ears.ports import LATEST_S, FoundAlone, Heard, Place
from stepper.ears.wordings import Reply, Wordings, strip_address
from stepper.mouth.pronunciation import Pronouncer
from stepper.records import dataclass

_MOST = 8
# Enough to hold a text of another meaning beside several wordings of the first.
_WITHIN = 12.0
_WITHIN_ALONE = 8.0
# The same amid other sound, where a number has to be 6 clearer of another (`nearness.CLEAR_NUMBER`), and
# may fit `_AS_GOOD` less well than the best.
_TAKEN_FOR = 3
_AS_GOOD = 1.5
_BEHIND_FRAMES = 12
_SURE_AT = 30.0
# How far below the best of any kind a text has to be for all trust in it to be gone.


@dataclass(frozen=True, slots=True, kw_only=True)
class Utterance:
    """A stretch of sound as the models have taken it in."""

    encoded: Encoded
    likely: Any
    """Natural log-probability of each sound in each frame: frames × columns."""
    transcript: str
    """What the model writes down freely: lower case, without marks."""
    transcript_likely: float
    """The log-probability of that."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Listening:
    """One of the two manners of listening: after an address word, or for cues alone."""

    address: str
    thresholds: Thresholds


class MoonshineRecogniser:
    """Hears the phrases and counts of a vocabulary, whole utterances only."""

    def __init__(
        self,
        wordings: Wordings,
        *,
        address: str = "",
        is_addressed: Callable[[], bool] = lambda: True,
        asked: Callable[[], Collection[Reply]] = frozenset,
        model: MoonshineModel | None = None,
        sounds: SoundModel | None = None,
        loose: Thresholds = LOOSE,
        strict: Thresholds = STRICT,
    ) -> None:
        """Load the models and look up the sounds of every phrase.

        Args:
            wordings: What can be said.
            address: The word that stands in front of it while that is asked for; empty for never.
            is_addressed: Whether that is asked for now.
            asked: Which questions are open now, which single words may answer while the address word is not
                asked for.
            model: What encodes sound and weighs words; None for the one in the wheel.
            sounds: What finds the sounds in what the model encoded; None for the packaged one.
            loose: How sure to be after the address word.
            strict: How sure to be without it.

        Raises:
            SurroundingsError: The models or the pronunciations cannot be loaded.
        """
        self._model, self._sound_model = model or MoonshineModel(), sounds or SoundModel()
        self._wordings, self._is_addressed, self._asked = wordings, is_addressed, asked
        bare = next((wordings.numbers_of(frame) for frame in wordings.frames if frame.is_bare), {})
        called = wordings.called.keys() - wordings.phrases.keys()
        self._short = frozenset(bare) | {text for text in called if " " not in text}
        self._longer = {text for text in called - self._short if wordings.called[text].answers is not None}
        # Answers of more than one word.
        closed = wordings.phrases.keys() | wordings.called.keys()
        self._closed = frozenset(closed) - wordings.beginnings()
        self._words, self._number_words = wordings.words(), wordings.number_words()
        pronouncer = Pronouncer()
        try:
            self._spotter = Spotter(wordings, address, pronouncer)
        finally:
            pronouncer.close()
        self._alone = Listening(address="", thresholds=strict)
        self._behind = Listening(address=address, thresholds=loose) if address else self._alone
        # Behind the address word while that is not asked for.
        surely = replace(loose, least=UNASKED, agreed=UNASKED)
        self._unasked = replace(self._behind, thresholds=surely) if address else self._alone
        self._looked_into, self._found = b"", None
        self.unspeakable = self._spotter.unspeakable
        """Phrases that can never be heard, since they have no sound."""

    def recognise(self, segment: bytes) -> Heard | None:
        """Return the cue that a stretch of sound is, or None."""
        states = self._model.states(segment)
        likely = self._sound_model.likely(states)
        if self._is_for_others(likely):
            return None
        utterance = self._taken_in(states, likely)
        # Her word for the program is understood in front of a cue even if it is not asked for.
        written = self._wordings.last_number(utterance.transcript)
        found = self._decided(utterance, written)
        if found is not None:
            return found
        address = self.manner.address
        called, called_alone = self._spotter.called(utterance.likely)
        is_called = bool(address) and called >= CALLED
        for rest in said_behind(utterance.transcript, address, is_called):
            if self._is_open(rest) and (address or not self._wordings.only_called(rest)):
                return Heard(text=rest, score=0.5, addressed=bool(address))
        called_by_name = strip_address(utterance.transcript, self._behind.address)
        if self._behind.address and called_by_name and self._is_open(called_by_name):
            return Heard(text=called_by_name, score=0.5, addressed=True)
        goes_on = called_alone >= CALLED or self._is_begun(utterance)
        return Heard(text="", score=0.0, goes_on=goes_on) if is_called or goes_on else None

    def recognise_early(self, segment: bytes) -> Heard | None:
        """Return the cue that a stretch of sound is; None if there is none, or something longer begins with
        it.

        The decoder, which takes most of the time, is asked only where the sounds fit such a cue.
        """
        states = self._model.states(segment)
        likely = self._sound_model.likely(states)
        manners = dict.fromkeys((self.manner, self._behind))
        if not any(self._fits_early(likely, addressed=bool(manner.address)) for manner in manners):
            return None
        utterance = self._taken_in(states, likely)
        heard = self._decided(utterance, self._wordings.last_number(utterance.transcript))
        return heard if heard is not None and self._is_complete(heard.text) else None

    def goes_on(self, segment: bytes, heard: Heard) -> bool:
        """Return whether something else sounds behind a cue that was known early and moves the knitting.

        Args:
            segment: The same stretch, with all that has followed.
            heard: The cue.
        """
        row = self._spotter.sounds_of(heard.text) if heard.moves else ()
        if not row:
            return False
        likely = self._sound_model.likely(self._model.states(segment))
        _, end = find_span(likely, [row])
        return says_more(likely[end:].argmax(1), column_of(row[-1]))

    def find(self, sound: bytes) -> Place | None:
        """Return where in a stretch of sound the address word and a cue behind it stand, amid anything."""
        if not self._behind.address:
            return None
        likely = self._likely(sound)
        least = FOUND_UNASKED if self.hears_alone() else FOUND
        if self._spotter.called(likely, amid=True)[0] < least:
            return None
        fits = self._spotter.best(
            likely, _MOST, _AS_GOOD, addressed=True, asked=self._asked(), amid=True, floor=FOUND
        )
        if not fits:
            return Place(start_s=0.0, end_s=None, may_go_on=True)
        longest = max(fits, key=lambda fit: len(fit.sounds))  # "forty" fits "forty six" as well, with a rest
        start, end = self._spotter.span(likely, longest)
        behind = likely[end : end + _BEHIND_FRAMES].argmax(1)
        count = int((behind != NOTHING).sum())
        is_over = is_whole(fits[0].score, count, is_word=longest.text in self._short)
        return Place(
            start_s=start * FRAME_S,
            end_s=end * FRAME_S if is_over else None,
            may_go_on=self._wordings.may_go_on(longest.text),
            says_more=says_more(behind, column_of(longest.sounds[-1])),
            fit=fits[0].score,
        )

    def hears_alone(self) -> bool:
        """Return whether cues without the address word count now."""
        return not self.manner.address

    def find_alone(self, sound: bytes) -> FoundAlone | None:
        """Return what may be a cue without the address word, amid anything.

        A single word or a bare number is one only as the answer to what is open.
        """
        likely = self._likely(sound)
        found = self._found_alone(likely, 0)
        if found is None or not self._asked() or len(likely) * FRAME_S - found.end_s <= LATEST_S:
            return found
        # What a film said before the answer is in the way of it.
        return self._found_alone(likely, round(found.end_s / FRAME_S)) or found

    @property
    def manner(self) -> Listening:
        """How it listens now."""
        return self._behind if self._is_addressed() else self._alone

    def take_in(self, segment: bytes) -> Utterance:
        """Encode a stretch of sound, find its sounds, and write it down freely."""
        states = self._model.states(segment)
        return self._taken_in(states, self._sound_model.likely(states))

    def weighed(self, utterance: Utterance, manner: Listening) -> list[Candidate]:
        """List what fits the sounds best, each with the decoder's word on it added."""
        addressed = bool(manner.address)
        fits = self._spotter.best(utterance.likely, _MOST, _WITHIN, addressed=addressed, asked=self._asked())
        if not fits or fits[0].score < UNWEIGHED:
            return []
        weights = self._weights(utterance, manner, fits)
        scored = [
            Candidate(
                text=fit.text,
                means=fit.means,
                sounds=fit.score,
                words=weights.get(fit.text, UNWEIGHED),
                number=fit.number,
                row=fit.sounds,
                is_word=fit.text in self._short,
                moves=self._wordings.moves(fit.means),
                answers=self._answers_open(fit),
            )
            for fit in fits
        ]
        return leave_out_ends(scored, self._longer)

    def distances(self, utterance: Utterance) -> list[PhraseMatch]:
        """List everything that fits the sounds of an utterance at all, the best first."""
        most, addressed = len(self._spotter.phrases), bool(self.manner.address)
        return self._spotter.best(utterance.likely, most, math.inf, addressed=addressed, asked=self._asked())

    def alike(self) -> list[tuple[str, str, float]]:
        """List phrases of different meaning that sound alike: the two, and how far apart. Range: 0 to 1."""
        return similar_phrases(self._spotter.phrases, ALIKE_WITHIN)

    def judge_address(self) -> AddressWord | None:
        """Judge the address word; None if there is none."""
        word, spotter = self._behind.address, self._spotter
        return judge_address(word, spotter.address_sounds, spotter.phrases, ALIKE_WITHIN) if word else None

    def close(self) -> None:
        """Do nothing; the models go with the object."""

    def _likely(self, sound: bytes) -> Any:
        """Return the sounds of a stretch that is looked through; once where it is looked through twice."""
        if sound != self._looked_into:
            self._looked_into, self._found = sound, self._sound_model.likely(self._model.states(sound))
        return self._found

    def _found_alone(self, likely: Any, first: int) -> FoundAlone | None:
        """Return what may be a cue without the address word, from a frame on."""
        likely = likely[first:]
        fits = self._spotter.best(likely, _MOST, _WITHIN_ALONE, amid=True, floor=ALONE, asked=self._asked())
        if not fits:
            return None
        enough = fits[0].score - _AS_GOOD
        as_good = [fit for fit in fits if fit.score >= enough or self._ends_so(fit, fits[0])]
        longest = max(as_good, key=lambda fit: len(fit.sounds))
        rivals = [fit.score for fit in fits if _rivals(fit, longest)]
        start, end = span = find_span(likely, [longest.sounds])
        if is_drawn_out(_length_s(span), len(longest.sounds)):
            return None
        sounding = likely.argmax(1) != NOTHING
        return FoundAlone(
            text=longest.text,
            start_s=(first + start) * FRAME_S,
            end_s=(first + end) * FRAME_S,
            fit=longest.score,
            length=len(longest.sounds),
            before=int(sounding[max(0, start - _BEHIND_FRAMES) : start].sum()),
            behind=int(sounding[end : end + _BEHIND_FRAMES].sum()),
            is_answer=longest.text in self._short or longest.text in self._longer,
            has_number=longest.number is not None,
            may_go_on=longest.number is not None and self._wordings.may_go_on(longest.text),
            alike=frozenset(fit.text for fit in fits if fit.means == longest.means),
            clear=longest.score - max(rivals, default=-math.inf),
        )

    def _ends_so(self, fit: PhraseMatch, end: PhraseMatch) -> bool:
        """Return whether something is a longer answer that ends as another: "I don't know" as "no"."""
        return fit.text in self._longer and fit.sounds[-len(end.sounds) :] == end.sounds

    def _taken_in(self, states: Any, likely: Any) -> Utterance:
        encoded = self._model.keep(states)
        text, transcript_likely = self._model.transcribe(encoded)
        return Utterance(
            encoded=encoded,
            likely=likely,
            transcript=" ".join(text.casefold().replace(",", "").rstrip(".?!").split()),
            transcript_likely=transcript_likely,
        )

    def _decided(self, utterance: Utterance, written: float | None) -> Heard | None:
        """Return what was said if it is one of the candidates, in the manner that is on or behind the address
        word."""
        for manner in dict.fromkeys((self.manner, self._unasked if self.hears_alone() else self._behind)):
            found = decide(self.weighed(utterance, manner), manner.thresholds)
            span = None if found is None or manner.address else find_span(utterance.likely, [found.row])
            if found is not None and not (span and is_drawn_out(_length_s(span), len(found.row))):
                return self._heard(found, manner, span, written)
        return None

    def _fits_early(self, likely: Any, *, addressed: bool) -> bool:
        """Return whether what fits the sounds best is a cue, without a number, that begins nothing longer."""
        asked = self._asked()
        cues = self._spotter.best(likely, 1, 0.0, addressed=addressed, asked=asked, numbers=False)
        if not cues or cues[0].score < EARLY:  # something with a number that fits better begins something
            return False
        fits = self._spotter.best(likely, 1, 0.0, addressed=addressed, asked=asked)
        return bool(fits) and fits[0].score >= EARLY and self._is_complete(fits[0].text)

    def _answers_open(self, fit: PhraseMatch) -> bool:
        """Return whether something answers what is open."""
        asked, called = self._asked(), self._wordings.called.get(fit.text)
        if called is not None and called.answers in asked:
            return True
        return Reply.NUMBER in asked and fit.number is not None and fit.text in self._short

    def _moves(self, text: str, means: Hashable) -> bool:
        """Return whether something moves the knitting, but for a word that answers what is open."""
        called = self._wordings.called.get(text)
        return self._wordings.moves(means) and (called is None or called.answers is None)

    def _is_for_others(self, likely: Any) -> bool:
        """Return whether the address word is asked for and nothing in the sounds is like it: most of a film.

        The decoder, which takes longer than all else, is then not asked what was said.
        """
        if self.hears_alone() or self._spotter.called(likely)[0] >= CALLED_AT_ALL:
            return False
        fits = self._spotter.best(likely, 1, 0.0, addressed=True, asked=self._asked())
        return not fits or fits[0].score < UNWEIGHED

    def _is_complete(self, text: str) -> bool:
        return text in self._closed

    def _heard(
        self, found: Candidate, manner: Listening, span: tuple[int, int] | None, written: float | None
    ) -> Heard:
        """Return what was decided on; no text if the decoder would rather have another number at the end."""
        addressed = bool(manner.address)
        is_other = written is not None and written != found.number
        if found.number is not None and found.words < 0 and is_other:
            return Heard(text="", score=0.0, addressed=addressed)
        sure = 1 + total_score(found, manner.thresholds) / _SURE_AT
        goes_on = found.number is not None and self._wordings.may_go_on(found.text)
        return Heard(
            text=found.text,
            score=min(1.0, max(0.0, sure)),
            addressed=addressed,
            goes_on=goes_on,
            is_answer=not addressed and (found.is_word or found.text in self._longer),
            moves=self._moves(found.text, found.means),
            means=found.means,
            span_s=span and (span[0] * FRAME_S, span[1] * FRAME_S),
        )

    def _is_begun(self, utterance: Utterance) -> bool:
        """Return whether an utterance begins a cue with a number, the number still to come."""
        written = (utterance.transcript, strip_address(utterance.transcript, self._behind.address))
        if any(self._wordings.is_begun(text) for text in written if text):
            return True
        ways = {bool(manner.address) for manner in (self.manner, self._behind)}
        return any(self._spotter.begun(utterance.likely, addressed=way) >= BEGUN for way in ways)

    def _weights(self, utterance: Utterance, manner: Listening, fits: list[PhraseMatch]) -> dict[str, float]:
        """Let the decoder tell how much less likely each text is than what it writes freely."""
        front = f"{self._spotter.way_called(utterance.likely)}, " if manner.address else ""
        ways = {as_model_writes(front + way): fit.text for fit in fits for way in (fit.text, fit.figures)}
        weights: dict[str, float] = {}
        for each in self._model.search(utterance.encoded, build_token_tree(ways, self._model.split)):
            weight = each.score + TOKEN_DUE * each.tokens - utterance.transcript_likely
            text = ways[each.text]
            weights[text] = max(weights.get(text, UNWEIGHED), weight)
        return weights

    def _is_open(self, text: str) -> bool:
        """Return whether a text is a cue with a name or a remark in it, which no list of phrases can hold.

        A free transcript too easily has one number for another, so a number is taken from it only where it is
        merely kept; and a text with no words but those of the phrases would have fitted one of them.
        """
        if self._wordings.remark(text):
            return True
        words = set(text.replace("-", " ").split())
        has_number = any(word.isdigit() for word in words) or not words.isdisjoint(self._number_words)
        return not has_number and not words <= self._words and self._wordings.known(text)


def _rivals(fit: PhraseMatch, taken: PhraseMatch) -> bool:
    """Return whether something else was said than what is taken.

    A part of that is not: "count is seventy" of "my count is seventy two".
    """
    length, last = len(fit.sounds), len(taken.sounds) - len(fit.sounds)
    is_part = any(fit.sounds == taken.sounds[at : at + length] for at in range(last + 1))
    return fit.means != taken.means and not is_part


def _length_s(span: tuple[int, int]) -> float:
    return (span[1] - span[0]) * FRAME_S


def said_behind(transcript: str, address: str, is_called: bool) -> list[str]:
    """Return what may have been said after the address word.

    The transcript may have other words for it ("step or", "stamper"); if its sounds are there, as many
    words are left out as it may have been taken for.
    """
    if not address:
        return [transcript]
    rest = strip_address(transcript, address)
    words = transcript.split()
    garbled = [" ".join(words[count:]) for count in range(1, _TAKEN_FOR + 1)] if is_called else []
    return list(filter(None, [rest, *garbled]))
