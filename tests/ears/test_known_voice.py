from __future__ import annotations

from pathlib import Path

import pytest

from stepper.ears.known_voice import (
    KnowingRecogniser,
    KnownVoice,
    enrol,
    keep_voice,
    kept_voice,
    mean_of,
    pieces_of,
)
from stepper.ears.ports import Heard, Place
from stepper.ears.speaker_embedding import Vector
from stepper.errors import SurroundingsError

HER, OTHER = b"\1\0", b"\2\0"


class ByFirstSample:
    """An encoder that knows two speakers by their first sample, and strays a little with each piece."""

    def __init__(self) -> None:
        self.asked = 0

    def vector(self, sound: bytes) -> Vector:
        """Return one of two directions, not quite."""
        self.asked += 1
        return mean_of([(1.0, 0.1 * (self.asked % 3)) if sound[:2] == HER else (0.1, 1.0)])


class Parrot:
    """A recogniser that hears "next step" in anything loud."""

    def __init__(self) -> None:
        self.closed = False

    def recognise(self, segment: bytes) -> Heard | None:
        """Hear it."""
        return Heard(text="next step", score=1.0) if any(segment) else None

    def close(self) -> None:
        """Remember it."""
        self.closed = True


def test_her_cues_are_heard_and_those_of_others_are_not() -> None:
    """The film says "next step" too; only what is hers comes through, and only cues are looked at."""
    encoder, parrot = ByFirstSample(), Parrot()
    voice = enrol(HER * 16_000 * 15, encoder).voice  # type: ignore[arg-type]
    knowing = KnowingRecogniser(parrot, voice, encoder)  # type: ignore[arg-type]
    assert knowing.recognise(HER * 16_000) is not None
    assert knowing.recognise(OTHER * 16_000) is None
    asked = encoder.asked
    assert knowing.recognise(bytes(32_000)) is None
    assert encoder.asked == asked
    knowing.close()
    assert parrot.closed


def test_the_name_alone_is_passed_on_whoever_says_it() -> None:
    """Half a second is too little to know a voice by; what follows is looked at with it."""

    class Named(Parrot):
        def recognise(self, segment: bytes) -> Heard | None:
            return Heard(text="", score=0.0, goes_on=True)

    encoder = ByFirstSample()
    voice = enrol(HER * 16_000 * 15, encoder).voice  # type: ignore[arg-type]
    heard = KnowingRecogniser(Named(), voice, encoder).recognise(OTHER * 8000)  # type: ignore[arg-type]
    assert heard is not None
    assert heard.goes_on


def test_the_threshold_is_told_with_its_cost() -> None:
    """What is refused of hers and let through of others is counted against the same threshold."""
    enrolment = enrol(HER * 16_000 * 15, ByFirstSample())  # type: ignore[arg-type]
    assert len(enrolment.own) == 10
    assert enrolment.refused == sum(each < enrolment.voice.threshold for each in enrolment.own)
    assert enrolment.let_through([enrolment.voice.threshold, enrolment.voice.threshold - 0.01]) == 1


def test_too_little_speech_is_a_sentence() -> None:
    """Five seconds are not enough to set a threshold on."""
    with pytest.raises(SurroundingsError, match="too little speech"):
        enrol(HER * 16_000 * 5, ByFirstSample())  # type: ignore[arg-type]


def test_pieces_are_as_long_as_a_cue_and_leave_the_rest_out() -> None:
    """1.5 s at 16 kHz and 16 bit are 48,000 bytes."""
    assert [len(piece) for piece in pieces_of(bytes(100_000))] == [48_000, 48_000]


def test_what_is_kept_comes_back_and_what_is_broken_is_named(tmp_path: Path) -> None:
    """No sound is in the file; a damaged one is a sentence with what to do."""
    path = tmp_path / "deep" / "voice.json"
    assert kept_voice(path) is None
    voice = KnownVoice(vector=(0.6, 0.8), threshold=0.7)
    keep_voice(voice, path)
    assert kept_voice(path) == voice
    path.write_text("{")
    with pytest.raises(SurroundingsError, match="stepper voice enrol"):
        kept_voice(path)


def test_a_count_that_may_go_on_is_no_exception() -> None:
    """Somebody else's "count is forty" does not count, though more might follow."""

    class Open(Parrot):
        def recognise(self, segment: bytes) -> Heard | None:
            return Heard(text="count is forty", score=0.9, goes_on=True)

    voice = enrol(HER * 16_000 * 15, ByFirstSample()).voice  # type: ignore[arg-type]
    knowing = KnowingRecogniser(Open(), voice, ByFirstSample())  # type: ignore[arg-type]
    assert knowing.recognise(OTHER * 16_000) is None
    assert knowing.recognise(HER * 16_000) is not None


def test_the_name_amid_other_sound_is_looked_for_where_the_recogniser_can() -> None:
    """With a voice enrolled the program must not be harder to reach through a film."""

    class Finding(Parrot):
        def find(self, sound: bytes) -> Place | None:
            return Place(start_s=0.5, end_s=float(len(sound)), may_go_on=False)

    voice = KnownVoice(vector=(1.0, 0.0), threshold=0.5)
    knowing = KnowingRecogniser(Finding(), voice, ByFirstSample())
    assert knowing.find(bytes(4)) == Place(start_s=0.5, end_s=4.0, may_go_on=False)
    assert KnowingRecogniser(Parrot(), voice, ByFirstSample()).find(bytes(4)) is None


def test_what_is_known_early_is_hers_too() -> None:
    """Somebody else's "next step" does not get through by being short; without foresight nothing is known early."""

    class Early(Parrot):
        def recognise_early(self, segment: bytes) -> Heard | None:
            return Heard(text="next step", score=0.9) if segment else None

        def goes_on(self, segment: bytes, heard: Heard) -> bool:
            return len(segment) > len(heard.text)

    voice = enrol(HER * 16_000 * 15, ByFirstSample()).voice  # type: ignore[arg-type]
    knowing = KnowingRecogniser(Early(), voice, ByFirstSample())  # type: ignore[arg-type]
    assert knowing.recognise_early(HER * 16_000) == Heard(text="next step", score=0.9)
    assert knowing.recognise_early(OTHER * 16_000) is None
    assert knowing.recognise_early(b"") is None
    assert knowing.goes_on(bytes(100), Heard(text="next step", score=0.9))
    assert not knowing.goes_on(b"", Heard(text="next step", score=0.9))
    assert not KnowingRecogniser(Parrot(), voice, ByFirstSample()).goes_on(HER, Heard(text="", score=0.0))  # type: ignore[arg-type]
    assert KnowingRecogniser(Parrot(), voice, ByFirstSample()).recognise_early(HER) is None  # type: ignore[arg-type]
